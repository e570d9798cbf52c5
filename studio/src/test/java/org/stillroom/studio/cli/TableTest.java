package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillroom.studio.answer.Fields;

class TableTest {
    @Test
    void textStandsLeftAndFiguresRight() {
        Table table = new Table().text("what").figure("amount").text("unit");
        table.row("neutral spirit", "291.5", "mL").row("sugar at 20 °C", "1204.0", "g");
        assertThat(table.lines())
                .containsExactly(
                        "what            amount  unit", "neutral spirit   291.5  mL", "sugar at 20 °C  1204.0  g");
    }

    @Test
    void headingsThatAreAllEmptyTakeNoLine() {
        assertThat(new Table().text("").row("sugar").lines()).containsExactly("sugar");
    }

    @Test
    void aRowOfTheWrongLengthIsRefused() {
        assertThatThrownBy(() -> new Table().text("a").text("b").row("only one"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("2 columns, not 1 cells");
    }

    @Test
    void figuresShowJustTheirDecimals() {
        assertThat(List.of(Figure.decimals(37.456, 1), Figure.decimals(-0.01, 1), Figure.decimals(1e9, 0)))
                .containsExactly("37.5", "0.0", "1000000000");
    }

    @Test
    void figuresOfStepsKeepEightDigits() {
        assertThat(List.of(
                        Figure.significant(998.20123456),
                        Figure.significant(0),
                        Figure.significant(200),
                        Figure.significant(1.5e-7)))
                .containsExactly("998.20123", "0", "200", "1.5E-7");
    }

    @Test
    void fieldsRefuseWhatAScriptCannotRead() {
        Fields fields = new Fields().put("strength_vol_percent", 40.0);
        assertThatThrownBy(() -> fields.put("strength_vol_percent", 41.0)).hasMessageContaining("twice");
        assertThatThrownBy(() -> fields.put("Strength", 1.0)).hasMessageContaining("snake_case");
        assertThatThrownBy(() -> fields.put("density_kg_m3", Double.NaN)).hasMessageContaining("NaN");
    }
}
