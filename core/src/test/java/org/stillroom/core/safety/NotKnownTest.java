package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** No rule passes by absence: what is taken from the tables comes back as not known, never as fine. */
class NotKnownTest {
    private static final long SEED = 20260;
    private static final int DRAWS = 300;

    private static final List<String> OILS = List.of(
            "sage oil",
            "peppermint oil",
            "anise oil",
            "lemon oil",
            "cassia oil",
            "nutmeg oil",
            "wormwood oil",
            "clove oil",
            "rosemary oil",
            "fennel oil",
            "bergamot oil",
            "tarragon oil");

    private static Bench drink(String oil) {
        return new Bench().grams(oil, Kind.ESSENTIAL_OIL, 0.01).strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
    }

    private static List<Finding> of(String name, Kind kind, double grams) {
        return new Bench()
                .holding(name, kind, Substance.WATER, 80.0, grams)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0)
                .safety()
                .findings();
    }

    /** What is named after a regulated plant brings it, whatever kind it is said to be; common juices bring nothing to speak of. */
    @ParameterizedTest
    @CsvSource({
        "wormwood juice, JUICE",
        "wormwood honey, HONEY",
        "wormwood sugar, SUGAR",
        "wormwood in glycerol, GLYCEROL",
        "calamus juice, JUICE",
        "tonka sugar, SUGAR",
        "sassafras sugar, SUGAR",
        "Tonkazucker, SUGAR",
        "Wermuthonig, HONEY",
        "Wermutsaft, JUICE"
    })
    void noKindHidesAPlant(String name, Kind kind) {
        assertThat(of(name, kind, 100.0)).extracting(Finding::rule).contains(NotKnown.NAME);
    }

    @ParameterizedTest
    @CsvSource({
        "lemon juice, JUICE",
        "orange juice, JUICE",
        "sour cherry juice, JUICE",
        "quince juice, JUICE",
        "white sugar, SUGAR",
        "Zitronensaft, JUICE",
        "frisch gepresster Orangensaft, JUICE",
        "Sauerkirschsaft, JUICE",
        "Traubenzucker, SUGAR",
        "Rohrzucker, SUGAR",
        "Blütenhonig, HONEY"
    })
    void commonJuicesAndSugarAreQuiet(String name, Kind kind) {
        assertThat(of(name, kind, 100.0)).extracting(Finding::rule).doesNotContain(NotKnown.NAME);
    }

    /** Source of the two bans: 21 CFR 189.130 and 189.110. */
    @ParameterizedTest
    @CsvSource({"tonka sugar, SUGAR", "tonka extract, GLYCEROL", "calamus honey, HONEY"})
    void bansHoldForEveryKind(String name, Kind kind) {
        assertThat(of(name, kind, 10.0)).extracting(Finding::rule).contains("us-prohibited");
    }

    @ParameterizedTest
    @CsvSource({
        "lead acetate, true",
        "sodium nitrite, true",
        "pink salt, true",
        "copper sulphate, true",
        "sea salt, false",
        "Meersalz, false",
        "sodium chloride, false",
        "trisodium citrate, false"
    })
    void aSaltThatIsNoFoodByItsNameIsNotKnown(String name, boolean told) {
        List<Finding> findings = new Bench()
                .grams(name, Kind.SALT, 1.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0)
                .safety()
                .findings();
        assertThat(findings.stream()
                        .anyMatch(finding ->
                                finding.rule().equals(NotKnown.NAME) && finding.severity() == Severity.CAUTION))
                .isEqualTo(told);
    }

    @Test
    void aSubstanceByItsNumberIsThatSubstance() {
        assertThat(new Bench()
                        .grams("91-64-5", Kind.ESSENTIAL_OIL, 1.0)
                        .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0)
                        .safety()
                        .findings())
                .extracting(Finding::rule)
                .contains("eu-not-as-such");
    }

    private static <T> List<T> fewer(List<T> all, Random random, double keep) {
        List<T> some = new ArrayList<>();
        all.forEach(each -> {
            if (random.nextDouble() < keep) {
                some.add(each);
            }
        });
        return some;
    }

    static Knowledge fewer(Random random) {
        Knowledge all = Knowledge.SHIPPED;
        return new Knowledge(
                all.watched(),
                fewer(all.plants(), random, 0.8),
                fewer(all.compositions(), random, 0.6),
                fewer(all.maxima(), random, 0.7),
                fewer(all.restricted(), random, 0.7),
                fewer(all.usLists(), random, 0.7),
                fewer(all.usLimits(), random, 0.7),
                fewer(all.addedLimits(), random, 0.7),
                fewer(all.prohibited(), random, 0.7),
                fewer(all.guidance(), random, 0.7),
                fewer(all.blocked(), random, 0.7),
                fewer(all.poisons(), random, 0.7),
                fewer(all.cautions(), random, 0.7),
                fewer(all.textCautions(), random, 0.7),
                fewer(all.boughtDrinks(), random, 0.7),
                fewer(all.allergens(), random, 0.7),
                fewer(all.flashPoints(), random, 0.7),
                fewer(all.standardDrinks(), random, 0.7),
                all.tables());
    }

    /** Every substance that is known to be in a drink is, with less data, still told with its amount, or as not known. */
    @Test
    @Tag("property")
    void whatWasKnownIsNotKnownAndNeverFine() {
        Random random = new Random(SEED);
        for (int i = 0; i < DRAWS; i++) {
            String oil = OILS.get(random.nextInt(OILS.size()));
            Knowledge less = fewer(random);
            Safety whole = drink(oil).safety();
            Safety thin = drink(oil).knowing(less).safety();
            String what = "draw " + i + " of seed " + SEED + ", " + oil;
            boolean recognised = less.plants().stream()
                    .anyMatch(plant -> thin.drink().portions().get(0).plants().contains(plant));
            if (!recognised) {
                assertThat(thin.findings())
                        .as(what)
                        .anyMatch(finding -> finding.rule().equals("not-known"));
                assertThat(verdicts(thin)).as(what).doesNotContain("within the limit");
            } else if (samePlants(whole, thin)) {
                for (Amount before : whole.drink().amounts()) {
                    assertStillTold(before, thin, what);
                }
            }
        }
    }

    private static boolean samePlants(Safety whole, Safety thin) {
        return whole.drink()
                .portions()
                .get(0)
                .plants()
                .equals(thin.drink().portions().get(0).plants());
    }

    private static void assertStillTold(Amount before, Safety thin, String what) {
        Amount after = thin.drink().amount(before.watched().name());
        if (after == null) {
            throw new AssertionError(what + ": no word of " + before.watched().name());
        }
        if (after.perKilogram().most() < before.perKilogram().most() * (1 - 1e-12)) {
            // Another source group can be left; where none is, it has to be not known.
            boolean anotherGroup = !after.basis().isEmpty();
            assertThat(anotherGroup || !after.isKnown())
                    .as(what + ", " + before.watched().name())
                    .isTrue();
        }
        if (!after.isKnown()) {
            assertThat(thin.findings())
                    .as(what + ", " + before.watched().name())
                    .anyMatch(finding -> finding.rule().startsWith("not-known")
                            && finding.where().contains(before.watched().name()));
            assertThat(within(thin, before)).as(what).isEmpty();
        }
    }

    private static final List<String> PLANTS = List.of(
            "calamus root",
            "diploid calamus",
            "tonka beans",
            "sassafras root",
            "apricot kernels",
            "plum stones",
            "sour cherries",
            "cherry laurel leaves",
            "wormwood",
            "Roman wormwood",
            "genepi",
            "quassia",
            "St John's wort",
            "cinchona bark");

    /** Rules by which plants are judged by name: where the row is gone, the same rule says that it does not know. */
    private static final List<String> BY_NAME = List.of("us-prohibited", "eu-restricted-plant", "stones-and-kernels");

    /** What a rule said of a plant it still says with less data, or that it does not know; and no limit is met that was not met before. */
    @Test
    @Tag("property")
    void noRuleOfPlantsPassesByAbsence() {
        Random random = new Random(SEED + 1);
        for (int i = 0; i < DRAWS; i++) {
            String plant = PLANTS.get(random.nextInt(PLANTS.size()));
            Bench bench =
                    new Bench().grams(plant, Kind.DRIED_PLANT, 2.0).strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
            Safety whole = bench.safety();
            Safety thin = bench.knowing(fewer(random)).safety();
            String what = "draw " + i + " of seed " + (SEED + 1) + ", " + plant;
            if (samePlants(whole, thin)) {
                for (String rule : BY_NAME) {
                    assertThat(asks(thin, rule)).as(what + ", " + rule).isEqualTo(asks(whole, rule));
                }
                whole.drink().amounts().forEach(before -> assertStillTold(before, thin, what));
            } else {
                assertThat(thin.findings())
                        .as(what)
                        .anyMatch(finding -> finding.rule().equals("not-known")
                                || finding.rule().equals("stones-and-kernels"));
            }
            if (!verdicts(whole).contains("within the limit")) {
                assertThat(verdicts(thin)).as(what).doesNotContain("within the limit");
            }
        }
    }

    private static boolean asks(Safety safety, String rule) {
        return safety.findings().stream().anyMatch(finding -> finding.rule().equals(rule));
    }

    /** Salts, guidance on drinking and allergens with rows gone: none of them is told as met. */
    @Test
    @Tag("property")
    void noFigureIsMetByAbsence() {
        Random random = new Random(SEED + 2);
        for (int i = 0; i < DRAWS / 3; i++) {
            Safety thin = new Bench()
                    .holding("quinine sulfate", Kind.SALT, Substance.OTHER_SOLIDS, 100.0, 0.02)
                    .holding("glucose syrup", Kind.OTHER, Substance.GLUCOSE, 80.0, 50.0)
                    .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0)
                    .knowing(fewer(random))
                    .safety();
            String what = "draw " + i + " of seed " + (SEED + 2);
            assertThat(verdicts(thin)).as(what).doesNotContain("within the limit");
            assertThat(thin.drink().amount("quinine")).as(what).isNotNull();
            assertThat(thin.findings())
                    .as(what)
                    .filteredOn(finding -> finding.rule().equals(AlcoholItself.GUIDANCE))
                    .allMatch(finding -> finding.message().contains("from memory"));
        }
    }

    private static List<Finding> within(Safety safety, Amount amount) {
        return safety.findings().stream()
                .filter(finding -> finding.verdict().equals("within the limit")
                        && String.valueOf(finding.limit())
                                .contains(" of " + amount.watched().name() + ","))
                .toList();
    }

    private static List<String> verdicts(Safety safety) {
        return safety.findings().stream().map(Finding::verdict).toList();
    }

    @Test
    void withoutAnyRowOfAnnexThreeNoLimitIsKnown() {
        Knowledge all = Knowledge.SHIPPED;
        Knowledge none = new Knowledge(
                all.watched(),
                all.plants(),
                all.compositions(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                all.tables());
        Safety safety = drink("sage oil").knowing(none).safety();
        assertThat(safety.findings()).anyMatch(finding -> finding.verdict().equals("limit taken out"));
        assertThat(safety.findings()).anyMatch(finding -> finding.verdict().equals("not listed"));
        assertThat(safety.findings())
                .filteredOn(finding -> finding.jurisdiction().equals("EU"))
                .noneMatch(finding -> finding.verdict().equals("within the limit"));
    }

    @Test
    void nothingIsEverCalledSafe() {
        for (String oil : OILS) {
            for (Finding finding : drink(oil).safety().findings()) {
                String said = (finding.verdict() + " " + finding.message() + " " + finding.remedy())
                        .toLowerCase(java.util.Locale.ROOT);
                assertThat(said).doesNotContainPattern("\\bsafe(ly)?\\b");
            }
        }
    }

    @Test
    void anOilThatNobodyKnowsIsACaution() {
        assertThat(drink("moon dust oil").verdicts("not-known")).containsExactly("CAUTION not known");
        assertThat(drink("moon dust oil").verdicts("us-listed")).containsExactly("NOTE US not listed");
    }

    @Test
    void aBoughtTinctureOfSageBringsThujoneOfUnknownAmount() {
        Bench bought = new Bench()
                .strong("sage tincture", Kind.TINCTURE, 60.0, 20.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(bought.amount("thujone").isKnown()).isFalse();
        assertThat(bought.verdicts("eu-maximum")).contains("CAUTION EU not known");
        assertThat(bought.verdicts("us-limit")).contains("CAUTION US not known");
    }

    @Test
    void plainSpiritAndSugarAreQuietInAPlan() {
        Bench plain =
                new Bench().grams("white sugar", Kind.SUGAR, 200.0).strong("neutral spirit", Kind.SPIRIT, 40.0, 800.0);
        assertThat(Safety.ofPlan(plain.plan(), Grounds.SHIPPED)).isEmpty();
    }

    @Test
    void eachOilThatNobodyKnowsIsNamedByItself() {
        Bench drink = new Bench()
                .grams("moonberry oil", Kind.ESSENTIAL_OIL, 0.1)
                .grams("starbark oil", Kind.ESSENTIAL_OIL, 0.1)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 500.0);
        assertThat(drink.findings("not-known"))
                .filteredOn(finding -> finding.message().contains("fit to drink"))
                .extracting(Finding::where)
                .containsExactly("line 1, moonberry oil", "line 2, starbark oil");
    }
}
