package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.shelf.Bottles;
import tools.jackson.databind.JsonNode;

/** Drops, essences, macerates, stills, notes and matches as they are typed. */
class FlavourCommandsTest {
    @TempDir
    private Path folder = Path.of("");

    private static List<String> rules(JsonNode answer) {
        List<String> rules = new ArrayList<>();
        answer.get("findings").forEach(finding -> rules.add(finding.get("rule").stringValue()));
        return rules;
    }

    @Test
    void dropsAreThoseOfTheWeighingsAndElseOfTheRule() {
        Desk.Run weighed = Desk.ask("drops --liquid lemon~oil --count 50 --mass 1.02g --mass 1.05g --mass 0.99g");
        assertThat(weighed.number("drop_mass_mg")).isCloseTo(20.4, within(1e-9));
        assertThat(weighed.number("spread_percent")).isCloseTo(100 * 0.03 / 1.02, within(1e-9));
        assertThat(weighed.number("drops_per_ml")).isCloseTo(0.854 / 0.0204, within(1e-9)); // 0.850 to 0.858 g/mL
        assertThat(rules(weighed.json())).containsExactly("light-on-skin", "drop-weighed", "oil-density");
        Desk.Run rule = Desk.ask("drops --liquid 96%");
        assertThat(rule.number("drop_mass_mg")).isCloseTo(15.7, within(0.05));
        assertThat(rules(rule.json())).containsExactly("drop-by-rule");
        assertThat(Desk.ask("drops --liquid water").number("drops_per_ml")).isCloseTo(20, within(0.1));
    }

    @Test
    void aDoseIsRestatedInEveryUnit() {
        Desk.Run run =
                Desk.ask("drops --liquid lemon --count 50 --mass 1g --dose 10~drops --batch 2L --density 0.85g/ml");
        assertThat(run.number("dose_g")).isCloseTo(0.2, within(1e-12));
        assertThat(run.number("dose_ml")).isCloseTo(0.2 / 0.85, within(1e-12));
        assertThat(run.number("dose_mg_per_l")).isCloseTo(100, within(1e-9));
        assertThat(Desk.ask("drops --liquid lemon --count 50 --mass 1g --dose 0.2g")
                        .number("dose_drops"))
                .isCloseTo(10, within(1e-9));
    }

    /** One way to a density and to a drop: what drops say of an oil, plan takes. */
    @ParameterizedTest
    @CsvSource({"clove bud oil, 1.049", "lemon oil, 0.854", "wintergreen oil, 1.1815", "dwarf pine oil, 0.862"})
    void plansTakeOilsAtTheDensityAndTheDropThatDropsTells(String oil, double density) throws IOException {
        JsonNode byVolume = planned(oil, "1 ml/L");
        Desk.Run drops = Desk.type("drops --dose 1ml --json --liquid " + oil.replace(' ', '~'));
        assertThat(byVolume.get("mass_g").doubleValue())
                .isCloseTo(density, within(1e-9))
                .isCloseTo(drops.number("dose_g"), within(1e-12));
        assertThat(planned(oil, "1 drop/L").get("mass_g").doubleValue())
                .isCloseTo(drops.number("drop_mass_mg") / 1000.0, within(1e-12));
    }

    /** A drop of lemon oil weighs about 20 mg. */
    @Test
    void aDropTenTimesAsHeavyIsAskedAboutBeforeTheDropsAreTold() throws IOException {
        Path file = folder.resolve("slip.yml");
        String essence = Files.readString(Path.of("../examples/essences/bay-pepper-lemon.yml"));
        Files.writeString(file, essence.replace("20.5 mg", "205 mg"));
        String out = Desk.type("essence " + file).out();
        assertThat(out).contains("A tenth of it would be usual");
        assertThat(out.indexOf("A tenth of it would be usual")).isLessThan(out.indexOf("Drops for 1.00 L"));
    }

    /** In spirit of 40 % vol a tenth of pepper oil would float; the dilution is made with strong spirit instead. */
    @Test
    void aDilutionThatAWeakCarrierWouldNotHoldIsMadeWithStrongSpirit() throws IOException {
        Path file = folder.resolve("weak.yml");
        String essence = Files.readString(Path.of("../examples/essences/bay-pepper-lemon.yml"));
        Files.writeString(file, essence.replace("carrier: 96 %", "carrier: 40 %"));
        Desk.Run weak = Desk.ask("essence " + file);
        JsonNode first = weak.json().get("pre_dilution").get("dilutions").get(0);
        assertThat(first.get("spirit_vol_percent").doubleValue()).isCloseTo(96.0, within(0.01));
        assertThat(first.get("spirit_g").doubleValue() / first.get("spirit_ml").doubleValue())
                .isCloseTo(0.807, within(0.001));
        assertThat(rules(weak.json())).contains("dilution-in-strong").doesNotContain("dilution-not-clear");
        assertThat(Desk.type("essence " + file).out()).contains("of spirit 96 %");
        assertThat(rules(Desk.ask("essence ../examples/essences/bay-pepper-lemon.yml")
                        .json()))
                .doesNotContain("dilution-in-strong");
    }

    /** 50 g/L are 1:20. */
    @Test
    void aRatioIsReadPerLitreToo() {
        assertThat(Desk.ask("macerate --plant plum --mass 100g --ratio 50g/L --strength 70%")
                        .json())
                .isEqualTo(Desk.ask("macerate --plant plum --mass 100g --ratio 1:20 --strength 70%")
                        .json());
        assertThat(Desk.ask("combine --macerate 300ml@62%@200g/L --ratio 125g/L --to 58%")
                        .number("spirit_ml"))
                .isCloseTo(
                        Desk.ask("combine --macerate 300ml@62%@1:5 --ratio 1:8 --to 58%")
                                .number("spirit_ml"),
                        within(1e-9));
        assertThat(Desk.type("macerate --plant plum --mass 100g --ratio 50g --strength 70%")
                        .err())
                .contains("--ratio", "200 g/L");
    }

    @Test
    void ratiosAndMassesTheWrongWayRoundAreAskedBeforeTheFigures() {
        String much = "macerate --plant plum --mass 10kg --solvent 1L --strength 70%";
        assertThat(rules(Desk.ask(much).json())).startsWith("plant-over-solvent");
        String out = Desk.type(much).out();
        assertThat(out.indexOf("10.0 g of plant")).isBetween(0, out.indexOf("of the extract comes"));
        assertThat(rules(Desk.ask("macerate --plant plum --mass 1kg --solvent 1L --strength 70%")
                        .json()))
                .doesNotContain("plant-over-solvent");
        assertThat(rules(Desk.ask(much + " --sugar-on-fruit 2kg").json())).doesNotContain("plant-over-solvent");
        Desk.Run turned = Desk.ask("combine --macerate 300ml@62%@5:1 --macerate 500ml@55%@1:10 --ratio 1:8 --to 58%");
        assertThat(rules(turned.json())).startsWith("ratio-turned-round");
        Desk.Run wanted = Desk.type("combine --macerate 300ml@62%@1:5 --ratio 8:1 --to 58%");
        assertThat(wanted.exit()).isEqualTo(2);
        assertThat(wanted.err()).contains("--ratio", "write 1:8");
    }

    /** 68.2 and 11.0 % are named; of what lemon oil usually holds, gamma-terpinene is not among them. */
    @Test
    void whatAnAnalysisLeavesOutIsTold() throws IOException {
        Path recipe = folder.resolve("lemon.yaml");
        Files.writeString(recipe, """
                stillroom: 1
                title: Lemon
                target: {volume: 1 L, strength: 60 %}
                ingredients:
                  - {name: lemon oil, kind: essential oil}
                lines:
                  - {use: lemon oil, dose: 0.3 g/L}
                  - {use: spirit 96 %, amount: free}
                  - {use: water, amount: free}
                """);
        Path lot = folder.resolve("lot.csv");
        Files.writeString(lot, "d-limonene,68.2\nbeta-pinene,11\n");
        String out = Desk.type("notes " + recipe + " --analysis lemon~oil=" + lot)
                .out()
                .replaceAll("\\s+", " ");
        assertThat(out).containsPattern("names 79\\.2 % of the oil.*Usual in it and not named: [^.]*gamma-terpinene");
        assertThat(rules(Desk.ask("notes " + recipe).json())).doesNotContain("analysis-leaves-out");
    }

    @Test
    void aTinctureIsNotTakenForTheOilOfItsPlant() {
        Desk.Run tincture = Desk.type("drops --liquid lemon~tincture");
        assertThat(tincture.exit()).isEqualTo(2);
        assertThat(tincture.err()).contains("lemon tincture", "is not known here");
        assertThat(Desk.type("drops --liquid lemon~oil").exit()).isZero();
    }

    @Test
    void aDoseOfNothingIsNoDose() {
        for (String dose : List.of("0~drops", "0g", "0ml/L")) {
            Desk.Run run = Desk.type("drops --liquid lemon --dose " + dose);
            assertThat(run.exit()).isEqualTo(2);
            assertThat(run.err()).contains("--dose", "a dose of nothing");
        }
    }

    /** 5 µg are 0.00026 drops of 19 mg: no figure of it is lost to rounding, and it takes two dilutions to weigh it. */
    @Test
    void aDoseOfMicrogramsIsToldInFiguresAndDilutedTwice() {
        String out = Desk.type("drops --liquid lemon --dose 5ug").out().replaceAll("\\s+", " ");
        assertThat(out)
                .contains("It is 0.00026 drops", "twice, 1 g made up to 1000 g and 1 g of that made up to 100 g");
        assertThat(out).contains("weigh 0.50 g of that").doesNotContain("189003 %");
        assertThat(Desk.type("drops --liquid lemon --dose 0.5ug/L").out())
                .containsPattern("in the liqueur +0\\.00050 +mg/L")
                .doesNotContain("± 0.00000000\n");
        assertThat(Desk.type("drops --liquid lemon --dose 0.00001ug").out()).contains("look at the unit");
    }

    @Test
    void weighingsWithADecimalCommaAreReadAndSeveralInOneAreRefused() {
        Desk.Run commas = Desk.ask("drops --liquid lemon --count 50 --mass 1,02g --mass 1,05g --mass 1,03g");
        Desk.Run points = Desk.ask("drops --liquid lemon --count 50 --mass 1.02g --mass 1.05g --mass 1.03g");
        assertThat(commas.number("drop_mass_mg")).isEqualTo(points.number("drop_mass_mg"));
        Desk.Run joined = Desk.type("drops --liquid lemon --count 50 --mass 1.02g,1.05g");
        assertThat(joined.exit()).isEqualTo(2);
        assertThat(joined.err()).contains("--mass", "one number with one unit");
    }

