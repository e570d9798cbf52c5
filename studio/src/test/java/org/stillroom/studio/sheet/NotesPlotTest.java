package org.stillroom.studio.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.stillroom.studio.sheet.NotesPlot.Bar;

/** The plot of notes. */
class NotesPlotTest {
    private static String svg(Bar... bars) {
        return NotesPlot.svg(List.of(bars), "Lemon & bay", "activity", UnaryOperator.identity());
    }

    @Test
    void aDoubtOfADecadeIsDrawnBroken() {
        String sure = svg(new Bar("linalool", 20, 50, 150, false));
        String wide = svg(new Bar("linalool", 2, 50, 1500, true));
        assertThat(sure).contains("stroke-dasharray=\"none\"").contains("<title>Lemon &amp; bay</title>");
        assertThat(wide).contains("stroke-dasharray=\"5 4\"").contains("fill-opacity=\"0.15\"");
    }

    /** From 0.1 to 1000 are four decades on 332 units from 14: 10 stands in their middle. */
    @Test
    void aMarkStandsAtItsPowerOfTen() {
        String svg = svg(new Bar("linalool", 1, 10, 1000, true));
        assertThat(svg).contains("cx=\"180.0\"", "d=\"M97.0 33.0H346.0\"");
    }

    @Test
    void whatMayBeNothingBeginsAtTheEdge() {
        assertThat(svg(new Bar("citral", 0, 0.5, 3, true))).contains("d=\"M14.0 33.0H");
    }
}
