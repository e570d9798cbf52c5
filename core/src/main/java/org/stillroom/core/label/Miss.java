package org.stillroom.core.label;

/**
 * A figure that a class asks for and that is not met.
 *
 * @param what "strength", "sugar", or something that it holds
 * @param found the figure of the drink
 * @param wanted the bound
 * @param unit of both
 * @param way "at least", "more than", "at most" or "less than"
 */
public record Miss(String what, double found, double wanted, String unit, String way) {
    /** Returns whether it is of something that is in the drink, beside its strength and its sugar. */
    public boolean isOfContents() {
        return !what.equals(LegalClasses.STRENGTH) && !what.equals(LegalClasses.SUGAR);
    }

    /** Returns whether there is too much of it, not too little. */
    public boolean isOver() {
        return found > wanted;
    }

    /** Returns by how much it is missed, in its unit. */
    public double by() {
        return Math.abs(found - wanted);
    }
}
