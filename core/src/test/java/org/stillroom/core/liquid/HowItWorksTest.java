package org.stillroom.core.liquid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.alcohol.Reduction;
import org.stillroom.core.liquid.Syrup.Of;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Workings;

/** The worked examples of docs/how-it-works, digit for digit as they stand there. */
class HowItWorksTest {
    private static final Contents LIQUEUR =
            Contents.of(Substance.ETHANOL, 197.31).with(Substance.WATER, 584.94).with(Substance.SUCROSE, 300);

    private static Map<String, Double> steps(Workings.Written written) {
        Map<String, Double> steps = new TreeMap<>();
        written.steps().forEach(step -> steps.put(step.what() + ", " + step.unit(), step.value()));
        return steps;
    }

    private static double step(Workings.Written written, String what) {
        return steps(written).getOrDefault(what, Double.NaN);
    }

    /** docs/how-it-works/alcohol.md. */
    @Test
    void bringingDownNinetyFiveToForty() {
        Workings.Written written = new Workings.Written();
        Reduction.of(AlcoholByVolume.at20(95), AlcoholByVolume.at20(40), new Volume(1000), written);
        assertThat(step(written, "mass of the spirit, g")).isCloseTo(811.4, within(0.05));
        assertThat(step(written, "ethanol in it, which stays, g")).isCloseTo(749.8, within(0.05));
        assertThat(step(written, "mass after reduction, g")).isCloseTo(2251.6, within(0.05));
        assertThat(step(written, "water to add, g")).isCloseTo(1440.2, within(0.05));
        assertThat(step(written, "water to add, mL at 20 °C")).isCloseTo(1442.8, within(0.05));
        assertThat(step(written, "final volume, mL at 20 °C")).isCloseTo(2375.0, within(0.05));
        assertThat(step(written, "contraction, mL at 20 °C")).isCloseTo(67.8, within(0.05));
    }

    /** docs/how-it-works/volume.md. */
    @Test
    void aLitreOfLiqueur() {
        Workings.Written written = new Workings.Written();
        Figures figures = Liquid.figures(LIQUEUR, Temperature.TWENTY_CELSIUS, written);
        assertThat(step(written, "volume of the ethanol with the water, mL")).isCloseTo(813.7, within(0.05));
        assertThat(step(written, "volume that sucrose adds in its own water, mL"))
                .isCloseTo(186.3, within(0.05));
        assertThat(figures.value(Figure.VOLUME)).isCloseTo(1000.0, within(0.05));
        assertThat(figures.value(Figure.DENSITY)).isCloseTo(1082.25, within(0.005));
        assertThat(figures.value(Figure.STRENGTH)).isCloseTo(25.00, within(0.005));
        assertThat(figures.value(Figure.SUGAR)).isCloseTo(300, within(0.05));
    }

    /** docs/how-it-works/sugar.md. */
    @Test
    void syrups() {
        Syrup simple = Syrup.ofWeighed(Of.SUCROSE, new Syrup.Weighed(new Mass(500), new Mass(500)));
        assertThat(simple.density()).isCloseTo(1229.65, within(0.005));
        assertThat(simple.sugar()).isCloseTo(614.8, within(0.05));
        assertThat(simple.millilitres()).isCloseTo(813.2, within(0.05));
        Syrup marked = Syrup.madeUpTo(Of.SUCROSE, new Mass(850), new Volume(1000));
        assertThat(marked.brix()).isCloseTo(64.7, within(0.05));
        assertThat(marked.contents().grams(Substance.WATER)).isCloseTo(464.5, within(0.05));
        assertThat(Liquid.figures(LIQUEUR, Temperature.TWENTY_CELSIUS).value(Figure.SUGAR_BY_MASS))
                .isCloseTo(27.7, within(0.05));
    }

    /** docs/how-it-works/refraction.md. */
    @Test
    void whatARefractometerShows() {
        Figures figures = Liquid.figures(LIQUEUR, Temperature.TWENTY_CELSIUS);
        assertThat(figures.value(Figure.REFRACTIVE_INDEX)).isCloseTo(1.3902, within(0.00005));
        assertThat(figures.value(Figure.REFRACTOMETER_BRIX)).isCloseTo(34.9, within(0.05));
    }

    /** docs/how-it-works/cold-and-heat.md. */
    @Test
    void coldAndHeat() {
        Figures figures = Liquid.figures(LIQUEUR, Temperature.TWENTY_CELSIUS);
        assertThat(figures.value(Figure.FREEZING_POINT)).isCloseTo(-18.9, within(0.05));
        assertThat(figures.doubt(Figure.FREEZING_POINT)).isEqualTo(2);
        assertThat(alone(Substance.ETHANOL)).isCloseTo(-15.66, within(0.005));
        assertThat(alone(Substance.SUCROSE)).isCloseTo(-3.25, within(0.005));
        assertThat(figures.value(Figure.ENERGY_KJ)).isCloseTo(1082, within(0.5));
        EthanolWater.Isotherm spirit = EthanolWater.at(Temperature.TWENTY_CELSIUS);
        double strong = spirit.fractionOfPercentByVolume(96);
        double weak = spirit.fractionOfPercentByVolume(40);
        Estimate rise = Warming.of(
                List.of(
                        Contents.of(Substance.ETHANOL, strong).with(Substance.WATER, 1 - strong),
                        Contents.of(Substance.WATER, strong / weak - 1)),
                Temperature.TWENTY_CELSIUS);
        assertThat(rise.value()).isCloseTo(8.7, within(0.05));
        assertThat(rise.doubt()).isCloseTo(1.0, within(0.05));
    }

    private static double alone(Substance substance) {
        Contents one =
                Contents.of(Substance.WATER, LIQUEUR.grams(Substance.WATER)).with(substance, LIQUEUR.grams(substance));
        return Liquid.figures(one, Temperature.TWENTY_CELSIUS).value(Figure.FREEZING_POINT);
    }

    /** docs/how-it-works/doubt.md. */
    @Test
    void doubt() {
        double[] grams = Contents.of(Substance.ETHANOL, 400 * 0.7892391233)
                .with(Substance.WATER, 500)
                .with(Substance.SUCROSE, 250)
                .toGrams();
        ModelDoubt doubt = ModelDoubt.of(grams, 1000);
        assertThat(doubt.strengthHalfWidth()).isCloseTo(0.225, within(0.0005));
        assertThat(doubt.relativeVolumeHalfWidth()).isCloseTo(0.0056, within(0.00005));
    }
}
