package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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

    /** Rows of the lists: 21 CFR 182.20, 182.10, 172.510, 182.40 to 184 together, and quinine of 172.575. */
    @Test
    @Tag("published")
    void theUsListsAreWhole() {
        assertThat(of("21 CFR 182.20")).hasSize(160);
        assertThat(of("21 CFR 182.10")).hasSize(83);
        assertThat(of("21 CFR 172.510(b)")).hasSize(129);
        assertThat(KNOWN.usLists()).hasSize(160 + 83 + 129 + 36 + 1);
    }

    private static List<Knowledge.UsEntry> of(String clause) {
        return KNOWN.usLists().stream()
                .filter(entry -> entry.clause().equals(clause))
                .toList();
    }

    /** By each of its botanical names a plant is found, alone, as oil and with a botanist behind it. */
    @Test
    @Tag("property")
    void everyBotanicalNameOfAPlantMeansIt() {
        List<String> failed = new ArrayList<>();
        List<String> kernels = List.of(
                "apricot kernel",
                "peach kernel",
                "cherry stone",
                "plum stone",
                "apple or pear seed",
                "bitter almond kernels",
                "kernels of a fruit that is not said",
                "kernels that are eaten"); // not their fruit
        for (Plant plant : KNOWN.plants()) {
            for (String botanical : kernels.contains(plant.name()) ? List.<String>of() : plant.botanical()) {
                for (String said : List.of(botanical, botanical + " oil", botanical + " L.")) {
                    List<String> found = Words.named(said, KNOWN.plants(), Plant::names).stream()
                            .map(Plant::name)
                            .toList();
                    if (found.stream().noneMatch(name -> isThatPlant(name, plant, botanical))) {
                        failed.add(said + " (" + plant.name() + ") is " + found);
                    }
                }
            }
        }
        assertThat(failed).isEmpty();
    }

    /** Of one species parts have names of their own; without the part, the plant that all of them come from is meant. */
    private static boolean isThatPlant(String found, Plant plant, String botanical) {
        return found.equals(plant.name())
                || KNOWN.plants().stream()
                        .anyMatch(each -> each.name().equals(found)
                                && each.botanical().contains(botanical)
                                && each.holds().containsAll(grave(plant)));
    }

    private static List<String> grave(Plant plant) {
        return plant.holds().stream()
                .filter(held -> KNOWN.watched().stream().anyMatch(watched -> watched.isGrave() && watched.covers(held)))
                .toList();
    }

    /** By each species that it prints a row of poisonous plants is found; where it prints a genus, by that. */
    @Test
    @Tag("property")
    void everyBotanicalNameOfAPoisonousPlantMeansIt() {
        List<String> failed = new ArrayList<>();
        for (Knowledge.Poison row : KNOWN.poisons()) {
            for (String botanical : row.botanical().split("[,;] ", -1)) {
                String said =
                        botanical.replace(" spp.", "").replace(" raw", "").replace("S. ebulus", "Sambucus ebulus");
                if (!Words.named(said, KNOWN.poisons(), Knowledge.Poison::names).contains(row)) {
                    failed.add(said + " of " + row.plant());
                }
            }
        }
        assertThat(failed)
                .containsExactlyInAnyOrder(
                        "- of activated charcoal, butterfly pea with medicines",
                        "- of kava, kratom, khat, blue lotus",
                        "- of untreated citrus wax and pesticide",
                        "- of cinnabar, realgar, orpiment, Spanish fly, toad venom",
                        // parts of plants that are eaten otherwise
                        "Prunus of cherry laurel, apricot and peach kernels, bitter almond",
                        "Sambucus nigra of elderberry, raw; dwarf elder",
                        "Solanum of green potato, tomato leaf, rhubarb leaf",
                        "Rheum of green potato, tomato leaf, rhubarb leaf",
                        "Prunus dulcis of green almond",
                        "Papaver somniferum of coca, cannabis, opium poppy",
                        "Lupinus albus of lupin seed",
                        "Annona muricata of soursop leaf and seed",
                        "Robinia pseudoacacia of black locust bark and leaves",
                        "Sassafras albidum of sassafras root bark");
    }

    /** The hard stop holds by botanical name too: each oil that is blocked, by the names of its plant. From memory: the names. */
    @Test
    @Tag("property")
    void everyBlockedOilIsStoppedByItsBotanicalName() {
        Map<String, String> oils = Map.ofEntries(
                Map.entry("Gaultheria procumbens oil", "wintergreen oil"),
                Map.entry("Betula lenta oil", "sweet birch oil"),
                Map.entry("Mentha pulegium oil", "pennyroyal oil"),
                Map.entry("Hedeoma pulegioides oil", "pennyroyal oil"),
                Map.entry("Ruta graveolens oil", "rue oil"),
                Map.entry("Cinnamomum camphora oil", "camphor (white, brown, yellow) oil and camphor crystals"),
                Map.entry("Sassafras albidum oil", "sassafras oil, brown/yellow camphor oil, ocotea oil"),
                Map.entry("Ocotea odorifera oil", "sassafras oil, brown/yellow camphor oil, ocotea oil"),
                Map.entry("Tanacetum vulgare oil", "tansy oil"),
                Map.entry("Thuja occidentalis oil", "thuja / cedar leaf (arborvitae) oil"),
                Map.entry("Artemisia vulgaris oil", "mugwort, armoise oil"),
                Map.entry("Artemisia absinthium L. oil", "wormwood oil, neat"),
                Map.entry("Hyssopus officinalis oil", "hyssop oil"),
                Map.entry("Acorus calamus oil", "calamus oil"),
                Map.entry("Prunus dulcis var. amara oil", "bitter almond oil not FFPA, apricot kernel oil crude"),
                Map.entry("Prunus armeniaca oil", "bitter almond oil not FFPA, apricot kernel oil crude"),
                Map.entry("Brassica nigra oil", "mustard oil, horseradish oil"),
                Map.entry("Armoracia rusticana oil", "mustard oil, horseradish oil"),
                Map.entry("Peumus boldus oil", "boldo oil"),
                Map.entry("Chenopodium ambrosioides oil", "wormseed (chenopodium) oil"),
                Map.entry("Juniperus sabina oil", "savin, juniper sabina oil"),
                Map.entry("Petroselinum crispum oil", "parsley seed oil"),
                Map.entry("Inula helenium oil", "elecampane, costus oil"),
                Map.entry("Saussurea costus oil", "elecampane, costus oil"));
        oils.forEach((said, material) -> assertThat(Words.named(said, KNOWN.blocked(), Knowledge.Blocked::names))
                .as(said)
                .anyMatch(row -> row.material().equals(material) && row.stops()));
        assertThat(KNOWN.blocked().stream().filter(Knowledge.Blocked::stops).map(Knowledge.Blocked::material))
                .filteredOn(material -> !oils.containsValue(material))
                .containsExactlyInAnyOrder( // no plants of one name
                        "fig leaf, verbena absolute (Mediterranean)",
                        "fragrance or cosmetic grade oil, fragrance oil, oils cut with dipropylene glycol, phthalate or vegetable oil");
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
                    List<Plant> named = Words.named(said, KNOWN.plants(), Plant::names);
                    boolean nameOfAnother =
                            named.stream().anyMatch(each -> each.names().contains(said));
                    if (!named.contains(plant) && !nameOfAnother) { // apricot oil is that of the kernel
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
                        "bitter lemon", // drinks, no plants
                        "pastis",
                        "teaberry",
                        "gaultheria",
                        "checkerberry",
                        "boxberry",
                        "vacha",
                        "orange leaf",
                        "clementine",
                        "fennel seed",
                        "mint",
                        "mint leaf",
                        "mint leaves",
                        "cinnamon stick",
                        "cinnamon sticks",
                        "true cinnamon",
                        "cinnamon ceylon",
                        "saigon cinnamon",
                        "pimenta",
                        "white pepper",
                        "rose petal",
                        "rose petals",
                        "bitter orange flower",
                        "bitter orange blossom",
                        "sweet orange flower",
                        "sweet orange leaf",
                        "sweet orange leaves",
                        "saigon cassia",
                        "juniper cone",
                        "absinthe",
                        "absinth",
                        "common wormwood",
                        "bitter almond kernel",
                        "bay");
    }
}
