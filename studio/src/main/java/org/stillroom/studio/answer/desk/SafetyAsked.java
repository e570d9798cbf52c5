package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.safety.Place;
import org.stillroom.core.safety.Serving;

/** Who drinks how much of it, and whose law is asked. */
public final class SafetyAsked {
    /** One serving. */
    static final Part SERVING = Part.usual("serving", "30ml", "what one serving is");

    /** What it takes. */
    public static final List<Part> PARTS = List.of(
            SERVING,
            Part.usual("servings", "2", "how many servings on one day"),
            Part.usual("body", "70kg", "what the drinker weighs"),
            Part.text("place", "whose law: EU or US; both when left out"));

    private SafetyAsked() {}

    /**
     * Returns what was typed.
     *
     * @param typed texts by the names of {@link #PARTS}
     * @throws WrongInput when something is not understood
     */
    public static Serving of(Map<String, List<String>> typed, Manner manner, Objections objections) {
        AskedTexts asked = new AskedTexts(PARTS, typed, manner, objections);
        double millilitres = volume(asked);
        double perDay = number(asked);
        double kilograms = body(asked);
        Set<Place> places = places(asked);
        asked.refuseIfAnyWrong();
        return new Serving(millilitres, perDay, kilograms, places);
    }

    private static double volume(AskedTexts asked) {
        double millilitres =
                asked.read("serving", TEXT::volume).map(Volume::millilitres).orElse(1.0);
        return above(asked, "serving", millilitres, "Write a volume above 0, such as 30ml.");
    }

    private static double body(AskedTexts asked) {
        double grams = asked.read("body", TEXT::mass).map(Mass::grams).orElse(1.0);
        return above(asked, "body", grams, "Write a weight above 0, such as 70kg.") / 1000.0;
    }

    private static double number(AskedTexts asked) {
        OptionalDouble servings = parsed(String.valueOf(asked.text("servings")));
        if (servings.isEmpty()) {
            asked.object("servings", "\"" + asked.text("servings") + "\" is no number.", "Write one, such as 2.");
            return 1.0;
        }
        return above(asked, "servings", servings.getAsDouble(), "Write a number above 0, such as 2.");
    }

    private static OptionalDouble parsed(String text) {
        try {
            double number = Double.parseDouble(text.strip().replace(',', '.'));
            return Double.isFinite(number) ? OptionalDouble.of(number) : OptionalDouble.empty();
        } catch (NumberFormatException noNumber) {
            return OptionalDouble.empty();
        }
    }

    /** Returns a value above zero, or objects and returns 1. */
    static double above(AskedTexts asked, String part, double value, String remedy) {
        if (value > 0.0) {
            return value;
        }
        asked.object(part, "it has to be above zero.", remedy);
        return 1.0;
    }

    private static Set<Place> places(AskedTexts asked) {
        if (!asked.has("place")) {
            return EnumSet.allOf(Place.class);
        }
        return asked.choice("place", List.of(Place.values()), Place::label)
                .map(place -> (Set<Place>) EnumSet.of(place))
                .orElse(Set.of());
    }
}
