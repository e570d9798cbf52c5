package org.stillroom.core.triangle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.recipe.SugarBasis;

@Tag("property")
class CompanyTest {
    private static Contents liquid(Random random) {
        return Contents.of(Substance.ETHANOL, 400 * random.nextDouble())
                .with(Substance.WATER, 500 + 300 * random.nextDouble())
                .with(Substance.SUCROSE, 200 * random.nextDouble())
                .with(Substance.FRUCTOSE, 100 * random.nextDouble())
                .with(Substance.GLYCEROL, 20 * random.nextDouble())
                .with(Substance.FAT, 90 * random.nextDouble());
    }

    @Test
    void aLiquidLiesOnItsOwnLines() {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            Contents liquid = liquid(random);
            Reading reading = Company.of(liquid, SugarBasis.AS_DISSOLVED).reading(Company.spot(liquid));
            Essentials essentials = Essentials.of(liquid.toGrams());
            assertThat(reading.strength()).isCloseTo(essentials.strength(), within(1e-11));
            assertThat(reading.sugar()).isCloseTo(essentials.sugar(), within(1e-10));
        }
    }

    @Test
    void thePlaceOfAReadingReadsTheSame() {
        Random random = new Random(8);
        for (int i = 0; i < 200; i++) {
            Company company = Company.of(liquid(random), SugarBasis.AS_INVERT);
            Reading asked = new Reading(50 * random.nextDouble(), 400 * random.nextDouble());
            Reading read = company.reading(Objects.requireNonNull(company.spot(asked)));
            assertThat(read.strength()).isCloseTo(asked.strength(), within(1e-9));
            assertThat(read.sugar()).isCloseTo(asked.sugar(), within(1e-8));
        }
    }

    @Test
    void thereIsNoPlaceForMoreThanALitreHolds() {
        assertThat(Company.PLAIN.spot(new Reading(80, 600))).isNull();
        assertThat(Company.PLAIN.spot(new Reading(40, 100))).isNotNull();
    }

    @Test
    void sugarIsReadOnTheBasisOnWhichItIsAsked() {
        Contents liquid = Contents.of(Substance.WATER, 800).with(Substance.SUCROSE, 200);
        Spot spot = Company.spot(liquid);
        double dissolved =
                Company.of(liquid, SugarBasis.AS_DISSOLVED).reading(spot).sugar();
        assertThat(Company.of(liquid, SugarBasis.AS_INVERT).reading(spot).sugar() / dissolved)
                .isCloseTo(2 * 180.156 / 342.297, within(1e-12));
        assertThat(Company.of(liquid, SugarBasis.AS_SUCROSE).reading(spot).sugar())
                .isCloseTo(dissolved, within(1e-12));
    }

    @Test
    void whatIsNoneOfTheThreeIsTold() {
        Contents liquid = Contents.of(Substance.WATER, 90).with(Substance.GLYCEROL, 10);
        assertThat(Company.rest(liquid)).isCloseTo(0.1, within(1e-15));
        assertThat(Company.rest(Contents.NONE)).isZero();
    }
}
