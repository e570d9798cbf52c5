package org.stillroom.studio.web.rest;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.usecase.batch.RecordBatch;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.make.Kitchen;
import org.stillroom.studio.usecase.shelf.Bottles;
import org.stillroom.studio.web.frame.Guest;

/** What stops a batch stands on its page before the figures of what is in it. */
class BatchPagesTest {
    @TempDir
    private Path dir;

    private Kitchen kitchen;
    private Guest guest;
    private Batch batch;

    @BeforeEach
    void open() {
        kitchen = new Kitchen(dir.resolve("data"));
        String make = kitchen.begun(kitchen.saved("Bay leaf and juniper", Kitchen.BAY));
        kitchen.finishAsAsked(make);
        batch = new FinishMake(kitchen.store).answer(kitchen.state(make), Kitchen.request());
        guest = new Guest(kitchen.store, dir, RestRoom::new);
    }

    @AfterEach
    void close() {
        guest.close();
        kitchen.close();
    }

    private void logged(String act, Map<String, String> typed) {
        RecordBatch record = new RecordBatch(kitchen.store, Clock.system(ZoneId.systemDefault()));
        RecordBatch.Outcome outcome = act.equals("added")
                ? record.added(batch, typed, Kitchen.request())
                : record.bottled(batch, typed, Kitchen.request());
        assertThat(outcome).isInstanceOf(RecordBatch.Outcome.Kept.class);
    }

    @Test
    void aPoisonStandsBeforeTheFiguresAndNothingKeepsBesideItUnsaid() throws Exception {
        String page = "/rest/batch/" + batch.id();
        assertThat(guest.page(page)).doesNotContain("is-over").contains("class=\"facts\"");
        Lot oleander = kitchen.store
                .lots()
                .add(
                        List.of(Bottles.read(
                                "name", "oleander tincture", "kind", "tincture", "strength", "60 %", "left", "1 L")),
                        Kitchen.request())
                .get(0);
        logged("added", Map.of("vessel", "1", "what", oleander.id(), "amount", "20 ml"));
        logged("bottled", Map.of("vessel", "1", "fills", "1 x 350 ml"));
        kitchen.store.lots().remove(oleander.id(), Kitchen.request());

        String after = guest.page(page);
        assertThat(after.indexOf("is-over")).isBetween(0, after.indexOf("class=\"facts\""));
        assertThat(after).contains("Stopped, number 1").contains("Stopped, see above.");
        String bottles = after.substring(after.indexOf("h-filled"));
        assertThat(bottles.indexOf("is-over")).isBetween(0, bottles.indexOf("<table"));
        assertThat(guest.page(page, "de")).contains("Gestoppt, Nummer 1").contains("Gestoppt, siehe oben.");
    }
}
