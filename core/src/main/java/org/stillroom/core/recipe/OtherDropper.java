package org.stillroom.core.recipe;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.drops.OwnDropper;
import org.stillroom.core.quantity.Dose;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Typed;

/**
 * A recipe whose line is dosed with another dropper than it was written for.
 *
 * <p>Where the recipe says what dropper its drops were counted with, they are counted anew, so that as much of the liquid goes in. Where
 * it does not, or says what a drop of this very liquid weighs, the count stays.
 */
public final class OtherDropper {
    private OtherDropper() {}

    /**
     * Returns the recipe with the line dosed with this dropper.
     *
     * @param index of a line in drops
     */
    public static Recipe in(Recipe recipe, int index, Measure dropper) {
        Line line = recipe.lines().get(index);
        List<Measure> measures = new ArrayList<>(recipe.measures());
        measures.removeIf(each -> each.name().equals(dropper.name()));
        measures.add(dropper);
        List<Line> lines = new ArrayList<>(recipe.lines());
        lines.set(
                index, new Line(line.use(), counted(recipe, line, dropper), dropper.name(), line.note(), line.meant()));
        return recipe.measuredWith(measures).withLines(lines);
    }

    private static LineAmount counted(Recipe recipe, Line line, Measure dropper) {
        OwnDropper before = dropperOf(recipe.dropper(line));
        OwnDropper now = dropper.ownDropper();
        return before == null || now == null || isWeighed(recipe, line)
                ? line.amount()
                : times(line.amount(), before.times() / now.times());
    }

    private static @Nullable OwnDropper dropperOf(@Nullable Measure measure) {
        return measure == null ? null : measure.ownDropper();
    }

    private static boolean isWeighed(Recipe recipe, Line line) {
        return recipe.ingredients().stream().anyMatch(each -> each.name().equals(line.use()) && each.drop() != null);
    }

    /** Drops per litre keep their fraction, since they are rounded for the batch; a count of its own is whole. */
    private static LineAmount times(LineAmount amount, double factor) {
        if (amount instanceof LineAmount.PerLitre dosed && dosed.dose().value().perLitre() instanceof Drops drops) {
            Drops counted = new Drops(factor * drops.count());
            return new LineAmount.PerLitre(
                    new Typed<>(QuantityWords.figures(counted.count()) + " drops/L", new Dose(counted)));
        }
        if (amount instanceof LineAmount.Fixed fixed && fixed.amount().value() instanceof Drops drops) {
            Drops counted = new Drops(Math.max(1L, Math.round(factor * drops.count())));
            return new LineAmount.Fixed(new Typed<>(QuantityWords.metric(counted), counted));
        }
        return amount;
    }
}
