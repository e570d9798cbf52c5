package org.stillroom.studio.web.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.studio.web.api.OtherProgram.Answer;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The API over real HTTP: what it refuses and how it says so, and what a change leaves. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class ApiRoomTest {
    private static final String QUINCE = """
            stillroom: 1
            title: Quince, brought down
            # as the neighbour does it
            target: {volume: 700 ml, strength: 30 %}
            lines:
              - {use: spirit 96 % vol, amount: free}
              - {use: water, amount: free}
            """;

    private Path dir;
    private OtherProgram program;

    @BeforeAll
    void open(@TempDir Path folder) {
        dir = folder;
        program = new OtherProgram(dir);
    }

    @AfterAll
    void close() {
        program.close();
    }

    private static String recipe(String text) {
        return "{\"recipe\": " + new JsonMapper().writeValueAsString(text) + "}";
    }

    @Test
    void wrongJsonSaysWhere() throws Exception {
        Answer answer = program.post("/liquid", "{\"ethanol\": \"300 g\",\n \"water\" \"600 g\"}");

        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.finding().get("where").asString()).startsWith("line 2, column ");
        assertThat(answer.finding().get("rule").asString()).isEqualTo("json");
    }

    @Test
    void anUnknownKeyIsNamedWithTheNearest() throws Exception {
        Answer answer = program.post("/liquid", "{\"ethanole\": \"300 g\", \"temprature\": \"20 C\"}");

        assertThat(answer.status()).isEqualTo(400);
        assertThat(answer.json().get("findings")).hasSize(2);
        assertThat(answer.finding().get("where").asString()).isEqualTo("ethanole");
        assertThat(answer.finding().get("remedy").asString()).isEqualTo("Did you mean \"ethanol\"?");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "/liquid|{\"ethanol\": \"300\"}|ethanol|the unit is missing",
                "/liquid|{\"ethanol\": 300}|ethanol|the unit is missing",
                "/liquid|{}||nothing in this liquid",
                "/reduce|{\"from\": \"40%\", \"to\": \"50%\", \"volume\": \"1L\"}|to|water only lowers strength",
                "/reduce|{\"from\": \"40%\"}|to|it is missing",
                "/strength|{\"mass\": \"474g\", \"temperature\": \"20C\"}|flask|a weight needs its volume",
                "/syrup|{\"sugar\": \"500g\"}||said in one way",
                "/blend|{\"add\": [\"500ml\"]}|add|does not say how strong",
                "/plan|{\"recipe\": \"title: none\"}||stillroom",
                "/plan|{\"recipe\": \"stillroom: 1\\ntitle: x\\nlines:\\n  - {use: watr}\"}|line 4|watr"
            })
    void whatIsUnderstoodAndCannotBeIsRefusedAsFindings(String path, String body, String where, String message)
            throws Exception {
        Answer answer = program.post(path, body);

        assertThat(answer.status()).as(answer.body()).isEqualTo(422);
        assertThat(answer.finding().get("where").asString()).startsWith(where == null ? "" : where);
        assertThat(answer.json().get("findings").toString()).contains(message);
        assertThat(answer.body()).doesNotContain("--");
    }

    @Test
    void partsAreNamedInTheMannerOfPrograms() throws Exception {
        assertThat(program.post("/syrup", "{\"sugar\": \"500g\"}")
                        .finding()
                        .get("remedy")
                        .asString())
                .contains("\"sugar\": \"850g\", \"make_up_to\": \"1L\"");
    }

    @Test
    void theDeskJudgesByTheRulesOfTheStudiosHouse() throws Exception {
        String laurel = "{\"liquid\": \"laurel\"}";
        assertThat(program.post("/drops", laurel).body()).doesNotContain("house-rule");
        program.send("PUT", "/house-rules", "{\"rules\": \"no laurel oil\"}", "If-Match", "\"0\"");
        assertThat(program.post("/drops", laurel).body()).contains("house-rule", "laurel is what it names");
    }

    @Test
    void bottlesThatAreEasilyMistakenForEachOtherSaySo() throws Exception {
        String lots = "{\"lots\": [{\"name\": \"hyssop oil\", \"kind\": \"essential oil\", \"left\": \"9 ml\"},"
                + " {\"name\": \"hyssop essence 1:10\", \"kind\": \"essence\", \"strength\": \"90 %\", \"left\": \"9 ml\"}]}";
        JsonNode added = program.post("/lots", lots).json().get("lots");
        assertThat(added.get(0).get("easily_mistaken_for").get(0).asString()).isEqualTo("hyssop essence 1:10");
        JsonNode one = program.get("/lots/" + added.get(1).get("id").asString()).json();
        assertThat(one.get("easily_mistaken_for").get(0).asString()).isEqualTo("hyssop oil");
    }

    @Test
    void bottlesThatNobodyIsToDrinkOfSaySo() throws Exception {
        String lots = "{\"lots\": [{\"name\": \"caraway oil\", \"kind\": \"essential oil\", \"left\": \"9 ml\"},"
                + " {\"name\": \"Eisenhuttinktur\", \"kind\": \"tincture\", \"strength\": \"60 %\", \"left\": \"9 ml\"}]}";
        JsonNode added = program.post("/lots", lots).json().get("lots");
        assertThat(added.get(0).get("stops")).isEmpty();
        assertThat(added.get(1).get("stops").get(0).get("verdict").asString()).isEqualTo("poisonous");
    }

    @Test
    void anAnalysisFarFromTheTablesIsKeptWithTheQuestionAndOneInFractionsIsRefused() throws Exception {
        String sheet = "{\"name\": \"sage oil\", \"kind\": \"essential oil\", \"left\": \"9 ml\"";
        JsonNode lot = program.post("/lots", "{\"lots\": [" + sheet + "}]}")
                .json()
                .get("lots")
                .get(0);
        assertThat(lot.get("analysis_findings")).isEmpty();
        String path = "/lots/" + lot.get("id").asString();
        String fractions = sheet + ", \"version\": 1, \"analysis\": \"alpha-thujone;0.25\\nbeta-thujone;0.05\"}";
        Answer refused = program.send("PUT", path, fractions);
        assertThat(refused.status()).isEqualTo(422);
        assertThat(refused.body()).contains("analysis-fractions", "Line 1, alpha-thujone", "Line 2, beta-thujone");
        String far = sheet + ", \"version\": 1, \"analysis\": \"linalool;60\\nlinalyl acetate;20\"}";
        JsonNode kept = program.send("PUT", path, far).json();
        assertThat(kept.get("analysis_findings").get(0).get("rule").asString()).isEqualTo("analysis-far");
        assertThat(kept.get("analysis_findings").get(0).get("verdict").asString())
                .isEqualTo("is this meant?");
        String meant = far.replace("\"version\": 1", "\"version\": 2").replace("acetate;20", "acetate;20\\nconfirmed");
        JsonNode confirmed =
                program.send("PUT", path, meant).json().get("analysis_findings").get(0);
        assertThat(confirmed.get("verdict").asString()).isEqualTo("confirmed by the maker");
    }

    @Test
    void theBodyIsJsonAndNotTooLarge() throws Exception {
        assertThat(program.post("/liquid", "ethanol=300", "Content-Type", "text/plain")
                        .status())
                .isEqualTo(415);
        Answer large = program.post("/plan", "{\"recipe\": \"" + "x".repeat(1_000_001) + "\"}");
        assertThat(large.status()).isEqualTo(413);
        assertThat(large.finding().get("rule").asString()).isEqualTo("too-large");
        assertThat(program.post("/liquid", "[1]").status()).isEqualTo(400);
    }

    @Test
    void whatIsNotThereIsSaidInJson() throws Exception {
        for (String path : new String[] {"/recipes/nothere", "/lots/nothere", "/batches/nothere", "/nowhere"}) {
            Answer answer = program.get(path);
            assertThat(answer.status()).as(path).isEqualTo(404);
            assertThat(answer.json().get("findings")).as(path).hasSize(1);
        }
        Answer other = program.send("DELETE", "/liquid", "");
        assertThat(other.status()).isEqualTo(405);
        assertThat(other.json().get("findings")).hasSize(1);
    }

    /** Umlauts, quotation marks, a dash and what lies beyond the first plane come back as they were sent, in every kind of answer. */
    @Test
    void everyTextIsAnsweredAsItWasSent() throws Exception {
        String title = "Kräuter „nach Tisch“ – für 12 € \uD83C\uDF50";
        String text = QUINCE.replace("Quince, brought down", title);
        String id = program.post("/recipes", recipe(text)).text("recipe");

        Answer file = program.get("/recipes/" + id + "/file");
        assertThat(file.header("Content-Type")).isEqualToIgnoringCase("application/yaml; charset=utf-8");
        assertThat(file.body()).contains("title: " + title).doesNotContain("?");
        assertThat(program.get("/recipes/" + id).text("text")).isEqualTo(text);
        assertThat(program.get("/recipes").body()).contains(title);
        assertThat(program.post("/plan", recipe(text)).text("title")).isEqualTo(title);
        assertThat(program.post("/plan", recipe(text.replace("water,", "Wäßer „x“,")))
                        .body())
                .contains("Wäßer „x“");
        assertThat(program.get("/recipes/%E2%80%9Enichts%E2%80%9C").status()).isEqualTo(404);
    }

    @Test
    void aRecipeAsJsonKeepsItsLinesAndItsEmoji() throws Exception {
        String body = "{\n\t\"recipe\": {\n\t\t\"stillroom\": 1,\n\t\t\"title\": \"Pear \\ud83c\\udf50 \\/ mint\",\n"
                + "\t\t\"lines\": [\n\t\t\t{\"use\": \"water\", \"amount\": \"1 quart of\"}\n\t\t]\n\t}\n}";

        Answer wrong = program.post("/plan", body);
        assertThat(wrong.status()).as(wrong.body()).isEqualTo(422);
        assertThat(wrong.finding().get("where").asString()).startsWith("line 6");

        Answer right = program.post("/plan", body.replace("1 quart of", "1 L"));
        assertThat(right.status()).as(right.body()).isEqualTo(200);
        assertThat(right.text("title")).isEqualTo("Pear \uD83C\uDF50 / mint");
    }

    @Test
    void theBodyOfAPlanMayBeTheRecipeItself() throws Exception {
        Answer answer = program.post(
                "/plan",
                "{\"stillroom\": 1, \"title\": \"Water\", \"lines\": [{\"use\": \"water\", \"amount\": \"1 L\"}]}");

        assertThat(answer.status()).as(answer.body()).isEqualTo(200);
        assertThat(answer.json().get("lines")).hasSize(1);
    }

    @Test
    void whatCannotBeReachedIsAnAnswer() throws Exception {
        Answer answer = program.post("/plan", recipe(QUINCE.replace("30 %", "99 %")));

        assertThat(answer.status()).isEqualTo(200);
        assertThat(answer.json().get("reached").booleanValue()).isFalse();
        assertThat(answer.json().get("findings")).isNotEmpty();
    }

    @Test
    void stepsComeWhenTheyAreAskedFor() throws Exception {
        Answer answer = program.post("/density", "{\"strength\": \"40 %\", \"explain\": true}");

        assertThat(answer.json().get("steps")).isNotEmpty();
        assertThat(answer.json().get("steps").get(0).has("source")).isTrue();
    }

    @Test
    void aRecipeIsKeptAsItWasSentAndSavedAsANewRevision() throws Exception {
        Answer first = program.post("/recipes", recipe(QUINCE));
        String id = first.text("recipe");
        assertThat(first.header("ETag")).isEqualTo("\"1\"");
        assertThat(program.get("/recipes/" + id).text("text")).isEqualTo(QUINCE);
        assertThat(program.get("/recipes/" + id + "/file").body())
                .startsWith(QUINCE + "# ---- Said of this drink by Stillroom")
                .contains("# Information, not legal or medical advice");

        Answer second = program.send("PUT", "/recipes/" + id, recipe(QUINCE + "notes: drier\n"), "If-Match", "\"1\"");
        assertThat(second.status()).as(second.body()).isEqualTo(200);
        assertThat(second.header("ETag")).isEqualTo("\"2\"");
        assertThat(program.get("/recipes/" + id + "/revisions").json().get("revisions"))
                .hasSize(2);
        assertThat(program.get("/recipes/" + id + "/revisions/1").text("text")).isEqualTo(QUINCE);
    }

    @Test
    void aSaveThatComesTooLateIsShownBoth() throws Exception {
        String id = program.post("/recipes", recipe(QUINCE)).text("recipe");
        String theirs =
                "{\"based_on\": 1, " + recipe(QUINCE + "notes: theirs\n").substring(1);
        String mine = "{\"based_on\": 1, " + recipe(QUINCE + "notes: mine\n").substring(1);
        assertThat(program.send("PUT", "/recipes/" + id, theirs).status()).isEqualTo(200);

        Answer late = program.send("PUT", "/recipes/" + id, mine);

        assertThat(late.status()).isEqualTo(409);
        assertThat(late.json().get("yours").get("text").asString()).endsWith("mine\n");
        assertThat(late.json().get("current").get("text").asString()).endsWith("theirs\n");
        assertThat(late.json().get("current").get("revision").intValue()).isEqualTo(2);
        assertThat(program.get("/recipes/" + id).text("text")).endsWith("theirs\n");
    }

    @Test
    void aSaveSaysWhatItIsBasedOn() throws Exception {
        String id = program.post("/recipes", recipe(QUINCE)).text("recipe");

        assertThat(program.send("PUT", "/recipes/" + id, recipe(QUINCE)).status())
                .isEqualTo(428);
    }

    @Test
    void aRequestSentTwiceIsDoneOnce() throws Exception {
        Answer first = program.post("/recipes", recipe(QUINCE), "Idempotency-Key", "one-wish");
        Answer again = program.post("/recipes", recipe(QUINCE), "Idempotency-Key", "one-wish");

        assertThat(again.status()).isEqualTo(200);
        assertThat(again.text("recipe")).isEqualTo(first.text("recipe"));
        assertThat(program.get("/recipes/" + first.text("recipe") + "/revisions")
                        .json()
                        .get("revisions"))
                .hasSize(1);
        assertThat(program.post("/recipes", recipe(QUINCE), "Idempotency-Key", "x".repeat(81))
                        .status())
                .isEqualTo(400);
    }

    @Test
    void aRemovedRecipeIsBroughtBackByItsEntry() throws Exception {
        String id = program.post("/recipes", recipe(QUINCE)).text("recipe");
        long entry =
                program.send("DELETE", "/recipes/" + id, "").json().get("entry").longValue();
        assertThat(program.get("/recipes/" + id).status()).isEqualTo(404);

        assertThat(program.post("/recipes/" + id + "/bring-back/" + entry, "").status())
                .isEqualTo(200);
        assertThat(program.get("/recipes/" + id).status()).isEqualTo(200);
    }

    @Test
    void theAnalysesOfTheShelfCountInWhatIsToldOfARecipesOils() throws Exception {
        String recipe = "{\"recipe\": {\"stillroom\": 1, \"title\": \"Juniper\", \"target\": {\"volume\": \"1 L\","
                + " \"strength\": \"40 %\"}, \"ingredients\": [{\"name\": \"juniper oil\", \"kind\": \"essential oil\"}],"
                + " \"lines\": [{\"use\": \"juniper oil\", \"dose\": \"0.2 g/L\"},"
                + " {\"use\": \"spirit 96 %\", \"amount\": \"free\"}, {\"use\": \"water\", \"amount\": \"free\"}]}}";
        double usual = program.post("/clarity", recipe).json().get("oil_load").doubleValue();
        assertThat(program.post("/notes", recipe).json().get("analysed")).isEmpty();
        Answer added = program.post(
                "/lots",
                "{\"lots\": [{\"name\": \"juniper oil\", \"kind\": \"essential oil\","
                        + " \"analysis\": \"terpinen-4-ol;100\"}]}");
        assertThat(added.status()).as(added.body()).isEqualTo(200);

        assertThat(program.post("/clarity", recipe).json().get("oil_load").doubleValue())
                .isLessThan(0.1 * usual); // an alcohol dissolves better than terpenes
        JsonNode notes = program.post("/notes", recipe).json();
        assertThat(notes.get("analysed").get(0).asString()).isEqualTo("juniper oil");
        assertThat(notes.get("constituents")).hasSize(1);
        assertThat(notes.get("constituents").get(0).get("mg_per_l").get("max").doubleValue())
                .isCloseTo(200.0, within(1e-6));
    }

    @Test
    void aLotIsAddedChangedWeighedRemovedAndBroughtBack() throws Exception {
        JsonNode lot = program.post(
                        "/lots",
                        "{\"lots\": [{\"name\": \"vodka\", \"kind\": \"spirit\", \"strength\": \"40 %\","
                                + " \"left\": \"500 ml\", \"full\": \"700 ml\", \"tare\": \"400 g\"}]}")
                .json()
                .get("lots")
                .get(0);
        String path = "/lots/" + lot.get("id").asString();
        assertThat(lot.get("fields").get("strength").asString()).isEqualTo("40 %");
        assertThat(lot.get("left").doubleValue()).isEqualTo(500);

        Answer changed = program.send(
                "PUT",
                path,
                "{\"name\": \"vodka\", \"kind\": \"spirit\", \"strength\": \"41 %\", \"full\": \"700 ml\","
                        + " \"tare\": \"400 g\"}",
                "If-Match",
                "\"1\"");
        assertThat(changed.status()).as(changed.body()).isEqualTo(200);
        assertThat(changed.json().get("version").intValue()).isEqualTo(2);
        Answer late = program.send(
                "PUT", path, "{\"name\": \"gin\", \"kind\": \"spirit\", \"strength\": \"41 %\", \"version\": 1}");
        assertThat(late.status()).isEqualTo(409);
        assertThat(late.json().get("current").get("name").asString()).isEqualTo("vodka");

        Answer weighed = program.post(path + "/weigh", "{\"reading\": \"600 g\"}");
        assertThat(weighed.status()).as(weighed.body()).isEqualTo(200);
        assertThat(weighed.json().get("left").doubleValue()).isBetween(208.0, 214.0);

        long removal = program.send("DELETE", path, "").json().get("entry").longValue();
        assertThat(program.get(path).status()).isEqualTo(404);
        assertThat(program.post("/lots/undo/" + removal, "").status()).isEqualTo(200);
        assertThat(program.post("/lots/undo/" + removal, "").status()).isEqualTo(409);
        assertThat(program.get(path).status()).isEqualTo(200);
        JsonNode entries = program.get("/history?subject=lot:" + lot.get("id").asString())
                .json()
                .get("entries");
        assertThat(entries)
                .hasSize(5)
                .allSatisfy(entry -> assertThat(entry.get("body").isObject())
                        .as("%s", entry.get("body"))
                        .isTrue());
        assertThat(entries.get(1).at("/body/after/fields/strength").asString())
                .as("%s", entries.get(1).get("body"))
                .isEqualTo("41 %");
    }

    @Test
    void aLotThatCannotBeIsRefusedAndNoneIsKept() throws Exception {
        int before = program.get("/lots").json().get("lots").size();

        Answer answer = program.post(
                "/lots",
                "{\"lots\": [{\"name\": \"white sugar\", \"kind\": \"sugar\"},"
                        + " {\"name\": \"rum\", \"kind\": \"spirit\", \"strength\": \"140 %\"}]}");

        assertThat(answer.status()).as(answer.body()).isEqualTo(422);
        assertThat(answer.body()).contains("140");
        assertThat(program.get("/lots").json().get("lots")).hasSize(before);
    }

    @Test
    void anInstrumentIsCalibratedAndItsReadingIsPutRight() throws Exception {
        String path = "/instruments/"
                + program.post(
                                "/instruments",
                                "{\"name\": \"Spindle\", \"kind\": \"hydrometer\", \"fields\": {\"scale\": \"SG\", \"marks\": \"0.002\"}}")
                        .text("id");
        Answer kept = program.post(path + "/calibration", "{\"hydrometer\": [\"1.002\", \"1.0024\"]}");
        assertThat(kept.json().at("/calibration/value").doubleValue()).isCloseTo(0.0022, within(1e-9));
        assertThat(kept.json().at("/calibration/typed/hydrometer/1").asString()).isEqualTo("1.0024");
        assertThat(kept.body()).contains("calibrated-at-one-point").doesNotContain("calibration-far-off");
        assertThat(program.post(path + "/calibration", "{\"hydrometer\": [\"1.0423\"], \"in\": \"10 Bx\"}")
                        .body())
                .contains("calibrations-alike", "In water it showed 0.0022")
                .doesNotContain("calibrated-at-one-point");
        assertThat(program.post(path + "/calibration", "{\"hydrometer\": [\"1.010\"]}")
                        .body())
                .contains("calibrations-apart", "In 10 Bx it showed");
        assertThat(program.post(path + "/calibration", "{\"hydrometer\": [\"1.2\"]}")
                        .body())
                .contains("calibration-far-off");
        program.post(path + "/calibration", "{\"hydrometer\": [\"1.002\", \"1.0024\"]}");
        assertThat(program.post(path + "/calibration", "{\"full\": \"81 g\"}").status())
                .isEqualTo(400);

        Answer gauged = program.post(
                "/gauge",
                "{\"hydrometer\": \"SG 1.0316\", \"refractometer\": \"25.9 Bx\", \"instruments\": [\"spindle\"]}");
        assertThat(gauged.json().at("/readings/0/value").doubleValue()).isCloseTo(1.0294, within(1e-9));
        assertThat(program.post("/gauge", "{\"density\": \"1.03g/ml\", \"instruments\": [\"float\"]}")
                        .status())
                .isEqualTo(422);
        assertThat(program.send("DELETE", path + "/calibration", "")
                        .json()
                        .get("calibration")
                        .isNull())
                .isTrue();
    }

    @Test
    void whatWasPouredCountsBeforeAnythingIsMeasured() throws Exception {
        String recipe =
                "{\"stillroom\": 1, \"title\": \"Caraway\", \"target\": {\"volume\": \"700 ml\", \"strength\": \"38 %\"}, \"lines\":"
                        + " [{\"use\": \"spirit 96 % vol\", \"amount\": \"free\"}, {\"use\": \"water\", \"amount\": \"free\"}]}";
        Answer before = program.post("/readings", "{\"have\": [\"hydrometer\"], \"poured\": " + recipe + "}");
        assertThat(before.json().get("strength_doubt_vol_percent").doubleValue())
                .isPositive()
                .isLessThan(
                        before.json().get("poured_strength_doubt_vol_percent").doubleValue());
        assertThat(program.post("/readings", "{\"strength\": \"38 %\", \"poured\": " + recipe + "}")
                        .status())
                .isEqualTo(422);
    }

    @Test
    void aPageOfAnotherSiteChangesNothing() throws Exception {
        Answer answer = program.post("/recipes", recipe(QUINCE), "Origin", "http://elsewhere.example");

        assertThat(answer.status()).isEqualTo(403);
        assertThat(answer.json().get("findings")).hasSize(1);
    }

    @Test
    void aFaultTellsItsIdAndNothingOfTheInside() throws Exception {
        try (OtherProgram broken = new OtherProgram(dir.resolve("broken"))) {
            broken.store().close();
            Answer answer = broken.get("/lots");

            assertThat(answer.status()).isEqualTo(500);
            assertThat(answer.finding().get("message").asString()).contains("id ");
            assertThat(answer.body()).doesNotContain("Exception").doesNotContain("sqlite");
            assertThat(Files.readString(dir.resolve("broken").resolve("log"))).contains("/api/v1/lots");
        }
    }
}
