package org.stillroom.core.gauging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.drops.OfficialDropper;
import org.stillroom.core.gauging.DropLearning.Run;
import org.stillroom.core.gauging.Gauged.Interval;
import org.stillroom.core.quantity.SeededDraws;

/** What weighing bottles tells of drops, in kitchens whose truth is known. */
@Tag("property")
class DropLearningTest {
    private static final int KITCHENS = 2_000;

    @Test
    void bandsHoldAndEstimatesAreUnbiased() {
        int held = 0;
        double off = 0.0;
        for (int seed = 0; seed < KITCHENS; seed++) {
            SeededDraws draws = new SeededDraws(seed);
            double dropper = OfficialDropper.RELATIVE_DOUBT / 1.645 * draws.normal();
            double[] liquids = new double[3];
            List<Run> runs = new ArrayList<>();
            for (int liquid = 0; liquid < liquids.length; liquid++) {
                liquids[liquid] = OfficialDropper.ALLOWANCE / 1.645 * draws.normal();
                for (int turn = 0; turn < 2; turn++) {
                    double half = 0.05 + 0.3 * draws.unit();
                    runs.add(new Run(liquid, 0, dropper + liquids[liquid] + half * draws.between(), half));
                }
            }
            Interval told = DropLearning.of(3, 1, runs).liquid(1, 0);
            double truth = dropper + liquids[1];
            held += told.low() <= truth && truth <= told.high() ? 1 : 0;
            off += (told.value() - truth) / told.halfWidth();
        }
        assertThat(held / (double) KITCHENS).isBetween(0.86, 0.94);
        assertThat(off / KITCHENS).isCloseTo(0.0, within(5.0 / 1.645 / Math.sqrt(KITCHENS)));
    }

    @Test
    void aDropperIsKnownFromAllThatWasCountedWithIt() {
        List<Run> runs = List.of(new Run(0, 0, 0.4, 0.1), new Run(1, 0, 0.4, 0.1), new Run(2, 0, 0.4, 0.1));
        DropLearning learned = DropLearning.of(4, 1, runs);
        assertThat(learned.dropper(0).low()).isPositive();
        assertThat(learned.liquid(3, 0).value()).isCloseTo(learned.dropper(0).value(), within(1e-12));
        assertThat(learned.liquid(3, 0).halfWidth())
                .isGreaterThan(learned.liquid(0, 0).halfWidth());
    }

    @Test
    void whereADropWasTypedNoDropperIsBlamed() {
        DropLearning learned = DropLearning.of(1, 1, List.of(new Run(0, -1, 0.2, 0.05)));
        assertThat(learned.dropper(0).value()).isZero();
        assertThat(learned.liquid(0).value()).isBetween(0.1, 0.2);
    }
}
