package org.stillroom.studio.usecase.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.gauging.Gauged;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.usecase.GaugeVessel;
import org.stillroom.studio.web.frame.Guest;
import org.stillroom.studio.web.make.MakeRoom;

/** A batch is gauged with what really went into it. */
class BatchGaugedTest {
    @TempDir
    private Path folder;

    private Kitchen kitchen;
    private Batch batch;

    @BeforeEach
    void open() {
        kitchen = new Kitchen(folder);
        String make = kitchen.begun(kitchen.saved("Bay", Kitchen.BAY));
        kitchen.finishAsAsked(make);
        batch = new FinishMake(kitchen.store).answer(kitchen.state(make), Kitchen.request());
    }

    @AfterEach
    void close() {
        kitchen.close();
    }

    @Test
    void withoutAnyReadingItIsWhatWentIn() {
        MakeState state = kitchen.state(batch.make());
        Gauged gauged = GaugeVessel.answer(
                new GaugeVessel.Asked(List.of(), state.whole().measured()), Workings.NONE);
        BatchSheet sheet = FinishMake.sheet(batch);
        assertThat(gauged.strength().value()).isCloseTo(sheet.strength(), within(0.05));
        assertThat(gauged.sugar().value()).isCloseTo(sheet.sugar(), within(0.5));
        assertThat(gauged.strength().halfWidth()).isBetween(0.01, 1.0);
    }

    @Test
    void itsPageLeadsThereAndTellsWhatWasPouredBesideTheReadings() throws Exception {
        try (Guest guest = new Guest(kitchen.store, folder, MakeRoom::new)) {
            assertThat(guest.page("/make/batch/" + batch.id())).contains("/make/gauge?batch=" + batch.id());
            assertThat(guest.page("/make/gauge?batch=" + batch.id())).contains("Which readings serve best here");
            assertThat(guest.page("/make/gauge?refractometer=25.9Bx&batch=" + batch.id()))
                    .contains("What is in it", "What was poured");
        }
    }
}
