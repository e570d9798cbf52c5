package org.stillroom.studio.usecase.make;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.StrengthFromDensity;
import org.stillroom.core.quantity.Density;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;

/** Says what a measured density tells about the strength of a part. */
final class Found {
    /** Further off than this, a reading asks for a second look. Common practice, no source. */
    private static final double SECOND_LOOK = 1.0;

    private static final QuantityText QUANTITIES = new QuantityText(OunceMeaning.US_FLUID);

    private final String step;
    private final Essentials expected;
    private final List<LogEntry> log;

    Found(int part, Essentials expected, List<LogEntry> log) {
        this.step = part + "/measure";
        this.expected = expected;
        this.log = log;
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (LogEntry entry : log) {
            if (entry.counts()
                    && entry.kind().equals(Logged.MEASURED)
                    && entry.said().step().equals(step)) {
                Density density = value(QUANTITIES.density(text(entry.said().typed())));
                Temperature temperature =
                        value(QUANTITIES.temperature(text(entry.said().second())));
                if (density != null) {
                    findings.add(finding(density, temperature == null ? Temperature.TWENTY_CELSIUS : temperature));
                }
            }
        }
        return findings;
    }

    private static String text(@Nullable String typed) {
        return typed == null ? "" : typed;
    }

    static <Q> @Nullable Q value(Understanding<Q> understanding) {
        return understanding instanceof Understanding.Understood<Q> understood ? valueOf(understood.typed()) : null;
    }

    private static <Q> Q valueOf(Typed<Q> typed) {
        return typed.value();
    }

    private Finding finding(Density density, Temperature temperature) {
        String sugar = QuantityWords.fixed(expected.sugar(), 0) + " g/L";
        try {
            StrengthFromDensity.Measured measured = StrengthFromDensity.of(
                    density, temperature, new MassConcentration(expected.sugar()), Workings.NONE);
            double strength = measured.strength().percent();
            boolean far = Math.abs(strength - expected.strength()) > SECOND_LOOK + measured.doubt();
            return new Finding(
                    "strength-as-measured",
                    far ? Severity.CAUTION : Severity.NOTE,
                    "",
                    "",
                    far ? "look again" : "as expected",
                    "With " + sugar + " of sugar the density measured stands for " + QuantityWords.fixed(strength, 1)
                            + " % vol; " + QuantityWords.fixed(expected.strength(), 1) + " % vol is reckoned.",
                    "±" + QuantityWords.fixed(measured.doubt(), 1) + " % vol for a density without error",
                    far ? "Measure again when it is cool and mixed; a bubble at the hydrometer reads too strong." : "",
                    null,
                    Source.VOLUME_MODEL);
        } catch (IllegalArgumentException cannotBe) {
            return Finding.of(
                    "strength-as-measured",
                    Severity.CAUTION,
                    "",
                    "cannot be",
                    "The density measured fits no strength: " + cannotBe.getMessage(),
                    "Undo the entry and measure again.");
        }
    }
}
