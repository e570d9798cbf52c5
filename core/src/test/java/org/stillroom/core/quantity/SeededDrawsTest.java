package org.stillroom.core.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class SeededDrawsTest {
    /** First outputs of SplitMix64 for the seed 1234567, as published with its reference code (from memory). */
    private static final String[] PUBLISHED = {
        "6457827717110365317",
        "3203168211198807973",
        "9817491932198370423",
        "4593380528125082431",
        "16408922859458223821"
    };

    @Test
    @Tag("published")
    void theDrawsAreThoseOfSplitMix64() {
        SeededDraws draws = new SeededDraws(1234567);
        for (String published : PUBLISHED) {
            assertThat(draws.unit()).isEqualTo((Long.parseUnsignedLong(published) >>> 11) * 0x1.0p-53);
        }
    }

    @Test
    void betweenSpreadsTheSameDrawOverMinusOneToOne() {
        assertThat(new SeededDraws(1234567).between())
                .isEqualTo(2 * (Long.parseUnsignedLong(PUBLISHED[0]) >>> 11) * 0x1.0p-53 - 1);
    }

    /** The polar method by hand from the first two draws: -0.299840..., -0.652712... lie within the circle. */
    @Test
    void normalDrawsComeInPairsOfThePolarMethod() {
        double x = 2 * (Long.parseUnsignedLong(PUBLISHED[0]) >>> 11) * 0x1.0p-53 - 1;
        double y = 2 * (Long.parseUnsignedLong(PUBLISHED[1]) >>> 11) * 0x1.0p-53 - 1;
        double square = x * x + y * y;
        assertThat(square).isLessThan(1);
        SeededDraws draws = new SeededDraws(1234567);
        assertThat(draws.normal()).isCloseTo(x * Math.sqrt(-2 * Math.log(square) / square), within(1e-15));
        assertThat(draws.normal()).isCloseTo(y * Math.sqrt(-2 * Math.log(square) / square), within(1e-15));
        double third = 2 * (Long.parseUnsignedLong(PUBLISHED[2]) >>> 11) * 0x1.0p-53 - 1;
        double fourth = 2 * (Long.parseUnsignedLong(PUBLISHED[3]) >>> 11) * 0x1.0p-53 - 1;
        double next = third * third + fourth * fourth;
        assertThat(draws.normal()).isCloseTo(third * Math.sqrt(-2 * Math.log(next) / next), within(1e-15));
    }
}
