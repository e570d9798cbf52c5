package org.stillroom.core.liquid;

import java.util.Objects;
import org.stillroom.core.acid.Acid;
import org.stillroom.core.acid.AcidSolution;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.Volume;

/**
 * An acid solution made by volume: so many grams of anhydrous acid in a litre at 20 °C.
 *
 * @param made what to weigh
 * @param strength acid per mass of the solution
 * @param density kg/m³ at 20 °C
 */
public record AcidByVolume(AcidSolution made, MassFraction strength, double density) {
    /**
     * Returns what makes so much solution.
     *
     * @param volume of the solution at 20 °C
     * @throws IllegalArgumentException when the acid alone takes more room than that
     */
    public static AcidByVolume of(Acid acid, MassConcentration strength, Volume volume, AcidSolution.Form form) {
        Substance substance = substance(acid);
        double grams = strength.gramsPerLitre() * volume.litres();
        Contents solution = MadeUp.withWater(Contents.of(substance, grams), volume);
        double total = solution.total();
        MassFraction byMass = new MassFraction(grams / total);
        return new AcidByVolume(
                AcidSolution.ofSolution(byMass, new Mass(total), form), byMass, 1000.0 * total / volume.millilitres());
    }

    private static Substance substance(Acid acid) {
        for (Substance substance : Substance.values()) {
            if (substance.acid() == acid) {
                return substance;
            }
        }
        throw new IllegalArgumentException(Objects.requireNonNull(acid).label() + " acid is no substance of a liquid");
    }
}