    /** The other spirits are those that one would ask for by themselves; 27.5 kJ/mol make 1.46 of k for ten degrees from 20 °C. */
    @Test
    void otherSpiritsAndWarmthAreToldBesideWhatIsAsked() {
        String asked = "macerate --plant lemon~peel --mass 500g --solvent 900ml --strength ";
        JsonNode told = Desk.ask(asked + "95%").json();
        assertThat(told.get("other_spirits")).hasSize(3); // 40, 60 and 80; 96 is the same
        Desk.Run weaker = Desk.ask(asked + "60%");
        assertThat(told.get("other_spirits").get(1).get("strength_vol_percent").doubleValue())
                .isCloseTo(weaker.number("strength_vol_percent"), within(1e-9));
        assertThat(told.get("other_spirits").get(1).get("comes_ml").doubleValue())
                .isCloseTo(weaker.number("volume_ml"), within(1e-9));
        double warmer = Math.exp(27_500.0 / 8.314 * (1.0 / 293.15 - 1.0 / 303.15));
        assertThat(told.get("warmer").get(0).get("little_left_from_day").doubleValue())
                .isCloseTo(told.get("little_left_from_day").doubleValue() / warmer, within(1e-9));
        assertThat(Desk.type("macerate --cask 5L --strength 60%").err()).contains("--strength", "asked alone");
    }

    /** How far drops differ is itself in doubt: by the rule nothing tells how far, by three runs much, and by a scale that is read to 0.01 g. */
    @Test
    void howFarDropsDifferHasADoubtOfItsOwn() {
        assertThat(Desk.type("drops --liquid lemon").out())
                .containsPattern("drops differ by +30\\.0 +% of the mean +not told");
        JsonNode weighed = Desk.ask("drops --liquid lemon --count 50 --mass 1.02g --mass 1.05g --mass 1.03g")
                .json();
        double spread = weighed.get("spread_percent").doubleValue();
        assertThat(weighed.get("doubt").get("spread_percent").doubleValue())
                .isCloseTo(
                        Math.hypot(1.645 * spread / 2.0, 100.0 * (1.0 - Math.sqrt(0.1)) * 0.01 / (3.10 / 3.0)),
                        within(1e-9));
    }

    @Test
    void whatMustNotBeDrunkSaysSoThoughNothingWasWeighed() {
        Desk.Run drops = Desk.type("drops --liquid thuja~oil");
        assertThat(drops.exit()).isEqualTo(2);
        assertThat(drops.err()).contains("nothing was weighed", "must not be drunk");
        assertThat(Desk.type("drops --liquid moon~oil").err()).doesNotContain("must not be drunk");
    }

    @Test
    void aDoseThatNoOilIsPlausibleAtIsAskedOfALadder() {
        Desk.Run slip = Desk.ask("ladder --dose 40g/L");
        assertThat(rules(slip.json())).containsExactly("dose-implausible");
        assertThat(rules(Desk.ask("ladder --dose 0.4g/L").json())).isEmpty();
        assertThat(rules(Desk.ask("ladder --dose 40ml/L").json())).isEmpty();
    }

    @Test
    void millilitresForDropsAreAskedOfADoseToo() {
        assertThat(rules(Desk.ask("drops --liquid lemon~oil --dose 12ml/L").json()))
                .contains("dose-implausible");
        assertThat(rules(Desk.ask("drops --liquid lemon~oil --dose 12~drops/L").json()))
                .doesNotContain("dose-implausible");
    }

    @Test
    void anOilThatNoTableKnowsHasABroadDensityThatIsAskedFor() throws IOException {
        Desk.Run drops = Desk.ask("drops --count 50 --mass 1g --dose 1ml --liquid yuzu~oil");
        assertThat(drops.number("dose_g")).isBetween(0.94, 0.97);
        assertThat(drops.json().get("doubt").get("dose_g").doubleValue()).isBetween(0.09, 0.12);
        assertThat(planned("yuzu oil", "1 ml/L").get("mass_g").doubleValue())
                .isCloseTo(drops.number("dose_g"), within(1e-12));
        assertThat(rules(drops.json())).containsExactly("not-known", "oil-density", "us-listed", "drop-weighed");
        assertThat(Desk.ask("drops --count 50 --mass 1g --liquid moon~dust")
                        .json()
                        .get("drops_per_ml")
                        .isNull())
                .isTrue();
    }

    private JsonNode planned(String oil, String dose) throws IOException {
        Path file = folder.resolve("oil.yaml");
        Files.writeString(file, """
                stillroom: 1
                title: One oil
                target: {volume: 1 L, strength: 60 %%}
                ingredients:
                  - {name: %s, kind: essential oil}
                lines:
                  - {use: spirit 96 %%, amount: free}
                  - {use: %s, dose: %s}
                  - {use: water, amount: free}
                """.formatted(oil, oil, dose));
        return Desk.type("plan " + file + " --json")
                .json()
                .get("lines")
                .get(1); // some of them are not for drinking, and planned all the same
    }

    @Test
    void aDoseBelowADropIsStillToldInTwoFigures() {
        assertThat(Desk.type("drops --liquid lemon --count 50 --mass 1.02g --dose 0.2µL")
                        .out())
                .containsPattern("the dose +0\\.20 +µL")
                .containsPattern("the dose +0\\.00020 +mL");
    }

    /** 12 drops of 20.4 mg are 0.2448 g, at 0.854 g/mL 287 µL; each unit leads back to the same dose. */
    @Test
    void aDoseIsToldInEveryUnitWhicheverItIsTypedIn() {
        String weighed = "drops --liquid lemon~oil --count 50 --mass 1.02g --batch 2L --dose ";
        Desk.Run drops = Desk.ask(weighed + "12~drops");
        assertThat(drops.number("dose_g")).isCloseTo(0.2448, within(1e-9));
        assertThat(drops.number("dose_ul")).isCloseTo(1000.0 * 0.2448 / 0.854, within(1e-6));
        assertThat(drops.number("dose_mg_per_l")).isCloseTo(122.4, within(1e-6));
        for (String same :
                List.of("6drops/L", "122.4mg/L", drops.number("dose_ul") + "ul", drops.number("dose_ml") + "ml")) {
            assertThat(Desk.ask(weighed + same).number("dose_drops")).as(same).isCloseTo(12.0, within(1e-6));
        }
        assertThat(Desk.ask("drops --liquid lemon --dose 180mg/L").number("dose_mg_per_l"))
                .isCloseTo(180.0, within(1e-9));
    }

    @Test
    void weighingsThatDoNotGoTogetherOrCannotBeAreTold() {
        assertThat(rules(Desk.ask("drops --liquid lemon --count 50 --mass 1.02g --mass 1.2g --mass 1.03g")
                        .json()))
                .contains("drops-inconsistent");
        assertThat(rules(
                        Desk.ask("drops --liquid lemon --count 10 --mass 1.02g").json()))
                .contains("few-drops", "drop-unlikely");
        assertThat(Desk.type("drops --liquid moon~dust").exit()).isEqualTo(2);
        assertThat(Desk.type("drops --liquid lemon --count few --mass 1g").exit())
                .isEqualTo(2);
        assertThat(Desk.type("drops --liquid lemon --mass 0g --count 50").exit())
                .isEqualTo(2);
        assertThat(Desk.type("drops --liquid lemon --count 50").err()).contains("not weighed");
    }

    @Test
    void aWeighingThatDoesNotGoWithTheOthersIsToldWithTheMeanWithoutIt() {
        Desk.Run odd = Desk.ask("drops --liquid lemon --count 50 --mass 1.02g --mass 1.2g --mass 1.03g");
        assertThat(odd.number("drop_mass_mg")).isCloseTo(1000 * 3.25 / 150, within(1e-9));
        assertThat(odd.number("drop_mass_without_odd_mg")).isCloseTo(20.5, within(1e-9));
        assertThat(odd.json().get("findings").findValuesAsString("message"))
                .anyMatch(
                        message -> message.contains("count in the mean. Without what does so, a drop weighs 20.5 mg"));
        assertThat(odd.json().get("findings").findValuesAsString("remedy"))
                .anyMatch(remedy -> remedy.contains("To leave it out, do not type it"));
        Desk.Run two = Desk.ask("drops --liquid lemon --count 50 --mass 1.02g --mass 1.2g");
        assertThat(two.json().has("drop_mass_without_odd_mg")).isFalse();
        assertThat(two.json().get("findings").findValuesAsString("message"))
                .anyMatch(message -> message.contains("these do not tell"));
    }

    @Test
    void dropsThatNoDropperGivesAreRefusedAndUnlikelyOnesDoubtedBeforeTheirFigures() throws IOException {
        for (String line : List.of(
                "drops --liquid lemon --count 50 --mass 102g",
                "drops --liquid lemon --count 50 --mass 1.02g --mass 102g",
                "drops --liquid lemon --count 500 --mass 0.5g",
                "drops --liquid lemon --water-drop 450mg",
                "calibrate --drops 50 --weighed 250g")) {
            Desk.Run run = Desk.type(line);
            assertThat(run.exit()).as(line).isEqualTo(2);
            assertThat(run.err()).as(line).containsPattern("no\\s+dropper\\s+gives");
        }
        String unlikely =
                Desk.type("drops --liquid lemon --count 10 --mass 1.02g").out();
        assertThat(unlikely.indexOf("Caution: weighing 1")).isBetween(0, unlikely.indexOf("drops per millilitre"));
        assertThat(rules(
                        Desk.ask("drops --liquid lemon --count 10 --mass 1.02g").json()))
                .startsWith("drop-unlikely");
        String text = Files.readString(Path.of("../examples/essences/bay-pepper-lemon.yml"));
        Path slip = Files.writeString(folder.resolve("slip.yml"), text.replace("20.5 mg", "205 mg"));
        assertThat(rules(Desk.ask("essence " + slip).json())).contains("drop-unlikely");
    }

