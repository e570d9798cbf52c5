package org.stillroom.core.plan;

/**
 * One change that by itself makes an unreachable target reachable; the least such change, so that a little less does not do.
 *
 * @param kind what is changed
 * @param line index of the recipe's line concerned, or −1 when a target is changed
 * @param asked the target concerned, or {@link Asked#VOLUME} and of no meaning when a line is changed
 * @param from value as it stands
 * @param to value at which the target is reached
 */
record WayOut(Kind kind, int line, Asked asked, double from, double to) {
    /** What can be changed. */
    enum Kind {
        /** Ask for less or more of a figure, in its unit. */
        TARGET,
        /** Use an ingredient of another strength, % vol at 20 °C. */
        STRENGTH_OF_INGREDIENT,
        /** Have more of an ingredient at hand, g. */
        AT_HAND,
        /** Take another fixed amount on a line, g. */
        FIXED_AMOUNT,
        /** Take another dose on a line, g per mL of finished liquid. */
        DOSE
    }
}
