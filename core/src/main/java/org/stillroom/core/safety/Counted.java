package org.stillroom.core.safety;

import org.stillroom.core.ingredient.Kind;

/**
 * How far energy and sugar of a drink are counted, by what is said of what goes in.
 *
 * @param energy against the factors of the law
 * @param sugar of everything in it
 */
public record Counted(Counted.Side energy, Counted.Side sugar) {
    /** On which side of what is counted the true figure lies. */
    public enum Side {
        /** It is what is counted. */
        THERE("as counted"),
        /** Something in it is not counted. */
        ABOVE("at least"),
        /** Something in it is counted higher than by law. */
        BELOW("at most"),
        /** Both, so that nobody knows. */
        ANYWHERE("not known");

        private final String label;

        Side(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }

        private static Side of(boolean isLow, boolean isHigh) {
            if (isLow) {
                return isHigh ? ANYWHERE : ABOVE;
            }
            return isHigh ? BELOW : THERE;
        }
    }

    /** Returns how far they are counted of a drink; an egg has next to no sugar. */
    public static Counted of(Drink drink) {
        boolean isSugarLow = EnergyFactors.uncounted(drink).stream()
                .map(line -> line.ingredient().ingredient())
                .anyMatch(each -> each.kind() != Kind.EGG && EnergyFactors.isSugarUnsaid(each));
        return new Counted(
                Side.of(!EnergyFactors.uncounted(drink).isEmpty(), EnergyFactors.isHigh(drink)),
                Side.of(isSugarLow, false));
    }
}
