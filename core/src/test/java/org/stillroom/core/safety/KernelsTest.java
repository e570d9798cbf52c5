package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Stones, kernels, seeds and leaves that set hydrogen cyanide free. Which do, and how much, is from memory. */
class KernelsTest {
    private static Bench with(String name, Kind kind) {
        return new Bench().grams(name, kind, 2.0).strong("neutral spirit", Kind.SPIRIT, 40.0, 998.0);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "apricot kernels",
                "apricot stones",
                "peach pits",
                "cherry stones",
                "sour cherry kernels",
                "plum kernels",
                "plum pits",
                "sloe stones",
                "apple seeds",
                "apple pips",
                "bitter almonds",
                "elder seeds",
                "elder leaves",
                "cherry laurel leaves",
                "linseed",
                "fruit stones",
                "kernels",
                "Prunus armeniaca kernels",
                "Aprikosenkerne",
                "Marillenkerne",
                "Pfirsichkerne",
                "Kirschkerne",
                "Kirschsteine",
                "Sauerkirschkerne",
                "Pflaumenkerne",
                "Zwetschgenkerne",
                "Apfelkerne",
                "Bittermandeln",
                "Holunderblätter",
                "Kirschlorbeer",
                "20 Kirschkerne, ganz",
                "Obstkerne"
            })
    void whatSetsCyanideFreeIsToldAtItsLineInPlansAndNeverWithin(String name) {
        Bench drink = with(name, Kind.DRIED_PLANT);
        List<Finding> plan = Safety.ofPlan(drink.plan(), Grounds.SHIPPED);
        assertThat(plan).anySatisfy(finding -> {
            assertThat(finding.rule()).isEqualTo("stones-and-kernels");
            assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
            assertThat(finding.where()).isEqualTo("line 1, " + name);
        });
        assertThat(drink.amount("hydrogen cyanide").status().mayClear()
                        && drink.amount("hydrogen cyanide").isKnown())
                .isFalse();
        assertThat(ofCyanide(drink)).isNotEmpty().noneMatch(verdict -> verdict.contains("within the limit"));
    }

    /** Nobody can take the stones out of what is bought, so that it is said once, and never as within. */
    @Test
    void spiritsOfStoneFruitAreOneQuietLineAndStayUnknown() {
        Bench drink = new Bench()
                .strong("cherry brandy", Kind.SPIRIT, 40.0, 100.0)
                .strong("Zwetschgenwasser", Kind.SPIRIT, 42.0, 100.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 800.0);
        List<Finding> about = drink.safety().findings().stream()
                .filter(finding ->
                        finding.message().toLowerCase(java.util.Locale.ROOT).contains("hydrogen cyanide"))
                .toList();
        assertThat(about).singleElement().satisfies(finding -> {
            assertThat(finding.rule()).isEqualTo(NotKnown.NAME);
            assertThat(finding.severity()).isEqualTo(Severity.NOTE);
            assertThat(finding.where()).isEqualTo("line 1, cherry brandy; line 2, Zwetschgenwasser");
        });
        assertThat(drink.amount("hydrogen cyanide").isKnown()).isFalse();
        assertThat(Safety.ofPlan(drink.plan(), Grounds.SHIPPED)).containsAll(about);
        assertThat(drink.safety().tellsUnknown()).isTrue();
    }

    /** With kernels beside it the limit speaks as ever, and fruit that is put in keeps its caution. */
    @Test
    void aSpiritOfStoneFruitQuietensNothingElse() {
        Bench drink = with("cherry stones", Kind.DRIED_PLANT).strong("cherry brandy", Kind.SPIRIT, 40.0, 100.0);
        assertThat(ofCyanide(drink)).isNotEmpty().noneMatch(verdict -> verdict.contains("within the limit"));
        Bench fruit = with("cherries", Kind.FRESH_PLANT).strong("plum brandy", Kind.SPIRIT, 40.0, 100.0);
        assertThat(fruit.safety().findings())
                .anyMatch(finding -> finding.rule().equals(Kernels.NAME) && finding.severity() == Severity.CAUTION)
                .anyMatch(finding -> finding.verdict().equals("not known")
                        && String.valueOf(finding.limit()).contains("hydrogen cyanide"));
    }

    /** By removal: where the table loses a row, its kernels are no fruit of another, and what is left of the name is asked about. */
    @Test
    void kernelsAreNeverTakenForTheFruitWhenTheirRowIsMissing() {
        List<Plant> all = Grounds.SHIPPED.knowledge().plants();
        for (String name :
                List.of("apple seeds", "apple pips", "Apfelkerne", "pear pips", "quince seeds", "cherry stones")) {
            List<Plant> without = all.stream()
                    .filter(plant -> NamedPlants.of(name, all).plants().stream()
                            .noneMatch(named ->
                                    named.equals(plant) && !plant.name().equals("stone fruit")))
                    .toList();
            assertThat(without.size()).as(name).isLessThan(all.size());
            NamedPlants left = NamedPlants.of(name, without);
            assertThat(left.plants().isEmpty()
                            || left.plants().stream()
                                    .anyMatch(plant -> plant.holds().contains("hydrogen cyanide")))
                    .as(name + ": " + left)
                    .isTrue();
        }
        assertThat(NamedPlants.of("apple", all).plants())
                .extracting(Plant::name)
                .containsExactly("apple");
    }

    /** Regulation (EU) No 1169/2011, Annex II, 12; that fruit is sulphured and kernels are not is common practice, no source. */
    @ParameterizedTest
    @CsvSource({
        "cherry kernels, false",
        "Kirschkerne, false",
        "apricot stones, false",
        "dried cherries, true",
        "apricots, true",
        "'apricots with stones', true"
    })
    void kernelsAreNoDriedFruit(String name, boolean told) {
        assertThat(with(name, Kind.DRIED_PLANT).findings("sulphites").isEmpty()).isNotEqualTo(told);
    }

    private static List<String> ofCyanide(Bench drink) {
        return drink.safety().findings().stream()
                .filter(finding -> finding.limit() != null && finding.limit().contains("hydrogen cyanide"))
                .map(Finding::verdict)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({
        "sour cherries, true",
        "cherries with stones, true",
        "whole sloes, true",
        "'cherries, not pitted', true",
        "unpitted cherries, true",
        "dried cherries, true",
        "Sauerkirschen, true",
        "Zwetschgen, true",
        "pitted sour cherries, false",
        "stoned plums, false",
        "'Kirschen, entsteint', false",
        "Zwetschgen ohne Steine, false",
        "apricot flesh, false",
        "apple, false",
        "pine nuts, false",
        "pumpkin seeds, false",
        "sweet almonds, false",
    })
    void stoneFruitCountsUntilItsStonesAreSaidToBeOut(String name, boolean counts) {
        Bench drink = with(name, Kind.DRIED_PLANT);
        assertThat(drink.findings("stones-and-kernels").isEmpty()).isNotEqualTo(counts);
        assertThat(drink.safety().drink().amount("hydrogen cyanide") != null).isEqualTo(counts);
        if (counts) {
            assertThat(drink.amount("hydrogen cyanide").isKnown()).isFalse();
            assertThat(ofCyanide(drink)).contains("not known");
        }
    }

    /** The trade mostly dries apricots and peaches without their stones, wild ones whole: common practice, no source, which clears nothing. */
    @ParameterizedTest
    @CsvSource({
        "dried apricots, , NOTE not known",
        "getrocknete Aprikosen, , NOTE not known",
        "dried apricots with stones, CAUTION stones, ",
        "wild dried apricots, CAUTION stones, ",
        "apricots, CAUTION stones, "
    })
    void ofDriedApricotsItIsSaidOnceThatStonesAreNotKnown(String name, String stones, String once) {
        Bench drink = with(name, Kind.DRIED_PLANT);
        assertThat(drink.verdicts("stones-and-kernels")).isEqualTo(stones == null ? List.of() : List.of(stones));
        List<Finding> told = drink.findings(NotKnown.NAME).stream()
                .filter(finding -> finding.message().contains("without their stones"))
                .toList();
        assertThat(told).hasSize(once == null ? 0 : 1);
        assertThat(drink.amount("hydrogen cyanide").isKnown()).isFalse();
        assertThat(drink.findings("eu-maximum")).hasSize(once == null ? 1 : 0);
    }

    /** Of berries and leaves there is no table, so that neither weight nor count tells anything. */
    @ParameterizedTest
    @ValueSource(strings = {"Holunderbeeren", "elderberries", "cherry laurel", "flaxseed"})
    void whatNoTableCountsIsNotAskedForItsWeight(String name) {
        assertThat(with(name, Kind.DRIED_PLANT).findings("stones-and-kernels"))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
                    assertThat(finding.message()).doesNotContain("count");
                });
    }

    @Test
    void aNoteThatSaysThatTheStonesAreOutIsHeardAndOneOfJuiceIsNot() {
        Bench pitted = new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 998.0)
                .grams("sour cherries", Kind.DRIED_PLANT, 2.0)
                .note("pitted at home");
        assertThat(pitted.findings("stones-and-kernels")).isEmpty();
        Bench pressed = new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 998.0)
                .grams("sour cherries", Kind.DRIED_PLANT, 2.0)
                .note("press the juice out at the end");
        assertThat(pressed.findings("stones-and-kernels")).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"cherry wood chips", "cherry leaves", "plum blossoms", "wild cherry bark", "Kirsche, Blätter"})
    void anotherPartOfTheTreeIsAskedAboutWithoutItsStones(String name) {
        Bench drink = with(name, Kind.DRIED_PLANT);
        assertThat(drink.verdicts("stones-and-kernels")).containsExactly("CAUTION part of the tree");
        assertThat(drink.amount("hydrogen cyanide").isKnown()).isFalse();
    }

    /** The amount of guidance that what is known comes to says that the rest makes it sooner. */
    @Test
    void servingsUntilGuidanceAreThoseOfWhatIsKnownAlone() {
        Bench both = new Bench()
                .grams("apricot kernels", Kind.DRIED_PLANT, 1.0)
                .grams("sour cherries", Kind.DRIED_PLANT, 100.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 900.0);
        assertThat(both.findings("intake"))
                .filteredOn(finding -> finding.message().startsWith("Hydrogen cyanide"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("of what is known alone, sooner"));
    }

    /** 2 g of kernels with 0.3 % at worst in a kilogram are 6 mg/kg; where no fruit is said the worst of all, 0.5 %, is 10. */
    @ParameterizedTest
    @CsvSource({"plum kernels, 6.0", "sour cherry kernels, 4.0", "apricot kernels, 8.0", "fruit kernels, 10.0"})
    void kernelsByWeightCountWithTheWorst(String name, double worst) {
        Amount amount = with(name, Kind.DRIED_PLANT).amount("hydrogen cyanide");
        assertThat(amount.perKilogram().least()).isZero();
        assertThat(amount.perKilogram().most()).isCloseTo(worst, within(0.02));
        assertThat(amount.status()).isEqualTo(RowStatus.MEMORY);
    }

    /** With tables that miss rows kernels are still not known, or counted, or not recognised: never within a limit. */
    @Test
    @Tag("property")
    void rowsThatAreMissingNeverClearKernels() {
        long seed = 1806;
        Random random = new Random(seed);
        List<String> names = List.of("apricot kernels", "plum stones", "apple pips", "sour cherries", "cherry laurel");
        for (int i = 0; i < 60; i++) {
            String name = names.get(random.nextInt(names.size()));
            Knowledge less = NotKnownTest.fewer(random);
            Bench thin = with(name, Kind.DRIED_PLANT).knowing(less);
            String what = "draw " + i + " of seed " + seed + ", " + name;
            assertThat(ofCyanide(thin)).as(what).doesNotContain("within the limit");
            List<String> told = new ArrayList<>(thin.verdicts("stones-and-kernels"));
            told.addAll(thin.verdicts("not-known"));
            assertThat(told).as(what).isNotEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Zwetschgen ohne Kern",
                "Zwetschgen ohne Kerne",
                "Kirschen ohne Kerne",
                "Kirschen, Kerne entfernt",
                "Aprikosen ohne die Kerne",
                "Kirschen ohne Steine",
                "Kirschen, entkernt",
                "cherries, kernels removed"
            })
    void fruitWhoseKernelsAreSaidToBeOutIsNotCountedAsKernels(String name) {
        Bench drink = new Bench().fresh(name, 80.0, 500.0).strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(ofCyanide(drink)).as(name).isEmpty();
        assertThat(drink.findings(Kernels.NAME)).as(name).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"apricot kernels, no stones", "Kirschen ohne Steine und Aprikosenkerne", "Zwetschgenkerne"})
    void kernelsBesideWhatIsSaidToBeOutStay(String name) {
        assertThat(with(name, Kind.DRIED_PLANT).findings(Kernels.NAME)).as(name).isNotEmpty();
    }
}
