package org.stillroom.core.extraction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Solvent that runs through a column. */
class PercolationTest {
    @Test
    @Tag("property")
    void oneCellIsAJarThatIsStirred() {
        for (double through : new double[] {0, 10, 50, 200, 1000}) {
            assertThat(new Percolation(1).partThatStays(through, 100))
                    .isCloseTo(Math.exp(-through / 100), within(1e-12));
        }
    }

    /** Held against small steps in time of the same cells, each mixed in itself. */
    @Test
    @Tag("property")
    void cellsInARowComeToTheSameAsSmallSteps() {
        int cells = 5;
        double held = 100;
        double[] inCell = {1, 1, 1, 1, 1};
        int steps = 200_000;
        double step = 250.0 / steps / (held / cells);
        for (int i = 0; i < steps; i++) {
            for (int cell = cells - 1; cell > 0; cell--) {
                inCell[cell] += step * (inCell[cell - 1] - inCell[cell]);
            }
            inCell[0] -= step * inCell[0];
        }
        double stays = (inCell[0] + inCell[1] + inCell[2] + inCell[3] + inCell[4]) / cells;
        assertThat(new Percolation(cells).partThatStays(250, held)).isCloseTo(stays, within(1e-4));
    }

    @Test
    @Tag("property")
    void manyCellsPushAllOutByWhatTheMarcHolds() {
        Percolation narrow = new Percolation(200);
        assertThat(narrow.partThatStays(50, 100)).isCloseTo(0.5, within(0.01));
        assertThat(narrow.partThatStays(100, 100)).isLessThan(0.03);
        assertThat(narrow.partThatStays(0, 100)).isCloseTo(1.0, within(1e-9));
    }

    @Test
    void aColumnWithoutCellsIsRefused() {
        assertThatThrownBy(() -> new Percolation(0)).hasMessageContaining("1 to 200 cells");
    }
}
