package org.stillroom.core.safety;

import java.util.List;
import java.util.function.BiFunction;
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
        return perLitre(drink, Held::yolk);
    }

    private static Held yolk(PlannedLine line, Range grams) {
        if (line.ingredient().kind() != Kind.EGG) {
            return new Held(Range.NOTHING, !Words.any(line.name(), EGG));
        } else if (Words.any(line.name(), YOLK)) {
            return new Held(grams, true);
        }
        return Words.any(line.name(), WHITE) ? NOTHING : new Held(grams.times(YOLK_OF_EGG), true);
    }

    /** Returns how many fresh sloes there are; what the fresh weighed of dried ones, and of extracts of which nobody says how much, is not known. */
    static Held sloes(Drink drink) {
        return perLitre(drink, (line, grams) -> sloes(drink, line, grams));
    }

    private static Held sloes(Drink drink, PlannedLine line, Range grams) {
        Resolved ingredient = line.ingredient();
        boolean named = Words.any(line.words(), SLOE);
        if (named && ingredient.kind() == Kind.FRESH_PLANT) {
            return new Held(grams, true);
        } else if (named && ingredient.gramsOfPlant() > 0.0) {
            return new Held(grams.times(ingredient.gramsOfPlant()), true);
        }
        return new Held(Range.NOTHING, !named && !Presence.isOpen(drink, line));
    }

    /** Returns what all lines bring, stages by the part of them that is drawn; of several bottles any may be all of a line. */
    private static Held perLitre(Drink drink, BiFunction<PlannedLine, Range, Held> grams) {
        Held all = NOTHING;
        for (Leaf leaf : Leaf.of(drink.planned())) {
            all = all.plus(drink.bottles(leaf.line()).stream()
                    .map(bottle -> grams.apply(bottle, leaf.grams()))
                    .reduce(Held::or)
                    .orElse(NOTHING));
        }
        return new Held(all.gramsPerLitre.times(1.0 / drink.litres()), all.isKnown);
    }

    private Held plus(Held other) {
        return new Held(gramsPerLitre.plus(other.gramsPerLitre), isKnown && other.isKnown);
    }

    private Held or(Held other) {
        return new Held(FarAnalysis.hull(gramsPerLitre, other.gramsPerLitre), isKnown && other.isKnown);
    }
}
