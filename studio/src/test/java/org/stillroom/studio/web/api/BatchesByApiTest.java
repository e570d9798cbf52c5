package org.stillroom.studio.web.api;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.store.Batches;
import org.stillroom.studio.web.api.OtherProgram.Answer;
import tools.jackson.databind.JsonNode;

/** The log of batches for other programs: the same entries as the pages, each once. */
class BatchesByApiTest {
    private static final String RECIPE = "{\"recipe\": {\"stillroom\": 1, \"title\": \"Pear\", \"rest\": \"14 days\","
            + " \"target\": {\"volume\": \"2 L\", \"strength\": \"28 %\", \"sugar\": \"180 g/L\"},"
            + " \"lines\": [{\"use\": \"spirit 96 % vol\", \"amount\": \"free\"},"
            + " {\"use\": \"white sugar\", \"amount\": \"free\"}, {\"use\": \"water\", \"amount\": \"free\"}]}}";

    @TempDir
    private Path dir;

    private OtherProgram program;
    private String batch = "";

    @BeforeEach
    void make() throws Exception {
        program = new OtherProgram(dir);
        batch = made("").text("id");
    }

    /** Makes the recipe to the end, with what else is wished, and answers with the batch. */
    private Answer made(String wishes) throws Exception {
        String recipe = program.post("/recipes", RECIPE).text("recipe");
        JsonNode state = program.post("/makes", "{\"recipe\": \"" + recipe + "\"" + wishes + "}")
                .json();
        String make = state.get("id").asString();
        while (!state.get("here").isNull()) {
            String step = state.get("here").asString();
            state = program.post("/makes/" + make + "/record", "{\"step\": \"" + step + "\", \"did\": \"done\"}")
                    .json();
        }
        return program.post("/makes/" + make + "/finish", "");
    }

    @AfterEach
    void close() {
        program.close();
    }

    private static double volume(JsonNode batch) {
        return batch.at("/vessels/0/volume_20c_ml").doubleValue();
    }

    @Test
    void aBatchIsFoundByItsNumberWithWhatIsInIt() throws Exception {
        JsonNode head = program.get("/batches").json().at("/batches/0");
        assertThat(head.get("id").asString()).isEqualTo(batch);
        assertThat(volume(head)).isCloseTo(2000.0, within(10.0));
        JsonNode one = program.get("/batches/1").json();
        assertThat(one.at("/vessels/0/strength_vol_percent").doubleValue()).isCloseTo(28.0, within(0.2));
        assertThat(one.get("waits").get(0).get("what").asString()).isEqualTo("marrying");
        assertThat(program.get("/batches/7").status()).isEqualTo(404);
    }

    @Test
    void whatWasDoneIsWrittenOnceHoweverOftenItIsSent() throws Exception {
        String entry = "{\"act\": \"lost\", \"amount\": \"100 ml\", \"cause\": \"SAMPLE\", \"note\": \"tasted\"}";
        double before = volume(program.get("/batches/1").json());
        program.post("/batches/1/log", entry, "Idempotency-Key", "one");
        JsonNode after =
                program.post("/batches/1/log", entry, "Idempotency-Key", "one").json();
        assertThat(after.get("log")).hasSize(1);
        assertThat(after.at("/log/0/typed/note").asString()).isEqualTo("tasted");
        assertThat(volume(after)).isCloseTo(before - 100.0, within(0.1));

        long id = after.at("/log/0/entry").longValue();
        JsonNode back = program.post("/batches/1/take-back/" + id, "").json();
        assertThat(volume(back)).isCloseTo(before, within(1e-6));
        assertThat(back.at("/log/0/undone").booleanValue()).isTrue();
    }

