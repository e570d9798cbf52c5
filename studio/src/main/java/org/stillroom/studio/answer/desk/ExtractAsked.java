package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.stillroom.core.extraction.ExtractStrength;
import org.stillroom.core.ingredient.PlantRatio;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.studio.usecase.FollowDose;
import org.stillroom.studio.usecase.FollowDose.Basis;

/** How strong an extract is beside the recipe's, as it is typed: by plant to extract, by a constituent, by what tasted equally strong. */
public final class ExtractAsked {
    static final String RATIO = "ratio";
    static final String MINE = "mine";
    static final String CONTENT = "content";
    static final String MY_CONTENT = "my-content";
    static final String EQUAL = "equal";

    /** What it takes. */
    public static final List<Part> PARTS = List.of(
            Part.text(RATIO, "of the recipe's extract, plant to extract, such as 1:5, or 200g/L"),
            Part.text(MINE, "the same of yours, such as 1:8, or 125g/L"),
            Part.text(CONTENT, "a constituent of the recipe's extract, a number in any unit, such as 12 or 12%"),
            Part.text(MY_CONTENT, "the same of yours, in that unit"),
            new Part(
                    EQUAL,
                    "what tasted equally strong, as RECIPE=MINE in one unit, such as 10ml=8ml",
                    null,
                    Part.Form.NAMED_TEXTS));

    private ExtractAsked() {}

    /**
     * Returns how strong it is by each basis that was typed.
     *
     * @param typed texts by the names of {@link #PARTS}
     * @throws WrongInput when something is not understood
     */
    public static Map<Basis, ExtractStrength> of(Map<String, List<String>> typed, Manner manner) {
        AskedTexts asked = new AskedTexts(PARTS, typed, manner, new Objections());
        Map<Basis, ExtractStrength> strengths = of(asked);
        asked.refuseIfAnyWrong();
        return strengths;
    }

    /** Returns how strong it is by each basis that was typed and understood; notes what was not. */
    static Map<Basis, ExtractStrength> of(AskedTexts asked) {
        Map<Basis, ExtractStrength> strengths = new EnumMap<>(Basis.class);
        byTaste(asked).ifPresent(strength -> strengths.put(Basis.TASTE, strength));
        byContents(asked, CONTENT, MY_CONTENT, part -> asked.read(part, ExtractAsked::content))
                .ifPresent(strength -> strengths.put(Basis.CONSTITUENT, strength));
        byContents(
                        asked,
                        RATIO,
                        MINE,
                        part -> asked.read(part, MacerateAsked::plantRatio).map(PlantRatio::gramsPerMillilitre))
                .ifPresent(strength -> strengths.put(Basis.RATIO, strength));
        return strengths;
    }

    private static Understanding<Double> content(String text) {
        String bare = text.strip().endsWith("%")
                ? text.strip().substring(0, text.strip().length() - 1)
                : text;
        return TEXT.number(bare) instanceof Understanding.Understood<Double> understood
                ? understood
                : new Understanding.Refused<>(
                        text, "a number is wanted, in the same unit for both extracts, such as 12 or 12 %");
    }

    private static Optional<ExtractStrength> byContents(
            AskedTexts asked, String ofRecipe, String ofMine, Function<String, Optional<Double>> reading) {
        if (!asked.has(ofRecipe) && !asked.has(ofMine)) {
            return Optional.empty();
        }
        Optional<Double> one = reading.apply(ofRecipe);
        Optional<Double> other = reading.apply(ofMine);
        String missing = asked.has(ofRecipe) ? ofMine : ofRecipe;
        if (!asked.has(missing)) {
            asked.object(missing, "it is missing.", "Give it of both extracts, on the same basis.");
        }
        if (one.isEmpty() || other.isEmpty()) {
            return Optional.empty();
        }
        if (!(one.get() > 0.0 && other.get() > 0.0)) {
            asked.object(ofRecipe, "a content lies above zero.", "Give both in the same unit.");
            return Optional.empty();
        }
        return Optional.of(ExtractStrength.byContent(one.get(), other.get()));
    }

    private static Optional<ExtractStrength> byTaste(AskedTexts asked) {
        List<ExtractStrength.Comparison> comparisons = new ArrayList<>();
        for (String text : asked.texts(EQUAL)) {
            String[] sides = text.split("=", -1);
            Optional<Amount> one = sides.length == 2 ? asked.read(EQUAL, sides[0], TEXT::amount) : Optional.empty();
            Optional<Amount> other = sides.length == 2 ? asked.read(EQUAL, sides[1], TEXT::amount) : Optional.empty();
            if (sides.length != 2) {
                asked.object(EQUAL, "\"" + text + "\" compares nothing.", "Write it such as 10ml=8ml.");
            } else if (one.isPresent() && other.isPresent()) {
                comparison(asked, text, one.get(), other.get()).ifPresent(comparisons::add);
            }
        }
        return comparisons.isEmpty() ? Optional.empty() : Optional.of(ExtractStrength.byComparison(comparisons));
    }

    private static Optional<ExtractStrength.Comparison> comparison(
            AskedTexts asked, String text, Amount one, Amount other) {
        double ofRecipe = FollowDose.number(one);
        double ofMine = FollowDose.number(other);
        if (one.getClass() == other.getClass() && ofRecipe > 0.0 && ofMine > 0.0) {
            return Optional.of(new ExtractStrength.Comparison(ofRecipe, ofMine));
        }
        asked.object(EQUAL, "\"" + text + "\" is not one unit above zero.", "Give both by volume, or both by mass.");
        return Optional.empty();
    }
}