    @Test
    void anEssenceIsPlannedInWholeDrops() {
        JsonNode answer =
                Desk.ask("essence ../examples/essences/bay-pepper-lemon.yml").json();
        JsonNode best = answer.get("choices").get(0);
        assertThat(best.get("drops").toString()).isEqualTo("[26,7,5]");
        assertThat(best.get("batches").intValue()).isEqualTo(2);
        assertThat(best.get("worst_error_percent").doubleValue()).isCloseTo(0.6, within(0.05));
        assertThat(best.get("left_over_ml").doubleValue()).isCloseTo(0.019, within(0.001));
        assertThat(answer.get("choices").get(1).get("drops").toString()).isEqualTo("[52,14,10]");
        Desk.Run typed = Desk.type("essence ../examples/essences/bay-pepper-lemon.yml");
        assertThat(typed.out())
                .contains("For a single batch", "each oil within 2.0 %, then least left over")
                .containsPattern("laurel +5 \\(\\+0\\.6 %\\) +10 \\(\\+0\\.6 %\\)");
        assertThat(typed.out().lines()).allMatch(line -> line.length() <= 96);
        assertThat(answer.get("manifold").get("errors_percent").get(2).doubleValue())
                .isCloseTo(0.6, within(0.05));
    }

    @Test
    void oneBatchIsCalledOne() throws IOException {
        String text = Files.readString(Path.of("../examples/essences/bay-pepper-lemon.yml"));
        Path one = Files.writeString(folder.resolve("one.yml"), text + "batches: 1\n");
        Desk.Run run = Desk.type("essence " + one);
        assertThat(run.out())
                .containsPattern("up\\s+to\\s+1\\s+batch\\s")
                .contains("None keeps each oil within 2.0 %")
                .doesNotContainPattern("\\b1\\s+batches");
    }

    @Test
    void twelveOilsFitTheScreen() throws IOException {
        StringBuilder oils = new StringBuilder();
        for (String oil : List.of(
                "lemon",
                "caraway",
                "laurel",
                "coriander",
                "cardamom",
                "ginger",
                "black pepper",
                "anise",
                "peppermint",
                "bergamot",
                "rosemary",
                "juniper")) {
            oils.append("  - {oil: ").append(oil).append(", parts: 1, drop: 20 mg}\n");
        }
        Path many = Files.writeString(
                folder.resolve("many.yml"),
                "stillroom essence: 1\ntitle: Twelve\noils:\n" + oils
                        + "by: mass\ntogether: 0.40 g/L\ncarrier: 96 %\ndose: 5 ml/L\nmarks: 0.1 ml\nbatch: 1 L\n");
        Desk.Run run = Desk.type("essence " + many);
        assertThat(run.out()).containsPattern("juniper +\\d+ \\(");
        assertThat(run.out().lines()).allMatch(line -> line.length() <= 96);
    }

    @Test
    void anEssenceTellsGramsPerLitreAndStopsAtAnOilThatIsNotForDrinking() throws IOException {
        String text = Files.readString(Path.of("../examples/essences/bay-pepper-lemon.yml"));
        String told =
                Desk.type("essence ../examples/essences/bay-pepper-lemon.yml").out();
        assertThat(told)
                .contains("% vol with oils")
                .containsPattern("lemon +53\\.20")
                .contains("limonene");
        Path wintergreen =
                Files.writeString(folder.resolve("wintergreen.yml"), text.replace("oil: laurel", "oil: wintergreen"));
        Desk.Run stopped = Desk.type("essence " + wintergreen);
        assertThat(stopped.exit()).isEqualTo(1);
        assertThat(stopped.out()).contains("Stop: wintergreen", "aspirin");
        Path unknown = Files.writeString(folder.resolve("dust.yml"), text.replace("oil: laurel", "oil: moon dust"));
        assertThat(Desk.type("essence " + unknown).out()).contains("on none of the US lists", "whether it is fit");
    }

    @Test
    void essenceAndDropsKeepToTheRulesOfTheHouseFromAFileAndOfAStudio() throws IOException {
        Path rules = Files.writeString(
                folder.resolve("house.txt"),
                "no laurel oil because it overpowers\nat most 0.3 g/L oil\nat most 1 mg/L thujone\n");
        String essence = "essence ../examples/essences/bay-pepper-lemon.yml";
        Desk.Run run = Desk.type(essence + " --json --house-rules " + rules);
        assertThat(run.exit()).isEqualTo(1);
        // 0.40 g/L of oils are asked together
        assertThat(run.json().get("findings").findValuesAsString("message"))
                .anyMatch(message -> message.contains("laurel is what it names"))
                .anyMatch(message -> message.contains("400 mg/L of the drink; the limit is at most 300 mg/L"));
        JsonNode dose = Desk.ask("drops --liquid sage~oil --dose 40mg/L --house-rules " + rules)
                .json();
        assertThat(rules(dose)).contains("house-rule");
        assertThat(rules(Desk.ask("drops --liquid sage~oil --dose 1mg/L --house-rules " + rules)
                        .json()))
                .doesNotContain("house-rule");
        assertThat(rules(
                        Desk.ask("drops --liquid laurel --house-rules " + rules).json()))
                .contains("house-rule");
        assertThat(Desk.type("drops --liquid sage~oil --dose 2000g/L --house-rules " + rules)
                        .out())
                .containsPattern("could\\s+not\\s+be\\s+judged");
        Path data = folder.resolve("studio");
        try (Store store = Store.open(new DataFolder(data))) {
            store.rules().writeHouse("no laurel oil", 0, "house-1");
        }
        assertThat(Desk.type(essence + " --data " + data).out()).contains("laurel is what it", "no laurel oil");
        assertThat(rules(Desk.ask("drops --liquid laurel --data " + data).json()))
                .contains("house-rule");
    }

    @Test
    void whatIsNotFoundSaysWhatThereIsAndWhatToDo() throws IOException {
        Path vodka = Files.writeString(folder.resolve("vodka.csv"), "name;kind;strength;left\nvodka;spirit;40 %;1 L\n");
        JsonNode none = Desk.ask("leftovers --shelf " + vodka).json();
        assertThat(rules(none)).containsExactly("nothing-left");
        assertThat(Desk.type("leftovers --shelf " + vodka).out()).contains("of 1 lot there", "essential oils");
        Path unsaid = Files.writeString(
                folder.resolve("unsaid.csv"), "name;kind;strength\nbay tincture;tincture;70 %\nvodka;spirit;40 %\n");
        JsonNode notSaid = Desk.ask("leftovers --shelf " + unsaid).json().get("findings");
        assertThat(notSaid.get(0).get("rule").stringValue()).isEqualTo("left-not-said");
        assertThat(notSaid.get(0).get("where").stringValue()).isEqualTo("bay tincture");
        assertThat(Desk.type("match --want lemo=1g --have lemon").err())
                .contains("Near it are: lemon, lemongrass")
                .doesNotContain("wormwood");
        assertThat(Desk.type("match --want lime=90mg --have lemon --by smell").out())
                .containsPattern("Without\\s+one,\\s+and\\s+not\\s+counted:\\s+[a-z]");
        Path plain = Files.writeString(folder.resolve("plain.yaml"), """
                stillroom: 1
                title: x
                target: {volume: 1 L, strength: 30 %}
                lines:
                  - {use: spirit 96 %, amount: free}
                  - {use: water, amount: free}
                """);
        assertThat(rules(Desk.ask("notes " + plain).json())).containsExactly("no-notes");
        Path slip = Files.writeString(folder.resolve("slip.csv"), "limonnen,90\n");
        assertThat(Desk.type("notes ../examples/quince-and-bay.yaml --analysis caraway~oil=" + slip)
                        .err())
                .contains("take the line out")
                .doesNotContain("is kept");
    }

    @Test
    void aBatchIsCorrectedWithWhatRecipesCallByNameToo() {
        String batch = "correct --volume 1.9L --strength 27.1% --to-strength 28% --with ";
        JsonNode named = Desk.ask(batch + "vodka~40%").json().get("add").get(0);
        JsonNode byStrength = Desk.ask(batch + "40%").json().get("add").get(0);
        assertThat(named.get("what").stringValue()).isEqualTo("vodka 40%");
        assertThat(named.get("mass_g").doubleValue())
                .isCloseTo(byStrength.get("mass_g").doubleValue(), within(1e-6));
        assertThat(Desk.type("correct --volume 1.9L --strength 27.1% --sugar 100g/L --to-sugar 110g/L --with honey")
                        .out())
                .contains("g of honey");
        assertThat(Desk.type(batch + "vodka").err()).contains("or not what it holds", "\"vodka 40%\"");
    }

    @Test
    void aPoisonIsCalledOneBeforeItsWaterIsAsked() {
        assertThat(Desk.type("macerate --plant foxglove --mass 5g --solvent 1L --strength 40%")
                        .err())
                .contains("must not be drunk", "cardiac glycosides")
                .doesNotContain("give its water");
        assertThat(Desk.type("macerate --plant Tollkirsche --mass 5g --solvent 1L --strength 40%")
                        .err())
                .contains("must not be drunk");
    }

    @Test
    void aMatchOfAnAbsurdDoseIsAskedAbout() {
        assertThat(rules(Desk.ask("match --want clove~bud=5g --have clove~bud").json()))
                .contains("dose-implausible");
        assertThat(rules(
                        Desk.ask("match --want clove~bud=50mg --have clove~bud").json()))
                .doesNotContain("dose-implausible");
    }

    /** USP 32, sweet orange peel tincture: 500 g in 900 mL, made up to 1000 mL; alcohol content 62 to 72 % there. */
    @Test
    void aTinctureIsMadeUpAsItsBookSays() {
        Desk.Run made =
                Desk.ask("macerate --tincture sweet~orange~peel~tincture --plant orange~peel --mass 500g --held 0.9ml");
        assertThat(made.number("made_ml")).isCloseTo(1000, within(1e-6));
        double volume = made.number("volume_ml");
        assertThat(volume).isLessThan(1000);
        // what is added and what came do not add up to more than the mark by the contraction of strong spirit
        assertThat(made.number("add_solvent_ml")).isBetween(1000 - volume, 1.01 * (1000 - volume));
        Desk.Run ordered = Desk.ask("macerate --tincture sweet~orange~peel~tincture --yield 500ml --held 0.9ml");
        assertThat(ordered.number("made_ml")).isCloseTo(500, within(1e-6));
        assertThat(ordered.number("plant_g")).isCloseTo(250, within(1e-3));
        assertThat(ordered.number("solvent_ml")).isCloseTo(450, within(1e-3));
        assertThat(rules(
                        Desk.ask("macerate --tincture lemon~tincture --plant lemon~peel --mass 100g --make-up-to 300ml")
                                .json()))
                .contains("tincture-otherwise");
        assertThat(Desk.ask("macerate --tincture gentian~tincture --mass 100g")
                        .json()
                        .has("made_ml"))
                .isFalse();
    }

