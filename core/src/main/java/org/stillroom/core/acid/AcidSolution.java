package org.stillroom.core.acid;

import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.MassFraction;

/**
 * An acid solution made by mass: so much anhydrous acid in so much of the whole.
 *
 * @param acid anhydrous acid, g
 * @param asWeighed the acid in the form that is weighed; heavier where it brings water of crystallisation
 * @param water water to add, g
 */
public record AcidSolution(Mass acid, Mass asWeighed, Mass water) {
    /** The form in which the acid is weighed. */
    public enum Form {
        /** Acid alone. */
        ANHYDROUS,
        /** Citric acid with one water: 210.139 g/mol hold 192.124 g/mol of acid. */
        CITRIC_MONOHYDRATE;

        /** Returns grams of this form that bring one gram of anhydrous acid. */
        public double gramsPerGramOfAcid() {
            return switch (this) {
                case ANHYDROUS -> 1.0;
                case CITRIC_MONOHYDRATE -> Acid.CITRIC_MONOHYDRATE_GRAMS_PER_MOLE / Acid.CITRIC.gramsPerMole();
            };
        }
    }

    /**
     * Returns what makes so much solution.
     *
     * @param strength anhydrous acid per mass of solution
     * @param solution mass of the solution
     * @throws IllegalArgumentException when the acid's own water already dilutes it further
     */
    public static AcidSolution ofSolution(MassFraction strength, Mass solution, Form form) {
        double acid = strength.fraction() * solution.grams();
        return weighed(acid, solution.grams(), form);
    }

    /** Returns what makes a solution of all the acid that is on hand, given in the form that it is in. */
    public static AcidSolution ofAcid(MassFraction strength, Mass onHand, Form form) {
        if (!(strength.fraction() > 0.0)) {
            throw new IllegalArgumentException("a solution of 0 % takes no acid; give a strength above 0 % by mass");
        }
        double acid = onHand.grams() / form.gramsPerGramOfAcid();
        return weighed(acid, acid / strength.fraction(), form);
    }

    private static AcidSolution weighed(double acid, double solution, Form form) {
        double asWeighed = acid * form.gramsPerGramOfAcid();
        if (!(asWeighed <= solution)) {
            throw new IllegalArgumentException("this acid brings water of its own and is at most "
                    + Math.floor(1000.0 / form.gramsPerGramOfAcid()) / 10.0
                    + " % acid by mass; ask for a weaker solution");
        }
        return new AcidSolution(new Mass(acid), new Mass(asWeighed), new Mass(solution - asWeighed));
    }
}
