package org.stillroom.studio.web.make;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.usecase.make.Kitchen;
import org.stillroom.studio.usecase.shelf.Bottles;
import org.stillroom.studio.web.frame.Guest;

/** Pages of a make say what the lots say that it draws. */
class DrawnPagesTest {
    private static final String HERB = """
            stillroom: 1
            title: Herb liqueur
            target: {volume: 1 L, strength: 27 %, sugar: 190 g/L}
            ingredients:
              - {name: herb tincture, kind: tincture, strength: 60 %, ratio: 1:5}
            lines:
              - {use: herb tincture, amount: 200 ml}
              - {use: spirit 96 %, amount: free}
              - {use: white sugar, amount: free}
              - {use: water, amount: free}
            """;

    @TempDir
    private Path dir;

    private Guest guest;
    private String recipe = "";

    @BeforeEach
    void open() {
        guest = new Guest(dir, MakeRoom::new);
        recipe = guest.store().recipes().create("Herb liqueur", Kitchen.request());
        guest.store().recipes().save(recipe, 0, "Herb liqueur", HERB, null, Kitchen.request());
    }

    @AfterEach
    void close() {
        guest.close();
    }

    private Lot lot(String name, String plant) {
        return guest.store()
                .lots()
                .add(
                        List.of(Bottles.read(
                                "name",
                                name,
                                "kind",
                                "tincture",
                                "strength",
                                "60 %",
                                "ratio",
                                "1:5",
                                "plant",
                                plant,
                                "left",
                                "300 ml")),
                        Kitchen.request())
                .get(0);
    }

    private HttpResponse<String> begun(Lot lot) throws Exception {
        return guest.post(
                "/make/begin", "recipe", recipe, "revision", "1", "size", "1 L", "lot:herb tincture", lot.id());
    }

    @Test
    void thePageTheDaySheetAndTheFormTellOfThePlantsOfALot() throws Exception {
        Lot herbs = lot("herb tincture", "dried wormwood; tonka bean; celery seed");
        assertThat(guest.get("/make/begin?recipe=" + recipe, "en").body()).contains("tonka");
        assertThat(begun(herbs).statusCode()).isEqualTo(303);
        String make = "/make/" + guest.store().makes().open().get(0).id();
        assertThat(guest.get(make, "en").body()).contains("prohibited").contains("above the limit");
        assertThat(guest.get(make + "/sheet", "en").body())
                .contains("tonka")
                .contains("hujone")
                .contains("celery");
        assertThat(guest.get(make + "/sheet", "de").body()).contains("Thujon").contains("Sellerie");
    }

    @Test
    void aLotOfSomethingElseComesBackWithWhatItIs() throws Exception {
        Lot oleander = lot("oleander tincture", "oleander");
        guest.get("/make/begin?recipe=" + recipe, "en");
        HttpResponse<String> answer = begun(oleander);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("“oleander tincture” cannot be drawn for “herb tincture”");
        assertThat(guest.store().makes().open()).isEmpty();
    }
}
