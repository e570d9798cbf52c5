package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The safety command as it is typed, and what a plan tells of it. */
class SafetyCommandTest {
    @TempDir
    private Path folder;

    private String recipe(String oil, String dose) throws IOException {
        Path file = folder.resolve("recipe.yaml");
        Files.writeString(file, """
                stillroom: 1
                title: Meadow cup
                target: {volume: 1 L, strength: 30 %, sugar: 200 g/L}
                ingredients:
                  - {name: OIL, kind: essential oil}
                lines:
                  - {use: OIL, dose: DOSE}
                  - {use: spirit 96 %, amount: free}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: free}
                """.replace("OIL", oil).replace("DOSE", dose));
        return file.toString();
    }

    private static JsonNode substance(JsonNode json, String name) {
        for (JsonNode each : json.get("substances")) {
            if (each.get("name").stringValue().equals(name)) {
                return each;
            }
        }
        throw new AssertionError("no " + name);
    }

    private static List<String> rules(JsonNode json, String severity) {
        List<String> rules = new ArrayList<>();
        for (JsonNode each : json.get("findings")) {
            if (each.get("severity").stringValue().equals(severity)) {
                rules.add(each.get("rule").stringValue());
            }
        }
        return rules;
    }

    private static JsonNode json(Desk.Run run) {
        return new JsonMapper().readTree(run.out());
    }

    /** 0.5 g/L of peppermint oil: pulegone at most 4 %, menthofuran 1 to 9 %; 30 mL hold 0.03 times the milligrams per litre. */
    @Test
    void substancesComePerKilogramAndPerServing() throws IOException {
        JsonNode json = Desk.ask(
                        "safety " + recipe("peppermint oil", "0.5 g/L") + " --serving 30ml --servings 2 --place EU")
                .json();
        JsonNode menthofuran = substance(json, "menthofuran");
        double perLitre = menthofuran.get("mg_per_l").get("max").doubleValue();
        assertThat(perLitre).isCloseTo(45.0, within(0.01));
        assertThat(menthofuran.get("mg_per_l").get("min").doubleValue()).isCloseTo(5.0, within(0.01));
        assertThat(menthofuran.get("mg_per_l").get("typical").doubleValue()).isCloseTo(25.0, within(0.01));
        assertThat(menthofuran.get("mg_per_serving").get("max").doubleValue()).isCloseTo(perLitre * 0.03, within(1e-9));
        assertThat(menthofuran.get("mg_per_day").get("max").doubleValue()).isCloseTo(perLitre * 0.06, within(1e-9));
        assertThat(menthofuran.get("mg_per_kg").get("max").doubleValue()).isLessThan(perLitre);
        assertThat(json.get("standing").stringValue()).contains("not legal or medical advice");
    }

    @Test
    void aBlockedOilEndsWithExitOneAndStopsThePlanToo() throws IOException {
        String file = recipe("pennyroyal oil", "0.01 g/L");
        Desk.Run run = Desk.type("safety " + file + " --json");
        assertThat(run.exit()).isEqualTo(1);
        assertThat(rules(json(run), "stop")).contains("not-for-drinking");
        Desk.Run plan = Desk.type("plan " + file + " --json");
        assertThat(plan.exit()).isEqualTo(1);
        assertThat(rules(json(plan), "stop")).contains("not-for-drinking");
        assertThat(Desk.type("sheet " + file).exit()).isEqualTo(1);
        assertThat(Desk.type("plan " + recipe("caraway oil", "0.05 g/L")).exit())
                .isZero();
        assertThat(Desk.type("sheet " + recipe("caraway oil", "0.05 g/L")).exit())
                .isZero();
    }

    /** A limit that only one of the laws has ends with exit 1 too, and each limit says whose it is. */
    @Test
    void whatALawForbidsEndsWithExitOneAndSaysWhoseLawItIs() throws IOException {
        String file = recipe("sage oil", "0.03 g/L");
        Desk.Run plan = Desk.type("plan " + file);
        assertThat(plan.exit()).isEqualTo(1);
        assertThat(plan.out()).contains("By: Law, US", "By: Law, EU");
        assertThat(Desk.type("safety " + file + " --servings 20").out()).contains("By: Guidance, no law");
    }

    @Test
    void placesAreAskedApart() throws IOException {
        String file = recipe("sage oil", "0.02 g/L");
        for (JsonNode finding :
                json(Desk.type("safety " + file + " --place US --json")).get("findings")) {
            assertThat(finding.get("jurisdiction").stringValue()).isNotEqualTo("EU");
        }
        for (JsonNode finding :
                json(Desk.type("safety " + file + " --place EU --json")).get("findings")) {
            assertThat(finding.get("jurisdiction").stringValue()).isNotEqualTo("US");
        }
    }

    @Test
    void whatIsNotKnownIsNull() throws IOException {
        JsonNode lime =
                substance(Desk.ask("safety " + recipe("lime oil", "0.2 g/L")).json(), "furocoumarins");
        assertThat(lime.get("known").booleanValue()).isFalse();
        assertThat(lime.get("mg_per_kg").get("max").isNull()).isTrue();
        assertThat(lime.get("not_known_from").get(0).stringValue()).contains("lime oil");
    }

