package org.stillroom.planner.marks;

import java.util.OptionalDouble;
import org.stillroom.core.drops.OfficialDropper;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;

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
        double perDrop = drop == null
                ? OfficialDropper.gramsPerDrop(line.ingredient().perGram())
                : gramsOfDrop(line, drop.value());
        return new Portion(line, density, perDrop, drop != null);
    }

    private static double gramsOfDrop(PlannedLine line, Amount drop) {
        if (drop instanceof Mass mass) {
            return mass.grams();
        }
        OptionalDouble density = line.ingredient().gramsPerMillilitre();
        return drop instanceof Volume volume && density.isPresent()
                ? volume.millilitres() * density.getAsDouble()
                : OfficialDropper.gramsPerDrop(line.ingredient().perGram());
    }

    double grams() {
        return line.grams();
    }

    boolean isSolid() {
        return line.ingredient().solid();
    }
}
