package org.stillroom.core.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class TableTest {
    private static final Table TABLE =
            Table.of("t.csv", List.of("# about", "name,x,y", "", "\"a, b\", 1 ,10", "c,2,30", "d,4,"));

    @Test
    void cellsAreReadByColumnAndQuotesKeepCommas() {
        assertThat(TABLE.rows()).hasSize(3);
        assertThat(TABLE.rows().get(0).text("name")).isEqualTo("a, b");
        assertThat(TABLE.rows().get(0).number("x")).isEqualTo(1);
        assertThat(TABLE.rows().get(2).textOrEmpty("y")).isEmpty();
    }

    @Test
    void faultsNameTableLineAndColumn() {
        Table.Row last = TABLE.rows().get(2);
        assertThatThrownBy(() -> last.number("y")).hasMessage("t.csv, line 6, column y: is empty");
        assertThatThrownBy(() -> last.number("name")).hasMessage("t.csv, line 6, column name: holds no number: d");
        assertThatThrownBy(() -> last.text("z")).hasMessage("t.csv, line 6, column z: does not exist");
        assertThatThrownBy(() ->
                        Table.of("t.csv", List.of("x", "NaN")).rows().get(0).number("x"))
                .hasMessage("t.csv, line 2, column x: holds no finite number");
        assertThatThrownBy(() -> Tables.open("no/such.csv")).hasMessageContaining("without its table no/such.csv");
    }

    @Test
    void aCurveIsStraightBetweenItsRowsAndEndsWithThem() {
        Curve curve = Curve.of(TABLE.rows().subList(0, 2), "x", "y");
        assertThat(curve.at(1)).isEqualTo(10);
        assertThat(curve.at(1.25)).isCloseTo(15, within(1e-12));
        assertThat(curve.at(2)).isEqualTo(30);
        assertThatThrownBy(() -> curve.at(2.01)).hasMessage("the table runs from 1.0 to 2.0, not to 2.01");
        Table falling = Table.of("f.csv", List.of("x,y", "2,1", "2,3"));
        assertThatThrownBy(() -> Curve.of(falling.rows(), "x", "y"))
                .hasMessage("f.csv, line 3, column x: does not rise");
    }
}
