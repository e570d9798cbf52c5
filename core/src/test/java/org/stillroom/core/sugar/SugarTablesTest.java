package org.stillroom.core.sugar;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.published.Published;
import org.stillroom.core.quantity.Brix;
import org.stillroom.core.quantity.RefractiveIndex;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Table;

class SugarTablesTest {
    private static final double WATER = 998.20123;
    private static final SucroseWater.Isotherm TWENTY = SucroseWater.at(Temperature.TWENTY_CELSIUS);

    /** The handbook's table is older than the formula: 0.2 kg/m³ to 50 °Bx, then lower by 0.5 at 80 and 0.82 at 84 °Bx. */
    @Test
    @Tag("published")
    void sucroseWeighsWhatTheHandbookSays() {
        for (Table.Row row : Published.rows("sucrose_20c.csv")) {
            double brix = row.number("brix");
            double density = WATER + TWENTY.excess(brix / 100);
            double tolerance = brix <= 52 ? 0.2 : brix <= 70 ? 0.3 : brix <= 80 ? 0.55 : 0.85;
            assertThat(density).as("%s °Bx", brix).isCloseTo(row.number("density"), within(tolerance));
            double perLitre = brix / 100 * density;
            double last = brix <= 60 ? 0.15 : 0.75;
            assertThat(perLitre).as("%s °Bx", brix).isCloseTo(row.number("grams_per_litre"), within(last));
        }
    }

    /** Tolerance: 0.08 °Bx or 0.00016 in n, above the last printed digit; 0.14 °Bx (0.00036) from 80 on. */
    @Test
    @Tag("published")
    void aRefractometerReadsTheHandbooksIndices() {
        for (Table.Row row : Published.rows("sucrose_20c.csv")) {
            double brix = row.number("brix");
            double index = row.number("index");
            assertThat(SucroseRefraction.index(new Brix(brix)).value())
                    .isCloseTo(index, within(brix < 80 ? 0.00016 : 0.00036));
            if (index >= SucroseRefraction.WATER) {
                assertThat(SucroseRefraction.brix(new RefractiveIndex(index)).degrees())
                        .as("n = %s", index)
                        .isCloseTo(brix, within(brix < 80 ? 0.08 : 0.14));
            }
        }
    }

    /** Source: ICUMSA 1974 table at 20 °C, from memory; the fit with its shift lies within 0.00005. */
    @ParameterizedTest
    @Tag("published")
    @CsvSource({
        "0, 1.33299",
        "10, 1.34782",
        "20, 1.36384",
        "30, 1.38115",
        "40, 1.39986",
        "50, 1.42009",
        "60, 1.44193",
        "70, 1.46546",
        "80, 1.49071"
    })
    void theScaleIsThatOfTheSugarCommission(double brix, double index) {
        assertThat(SucroseRefraction.index(new Brix(brix)).value()).isCloseTo(index, within(0.00006));
    }

    /**
     * Source: NBS Circular 440 by its fit Bx = ((182.4601 S − 775.6821) S + 1262.7794) S − 669.5622, S the apparent specific
     * gravity 20/20 in air, to 40 °Bx. Tolerance 0.025 °Bx: the 0.1 kg/m³ that the density formula claims.
     */
    @Test
    @Tag("published")
    void aSaccharometerAgreesWithTheBureauOfStandards() {
        for (double brix = 0; brix <= 40; brix += 2.5) {
            double s = (WATER + TWENTY.excess(brix / 100) - 1.2) / (WATER - 1.2);
            double read = ((182.4601 * s - 775.6821) * s + 1262.7794) * s - 669.5622;
            assertThat(read).isCloseTo(brix, within(0.025));
        }
    }

    /** Source: another handbook: 66.74 % (200.7 g in 100 g of water) at 20 °C against the 67.09 % used. */
    @Test
    @Tag("published")
    void theTwoSolubilityTablesDifferAsTold() {
        double used = SucroseSolubility.saturated(Temperature.TWENTY_CELSIUS).degrees();
        assertThat(used).isCloseTo(66.74, within(0.5));
        assertThat(used).isCloseTo(100 * 203.9 / 303.9, within(0.01));
        assertThat(SucroseSolubility.saturated(new Temperature(22.5)).degrees()).isCloseTo(67.49, within(1e-9));
        assertThatThrownBy(() -> SucroseSolubility.saturated(new Temperature(-1)))
                .hasMessageContaining("from 0.0 to 100.0");
    }

    @Test
    @Tag("property")
    void bothScalesThereAndBack() {
        for (double brix = 0; brix <= 100; brix += 0.5) {
            RefractiveIndex index = SucroseRefraction.index(new Brix(brix));
            assertThat(SucroseRefraction.brix(new RefractiveIndex(Math.max(index.value(), SucroseRefraction.WATER)))
                            .degrees())
                    .isCloseTo(brix, within(1e-6));
            assertThat(TWENTY.fractionOfExcess(TWENTY.excess(brix / 100))).isCloseTo(brix / 100, within(1e-12));
        }
        double slope = (SucroseRefraction.index(new Brix(40.01)).value()
                        - SucroseRefraction.index(new Brix(39.99)).value())
                / 0.02;
        assertThat(SucroseRefraction.slope(SucroseRefraction.index(new Brix(40))))
                .isCloseTo(slope, within(1e-8));
    }

    @Test
    void offTheScalesIsRefused() {
        assertThatThrownBy(() -> SucroseRefraction.brix(new RefractiveIndex(1.3329)))
                .hasMessageContaining("the Brix scale runs from n = 1.33299 to 1.54");
        assertThatThrownBy(() -> SucroseRefraction.brix(new RefractiveIndex(1.56)))
                .hasMessageContaining("not to 1.56");
        assertThatThrownBy(() -> TWENTY.fractionOfExcess(-0.1)).hasMessageContaining("not by -0.1");
        assertThatThrownBy(() -> TWENTY.fractionOfExcess(600)).hasMessageContaining("not by 600.0");
    }

    @Test
    void invertCountsASmallPartMore() {
        assertThat(InvertSugar.per(Sugar.SUCROSE)).isCloseTo(1.05263, within(0.00001));
        assertThat(InvertSugar.per(Sugar.FRUCTOSE)).isEqualTo(1);
    }

    @Test
    @Tag("property")
    void theSlopeIsThatOfTheExcess() {
        SucroseWater.Isotherm warm = SucroseWater.at(new Temperature(35));
        for (double w = 0.05; w < 0.9; w += 0.1) {
            assertThat(warm.slope(w)).isCloseTo((warm.excess(w + 1e-6) - warm.excess(w - 1e-6)) / 2e-6, within(1e-4));
        }
        assertThat(warm.excess(0.5)).isLessThan(TWENTY.excess(0.5));
    }
}
