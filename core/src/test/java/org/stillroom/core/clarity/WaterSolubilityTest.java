package org.stillroom.core.clarity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.ConstituentGroup;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.published.Published;
import org.stillroom.core.reference.Table;

/** Solubilities in water beside published ones; docs/how-it-works/clarity.md states the figures that are held here. */
class WaterSolubilityTest {
    private record Row(Constituent constituent, double published) {}

    private static List<Row> records() {
        List<Row> records = new ArrayList<>();
        for (Table.Row row : Published.rows("water_solubility_25c.csv")) {
            Constituent constituent = Objects.requireNonNull(Constituents.find(row.text("cas")), row.text("cas"));
            records.add(new Row(constituent, row.number("mg_per_l")));
        }
        return records;
    }

    private static double mean(List<Double> logs) {
        return logs.stream().mapToDouble(each -> each).average().orElseThrow();
    }

    private static double scatter(List<Double> logs) {
        double mean = mean(logs);
        return Math.sqrt(
                logs.stream().mapToDouble(each -> Math.pow(each - mean, 2)).sum() / (logs.size() - 1));
    }

    /** Of each record, the decimal logarithm of ours over it. */
    private static List<Double> ours() {
        return records().stream()
                .map(row -> Math.log10(row.constituent().waterSolubility().value() / row.published()))
                .toList();
    }

    /** Residuals, not a check: the table was chosen from these records. What they show is how far records of one substance part. */
    @Test
    void recordsOfTheSameSubstancePartAsThePageSays() {
        List<Double> all = ours();
        assertThat(all).hasSize(65);
        assertThat(mean(all)).isCloseTo(-0.006, within(0.005));
        assertThat(scatter(all)).isCloseTo(0.27, within(0.005));
    }

    /** Of each constituent, the decimal logarithm of the estimate for its family over the mean of its records. */
    private static Map<ConstituentGroup, List<Double>> families() {
        Map<String, List<Double>> published = new TreeMap<>();
        records()
                .forEach(row -> published
                        .computeIfAbsent(row.constituent().name(), name -> new ArrayList<>())
                        .add(Math.log10(row.published())));
        Map<ConstituentGroup, List<Double>> families = new EnumMap<>(ConstituentGroup.class);
        published.forEach((name, logs) -> {
            ConstituentGroup family = ConstituentGroup.guessed(name);
            double estimate = Math.log10(1000.0 * family.gramsPerLitreInWater());
            families.computeIfAbsent(family, each -> new ArrayList<>()).add(estimate - mean(logs));
        });
        return families;
    }

    /**
     * What a constituent that is in no table is taken for, by its family and the general solubility equation, beside its records. The
     * factors were set from these rows, so that this is no check of them.
     */
    @ParameterizedTest
    @CsvSource({
        "MONOTERPENES, 9, 0.37, 0.25",
        "ESTERS, 4, 0.39, 0.21",
        "ALCOHOLS, 8, -0.48, 0.34",
        "CARBONYLS, 8, 0.14, 0.66",
        "PHENOLS, 4, 0.14, 0.18"
    })
    void theFamilyEstimateErrsAsItsFactorAndThePageSay(
            ConstituentGroup family, int count, double bias, double scatter) {
        List<Double> logs = families().getOrDefault(family, List.of());
        assertThat(logs).hasSize(count);
        assertThat(mean(logs)).isCloseTo(bias, within(0.01));
        assertThat(scatter(logs)).isCloseTo(scatter, within(0.01));
        double together = Math.sqrt(
                logs.stream().mapToDouble(each -> each * each).average().orElseThrow());
        assertThat(together).isLessThanOrEqualTo(1.01 * Math.log10(family.doubtFactor()));
    }

    /** A name that tells no family is taken as hardly soluble; small polar molecules such as vanillin then come out far too insoluble. */
    @Test
    @Tag("published")
    void aNameWithoutFamilyErrsToTheHazySide() {
        List<Double> logs = families().getOrDefault(ConstituentGroup.UNKNOWN, List.of());
        assertThat(logs).hasSize(11).allSatisfy(each -> assertThat(each).isNegative());
        assertThat(mean(logs)).isCloseTo(-1.65, within(0.01));
    }

    /** Fichan, Larroche, Gros: J. Chem. Eng. Data 44, 1999, abstract: 0.037 to 0.22 mmol/L of twelve terpene hydrocarbons at 25 °C. */
    @Test
    @Tag("published")
    void terpeneHydrocarbonsDissolveAsMuchAsMeasured() {
        List<Double> millimoles = Constituents.list().stream()
                .filter(each -> each.formula().equals("C10H16"))
                .map(each -> each.waterSolubility().value() / each.gramsPerMole())
                .toList();
        assertThat(millimoles).hasSizeGreaterThan(8);
        assertThat(millimoles).allSatisfy(each -> assertThat(each).isBetween(0.75 * 0.037, 0.22));
    }

    /** The same: 2 to 20 mmol/L of oxygenated monoterpenes. */
    @Test
    @Tag("published")
    void terpeneAlcoholsDissolveAsMuchAsMeasured() {
        List<Double> millimoles = Constituents.list().stream()
                .filter(each -> List.of("C10H18O", "C10H20O").contains(each.formula()))
                .map(each -> each.waterSolubility().value() / each.gramsPerMole())
                .toList();
        assertThat(millimoles).hasSizeGreaterThan(5);
        long inside =
                millimoles.stream().filter(each -> each >= 2.0 && each <= 20.0).count();
        assertThat((double) inside / millimoles.size()).isGreaterThan(0.7);
    }
}
