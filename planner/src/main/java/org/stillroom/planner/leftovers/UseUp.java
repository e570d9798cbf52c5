package org.stillroom.planner.leftovers;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Aim;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.recipe.Target;
import org.stillroom.core.reference.Finding;

/**
 * A liqueur that uses several extracts up together, with strong spirit, sugar and water for the rest.
 *
 * <p>It is the smallest that takes all of them, in steps of 10 mL: more of it always takes them too, since what is added is spirit,
 * sugar and water, so that halving finds it. Where the largest that is wanted takes no more than a part of them, it is that one, and the
 * parts that go in are together as large as can be.
 *
 * @param plan with a line for each extract, in the order asked, then spirit, sugar and water
 * @param used how much of each extract goes in, in the order asked
 */
public record UseUp(Plan plan, List<Used> used) {
    /** Less than this part of an extract is nothing. */
    private static final double NOTHING = 1e-6;

    private static final double STEP = 10.0;
    private static final String SPIRIT = "spirit 96 %";

    public UseUp {
        used = List.copyOf(used);
    }

    /**
     * An extract of which something is left.
     *
     * @param ingredient what it is
     * @param grams left of it, above 0
     * @param mostPerLitre g that a litre of the liqueur may hold at most; infinite where the maker sets no bound
     */
    public record Extract(Ingredient ingredient, double grams, double mostPerLitre) {
        public Extract {
            if (!(grams > 0.0 && grams < Double.POSITIVE_INFINITY && mostPerLitre > 0.0)) {
                throw new IllegalArgumentException(
                        ingredient.name() + ": above 0 g are left and may go into a litre, not " + grams + " g and "
                                + mostPerLitre + " g");
            }
        }
    }

    /**
     * What is asked.
     *
     * @param extracts to use up, one at least
     * @param strength of the liqueur
     * @param sugar of the liqueur
     * @param mostMillilitres of it at most, at 20 °C
     */
    public record Asked(List<Extract> extracts, Typed<Span> strength, Typed<Span> sugar, double mostMillilitres) {
        public Asked {
            extracts = List.copyOf(extracts);
        }
    }

    /**
     * How much of an extract goes in.
     *
     * @param grams that go in
     * @param part of what was left, 0 to 1
     * @param perLitre g per litre of the liqueur
     * @param atItsMost whether the bound that the maker set keeps the rest out
     */
    public record Used(Extract extract, double grams, double part, double perLitre, boolean atItsMost) {
        public boolean isAll() {
            return part >= 1.0 - NOTHING;
        }

        /** Returns the part in %, whole; less than one in three figures, so that it does not read as none. */
        public String percent() {
            return part >= 0.01 ? QuantityWords.fixed(100.0 * part, 0) : QuantityWords.figures(100.0 * part);
        }
    }

    /** What comes of it: a liqueur, or why there is none. */
    public record Outcome(@Nullable UseUp found, List<Finding> problems) {
        public Outcome {
            problems = List.copyOf(problems);
        }
    }

    /** Returns the smallest liqueur that takes all, else the one of the largest volume that takes the most. */
    public static Outcome of(Asked asked) {
        Planning planning = planning(asked, asked.mostMillilitres());
        if (planning instanceof Planning.Refused refused) {
            return new Outcome(null, refused.problems());
        }
        UseUp largest = of(asked, ((Planning.Planned) planning).plan());
        return new Outcome(largest.isAll() ? smallest(asked, largest) : largest, List.of());
    }

    /** Returns whether nothing of the extracts is left. */
    public boolean isAll() {
        return plan.reached() && used.stream().allMatch(Used::isAll);
    }

    /** Returns how many bottles are emptied, parts of them counted as parts. */
    public double emptied() {
        return used.stream().mapToDouble(Used::part).sum();
    }

    private static UseUp smallest(Asked asked, UseUp largest) {
        long low = 0;
        long high = (long) Math.ceil(asked.mostMillilitres() / STEP);
        UseUp best = largest;
        while (high - low > 1) {
            long middle = (low + high) / 2;
            Planning planning = planning(asked, middle * STEP);
            UseUp tried = planning instanceof Planning.Planned planned ? of(asked, planned.plan()) : null;
            if (tried != null && tried.isAll()) {
                best = tried;
                high = middle;
            } else {
                low = middle;
            }
        }
        return best;
    }

    private static Planning planning(Asked asked, double millilitres) {
        List<Ingredient> ingredients = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        List<String> names = new ArrayList<>();
        for (Extract extract : asked.extracts()) {
            Ingredient ingredient = extract.ingredient();
            names.add(ingredient.name());
            ingredients.add(ingredient.withAtHand(grams(Math.min(extract.grams(), bound(extract, millilitres)))));
            lines.add(new Line(ingredient.name(), new LineAmount.Free(), null, null));
        }
        lines.add(new Line(SPIRIT, new LineAmount.Free(), null, null));
        lines.add(new Line("white sugar", new LineAmount.Free(), null, null));
        lines.add(new Line("water", new LineAmount.MakeUp(), null, null));
        Typed<Span> volume = new Typed<>(QuantityWords.metric(new Volume(millilitres)), Span.exactly(millilitres));
        Target target = new Target(volume, null, asked.strength(), asked.sugar(), SugarBasis.AS_DISSOLVED, null);
        Recipe recipe = Recipe.plain("Used up: " + String.join(", ", names), target, ingredients, lines)
                .aimedAt(Aim.usingUp(names));
        return Planner.plan(Making.alone(recipe));
    }

    private static double bound(Extract extract, double millilitres) {
        return extract.mostPerLitre() * millilitres / 1000.0;
    }

    private static Typed<Amount> grams(double grams) {
        Mass mass = new Mass(grams);
        return new Typed<>(QuantityWords.metric(mass), mass);
    }

    private static UseUp of(Asked asked, Plan plan) {
        List<Used> used = new ArrayList<>();
        for (int i = 0; i < asked.extracts().size(); i++) {
            Extract extract = asked.extracts().get(i);
            PlannedLine line = plan.lines().get(i);
            double bound = bound(extract, plan.millilitres());
            double part = Math.min(1.0, line.grams() / extract.grams());
            boolean atItsMost = part < 1.0 - NOTHING && line.grams() > bound * (1.0 - NOTHING);
            used.add(new Used(extract, line.grams(), part, 1000.0 * line.grams() / plan.millilitres(), atItsMost));
        }
        return new UseUp(plan, used);
    }
}