    @Test
    void twoWhoWriteAtOnceBothCount() throws Exception {
        double before = volume(program.get("/batches/1").json());
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            List<Callable<Integer>> writings = new ArrayList<>();
            for (int i = 0; i < 10; i++) {
                writings.add(() -> program.post("/batches/1/log", "{\"act\": \"lost\", \"amount\": \"10 ml\"}")
                        .status());
            }
            for (Future<Integer> each : two.invokeAll(writings)) {
                assertThat(each.get()).isEqualTo(200);
            }
        } finally {
            two.shutdownNow();
        }
        JsonNode after = program.get("/batches/1").json();
        assertThat(after.get("log")).hasSize(10);
        assertThat(volume(after)).isCloseTo(before - 100.0, within(0.1));
    }

    @Test
    void whatCannotBeIsRefusedWithItsFieldAndKeepsNothing() throws Exception {
        Answer much = program.post("/batches/1/log", "{\"act\": \"lost\", \"amount\": \"9 L\"}");
        assertThat(much.status()).isEqualTo(422);
        Answer other = program.post("/batches/1/log", "{\"act\": \"lost\", \"fills\": \"2 x 100 ml\"}");
        assertThat(other.status()).isEqualTo(400);
        assertThat(other.finding().get("where").asString()).isEqualTo("fills");
        Answer act = program.post("/batches/1/log", "{\"act\": \"drunk\"}");
        assertThat(act.status()).isEqualTo(400);
        assertThat(act.body()).contains("evaporated");
        assertThat(program.get("/batches/1").json().get("log")).isEmpty();
    }

    @Test
    void aLotIsAddedByItsNameAndDrawnDown() throws Exception {
        program.post(
                "/lots",
                "{\"lots\": [{\"name\": \"pear brandy\", \"kind\": \"spirit\", \"strength\": \"45 %\", \"left\": \"300 ml\"}]}");
        JsonNode after = program.post(
                        "/batches/1/log", "{\"act\": \"added\", \"what\": \"pear brandy\", \"amount\": \"50 ml\"}")
                .json();
        assertThat(after.get("log")).hasSize(1);
        assertThat(program.get("/lots").json().at("/lots/0/left").asString()).contains("250");
    }

    @Test
    void whatIsNotForDrinkingIsToldFirstOfVesselsAndBottles() throws Exception {
        assertThat(program.get("/batches/1").json().at("/vessels/0/findings").toString())
                .doesNotContain("\"stop\"");
        program.post(
                "/lots",
                "{\"lots\": [{\"name\": \"isopropyl alcohol\", \"kind\": \"spirit\", \"strength\": \"99 %\", \"left\": \"300 ml\"}]}");
        program.post("/batches/1/log", "{\"act\": \"added\", \"what\": \"isopropyl alcohol\", \"amount\": \"50 ml\"}");
        program.post("/batches/1/log", "{\"act\": \"bottled\", \"fills\": \"1 x 500 ml\"}");
        JsonNode after = program.get("/batches/1").json();
        for (String of : List.of("/vessels/0", "/bottles/0")) {
            JsonNode first = after.at(of + "/findings/0");
            assertThat(first.get("severity").asString()).as(of).isEqualTo("stop");
            assertThat(first.toString()).as(of).contains("isopropyl alcohol");
        }
    }

    @Test
    void aMakeDrawsNoLotThatItsLineCannotBe() throws Exception {
        String other = program.post(
                        "/lots",
                        "{\"lots\": [{\"name\": \"oleander tincture\", \"kind\": \"tincture\", \"strength\": \"60 %\", \"left\": \"1 L\"}]}")
                .json()
                .at("/lots/0/id")
                .asString();
        String recipe = program.post("/recipes", RECIPE).text("recipe");
        Answer answer = program.post(
                "/makes", "{\"recipe\": \"" + recipe + "\", \"lots\": {\"white sugar\": [\"" + other + "\"]}}");
        assertThat(answer.status()).isEqualTo(422);
        assertThat(answer.finding().get("rule").asString()).isEqualTo("lot-of-another-line");
    }

    /** Money stands in the answer as a value, whatever its currency is called; no answer fails over what it tells of. */
    @Test
    void everyOperationAnswersForABatchThatHasACost() throws Exception {
        String spirit = program.post(
                        "/lots",
                        "{\"lots\": [{\"name\": \"spirit 96 % vol\", \"kind\": \"spirit\", \"strength\": \"96 %\","
                                + " \"left\": \"3 L\", \"full\": \"3 L\", \"paid\": \"54 EUR\"}]}")
                .json()
                .at("/lots/0/id")
                .asString();
        String two =
                made(", \"lots\": {\"spirit 96 % vol\": [\"" + spirit + "\"]}").text("id");

        JsonNode head = program.get("/batches").json().at("/batches/0");
        assertThat(head.get("id").asString()).isEqualTo(two);
        JsonNode cost = head.at("/vessels/0/cost/0");
        assertThat(cost.get("currency").asString()).isEqualTo("EUR");
        assertThat(cost.get("amount").doubleValue())
                .as("0.56 L of ethanol in a spirit of 96 % vol at 18 EUR/L")
                .isCloseTo(560.0 / 960.0 * 18.0, within(0.05));

        String log = "/batches/" + two + "/log";
        for (String entry : List.of(
                "{\"act\": \"measured\", \"strength\": \"27.4 %\"}",
                "{\"act\": \"moved\", \"to\": \"cask\", \"sediment\": \"20 ml\"}",
                "{\"act\": \"moved\", \"to\": \"1\", \"batch\": \"" + batch + "\", \"amount\": \"100 ml\"}",
                "{\"act\": \"added\", \"what\": \"" + spirit + "\", \"amount\": \"50 ml\"}",
                "{\"act\": \"lost\", \"amount\": \"10 ml\"}",
                "{\"act\": \"evaporated\", \"amount\": \"10 g\"}",
                "{\"act\": \"waits\", \"what\": \"CLEARING\", \"days\": \"3 days\"}",
                "{\"act\": \"noted\", \"note\": \"round\"}",
                "{\"act\": \"bottled\", \"fills\": \"2 x 350 ml\"}")) {
            Answer answer = program.post(log, entry);
            assertThat(answer.status()).as("%s: %s", entry, answer.body()).isEqualTo(200);
        }
        JsonNode now = program.get("/batches/" + two).json();
        assertThat(now.get("log")).hasSize(9);
        assertThat(now.at("/vessels/0/cost/0/currency").asString()).isEqualTo("EUR");
        Answer bottling = program.post(
                "/batches/" + two + "/bottling", "{\"sizes\": [{\"size\": \"200 ml\"}], \"filter\": \"10 ml\"}");
        assertThat(bottling.json().at("/sizes/0/cost/0/currency").asString()).isEqualTo("EUR");
        for (String after : List.of("/rest/" + now.at("/waits/0/wait") + "/postpone", "/rest/-2/done")) {
            assertThat(program.post(after, after.endsWith("done") ? "" : "{\"days\": \"2 days\"}")
                            .status())
                    .isEqualTo(200);
        }
        long last = now.at("/log/8/entry").longValue();
        assertThat(program.post("/batches/" + two + "/take-back/" + last, "").status())
                .isEqualTo(200);
    }

    @Test
    void aFieldThatNobodyAsksForIsNotToldOf() throws Exception {
        program.store()
                .batches()
                .append(
                        new Batches.Writing(
                                batch,
                                "batch.noted",
                                "{\"at\": \"2026-01-02T03:04:05Z\", \"typed\": {\"note\": \"dry\", \"No-Field\": \"x\"}}",
                                null,
                                List.of()),
                        (batches, log) -> {},
                        "made up");
        Answer answer = program.get("/batches/1");
        assertThat(answer.status()).as(answer.body()).isEqualTo(200);
        assertThat(answer.json().at("/log/0/typed").propertyNames()).containsExactly("note");
    }

    @Test
    void whatWaitsIsPostponedAndSeenTo() throws Exception {
        JsonNode rest = program.get("/rest").json().at("/rest/0");
        String wait = rest.get("wait").asString();
        String later = program.post("/rest/" + wait + "/postpone", "{\"days\": \"7 days\"}")
                .json()
                .at("/rest/0/until")
                .asString();
        assertThat(later).isGreaterThan(rest.get("until").asString());
        assertThat(program.post("/rest/" + wait + "/postpone", "{\"days\": \"soon\"}")
                        .status())
                .isEqualTo(422);
        assertThat(program.post("/rest/" + wait + "/done", "").json().get("rest"))
                .isEmpty();
        assertThat(program.post("/rest/99999/done", "").status()).isEqualTo(404);
    }

    @Test
    void emptyBottlesAndLabelsOfTheShelfAreCountedAndDrawnDown() throws Exception {
        JsonNode lots = program.post(
                        "/lots",
                        "{\"lots\": [{\"name\": \"flat ones\", \"kind\": \"empty bottles\", \"holds\": \"350 ml\","
                                + " \"left\": \"12\", \"paid\": \"12 EUR\"},"
                                + " {\"name\": \"labels\", \"kind\": \"labels and stoppers\", \"left\": \"20\","
                                + " \"paid\": \"2 EUR\"}]}")
                .json()
                .get("lots");
        String bottles = lots.at("/0/id").asString();
        JsonNode plan = program.post(
                        "/batches/1/bottling",
                        "{\"sizes\": [{\"lot\": \"" + bottles + "\"}], \"each\": [\""
                                + lots.at("/1/id").asString() + "\"]}")
                .json();
        assertThat(plan.at("/sizes/0/cost/0/amount").doubleValue()).isCloseTo(1.1, within(1e-9));
        assertThat(plan.at("/sizes/0/bottle_counted").booleanValue()).isTrue();
        assertThat(plan.at("/sizes/0/cost_known").booleanValue())
                .as("of the liquid")
                .isFalse();
        JsonNode after = program.post(
                        "/batches/1/log",
                        "{\"act\": \"bottled\", \"fills\": \""
                                + plan.get("fills").asString() + "\", \"lots\": \""
                                + plan.get("lots").asString() + "\"}")
                .json();
        assertThat(after.at("/bottles/0/cost/0/amount").doubleValue()).isCloseTo(1.1, within(1e-9));
        assertThat(program.get("/lots/" + bottles).json().get("left").doubleValue())
                .isEqualTo(6.0);
        Answer many = program.post(
                "/batches/1/log", "{\"act\": \"bottled\", \"fills\": \"1 x 10 ml\", \"lots\": \"" + bottles + ":40\"}");
        assertThat(many.status()).isEqualTo(422);
        assertThat(many.finding().get("rule").asString()).isEqualTo("more-than-on-shelf");
    }

    @Test
    void bottlesArePlannedAndThenWritten() throws Exception {
        JsonNode plan = program.post(
                        "/batches/1/bottling",
                        "{\"sizes\": [{\"size\": \"500 ml\", \"count\": 3}, {\"size\": \"350 ml\", \"brim\": \"365 ml\"}]}")
                .json();
        assertThat(plan.at("/full/0/count").intValue()).isPositive();
        String fills = plan.get("fills").asString();
        JsonNode after = program.post("/batches/1/log", "{\"act\": \"bottled\", \"fills\": \"" + fills + "\"}")
                .json();
        assertThat(after.at("/bottles/0/each_ml").doubleValue())
                .isEqualTo(plan.at("/full/0/each_ml").doubleValue());
        assertThat(after.get("vessels")).as("what is left in %s", fills).isEmpty();
        assertThat(program.post("/batches/1/bottling", "{\"sizes\": []}").status())
                .isEqualTo(422);
    }
}
