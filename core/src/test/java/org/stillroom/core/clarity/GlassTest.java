package org.stillroom.core.clarity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.HeatCapacity;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Temperature;

/** A liqueur in the glass, with water, ice and drinks. */
class GlassTest {
    private static final Temperature ROOM = Temperature.TWENTY_CELSIUS;
    private static final String LIMONENE = "5989-27-5";

    private static Contents liqueur(double percent, double sugar, double limonene) {
        return MadeUp.sweetened(AlcoholByVolume.at20(percent), new MassConcentration(sugar))
                .plusConstituent(LIMONENE, limonene);
    }

    private static Glass.Point coldest(double percent) {
        return Glass.of(liqueur(percent, 0, 0.001), GlassAddition.ICE, ROOM)
                .coldest()
                .orElseThrow();
    }

    /**
     * Melt water in parts of an unsweetened spirit stirred with much ice: −1.21 a² + 1.246 a + 0.145 of its strength a (Arnold: Liquid
     * Intelligence, 2014, from memory), fitted to bar practice. The balance of heat has no constant of it; they part above 45 % vol.
     */
    @ParameterizedTest
    @CsvSource({"15, 0.305", "20, 0.346", "25, 0.381", "30, 0.410", "40, 0.450"})
    void iceMeltsAsMuchAsWhereDrinksAreStirred(double percent, double parts) {
        assertThat(coldest(percent).parts()).isCloseTo(parts, within(0.03));
    }

    /** The same balance on Melinder's freezing curve in place of the handbook's gives −13.1 °C at 40 and −9.0 °C at 30 % vol. */
    @ParameterizedTest
    @CsvSource({"40, -13.1", "30, -9.0", "20, -5.5"})
    @Tag("published")
    void itEndsOnTheFreezingCurve(double percent, double celsius) {
        assertThat(coldest(percent).celsius()).isCloseTo(celsius, within(0.4));
    }

    @Test
    @Tag("property")
    void noHeatIsLostToTheMelting() {
        Contents spirit = liqueur(35, 150, 0.5);
        Glass.Point end = Glass.of(spirit, GlassAddition.ICE, ROOM).coldest().orElseThrow();
        double melted = end.parts() * GlassAddition.ICE.litre().total();
        double given = HeatCapacity.joulesPerKelvin(litre(spirit)) * (20.0 - end.celsius());
        assertThat(melted * (333.7 + 4.22 * end.celsius())).isCloseTo(given, within(1e-6 * given));
    }

    private static Contents litre(Contents contents) {
        return contents.times(1000.0 / VolumeModel.atTwenty().millilitres(contents.toGrams()));
    }

    @Test
    void iceCloudsSoonerThanWaterBecauseItIsCold() {
        Contents liqueur = liqueur(42, 100, 0.5);
        double water = Glass.of(liqueur, GlassAddition.WATER, ROOM).hazyFrom().orElseThrow();
        double ice = Glass.of(liqueur, GlassAddition.ICE, ROOM).hazyFrom().orElseThrow();
        assertThat(ice).isLessThan(water);
        assertThat(Glass.of(liqueur, GlassAddition.WATER, ROOM).coldest()).isEmpty();
    }

    @Test
    void aDrinkOfSomeStrengthCloudsLaterThanWater() {
        Contents liqueur = liqueur(42, 100, 0.5);
        GlassAddition wine = Objects.requireNonNull(GlassAddition.find("Sweet vermouth"));
        assertThat(Glass.of(liqueur, wine, ROOM).hazyFrom().orElseThrow())
                .isGreaterThan(
                        Glass.of(liqueur, GlassAddition.WATER, ROOM).hazyFrom().orElseThrow());
    }

    @Test
    void aDrinkIsWhatItsFiguresSay() {
        GlassAddition mixer = GlassAddition.drink("mine", AlcoholByVolume.at20(12), new MassConcentration(40));
        Medium medium = Medium.of(mixer.litre(), ROOM);
        assertThat(medium.strength()).isCloseTo(12, within(1e-9));
        assertThat(medium.sugar()).isCloseTo(40, within(1e-9));
        assertThat(GlassAddition.list().values())
                .allSatisfy(each -> assertThat(each.litre().total()).isBetween(900.0, 1100.0));
    }
}
