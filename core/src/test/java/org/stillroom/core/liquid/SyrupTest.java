package org.stillroom.core.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.liquid.Syrup.Of;
import org.stillroom.core.liquid.Syrup.Weighed;
import org.stillroom.core.quantity.Brix;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Severity;

class SyrupTest {
    /** Source: CRC Handbook, Sucrose (older edition): 50 % mass 1229.5 kg/m³, 614.8 g/L; tolerances as its last digits and 0.2. */
    @Test
    @Tag("published")
    void equalWeightsGiveFiftyBrix() {
        Syrup syrup = Syrup.ofWeighed(Of.SUCROSE, new Weighed(new Mass(500), new Mass(500)));
        assertThat(syrup.brix()).isEqualTo(50.0);
        assertThat(syrup.density()).isCloseTo(1229.5, within(0.2));
        assertThat(syrup.sugar()).isCloseTo(614.8, within(0.15));
        assertThat(syrup.millilitres()).isCloseTo(813.3, within(0.15));
    }

    @Test
    void aSyrupOfBrixIsTheSameAsItsWeights() {
        Syrup byBrix = Syrup.ofBrix(Of.GLUCOSE, new Brix(40), new Mass(1000));
        assertThat(byBrix).isEqualTo(Syrup.ofWeighed(Of.GLUCOSE, new Weighed(new Mass(400), new Mass(600))));
        assertThat(byBrix.contents().grams(Substance.GLUCOSE)).isEqualTo(400);
    }

    @Test
    void madeUpToTheMarkItFillsTheMark() {
        for (Of sugar : Of.values()) {
            Syrup syrup = Syrup.madeUpTo(sugar, new Mass(850), new Volume(1000));
            assertThat(syrup.millilitres()).isCloseTo(1000, within(1e-9));
            assertThat(syrup.sugar()).isCloseTo(850, within(1e-9));
        }
        assertThatThrownBy(() -> Syrup.madeUpTo(Of.SUCROSE, new Mass(1700), new Volume(1000)))
                .hasMessageStartingWith("there is no room for water: what goes in takes");
    }

    /** Source: USP Syrup: 850 g of sucrose to 1000 mL; specific gravity not less than 1.30 (from memory). */
    @Test
    @Tag("published")
    void theSyrupOfThePharmacopoeiaIsHeavyEnough() {
        assertThat(Syrup.madeUpTo(Of.SUCROSE, new Mass(850), new Volume(1000)).density() / 998.2)
                .isBetween(1.30, 1.33);
    }

    @Test
    void cupsOfSugarGiveARange() {
        List<Syrup> syrups = Syrup.ofVolumes(Of.SUCROSE, new Volume(200), new Volume(200));
        assertThat(syrups).hasSize(2);
        assertThat(syrups.get(0).contents().grams(Substance.SUCROSE)).isEqualTo(160);
        assertThat(syrups.get(1).contents().grams(Substance.SUCROSE)).isEqualTo(180);
        assertThat(syrups.get(0).contents().grams(Substance.WATER)).isCloseTo(199.640, within(0.001));
    }

    @Test
    void invertIsHalfAndHalf() {
        Syrup syrup = Syrup.ofWeighed(Of.INVERT, new Weighed(new Mass(300), new Mass(700)));
        assertThat(syrup.contents().grams(Substance.GLUCOSE)).isEqualTo(150);
        assertThat(syrup.contents().grams(Substance.FRUCTOSE)).isEqualTo(150);
        assertThat(syrup.brix()).isEqualTo(30);
    }

    @Test
    void twoToOneStandsAtSaturationAndCrystallisesInTheCold() {
        Syrup rich = Syrup.ofWeighed(Of.SUCROSE, new Weighed(new Mass(200), new Mass(100)));
        assertThat(rich.findings(Temperature.TWENTY_CELSIUS)).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.NOTE);
            assertThat(finding.verdict()).isEqualTo("at saturation");
            assertThat(finding.message()).contains("67.09 % by mass of sucrose at 20.0 °C; this syrup has 66.67 %");
        });
        assertThat(rich.findings(new Temperature(5)))
                .singleElement()
                .satisfies(finding -> assertThat(finding.severity()).isEqualTo(Severity.CAUTION));
        Syrup plain = Syrup.ofWeighed(Of.SUCROSE, new Weighed(new Mass(100), new Mass(100)));
        assertThat(plain.findings(new Temperature(-5))).isEmpty();
        assertThat(Syrup.ofBrix(Of.GLUCOSE, new Brix(80), new Mass(100)).findings(Temperature.TWENTY_CELSIUS))
                .isEmpty();
    }
}