    @Test
    void everythingWrongComesBackAtOnce() throws IOException {
        Desk.Run run = Desk.type(
                "safety " + recipe("lime oil", "0.2 g/L") + " --serving 30 --servings two --body 0kg --place Mars");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("--serving", "--servings", "--body", "--place");
        assertThat(Desk.type("safety " + recipe("lime oil", "0.2 g/L") + " --body 700kg")
                        .err())
                .contains("700 kg", "from 10 to 300 kg");
    }

    @Test
    void aPlainPlanIsQuiet() throws IOException {
        JsonNode json = Desk.ask("plan " + recipe("caraway oil", "0.05 g/L")).json();
        for (JsonNode finding : json.get("findings")) {
            assertThat(finding.get("rule").stringValue()).doesNotContain("not-known", "intake", "eu-", "us-");
        }
    }

    @Test
    void thePageSaysOnceThatItIsNoAdvice() throws IOException {
        String page = Desk.type("safety " + recipe("lemon oil", "0.5 g/L")).out();
        assertThat(page.split("not legal or medical advice", -1)).hasSize(2);
    }

    @Test
    void whatStopsItStandsBeforeWhatIsInIt() throws IOException {
        assertThat(Desk.type("safety " + recipe("wormwood oil", "0.1 g/L")).out())
                .startsWith("Stops\nStop: ")
                .contains("\n\nWhat is in it\n");
    }

    @Test
    void houseRulesFromAFileHoldSafetyPlanSheetAndLabel() throws IOException {
        String recipe = recipe("sage oil", "0.02 g/L");
        String rules = file("house.txt", "# ours\nat most 1 mg/L thujone because we like it mild\n");
        for (String command : List.of("safety", "plan", "sheet", "label")) {
            JsonNode json = json(Desk.type(command + " " + recipe + " --json --house-rules " + rules));
            JsonNode findings = json.get(command.equals("label") ? "against" : "findings");
            assertThat(findings.findValuesAsString("rule")).as(command).contains("house-rule");
            assertThat(findings.findValuesAsString("jurisdiction")).as(command).contains("house");
        }
        assertThat(Desk.type("safety " + recipe + " --place EU --house-rules " + rules)
                        .exit())
                .isEqualTo(1);
        assertThat(Desk.type("label " + recipe + " --house-rules " + rules).out())
                .contains("What speaks against it as a drink", "because we like it");
    }

    @Test
    void houseRulesThatAreNotUnderstoodAreToldByLine() throws IOException {
        String rules = file("house.txt", "no tonka\nat most lots of oil\nat most 2 mg/L thujonn\n");
        Desk.Run run = Desk.type("safety " + recipe("sage oil", "0.02 g/L") + " --house-rules " + rules);
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("line 2", "line 3", "\"thujonn\"");
        assertThat(Desk.type("plan " + recipe("sage oil", "0.02 g/L") + " --house-rules " + folder.resolve("none"))
                        .exit())
                .isEqualTo(3);
    }

    @Test
    void whetherItKeepsFollowsFromItsFiguresAndWhatWasMeasured() throws IOException {
        String cordial = file("cordial.yaml", """
                stillroom: 1
                title: Pear cordial
                ingredients:
                  - {name: pear juice, kind: juice, sugar: 100 g/L}
                lines:
                  - {use: pear juice, amount: 500 ml}
                  - {use: white sugar, amount: 100 g}
                """);
        JsonNode unknown = Desk.ask("safety " + cordial).json().get("keeping");
        assertThat(unknown.get("ph").isNull()).isTrue();
        assertThat(unknown.get("days").intValue()).isEqualTo(14);
        JsonNode known =
                Desk.ask("safety " + cordial + " --ph 3,6 --pasteurised").json();
        assertThat(known.at("/keeping/ph").doubleValue()).isEqualTo(3.6);
        assertThat(known.at("/keeping/where").stringValue()).isEqualTo("cold once open");
        assertThat(Desk.type("label " + cordial).out())
                .contains("Keep in the fridge, best within two weeks of filling");
        assertThat(Desk.type("safety " + cordial + " --ph 15").err()).contains("--ph", "1.5 to 9");
        JsonNode plan = Desk.ask("plan " + cordial).json();
        assertThat(plan.get("findings").findValuesAsString("rule")).contains("keeping", "growth");
    }

    /** What is unknown or to be done is told; what is within or beside is counted, and told with --all. */
    @Test
    void thePageIsQuietUnlessAllIsAskedFor() throws IOException {
        String recipe = recipe("peppermint oil", "0.05 g/L");
        String quiet = Desk.type("safety " + recipe).out();
        String all = Desk.type("safety " + recipe + " --all").out();
        assertThat(quiet.replaceAll("\\s+", " "))
                .contains("Besides, with --all: ", "within the limit (", "keeps on the shelf");
        assertThat(quiet).doesNotContain("- within the limit:", "- flash point:");
        assertThat(all).contains("- within the limit:", "- flash point:").doesNotContain("Besides, with --all");
        assertThat(Desk.ask("safety " + recipe).json().get("findings"))
                .isEqualTo(Desk.ask("safety " + recipe + " --all").json().get("findings"));
    }

