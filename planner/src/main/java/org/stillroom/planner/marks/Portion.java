package org.stillroom.planner.marks;

import java.util.OptionalDouble;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Typed;

/**
 * A line as instruments meet it: what a millilitre and a drop of it weigh in this room.
 *
 * @param line what the plan takes
 * @param gramsPerMillilitre at the room's temperature, solids by their bulk; empty when it is not known
 * @param gramsPerDrop from the maker's own dropper where that was weighed, else from the official one
 * @param dropWeighed whether the maker said what a drop holds
 */
record Portion(PlannedLine line, OptionalDouble gramsPerMillilitre, double gramsPerDrop, boolean dropWeighed) {

    static Portion of(PlannedLine line, Temperature room) {
        PlannedLine gram = new PlannedLine(line.line(), line.ingredient(), 1.0);
        OptionalDouble poured = gram.millilitresAt(room);
        OptionalDouble millilitres = poured.isPresent() ? poured : gram.measurable();
        OptionalDouble density =
                millilitres.isPresent() ? OptionalDouble.of(1.0 / millilitres.getAsDouble()) : millilitres;
        Typed<Amount> drop = line.ingredient().ingredient().drop();
        return new Portion(line, density, line.ingredient().gramsPerDrop(), drop != null);
    }

    double grams() {
        return line.grams();
    }

    boolean isSolid() {
        return line.ingredient().solid();
    }
}
