package org.stillroom.planner.marks;

import java.util.OptionalDouble;
import org.stillroom.core.drops.OfficialDropper;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;

/**
 * A line as instruments meet it: what a millilitre and a drop of it weigh in this room.
 *
 * @param line what the plan takes
 * @param gramsPerMillilitre at the room's temperature, solids by their bulk; empty when it is not known
 * @param gramsPerDrop from the maker's own dropper where that was weighed, else from the official one
 * @param dropDoubt half-width within which the drop lies, part of it: less where the maker said what a drop holds
 */
record Portion(PlannedLine line, OptionalDouble gramsPerMillilitre, double gramsPerDrop, double dropDoubt) {
    /** How far drops of one weighed dropper differ; from memory, after the pharmacopoeial allowance of 10 %. */
    private static final double WEIGHED_DROPPER = OfficialDropper.ALLOWANCE;

    static Portion of(PlannedLine line, Temperature room) {
        PlannedLine gram = new PlannedLine(line.line(), line.ingredient(), 1.0);
        OptionalDouble poured = gram.millilitresAt(room);
        OptionalDouble millilitres = poured.isPresent() ? poured : gram.measurable();
        OptionalDouble density =
                millilitres.isPresent() ? OptionalDouble.of(1.0 / millilitres.getAsDouble()) : millilitres;
        return new Portion(line, density, line.ingredient().gramsPerDrop(), dropDoubt(line.ingredient()));
    }

    private static double dropDoubt(Resolved ingredient) {
        Typed<Amount> drop = ingredient.ingredient().drop();
        if (drop == null) {
            return OfficialDropper.RELATIVE_DOUBT;
        }
        double ofDensity = drop.value() instanceof Volume ? ingredient.relativeDensityDoubt() : 0.0;
        return Math.hypot(WEIGHED_DROPPER, ofDensity);
    }

    double grams() {
        return line.grams();
    }

    boolean isSolid() {
        return line.ingredient().solid();
    }
}
