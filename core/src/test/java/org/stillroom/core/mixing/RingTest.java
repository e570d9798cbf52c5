package org.stillroom.core.mixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.clarity.Clarity;
import org.stillroom.core.clarity.Doubts;
import org.stillroom.core.clarity.Medium;
import org.stillroom.core.clarity.Oils;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.tasting.OdourThreshold;

/** What gathers once a haze has cleared. */
class RingTest {
    private static Clarity at(double percent, Map<String, Double> oils) {
        return Clarity.of(
                Oils.of(oils),
                Medium.of(AlcoholByVolume.at20(percent), new MassConcentration(150), Temperature.TWENTY_CELSIUS),
                Doubts.NONE);
    }

    private static Ring ring(double percent, Map<String, Double> oils) {
        return Objects.requireNonNull(Ring.of(at(percent, oils)));
    }

    @Test
    @Tag("property")
    void itsPartsAreWhatSeparates() {
        Clarity clarity = at(28, Map.of("limonene", 0.8, "linalool", 0.2, "beta-caryophyllene", 0.02));
        Ring ring = Objects.requireNonNull(Ring.of(clarity));
        assertThat(ring.grams()).isCloseTo(clarity.separated(), within(1e-12));
        assertThat(ring.parts().stream().mapToDouble(Ring.Part::grams).sum()).isCloseTo(ring.grams(), within(1e-12));
        assertThat(ring.parts().stream().mapToDouble(Ring.Part::share).sum()).isCloseTo(1.0, within(1e-12));
        assertThat(ring.part()).isCloseTo(ring.grams() / 1.02, within(1e-12));
        assertThat(ring.millilitres()).isBetween(ring.grams() / 0.92, ring.grams() / 0.83);
    }

    @Test
    void whatDissolvesLeastIsLostMost() {
        Ring ring = ring(28, Map.of("limonene", 0.8, "linalool", 0.2, "beta-caryophyllene", 0.02));
        assertThat(ring.parts().get(0).name()).isEqualTo("d-limonene");
        assertThat(lost(ring, "beta-caryophyllene")).isGreaterThan(lost(ring, "d-limonene"));
        assertThat(lost(ring, "d-limonene")).isGreaterThan(5 * lost(ring, "linalool"));
    }

    private static double lost(Ring ring, String name) {
        return ring.parts().stream()
                .filter(part -> part.name().equals(name))
                .findFirst()
                .orElseThrow()
                .lost();
    }

    /** Of one constituent with a threshold, as much of the smell goes as of itself; of two it is weighed by what is smelt. */
    @Test
    void theSmellGoesByContentsOverThresholds() {
        Ring one = ring(20, Map.of("limonene", 1.0));
        assertThat(Objects.requireNonNull(one.odour()).lost()).isCloseTo(one.part(), within(1e-12));
        Ring two = ring(20, Map.of("limonene", 1.0, "linalool", 0.1));
        double limonene = activity("5989-27-5", 1.0);
        double linalool = activity("78-70-6", 0.1);
        double expected =
                (limonene * lost(two, "d-limonene") + linalool * lost(two, "linalool")) / (limonene + linalool);
        assertThat(Objects.requireNonNull(two.odour()).lost()).isCloseTo(expected, within(1e-9));
        assertThat(Objects.requireNonNull(two.odour()).known()).isCloseTo(1.0, within(1e-12));
    }

    private static double activity(String cas, double grams) {
        return grams / Objects.requireNonNull(OdourThreshold.of(cas, 20)).middle();
    }

    @Test
    void whatIsNotKnownIsNotCountedAndSaid() {
        Ring ring = ring(20, Map.of("limonene", 0.5, "moon dust", 0.5));
        assertThat(Objects.requireNonNull(ring.odour()).known()).isCloseTo(0.5, within(1e-12));
        assertThat(Objects.requireNonNull(ring(20, Map.of("moon dust", 5.0))).odour())
                .isNull();
    }

    @Test
    void aClearLiquidLeavesNone() {
        assertThat(Ring.of(at(60, Map.of("limonene", 0.1)))).isNull();
    }
}