    /** Of 100 mg of what holds 90 % of limonene and less than 20 % of myrcene, 0 to 20 mg of myrcene come. */
    @Test
    void aBoundOfAnAnalysisIsToldWithTheDoubtThatItLeaves() throws IOException {
        String shelf = "name;kind;left;analysis\nmy orange;essential oil;10 ml;\"limonene,80\nmyrcene,%s\"\n";
        Path table = Files.writeString(folder.resolve("bounded.csv"), String.format(shelf, "<20"));
        Path exact = Files.writeString(folder.resolve("exact.csv"), String.format(shelf, "10"));
        Desk.Run bounded = Desk.ask("match --want sweet~orange=100mg --shelf " + table);
        Desk.Run known = Desk.ask("match --want sweet~orange=100mg --shelf " + exact);
        assertThat(bounded.number("off_percent")).isCloseTo(known.number("off_percent"), within(1e-9));
        assertThat(known.json().get("doubt").get("off_percent").isNull())
                .as("how far the wanted oil lies from typical is not told")
                .isTrue();
        assertThat(rules(known.json())).doesNotContain("only-bounded");
        assertThat(bounded.json().get("doubt").get("off_percent").doubleValue()).isGreaterThan(5.0);
        assertThat(bounded.json().get("findings").findValuesAsString("message"))
                .anyMatch(message -> message.contains("my orange (myrcene below 20 %)"));
    }

    @Test
    void aDoseOfFewerThanFiveDropsIsSaidToBeTooSmallToRepeat() {
        String few = Desk.type("drops --liquid lemon~oil --dose 2drops").out();
        assertThat(few).containsPattern("Half a drop is 25 %").containsPattern("1 g made up to 10\\s+g");
        assertThat(rules(Desk.ask("drops --liquid lemon~oil --dose 5drops").json()))
                .doesNotContain("dose-too-small");
        assertThat(rules(Desk.ask("drops --liquid lemon~oil --dose 4.9drops").json()))
                .contains("dose-too-small");
    }

    @Test
    void aDilutionIsToldWithItsCarrierInMillilitresItsTotalAndItsDoubt() {
        Desk.Run run = Desk.ask("essence ../examples/essences/bay-pepper-lemon.yml");
        JsonNode first = run.json().get("pre_dilution").get("dilutions").get(0);
        double spirit = first.get("spirit_g").doubleValue();
        // 96 % vol weighs 0.807 g/mL at 20 °C (OIML R 22)
        assertThat(spirit / first.get("spirit_ml").doubleValue()).isCloseTo(0.807, within(0.001));
        assertThat(first.get("total_g").doubleValue()).isCloseTo(spirit / 0.9, within(1e-9));
        assertThat(rules(run.json())).contains("dilution-by-rule");
    }

    @Test
    void dropsSayWhatIsNotForDrinkingAndWeighItAllTheSame() {
        Desk.Run wintergreen = Desk.type("drops --liquid wintergreen");
        assertThat(wintergreen.exit()).isEqualTo(1);
        assertThat(wintergreen.out()).contains("Stop: wintergreen", "aspirin", "mg");
        assertThat(Desk.type("drops --liquid moon~dust --count 50 --mass 1g").out())
                .contains("on none of the US lists", "Caution: moon dust");
        assertThat(Desk.type("drops --liquid 40%").out()).doesNotContain("US lists");
        assertThat(Desk.type("drops --liquid wintergreen~tincture --count 50 --mass 1g")
                        .out())
                .doesNotContain("aspirin");
    }

    @Test
    void anEssenceFileThatIsNotThereOrWrongIsRefused() throws IOException {
        assertThat(Desk.type("essence no-such.yml").exit()).isEqualTo(3);
        Path wrong = Files.writeString(folder.resolve("wrong.yml"), "stillroom essence: 1\ntitle: x\n");
        Desk.Run run = Desk.type("essence " + wrong);
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("“oils” is missing");
    }

    @Test
    void twelveBotanicalsComeOutAsTheirStoryIsTold() {
        Percentage half = Percentage.withPercentage(0.5);
        String story = "macerate --plant dried~botanicals --mass 74g --solvent 1.2L --strength 65%";
        Desk.Run run = Desk.ask(story + " --make-up-to 3L --to 28% --sugar 220g/L");
        assertThat(run.number("volume_ml")).isCloseTo(1096, half);
        assertThat(run.number("strength_vol_percent")).isCloseTo(64.6, half);
        assertThat(run.number("held_by_marc_ml")).isEqualTo(111.0);
        assertThat(run.number("add_spirit_ml")).isCloseTo(137, half);
        assertThat(run.number("add_sugar_g")).isCloseTo(660, half);
        assertThat(run.number("add_water_g")).isCloseTo(1390, half);
        Desk.Run pressed = Desk.ask(story + " --pressed --make-up-to 3L --to 28% --sugar 220g/L");
        assertThat(pressed.number("volume_ml")).isCloseTo(1148, half);
        assertThat(pressed.number("add_spirit_ml")).isCloseTo(102, half);
    }

    private static final String CHERRIES =
            "macerate --plant sour~cherry --mass 1kg --sugar-on-fruit 400g --solvent 1L --strength 70%";

    /** Own arithmetic outside this program; FruitInSugarTest has its digits. */
    @Test
    void sugarOnFruitCountsInWhatComesAndInWhatIsAdded() {
        Desk.Run run = Desk.ask(CHERRIES + " --make-up-to 2.4L --to 25% --sugar 220g/L");
        assertThat(run.number("volume_ml")).isCloseTo(1737.4, within(0.05));
        assertThat(run.number("strength_vol_percent")).isCloseTo(32.75, within(0.005));
        assertThat(run.number("sugar_g_per_l")).isCloseTo(226.9, within(0.05));
        assertThat(run.number("own_sugar_g_per_l")).isCloseTo(39.7, within(0.05));
        assertThat(run.number("held_by_marc_ml")).isEqualTo(400.0);
        assertThat(run.number("undissolved_sugar_g")).isZero();
        assertThat(run.number("add_spirit_ml")).isCloseTo(32.3, within(0.05));
        assertThat(run.number("add_sugar_g")).isCloseTo(133.8, within(0.05));
        assertThat(run.number("add_water_g")).isCloseTo(551.4, within(0.05));
        assertThat(Desk.ask(CHERRIES + " --pressed").number("volume_ml")).isCloseTo(1987.4, within(0.05));
        assertThat(Desk.ask(CHERRIES + " --make-up-to 2.2L --to 26%").number("add_sugar_g"))
                .isZero();
        assertThat(Desk.type(CHERRIES + " --make-up-to 2.2L --to 26% --sugar 100g/L")
                        .err())
                .contains("brings 394 g of sugar, enough for 3.94 L");
    }

    /** What goes with advice by units of Delle, which nobody here has read. */
    private static final String CLEARS_NOTHING = "a figure from memory and common practice and clear nothing:"
            + " below about 17 % vol it can ferment again";

    @Test
    void theOrderOfSugarAndSpiritChangesWhatStandsBetween() {
        Desk.Run sugarFirst = Desk.ask(CHERRIES + " --order sugar-first");
        assertThat(sugarFirst.number("volume_ml")).isCloseTo(1737.4, within(0.05));
        assertThat(sugarFirst.number("before_ml")).isCloseTo(1164.1, within(0.05));
        assertThat(sugarFirst.number("before_sugar_g_per_l")).isCloseTo(416.5, within(0.05));
        assertThat(sugarFirst.number("before_delle_units")).isCloseTo(41.7, within(0.05));
        assertThat(sugarFirst.number("before_water_activity")).isCloseTo(0.966, within(0.0005));
        assertThat(rules(sugarFirst.json())).contains("juice-ferments");
        assertThat(sugarFirst.json().toString())
                .contains("Put at least 178 mL of the spirit on it from the start", CLEARS_NOTHING, "the lid loose");
        Desk.Run held = Desk.ask(CHERRIES + " --order sugar-first --first-spirit 178ml");
        assertThat(held.number("before_vol_percent")).isCloseTo(9.3, within(0.05));
        assertThat(rules(held.json()))
                .contains("sugar-draws", "yeast-likely-held")
                .doesNotContain("juice-ferments");
        assertThat(Desk.ask(CHERRIES + " --order spirit-first").number("before_vol_percent"))
                .isCloseTo(37.05, within(0.005));
        Desk.Run marc = Desk.ask(CHERRIES + " --order on-the-marc");
        assertThat(marc.number("before_ml")).isCloseTo(974.0, within(0.05));
        assertThat(marc.number("comes_back_ml")).isCloseTo(764.7, within(0.05));
        assertThat(marc.number("volume_ml")).isCloseTo(1737.7, within(0.05));
        assertThat(marc.number("strength_vol_percent")).isCloseTo(33.58, within(0.005));
        assertThat(marc.number("sugar_g_per_l")).isCloseTo(191.9, within(0.05));
    }

    @Test
    void sugarThatDoesNotDissolveAndFruitThatFermentsAreTold() {
        String raspberries = "macerate --plant raspberry --mass 1kg --strength 40% ";
        Desk.Run much = Desk.ask(raspberries + "--sugar-on-fruit 2.5kg --solvent 500ml");
        assertThat(much.number("undissolved_sugar_g")).isGreaterThan(100.0);
        assertThat(rules(much.json())).contains("sugar-undissolved");
        Desk.Run weak = Desk.ask(raspberries + "--sugar-on-fruit 100g --solvent 300ml");
        assertThat(rules(weak.json())).contains("fruit-ferments").doesNotContain("fruit-weak");
        assertThat(weak.json().toString()).contains(CLEARS_NOTHING, "the lid loose");
        assertThat(Desk.ask(raspberries + "--solvent 500ml --own-sugar 8%").number("own_sugar_g_per_l"))
                .isCloseTo(80.0 / (0.5 + 0.8575 + 0.05), within(1.0));
        assertThat(Desk.ask("macerate --ratio 1:1 --yield 1L --plant raspberry --strength 60% --sugar-on-fruit 50g")
                        .number("volume_ml"))
                .isCloseTo(1000.0, within(0.01));
    }

