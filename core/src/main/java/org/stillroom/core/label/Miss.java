package org.stillroom.core.label;

/**
 * A figure that a class asks for and that is not met.
 *
 * @param what "strength" or "sugar"
 * @param found the figure of the drink
 * @param wanted the bound
 * @param unit of both
 * @param way "at least", "more than", "at most" or "less than"
 */
public record Miss(String what, double found, double wanted, String unit, String way) {
    /** Returns by how much it is missed, in its unit. */
    public double by() {
        return Math.abs(found - wanted);
    }
}
