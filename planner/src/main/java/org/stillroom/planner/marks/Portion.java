package org.stillroom.planner.marks;

import java.util.OptionalDouble;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.Temperature;

/**
 * A line as instruments meet it: what a millilitre of it weighs in this room.
 *
 * @param line what the plan takes
 * @param gramsPerMillilitre at the room's temperature, solids by their bulk; empty when it is not known
 */
record Portion(PlannedLine line, OptionalDouble gramsPerMillilitre) {

    static Portion of(PlannedLine line, Temperature room) {
        PlannedLine gram = new PlannedLine(line.line(), line.ingredient(), 1.0);
        OptionalDouble poured = gram.millilitresAt(room);
        OptionalDouble millilitres = poured.isPresent() ? poured : gram.measurable();
        OptionalDouble density =
                millilitres.isPresent() ? OptionalDouble.of(1.0 / millilitres.getAsDouble()) : millilitres;
        return new Portion(line, density);
    }

    double gramsPerDrop() {
        return line.ingredient().gramsPerDrop();
    }

    /** Returns within which part of its weight a drop lies. */
    double dropDoubt() {
        return line.ingredient().dropDoubt();
    }

    double grams() {
        return line.grams();
    }

    boolean isSolid() {
        return line.ingredient().solid();
    }
}
