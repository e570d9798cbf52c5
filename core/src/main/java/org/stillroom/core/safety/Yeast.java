package org.stillroom.core.safety;

import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;

/**
 * What yeast finds in a liquid: alcohol and sugar that hold it, or sugar to work on.
 *
 * <p>Bounds from memory and common practice: docs/how-it-works/growth.md.
 *
 * @param strength % vol
 * @param sugar g/L, as dissolved
 */
public record Yeast(double strength, double sugar) {
    /** From here on yeast does not work, % vol. From memory, common practice: 17 to 18. */
    public static final double STOPS = 18.0;
    /** Units of Delle from which yeast is held. Source: DELLE. */
    public static final double DELLE_HOLDS = 78.0;
    /** Less sugar than this is nothing to ferment, g/L. Own judgement. */
    private static final double FERMENTABLE = 5.0;

    /** Returns what it finds in a liquid that is not empty. */
    public static Yeast in(Contents liquid) {
        Essentials essentials = Essentials.of(liquid.toGrams());
        return new Yeast(essentials.strength(), essentials.sugar());
    }

    /** Returns the units of Delle: grams of sugar in 100 mL and 4.5 times % vol. */
    public double delle() {
        return sugar / 10.0 + 4.5 * strength;
    }

    /** Returns whether there is sugar to work on and not alcohol enough to stop it; that sugar holds it besides is from memory, and clears nothing. */
    public boolean findsFood() {
        return sugar >= FERMENTABLE && strength < STOPS;
    }

    /** Returns whether it can work here, once something brings it in: it finds food, and alcohol and sugar together do not hold it either. */
    public boolean canWork() {
        return findsFood() && delle() < DELLE_HOLDS;
    }
}
