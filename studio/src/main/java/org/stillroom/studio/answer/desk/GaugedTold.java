package org.stillroom.studio.answer.desk;

import static org.stillroom.core.liquid.Figure.ACIDITY;
import static org.stillroom.core.liquid.Figure.STRENGTH;
import static org.stillroom.core.liquid.Figure.SUGAR;
import static org.stillroom.core.liquid.Figure.VOLUME_20C;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Gauged;
import org.stillroom.core.gauging.Gauged.Interval;
import org.stillroom.core.gauging.Gauged.Pull;
import org.stillroom.core.gauging.Gauged.Warmth;
import org.stillroom.core.gauging.Reading;
import org.stillroom.core.liquid.DoubtWord;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.Shape;
import org.stillroom.studio.answer.Told;

/** Tells what was found in a vessel. */
final class GaugedTold {
    static final List<String> FIGURES =
            List.of(STRENGTH.key(), SUGAR.key(), ACIDITY.key(), VOLUME_20C.key(), "hidden_vol_percent", "correlation");
    static final List<String> SPANS = List.of(STRENGTH.key(), SUGAR.key(), ACIDITY.key(), VOLUME_20C.key());
    private static final Shape.Key WARMTH = new Shape.Key(
            "thermometer",
            Shape.group(
                    Shape.number("within_c", "°C within which it is right, as it was known before"),
                    new Shape.Key(
                            "shows_too_much_c",
                            Shape.group(
                                    Shape.number("value", "°C, by all that was read"),
                                    Shape.number("low", "°C, 5th percentile"),
                                    Shape.number("high", "°C, 95th percentile"))),
                    Shape.number("strength_doubt_vol_percent", "% vol, what of the doubt is its"),
                    Shape.number("sugar_doubt_g_per_l", "g/L, what of the doubt is its")));
    static final List<Shape.Key> FURTHER = List.of(
            WARMTH,
            new Shape.Key(
                    "readings",
                    new Shape.ListOf(Shape.group(
                            Shape.text("reading", "which"),
                            new Shape.Key("value", new Shape.MaybeAmount("in its unit; null for what was poured")),
                            Shape.text("unit", "of the scale"),
                            new Shape.Key("expected", new Shape.MaybeAmount("by the estimate, in its unit")),
                            new Shape.Key(
                                    "pull_sigma",
                                    new Shape.MaybeAmount(
                                            "standard deviations from what the others say; null where none is spare")),
                            new Shape.Key("set_aside", new Shape.Flag("whether the estimate leaves it out"))))));

    private static final Told.Name HIDDEN = new Told.Name(
            "hidden_vol_percent", "strength that sugar hides from a spirit hydrometer", "% vol at 20 °C", 1);
    private static final Told.Name CORRELATION =
            new Told.Name("correlation", "how strength and sugar err together", "−1 to 1", 2);

    private GaugedTold() {}

    static Told told(String heading, Gauged gauged, List<Reading> readings) {
        Told told = new Told(heading)
                .doubtingReadings()
                .put(STRENGTH, gauged.strength())
                .put(SUGAR, gauged.sugar());
        @Nullable Interval acidity = gauged.acidity();
        if (acidity != null) {
            told.put(ACIDITY, acidity);
        }
        @Nullable Interval volume = gauged.volume();
        if (volume != null) {
            told.put(VOLUME_20C, volume);
        }
        List<Fields> fields = new ArrayList<>();
        List<String> sentences = new ArrayList<>();
        for (int i = 0; i < gauged.pulls().size(); i++) {
            @Nullable Reading reading = i < readings.size() ? readings.get(i) : null;
            fields.add(fields(gauged.pulls().get(i), reading));
            sentences.add(sentence(gauged.pulls().get(i), reading));
        }
        return told.put(HIDDEN, new Estimate(gauged.hidden(), 0.0), DoubtWord.NONE)
                .put(CORRELATION, new Estimate(gauged.correlation(), 0.0), DoubtWord.NONE)
                .put("thermometer", fields(gauged.warmth()))
                .put("readings", fields)
                .section("How the readings stand to each other", sentences)
                .section("How sure the thermometer is", List.of(sentence(gauged.warmth())))
                .findings(gauged.findings());
    }

    private static Fields fields(Pull pull, @Nullable Reading reading) {
        Fields fields = new Fields().put("reading", pull.name());
        maybe(fields, "value", reading == null ? Double.NaN : reading.value());
        fields.put("unit", reading == null ? "" : reading.shown().unit());
        maybe(fields, "expected", pull.expected());
        maybe(fields, "pull_sigma", pull.sigma());
        return fields.put("set_aside", pull.setAside());
    }

    private static Fields fields(Warmth warmth) {
        return new Fields()
                .put("within_c", warmth.thermometer().halfWidth())
                .put(
                        "shows_too_much_c",
                        new Fields()
                                .put("value", warmth.tooMuch().value())
                                .put("low", warmth.tooMuch().low())
                                .put("high", warmth.tooMuch().high()))
                .put("strength_doubt_vol_percent", warmth.strength())
                .put("sugar_doubt_g_per_l", warmth.sugar());
    }

    private static String sentence(Warmth warmth) {
        Interval tooMuch = warmth.tooMuch();
        String told = tooMuch.low() > 0.0 || tooMuch.high() < 0.0
                ? " By the readings it shows " + QuantityWords.fixed(Math.abs(tooMuch.value()), 1) + " °C too "
                        + (tooMuch.value() > 0.0 ? "much" : "little") + " (± "
                        + QuantityWords.fixed(tooMuch.halfWidth(), 1) + ")."
                : "";
        return "It is right within ± "
                + QuantityWords.plain(warmth.thermometer().halfWidth())
                + " °C, off for all readings alike; of the doubt ± " + QuantityWords.fixed(warmth.strength(), 2)
                + " % vol and ± " + QuantityWords.fixed(warmth.sugar(), 1) + " g/L are its." + told;
    }

    private static void maybe(Fields fields, String key, double value) {
        if (Double.isNaN(value)) {
            fields.putNone(key);
        } else {
            fields.put(key, value);
        }
    }

    /** Returns a reading, what it should be and how far that is, in a sentence. */
    static String sentence(Pull pull, @Nullable Reading reading) {
        String stands = pull.canBeTold()
                ? QuantityWords.fixed(Math.abs(pull.sigma()), 1) + " standard deviations from what the others say"
                : "nothing else speaks of it";
        String aside = pull.setAside() ? "; left out" : "";
        if (reading == null) {
            return pull.name() + ": " + stands + aside + ".";
        }
        int decimals = reading.shown().decimals();
        return pull.name() + ": " + QuantityWords.fixed(reading.value(), decimals) + " "
                + reading.shown().unit() + ", estimate " + QuantityWords.fixed(pull.expected(), decimals) + "; "
                + stands
                + aside + ".";
    }
}
