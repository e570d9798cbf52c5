package org.stillroom.core.safety;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.plan.PlannedLine;

/**
 * How much of something a drink holds that lawful names ask for.
 *
 * @param gramsPerLitre of what is known, at 20 °C
 * @param isKnown whether the most is known
 */
public record Held(Range gramsPerLitre, boolean isKnown) {
    /** Yolk in shelled egg, by mass. From memory: 28 to 36 %. */
    private static final Range YOLK_OF_EGG = new Range(0.28, 0.36);

    private static final List<String> YOLK =
            List.of(" yolk", " eigelb", " eigelbe", " dotter", " eidotter", " flüssigeigelb");
    private static final List<String> WHITE = List.of(" white", " albumen", " eiweiß", " eiweiss", " eiklar");
    private static final List<String> EGG = List.of(
            " egg",
            " yolk",
            " advocaat",
            " custard",
            " eier",
            " vollei",
            " eigelb",
            " dotter",
            " eidotter",
            " eierlikör");

    private static final List<String> SLOE = List.of(" sloe", " blackthorn");

    private static final Held NOTHING = new Held(Range.NOTHING, true);

    /** Returns how much there is of a watched substance; where nothing is expected to bring any, there is none. */
    static Held of(Drink drink, String watched) {
        @Nullable Amount amount = drink.amount(watched);
        boolean allRecognised = drink.portions().stream().noneMatch(Portion::isNotRecognised);
        if (amount == null) {
            return new Held(Range.NOTHING, allRecognised);
        }
        return new Held(amount.perLitre().times(1e-3), amount.isKnown() && allRecognised);
    }

    /** Returns how much egg yolk there is; whole egg is yolk in part, and of what is bought with egg in it nobody knows. */
    static Held yolk(Drink drink) {
        Held yolk = NOTHING;
        for (PlannedLine line : drink.linesOnce()) {
            Range grams = new Range(line.grams(), line.grams());
            if (line.ingredient().kind() != Kind.EGG) {
                boolean bought = Words.any(line.name(), EGG)
                        && line.ingredient().ingredient().from() == null;
                yolk = bought ? new Held(yolk.gramsPerLitre(), false) : yolk;
            } else if (Words.any(line.name(), YOLK)) {
                yolk = yolk.plus(grams);
            } else if (!Words.any(line.name(), WHITE)) {
                yolk = yolk.plus(grams.times(YOLK_OF_EGG));
            }
        }
        return new Held(yolk.gramsPerLitre().times(1.0 / drink.litres()), yolk.isKnown());
    }

    /** Returns how many fresh sloes there are; what the fresh weighed of dried ones, and of extracts of which nobody says how much, is not known. */
    static Held sloes(Drink drink) {
        Held sloes = NOTHING;
        for (Leaf leaf : Leaf.of(drink.plan())) {
            Resolved ingredient = leaf.line().ingredient();
            boolean named = Words.any(leaf.line().words(), SLOE);
            if (named && ingredient.kind() == Kind.FRESH_PLANT) {
                sloes = sloes.plus(leaf.grams());
            } else if (named && ingredient.gramsOfPlant() > 0.0) {
                sloes = sloes.plus(leaf.grams().times(ingredient.gramsOfPlant()));
            } else if (named || Presence.isOpen(drink, leaf.line())) {
                sloes = new Held(sloes.gramsPerLitre(), false);
            }
        }
        return new Held(sloes.gramsPerLitre().times(1.0 / drink.litres()), sloes.isKnown());
    }

    private Held plus(Range grams) {
        return new Held(gramsPerLitre.plus(grams), isKnown);
    }
}