    @Test
    void whatMakesNoSenseAboutSugarOnFruitIsRefused() {
        String plain = "macerate --plant raspberry --mass 1kg --solvent 1L --strength 60%";
        assertThat(Desk.type(plain + " --order sugar-first").err()).contains("--sugar-on-fruit");
        assertThat(Desk.type(CHERRIES + " --order later").err()).contains("on-the-marc");
        assertThat(Desk.type(CHERRIES + " --first-spirit 100ml").err()).contains("--order sugar-first");
        assertThat(Desk.type(CHERRIES + " --order sugar-first --first-spirit 2L")
                        .err())
                .contains("more than all of the spirit");
        assertThat(Desk.type(CHERRIES + " --percolate 1L").exit()).isEqualTo(2);
        assertThat(Desk.type(plain + " --water 90% --own-sugar 12%").err()).contains("--own-sugar");
        assertThat(Desk.type("macerate --plant raisins --mass 20g --sugar-on-fruit 20g --solvent 1L --strength 96%")
                        .err())
                .contains("90 % vol");
    }

    @Test
    void aTinctureIsHeldAgainstItsBook() {
        JsonNode lemon = Desk.ask("macerate --tincture lemon~tincture --plant lemon~peel --mass 500g --solvent 900ml")
                .json();
        assertThat(lemon.get("strength_vol_percent").doubleValue()).isBetween(62.0, 72.0);
        assertThat(rules(lemon)).contains("tincture");
        Desk.Run order = Desk.ask("macerate --ratio 1:5 --strength 70% --plant gentian~root --yield 1L");
        assertThat(order.number("volume_ml")).isCloseTo(1000, within(0.01));
        assertThat(order.number("solvent_ml") / order.number("plant_g")).isCloseTo(5.0, within(1e-9));
    }

    @Test
    void whatAMacerateTakesMoreIsToldAndWhatCannotBeIsRefused() {
        String peel = "macerate --plant lemon~peel --mass 500g --solvent 900ml --strength 95%";
        assertThat(rules(Desk.ask(peel + " --make-up-to 800ml").json())).contains("more-comes");
        assertThat(Desk.ask(peel + " --make-up-to 1.5L").number("made_ml")).isEqualTo(1500.0);
        assertThat(Desk.ask(peel + " --again 300ml").number("volume_ml"))
                .isGreaterThan(Desk.ask(peel).number("volume_ml") + 250);
        assertThat(rules(Desk.ask("macerate --plant raspberry --mass 1kg --solvent 500ml --strength 40%")
                        .json()))
                .contains("fruit-weak");
        assertThat(Desk.type(peel + " --to 28%").err()).contains("--make-up-to");
        assertThat(Desk.type("macerate --plant juniper~cones --mass 5g --solvent 1L --strength 50%")
                        .err())
                .contains("juniper berries, dried");
        assertThat(Desk.ask(peel + " --sample 1=40 --sample 3=70 --sample 7=79").number("little_left_from_day"))
                .isBetween(3.0, 6.0);
        assertThat(Desk.type(peel + " --sample 1=40").exit()).isEqualTo(2);
        assertThat(Desk.type("macerate --plant lemon~peel --mass 500g --strength 95%")
                        .exit())
                .isEqualTo(2);
    }

    /** 200 mL stay in 100 g of dry herbs; 1 L of 60 % vol and their 10 g of water are 59.4 % vol. */
    @Test
    void theMarcIsDrawnAgainWithASpiritOfAnotherStrengthOrWater() {
        String herbs = "macerate --plant dried~herbs --mass 100g --solvent 1L --strength 60%";
        Desk.Run once = Desk.ask(herbs);
        assertThat(once.json().has("draws")).isFalse();
        Desk.Run run = Desk.ask(herbs + " --again 300ml@40,5%");
        JsonNode first = run.json().get("draws").get(0);
        JsonNode second = run.json().get("draws").get(1);
        assertThat(first.get("poured_ml").doubleValue()).isEqualTo(1000.0);
        assertThat(first.get("comes_ml").doubleValue()).isCloseTo(once.number("volume_ml"), within(1e-9));
        assertThat(first.get("strength_vol_percent").doubleValue())
                .isCloseTo(once.number("strength_vol_percent"), within(1e-9));
        assertThat(second.get("poured_ml").doubleValue()).isCloseTo(300.0, within(1e-9));
        double ethanol = 200 * once.number("strength_vol_percent") + 300 * 40.5;
        Desk.Run mixed = Desk.ask("blend --add 200ml@" + once.number("strength_vol_percent") + "% --add 300ml@40.5%");
        assertThat(second.get("strength_vol_percent").doubleValue())
                .isCloseTo(mixed.number("strength_vol_percent"), within(1e-6))
                .isBetween(ethanol / 500, ethanol / 498);
        assertThat(second.get("comes_ml").doubleValue())
                .isCloseTo(mixed.number("final_volume_ml") - 200.0, within(1e-4));
        assertThat(run.number("strength_vol_percent"))
                .isBetween(second.get("strength_vol_percent").doubleValue(), once.number("strength_vol_percent"));
        assertThat(run.json().get("doubt").get("strength_vol_percent").doubleValue())
                .isGreaterThan(
                        once.json().get("doubt").get("strength_vol_percent").doubleValue());
        assertThat(Desk.ask(herbs + " --again 300ml").number("strength_vol_percent"))
                .isCloseTo(Desk.ask(herbs + " --again 300ml@60%").number("strength_vol_percent"), within(1e-9));
        assertThat(Desk.ask(herbs + " --again 300ml@40% --again 300ml@20%")
                        .json()
                        .get("draws"))
                .hasSize(3);
        assertThat(rules(Desk.ask(herbs + " --again 2L@0%").json())).contains("draw-weak");
        assertThat(rules(run.json())).doesNotContain("draw-weak");
        assertThat(Desk.type(herbs + " --again 300ml~40%").err()).contains("--again 300ml@40%", "@0% is water");
        assertThat(Desk.type(herbs + " --again 300ml@140%").err()).contains("--again", "140");
    }

    @Test
    void samplesSayWhatTheyLeaveOpen() {
        String herbs = "macerate --plant dried~herbs --mass 100g --solvent 1L --strength 60%";
        Desk.Run bounded =
                Desk.ask(herbs + " --sample 1=18 --sample 3=45 --sample 7=75 --sample 14,0=94 --sample 21=99");
        assertThat(rules(bounded.json())).contains("samples-level-off").doesNotContain("steeping-weak");
        JsonNode days = bounded.json().get("spread").get("little_left_from_day");
        assertThat(days.get("low").doubleValue()).isPositive().isLessThan(bounded.number("little_left_from_day"));
        assertThat(days.get("high").doubleValue()).isGreaterThan(bounded.number("little_left_from_day"));
        JsonNode reached = bounded.json().get("spread").get("reached_percent");
        assertThat(reached.get("high").doubleValue()).isBetween(bounded.number("reached_percent"), 100.0);
        assertThat(bounded.number("samples_end")).isCloseTo(100, within(2.0));
        JsonNode bent =
                Desk.ask(herbs + " --sample 1=10 --sample 2=19 --sample 3=26").json();
        assertThat(bent.get("spread").get("little_left_from_day").get("high").isNull())
                .isTrue();
        assertThat(bent.get("doubt").get("samples_end").isNull()).isTrue();
        assertThat(Desk.type(herbs + " --sample 1=10 --sample 2=19 --sample 3=26")
                        .out())
                .containsPattern("little left to gain from day .* or more");
        JsonNode line =
                Desk.ask(herbs + " --sample 1=10 --sample 2=20 --sample 3=30").json();
        assertThat(rules(line)).contains("samples-no-end");
        assertThat(line.get("little_left_from_day").isNull()).isTrue();
        assertThat(rules(Desk.ask(herbs + " --sample 1=10 --sample 2=10 --sample 3=10")
                        .json()))
                .contains("samples-stand");
        assertThat(rules(Desk.ask(herbs + " --sample 1=10 --sample 3=70 --sample 7=60")
                        .json()))
                .contains("samples-fall");
        Desk.Run falls = Desk.type(herbs + " --sample 1=50 --sample 3=40 --sample 7=20");
        assertThat(falls.exit()).isEqualTo(2);
        assertThat(falls.err()).contains("--sample", "from 50 on day 1 to 20 on day 7");
    }

    @Test
    void aPresetSaysWhatToPourAndWhatIsAskedOtherwise() {
        Desk.Run lemon = Desk.ask("macerate --tincture lemon~tincture --mass 100g");
        assertThat(lemon.number("solvent_ml")).isCloseTo(180, within(1e-9)); // USP 28: 500 g in 900 mL of 95 % vol
        assertThat(lemon.number("solvent_vol_percent")).isCloseTo(95, within(1e-9));
        assertThat(rules(lemon.json())).contains("tincture").doesNotContain("tincture-otherwise");
        Desk.Run weaker = Desk.type(
                "macerate --tincture lemon~tincture --plant orange~peel --mass 100g --strength 40% --ratio 1:3");
        assertThat(weaker.out())
                .contains("It is made of lemon peel there, not of orange peel.")
                .contains("95 % vol there, yours of 40.0 % vol")
                .containsPattern("On so much plant go 180 mL of solvent there, with you\\s+300\\s+mL");
        Desk.Run both = Desk.type("macerate --plant plum --mass 1kg --strength 60% --solvent 1L --ratio 1:3");
        assertThat(both.exit()).isEqualTo(2);
        assertThat(both.err()).contains("--ratio", "Leave one of the two out");
    }

    /** 200 g/L are 1:5, 125 g/L 1:8. */
    @Test
    void theStrengthOfAnExtractIsReadAsThatOfAMacerate() {
        double byRatio =
                Desk.ask("extract --dose 12ml/L --ratio 1:5 --mine 1:8").number("times");
        assertThat(Desk.ask("extract --dose 12ml/L --ratio 200g/L --mine 125g/L")
                        .number("times"))
                .isCloseTo(byRatio, within(1e-12));
        assertThat(Desk.ask("extract --dose 12ml/L --ratio 1:5 --mine 125g/L").number("times"))
                .isCloseTo(byRatio, within(1e-12));
        assertThat(Desk.type("extract --dose 12ml/L --ratio 200g --mine 1:8").err())
                .contains("--ratio", "200 g/L");
    }

