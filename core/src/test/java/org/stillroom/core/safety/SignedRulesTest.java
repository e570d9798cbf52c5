package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.label.Contained;
import org.stillroom.core.label.Duty;
import org.stillroom.core.label.LegalClass;
import org.stillroom.core.label.LegalClasses;
import org.stillroom.core.liquid.Liquid;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.TableSet;
import org.stillroom.core.reference.Tables;

/** Signed-off editions of tables of rules: what they change is shown, and no stop goes by them. Files here are made up. */
class SignedRulesTest {
    private static final String SIGNED =
            "# Signed off by: T. Ester, food chemist\n# As of: 2026-10-31\n# Source: made up\n";

    /** Returns the table that ships as a file, its rows as they are or as the test leaves them. */
    private static String file(RuleTable of, List<String> rows) {
        String columns = String.join(",", Tables.open(of.path()).columns());
        return "# Table: " + of.label() + "\n" + SIGNED + columns + "\n" + String.join("\n", rows) + "\n";
    }

    private static List<String> rows(RuleTable of) {
        return Tables.open(of.path()).rows().stream()
                .map(row -> row.cells().stream().map(SignedRulesTest::quoted).collect(Collectors.joining(",")))
                .collect(Collectors.toCollection(ArrayList::new));
    }

    private static String quoted(String cell) {
        return cell.contains(",") ? '"' + cell + '"' : cell;
    }

    private static SignedRules read(String text) {
        SignedRules.Reading reading = SignedRules.read(text);
        assertThat(reading.problems()).isEmpty();
        return Objects.requireNonNull(reading.rules());
    }

    private static RuleChanges changes(RuleTable of, List<String> rows) {
        return RuleChanges.between(read(file(of, rows)), TableSet.SHIPPED);
    }

    private static Knowledge knowing(RuleTable of, List<String> rows) {
        return Knowledge.of(read(file(of, rows)).takenInto(TableSet.SHIPPED));
    }

    @ParameterizedTest
    @EnumSource(RuleTable.class)
    void theTableThatShipsChangesNothing(RuleTable of) {
        RuleChanges none = changes(of, rows(of));
        assertThat(none.rows()).isEmpty();
        assertThat(none.same()).isEqualTo(Tables.open(of.path()).rows().size());
    }

    @Test
    void eachRowThatIsAddedChangedOrRemovedIsShown() {
        List<String> rows = rows(RuleTable.DUTY);
        rows.set(1, rows.get(1).replace("33.99", "35.10"));
        String removed = rows.remove(5);
        rows.add("Elsewhere,1.2,100,9.50,EUR,2026,made up,read");
        RuleChanges changes = changes(RuleTable.DUTY, rows);

        assertThat(removed).startsWith("Australia");
        assertThat(changes.rows())
                .extracting(row -> row.fate() + " " + row.about())
                .containsExactly("CHANGED United Kingdom, 22", "ADDED Elsewhere, 1.2", "REMOVED Australia, 10");
        assertThat(changes.rows().get(0).differences())
                .containsOnlyKeys("per_litre_of_pure_alcohol")
                .containsValue(new RuleChanges.Difference("33.99", "35.10"));
        assertThat(changes.loud()).isEmpty();
        TableSet taken = changes.file().takenInto(TableSet.SHIPPED);
        assertThat(Duty.of(taken, 40.0, 1000.0))
                .extracting(Duty::country)
                .contains("Elsewhere")
                .doesNotContain("Australia");
        assertThat(taken.editions())
                .containsExactly(new TableSet.Edition("duty", "2026-10-31", "T. Ester, food chemist", "made up"));
    }

