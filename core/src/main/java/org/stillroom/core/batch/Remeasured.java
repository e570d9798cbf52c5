package org.stillroom.core.batch;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Shown;
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
public final class Remeasured {
    /** Half-width of the central 90 % of a normal deviate, in standard deviations. */
    private static final double CENTRAL_90 = 1.6448536269514722;

    private Remeasured() {}

    static Contents of(Contents before, Event.Measured measured) {
        if (!(before.total() > 0.0)) {
            throw nothingThere(measured.place());
        }
        try {
            return to(before, measured.figures());
        } catch (IllegalArgumentException impossible) {
            String message = impossible.getMessage();
            throw new CannotHaveHappened(
                    "measured-cannot-be",
                    "strength",
                    message == null ? "No liquid is so." : message,
                    "Check the readings and their units.");
        }
    }

    /**
     * Returns a liquid brought to figures.
     *
     * @param before what it was, not empty
     * @param figures volume (mL), strength (% vol), sugar and acidity (g/L), all at 20 °C; what is absent stays
     * @throws IllegalArgumentException when no liquid has them, with a text for people
     */
    public static Contents to(Contents before, Map<Asked, Double> figures) {
        Essentials reckoned = Essentials.of(before.toGrams());
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
        throw new IllegalArgumentException("No liquid has " + QuantityWords.fixed(strength, 1) + " % vol with "
                + QuantityWords.fixed(sugar, 0) + " g/L of sugar and " + QuantityWords.fixed(acidity, 1)
                + " g/L of acid in " + QuantityWords.fixed(volume, 0) + " mL.");
    }

    /** Returns how far it may be off then: what was measured by its own doubt, all else by what it was before. */
    static Slips slips(Held before, Event.Measured measured, Contents now, String name) {
        Map<Asked, Double> figures = measured.figures();
        boolean whole = figures.keySet().containsAll(List.of(Asked.VOLUME, Asked.STRENGTH, Asked.SUGAR));
        Slips slips = before.slips().through(before.contents(), now, liquid -> of(liquid, measured));
        for (Map.Entry<Asked, Double> figure : figures.entrySet()) {
            double half = halfWidth(figure.getKey(), figure.getValue(), measured.doubt());
            Contents other = atItsEnd(before.contents(), measured, figure.getKey(), half);
            if (other != null) {
                slips = slips.plus(
                        Slips.between(name + "the " + figure.getKey().label() + " that was logged", now, other));
            }
        }
        return whole ? slips.asKnown() : slips;
    }

    /** Returns the half-width within which a figure lies, every value in it as likely. */
    private static double halfWidth(Asked asked, double value, Map<Asked, Double> doubt) {
        Double central = doubt.get(asked);
        return central == null ? usual(asked).usualHalfWidth(value) : central * Math.sqrt(3.0) / CENTRAL_90;
    }

    private static Shown usual(Asked asked) {
        return switch (asked) {
            case VOLUME -> Shown.VOLUME;
            case STRENGTH -> Shown.TRUE_STRENGTH;
            case SUGAR -> Shown.TRUE_SUGAR;
            case ACIDITY -> Shown.ACIDITY;
        };
    }

    /** Returns the liquid with one figure at an end of its range; null where no liquid can have that. */
    private static @Nullable Contents atItsEnd(Contents before, Event.Measured measured, Asked asked, double half) {
        for (double by : new double[] {half, -half}) {
            Map<Asked, Double> figures = new EnumMap<>(measured.figures());
            figures.merge(asked, by, Double::sum);
            try {
                return of(before, new Event.Measured(measured.place(), figures, measured.doubt()));
            } catch (CannotHaveHappened beyond) {
                // the other end
            }
        }
        return null;
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