    @Test
    void whatNobodyMeansIsRefusedWithWhatToDo() {
        String plum = "macerate --plant plum --solvent 1L --strength 60% --mass ";
        assertThat(Desk.type(plum + "1000000kg").err()).contains("--mass", "in no vat");
        assertThat(Desk.type("macerate --plant plum --ratio 1:5 --strength 60% --yield 99999999999ml")
                        .err())
                .contains("--yield", "in no vat");
        assertThat(Desk.type(plum + "1kg --make-up-to 0L").err()).contains("--make-up-to", "0 mL are nothing");
        assertThat(rules(Desk.ask("macerate --plant dried~herbs --mass 100g --solvent 1L --strength 5%")
                        .json()))
                .contains("draw-weak");
        assertThat(Desk.type("combine --macerate 300ml@62%@1:5 --ratio 1:8 --to 0%")
                        .err())
                .contains("--to", "down to 0 % vol");
        assertThat(Desk.type("combine --macerate 300ml@62%@1:5 --ratio 1:2 --to 58%")
                        .err())
                .containsPattern("the\\s+strongest\\s+has\\s+200\\s+g/L")
                .contains("Ask for 1:5");
        assertThat(Desk.type("extract --dose 12ml/L --ratio 1:5 --mine 1:8 --strength 60%")
                        .err())
                .contains("--my-strength", "Give both");
        assertThat(Desk.type("extract --dose 12ml/L --content 12% --my-content 17mg")
                        .err())
                .contains("--my-content", "same unit for both");
        assertThat(Desk.type("macerate --plant plum --mass 1kg --ratio 20% --strength 60%")
                        .err())
                .containsOnlyOnce("Stop:");
        assertThat(Desk.ask("macerate --plant plum --mass 1~Kilogramm --solvent 1L --strength 60%")
                        .number("plant_g_per_l"))
                .isEqualTo(Desk.ask("macerate --plant plum --mass 1000~Gramm --solvent 1L --strength 60%")
                        .number("plant_g_per_l"));
        assertThat(Desk.type("materials --name lemon --kind plant").err()).contains("--kind", "of another kind");
        assertThat(Desk.type("still --charge 10L --strength 0% --to 40%").err()).contains("such as 30%");
        assertThat(Desk.type("match --want bergamot=1g").err()).contains("--have", "no shelf brings one");
        assertThat(Desk.type("match --have lemon").err()).contains("--want", "bergamot=100mg");
    }

    @Test
    void leftoversSayWhatToDoWhereNoRecipeIsNamedAndSpeakOfTheirOwnOptions() {
        String shelf = "leftovers --shelf ../examples/shelves/half-empty.csv ";
        assertThat(Desk.type(shelf).out()).contains("No recipe is named. Add recipe files");
        assertThat(Desk.type(shelf + "--use-up nothing --most 0L").err())
                .contains("Stop: --use-up: ", "Stop: --most: ")
                .doesNotContain("extracts");
    }

    @Test
    void aTinctureToOrderIsAskedForInOneWay() {
        assertThat(Desk.ask("macerate --tincture lemon --yield 1L").number("plant_g"))
                .isEqualTo(Desk.ask("macerate --tincture lemon~tincture --yield 1L")
                        .number("plant_g"));
        Desk.Run ordered = Desk.type("macerate --tincture lemon~tincture --plant lemon~peel --yield 1L");
        assertThat(ordered.out())
                .contains("lemon tincture: 1000 mL come already")
                .doesNotContain("make-up-to");
        Desk.Run unknown = Desk.type("macerate --tincture Enziantinktur --yield 1L");
        assertThat(unknown.err())
                .containsOnlyOnce("Stop:")
                .contains("--tincture")
                .containsPattern("Near it are: compound gentian\\s+tincture");
        assertThat(Desk.type("macerate --tincture moon~dust").err())
                .containsOnlyOnce("Stop:")
                .contains("Known are:");
        assertThat(Desk.type("macerate --tincture compound~gentian~tincture --yield 1L")
                        .err())
                .containsOnlyOnce("Stop:")
                .contains("several plants", "cardamom");
        assertThat(Desk.type("macerate --tincture lemon --yield 1L --mass 500g").err())
                .contains("--yield", "so does the mass or the solvent");
        assertThat(Desk.type("macerate --plant plum --yield 1L --strength 60%").err())
                .containsOnlyOnce("Stop:")
                .contains("--ratio 1:5 --yield 1L");
    }

    @Test
    void whatTheMakerKnowsIsNamedAsOwnAndGoesToItsPlant() {
        String two = "macerate --plant plum --mass 1kg --plant gentian~root --mass 10g --solvent 1L --strength 60%";
        Desk.Run run = Desk.type(two + " --water plum=80%");
        assertThat(run.out())
                .contains("Its water is your own: 80 %", "gentian root, dried: Its water is recalled, not read: 10 %");
        Desk.Run whose = Desk.type(two + " --water 80%");
        assertThat(whose.exit()).isEqualTo(2);
        assertThat(whose.err()).contains("--water", "not said of which", "plum=80%");
        assertThat(Desk.type(two + " --water peach=80%").err()).contains("none of your plants");
        Desk.Run unknown = Desk.type("macerate --plant yuzu --mass 1kg --solvent 1L --strength 60%");
        assertThat(unknown.err()).contains("--water yuzu=80%").containsPattern("--own-sugar\\s+yuzu=9%");
        Desk.Run yuzu = Desk.ask("macerate --plant yuzu --mass 1kg --solvent 1L --strength 60% --water 88%");
        assertThat(rules(yuzu.json())).contains("plant-of-no-table", "plant-own", "plant-sugar-unknown");
        assertThat(yuzu.json().get("doubt").get("own_sugar_g_per_l").doubleValue())
                .isCloseTo(yuzu.number("own_sugar_g_per_l"), within(1e-9));
        assertThat(Desk.type("macerate --plant yuzu --mass 1kg --solvent 1L --strength 60% --water 88% --sort moss")
                        .err())
                .contains("fresh-peel");
    }

    @Test
    void plantsThatHarmAreStoppedOrMindedHereToo() {
        String plant = "macerate --mass 20g --solvent 1L --strength 60% --water 10% --plant ";
        assertThat(Desk.type(plant + "tonka~bean").out()).contains("coumarin", "Stop:");
        assertThat(Desk.type(plant + "dried~woodruff").out()).contains("coumarin", "lily of the valley");
        Desk.Run foxglove = Desk.type(plant + "foxglove~leaves");
        assertThat(foxglove.out()).contains("Stop: foxglove leaves");
        assertThat(foxglove.exit()).isEqualTo(1);
    }

    @Test
    void aMatchSaysWhichSortItTookWhatMustNotBeDrunkAndThatNothingComesNear() {
        Desk.Run lime = Desk.ask("match --want lime=50mg --have lemon");
        assertThat(rules(lime.json())).contains("oil-sort").doesNotContain("nothing-near");
        assertThat(Desk.type("match --want lime=50mg --have lemon").out())
                .containsPattern("lime: It is taken as lime distilled; there is also: lime\\s+expressed");
        assertThat(rules(Desk.ask("match --want lime~distilled=50mg --have lemon")
                        .json()))
                .doesNotContain("oil-sort");
        Desk.Run banned = Desk.type("match --want pennyroyal=50mg --have lemon");
        assertThat(banned.out())
                .contains("The oil that is wanted must not be drunk", "Nothing of what is there comes near");
        assertThat(banned.out().indexOf("comes near")).isLessThan(banned.out().indexOf("off by  "));
        assertThat(Desk.type("match --want bergamot=50mg --have lemon --have lavender")
                        .out())
                .contains("by the mass of each constituent")
                .doesNotContain("must not be drunk", "comes near:");
        assertThat(Desk.type("match --want bergamot=50mg --have lemon --by smell")
                        .out())
                .contains("by smell: each constituent over its odour threshold", "profile of smell");
    }

    @Test
    void whatCannotBeReachedSaysByHowMuchAndWhatWould() {
        Desk.Run combine = Desk.type("combine --macerate 300ml@62%@1:5 --ratio 1:8 --to 90% --with 80%");
        assertThat(combine.exit()).isEqualTo(2);
        assertThat(combine.err())
                .contains("--to", "90.0 % vol cannot be reached", "% vol at most, or fortify with stronger spirit");
        String most = combine.err().replaceAll("(?s).*Ask for ([0-9.]+) % vol.*", "$1");
        assertThat(Desk.type("combine --macerate 300ml@62%@1:5 --ratio 1:8 --with 80% --to " + most + "%")
                        .exit())
                .isZero();
        String plums = "macerate --plant plum --mass 1kg --solvent 1L --strength 60% --make-up-to 3L --with 80% --to ";
        assertThat(Desk.type(plums + "90%").err()).contains("--to", "cannot be reached", "stronger spirit");
        assertThat(Desk.type("still --charge 10L --strength 30% --to 0%").err())
                .contains("no alcohol is left in the pot", "more than 0 % vol");
        assertThat(Desk.type("still --charge 10L --strength 30% --to-average 90%")
                        .err())
                .contains("not at 90.0 % vol", "stronger liquid");
    }

    /** The rates of the table are in doubt by a factor, and no day lies before the first. */
    @Test
    void noDayIsBelowZero() {
        Desk.Run run = Desk.ask("macerate --plant dried~herbs --mass 100g --solvent 1L --strength 60%");
        JsonNode taste = run.json().get("spread").get("taste_from_day");
        assertThat(taste.get("low").doubleValue()).isCloseTo(run.number("taste_from_day") / 3, within(1e-9));
        assertThat(taste.get("high").doubleValue()).isCloseTo(run.number("taste_from_day") * 3, within(1e-9));
    }

    @Test
    void aStillRunsOnPaperWithItsNotice() {
        JsonNode answer = Desk.ask("still --charge 10L --strength 30% --to 40%").json();
        double ethanol = answer.get("distillate_ml").doubleValue()
                * answer.get("distillate_strength_vol_percent").doubleValue();
        assertThat(ethanol)
                .isCloseTo(3000.0 * answer.get("ethanol_recovered_percent").doubleValue(), within(300.0));
        assertThat(rules(answer)).contains("distilling-law", "distilling-hazards", "methanol");
        assertThat(answer.get("run").size()).isEqualTo(10);
        assertThat(Desk.type("still --charge 10L --strength 30%").exit()).isEqualTo(2);
        assertThat(Desk.type("still --charge 10L --strength 30% --to 90%").err())
                .contains("first drop");
    }

