package org.stillroom.core.batch;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Shown;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Root;

/**
 * What is left when ethanol and water have evaporated through wood or cork; sugar, acid and all that is dissolved stays.
 *
 * <p>How much went is known by weight. How much of that was ethanol follows from the strength afterwards where it was measured, by the
 * volume model. Where it was not, what went is taken to have been ethanol and water as they are in the liquid. In a dry room more water
 * goes and the strength rises, in a moist one it falls (common practice, no source); {@link #ends} tells how far at the most.
 */
public final class AngelsShare {
    private AngelsShare() {}

    /**
     * Strengths between which a loss leaves a liquid, % vol at 20 °C.
     *
     * @param lowest when ethanol alone went
     * @param highest when water alone went
     */
    public record Ends(double lowest, double highest) {}

    static Contents left(Contents before, Event.Evaporated evaporated) {
        double grams = evaporated.lost().grams();
        double ethanol = before.grams(Substance.ETHANOL);
        double water = before.grams(Substance.WATER);
        if (!(grams < ethanol + water)) {
            throw new CannotHaveHappened(
                    "more-evaporated-than-there-is",
                    "amount",
                    "Only " + QuantityWords.fixed(ethanol + water, 1) + " g of ethanol and water were in it; "
                            + QuantityWords.fixed(grams, 1) + " g cannot have evaporated.",
                    "Check the weights before and after.");
        }
        Double measured = evaporated.strengthAfter();
        return measured == null
                ? without(before, grams * ethanol / (ethanol + water), grams)
                : withStrength(before, grams, measured);
    }

    /**
     * Returns how far it may be off then: what went by a twentieth of itself, how it was parted by half of the ethanol, where no strength
     * was measured afterwards. Our own choice.
     */
    static Slips slips(Held before, Event.Evaporated evaporated, Contents now, String name) {
        double grams = evaporated.lost().grams();
        Double measured = evaporated.strengthAfter();
        Slips slips = before.slips().through(before.contents(), now, liquid -> left(liquid, evaporated));
        Contents less = tried(before, new Event.Evaporated(evaporated.place(), new Mass(0.95 * grams), measured));
        if (less != null) {
            slips = slips.plus(Slips.between(name + "the weight of what evaporated", less, now));
        }
        if (measured == null) {
            double ethanol = before.ethanol() - now.grams(Substance.ETHANOL);
            return slips.plus(Slips.between(
                    name + "the alcohol that evaporated", without(before.contents(), 0.5 * ethanol, grams), now));
        }
        for (double by : new double[] {1.0, -1.0}) {
            double end = measured + by * Shown.TRUE_STRENGTH.usualHalfWidth(measured);
            Contents other =
                    tried(before, new Event.Evaporated(evaporated.place(), evaporated.lost(), Math.max(0.0, end)));
            if (other != null) {
                return slips.plus(Slips.between(name + "the strength that was logged", now, other));
            }
        }
        return slips;
    }

    private static @Nullable Contents tried(Held before, Event.Evaporated evaporated) {
        try {
            return left(before.contents(), evaporated);
        } catch (CannotHaveHappened beyond) {
            return null;
        }
    }

    private static Contents withStrength(Contents before, double grams, double measured) {
        double least = Math.max(0.0, grams - before.grams(Substance.WATER));
        double most = Math.min(grams, before.grams(Substance.ETHANOL));
        Ends ends = ends(before, grams);
        if (!(measured >= ends.lowest() - 1e-9 && measured <= ends.highest() + 1e-9)) {
            throw new CannotHaveHappened(
                    "strength-does-not-fit-loss",
                    "strength",
                    "With " + QuantityWords.fixed(grams, 1) + " g gone the strength lies between "
                            + QuantityWords.fixed(ends.lowest(), 1) + " and " + QuantityWords.fixed(ends.highest(), 1)
                            + " % vol; " + QuantityWords.fixed(measured, 1) + " % vol cannot be.",
                    "Check the weights and the reading; or enter what was measured by itself, before the loss.");
        }
        double part = Root.of(p -> measured - strength(without(before, least + p * (most - least), grams)));
        return without(before, least + part * (most - least), grams);
    }

    /**
     * Returns how far a loss can move the strength.
     *
     * @param grams lost, less than there is of ethanol and water
     */
    public static Ends ends(Contents before, double grams) {
        double least = Math.max(0.0, grams - before.grams(Substance.WATER));
        double most = Math.min(grams, before.grams(Substance.ETHANOL));
        return new Ends(strength(without(before, most, grams)), strength(without(before, least, grams)));
    }

    private static double strength(Contents contents) {
        return Essentials.of(contents.toGrams()).strength();
    }

    /** Returns the contents with so much ethanol gone, and water for the rest of the loss. */
    private static Contents without(Contents before, double ethanol, double grams) {
        double left = Math.max(0.0, before.grams(Substance.ETHANOL) - ethanol);
        double water = Math.max(0.0, before.grams(Substance.WATER) - (grams - ethanol));
        return before.with(Substance.ETHANOL, left).with(Substance.WATER, water);
    }
}
