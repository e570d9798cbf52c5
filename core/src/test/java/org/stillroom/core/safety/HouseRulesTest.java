package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.recipe.Purpose;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** The rules of a house are read line by line, and only ever add to what law says. */
class HouseRulesTest {
    private static Bench oil(String name, double grams) {
        return new Bench().grams(name, Kind.ESSENTIAL_OIL, grams).strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
    }

    private static List<String> verdicts(Bench bench) {
        return bench.verdicts(HouseRule.NAME);
    }

    private static List<Finding> problems(String text) {
        return HouseRules.read(text, Knowledge.SHIPPED).problems();
    }

    @Test
    void rulesAreReadWithTheirLinesReasonsAndUnits() {
        HouseRules.Reading read = HouseRules.read("""
                # ours

                no tonka because a guest takes blood thinners
                at most 20 mg/L thujone
                At most 0,6 g/L of oil
                at most 35 mg/kg thujone
                """, Knowledge.SHIPPED);
        assertThat(read.problems()).isEmpty();
        assertThat(read.rules().rules()).hasSize(4);
        HouseRule tonka = read.rules().rules().get(0);
        assertThat(tonka.line()).isEqualTo(3);
        assertThat(tonka.written()).isEqualTo("no tonka");
        assertThat(tonka.because()).isEqualTo("a guest takes blood thinners");
        assertThat(read.rules().rules().subList(1, 4))
                .extracting(rule -> ((HouseRule.AtMost) rule).milligrams())
                .satisfies(found -> {
                    assertThat(found.get(0)).isCloseTo(20.0, within(1e-9));
                    assertThat(found.get(1)).isCloseTo(600.0, within(1e-9));
                    assertThat(found.get(2)).isCloseTo(35.0, within(1e-9));
                });
        assertThat(((HouseRule.AtMost) read.rules().rules().get(3)).basis()).isEqualTo(Limit.Basis.PER_KILOGRAM);
    }