    @Test
    void theNotesOfARecipeComeWithTheirSpread() throws IOException {
        JsonNode answer = Desk.ask("notes ../examples/quince-and-bay.yaml").json();
        assertThat(Desk.type("notes ../examples/quince-and-bay.yaml").out())
                .containsPattern("about\\s+400\\s+times\\s+its\\s+threshold,\\s+somewhere\\s+from\\s+20\\s+to\\s+8000")
                .doesNotContain("417");
        JsonNode first = answer.get("constituents").get(0);
        JsonNode milligrams = first.get("mg_per_l");
        assertThat(milligrams.get("min").doubleValue())
                .isLessThanOrEqualTo(milligrams.get("typical").doubleValue());
        assertThat(first.get("odour_activity").doubleValue()).isGreaterThan(1.0);
        assertThat(rules(answer)).contains("threshold-in-water");
        Path lot = Files.writeString(folder.resolve("lot.csv"), "constituent,percent\ncarvone,60\n");
        JsonNode own = Desk.ask("notes ../examples/quince-and-bay.yaml --analysis caraway~oil=" + lot)
                .json();
        assertThat(own.get("constituents").toString())
                .isNotEqualTo(answer.get("constituents").toString());
        Path wrong = Files.writeString(folder.resolve("wrong.csv"), "moon dust,60\n");
        Desk.Run refused = Desk.type("notes ../examples/quince-and-bay.yaml --analysis caraway~oil=" + wrong);
        assertThat(refused.exit()).isEqualTo(2);
        assertThat(refused.err()).contains("line 1");
    }

    /** Juniper oil is mostly terpenes, which cloud; a lot that is all terpinen-4-ol, an alcohol, stays dissolved. */
    @Test
    void theLotsOfAStudioAreReadByAllThatTellsOfOils() throws IOException {
        DataFolder data = new DataFolder(folder.resolve("studio"));
        try (Store store = Store.open(data)) {
            store.lots()
                    .add(
                            List.of(Bottles.read(
                                    "name",
                                    "juniper oil",
                                    "kind",
                                    "essential oil",
                                    "left",
                                    "40 ml",
                                    "analysis",
                                    "terpinen-4-ol;100")),
                            "r1");
        }
        String recipe = " " + Files.writeString(folder.resolve("juniper.yaml"), """
                stillroom: 1
                title: Juniper
                target: {volume: 1 L, strength: 40 %, sugar: 200 g/L}
                ingredients: [{name: juniper oil, kind: essential oil}]
                lines:
                  - {use: juniper oil, dose: 1 g/L}
                  - {use: spirit 96 %, amount: free}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: free}
                """);
        String lots = " --data " + data.path();
        JsonNode notes = Desk.ask("notes" + recipe + lots).json();
        assertThat(notes.get("analysed").get(0).stringValue()).isEqualTo("juniper oil");
        assertThat(notes.get("constituents")).hasSize(1);
        assertThat(Desk.ask("notes" + recipe).json().get("analysed")).isEmpty();
        assertThat(Desk.type("notes" + recipe + lots).out()).contains("By the analysis of the lot: juniper oil.");
        for (String asked : List.of("plan" + recipe, "sheet" + recipe, "clarity --recipe" + recipe)) {
            assertThat(Desk.type(asked + lots).out())
                    .as(asked)
                    .isNotEqualTo(Desk.type(asked).out());
            assertThat(Desk.type(asked + " --analysis moon~oil=" + folder.resolve("none.csv"))
                            .exit())
                    .as(asked)
                    .isEqualTo(3);
        }
        assertThat(Desk.type("plan" + recipe).out()).contains("cloud");
        assertThat(Desk.type("plan" + recipe + lots).out()).doesNotContain("cloud");
    }

    @Test
    void theNearestOfTheShelfIsFound() {
        JsonNode answer =
                Desk.ask("match --want lemon=100mg --have lemon --have clove").json();
        assertThat(answer.get("off_percent").doubleValue()).isCloseTo(0.0, within(1e-6));
        assertThat(answer.get("take").get(0).get("mg").doubleValue()).isCloseTo(100.0, within(1e-6));
        assertThat(rules(Desk.ask("match --want clove=100mg --have lemon --by smell")
                        .json()))
                .contains("cannot-be-matched");
        assertThat(Desk.type("match --want moon~dust=1g --have lemon").exit()).isEqualTo(2);
        assertThat(Desk.type("match --have lemon").exit()).isEqualTo(2);
    }

    @Test
    void whatIsLeftOfATableIsRankedAndUsedUp() throws IOException {
        String shelf = "leftovers --shelf ../examples/shelves/half-empty.csv";
        JsonNode answer = Desk.ask(shelf + " ../examples/quince-and-bay.yaml ../examples/caraway-brought-down.yaml")
                .json();
        assertThat(answer.get("left").size()).isEqualTo(5);
        JsonNode best = answer.get("could_make").get(0);
        assertThat(best.get("title").stringValue()).isEqualTo("Caraway, brought down");
        assertThat(best.get("bottles_emptied").doubleValue()).isCloseTo(1.0, within(1e-6));
        JsonNode used =
                Desk.ask(shelf + " --use-up caraway~essence=8ml/L --most 6L").json();
        assertThat(used.get("makes_ml").doubleValue()).isCloseTo(2750, within(1e-6)); // 22 mL at 8 mL/L
        assertThat(used.get("all_used").booleanValue()).isTrue();
        assertThat(Desk.type(shelf + " --use-up moon~dust").exit()).isEqualTo(2);
        assertThat(Desk.type(shelf + " --most soon").exit()).isEqualTo(2);
        assertThat(Desk.type("leftovers").err()).contains("--shelf");
        assertThat(Desk.type("leftovers --shelf nowhere.csv").exit()).isEqualTo(3);
        assertThat(Desk.type("leftovers --data " + folder).exit()).isEqualTo(3);
        Path wrong = Files.writeString(folder.resolve("wrong.csv"), "name;kind;left\nbay;tincture;much\n");
        Desk.Run refused = Desk.type("leftovers --shelf " + wrong);
        assertThat(refused.exit()).isEqualTo(2);
        assertThat(refused.err()).contains("line 2");
    }

    @Test
    void whatIsLeftInAStudioIsReadFromItsFolder() {
        DataFolder data = new DataFolder(folder.resolve("studio"));
        try (Store store = Store.open(data)) {
            store.lots()
                    .add(
                            List.of(Bottles.read(
                                    "name", "bay tincture", "kind", "tincture", "strength", "70 %", "left", "40 ml")),
                            "r1");
            assertThat(Desk.type("leftovers --data " + data.path()).exit()).isZero(); // beside the open studio
        }
        assertThat(Desk.ask("leftovers --data " + data.path())
                        .json()
                        .get("left")
                        .size())
                .isEqualTo(1);
    }

    /** Source: thujone below 10 mg/kg, 21 CFR 172.510 and Regulation (EC) 1334/2008, Annex III part B. */
    @Test
    void theMaximaOfLawHoldAMatchBackAndWhatIsNotForDrinkingIsLeftOut() {
        JsonNode answer = Desk.ask("match --want sage=200mg --have sage --have rosemary --have wintergreen")
                .json();
        JsonNode thujone = answer.get("limits").get(0);
        assertThat(thujone.get("name").stringValue()).startsWith("thujone");
        assertThat(thujone.get("comes_mg_per_kg").doubleValue())
                .isCloseTo(10.0, within(1e-4))
                .isLessThan(10.0);
        assertThat(rules(answer)).contains("held-back", "not-for-drinking");
        JsonNode more = Desk.ask("match --want sage=200mg --have sage --have rosemary --for 50L")
                .json();
        assertThat(rules(more)).doesNotContain("held-back");
        assertThat(more.get("off_percent").doubleValue()).isCloseTo(0.0, within(1e-6));
        assertThat(Desk.type("match --want sage=200mg --have sage --strength 99%")
                        .exit())
                .isEqualTo(2);
        assertThat(Desk.type("match --want sage=200mg --have sage --for 0L").exit())
                .isEqualTo(2);
    }

    @Test
    void theOilsOfAShelfAreMatchedByTheirAnalysesAndByWhatIsLeft() throws IOException {
        String shelf = """
                name;kind;left;analysis
                lemon oil;essential oil;0.01 g;
                lavender oil;essential oil;5 ml;"linalool,90"
                oil of my aunt;essential oil;5 ml;
                juniper;salt;50 g;
                """;
        Path file = Files.writeString(folder.resolve("shelf.csv"), shelf);
        JsonNode answer = Desk.ask("match --want lavender=100mg --want lemon=100mg --shelf " + file)
                .json();
        assertThat(rules(answer)).contains("not-in-table");
        answer.get("take").forEach(taken -> {
            if (taken.get("name").stringValue().equals("lemon oil")) {
                assertThat(taken.get("mg").doubleValue()).isCloseTo(10.0, within(1e-6)); // all that is left
            }
        });
        assertThat(answer.get("take").toString()).contains("lavender oil").doesNotContain("juniper");
        double acetate = 0;
        for (JsonNode each : answer.get("constituents")) {
            acetate += each.get("name").stringValue().equals("linalyl acetate")
                    ? each.get("comes_mg").doubleValue()
                    : 0;
        }
        assertThat(acetate).isZero(); // the analysis of the lot names none
    }

    @Test
    void theDoseOfAnotherExtractFollowsItsStrength() {
        Desk.Run ratio = Desk.ask("extract --dose 12ml/L --ratio 1:5 --mine 1:8 --strength 60% --my-strength 60%");
        assertThat(ratio.number("times")).isCloseTo(0.625, within(1e-9));
        assertThat(ratio.number("dose_ml_per_l")).isCloseTo(19.2, within(1e-9));
        assertThat(ratio.number("strength_change_vol_percent")).isCloseTo(7.2 * 60 / 1000, within(1e-6));
        Desk.Run content = Desk.ask("extract --dose 40~drops --content 1.8 --my-content 3.6");
        assertThat(content.number("dose_drops")).isCloseTo(20, within(1e-9));
        Desk.Run taste = Desk.ask("extract --dose 5g --equal 10ml=8ml --equal 10ml=8ml");
        assertThat(taste.number("dose_g")).isCloseTo(4, within(1e-9));
        assertThat(taste.json().get("doubt").get("dose_g").doubleValue()).isGreaterThan(0.5);
        assertThat(rules(taste.json())).contains("by-comparison");
        assertThat(rules(
                        Desk.ask("extract --dose 5g --content 1 --my-content 9").json()))
                .contains("another-extract");
        for (String wrong : List.of(
                "extract --dose 5g",
                "extract --dose 0g --ratio 1:5 --mine 1:8",
                "extract --dose 5g --ratio 1:5",
                "extract --dose 5g --ratio 1:5 --mine 1:8 --content 1 --my-content 2",
                "extract --dose 5g --content 0 --my-content 2",
                "extract --dose 5g --equal 10ml",
                "extract --dose 5g --equal 10ml=8g")) {
            assertThat(Desk.type(wrong).exit()).as(wrong).isEqualTo(2);
        }
    }