    @Test
    void aMaximumThatIsRaisedIsLoudAndCounts() {
        List<String> rows = rows(RuleTable.EU_MAXIMA);
        rows.replaceAll(row -> row.contains("thujone") && row.contains("except") ? row.replace(",10,", ",100,") : row);
        RuleChanges changes = changes(RuleTable.EU_MAXIMA, rows);

        assertThat(changes.loud()).isEqualTo(changes.rows()).isNotEmpty();
        Bench sage =
                new Bench().grams("sage oil", Kind.ESSENTIAL_OIL, 0.05).strong("spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(sage.verdicts("eu-maximum")).anyMatch(verdict -> verdict.startsWith("STOP EU"));
        assertThat(sage.knowing(knowing(RuleTable.EU_MAXIMA, rows)).verdicts("eu-maximum"))
                .noneMatch(verdict -> verdict.startsWith("STOP EU"));
    }

    /** B35, thujone, taken out by one file and brought back ten times higher by the next: the table that ships is looser than neither. */
    @Test
    void aRowThatComesBackLooserThanItShipsIsLoud() {
        List<String> without = rows(RuleTable.EU_MAXIMA);
        without.removeIf(row -> row.startsWith("B35,"));
        TableSet taken = read(file(RuleTable.EU_MAXIMA, without)).takenInto(TableSet.SHIPPED);
        List<String> back = rows(RuleTable.EU_MAXIMA);
        back.replaceAll(row -> row.startsWith("B35,") ? row.replace(",35,", ",350,") : row);
        RuleChanges changes = RuleChanges.between(read(file(RuleTable.EU_MAXIMA, back)), taken);
        assertThat(changes.loud()).singleElement().satisfies(row -> {
            assertThat(row.fate()).isEqualTo(RuleChanges.Fate.ADDED);
            assertThat(row.differences()).containsValue(new RuleChanges.Difference("", "350"));
        });
    }

    @Test
    void aLimitBelowZeroIsRefused() {
        List<String> rows = rows(RuleTable.EU_MAXIMA);
        rows.replaceAll(row -> row.startsWith("B35,") ? row.replace(",35,", ",-5,") : row);
        assertThat(SignedRules.read(file(RuleTable.EU_MAXIMA, rows)).problems())
                .extracting(Finding::message)
                .singleElement()
                .asString()
                .contains("lies below zero");
    }

    /** A figure of a file is told as the file's, not as the law's; a maximum that it leaves out is asked about. */
    @Test
    void findingsNameTheEditionTheyRestOn() {
        Bench absinthe = new Bench()
                .grams("wormwood oil", Kind.ESSENTIAL_OIL, 0.001)
                .strong("spirit", Kind.SPIRIT, 40.0, 1000.0);
        List<String> raised = rows(RuleTable.EU_MAXIMA);
        raised.replaceAll(row -> row.startsWith("B35,") ? row.replace(",35,", ",900,") : row);
        assertThat(absinthe.knowing(knowing(RuleTable.EU_MAXIMA, raised)).findings("eu-maximum"))
                .filteredOn(finding -> String.valueOf(finding.limit()).contains("900"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.howSure())
                        .contains("by an edition that was taken in: eu_1334_2008_annex3 as of 2026-10-31"));
        List<String> without = rows(RuleTable.EU_MAXIMA);
        without.removeIf(row -> row.contains("thujone"));
        assertThat(absinthe.knowing(knowing(RuleTable.EU_MAXIMA, without)).verdicts("eu-maximum"))
                .contains("CAUTION EU limit taken out");
    }

    @Test
    void theDayOfAFileIsAskedAbout() {
        LocalDate today = LocalDate.parse("2026-11-28");
        assertThat(dated("2026-10-31", TableSet.SHIPPED).asked(today)).isEmpty();
        assertThat(dated("1999-01-01", TableSet.SHIPPED).asked(today)).containsExactly(RuleChanges.Day.LONG_AGO);
        assertThat(dated("2099-01-01", TableSet.SHIPPED).asked(today)).containsExactly(RuleChanges.Day.TO_COME);
        TableSet taken = dated("2026-10-31", TableSet.SHIPPED).file().takenInto(TableSet.SHIPPED);
        assertThat(dated("2026-10-30", taken).asked(today)).containsExactly(RuleChanges.Day.BEFORE_WHAT_IS_IN_FORCE);
        assertThat(SignedRules.read(file(RuleTable.DUTY, rows(RuleTable.DUTY)).replace("2026-10-31", "2026-02-30"))
                        .problems())
                .isNotEmpty();
    }

    private static RuleChanges dated(String day, TableSet tables) {
        return RuleChanges.between(
                read(file(RuleTable.DUTY, rows(RuleTable.DUTY)).replace("2026-10-31", day)), tables);
    }

    /** A lawful name is the same in any letters; a bound that is lowered is loud, counts, and is dated. */
    @Test
    void aCategoryComesFromAFile() {
        List<String> rows = rows(RuleTable.EU_CATEGORIES);
        rows.replaceAll(row -> row.contains("liqueur (general)") ? row.replace(",100,", ",80,") : row);
        RuleChanges changes = changes(RuleTable.EU_CATEGORIES, rows);
        assertThat(changes.loud())
                .singleElement()
                .satisfies(change -> assertThat(change.about()).isEqualTo("liqueur (general)"));
        TableSet taken = changes.file().takenInto(TableSet.SHIPPED);
        assertThat(isMissed(TableSet.SHIPPED, 85.0)).isTrue();
        assertThat(isMissed(taken, 85.0)).isFalse();
        assertThat(taken.editions()).extracting(TableSet.Edition::asOf).containsExactly("2026-10-31");

        List<String> plain = rows(RuleTable.EU_CATEGORIES);
        plain.replaceAll(row -> row.replace("crème de cassis", "creme de cassis"));
        assertThat(changes(RuleTable.EU_CATEGORIES, plain).rows())
                .extracting(row -> row.fate() + " " + row.about())
                .containsExactly("CHANGED creme de cassis");
        plain.add(rows(RuleTable.EU_CATEGORIES).stream()
                .filter(row -> row.contains("crème de cassis"))
                .findFirst()
                .orElseThrow());
        assertThat(SignedRules.read(file(RuleTable.EU_CATEGORIES, plain)).problems())
                .extracting(Finding::message)
                .containsExactly("crème de cassis stands there twice.");
    }

    private static boolean isMissed(TableSet tables, double sucrose) {
        return LegalClasses.of(
                        tables,
                        Liquid.figures(
                                MadeUp.sweetened(AlcoholByVolume.at20(25.0), new MassConcentration(sucrose)),
                                Temperature.TWENTY_CELSIUS),
                        Contained.NOT_KNOWN)
                .stream()
                .filter(each -> each.name().equals(LegalClasses.LIQUEUR))
                .allMatch(LegalClass::isMissed);
    }

    /** A line of the US lists clears, so one more of them is loud, and what it names is listed by it. */
    @Test
    void aLineOfTheUsListsComesFromAFile() {
        List<String> rows = rows(RuleTable.US_SPICES);
        rows.add("999,21 CFR 182.10,Moonleaf,Lunaria ficta L.,moonleaf,leaf,read");
        RuleChanges changes = changes(RuleTable.US_SPICES, rows);
        assertThat(changes.loud()).extracting(RuleChanges.Change::about).containsExactly("Moonleaf");
        Bench leaf = new Bench().grams("moonleaf", Kind.DRIED_PLANT, 5.0).strong("spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(leaf.verdicts("us-listed")).contains("NOTE US not listed");
        assertThat(leaf.knowing(knowing(RuleTable.US_SPICES, rows)).verdicts("us-listed"))
                .contains("NOTE US listed");
    }

    /** A limit of US law and a tolerance are looked for by name: a file without one is refused, one that lowers it counts. */
    @Test
    void whatIsLookedForByNameCannotBeLeftOut() {
        for (RuleTable of : List.of(RuleTable.US_LIMITS, RuleTable.EU_TOLERANCES)) {
            List<String> rows = rows(of);
            rows.remove(0);
            assertThat(SignedRules.read(file(of, rows)).problems())
                    .as(of.label())
                    .singleElement()
                    .satisfies(problem -> assertThat(problem.message()).startsWith("It has no row of "));
        }
        List<String> strict = rows(RuleTable.US_LIMITS);
        strict.replaceAll(row -> row.startsWith("thujone") ? row.replace(",10,", ",1,") : row);
        Bench sage =
                new Bench().grams("sage oil", Kind.ESSENTIAL_OIL, 0.01).strong("spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(sage.verdicts("us-limit")).noneMatch(verdict -> verdict.startsWith("STOP US"));
        assertThat(sage.knowing(knowing(RuleTable.US_LIMITS, strict)).verdicts("us-limit"))
                .anyMatch(verdict -> verdict.startsWith("STOP US"));
    }

    /** A table without any rows of a kind, or with all its words taken out, still stops what it stopped before. */
    @ParameterizedTest
    @EnumSource(
            value = RuleTable.class,
            names = {"NOT_FOR_DRINKING", "POISONOUS", "EU_PLANTS", "US_PROHIBITED"})
    @Tag("property")
    void noFileTakesAStopAway(RuleTable of) {
        Random random = new Random(5);
        for (int i = 0; i < 60; i++) {
            List<String> rows = rows(of);
            rows.removeIf(row -> random.nextInt(3) == 0);
            rows.replaceAll(row -> random.nextInt(3) > 0
                    ? row
                    : switch (of) {
                        case NOT_FOR_DRINKING -> row.replaceAll(",yes$", ",no");
                        case POISONOUS -> row.replaceAll(",stop$", ",check");
                        case US_PROHIBITED -> row.replace(",tonka;coumarin,", ",tonka,");
                        default -> row.replaceFirst("^A,", "B,");
                    });
            if (rows.isEmpty()) {
                continue;
            }
            RuleChanges changes = changes(of, rows);
            List<Table.Row> stops =
                    Tables.open(of.path()).rows().stream().filter(of::isStop).toList();
            for (Table.Row stop : stops) {
                assertThat(changes.merged().rows())
                        .as("seed 5, " + i + ", " + of.about(stop))
                        .anyMatch(row -> of.about(row).equals(of.about(stop)) && of.isStop(row));
            }
            boolean lost = stops.stream()
                    .anyMatch(stop -> rows.stream()
                            .noneMatch(row -> row.startsWith(quoted(stop.cells().get(0)))));
            assertThat(!lost || changes.rows().stream().anyMatch(row -> row.fate() == RuleChanges.Fate.KEPT))
                    .as("seed 5, " + i)
                    .isTrue();
        }
    }

    /** A prohibition that a file adds stops; one that names what no rule finds is refused. */
    @Test
    void aProhibitionOfTheUsaCanBeAddedAndNoneCanBeTaken() {
        List<String> rows = rows(RuleTable.US_PROHIBITED);
        rows.add("21 CFR 189.999,made-up mugwort,mugwort,,read");
        rows.removeIf(row -> row.startsWith("21 CFR 189.130"));
        Bench herbs = new Bench()
                .grams("mugwort", Kind.DRIED_PLANT, 1.0)
                .grams("tonka bean", Kind.DRIED_PLANT, 1.0)
                .strong("spirit", Kind.SPIRIT, 40.0, 1000.0)
                .knowing(knowing(RuleTable.US_PROHIBITED, rows));
        assertThat(herbs.verdicts("us-prohibited")).containsExactly("STOP US prohibited", "STOP US prohibited");
        rows.add("21 CFR 189.998,nobody knows,moonberry,,read");
        assertThat(SignedRules.read(file(RuleTable.US_PROHIBITED, rows)).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.message()).contains("moonberry"));
    }

    @Test
    void aStopWhoseNamesAreCutStopsByAllOfThemStill() {
        List<String> rows = rows(RuleTable.NOT_FOR_DRINKING);
        rows.replaceAll(row -> row.startsWith("wintergreen oil") ? row.replace(",wintergreen;", ",") : row);
        RuleChanges changes = changes(RuleTable.NOT_FOR_DRINKING, rows);

        assertThat(changes.rows()).extracting(RuleChanges.Change::fate).contains(RuleChanges.Fate.KEPT);
        Bench oil = new Bench()
                .grams("wintergreen oil", Kind.ESSENTIAL_OIL, 0.01)
                .strong("spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(oil.knowing(knowing(RuleTable.NOT_FOR_DRINKING, rows)).verdicts("not-for-drinking"))
                .contains("STOP not for drinking");
    }

    @Test
    void everySlipIsToldWithItsLine() {
        List<String> rows = new ArrayList<>(rows(RuleTable.DUTY));
        rows.set(0, rows.get(0).replace("5.50", "five"));
        rows.set(2, "short,row");
        rows.add(rows.get(1));
        List<Finding> problems = SignedRules.read(file(RuleTable.DUTY, rows)).problems();
        assertThat(problems).extracting(Finding::where).containsExactly("line 6", "line 8", "line 12");
        assertThat(problems.get(0).message()).contains("per_litre_of_pure_alcohol", "five");
        assertThat(problems.get(2).message()).contains("twice");
    }

    @Test
    void aFileHasToSayWhatItIsAndWhoStandsForIt() {
        assertThat(SignedRules.read("a,b\n1,2\n").problems())
                .extracting(Finding::message)
                .containsExactly(
                        "It does not say of which table it is.",
                        "It does not say who stands for it.",
                        "It does not say where its figures are from.",
                        "It does not say as of which day.");
        String other = file(RuleTable.DUTY, rows(RuleTable.DUTY)).replace("country,above", "land,above");
        assertThat(SignedRules.read(other).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.remedy()).startsWith("Write country,above_pct_vol"));
    }

    @Test
    void aDayThatIsNoneIsTold() {
        for (String day : List.of("2019-02-30", "gestern")) {
            String text = file(RuleTable.DUTY, rows(RuleTable.DUTY)).replaceAll("# As of: .*", "# As of: " + day);
            assertThat(SignedRules.read(text).problems())
                    .extracting(Finding::message)
                    .containsExactly("It is as of \"" + day + "\", which is no day.");
        }
    }

    @Test
    void aWordThatNoRuleKnowsIsRefused() {
        List<String> rows = rows(RuleTable.EU_MAXIMA);
        rows.replaceAll(row -> row.replace("Alcoholic beverages produced from Artemisia species", "Absinthes"));
        assertThat(SignedRules.read(file(RuleTable.EU_MAXIMA, rows)).problems())
                .singleElement()
                .satisfies(problem -> assertThat(problem.message()).contains("Absinthes", "never be applied"));
    }

    /** Whatever a file holds, reading it ends with an edition or with problems, and never otherwise. */
    @Test
    @Tag("property")
    void anyTextIsReadOrTold() {
        Random random = new Random(8);
        String whole = file(RuleTable.POISONOUS, rows(RuleTable.POISONOUS));
        for (int i = 0; i < 300; i++) {
            StringBuilder text = new StringBuilder(whole);
            for (int n = 1 + random.nextInt(4); n > 0; n--) {
                int at = random.nextInt(text.length());
                text.replace(
                        at, Math.min(text.length(), at + random.nextInt(40)), random.nextBoolean() ? "\n" : ",\"x");
            }
            SignedRules.Reading reading = SignedRules.read(text.toString());
            assertThat(reading.rules() == null)
                    .as("seed 8, " + i)
                    .isEqualTo(!reading.problems().isEmpty());
        }
    }
}
