package org.stillroom.bench;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.plan.Taken;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.recipe.Target;

/**
 * A recipe of twelve lines: four free, one dosed, seven fixed; 1 L at 28 % vol with 180 g/L sugar and 5 g/L acid asked for.
 *
 * <p>All are ingredients that need no listing, so that nothing is read from a file.
 */
final class TwelveLines {
    static final double MILLILITRES = 1000.0;
    static final double STRENGTH = 28.0;
    static final double SUGAR = 180.0;
    static final double ACIDITY = 5.0;

    private static final QuantityText TEXT = new QuantityText(OunceMeaning.US_FLUID);

    private TwelveLines() {}

    static Making making() {
        List<Line> lines = new ArrayList<>();
        for (String name : List.of("spirit 96 %", "white sugar", "citric acid", "water")) {
            lines.add(new Line(name, new LineAmount.Free(), null, null));
        }
        lines.add(new Line("glycerol", new LineAmount.PerLitre(typed(TEXT.dose("5 g/L"))), null, null));
        lines.add(fixed("vodka 40 %", "60 ml"));
        lines.add(fixed("honey", "40 g"));
        lines.add(fixed("simple syrup 2:1", "30 g"));
        lines.add(fixed("glucose", "10 g"));
        lines.add(fixed("malic acid", "1 g"));
        lines.add(fixed("tartaric acid", "0.5 g"));
        lines.add(fixed("salt", "0.2 g"));
        Target target = new Target(
                typed(TEXT.volumeSpan("1 L")),
                null,
                typed(TEXT.strengthSpan("28 %")),
                typed(TEXT.sugarSpan("180 g/L")),
                SugarBasis.AS_DISSOLVED,
                typed(TEXT.aciditySpan("5 g/L")));
        return Making.alone(new Recipe(
                "Twelve lines",
                null,
                target,
                List.of(),
                lines,
                List.of(),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                List.of(),
                null));
    }

    private static Line fixed(String name, String amount) {
        return new Line(name, new LineAmount.Fixed(typed(TEXT.amount(amount))), null, null);
    }

    private static <Q> Typed<Q> typed(Understanding<Q> understanding) {
        if (understanding instanceof Understanding.Understood<Q> understood) {
            return understood.typed();
        }
        throw new IllegalStateException(understanding.toString());
    }

    static Plan plan(Making making) {
        if (Planner.plan(making) instanceof Planning.Planned planned
                && planned.plan().reached()) {
            return planned.plan();
        }
        throw new IllegalStateException("the recipe of twelve lines cannot be planned");
    }

    static double[][] perGram(Plan plan) {
        return plan.lines().stream()
                .map(line -> line.ingredient().perGram().toGrams())
                .toArray(double[][]::new);
    }

    static double[] grams(Plan plan) {
        return plan.lines().stream().mapToDouble(PlannedLine::grams).toArray();
    }

    /** Returns what is taken on a scale that is right to 0.1 g. */
    static List<Taken> taken(Plan plan) {
        return plan.lines().stream().map(line -> new Taken(line.grams(), 0.1)).toList();
    }
}
