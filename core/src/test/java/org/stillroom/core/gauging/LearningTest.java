package org.stillroom.core.gauging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.gauging.Gauged.Interval;
import org.stillroom.core.quantity.SeededDraws;

/** What several batches tell of the labels of what went in, in kitchens whose truth is known. */
class LearningTest {
    private static final int KITCHENS = Boolean.getBoolean("stillroom.long") ? 4_000 : 150;
    private static final Shown[] READ = {Shown.DENSITY, Shown.COMPENSATED_REFRACTOMETER};

    /** A litre or so of another liqueur each time, some with a tincture and some without. */
    private static double[] some(SeededDraws draws, int turn) {
        double spirit = 180.0 + 250.0 * draws.unit();
        double tincture = turn % 2 == 0 ? 0.0 : 50.0 + 200.0 * draws.unit();
        double sugar = 250.0 * draws.unit();
        return new double[] {spirit, tincture, sugar, 1000.0 - spirit - tincture - sugar};
    }

    private static SimulatedKitchen kitchen(
            SeededDraws draws, double[] off, double common, double chance, int batches) {
        SimulatedKitchen kitchen = new SimulatedKitchen(draws, off, Thermometer.USUAL, common, chance);
        for (int turn = 0; turn < batches; turn++) {
            kitchen.make(some(draws, turn), 0.003, 0.0, READ);
        }
        return kitchen;
    }

    /** Nobody knows how much of an instrument's error is the same each time: the bands hold in either extreme and between. */
    @ParameterizedTest
    @CsvSource({"1, 0", "0, 1", "0.7071, 0.7071"})
    @Tag("property")
    void bandsHoldHoweverInstrumentsErr(double common, double chance) {
        double[] tolerances = {4.0, 6.0};
        int[] held = new int[2];
        double[] off = new double[2];
        double narrower = 0.0;
        for (int seed = 0; seed < KITCHENS; seed++) {
            SeededDraws draws = new SeededDraws(seed);
            double[] truth = {tolerances[0] * draws.between(), tolerances[1] * draws.between()};
            Learned learned = kitchen(draws, truth, common, chance, 6).learned(tolerances);
            for (int label = 0; label < 2; label++) {
                Interval told = learned.off(label);
                held[label] += told.low() <= truth[label] && truth[label] <= told.high() ? 1 : 0;
                off[label] += (told.value() - truth[label]) / told.halfWidth();
            }
            narrower += learned.off(SimulatedKitchen.SPIRIT).halfWidth() / tolerances[0];
        }
        double chanceOfMean = 5.0 / 1.645 / Math.sqrt(KITCHENS);
        for (int label = 0; label < 2; label++) {
            assertThat(held[label] / (double) KITCHENS).isGreaterThanOrEqualTo(0.85);
            assertThat(off[label] / KITCHENS).isCloseTo(0.0, within(chanceOfMean));
        }
        assertThat(narrower / KITCHENS).isLessThan(0.8);
    }

    @Test
    @Tag("property")
    void moreBatchesTellMore() {
        double[] truth = {-2.5, 0.0};
        double few = kitchen(new SeededDraws(3), truth, 0.5, 0.5, 2)
                .learned(4.0, 6.0)
                .off(0)
                .halfWidth();
        Learned many = kitchen(new SeededDraws(3), truth, 0.5, 0.5, 12).learned(4.0, 6.0);
        assertThat(many.off(0).halfWidth()).isLessThan(few);
        assertThat(many.vessels(SimulatedKitchen.SPIRIT)).isEqualTo(12);
        assertThat(many.vessels(SimulatedKitchen.TINCTURE)).isEqualTo(6);
    }

    @Test
    @Tag("property")
    void whatWentInTogetherIsKnownTogetherAndNotApart() {
        SeededDraws draws = new SeededDraws(11);
        SimulatedKitchen kitchen = new SimulatedKitchen(draws, new double[] {-3.0, -3.0}, Thermometer.USUAL, 0.5, 0.5);
        for (int turn = 0; turn < 5; turn++) {
            kitchen.make(new double[] {200.0, 200.0, 100.0, 500.0}, 0.002, 0.0, READ);
        }
        Learned learned = kitchen.learned(6.0, 6.0);
        Interval together = learned.off(SimulatedKitchen.SPIRIT, SimulatedKitchen.TINCTURE);
        assertThat(together.high()).isLessThan(0.0);
        assertThat(learned.off(SimulatedKitchen.SPIRIT).halfWidth()).isGreaterThan(3.0);
        assertThat(learned.off(SimulatedKitchen.TINCTURE).halfWidth()).isGreaterThan(3.0);
    }