    @Test
    void whatIsHandedOutCarriesTheStandingSentence() throws IOException {
        String recipe = recipe("pennyroyal oil", "0.01 g/L");
        assertThat(json(Desk.type("plan " + recipe + " --json")).get("standing").stringValue())
                .contains("not legal or medical advice");
        assertThat(Desk.type("sheet " + recipe).out()).contains("not legal or medical advice", "Stop", "Leave it out.");
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    /** 20 mg/L of sage oil, 23 % thujone by its certificate: 4.6 mg/L for certain, in place of at most 12. */
    @Test
    void theAnalysisOfTheLotStandsInPlaceOfTheRange() throws IOException {
        String recipe = recipe("sage oil", "0.02 g/L");
        String certificate = file("lot.csv", "constituent,percent\nalpha-thujone,18.5\nbeta-thujone,4.5\n");
        JsonNode thujone = substance(
                json(Desk.type("safety " + recipe + " --json --place EU --analysis sage~oil=" + certificate)),
                "thujone");
        assertThat(thujone.get("mg_per_l").get("max").doubleValue()).isCloseTo(4.6, within(0.001));
        assertThat(thujone.get("mg_per_l").get("typical_basis").stringValue()).isEqualTo("the lot's own analysis");
        JsonNode without = substance(json(Desk.type("safety " + recipe + " --json --place EU")), "thujone");
        assertThat(without.get("mg_per_l").get("max").doubleValue()).isGreaterThan(10.0);
    }

    @Test
    void whatIsWrongWithAnAnalysisIsToldByLineAllAtOnce() throws IOException {
        String certificate =
                file("lot.csv", "linalool,31\nmoon dust,3\nLinalool,2\nlimonene,lots\nlinalyl acetate,90\n");
        Desk.Run run = Desk.type("safety " + recipe("sage oil", "0.02 g/L") + " --analysis sage~oil=" + certificate);
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("line 2", "line 3", "line 4", "126");
        String empty = file("none.csv", "constituent,percent\n");
        assertThat(Desk.type("safety " + recipe("sage oil", "0.02 g/L") + " --analysis sage~oil=" + empty)
                        .exit())
                .isEqualTo(2);
    }

    @Test
    void anAnalysisOfWhatStandsInNoLineIsRefused() throws IOException {
        String certificate = file("lot.csv", "pulegone,1");
        Desk.Run run = Desk.type("safety " + recipe("sage oil", "0.02 g/L") + " --analysis mint=" + certificate);
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("\"mint\" stands in no line of this recipe", "sage oil");
    }

    /** 700 g of a distillate of 40 % vol with 35 mg/L, which weighs 0.948 kg/L: 36.9 mg/kg, above the 35 of Annex III. */
    @Test
    void anAnalysisOfADistillateAndOneOfTheDrinkAreCounted() throws IOException {
        Path recipe = folder.resolve("absinthe.yaml");
        Files.writeString(recipe, """
                stillroom: 1
                title: Wormwood by analysis
                ingredients:
                  - {name: wormwood distillate, kind: distillate, strength: 40 %}
                lines:
                  - {use: wormwood distillate, amount: 1 kg}
                """);
        String certificate = file("lot.csv", "thujone;35 mg/L\n");
        Desk.Run lot = Desk.type("safety " + recipe + " --place EU --analysis wormwood~distillate=" + certificate);
        assertThat(lot.exit()).isEqualTo(1);
        assertThat(lot.out()).contains("Thujone: 36.9 mg/kg", "by the lot's own analysis");
        Desk.Run drink = Desk.type("safety " + recipe + " --place EU --analysed thujone~8~mg/kg");
        assertThat(drink.exit()).isZero();
        assertThat(drink.out().replaceAll("\\s+", " "))
                .contains("the analysis of the drink says 8.00 mg/kg", "It holds for that drink alone");
        assertThat(Desk.type("label " + recipe + " --place EU --analysed thujone~8~mg/kg")
                        .exit())
                .isZero();
        String percent = file("percent.csv", "alpha-thujone;0.5\n");
        Desk.Run refused = Desk.type("safety " + recipe + " --analysis wormwood~distillate=" + percent);
        assertThat(refused.exit()).isEqualTo(2);
        assertThat(refused.err()).contains("is no oil whose amount is known", "thujone,8 mg/kg");
    }

    /** No table tells anything of it: that is no good news, and the first line must not read as such. */
    @Test
    void whatNoTableKnowsIsNotKnownFromTheFirstLineOn() throws IOException {
        Path unknown = folder.resolve("unknown.yaml");
        Files.writeString(unknown, """
                stillroom: 1
                title: Meadow cup
                target: {volume: 1 L, strength: 30 %}
                ingredients:
                  - {name: purple moonweed, kind: dried plant}
                lines:
                  - {use: purple moonweed, amount: 5 g}
                  - {use: spirit 96 %, amount: free}
                  - {use: water, amount: free}
                """);
        assertThat(Desk.type("safety " + unknown).out()).startsWith("What watched substances are in it is not known");
    }
}
