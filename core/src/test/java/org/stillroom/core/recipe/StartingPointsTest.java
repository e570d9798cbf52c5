package org.stillroom.core.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.stillroom.core.recipe.StartingPoints.Of;

/** Common practice, no source. */
class StartingPointsTest {
    private static String kind(Of of, double figure) {
        return Objects.requireNonNull(StartingPoints.matching(of, figure)).kind();
    }

    @Test
    void aFigureFindsItsRow() {
        assertThat(kind(Of.SUGAR, 60)).isEqualTo("dry");
        assertThat(kind(Of.SUGAR, 200)).isEqualTo("ordinary");
        assertThat(kind(Of.SUGAR, 400)).isEqualTo("crème");
        assertThat(kind(Of.STRENGTH, 18)).isEqualTo("fruit");
        assertThat(kind(Of.STRENGTH, 40)).isEqualTo("herbal");
        assertThat(kind(Of.ACIDITY, 0)).isEqualTo("any");
    }

    @Test
    void whereRowsMeetTheLowerOneHolds() {
        assertThat(kind(Of.SUGAR, 250)).isEqualTo("ordinary");
        assertThat(kind(Of.STRENGTH, 25)).isEqualTo("fruit");
    }

    @Test
    void betweenAndOutsideThereIsNone() {
        assertThat(StartingPoints.matching(Of.SUGAR, 140)).isNull();
        assertThat(StartingPoints.matching(Of.STRENGTH, 12)).isNull();
        assertThat(StartingPoints.matching(Of.ACIDITY, 6.1)).isNull();
    }

    @Test
    void theWordsSayTheRange() {
        for (StartingPoints.Row row : StartingPoints.rows()) {
            boolean open = row.words().startsWith("above ");
            String from = Long.toString(Math.round(row.range().low()));
            String range = from + " to " + Math.round(row.range().high());
            assertThat(row.words())
                    .isEqualTo((open ? "above " + from : range) + " " + row.of().unit());
        }
    }
}
