package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.learn.MislabelledKitchen;
import org.stillroom.studio.usecase.make.BeginMake;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.make.MakeState;
import org.stillroom.studio.usecase.make.RecordStep;
import org.stillroom.studio.usecase.make.ShowMake;
import org.stillroom.studio.usecase.shelf.Bottles;
import tools.jackson.databind.JsonNode;

/** Batches on the command line: listed, shown, written of, and what waits. */
class BatchCommandsTest {
    @TempDir
    private Path dir;

    private String data = "";

    @BeforeEach
    void make() {
        data = " --data " + dir;
        make("");
    }

    private void make(String ingredients) {
        try (Store store = Store.open(new DataFolder(dir))) {
            String recipe = store.recipes().create("Pear", "a" + ingredients);
            store.recipes().save(recipe, 0, "Pear", """
                    stillroom: 1
                    title: Pear
                    rest: 14 days
                    target: {volume: 2 L, strength: 28 %, sugar: 180 g/L}
                    lines:
                      - {use: spirit 96 % vol, amount: free}
                      - {use: white sugar, amount: free}
                      - {use: water, amount: free}
                    """ + ingredients, "pear.yaml", "b" + ingredients);
            BeginMake.Outcome begun = new BeginMake(store)
                    .answer(recipe, 1, new BeginMake.Wish("", false, Map.of(), Map.of()), "c" + ingredients);
            String make = ((BeginMake.Outcome.Begun) begun).make().id();
            ShowMake show = new ShowMake(store);
            int step = 0;
            for (MakeState state = show.answer(make); state.here() != null; state = show.answer(make)) {
                new RecordStep(store).done(state, state.here(), state.seen(), "d" + step++ + ingredients);
            }
            new FinishMake(store).answer(show.answer(make), "e" + ingredients);
        }
    }

    @Test
    void batchesAreListedAndOneIsShownWithItsLog() {
        assertThat(Desk.type("batches" + data).out()).contains("Pear", "28.0", "180");
        JsonNode one = Desk.ask("batches 1" + data).json();
        assertThat(one.at("/vessels/0/strength_vol_percent").doubleValue()).isCloseTo(28.0, within(0.2));
        Desk.Run missing = Desk.type("batches 9" + data);
        assertThat(missing.exit()).isEqualTo(3);
        assertThat(missing.err()).contains("no batch 9");
        assertThat(Desk.type("batches --data " + dir.resolve("nowhere")).exit()).isEqualTo(3);
    }

    @Test
    void whatWasDoneIsWrittenDown() {
        Desk.Run run = Desk.type("log 1 moved --to demijohn --sediment 30ml --note racked" + data);
        assertThat(run.exit()).as(run.err()).isZero();
        assertThat(run.out()).contains("moved from 1 to demijohn: all of it; 30.0 mL left above the sediment – racked");
        JsonNode lost = Desk.ask("log 1 lost --amount 100ml" + data).json();
        assertThat(lost.at("/vessels/0/volume_20c_ml").doubleValue()).isCloseTo(1870.0, within(10.0));
        assertThat(lost.get("log").size()).isEqualTo(2);
    }

    @Test
    void anEntryIsTakenBackByItsNumber() {
        JsonNode lost = Desk.ask("log 1 lost --amount 100ml" + data).json();
        long entry = lost.at("/log/0/entry").longValue();
        Desk.Run back = Desk.type("log 1 take-back " + entry + data);
        assertThat(back.exit()).as(back.err()).isZero();
        assertThat(back.out()).contains("lost from 1; 100.0 mL spilt, drunk or other (taken back)", "taken back: lost");
        assertThat(Desk.type("log 1 take-back 4711" + data).exit()).isEqualTo(3);
        assertThat(Desk.type("log 1 take-back" + data).err()).contains("number of an entry");
        assertThat(Desk.type("log 1 lost 17 --amount 1ml" + data).err()).contains("take-back");
        assertThat(Desk.type("log --help").out()).doesNotContain("was waits").contains("take-back");
    }

