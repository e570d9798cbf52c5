package org.stillroom.core.gauging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.quantity.Temperature;

/** Which readings serve best, before anything is measured. */
class GuideTest {
    private static final Contents LIQUEUR = Liqueur.litre(27, 165);

    @Test
    void aKitchenScaleAndAFlaskAloneCanDoIt() {
        List<Guide.Choice> choices =
                Guide.choices(List.of(Method.FLASK, Method.RESIDUE), LIQUEUR, null, Thermometer.EXACT, null);
        assertThat(choices).hasSize(1);
        assertThat(choices.get(0).strength()).isBetween(1.0, 3.0);
    }

    @Test
    void aHydrometerAloneTellsNothingAndWithARefractometerMuch() {
        assertThat(Guide.choice(List.of(Method.HYDROMETER), LIQUEUR, null, Thermometer.EXACT))
                .isEmpty();
        Guide.Choice both = Guide.choice(
                        List.of(Method.HYDROMETER, Method.REFRACTOMETER), LIQUEUR, null, Thermometer.EXACT)
                .orElseThrow();
        assertThat(both.strength()).isBetween(1.0, 2.0);
        assertThat(both.lostMillilitres()).isEqualTo(0.5);
    }

    @Test
    void aSmallBatchIsOfferedTheFlaskBeforeTheCylinder() {
        List<Method> have = List.of(Method.HYDROMETER, Method.FLASK, Method.REFRACTOMETER);
        List<Guide.Choice> choices = Guide.choices(have, LIQUEUR, null, Thermometer.EXACT, 700.0);
        assertThat(choices.get(0).methods()).containsExactly(Method.FLASK, Method.REFRACTOMETER);
        assertThat(choices.get(0).sampleMillilitres()).isEqualTo(50);
    }

    @Test
    @Tag("property")
    void theDoubtForetoldIsNearlyTheDoubtThatIsFound() {
        Guide.Choice foretold = Guide.choice(
                        List.of(Method.FLASK, Method.REFRACTOMETER), LIQUEUR, null, Thermometer.EXACT)
                .orElseThrow();
        Temperature twenty = Temperature.TWENTY_CELSIUS;
        Reading density = Reading.foreseen(Shown.DENSITY, LIQUEUR, twenty, 1.5);
        List<Reading> readings = List.of(
                new Reading(Shown.DENSITY, density.value() + 0.7, twenty, 1.5),
                Reading.foreseen(Shown.COMPENSATED_REFRACTOMETER, LIQUEUR, twenty, 0.2));
        Gauged found = Gauging.of(readings, null, Thermometer.EXACT).orElseThrow();
        assertThat(found.strength().halfWidth()).isCloseTo(foretold.strength(), withinPercentage(5));
    }
}
