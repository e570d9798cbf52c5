package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.reference.Finding;

/** Energy of what is no carbohydrate by law. Factors: Regulation (EU) No 1169/2011, Annex XIV. */
class EnergyFactorsTest {
    private static Bench with(String name, Substance substance) {
        return new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 500.0)
                .holding(name, Kind.OTHER, substance, 100.0, 50.0);
    }

    @ParameterizedTest
    @CsvSource({
        "erythritol, 0, 0",
        "Erythrit, 0, 0",
        "xylitol, 10, 2.4",
        "Birkenzucker, 10, 2.4",
        "sorbitol, 10, 2.4",
        "inulin, 8, 2",
    })
    void whatIsCountedAsCarbohydrateIsToldByTheFactorOfTheLaw(String name, double kilojoules, double kilocalories) {
        Bench drink = with(name, Substance.OTHER_SOLIDS);
        Finding told = drink.findings("energy-factor").get(0);
        double perHundred = 100.0 * 50.0 / drink.safety().drink().figures().value(Figure.VOLUME_20C);
        assertThat(Double.parseDouble(told.message().replaceAll(".*up to ([\\d.]+) kJ.*", "$1")))
                .isCloseTo(perHundred * (17.0 - kilojoules), within(0.005 * perHundred * 17.0));
        assertThat(Double.parseDouble(told.message().replaceAll(".*or ([\\d.]+) kcal.*", "$1")))
                .isCloseTo(perHundred * (4.0 - kilocalories), within(0.005 * perHundred * 4.0));
    }

    @Test
    void whatIsCountedAsWhatItIsIsNotTold() {
        assertThat(with("birch sugar syrup", Substance.SUCROSE).findings("energy-factor"))
                .isEmpty();
        assertThat(with("malt extract", Substance.OTHER_SOLIDS).findings("energy-factor"))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "cream, DAIRY, ABOVE, ABOVE",
        "egg yolk, EGG, ABOVE, THERE",
        "quince juice, JUICE, ABOVE, ABOVE",
        "walnut liqueur, LIQUEUR, ABOVE, ABOVE",
        "rum, SPIRIT, THERE, THERE"
    })
    void whatNobodySaysTheContentsOfMakesEnergyTheLeast(
            String name, Kind kind, Counted.Side energy, Counted.Side sugar) {
        Bench drink =
                new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 500.0).strong(name, kind, 17.0, 100.0);
        assertThat(Counted.of(drink.safety().drink())).isEqualTo(new Counted(energy, sugar));
        assertThat(drink.findings("energy-factor")).hasSize(energy == Counted.Side.THERE ? 0 : 1);
    }

    @Test
    void whatTheLawCountsLessMakesEnergyTheMostAndBothTogetherNotKnown() {
        Bench high = with("erythritol", Substance.OTHER_SOLIDS);
        assertThat(Counted.of(high.safety().drink()).energy()).isEqualTo(Counted.Side.BELOW);
        assertThat(Counted.of(high.strong("egg yolk", Kind.EGG, 0.0, 100.0)
                                .safety()
                                .drink())
                        .energy())
                .isEqualTo(Counted.Side.ANYWHERE);
    }
}
