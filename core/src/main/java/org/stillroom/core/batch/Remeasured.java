package org.stillroom.core.batch;

import java.util.Map;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;

/**
 * A liquid brought to what was measured of it.
 *
 * <p>Ethanol follows the strength, sugars and acids keep their proportions among themselves, everything else keeps its concentration,
 * and water fills it up to the volume. Where there was no sugar or no acid to stretch, sucrose and citric acid are taken.
 */
final class Remeasured {
    private Remeasured() {}

    static Contents of(Contents before, Event.Measured measured) {
        if (!(before.total() > 0.0)) {
            throw nothingThere(measured.place());
        }
        Essentials reckoned = Essentials.of(before.toGrams());
        Map<Asked, Double> figures = measured.figures();
        double volume = figures.getOrDefault(Asked.VOLUME, reckoned.millilitres());
        double strength = figures.getOrDefault(Asked.STRENGTH, reckoned.strength());
        double sugar = figures.getOrDefault(Asked.SUGAR, reckoned.sugar());
        double acidity = figures.getOrDefault(Asked.ACIDITY, reckoned.acidity());
        boolean possible =
                volume > 0.0 && volume < 1e9 && strength >= 0.0 && strength <= 100.0 && sugar >= 0.0 && acidity >= 0.0;
        if (possible) {
            Contents dry = dissolved(before, reckoned, volume, sugar, acidity)
                    .with(Substance.ETHANOL, MadeUp.ethanolOfLitre(strength) * volume / 1000.0);
            try {
                return MadeUp.withWater(dry, new Volume(volume));
            } catch (IllegalArgumentException noRoom) { // said below
            }
        }
        throw new CannotHaveHappened(
                "measured-cannot-be",
                "strength",
                "No liquid has " + QuantityWords.fixed(strength, 1) + " % vol with " + QuantityWords.fixed(sugar, 0)
                        + " g/L of sugar and " + QuantityWords.fixed(acidity, 1) + " g/L of acid in "
                        + QuantityWords.fixed(volume, 0) + " mL.",
                "Check the readings and their units.");
    }

    /** Returns why nothing can be measured in an empty vessel. */
    static CannotHaveHappened nothingThere(Place place) {
        return new CannotHaveHappened(
                "nothing-to-measure",
                "vessel",
                "“" + place.vessel() + "” was empty at that moment.",
                "Choose the vessel that the liquid is in.");
    }

    /** Returns all but ethanol and water, in a volume. */
    private static Contents dissolved(
            Contents before, Essentials reckoned, double volume, double sugar, double acidity) {
        double larger = volume / reckoned.millilitres();
        double sweeter = reckoned.sugar() > 0.0 ? sugar / reckoned.sugar() : 0.0;
        double sourer = reckoned.acidity() > 0.0 ? acidity / reckoned.acidity() : 0.0;
        Contents scaled = before.times(larger).with(Substance.WATER, 0.0);
        for (Substance substance : Substance.values()) {
            double grams = scaled.grams(substance);
            if (substance.sugar() != null) {
                scaled = scaled.with(substance, grams * sweeter);
            } else if (substance.acid() != null) {
                scaled = scaled.with(substance, grams * sourer);
            }
        }
        if (reckoned.sugar() == 0.0) {
            scaled = scaled.with(Substance.SUCROSE, sugar * volume / 1000.0);
        }
        if (reckoned.acidity() == 0.0) {
            scaled = scaled.with(Substance.CITRIC, acidity * volume / 1000.0);
        }
        return scaled;
    }
}
