package org.stillroom.studio.recipefile;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.recipe.Aim;

/** The aim as it stands in a file: "least cost", "use up quince eau-de-vie", "use up bay essence, quince tincture". */
final class AimText {
    private static final String USE_UP = Aim.What.USE_UP.label();

    private AimText() {}

    /**
     * Returns the aim; null when there is none or, noted, it is not known.
     *
     * @param used names that lines use; one with a comma in it is no list
     */
    static @Nullable Aim read(Fields top, List<String> used) {
        String text = top.text("aim");
        if (text == null) {
            return null;
        }
        if (text.startsWith(USE_UP + " ") && !text.substring(USE_UP.length()).isBlank()) {
            return Aim.usingUp(names(text.substring(USE_UP.length() + 1), used));
        }
        for (Aim.What what : plain()) {
            if (what.label().equals(text)) {
                return Aim.of(what);
            }
        }
        List<String> labels = Stream.concat(plain().stream().map(Aim.What::label), Stream.of(USE_UP + " NAME, NAME"))
                .toList();
        top.problem(
                "aim",
                "field-choice",
                "not known",
                Shown.quoted(text) + " is no aim that is known.",
                "Write " + Shown.either(labels) + ".");
        return null;
    }

    static String written(Aim aim) {
        return (aim.what().label() + " " + String.join(", ", aim.ingredients())).strip();
    }

    private static List<String> names(String text, List<String> used) {
        return used.contains(text)
                ? List.of(text)
                : Arrays.stream(text.split(",", -1))
                        .map(String::strip)
                        .filter(name -> !name.isEmpty())
                        .toList();
    }

    private static List<Aim.What> plain() {
        return Arrays.stream(Aim.What.values())
                .filter(what -> what != Aim.What.USE_UP)
                .toList();
    }
}
