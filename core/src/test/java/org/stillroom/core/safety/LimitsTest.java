package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Table;

/** Maxima of law at the limit, just under and just over; values and clauses stand in published/safety_limits.csv. */
class LimitsTest {
    private static final Watched ANY = new Watched("substance", List.of("substance"), List.of(), "", false);

    private static Table table() throws IOException {
        try (InputStream in = Objects.requireNonNull(
                LimitsTest.class.getResourceAsStream("/org/stillroom/core/published/safety_limits.csv"))) {
            return Table.of(
                    "safety_limits", List.of(new String(in.readAllBytes(), StandardCharsets.UTF_8).split("\n", -1)));
        }
    }

    @TestFactory
    @Tag("published")
    Stream<DynamicTest> everyMaximumOfAnnexThreeStandsWhereTheRegulationHasIt() throws IOException {
        return table().rows().stream()
                .map(row -> DynamicTest.dynamicTest(row.text("substance") + ", " + row.text("category"), () -> {
                    List<Double> found = Knowledge.SHIPPED.maxima().stream()
                            .filter(Knowledge.EuMaximum::isMaximum)
                            .filter(each -> each.substance().equals(row.text("substance"))
                                    && each.category().equals(row.text("category")))
                            .map(Knowledge.EuMaximum::milligramsPerKilogram)
                            .toList();
                    assertThat(found).containsExactly(row.number("mg_per_kg"));
                    edges(row.number("mg_per_kg"), Limit.Edge.UP_TO);
                }));
    }

    private static void edges(double value, Limit.Edge edge) {
        assertThat(judged(value, edge, value * 0.999)).isEqualTo(Severity.NOTE);
        assertThat(judged(value, edge, value)).isEqualTo(edge == Limit.Edge.UP_TO ? Severity.NOTE : Severity.STOP);
        assertThat(judged(value, edge, value * 1.001)).isEqualTo(Severity.STOP);
    }

    private static Severity judged(double value, Limit.Edge edge, double found) {
        return judge(value, edge, amount(new Range(found, found), RowStatus.READ, List.of()))
                .severity();
    }

    private static Finding judge(double value, Limit.Edge edge, Amount amount) {
        return new Limit("test", Place.EU.label(), "drinks", value, Limit.Basis.PER_KILOGRAM, edge, Source.EU_1334_2008)
                .judge(amount);
    }

    private static Amount amount(Range range, RowStatus status, List<String> notKnown) {
        return new Amount(ANY, range, range, notKnown, List.of("line 1"), status, List.of("a group"));
    }

    /** 21 CFR 172.510 footnote 1: thujone free is below 10 ppm, so that 10 itself is not. */
    @Test
    @Tag("published")
    void thujoneFreeIsBelowTenPartsPerMillion() {
        edges(10.0, Limit.Edge.BELOW);
    }

    @Test
    void whatIsNotKnownNeverPassesAndAMemoryNeverClears() {
        assertThat(judge(10.0, Limit.Edge.UP_TO, amount(new Range(0, 1), RowStatus.READ, List.of("line 2")))
                        .verdict())
                .isEqualTo("not known");
        assertThat(judge(10.0, Limit.Edge.UP_TO, amount(new Range(0, 1), RowStatus.MEMORY, List.of()))
                        .verdict())
                .isEqualTo("not shown to be within");
        assertThat(judge(10.0, Limit.Edge.UP_TO, amount(new Range(0, 1), RowStatus.READ, List.of()))
                        .verdict())
                .isEqualTo("within the limit");
        assertThat(judge(10.0, Limit.Edge.UP_TO, amount(new Range(0, 11), RowStatus.MEMORY, List.of("line 2")))
                        .severity())
                .isEqualTo(Severity.STOP);
    }

    /** No row of Annex III for alcoholic drinks: estragole, methyleugenol, safrole, coumarin. */
    @Test
    @Tag("published")
    void noFigureOfAnotherCategoryIsBorrowed() {
        List<String> alcoholic = new ArrayList<>();
        for (Knowledge.EuMaximum row : Knowledge.SHIPPED.maxima()) {
            if (row.isMaximum()
                    && row.category().toLowerCase(java.util.Locale.ROOT).contains("alcoholic bev")
                    && !row.category().toLowerCase(java.util.Locale.ROOT).contains("non-alcoholic")) {
                alcoholic.add(row.substance());
            }
        }
        assertThat(alcoholic)
                .doesNotContain("estragole", "methyleugenol", "safrole", "coumarin")
                .contains("quassin");
    }

    @Test
    void whatPassesALimitIsToldInDigitsThatShowIt() {
        Finding hair = judge(10.0, Limit.Edge.UP_TO, amount(new Range(2.0, 10.004), RowStatus.READ, List.of()));
        assertThat(hair.severity()).isEqualTo(Severity.STOP);
        assertThat(hair.message()).contains("2.000 to 10.004 mg/kg", "at most 10 mg/kg");
        Finding far = judge(10.0, Limit.Edge.UP_TO, amount(new Range(2.0, 12.0), RowStatus.READ, List.of()));
        assertThat(far.message()).contains("2.00 to 12.0 mg/kg");
    }
}
