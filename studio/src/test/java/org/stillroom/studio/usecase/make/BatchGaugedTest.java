package org.stillroom.studio.usecase.make;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.gauging.Gauged;
import org.stillroom.core.gauging.Thermometer;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.usecase.GaugeVessel;
import org.stillroom.studio.usecase.batch.RecordBatch;
import org.stillroom.studio.web.frame.Guest;
import org.stillroom.studio.web.make.MakeRoom;
import org.stillroom.studio.web.rest.RestRoom;

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
                new GaugeVessel.Asked(
                        List.of(),
                        Thermometer.USUAL,
                        GaugeVessel.poured(state.whole().measured())),
                Workings.NONE);
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
                    .contains("What is in it", "What the log says");
        }
    }

    private void moved(String... fields) {
        RecordBatch record = new RecordBatch(kitchen.store, Clock.systemUTC());
        Map<String, String> typed = new LinkedHashMap<>(Map.of("vessel", "1"));
        for (int i = 0; i < fields.length; i += 2) {
            typed.put(fields[i], fields[i + 1]);
        }
        assertThat(record.moved(batch, typed, Kitchen.request())).isInstanceOf(RecordBatch.Outcome.Kept.class);
    }

    /** A litre was made, 685 mL are left by the log: what is read is held against that. */
    @Test
    void whatTheLogSaysOfTheVesselIsWhatIsHeldAgainstTheReadings() throws Exception {
        moved("to", "demijohn", "sediment", "315 ml");
        String read =
                "/make/gauge?density=1.0294g/ml&refractometer=25.9Bx&volume=685ml&to-strength=30%25&restores=yes&batch="
                        + batch.id();
        try (Guest guest = new Guest(kitchen.store, folder, MakeRoom::new)) {
            String page = guest.page(read);
            assertThat(page)
                    .contains("What the log says", "name=\"vessel\" value=\"demijohn\"")
                    .doesNotContain("left out", "does not fit");
            Matcher volume = Pattern.compile("name=\"volume\" value=\"([0-9.]+)\\.\\.([0-9.]+) ml\"")
                    .matcher(page);
            assertThat(volume.find()).isTrue();
            assertThat(Double.parseDouble(volume.group(1))).isBetween(675.0, 685.0);
            assertThat(Double.parseDouble(volume.group(2))).isBetween(685.0, 695.0);
        }
    }

    @Test
    void withSomethingInTwoVesselsItAsksWhich() throws Exception {
        moved("to", "demijohn", "amount", "300 ml");
        try (Guest guest = new Guest(kitchen.store, folder, MakeRoom::new)) {
            String read = "/make/gauge?density=1.0294g/ml&refractometer=25.9Bx&batch=" + batch.id();
            HttpResponse<String> open = guest.get(read);
            assertThat(open.statusCode()).isEqualTo(422);
            assertThat(open.body()).contains("in 2 vessels", "value=\"25.9Bx\"").doesNotContain("/measured");
            assertThat(guest.page(read + "&vessel=demijohn"))
                    .contains("/measured", "name=\"vessel\" value=\"demijohn\"");
        }
    }

    @Test
    void thePageOfTheBatchLeadsToEachOfItsVessels() throws Exception {
        moved("to", "demijohn", "amount", "300 ml");
        try (Guest guest = new Guest(kitchen.store, folder, RestRoom::new)) {
            assertThat(guest.page("/rest/batch/" + batch.id())).contains("&amp;vessel=demijohn", "&amp;vessel=1");
        }
    }

    @Test
    void acidityGoesIntoTheLogWhereItWasTitrated() throws Exception {
        String read = "/make/gauge?density=1.0294g/ml&refractometer=25.9Bx&batch=" + batch.id();
        try (Guest guest = new Guest(kitchen.store, folder, MakeRoom::new)) {
            assertThat(guest.page(read)).contains("name=\"strength\"").doesNotContain("name=\"acidity\" value=\"0");
            assertThat(guest.page(read + "&acidity=2g/L"))
                    .containsPattern("hidden\" name=\"acidity\" value=\"[0-9.]+\\.\\.[0-9.]+ g/L\"");
        }
    }
}