    @Test
    @Tag("property")
    void aLabelFarBeyondItsToleranceIsNamedAndItsTruthFound() {
        int named = 0;
        int held = 0;
        for (int seed = 0; seed < KITCHENS; seed++) {
            SeededDraws draws = new SeededDraws(seed);
            double[] truth = {-12.0, 0.3 * draws.between()};
            Learned learned = kitchen(draws, truth, 0.7, 0.7, 6).learned(0.3, 0.3);
            named += learned.isBeyondTolerance(SimulatedKitchen.SPIRIT)
                            && !learned.isBeyondTolerance(SimulatedKitchen.TINCTURE)
                    ? 1
                    : 0;
            Interval told = learned.off(SimulatedKitchen.SPIRIT);
            held += told.low() <= -12.0 && -12.0 <= told.high() ? 1 : 0;
        }
        assertThat(named / (double) KITCHENS).isGreaterThanOrEqualTo(0.95);
        assertThat(held / (double) KITCHENS).isGreaterThanOrEqualTo(0.85);
    }

    @Test
    @Tag("property")
    void labelsThatAreRightAreHardlyEverAccused() {
        int accused = 0;
        for (int seed = 0; seed < KITCHENS; seed++) {
            SeededDraws draws = new SeededDraws(seed);
            double[] truth = {0.3 * draws.between(), 0.3 * draws.between()};
            Learned learned = kitchen(draws, truth, 0.7, 0.7, 6).learned(0.3, 0.3);
            accused += learned.isBeyondTolerance(0) || learned.isBeyondTolerance(1) ? 1 : 0;
        }
        assertThat(accused / (double) KITCHENS).isLessThanOrEqualTo(0.01);
    }

    @Test
    @Tag("property")
    void aBatchInWhichAHandSlippedIsLeftOut() {
        int leftOut = 0;
        for (int seed = 0; seed < KITCHENS; seed++) {
            SeededDraws draws = new SeededDraws(seed);
            double[] truth = {0.3 * draws.between(), 0.3 * draws.between()};
            SimulatedKitchen kitchen = new SimulatedKitchen(draws, truth, Thermometer.USUAL, 0.7, 0.7);
            for (int turn = 0; turn < 5; turn++) {
                kitchen.make(some(draws, turn), 0.003, turn == 2 ? 120.0 : 0.0, READ);
            }
            Learned learned = kitchen.learned(0.3, 0.3);
            boolean alone = !learned.isLeftOut(0)
                    && !learned.isLeftOut(1)
                    && learned.isLeftOut(2)
                    && !learned.isLeftOut(3)
                    && !learned.isLeftOut(4);
            leftOut += alone && !learned.isBeyondTolerance(0) && !learned.isBeyondTolerance(1) ? 1 : 0;
        }
        assertThat(leftOut / (double) KITCHENS).isGreaterThanOrEqualTo(0.95);
    }

    @Test
    @Tag("property")
    void twoLabelsThatMayBothBeBehindItAreBothNamedAndNoneIsOpened() {
        SeededDraws draws = new SeededDraws(5);
        SimulatedKitchen kitchen = new SimulatedKitchen(draws, new double[] {-20.0, 0.0}, Thermometer.USUAL, 0.5, 0.5);
        for (int turn = 0; turn < 4; turn++) {
            kitchen.make(new double[] {250.0, 250.0, 50.0, 450.0}, 0.002, 0.0, READ);
        }
        Learned learned = kitchen.learned(0.3, 0.3);
        assertThat(learned.suspects()).containsExactlyInAnyOrder(0, 1);
        assertThat(learned.isBeyondTolerance(0)).isFalse();
    }

    @Test
    @Tag("property")
    void withoutAnyVesselALabelIsAsGoodAsItsTolerance() {
        SeededDraws draws = new SeededDraws(1);
        Learned learned = new SimulatedKitchen(draws, new double[] {0, 0}, Thermometer.USUAL, 0.5, 0.5).learned(0.3);
        assertThat(learned.off(0).value()).isZero();
        assertThat(learned.off(0).halfWidth()).isCloseTo(0.3 / Math.sqrt(3) * 1.645, within(1e-3));
    }
}