    /** 30 °C warmer is 2.85 times as fast by 27.5 kJ/mol; 21 days of herbs are then 7.4, 177 hours. */
    @Test
    void aWarmBathIsToldInHoursWithThePressureInItsJar() {
        String herbs = "macerate --plant dried~herbs --mass 20g --solvent 400ml --strength 60% ";
        Desk.Run bath = Desk.ask(herbs + "--way bath");
        assertThat(bath.number("little_left_from_hour")).isCloseTo(24.0 * 20.95 / 2.85, within(3.0));
        assertThat(bath.number("pressure_bar")).isBetween(0.3, 0.8);
        assertThat(rules(bath.json())).contains("sealed-warm", "steeping-weak");
        assertThat(Desk.type(herbs + "--way bath --temperature 75C").exit()).isEqualTo(2);
        Desk.Run siphon = Desk.ask(herbs + "--way siphon");
        assertThat(siphon.json().get("taste_from_day").isNull()).isTrue();
        assertThat(siphon.number("siphon_fillings")).isEqualTo(1.0);
        assertThat(siphon.number("gas_charges")).isEqualTo(2.0);
        assertThat(rules(siphon.json())).contains("siphon").doesNotContain("steeping-weak");
        assertThat(Desk.type(herbs + "--way oven").err()).contains("jar, bath or siphon");
    }

    @Test
    void woodIsAskedByTheLitreAndACaskByItsSize() {
        String chips = "macerate --plant oak~chips --solvent 1L --strength 50% --mass ";
        assertThat(rules(Desk.ask(chips + "3g").json())).contains("wood-chips");
        assertThat(Desk.type(chips + "3g").out()).contains("Note: mass: 3.0 g/L of chips");
        assertThat(Desk.type(chips + "30g").out()).contains("Caution: mass: 30.0 g/L of chips", "no source");
        Desk.Run cask = Desk.ask("macerate --cask 5L");
        assertThat(cask.number("surface_cm2_per_l")).isCloseTo(326.0, within(3.0));
        assertThat(cask.number("as_a_year_days")).isCloseTo(365.0 / Math.cbrt(45.0), within(0.5));
        assertThat(rules(cask.json())).containsExactly("cask-practice");
        assertThat(Desk.type("macerate --cask 0ml").exit()).isEqualTo(2);
        assertThat(Desk.type("macerate --cask 5L --plant oak~chips --mass 1g").exit())
                .isEqualTo(2);
    }

    @Test
    void maceratesAreBroughtToOneStrength() {
        Desk.Run run = Desk.ask("combine --macerate 300ml@62%@1:5 --macerate 500ml@55%@1:10 --ratio 1:8 --to 58%");
        assertThat(run.number("volume_ml")).isCloseTo(880, within(1e-6));
        assertThat(run.number("strength_vol_percent")).isCloseTo(58, within(1e-6));
        assertThat(run.json().get("take").get(1).get("left_ml").doubleValue()).isCloseTo(0.0, within(1e-9));
        // half-widths: 3 % vol of the macerates (own estimate), 0.3 % vol of the spirit (Regulation (EU) No 1169/2011,
        // Annex XII)
        double ethanol = Math.sqrt(9.0 * 9.0 + 15.0 * 15.0);
        JsonNode doubt = run.json().get("doubt");
        assertThat(doubt.get("strength_vol_percent").doubleValue())
                .isCloseTo(100 * ethanol / run.number("volume_ml"), within(0.02));
        assertThat(doubt.get("spirit_ml").doubleValue()).isCloseTo(ethanol / 0.96, within(0.05));
        assertThat(doubt.get("volume_ml").isNull()).isTrue();
        assertThat(Desk.type("combine --macerate 300ml@62%@1:5 --macerate 500ml@55%@1:10 --ratio 1:8 --to 58%")
                        .out())
                .contains("not told", "Doubt is that of readings, labels and formulas together")
                .doesNotContain("none");
        assertThat(Desk.type("extract --dose 12ml/L --ratio 1:5 --mine 1:8 --strength 60% --my-strength 70%")
                        .out())
                .containsPattern("take of yours +19.20 +mL/L +not told")
                .doesNotContain("none");
        assertThat(rules(Desk.ask("combine --macerate 300ml@62%@1:5 --macerate 900ml@55%@1:10 --ratio 1:8 --to 58%")
                        .json()))
                .contains("not-all-combined");
        assertThat(Desk.type("combine --macerate 300ml@62% --ratio 1:8 --to 58%")
                        .exit())
                .isEqualTo(2);
        assertThat(Desk.type("combine --macerate 300ml@62%@1:9 --ratio 1:8 --to 58%")
                        .exit())
                .isEqualTo(2);
        assertThat(Desk.type("combine --macerate 0ml@62%@1:5 --ratio 1:8 --to 58%")
                        .exit())
                .isEqualTo(2);
    }

    @Test
    void macerationsAreRepeatedAndPercolated() {
        String root = "macerate --plant dried~roots --mass 100g --solvent 500ml --strength 70%";
        double once = Desk.ask(root).number("yield_percent");
        double again = Desk.ask(root + " --again 300ml").number("yield_percent");
        double halves = Desk.ask(root + " --again 150ml --again 150ml").number("yield_percent");
        Desk.Run run = Desk.ask(root + " --percolate 300ml");
        assertThat(List.of(once, again, halves, run.number("yield_percent"))).isSorted();
        assertThat(run.number("volume_ml")).isCloseTo(500 + 300 - 150, within(15.0)); // 10 g of water come along
        assertThat(Desk.type(root + " --again 300ml --percolate 300ml").exit()).isEqualTo(2);
        assertThat(Desk.type(root + " --again 0ml").exit()).isEqualTo(2);
    }

    /** 0.4 g/L in the middle, doubling: 0.1 to 1.6 g/L; 50 mL of the strongest hold 80 mg. */
    @Test
    void dosesForATrialGoByRatios() {
        assertThat(Desk.type("ladder --dose 0.4g/L").out())
                .containsPattern("glass 1 +0\\.100 +5\\.00\n")
                .containsPattern("glass 5 +1\\.60 +80\\.0\n");
        assertThat(Desk.type("ladder --dose 12ul/L").out()).containsPattern("glass 1 +0\\.00300 +0\\.150\n");
        JsonNode ladder = Desk.ask("ladder --dose 0.4g/L").json().get("ladder");
        assertThat(ladder.size()).isEqualTo(5);
        assertThat(ladder.get(0).get("g_per_l").doubleValue()).isCloseTo(0.1, within(1e-12));
        assertThat(ladder.get(2).get("g_per_l").doubleValue()).isCloseTo(0.4, within(1e-12));
        assertThat(ladder.get(4).get("mg").doubleValue()).isCloseTo(80, within(1e-9));
        assertThat(rules(Desk.ask("ladder --dose 24drops/L").json())).containsExactly("ladder-of-drops");
        assertThat(rules(Desk.ask("ladder --dose 80drops/L --rungs 3").json())).isEmpty();
        assertThat(Desk.type("ladder --dose 0.4g/L --rungs 4").err()).contains("4 is not an odd number");
        assertThat(Desk.type("ladder --dose 0.4g/L --times 1").err()).contains("above 1");
        assertThat(Desk.type("ladder --dose 0g/L").err()).contains("a dose of nothing");
    }

    @Test
    void spiritIsNotWarmedWithoutAWord() {
        String peel = "macerate --plant dried~orange~peel --mass 50g --solvent 500ml --strength 95% --temperature ";
        assertThat(rules(Desk.ask(peel + "25C").json())).doesNotContain("spirit-warm");
        assertThat(rules(Desk.ask(peel + "45C").json())).contains("spirit-warm");
        Desk.Run boiling = Desk.type(peel + "100C");
        assertThat(boiling.exit()).isEqualTo(2);
        assertThat(boiling.err()).contains("boils at 78.");
        assertThat(Desk.type(peel + "78C").exit()).isZero();
        assertThat(Desk.type(peel + "79C").exit()).isEqualTo(2);
    }

    @Test
    void aBathAtTheRoomsTemperatureStandsUnderNoPressure() {
        String herbs =
                "macerate --plant dried~herbs --mass 20g --solvent 400ml --strength 60% --way bath --temperature ";
        assertThat(rules(Desk.ask(herbs + "20C").json())).doesNotContain("sealed-warm");
    }

    @Test
    void cyanideOfKernelsIsToldBeforeTheirWaterIsAskedFor() {
        String err = Desk.type("macerate --plant apricot~kernels --mass 100g --solvent 500ml --strength 60%")
                .err()
                .replaceAll("\\s+", " ");
        assertThat(err).contains("hydrogen cyanide");
        assertThat(err.indexOf("hydrogen cyanide")).isLessThan(err.indexOf("is not in the table of plants"));
    }

    /** 10 L of 30 % vol: 3 L of ethanol, 0.78924 g/mL. */
    @Test
    void aStillTellsTheEthanolInItsCharge() {
        Desk.Run run = Desk.ask("still --charge 10L --strength 30% --to 40%");
        assertThat(run.number("ethanol_charged_ml")).isCloseTo(3000.0, within(0.1));
        assertThat(run.number("ethanol_charged_g")).isCloseTo(2367.7, within(0.2));
    }

    /** 100 mg/L of sage oil: up to 51.5 mg of thujone, where 10 mg/kg are allowed. */
    @Test
    void aDoseOfAnOilIsHeldToTheLimitsOfLaw() {
        Desk.Run strong = Desk.ask("drops --liquid sage~oil --dose 100mg/L --batch 1L");
        assertThat(rules(strong.json())).contains("eu-maximum", "us-limit");
        Desk.Run weak = Desk.ask("drops --liquid sage~oil --dose 10mg/L --batch 1L");
        assertThat(rules(weak.json())).doesNotContain("eu-maximum", "us-limit");
    }

    @Test
    void anEssenceIsHeldToTheLimitsOfLaw() throws IOException {
        Path sage = Files.writeString(folder.resolve("sage.yml"), """
                stillroom essence: 1
                title: Sage
                oils:
                  - {oil: sage, parts: 1, drop: 20 mg}
                together: 0.1 g/L
                carrier: 96 %
                dose: 5 ml/L
                measure: syringe of 5 mL
                marks: 0.1 ml
                batch: 1 L
                """);
        assertThat(Desk.type("essence " + sage).out()).contains("Thujone", "the limit is at most 10 mg/kg");
    }
}