    /** An allergen is left out by its own name and by that of its group, whatever the line is called. */
    @ParameterizedTest
    @CsvSource({
        "no nuts, almond milk, DAIRY, STOP",
        "no nuts, Haselnussgeist, DISTILLATE, CAUTION",
        "no hazelnut, hazelnut tincture, TINCTURE, STOP",
        "no hazelnut, walnut tincture, TINCTURE, ",
        "no milk, cream, DAIRY, STOP",
        "no egg, Eigelb, EGG, STOP",
        "no sulphites, white wine, WINE, CAUTION",
        "keine Milch, cream, DAIRY, STOP",
        "kein Salbei weil der Gast es nicht mag, sage tincture, TINCTURE, STOP"
    })
    void allergensAreLeftOutByTheirNames(String rule, String name, Kind kind, Severity severity) {
        List<Finding> found = new Bench()
                .house(rule)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0)
                .strong(name, kind, 10.0, 50.0)
                .findings(HouseRule.NAME);
        if (severity == null) {
            assertThat(found).isEmpty();
        } else {
            assertThat(found).isNotEmpty().allMatch(each -> each.severity() == severity);
        }
    }

    @Test
    void stepsAreHeldToTheRulesToo() {
        Bench drink = new Bench().house("no tonka").strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(drink.step("Grate half a tonka bean into it.").findings(HouseRule.NAME))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
                    assertThat(finding.where()).isEqualTo("step 1 of your own");
                });
        assertThat(drink.step("Stir it for a minute.").findings(HouseRule.NAME)).hasSize(1);
    }

    @Test
    void aRuleOfAnOilLeavesThePlantInAStep() {
        Bench drink = new Bench().house("no clove oil").strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(drink.step("Add three cloves.").findings(HouseRule.NAME)).isEmpty();
        assertThat(drink.step("Add a drop of clove oil.").findings(HouseRule.NAME))
                .hasSize(1);
    }

    @Test
    void everySlipIsToldWithItsLine() {
        List<Finding> problems =
                problems("no tonka\nmaximum 3 oil\nat most 20 mg/L thujonn\nat most 1,500 mg/L thujone\nno\n");
        assertThat(problems).extracting(Finding::where).containsExactly("line 2", "line 3", "line 4", "line 5");
        assertThat(problems.get(1).message()).contains("\"thujonn\"", "never be counted");
        assertThat(problems.get(2).remedy()).contains("Write one of:");
    }

    /** Whatever is typed, reading ends with rules or with problems that name a line, and never fails. */
    @Test
    @Tag("property")
    void anythingTypedIsReadOrToldWithItsLine() {
        Random random = new Random(4711);
        String[] scraps = {
            "at most", "no", " ", "20 mg/L", "g/kg", "thujone", "oil", "because", "1,5", "%", "/", "#", "\t", "ß", "\"",
            "∞"
        };
        for (int i = 0; i < 2000; i++) {
            StringBuilder line = new StringBuilder("x".repeat(i % 2));
            for (int n = random.nextInt(8); n > 0; n--) {
                line.append(scraps[random.nextInt(scraps.length)]).append(random.nextBoolean() ? " " : "");
            }
            String text = line.toString();
            HouseRules.Reading read = HouseRules.read(text, Knowledge.SHIPPED);
            boolean blank = text.isBlank() || text.strip().startsWith("#");
            assertThat(read.rules().rules().size() + read.problems().size())
                    .as("seed 4711: " + text)
                    .isEqualTo(blank ? 0 : 1);
            assertThat(read.problems())
                    .allSatisfy(problem -> assertThat(problem.where()).isEqualTo("line 1"));
        }
    }

    /** 1 g of an oil of 41 mg/kg by hand: at the figure it is within, a hair above it stops. */
    @ParameterizedTest
    @CsvSource({"1.000, false", "0.999, true"})
    void theMostOfAllOilHoldsToItsFigure(double factor, boolean stops) {
        Bench bench = oil("caraway oil", 0.5);
        double perLitre = 500.0 / bench.safety().drink().litres();
        assertThat(verdicts(bench.house("at most "
                        + String.format(java.util.Locale.ROOT, "%.9f", factor * perLitre + 1e-6) + " mg/L oil")))
                .containsExactly(stops ? "STOP house above the limit" : "NOTE house within the limit");
    }

    @Test
    void theMostOfASubstanceIsThatOfTheMostAdverseGroup() {
        Bench sage = oil("sage oil", 0.05);
        double most = sage.amount("thujone").perLitre().most();
        assertThat(verdicts(oil("sage oil", 0.05).house("at most " + Math.floor(most) + " mg/L thujone")))
                .containsExactly("STOP house above the limit at worst");
        assertThat(verdicts(oil("sage oil", 0.05).house("at most " + Math.ceil(most) + " mg/L thujone")))
                .allMatch(verdict -> verdict.startsWith("NOTE house"));
    }

    @Test
    void whatIsNotKnownIsACautionAndNeverWithin() {
        Bench bought = new Bench()
                .strong("clove essence", Kind.ESSENCE, 80.0, 1.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(verdicts(bought.house("at most 1 g/L oil\nat most 1 g/L clove oil\nat most 1 g/L cloves")))
                .containsOnly("CAUTION house not known");
    }

    @Test
    void aPlantIsLimitedByWhatIsWeighedAndItsOilIsNotCountedAsPlant() {
        Bench herb = new Bench()
                .grams("wormwood", Kind.DRIED_PLANT, 2.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(verdicts(herb.house("at most 1 g/L wormwood"))).containsExactly("STOP house above the limit");
        assertThat(verdicts(oil("wormwood oil", 0.01).house("at most 1 g/L wormwood")))
                .containsExactly("CAUTION house not known");
    }

    @ParameterizedTest
    @ValueSource(strings = {"no clove", "no clove oil", "no eugenol", "no oil", "no essential oils"})
    void whatIsNamedByItsPlantItsOilOrItsSubstanceStops(String rule) {
        assertThat(verdicts(oil("clove bud oil", 0.01).house(rule))).contains("STOP house against the house rule");
    }

    @Test
    void anOilThatIsRuledOutLeavesThePlantAlone() {
        Bench macerate =
                new Bench().grams("cloves", Kind.DRIED_PLANT, 2.0).strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(verdicts(macerate.house("no clove oil\nno nutmeg"))).isEmpty();
        assertThat(verdicts(macerate.house("no clove"))).containsExactly("STOP house against the house rule");
    }

    @Test
    void ofAnEssenceTheMostIsNotAsked() {
        Bench essence =
                new Bench().grams("caraway oil", Kind.ESSENTIAL_OIL, 20.0).strong("spirit", Kind.SPIRIT, 96.0, 800.0);
        assertThat(verdicts(essence.house("at most 1 g/L oil"))).containsExactly("STOP house above the limit");
        assertThat(verdicts(essence.makes(Purpose.ESSENCE))).isEmpty();
    }

    /** With any house rules the findings of law and guidance are what they are without, every one of them. */
    @Test
    @Tag("property")
    void houseRulesNeitherClearNorHideAnything() {
        long seed = 31;
        Random random = new Random(seed);
        List<String> rules = List.of(
                "at most 9999 mg/kg thujone",
                "at most 0.001 mg/L thujone",
                "no tonka",
                "no sage",
                "at most 30 g/L oil");
        List<String> oils = List.of("sage oil", "wormwood oil", "lemon oil", "pennyroyal oil", "wholly unknown oil");
        for (int i = 0; i < 60; i++) {
            String oil = oils.get(random.nextInt(oils.size()));
            double grams = random.nextDouble();
            String text = rules.get(random.nextInt(rules.size())) + "\n" + rules.get(random.nextInt(rules.size()));
            List<Finding> without = oil(oil, grams).safety().findings();
            List<Finding> with = oil(oil, grams).house(text).safety().findings();
            assertThat(with.stream().filter(each -> !each.rule().equals(HouseRule.NAME)))
                    .as("seed " + seed + ": " + oil + ", " + text)
                    .containsExactlyElementsOf(without);
        }
    }

    /** A text that was kept is not dropped where it cannot be read any more: each such line is a caution. */
    @Test
    void aKeptRuleThatIsNotUnderstoodAnyMoreIsTold() {
        HouseRules kept = HouseRules.read("at most 1 g/L moonflour\nno tonka", Knowledge.SHIPPED)
                .kept();
        assertThat(kept.rules()).extracting(HouseRule::line).containsExactly(2, 1);
        Safety safety = Safety.of(oil("caraway oil", 0.1).plan(), Serving.USUAL, Grounds.SHIPPED.with(kept));
        assertThat(safety.findings().stream().filter(each -> each.rule().equals(HouseRule.NAME)))
                .singleElement()
                .satisfies(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.CAUTION);
                    assertThat(finding.verdict()).isEqualTo("not understood");
                    assertThat(finding.where()).isEqualTo("line 1");
                });
    }

    @Test
    void findingsSayThatTheyAreAHouseRuleAndQuoteIt() {
        Finding finding = oil("sage oil", 0.05)
                .house("at most 1 mg/L thujone because we like it mild")
                .findings(HouseRule.NAME)
                .get(0);
        assertThat(finding.severity()).isEqualTo(Severity.STOP);
        assertThat(finding.jurisdiction()).isEqualTo("house");
        assertThat(finding.message())
                .startsWith("House rule of line 1, \"at most 1 mg/L thujone\" (because we like it mild): Thujone:");
        assertThat(finding.source()).isNull();
        assertThat(finding.limit()).isEqualTo("at most 1 mg/L thujone");
    }

    @Test
    void theShelfIsMatchedWithinThemToo() {
        Grounds strict = Grounds.SHIPPED.with(HouseRules.read("at most 1 mg/kg thujone\nno lavender", Knowledge.SHIPPED)
                .rules());
        OilLimits limits = OilLimits.of(List.of("sage oil", "lavender oil"), AlcoholByVolume.at20(30), strict);
        OilLimits.Maximum most = Objects.requireNonNull(limits.maxima().get("thujone"));
        assertThat(most.milligramsPerKilogram()).isEqualTo(1.0);
        assertThat(most.whose()).isEqualTo("house");
        assertThat(limits.oils().get(1).isAllowed()).isFalse();
    }
}
