package org.stillroom.studio.usecase.left;

import java.util.List;
import java.util.OptionalDouble;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.plan.Slips;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Volume;

/**
 * How much of an extract a litre of liqueur may hold at most, when several are used up together.
 *
 * @param gramsPerLitre infinite where nothing bounds it
 * @param from what it rests on
 */
record DoseBound(double gramsPerLitre, From from) {
    /** What a bound rests on. */
    enum From {
        /** The maker typed it. */
        TYPED,
        /** The strongest dose of the maker's own recipes. */
        RECIPES,
        /** The most of an oil that is plausible. */
        OIL,
        /** What law or the house allows of its substances, at worst. */
        LAW,
        /** What stays dissolved of its oil, by the forecast. */
        DISSOLVED,
        /** Nothing. */
        NONE
    }

    /** Returns the bound where the maker named none. */
    static DoseBound usual(LeftOver left, List<Candidate> recipes) {
        double strongest = 0.0;
        for (Candidate recipe : recipes) {
            if (recipe.making() != null && Planner.plan(recipe.made()) instanceof Planning.Planned planned) {
                strongest = Math.max(strongest, perLitre(planned.plan(), left));
            }
        }
        if (strongest > 0.0) {
            return new DoseBound(strongest, From.RECIPES);
        }
        Resolved resolved = left.stocked().resolved();
        double oil = resolved.perGram().grams(Substance.OIL);
        return oil > 0.0
                ? new DoseBound(Slips.mostOil(left.name(), resolved.perGram()) / oil, From.OIL)
                : new DoseBound(Double.POSITIVE_INFINITY, From.NONE);
    }

    /** A dose is a volume to who pours it: what the shelf holds may be stronger than what the recipe lists, and weigh less. */
    private static double perLitre(Plan plan, LeftOver left) {
        OptionalDouble density = left.stocked().resolved().gramsPerMillilitre();
        double grams = 0.0;
        for (PlannedLine line : plan.lines()) {
            if (Generics.same(line.name(), left.name())) {
                boolean byVolume = line.millilitres().isPresent() && density.isPresent();
                grams += byVolume ? line.millilitres().getAsDouble() * density.getAsDouble() : line.grams();
            }
        }
        return plan.millilitres() > 0.0 ? 1000.0 * grams / plan.millilitres() : 0.0;
    }

    /** Returns the grams of an amount of an ingredient; empty for a volume of what has no known density. */
    static OptionalDouble grams(Amount amount, Resolved resolved) {
        if (amount instanceof Mass mass) {
            return OptionalDouble.of(mass.grams());
        }
        if (amount instanceof Drops drops) {
            return OptionalDouble.of(drops.count() * resolved.gramsPerDrop());
        }
        OptionalDouble density = resolved.gramsPerMillilitre();
        return density.isPresent()
                ? OptionalDouble.of(((Volume) amount).millilitres() * density.getAsDouble())
                : density;
    }
}
