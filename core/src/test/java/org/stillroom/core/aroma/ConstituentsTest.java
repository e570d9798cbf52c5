package org.stillroom.core.aroma;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.reference.Standing;
import org.stillroom.core.reference.Table;

class ConstituentsTest {
    private static final String COLUMNS =
            "cas,name,aliases,formula,molar_mass,water_solubility_mg_per_l,water_solubility_status,"
                    + "water_solubility_source,log_p,log_p_status,log_p_source,density_g_per_ml,density_status,density_source";

    private static Constituent find(String name) {
        return Objects.requireNonNull(Constituents.find(name), name);
    }

    private static @Nullable String cas(String name) {
        @Nullable Constituent found = Constituents.find(name);
        return found == null ? null : found.cas();
    }

    @Test
    void aSubstanceIsFoundByNumberNameAndAlias() {
        assertThat(find("5989-27-5").name()).isEqualTo("d-limonene");
        assertThat(cas("limonene")).isEqualTo("5989-27-5");
        assertThat(cas(" Anethole ")).isEqualTo("4180-23-8").isEqualTo(cas("TRANS-ANETHOLE"));
        assertThat(cas("Eucalyptol")).isEqualTo("470-82-6").isEqualTo(cas("1,8-cineole"));
    }

    @Test
    void aNameOfSeveralSubstancesIsNoneOfThem() {
        assertThat(Constituents.find("thujone")).isNull();
        assertThat(Constituents.find("pinene")).isNull();
        assertThat(Constituents.find("")).isNull();
    }

    @Test
    void everyFigureSaysWhereItComesFrom() {
        assertThat(Constituents.list()).hasSize(66);
        for (Constituent constituent : Constituents.list()) {
            assertThat(constituent.waterSolubility().source().isEmpty())
                    .as(constituent.name())
                    .isEqualTo(constituent.waterSolubility().source().isBlank());
            if (constituent.logP().standing() == Standing.SECONDARY) {
                assertThat(constituent.logP().source()).as(constituent.name()).isNotEmpty();
            }
        }
        assertThat(find("valencene").waterSolubility().standing()).isEqualTo(Standing.OWN);
        assertThat(find("ethyl vanillin").density()).isNull();
    }

    /** Source: standard atomic weights (C 12.011, H 1.008, O 15.999); tolerance 0.02 for the older weights of the table. */
    @Test
    @Tag("published")
    void molarMassesAreThoseOfTheFormulas() {
        for (Constituent constituent : Constituents.list()) {
            assertThat(constituent.gramsPerMole())
                    .as(constituent.name())
                    .isCloseTo(massOf(constituent.formula()), within(0.02));
        }
    }

    private static double massOf(String formula) {
        double mass = 0;
        for (int i = 0; i < formula.length(); ) {
            char element = formula.charAt(i++);
            int count = 0;
            while (i < formula.length() && Character.isDigit(formula.charAt(i))) {
                count = 10 * count + formula.charAt(i++) - '0';
            }
            double each = switch (element) {
                case 'C' -> 12.011;
                case 'H' -> 1.008;
                case 'O' -> 15.999;
                default -> throw new AssertionError(formula);
            };
            mass += each * Math.max(1, count);
        }
        return mass;
    }

    @Test
    void aBadRowStopsAtOnceAndSaysWhere() {
        assertBadRow("80-56-9,x,,C,1,1,read,,1,read,,,,", "test, line 2, column cas: is no CAS number: 80-56-9");
        assertBadRow("80-56-8,x,,C,1,0,read,,1,read,,,,", "column water_solubility_mg_per_l: is not above zero");
        assertBadRow("80-56-8,x,,C,1,1,perhaps,,1,read,,,,", "column water_solubility_status: is no standing: perhaps");
        assertBadRow("80-56-8,,,C,1,1,read,,1,read,,,,", "column name: is empty");
        assertBadRow("80-56-8,x,,C,1,1,read,,one,read,,,,", "column log_p: holds no number: one");
        assertBadRow("80-56-8,x,,C", "test, line 2: 4 cells under 14 columns");
    }

    private static void assertBadRow(String row, String message) {
        assertThatThrownBy(() -> Constituents.read(Table.of("test", List.of(COLUMNS, row))))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining(message);
    }
}
