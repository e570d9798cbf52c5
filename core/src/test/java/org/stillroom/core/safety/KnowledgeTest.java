package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** The shipped tables: whole, and so kept that nothing can vanish without a word. */
class KnowledgeTest {
    private static final Knowledge KNOWN = Knowledge.SHIPPED;

    /** Regulation (EC) 1334/2008, Annex III: fifteen substances in part A, forty maxima in part B. */
    @Test
    @Tag("published")
    void annexThreeIsWhole() {
        assertThat(KNOWN.maxima().stream().filter(row -> row.part().endsWith("Part A")))
                .hasSize(15);
        assertThat(KNOWN.maxima().stream().filter(Knowledge.EuMaximum::isMaximum))
                .hasSize(40);
        assertThat(KNOWN.watched().stream().filter(Watched::asSuch)).hasSize(15);
    }

    @Test
    @Tag("published")
    void everyNameOfAnnexThreeIsWatched() {
        List<String> names = KNOWN.watched().stream().map(Watched::euName).toList();
        assertThat(KNOWN.maxima().stream().filter(Knowledge.EuMaximum::isMaximum))
                .allSatisfy(row -> assertThat(names).contains(row.substance()));
    }

    /** Rows of the lists: 21 CFR 182.20, 182.10, 172.510, and 182.40 to 184 together. */
    @Test
    @Tag("published")
    void theUsListsAreWhole() {
        assertThat(of("21 CFR 182.20")).hasSize(160);
        assertThat(of("21 CFR 182.10")).hasSize(83);
        assertThat(of("21 CFR 172.510(b)")).hasSize(129);
        assertThat(KNOWN.usLists()).hasSize(160 + 83 + 129 + 36);
    }

    private static List<Knowledge.UsEntry> of(String clause) {
        return KNOWN.usLists().stream()
                .filter(entry -> entry.clause().equals(clause))
                .toList();
    }

    @Test
    @Tag("property")
    void everySynonymOfTheUsListsIsFound() {
        for (Knowledge.UsEntry entry : KNOWN.usLists()) {
            for (String synonym : synonyms(entry.name())) {
                assertThat(UsListing.find(synonym, List.of(), KNOWN.usLists()))
                        .as(synonym + " of " + entry.name())
                        .isNotEmpty();
            }
            assertThat(UsListing.find(entry.name(), List.of(), KNOWN.usLists())).contains(entry);
        }
    }

    private static List<String> synonyms(String name) {
        List<String> synonyms = new ArrayList<>();
        int open = name.indexOf('(');
        int close = name.indexOf(')');
        if (open > 0 && close > open) {
            synonyms.add(name.substring(0, open).strip());
            String within = name.substring(open + 1, close);
            if (!within.startsWith("see ")) {
                synonyms.addAll(List.of(within.split(", | or ", -1)));
            }
        }
        return synonyms;
    }

    /** Else a row that goes missing would take the substance with it, in silence. */
    @Test
    @Tag("property")
    void whatIsComposedIsAlsoExpected() {
        for (Composed row : KNOWN.compositions()) {
            for (Watched watched : KNOWN.watched()) {
                for (Plant plant : KNOWN.plants()) {
                    boolean its = plant.oilMaterials().contains(row.material())
                            || plant.plantMaterials().contains(row.material());
                    if (its && row.most() > 0.0 && watched.members().contains(row.constituent())) {
                        assertThat(plant.holds())
                                .as(plant.name() + " holds " + row.constituent() + " of " + watched.name())
                                .anyMatch(watched::covers);
                    }
                }
            }
        }
    }

    @Test
    @Tag("property")
    void everyMaterialOfAPlantHasAComposition() {
        List<String> known =
                KNOWN.compositions().stream().map(Composed::material).toList();
        for (Plant plant : KNOWN.plants()) {
            assertThat(known).containsAll(plant.oilMaterials()).containsAll(plant.plantMaterials());
        }
    }

    @Test
    @Tag("property")
    void guidanceSpeaksOfWatchedSubstances() {
        List<String> names = KNOWN.watched().stream().map(Watched::name).toList();
        assertThat(KNOWN.guidance())
                .allSatisfy(row -> assertThat(row.watched().isEmpty() || names.contains(row.watched()))
                        .as(row.substance())
                        .isTrue());
    }
}
