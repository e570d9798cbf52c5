package org.stillroom.studio.web.rest;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillroom.studio.usecase.batch.Waiting;

class TimelineTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 27);

    private static Waiting from(int began, int ends) {
        return new Waiting(1, "a", null, Waiting.What.AGEING, TODAY.plusDays(began), TODAY.plusDays(ends), "", false);
    }

    private static double percent(String text) {
        return Double.parseDouble(text.replace("%", ""));
    }

    @Test
    void barsLieWithinTheirDays() {
        Waiting waiting = from(-7, 13);
        Timeline line = new Timeline(List.of(waiting), TODAY);
        assertThat(line.first()).isEqualTo(TODAY.minusDays(7));
        assertThat(line.last()).isEqualTo(TODAY.plusDays(14));
        assertThat(percent(line.bar(waiting).x())).isZero();
        assertThat(percent(line.bar(waiting).width())).isBetween(95.0, 96.0);
        assertThat(percent(line.now())).isBetween(31.0, 32.5);
        assertThat(line.nowAnchor()).isEqualTo("middle");
    }

    @Test
    void whatWaitsForYearsRunsOutOfTheDrawingAndLeavesRoomForWhatIsSoon() {
        Waiting soon = from(0, 9);
        Waiting far = from(0, 400);
        Timeline line = new Timeline(List.of(soon, far), TODAY);
        assertThat(line.last()).isEqualTo(TODAY.plusDays(90));
        assertThat(percent(line.bar(soon).width())).isGreaterThan(9.0);
        assertThat(percent(line.bar(far).x()) + percent(line.bar(far).width())).isGreaterThan(100.0);
        assertThat(line.nowAnchor()).isEqualTo("start");
    }

    @Test
    void whereAllIsFarItReachesToTheNextOfIt() {
        assertThat(new Timeline(List.of(from(-30, 200)), TODAY).last()).isEqualTo(TODAY.plusDays(200));
    }
}
