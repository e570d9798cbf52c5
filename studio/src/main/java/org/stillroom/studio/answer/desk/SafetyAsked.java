package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Condition;
import org.stillroom.core.recipe.Treatment;
import org.stillroom.core.safety.Assay;
import org.stillroom.core.safety.Grounds;
import org.stillroom.core.safety.Place;
import org.stillroom.core.safety.Safety;
import org.stillroom.core.safety.Serving;
import org.stillroom.studio.usecase.WorkedPlan;

/**
 * Who drinks how much of it, whose law is asked, and what is known of the finished drink.
 *
 * @param serving who drinks how much, and where
 * @param condition what was measured and done
 * @param analysed what a laboratory found in it
 */
public record SafetyAsked(Serving serving, Condition condition, Assay analysed) {
    /** Lighter or heavier than this, kg, is a slip of the unit or of the point. Own judgement. */
    private static final double LIGHTEST = 10.0;

    private static final double HEAVIEST = 300.0;

    /** One serving. */
    static final Part SERVING = Part.usual("serving", "30ml", "what one serving is");

    /** pH, where it was measured. */
    static final Part PH =
            Part.text("ph", "pH of the finished drink, as measured; else what the recipe says, else not known");

    /** Whether it was heated so that it keeps. */
    static final Part PASTEURISED =
            new Part("pasteurised", "it was filled hot or heated in closed bottles", null, Part.Form.FLAG);

    /** What a laboratory found in it. */
    static final Part ANALYSED = Part.text(
            "analysed",
            "what a laboratory found in this very drink, such as thujone 8 mg/kg; hydrogen cyanide < 0.5 mg/L");

    /** What it takes. */
    public static final List<Part> PARTS = List.of(
            SERVING,
            Part.usual("servings", "2", "how many servings on one day"),
            Part.usual("body", "70kg", "what the drinker weighs"),
            Part.text("place", "whose law: EU or US; both when left out"),
            PH,
            PASTEURISED,
            ANALYSED);

    /**
     * Returns what was typed.
     *
     * @param typed texts by the names of {@link #PARTS}
     * @throws WrongInput when something is not understood
     */
    public static SafetyAsked of(Map<String, List<String>> typed, Manner manner, Objections objections) {
        AskedTexts asked = new AskedTexts(PARTS, typed, manner, objections);
        double millilitres = volume(asked);
        double perDay = number(asked);
        double kilograms = body(asked);
        Set<Place> places = places(asked);
        Condition condition = condition(asked);
        Assay analysed = analysed(asked);
        asked.refuseIfAnyWrong();
        return new SafetyAsked(new Serving(millilitres, perDay, kilograms, places), condition, analysed);
    }

    /** Returns what a laboratory found in the finished drink; notes what is not understood. */
    static Assay analysed(AskedTexts asked) {
        return asked.read("analysed", text -> Assay.read(text, TEXT)).orElse(Assay.NONE);
    }

    /** Returns the same for somebody else. */
    public SafetyAsked by(Serving other) {
        return new SafetyAsked(other, condition, analysed);
    }

    /** Returns what is known of the finished drink; notes what is not understood. */
    static Condition condition(AskedTexts asked) {
        Double ph = asked.read("ph", TEXT::ph).orElse(null);
        return new Condition(ph, asked.has("pasteurised") ? Treatment.PASTEURISED : Treatment.NONE);
    }

    /** Returns what is said of a drink. */
    public Safety answer(WorkedPlan worked) {
        Grounds grounds = worked.grounds();
        return Safety.of(
                worked.plan(),
                serving,
                grounds.with(condition.or(worked.plan().recipe().condition()))
                        .with(grounds.analyses().ofDrink(analysed)));
    }

    private static double volume(AskedTexts asked) {
        double millilitres =
                asked.read("serving", TEXT::volume).map(Volume::millilitres).orElse(1.0);
        return above(asked, "serving", millilitres, "Write a volume above 0, such as 30ml.");
    }

    private static double body(AskedTexts asked) {
        double grams = asked.read("body", TEXT::mass).map(Mass::grams).orElse(1.0);
        double kilograms = above(asked, "body", grams, "Write a weight above 0, such as 70kg.") / 1000.0;
        if (asked.isTyped("body") && grams > 0.0 && !(kilograms >= LIGHTEST && kilograms <= HEAVIEST)) {
            asked.object(
                    "body",
                    "that is no weight of a person: " + QuantityWords.plain(kilograms) + " kg.",
                    "Write one from 10 to 300 kg, such as 70kg.");
        }
        return kilograms;
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
