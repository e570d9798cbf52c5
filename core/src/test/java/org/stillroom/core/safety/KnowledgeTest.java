package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.aroma.Material;
import org.stillroom.core.aroma.Materials;

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

    /** Each name of the table means its own plant, alone and with what people add to it. */
    @Test
    @Tag("property")
    void everyNameOfAPlantMeansIt() {
        List<String> failed = new ArrayList<>();
        for (Plant plant : KNOWN.plants()) {
            for (String name : plant.names()) {
                for (String said : List.of(name, name + " oil", "dried" + name)) {
                    if (!Words.named(said, KNOWN.plants(), Plant::names).contains(plant)) {
                        failed.add(said + " is not " + plant.name());
                    }
                }
            }
        }
        assertThat(failed).isEmpty();
    }

    /** Each name of a material by which the aroma tables find it means, for the rules, a plant that holds that material. */
    @Test
    @Tag("property")
    void everyNameOfAMaterialMeansAPlantThatHoldsIt() {
        List<String> failed = new ArrayList<>();
        for (Material material : Materials.list()) {
            List<String> names = new ArrayList<>(material.aliases());
            names.add(material.name());
            for (String name : names) {
                String said = material.kind() == Material.Kind.OIL ? name + " oil" : name;
                List<Plant> plants = Words.named(said, KNOWN.plants(), Plant::names);
                boolean composed = KNOWN.compositions().stream()
                        .anyMatch(row -> row.material().equals(material.id()));
                boolean its = plants.stream()
                        .anyMatch(plant -> plant.oilMaterials().contains(material.id())
                                || plant.plantMaterials().contains(material.id()));
                if (composed && !its) {
                    failed.add(said + " (" + material.id() + ") is "
                            + plants.stream().map(Plant::name).toList());
                }
            }
        }
        assertThat(failed).isEmpty();
    }

    /**
     * Each plant with an oil finds its oil by a name among those that clarity and notes reckon with, and never another one. Names
     * under which no oil is sold, or which could mean several, find none: they are listed here, so that a new one is looked at.
     */
    @Test
    @Tag("property")
    void everyPlantWithAnOilFindsItAmongTheMaterials() {
        List<String> none = new ArrayList<>();
        List<String> without = new ArrayList<>();
        for (Plant plant : KNOWN.plants()) {
            List<String> names = plant.oilMaterials().isEmpty() ? List.of() : plant.names();
            int found = 0;
            for (String name : names) {
                Material material = Materials.find(name.strip() + " oil");
                if (material == null) {
                    none.add(name.strip());
                } else {
                    found++;
                    assertThat(material.kind() == Material.Kind.PLANT ? plant.plantMaterials() : plant.oilMaterials())
                            .as(plant.name() + " by" + name)
                            .contains(material.id());
                }
            }
            if (!names.isEmpty() && found == 0) {
                without.add(plant.name());
            }
        }
        assertThat(without).containsExactly("mint"); // peppermint or spearmint
        assertThat(none)
                .containsExactlyInAnyOrder(
                        "orange leaf",
                        "clementine",
                        "fennel seed",
                        "mint",
                        "mint leaf",
                        "mint leaves",
                        "cinnamon stick",
                        "cinnamon sticks",
                        "ceylon cinnamon",
                        "true cinnamon",
                        "cinnamon ceylon",
                        "saigon cinnamon",
                        "pimenta",
                        "white pepper",
                        "rose petal",
                        "rose petals",
                        "bay");
    }
}
