package org.stillroom.core.gauging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.published.Published;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Table;

/** Gauging against printed tables and worked examples. */
class GaugingPublishedTest {
    private static final Temperature TWENTY = Temperature.TWENTY_CELSIUS;

    /**
     * Source: CRC Handbook, 102nd ed., density and index of ethanol at 20 °C to 4 decimals, 2 to 60 % mass. The refraction was fitted to the
     * index, so that these are residuals of the whole way back; the density is that of OIML R 22. Half a last digit of either is 0.1 % mass.
     */
    @Test
    void printedSpiritsAreFoundAgain() {
        double worst = 0;
        double worstSugar = 0;
        for (Table.Row row : Published.rows("aqueous_solutions_20c.csv")) {
            double mass = row.number("percent_mass");
            if (row.text("substance").equals("ethanol") && mass >= 2 && mass <= 60) {
                Gauged gauged = printed(row);
                worst = Math.max(worst, Math.abs(ethanolPercentMass(gauged) - mass));
                worstSugar = Math.max(worstSugar, gauged.sugar().value());
            }
        }
        assertThat(worst).isLessThan(0.25);
        assertThat(worstSugar).isLessThan(3.0);
    }

    /** Source: CRC Handbook, older edition, sucrose at 20 °C: density to 0.1 kg/m³, index to 4 decimals, 0 to 60 °Bx; residuals too. */
    @Test
    void printedSyrupsAreFoundAgain() {
        double worst = 0;
        double worstStrength = 0;
        for (Table.Row row : Published.rows("sucrose_20c.csv")) {
            double brix = row.number("brix");
            if (brix <= 60
                    && !row.text("density").isEmpty()
                    && !row.text("index").isEmpty()) {
                Gauged gauged = gauged(row.number("density"), row.number("index"));
                worst = Math.max(worst, Math.abs(gauged.sugar().value() - row.number("grams_per_litre")));
                worstStrength = Math.max(worstStrength, gauged.strength().value());
            }
        }
        assertThat(worst).isLessThan(1.0);
        assertThat(worstStrength).isLessThan(0.2);
    }

    private static Gauged printed(Table.Row row) {
        return gauged(1000 * row.number("density"), row.number("index"));
    }

    private static Gauged gauged(double density, double index) {
        List<Reading> readings = List.of(
                new Reading(Shown.DENSITY, density, TWENTY, 0.05),
                new Reading(Shown.REFRACTIVE_INDEX, index, TWENTY, 0.00005));
        return Gauging.of(readings, null, Thermometer.EXACT).orElseThrow();
    }

    private static double ethanolPercentMass(Gauged gauged) {
        Contents contents = gauged.contents();
        return 100 * contents.grams(Substance.ETHANOL) / contents.total();
    }

    /**
     * Sources: OIV-MA-AS2-02, Table I, 5 to 17 °C, and the international table of a Russian standard (number not confirmed), 10 to 19 °C, readings of 0 to 75 °Bx; the two differ by up to 0.05.
     * Lorentz and Lorenz's rule makes thin syrups expand their refraction a little too much in the cold.
     */
    @ParameterizedTest
    @CsvSource({"10, 19, 0.12", "5, 9, 0.21"})
    @Tag("published")
    void whatTemperatureDoesToARefractometerIsAsPrinted(double from, double to, double within) {
        for (Table.Row row : Published.rows("refractometer_temperature.csv")) {
            double celsius = row.number("celsius");
            double reading = row.number("reading");
            if (celsius >= from && celsius <= to) {
                double correction = RefractometerScale.compensated(reading, new Temperature(celsius)) - reading;
                assertThat(correction)
                        .as("%s °Bx at %s °C", reading, celsius)
                        .isCloseTo(row.number("correction"), within(within));
            }
        }
    }

    /** Source: 27 CFR 30.61 and 30.23, table 1: what a proof hydrometer shows at °F stands for this proof; within 0.08 proof (two older digits). */
    @ParameterizedTest
    @CsvSource({
        "193, 72, 190.2",
        "192, 72, 189.1",
        "192, 73, 188.9",
        "193, 75, 189.5",
        "80, 68, 76.4",
        "81, 68, 77.4",
        "80, 69, 76.0"
    })
    @Tag("published")
    void proofHydrometersReadWarmAreAsInTheGaugingManual(double shown, double fahrenheit, double proof) {
        Contents spirit = spirit(proof);
        double stem = Shown.PROOF.of(new Mixture(spirit.toGrams()), new Temperature((fahrenheit - 32) / 1.8));
        assertThat(stem).isCloseTo(shown, within(0.08));
    }

    /** Source: 27 CFR 30.25, table 7: 115 proof measured at 68 °F takes 0.996 of the volume at 60 °F. */
    @Test
    @Tag("published")
    void spiritsGrowWithWarmthAsInTheGaugingManual() {
        Mixture spirit = new Mixture(spirit(115).toGrams());
        double factor = spirit.millilitres(VolumeBasis.AT_60F.temperature()) / spirit.millilitres(new Temperature(20));
        assertThat(factor).isCloseTo(0.996, within(0.0005));
    }

    private static Contents spirit(double proof) {
        EthanolWater.Isotherm at60 = EthanolWater.at(VolumeBasis.AT_60F.temperature());
        double part = at60.fractionOfPercentByVolume(proof / 2);
        return Contents.of(Substance.ETHANOL, 1000 * part).with(Substance.WATER, 1000 * (1 - part));
    }

    /**
     * Source: 27 CFR 13.31 (older), 100 mg of solids in 100 mL lower the apparent proof by 0.4 degree; no strength is named. Ours runs from
     * 0.47 at 80 proof to 0.37 at 100.
     */
    @ParameterizedTest
    @CsvSource({"40, 0.075", "45, 0.075", "50, 0.075"})
    @Tag("published")
    void aLittleSugarHidesAsMuchProofAsTheRuleSays(double strength, double within) {
        Mixture sweet = new Mixture(Liqueur.litre(strength, 1.0).toGrams());
        double hidden = 2 * (sweet.strength() - Shown.SPIRIT_20C.of(sweet, TWENTY));
        assertThat(hidden).isCloseTo(0.4, within(within));
    }

    /**
     * Source: OIV-MA-AS2-03B, density of the residue = density − density of the alcohol + that of water; held to where Hackbarth (J. Am. Soc.
     * Brew. Chem. 2009, abstract) found it within its band, 5 % mass of sucrose and 18 % mass of ethanol; the band is about 0.11 kg/m³.
     */
    @ParameterizedTest
    @CsvSource({"8, 20", "12, 40", "15, 50", "20, 30", "22, 45"})
    @Tag("published")
    void residuesWeighWhatTheWineLawSays(double strength, double sugar) {
        Mixture sweet = new Mixture(Liqueur.litre(strength, sugar).toGrams());
        EthanolWater.Isotherm at20 = EthanolWater.at(TWENTY);
        double alcohol = at20.density(at20.fractionOfPercentByVolume(strength));
        double byLaw = sweet.density(TWENTY) - alcohol + at20.water();
        assertThat(sweet.residueDensity(TWENTY)).isCloseTo(byLaw, within(0.11));
    }
}
