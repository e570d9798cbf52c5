package org.stillroom.studio.web.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.store.Calibration;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.InstrumentSheet;
import org.stillroom.studio.store.LotSheet;
import org.stillroom.studio.store.Lots;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.web.frame.Guest;

/** Gauging in the browser over real HTTP, without a script. */
class GaugePagesTest {
    @TempDir
    private Path dir;

    private Guest guest;
    private Store store;

    @BeforeEach
    void open() {
        guest = new Guest(dir, MakeRoom::new);
        store = guest.store();
    }

    @AfterEach
    void close() {
        guest.close();
    }

    @Test
    void makeLeadsToIt() throws Exception {
        assertThat(guest.get("/make", "en").body()).contains("/make/gauge");
    }

    @Test
    void readingsAreAnsweredWithAnEstimateAndACorrection() throws Exception {
        HttpResponse<String> page = guest.get(
                "/make/gauge?" + Guest.field("density", "1.0295 g/ml") + "&" + Guest.field("refractometer", "25.9 Bx")
                        + "&" + Guest.field("volume", "1.9 L") + "&" + Guest.field("to-strength", "40 %") + "&"
                        + Guest.field("with", "96%"),
                "en");
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.body())
                .contains("What is in it", "Hidden from a spirit hydrometer", "Least added", "spirit of 96%");
    }

    @Test
    void anInstrumentOfTheShelfIsChosenAndPutsItsReadingRight() throws Exception {
        assertThat(guest.get("/make/gauge", "en").body())
                .contains("Calibrate your hydrometer")
                .doesNotContain("own-hydrometer");
        Instrument own = store.instruments()
                .add(new InstrumentSheet("Spindle", "hydrometer", Map.of("scale", "SG", "marks", "0.002"), null), "a");
        store.instruments().calibrate(own.id(), 1, new Calibration("2026-11-26", 0.002, 0.001, Map.of()), "b");

        HttpResponse<String> page = guest.get(
                "/make/gauge?" + Guest.field("hydrometer", "SG 1.0316") + "&" + Guest.field("refractometer", "25.9 Bx")
                        + "&" + Guest.field("own-hydrometer", own.id()),
                "en");
        assertThat(page.body()).contains("1.0296 SG 20/20", "shows 0.002", "Spindle, calibrated");
        assertThat(page.body()).contains("value=\"" + own.id() + "\" selected");
    }

    @Test
    void theThermometerOfTheShelfSaysHowSureItIs() throws Exception {
        Instrument own = store.instruments()
                .add(new InstrumentSheet("Probe", "thermometer", Map.of("tolerance", "0.2"), null), "a");
        String asked = "/make/gauge?" + Guest.field("density", "1.0295 g/ml") + "&"
                + Guest.field("refractometer", "25.9 Bx") + "&" + Guest.field("temperature", "24 C");
        assertThat(guest.get(asked, "en").body()).contains("right within ± 0.5 °C");
        assertThat(guest.get(asked + "&" + Guest.field("own-thermometer", own.id()), "en")
                        .body())
                .contains("right within ± 0.2 °C");
        assertThat(guest.get(asked, "de").body()).contains("richtig auf ± 0,5 °C");
    }

    @Test
    void beforeAnythingIsMeasuredItSaysWhatServes() throws Exception {
        String before = guest.get("/make/gauge", "en").body();
        assertThat(before)
                .contains("Before you measure", "Only hydrometer and refractometer", "which wants 100 to 250");
        assertThat(before.indexOf("h-before")).isLessThan(before.indexOf("name=\"hydrometer\""));

        HttpResponse<String> kit = guest.get(
                "/make/gauge?kit=HYDROMETER_AND_REFRACTOMETER&" + Guest.field("about-strength", "27 %") + "&"
                        + Guest.field("about-sugar", "165 g/L") + "&" + Guest.field("about-volume", "700 ml"),
                "en");
        assertThat(kit.body())
                .contains("<b>hydrometer + refractometer</b>", "± 1.8 % vol, ± 6 g/L", "much of so small a batch")
                .contains("Sugar hides some 27.0 % vol")
                .doesNotContain("drying a weighed sample");
        HttpResponse<String> ticked =
                guest.get("/make/gauge?can-HYDROMETER=yes&" + Guest.field("about-strength", "27 %"), "de");
        assertThat(ticked.body()).contains("Nichts davon unterscheidet");
        HttpResponse<String> wrong = guest.get("/make/gauge?" + Guest.field("about-strength", "strong"), "en");
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("value=\"strong\"", "aria-invalid=\"true\"");
    }

    @Test
    void theShelfAloneIsAWayOnceSomethingStandsThere() throws Exception {
        String asked = "/make/gauge?" + Guest.field("density", "1.0295 g/ml") + "&"
                + Guest.field("refractometer", "25.9 Bx") + "&"
                + Guest.field("volume", "1.9 L") + "&" + Guest.field("to-sugar", "200 g/L") + "&"
                + Guest.field("restore", "bay tincture=40 ml@60 %");
        assertThat(guest.get(asked, "en").body())
                .contains("bay tincture", "flavour of what was named stays")
                .doesNotContain("Only what is on the shelf");
        LotSheet sheet = new LotSheet(
                "white sugar",
                "sugar",
                Map.of(),
                null,
                null,
                1000,
                "g",
                null,
                null,
                null,
                null,
                null,
                null,
                false,
                null);
        store.lots().add(List.of(new Lots.NewLot(sheet, 820)), "lot");
        assertThat(guest.get(asked, "de").body()).contains("Nur was im Regal steht", "weißer Zucker");
    }

    @Test
    void everyReadingThatTheDeskTakesHasItsField() throws Exception {
        String form = guest.get("/make/gauge", "en").body();
        for (String field : List.of(
                "density",
                "hydrometer",
                "reference",
                "glass",
                "refractometer",
                "residue",
                "dry-residue",
                "strength",
                "sugar",
                "acidity",
                "volume",
                "mass",
                "to-strength",
                "to-sugar",
                "to-acidity",
                "room")) {
            assertThat(form).as(field).contains("name=\"" + field + "\"");
        }
        String read = guest.get(
                        "/make/gauge?" + Guest.field("dry-residue", "181 g/L") + "&" + Guest.field("strength", "28 %")
                                + "&"
                                + Guest.field("hydrometer", "SG 1.0316; SG 1.0318") + "&"
                                + Guest.field("reference", "60 F") + "&"
                                + Guest.field("volume", "1.9 L") + "&" + Guest.field("to-acidity", "5 g/L") + "&"
                                + Guest.field("room", "1.9 L"),
                        "en")
                .body();
        assertThat(read)
                .contains("dry residue", "strength distilled or labelled", "citric acid", "Draw off")
                .contains("marked for 15.6")
                .contains("not known; none is reckoned with", "no acid at all");
        HttpResponse<String> wrong = guest.get(
                "/make/gauge?" + Guest.field("density", "1.0295 g/ml") + "&" + Guest.field("sugar", "180 g/L") + "&"
                        + Guest.field("volume", "1.9 L") + "&" + Guest.field("to-acidity", "5 g/L") + "&"
                        + Guest.field("room", "large"),
                "en");
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("value=\"large\"");
    }

    @Test
    void itIsSaidInGermanToo() throws Exception {
        HttpResponse<String> page = guest.get(
                "/make/gauge?" + Guest.field("density", "1.0295 g/ml") + "&" + Guest.field("refractometer", "25.9 Bx"),
                "de");
        assertThat(page.body()).contains("Was darin ist", "Vor der Alkoholspindel verborgen");
    }

    @Test
    void whatIsNotUnderstoodStaysInItsFieldWithTheReason() throws Exception {
        HttpResponse<String> page = guest.get(
                "/make/gauge?" + Guest.field("density", "heavy") + "&" + Guest.field("refractometer", "25.9 Bx"), "en");
        assertThat(page.statusCode()).isEqualTo(422);
        assertThat(page.body()).contains("value=\"heavy\"", "value=\"25.9 Bx\"", "aria-invalid=\"true\"");
    }

    @Test
    void anUnknownBatchIsNotThere() throws Exception {
        assertThat(guest.get("/make/gauge?batch=nowhere", "en").statusCode()).isEqualTo(404);
    }
}
