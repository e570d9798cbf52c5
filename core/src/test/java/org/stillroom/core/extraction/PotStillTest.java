package org.stillroom.core.extraction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.alcohol.Strengths;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.published.Published;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Table;

class PotStillTest {
    /** Perry's Chemical Engineers' Handbook, 8th ed., table 13-4: y to 0.02, as far as two printed tables differ, and 0.6 °C. */
    @Test
    @Tag("published")
    void vapourIsAsStrongAsTheHandbookPrints() {
        for (Table.Row row : Published.rows("vapour_over_ethanol_water.csv")) {
            Vapour.Over over = Vapour.over(row.number("x"));
            assertThat(over.ethanol()).as("x " + row.number("x")).isCloseTo(row.number("y"), within(0.02));
            assertThat(over.kelvin() - 273.15).as("x " + row.number("x")).isCloseTo(row.number("celsius"), within(0.6));
        }
    }

    /** Azeotrope: x = 0.894 at 78.15 °C (Perry), 0.899 at 351.39 K (another measurement). */
    @Test
    @Tag("published")
    void theAzeotropeIsWhereItWasMeasuredToTwoHundredths() {
        assertThat(Vapour.over(0.86).ethanol()).isGreaterThan(0.86);
        assertThat(Vapour.over(0.914).ethanol()).isLessThan(0.914);
        assertThat(Vapour.over(0.89).kelvin() - 273.15).isCloseTo(78.15, within(0.2));
    }

    @Test
    @Tag("published")
    void pressuresAtFiftyAndNinetyDegreesAreAsMeasured() {
        for (Table.Row row : Published.rows("pressure_over_ethanol_water.csv")) {
            double pressure = Vapour.pressure(row.number("x"), row.number("celsius") + 273.15) / 1000.0;
            assertThat(pressure / row.number("kilopascal"))
                    .as("x " + row.number("x") + " at " + row.number("celsius"))
                    .isBetween(0.95, 1.05);
        }
    }

    /**
     * Rayleigh by another way: the pot is boiled down in a hundred thousand small steps, each taking vapour off the liquid that there
     * is, forwards in time and by the midpoint rule.
     */
    @ParameterizedTest
    @CsvSource({"10000, 30, 40", "5000, 12, 20", "20000, 45, 55", "1000, 8, 5"})
    void boilingDownStepByStepComesToTheSame(double millilitres, double strength, double to) {
        PotStill.Stand stand =
                PotStill.charged(millilitres, AlcoholByVolume.at20(strength)).whenRunning(to);
        Contents charge = MadeUp.spirit(AlcoholByVolume.at20(strength)).times(millilitres / 1000.0);
        double ethanol = charge.grams(Substance.ETHANOL) / 46.06844;
        double water = charge.grams(Substance.WATER) / 18.01528;
        double end = Strengths.massFraction(AlcoholByVolume.at20(stand.potStrength()))
                .fraction();
        double xEnd = end / 46.06844 / (end / 46.06844 + (1 - end) / 18.01528);
        double gone = 0.0;
        double goneWater = 0.0;
        double step = (ethanol + water) / 100_000;
        while (ethanol / (ethanol + water) > xEnd) {
            double y = Vapour.over(ethanol / (ethanol + water)).ethanol();
            double middleEthanol = ethanol - 0.5 * step * y;
            double middleWater = water - 0.5 * step * (1 - y);
            double yMiddle =
                    Vapour.over(middleEthanol / (middleEthanol + middleWater)).ethanol();
            ethanol -= step * yMiddle;
            water -= step * (1 - yMiddle);
            gone += step * yMiddle;
            goneWater += step * (1 - yMiddle);
        }
        double collected = stand.recovered() * charge.grams(Substance.ETHANOL) / 46.06844;
        assertThat(gone).isCloseTo(collected, within(3e-4 * collected));
        double p = gone * 46.06844 / (gone * 46.06844 + goneWater * 18.01528);
        double percent =
                Strengths.byVolume(new MassFraction(p), VolumeBasis.AT_20C).percent();
        assertThat(stand.strength()).isCloseTo(percent, within(0.02));
    }

    @Test
    @Tag("property")
    void whatWasChargedIsInThePotOrCollected() {
        PotStill still = PotStill.charged(10_000, AlcoholByVolume.at20(30));
        PotStill.Stand stand = still.whenRunning(40);
        double ethanol = stand.distillate() * stand.strength() + stand.pot() * stand.potStrength();
        assertThat(ethanol).isCloseTo(10_000 * 30, within(1e-3 * 300_000));
        assertThat(stand.running()).isCloseTo(40, within(1e-6));
        assertThat(stand.strength()).isGreaterThan(40);
        List<PotStill.Stand> run = still.until(stand, 8);
        assertThat(run.stream().map(PotStill.Stand::running).toList())
                .isSortedAccordingTo((a, b) -> Double.compare(b, a));
        assertThat(run.get(7).distillate()).isCloseTo(stand.distillate(), within(1e-3));
    }

    @Test
    void theMeanOfWhatWasCollectedIsFoundToo() {
        PotStill still = PotStill.charged(10_000, AlcoholByVolume.at20(30));
        assertThat(still.whenCollected(65).strength()).isCloseTo(65, within(1e-6));
        assertThat(still.withStrongerVapour().whenCollected(65).distillate())
                .isGreaterThan(still.whenCollected(65).distillate());
    }

    @Test
    void whatCannotBeIsRefusedInWords() {
        PotStill still = PotStill.charged(10_000, AlcoholByVolume.at20(30));
        assertThatThrownBy(() -> still.whenRunning(90)).hasMessageContaining("first drop runs at 7");
        assertThatThrownBy(() -> still.whenCollected(20)).hasMessageContaining("between 30 % vol");
        assertThatThrownBy(() -> PotStill.charged(1, AlcoholByVolume.at20(97))).hasMessageContaining("95 % vol");
        assertThatThrownBy(() -> PotStill.charged(0, AlcoholByVolume.at20(30))).hasMessageContaining("nothing");
    }
}
