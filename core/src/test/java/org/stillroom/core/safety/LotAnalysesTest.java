package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** An analysis speaks for what it lists and for nothing else. */
class LotAnalysesTest {
    private static final long SEED = 61;
    private static final int DRAWS = 200;
    private static final double KILOGRAM = 1000.0;

    private static final List<String> OILS = List.of(
            "sage oil",
            "peppermint oil",
            "anise oil",
            "lime oil",
            "nutmeg oil",
            "wormwood oil",
            "rosemary oil",
            "tarragon oil",
            "moon dust oil");

    private static Map<String, Double> parts(String csv) {
        Map<String, Double> parts = new LinkedHashMap<>();
        csv.lines()
                .map(line -> line.split(",", -1))
                .forEach(cells -> parts.put(
                        Objects.requireNonNull(Materials.keyOf(cells[0])), Double.parseDouble(cells[1]) / 100.0));
        return parts;
    }

    /** 20 mg of sage oil in a kilogram; thujone of the lot 18.5 + 4.5 = 23 %: 4.6 mg/kg, below the 10 that hold without Artemisia. */
    private static Bench sage() {
        return new Bench()
                .grams("sage oil", Kind.ESSENTIAL_OIL, 0.02)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, KILOGRAM - 0.02);
    }

    /** 0.1 g of lemongrass oil in a kilogram with 75 % citral: 75 mg/kg, not that and its two halves once more. */
    @Test
    void citralIsCountedOnceWhicheverNamesTheAnalysisHas() {
        for (String names : List.of(
                "citral,75\ngeranial,43\nneral,32\nlinalool,1\ncitronellol,0\nlinalyl acetate,0\ngeranyl acetate,0",
                "geranial,43\nneral,32\nlinalool,1\ncitronellol,0\nlinalyl acetate,0\ngeranyl acetate,0",
                "citral,75\nlinalool,1\ncitronellol,0\nlinalyl acetate,0\ngeranyl acetate,0")) {
            Amount family = new Bench()
                    .grams("lemongrass oil", Kind.ESSENTIAL_OIL, 0.1)
                    .strong("neutral spirit", Kind.SPIRIT, 40.0, KILOGRAM - 0.1)
                    .analysed("lemongrass oil", List.of(parts(names)))
                    .amount("citral family");
            assertThat(family.perKilogram().least()).as(names).isCloseTo(76.0, within(1e-6));
            assertThat(family.perKilogram().most())
                    .as(names)
                    .isBetween(76.0, 76.5); // traces of the three that are none
        }
    }

    @Test
    void whatTheLotHoldsStandsInPlaceOfTheRange() {
        assertThat(sage().verdicts("eu-maximum")).contains("STOP EU above the limit at worst");
        Bench analysed =
                sage().analysed("Sage oil", List.of(parts("alpha-thujone,18.5\nbeta-thujone,4.5\ncamphor,21")));
        Amount thujone = analysed.amount("thujone");
        assertThat(thujone.perKilogram().least()).isCloseTo(4.6, within(1e-9));
        assertThat(thujone.perKilogram().most()).isCloseTo(4.6, within(1e-9));
        assertThat(thujone.isAnalysed()).isTrue();
        assertThat(analysed.verdicts("eu-maximum")).contains("NOTE EU within the limit");
        assertThat(analysed.findings("eu-maximum"))
                .anyMatch(finding -> finding.howSure().equals("by the lot's own analysis, as printed"));
    }

    /** The other half of a sum stays what the tables say of it: 18.5 % of alpha, and beta at most as in the most adverse group. */
    @Test
    void halfOfASumLeavesTheOtherHalfToTheTables() {
        Amount range = sage().amount("thujone");
        Amount half = sage().analysed("sage oil", List.of(parts("alpha-thujone,18.5")))
                .amount("thujone");
        assertThat(half.perKilogram().least()).isGreaterThanOrEqualTo(0.02 * 185.0);
        assertThat(half.perKilogram().most())
                .isGreaterThan(0.02 * 185.0 * 1.05)
                .isLessThan(range.perKilogram().most());
        assertThat(half.isAnalysed()).isFalse();
    }

    /** As high as the lot is, also above the range. */
    @Test
    void aLotAboveTheRangeCountsAsItIs() {
        Bench high = sage().analysed("sage oil", List.of(parts("alpha-thujone,60\nbeta-thujone,20")));
        assertThat(high.amount("thujone").perKilogram().most()).isCloseTo(16.0, within(1e-9));
        assertThat(high.verdicts("eu-maximum")).contains("STOP EU above the limit");
    }

    @Test
    void tracesCountAsATenthOfAPerCent() {
        Amount none = sage().analysed("sage oil", List.of(parts("alpha-thujone,0\nbeta-thujone,0\ncamphor,30")))
                .amount("thujone");
        assertThat(none.perKilogram().least()).isZero();
        assertThat(none.perKilogram().most()).isCloseTo(0.02 * 2.0, within(1e-12));
    }

    @Test
    void ofSeveralBottlesOnlyWhatAllListIsCounted() {
        Map<String, Double> one = parts("alpha-thujone,18\nbeta-thujone,4");
        Map<String, Double> other = parts("alpha-thujone,25\nbeta-thujone,6");
        Amount both = sage().analysed("sage oil", List.of(one, other)).amount("thujone");
        assertThat(both.perKilogram().least()).isCloseTo(4.4, within(1e-9));
        assertThat(both.perKilogram().most()).isCloseTo(6.2, within(1e-9));
        Amount oneOfTwo = sage().analysed("sage oil", List.of(one, Map.of())).amount("thujone");
        assertThat(oneOfTwo).isEqualTo(sage().amount("thujone"));
    }

    /** Without an analysis nothing becomes fine: what it does not list is told exactly as if there were none. */
    @Test
    @Tag("property")
    void whatAnAnalysisLeavesOutIsAsWithoutIt() {
        Random random = new Random(SEED);
        for (int draw = 0; draw < DRAWS; draw++) {
            String oil = OILS.get(random.nextInt(OILS.size()));
            double grams = 0.005 + random.nextDouble() * 0.5;
            Map<String, Double> listed = listed(random);
            Bench bare = drink(oil, grams);
            Bench analysed = drink(oil, grams).analysed(oil, List.of(listed));
            String what = "draw " + draw + " of seed " + SEED + ", " + oil + ", " + listed.keySet();
            for (Amount before : bare.safety().drink().amounts()) {
                if (!isListed(before.watched(), listed)) {
                    assertThat(analysed.amount(before.watched().name()))
                            .as(what)
                            .isEqualTo(before);
                    assertThat(said(analysed, before.watched()))
                            .as(what)
                            .containsExactlyInAnyOrderElementsOf(said(bare, before.watched()));
                }
            }
            assertThat(stops(analysed)).as(what).containsAll(stops(bare));
        }
    }

    private static Bench drink(String oil, double grams) {
        return new Bench().grams(oil, Kind.ESSENTIAL_OIL, grams).strong("neutral spirit", Kind.SPIRIT, 40.0, KILOGRAM);
    }

    private static Map<String, Double> listed(Random random) {
        List<String> members = new ArrayList<>();
        Knowledge.SHIPPED.watched().forEach(watched -> members.addAll(watched.members()));
        Map<String, Double> listed = new LinkedHashMap<>();
        for (int i = 0; i < 3; i++) {
            String key = Materials.keyOf(members.get(random.nextInt(members.size())));
            if (key != null) {
                listed.put(key, random.nextDouble() * 0.2);
            }
        }
        return listed;
    }

    private static boolean isListed(Watched watched, Map<String, Double> listed) {
        return watched.members().stream()
                .anyMatch(member -> listed.containsKey(String.valueOf(Materials.keyOf(member))));
    }

    private static List<Finding> said(Bench bench, Watched watched) {
        return bench.safety().findings().stream()
                .filter(finding -> String.valueOf(finding.limit()).contains(" of " + watched.name() + ","))
                .toList();
    }

    /** What stops whatever the amounts are. */
    private static List<Finding> stops(Bench bench) {
        return bench.safety().findings().stream()
                .filter(finding -> finding.severity() == Severity.STOP)
                .filter(finding ->
                        !List.of("eu-maximum", "us-limit", "eu-use-limit").contains(finding.rule()))
                .toList();
    }

    @Test
    void noAnalysisClearsAnOilThatIsNotForDrinking() {
        Bench pennyroyal = new Bench()
                .grams("pennyroyal oil", Kind.ESSENTIAL_OIL, 0.01)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, KILOGRAM)
                .analysed("pennyroyal oil", List.of(parts("pulegone,0.1")));
        assertThat(pennyroyal.verdicts("not-for-drinking")).containsExactly("STOP not for drinking");
    }

    /** A sum of the tables, and single furocoumarins, can be analysed too. */
    @Test
    void bergaptenIsReadFromAnAnalysis() {
        assertThat(parts("bergapten,0.001")).containsEntry("484-20-8", 0.00001);
    }

    private static Bench sageBy(String csv) {
        return new Bench()
                .grams("sage oil", Kind.ESSENTIAL_OIL, 0.1)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, KILOGRAM - 0.1)
                .analysed("sage oil", List.of(parts(csv)));
    }

    /** 25 % typed as 0.25: the most stays that of the tables, 43 + 8.5 % of 100 mg, and the maker is asked. */
    @Test
    void anAnalysisTypedAsFractionsLiftsNoLimit() {
        Bench fractions = sageBy("alpha-thujone,0.25\nbeta-thujone,0.05\ncamphor,0.18\n470-82-6,0.12");
        assertThat(fractions.amount("thujone").perKilogram().most()).isCloseTo(51.5, within(1e-9));
        assertThat(fractions.verdicts("eu-maximum")).contains("STOP EU above the limit");
        assertThat(fractions.findings("analysis-far"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("alpha-thujone 0.250 % (18.0 to 43.0 %"));
    }

    /** Memory and a maker's word ask or block, and clear nothing. */
    @Test
    void whatTheMakerConfirmsIsSaidToBeConfirmedAndLiftsNoLimitEither() {
        Map<String, List<Map<String, Double>>> said =
                Map.of("sage oil", List.of(parts("alpha-thujone,0.25\nbeta-thujone,0.05\ncamphor,50")));
        Bench sage = new Bench()
                .grams("sage oil", Kind.ESSENTIAL_OIL, 0.1)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, KILOGRAM - 0.1)
                .analysed(LotAnalyses.of(said, Set.of("sage oil")));
        assertThat(sage.findings("analysis-far")).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.NOTE);
            assertThat(finding.verdict()).isEqualTo("confirmed by the maker");
        });
        assertThat(sage.amount("thujone").perKilogram().most()).isCloseTo(51.5, within(1e-9));
        assertThat(sage.verdicts("eu-maximum")).contains("STOP EU above the limit");
    }

    @Test
    void whatIsSaidToBeNoneIsMeantUnlessTheRestIsFar() {
        Bench free = sageBy("alpha-thujone,0\nbeta-thujone,0\ncamphor,30");
        assertThat(free.findings("analysis-far")).isEmpty();
        assertThat(free.verdicts("eu-maximum")).contains("NOTE EU within the limit");
        Bench other = sageBy("alpha-thujone,0\nbeta-thujone,0\nlinalool,40");
        assertThat(other.findings("analysis-far")).hasSize(1);
        assertThat(other.verdicts("eu-maximum")).contains("STOP EU above the limit");
    }

    @Test
    void whatNoTableOfTheOilNamesIsAskedAbout() {
        Bench lemon = new Bench()
                .grams("lemon oil", Kind.ESSENTIAL_OIL, 0.1)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, KILOGRAM)
                .analysed("lemon oil", List.of(parts("linalool,68\nlinalyl acetate,20")));
        assertThat(lemon.findings("analysis-far"))
                .singleElement()
                .satisfies(finding ->
                        assertThat(finding.message()).contains("linalool 68.0 % (in no table of it), linalyl acetate"));
        Bench usual = new Bench()
                .grams("lemongrass oil", Kind.ESSENTIAL_OIL, 0.1)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, KILOGRAM)
                .analysed("lemongrass oil", List.of(parts("citral,75\nlinalool,1")));
        assertThat(usual.findings("analysis-far")).isEmpty();
    }

    @Test
    void aTinySumIsAskedWhetherItIsOfFractions() {
        assertThat(FarAnalysis.asFractions("sage oil", List.of(parts("alpha-thujone,0.25\nbeta-thujone,0.05"))))
                .satisfies(finding -> assertThat(Objects.requireNonNull(finding).message())
                        .contains("0.300 %", "21.0 %", "fractions"));
        assertThat(FarAnalysis.asFractions("sage oil", List.of(parts("alpha-thujone,25\nbeta-thujone,5"))))
                .isNull();
        assertThat(FarAnalysis.asFractions("moon dust oil", List.of(parts("linalool,0.3"))))
                .isNull();
    }
}