    @Test
    void whatStopsABatchStandsBeforeItsFigures() {
        assertThat(Desk.type("batches 1" + data).out()).doesNotContain("STOP").contains("keep");
        try (Store store = Store.open(new DataFolder(dir))) {
            store.lots()
                    .add(
                            List.of(Bottles.read(
                                    "name",
                                    "oleander tincture",
                                    "kind",
                                    "tincture",
                                    "strength",
                                    "60 %",
                                    "left",
                                    "1 L")),
                            "f");
        }
        String out = Desk.type("log 1 added --what oleander~tincture --amount 20ml" + data)
                .out();
        assertThat(out.indexOf("oleander")).isBetween(0, out.indexOf("% vol"));
        assertThat(out).doesNotContain("beside what stops it").contains("stillroom batches 1");
        assertThat(Desk.type("batches 1" + data).out()).contains("In vessel 1, beside what stops it:");
        JsonNode first = Desk.ask("batches 1" + data).json().at("/vessels/0/findings/0");
        assertThat(first.get("severity").asString()).isEqualTo("stop");
        assertThat(first.toString()).contains("oleander");
    }

    @Test
    void whatABatchHasCostIsToldToScripts() {
        make("ingredients:\n  - {name: spirit 96 % vol, kind: spirit, strength: 96 %, price: 18 EUR/L}\n");
        for (String command : new String[] {"batches 2", "log 2 lost --amount 10ml"}) {
            JsonNode cost = Desk.ask(command + data).json().at("/vessels/0/cost/0");
            assertThat(cost.get("currency").asString()).as(command).isEqualTo("EUR");
            assertThat(cost.get("amount").doubleValue()).as(command).isCloseTo(560.0 / 960.0 * 18.0, within(0.05));
        }
        assertThat(Desk.ask("batches" + data).json().at("/batches/0/vessels/0/cost"))
                .hasSize(1);
    }

    @Test
    void whatCannotBeWrittenIsSaidWithItsFieldAndKeepsNothing() {
        Desk.Run field = Desk.type("log 1 lost --amount 10ml --fills 2x100ml" + data);
        assertThat(field.exit()).isEqualTo(2);
        assertThat(field.err()).contains("fills", "It takes");
        assertThat(Desk.type("log 1 drunk" + data).err()).contains("\"drunk\"", "evaporated");
        assertThat(Desk.type("log 1 lost --amount 9L" + data).exit()).isEqualTo(2);
        assertThat(Desk.ask("batches 1" + data).json().get("log").size()).isZero();
    }

    @Test
    void whatBatchesTellOfLabelsIsToldAndTakenWhenAsked() {
        assertThat(Desk.type("learned" + data).out()).contains("Nothing yet");
        Path other = dir.resolve("mislabelled");
        String id;
        try (MislabelledKitchen kitchen = new MislabelledKitchen(other)) {
            kitchen.fourBatches(90.0);
            id = kitchen.spirit.id();
        }
        String learned = "learned --data " + other;
        assertThat(Desk.type(learned).out())
                .contains("grain spirit: comes out at 9")
                .containsPattern("by\\s+4\\s+batches;\\s+its\\s+label\\s+says\\s+96\\.0");
        assertThat(Desk.ask(learned).json().at("/labels/0/standing").asString()).isEqualTo("clear");
        assertThat(Desk.type(learned + " --take jug").exit()).isEqualTo(3);
        assertThat(Desk.type(learned + " --take juniper~essence").err()).contains("nothing clear");
        Desk.ask(learned + " --take " + id);
        assertThat(Desk.type(learned + " --take " + id).exit()).isEqualTo(2);
    }

    @Test
    void whatWaitsIsToldPostponedAndSeenTo() {
        JsonNode rest = Desk.ask("rest" + data).json().at("/rest/0");
        String wait = rest.get("wait").asString();
        JsonNode later =
                Desk.ask("rest --postpone=" + wait + " --days 7~days" + data).json();
        assertThat(later.at("/rest/0/until").asString())
                .isGreaterThan(rest.get("until").asString());
        assertThat(Desk.type("rest" + data).out()).contains("marrying", "1 Pear");
        assertThat(Desk.type("rest --done=" + wait + data).out()).contains("Nothing waits");
        assertThat(Desk.type("rest --done=4711" + data).exit()).isEqualTo(3);
    }
}
