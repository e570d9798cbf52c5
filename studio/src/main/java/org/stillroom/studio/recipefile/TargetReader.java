package org.stillroom.studio.recipefile;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.recipe.Target;

/** Reads the target; without one everything is open. */
final class TargetReader {
    private TargetReader() {}

    static Target read(Fields top, QuantityText quantities, Problems problems) {
        Node node = top.node("target");
        Fields target = node == null ? null : Fields.of(node, "target", Keys.TARGET, problems);
        if (target == null) {
            return Target.OPEN;
        }
        if (target.has("volume") && target.has("bottles")) {
            target.problem(
                    "bottles",
                    "target-twice",
                    "said twice",
                    "The target names a volume and bottles; they could differ.",
                    "Keep one of the two.");
        }
        SugarBasis basis = basis(target.has("sugar") ? target.text("sugar") : null);
        return new Target(
                target.quantity("volume", quantities::volumeSpan, "“volume: 1 L” or “volume: 950..1000 ml”"),
                target.quantity("bottles", quantities::bottles, "“bottles: 3 x 350 ml”"),
                target.quantity("strength", quantities::strengthSpan, "“strength: 28 %” or “strength: 27..29 %”"),
                target.quantity(
                        "sugar", text -> sugar(text, quantities), "“sugar: 180 g/L” or “sugar: 100 g/L as invert”"),
                basis,
                target.quantity("acidity", quantities::aciditySpan, "“acidity: 4 g/L”"));
    }

    private static Understanding<Span> sugar(String text, QuantityText quantities) {
        String figure = text.strip();
        SugarBasis named = named(figure);
        if (named == null) {
            return quantities.sugarSpan(text);
        }
        Understanding<Span> span = quantities.sugarSpan(
                figure.substring(0, figure.length() - named.label().length()).strip());
        return span instanceof Understanding.Understood<Span> understood
                ? new Understanding.Understood<>(
                        new Typed<>(text, understood.typed().value()), understood.assumed())
                : span;
    }

    private static SugarBasis basis(@Nullable String text) {
        SugarBasis named = text == null ? null : named(text.strip());
        return named == null ? SugarBasis.AS_DISSOLVED : named;
    }

    private static @Nullable SugarBasis named(String text) {
        return Arrays.stream(SugarBasis.values())
                .filter(basis -> text.endsWith(" " + basis.label()))
                .findFirst()
                .orElse(null);
    }
}
