package org.stillroom.studio.web.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.net.URLDecoder;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.store.Calibration;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.shelf.ShelfLots;
import org.stillroom.studio.web.frame.Guest;

/** The Shelf over real HTTP on a real store, without a script. */
class ShelfRoomTest {
    @TempDir
    private Path dir;

    private Guest guest;
    private Store store;

    @BeforeEach
    void open() throws Exception {
        guest = new Guest(dir, ShelfRoom::new);
        store = guest.store();
        guest.page("/shelf");
    }

    @AfterEach
    void close() {
        guest.close();
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return guest.get(path);
    }

    private HttpResponse<String> post(String path, String... pairs) throws IOException, InterruptedException {
        return guest.post(path, pairs);
    }

    private HttpResponse<String> upload(String path, byte[] bytes) throws IOException, InterruptedException {
        String edge = "edge" + UUID.randomUUID();
        byte[] head = ("--" + edge + "\r\nContent-Disposition: form-data; name=\"token\"\r\n\r\n" + guest.token()
                        + "\r\n--"
                        + edge
                        + "\r\nContent-Disposition: form-data; name=\"photo\"; filename=\"a.html\"\r\n"
                        + "Content-Type: text/html\r\n\r\n")
                .getBytes(StandardCharsets.UTF_8);
        byte[] tail = ("\r\n--" + edge + "--\r\n").getBytes(StandardCharsets.UTF_8);
        return guest.send(HttpRequest.newBuilder(guest.address(path))
                .header("Content-Type", "multipart/form-data; boundary=" + edge)
                .POST(HttpRequest.BodyPublishers.ofByteArrays(List.of(head, bytes, tail))));
    }

    private Lot put(String... pairs) throws IOException, InterruptedException {
        HttpResponse<String> answer = post("/shelf/put", pairs);
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(303);
        String place = answer.headers().firstValue("Location").orElseThrow();
        return store.lots().lot(place.replaceAll(".*/lots/|\\?.*", "")).orElseThrow();
    }

    private Lot pear() throws IOException, InterruptedException {
        return put("name", "Pear spirit", "kind", "spirit", "strength", "42 %", "left", "700 ml", "tare", "312 g");
    }

    @Test
    void anEmptyShelfAsksForTheBottleThatOneOwnsAndLeadsToCompose() throws Exception {
        assertThat(get("/shelf").body()).contains("Which bottle do you own?", "37.5", "96");
        HttpResponse<String> answer =
                post("/shelf/put-generic", "generic", "spirit 40 %", "left", "700 ml", "then", "compose");
        Lot bottle = store.lots().all().get(0);
        assertThat(answer.headers().firstValue("Location")).contains("/compose/new?bottle=" + bottle.id());
        assertThat(bottle.sheet().fields()).containsEntry("strength", "40 %");
    }

    @Test
    void aFormComesBackWithWhatWasTypedAndWhatIsWrongAtItsField() throws Exception {
        HttpResponse<String> answer =
                post("/shelf/put", "name", "Quince <b>syrup</b>", "kind", "syrup", "sugar", "180", "left", "1 L");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body())
                .contains("value=\"180\"", "id=\"f-sugar-not\"", "Quince &lt;b>syrup")
                .doesNotContain("<b>syrup");
        assertThat(store.lots().all()).isEmpty();
    }

    @Test
    void theSameRequestTwicePutsOneBottleOnTheShelf() throws Exception {
        String body = "token=" + guest.token() + "&request=same&name=Salt&kind=salt";
        for (int i = 0; i < 2; i++) {
            guest.send(HttpRequest.newBuilder(guest.address("/shelf/put"))
                    .header("Content-Type", "application/x-www-form-urlencoded")
                    .POST(HttpRequest.BodyPublishers.ofString(body)));
        }
        assertThat(store.lots().all()).hasSize(1);
    }

    @Test
    void aHalfFullJarIsWeighedWithItsTare() throws Exception {
        Lot pear = pear();
        assertThat(post("/shelf/lots/" + pear.id() + "/weigh", "tare", "312 g", "reading", "645.6 g")
                        .statusCode())
                .isEqualTo(303);
        assertThat(store.lots().lot(pear.id()).orElseThrow().left()).isBetween(351.0, 353.5);
        assertThat(get("/shelf/lots/" + pear.id()).body()).contains("weighed", "Undo");
        HttpResponse<String> lighter = post("/shelf/lots/" + pear.id() + "/weigh", "tare", "312 g", "reading", "300 g");
        assertThat(lighter.statusCode()).isEqualTo(422);
        assertThat(lighter.body()).contains("value=\"300 g\"", "weighs less than the empty jar");
    }

    @Test
    void theSecondOfTwoWindowsIsToldAndShownBoth() throws Exception {
        Lot pear = pear();
        String page = "/shelf/lots/" + pear.id();
        assertThat(post(page, "name", "Pear spirit", "kind", "spirit", "strength", "43 %", "version", "1")
                        .statusCode())
                .isEqualTo(303);
        HttpResponse<String> second =
                post(page, "name", "Pear spirit", "kind", "spirit", "strength", "44 %", "version", "1");
        assertThat(second.statusCode()).isEqualTo(409);
        assertThat(second.body()).contains("43 %", "44 %", "Keep mine");
        assertThat(store.lots().lot(pear.id()).orElseThrow().sheet().fields()).containsEntry("strength", "43 %");
    }

    @Test
    void whatIsRemovedComesBackFromTheBarAndFromTheHistory() throws Exception {
        Lot pear = pear();
        HttpResponse<String> removed = post("/shelf/lots/" + pear.id() + "/remove");
        String place = removed.headers().firstValue("Location").orElseThrow();
        assertThat(store.lots().all()).isEmpty();
        assertThat(get(place).body()).contains("Removed.", "Undo");
        assertThat(get("/shelf/removed").body()).contains("Pear spirit");
        post("/shelf/undo", "entry", place.substring(place.indexOf('=') + 1));
        assertThat(store.lots().all()).containsExactly(pear);
        assertThat(post("/shelf/undo", "entry", place.substring(place.indexOf('=') + 1))
                        .statusCode())
                .as("a second time")
                .isEqualTo(409);
    }

    @Test
    void aTableIsLookedAtThenCorrectedThenAccepted() throws Exception {
        String wrong = "name;kind;strength;left\nRum;spirit;54 %;1 L\nGin;spirit;;1 L\n";
        HttpResponse<String> refused = post("/shelf/table", "table", wrong);
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("line 3", "strength of Gin", "Rum;spirit;54 %");
        String right = wrong.replace(";;", ";47 %;");
        HttpResponse<String> preview = post("/shelf/table", "table", right);
        assertThat(preview.statusCode()).isEqualTo(200);
        assertThat(store.lots().all()).isEmpty();
        Matcher mark = Pattern.compile("name=\"mark\" value=\"([^\"]+)\"").matcher(preview.body());
        assertThat(mark.find()).isTrue();
        assertThat(post("/shelf/table/accept", "table", right, "mark", "other").statusCode())
                .isEqualTo(409);
        assertThat(post("/shelf/table/accept", "table", right, "mark", mark.group(1))
                        .statusCode())
                .isEqualTo(303);
        assertThat(store.lots().all()).hasSize(2);
        assertThat(get("/shelf/export.csv").body())
                .startsWith("\uFEFFid,name,kind")
                .contains("Rum");
        assertThat(get("/shelf/export.json").body())
                .contains("\"strength\" : \"54 %\"", "\"strength_vol_percent\"", "\"left_ml\" : 1000.0");
    }

    @Test
    void aPhotoIsTakenForWhatItsBytesAreAndServedSoThatNothingInItRuns() throws Exception {
        Lot pear = pear();
        assertThat(upload("/shelf/lots/" + pear.id() + "/photo", "<script>".getBytes(StandardCharsets.UTF_8))
                        .statusCode())
                .isEqualTo(422);
        byte[] png = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n', 0, 0, 0, 0};
        assertThat(upload("/shelf/lots/" + pear.id() + "/photo", png).statusCode())
                .isEqualTo(303);
        String photo = store.lots().lot(pear.id()).orElseThrow().sheet().photo();
        HttpResponse<String> served = get("/shelf/photos/" + photo);
        assertThat(served.headers().firstValue("Content-Type")).get().asString().startsWith("image/png");
        assertThat(served.headers().firstValue("Content-Security-Policy")).contains("default-src 'none'; sandbox");
        assertThat(served.headers().firstValue("X-Content-Type-Options")).contains("nosniff");
        byte[] large = new byte[8 * 1024 * 1024 + 1];
        System.arraycopy(png, 0, large, 0, png.length);
        assertThat(upload("/shelf/lots/" + pear.id() + "/photo", large).statusCode())
                .isIn(413, 422);
    }

    @Test
    void findingAndNarrowingWorkBySubmitAlone() throws Exception {
        pear();
        put("name", "Bay tincture", "kind", "tincture", "strength", "60 %", "left", "100 ml");
        assertThat(get("/shelf?seek=bay").body()).contains("Bay tincture").doesNotContain("Pear spirit");
        assertThat(get("/shelf?sort=spirits").body()).contains("Pear spirit").doesNotContain("Bay tincture");
        assertThat(get("/shelf?seek=nowhere").body()).doesNotContain("id=\"none\" role=\"status\" hidden");
    }

    @Test
    void anInstrumentAndAJarArePutChangedAndTakenAway() throws Exception {
        assertThat(post("/shelf/instruments", "kind", "scale", "name", "Bench", "marks", "5 ml")
                        .statusCode())
                .isEqualTo(422);
        post("/shelf/instruments", "kind", "scale", "name", "Bench", "marks", "0.1 g");
        post("/shelf/instruments", "kind", "jar", "name", "Half litre", "tare", "312 g");
        assertThat(get("/shelf/instruments").body()).contains("Bench", "0.1 g", "Half litre", "312 g");
        String id = store.instruments().all().get(0).id();
        String place = post("/shelf/instruments/" + id + "/remove")
                .headers()
                .firstValue("Location")
                .orElseThrow();
        assertThat(store.instruments().all()).hasSize(1);
        post("/shelf/undo", "entry", place.substring(place.indexOf('=') + 1));
        assertThat(store.instruments().all()).hasSize(2);
    }

    @Test
    void aHydrometerIsCalibratedLookedAtKeptAndForgotten() throws Exception {
        assertThat(post("/shelf/instruments", "kind", "hydrometer", "name", "Spindle", "marks", "two")
                        .statusCode())
                .isEqualTo(422);
        post("/shelf/instruments", "kind", "hydrometer", "name", "Spindle", "scale", "SG", "marks", "0.002");
        String page = "/shelf/instruments/" + store.instruments().all().get(0).id();
        assertThat(get(page).body()).contains("It is not calibrated", page + "/calibrate");

        HttpResponse<String> wrong = get(page + "/calibrate?hydrometer=0.5%20Bx");
        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body()).contains("its scale is SG 20/20", "value=\"0.5 Bx\"");
        assertThat(get(page + "/calibrate?hydrometer=1.002;1.0024").body())
                .contains("It shows 0.00220 SG 20/20 too much", "Keep this calibration");
        assertThat(store.instruments().all().get(0).sheet().calibration()).isNull();

        post(page + "/calibrate", "hydrometer", "1.002; 1.0024");
        Calibration kept = store.instruments().all().get(0).sheet().calibration();
        assertThat(Objects.requireNonNull(kept).value()).isCloseTo(0.0022, within(1e-9));
        assertThat(kept.typed()).containsEntry("hydrometer", List.of("1.002", "1.0024"));
        assertThat(get(page).body()).contains("too much", "Forget the calibration");
        assertThat(get("/shelf/instruments").body()).contains("calibrated");
        post(page + "/uncalibrate");
        assertThat(store.instruments().all().get(0).sheet().calibration()).isNull();
    }

    @Test
    void everyInstrumentThatGaugesHasItsCalibration() throws Exception {
        post("/shelf/instruments", "kind", "refractometer", "name", "R", "compensated", "yes", "marks", "0.2");
        post("/shelf/instruments", "kind", "flask", "name", "F", "holds", "50 ml");
        post("/shelf/instruments", "kind", "thermometer", "name", "T", "marks", "1");
        post("/shelf/instruments", "kind", "dropper", "name", "D");
        post("/shelf/instruments", "kind", "scale", "name", "S", "marks", "0.1 g");
        Map<String, String> asked = Map.of(
                "R", "refractometer=10.2&in=10%20Bx",
                "F", "empty=31.2%20g&full=81.0%20g",
                "T", "thermometer=0.6",
                "D", "drops=50&weighed=2.31%20g",
                "S", "");
        for (Instrument instrument : store.instruments().all()) {
            String name = instrument.sheet().name();
            HttpResponse<String> page = get("/shelf/instruments/" + instrument.id() + "/calibrate?" + asked.get(name));
            assertThat(page.statusCode()).as(name).isEqualTo(name.equals("S") ? 404 : 200);
            if (!name.equals("S")) {
                assertThat(page.body()).as(name).contains("Keep this calibration");
            }
        }
    }

    @Test
    void everyKindHasItsForm() throws Exception {
        for (String kind : ShelfLots.kinds()) {
            assertThat(get("/shelf/put/" + kind.replace(' ', '-')).statusCode())
                    .as(kind)
                    .isEqualTo(200);
        }
        assertThat(get("/shelf/put/potion").statusCode()).isEqualTo(404);
    }

    @Test
    void emptyBottlesStandOnABoardOfTheirOwnAndAreCountedNotWeighed() throws Exception {
        Lot bottles = put(
                "name",
                "flat ones",
                "kind",
                "empty bottles",
                "holds",
                "350 ml",
                "left",
                "12",
                "full",
                "12",
                "paid",
                "12 EUR");
        assertThat(bottles.left()).isEqualTo(12.0);
        assertThat(get("/shelf").body()).contains("Bottles and labels", "flat ones", "empty bottles, 350 ml", "pcs");
        String page = get("/shelf/lots/" + bottles.id()).body();
        assertThat(page).contains("holds to the brim", "how many there were").doesNotContain("/weigh", "/compose/new");
        post("/shelf/lots/" + bottles.id() + "/left", "left", "9");
        assertThat(store.lots().lot(bottles.id()).orElseThrow().left()).isEqualTo(9.0);
    }

    @Test
    void whatIsLeftIsShownRankedAndUsedUp() throws Exception {
        assertThat(get("/shelf/left").body())
                .contains("Nothing stands on the shelf.", "essential oils, essences, tinctures");
        put("name", "bay tincture", "kind", "tincture", "strength", "70 %", "left", "40 ml", "opened", "2020-01-10");
        put("name", "quince macerate", "kind", "macerate", "strength", "45 %", "left", "300 ml");
        String text = """
                stillroom: 1
                title: Bay and nothing else
                target: {volume: 1 L, strength: 28 %}
                ingredients: [{name: bay tincture, kind: tincture, strength: 70 %}]
                lines:
                  - {use: bay tincture, dose: 40 ml/L}
                  - {use: spirit 96 %, amount: free}
                  - {use: water, amount: make up}
                """;
        String recipe = store.recipes().create("Bay and nothing else", "r1");
        store.recipes().save(recipe, 0, "Bay and nothing else", text, "bay.yaml", "r2");
        assertThat(get("/shelf/left").body())
                .contains(
                        "open for longer than it usually keeps",
                        "Bay and nothing else",
                        "1000.0\u00a0mL; bottles emptied: 1, used in part: 0");
        assertThat(get("/shelf/left?most=soon").statusCode()).isEqualTo(422);
        HttpResponse<String> used = get(
                "/shelf/left/use-up?extract=bay+tincture&extract=quince+macerate&strength=28+%25&sugar=200+g%2FL&most=2+L");
        assertThat(used.statusCode()).isEqualTo(200);
        assertThat(used.body())
                .contains("takes all of it; bottles emptied: 2, used in part: 0", "Compose it", "title: ");
        HttpResponse<String> bounded = get("/shelf/left/use-up?extract=bay+tincture&most-0=10+ml%2FL&most=1+L");
        assertThat(bounded.body()).contains("takes as much as can be; bottles emptied: 0, used in part: 1");
        assertThat(get("/shelf/left/use-up").statusCode()).isEqualTo(422);
    }

    @Test
    void theOilsOfTheShelfAreMatched() throws Exception {
        assertThat(get("/shelf/match").body()).contains("No essential oil stands on your shelf");
        put("name", "lemon oil", "kind", "essential oil", "left", "10 ml");
        HttpResponse<String> matched = get("/shelf/match?want=lime%3D90mg");
        assertThat(matched.statusCode()).isEqualTo(200);
        assertThat(matched.body()).contains("that are looked at: lemon oil", "the profile is off by");
        assertThat(get("/shelf/match?want=moon+dust%3D90mg").statusCode()).isEqualTo(422);
    }

    @Test
    void aBottleThatNobodyIsToDrinkOfSaysSoOnTheShelfAndOnItsPage() throws Exception {
        put("name", "lemon oil", "kind", "essential oil", "left", "10 ml");
        assertThat(get("/shelf").body()).doesNotContain("Stop:");
        Lot oleander = put("name", "Oleanderöl", "kind", "essential oil", "left", "5 ml");
        assertThat(get("/shelf").body()).containsOnlyOnce("Stop: poisonous.");
        assertThat(get("/shelf/lots/" + oleander.id()).body()).contains("cardiac glycosides");
    }

    private static final String ESSENCE =
            "title=Winter&by=mass&oils.0.oil=lemon&oils.0.parts=10&oils.0.drop=20.5%20mg&oils.1.oil=black+pepper"
                    + "&oils.1.parts=3&oils.1.drop=23%20mg&oils.2.oil=laurel&oils.2.parts=2&together=0.4%20g%2FL"
                    + "&carrier=96%20%25&dose=5%20ml%2FL&marks=0.1%20ml&batch=1%20L";

    @Test
    void anEssenceIsPlannedWithTheDropOfTheShelfAndPutThereWithItsRecipe() throws Exception {
        put("name", "laurel", "kind", "essential oil", "left", "10 ml", "drop", "21.5 mg");
        assertThat(get("/shelf/essence").body()).contains("<option value=\"laurel\">", "value=\"96 %\"");
        HttpResponse<String> planned = get("/shelf/essence?" + ESSENCE);
        assertThat(planned.statusCode()).isEqualTo(200);
        assertThat(planned.body())
                .contains(
                        "26 drops lemon, 7 drops black pepper, 5 drops laurel",
                        "From the shelf comes the drop of: laurel")
                .contains("use: lemon, amount: 26 drops", "amount: make up")
                .contains("are an essence for 2 batches", "10\u00a0% by mass");

        assertThat(putEssence(ESSENCE).statusCode()).isEqualTo(303);
        Lot lot = store.lots().all().stream()
                .filter(each -> each.sheet().kind().equals("essence"))
                .findFirst()
                .orElseThrow();
        assertThat(lot.left()).isEqualTo(10.02);
        assertThat(lot.sheet().label()).isEqualTo("lot 3");
        assertThat(lot.sheet().fields().get("aroma"))
                .isEqualTo("lemon 53.20 g/L; black pepper 16.07 g/L; laurel 10.73 g/L");
        assertThat(Objects.requireNonNull(lot.sheet().origin()).made()).isEqualTo("2026-01-02");
        assertThat(get("/shelf/lots/" + lot.id()).body()).contains("by revision 1 of", ">Winter</a>");
        assertThat(get("/shelf/left").body()).contains("Winter");
        post("/shelf/lots/" + lot.id(), "version", "1", "kind", "essence", "name", "Winter", "strength", "87 %");
        assertThat(Objects.requireNonNull(
                                store.lots().lot(lot.id()).orElseThrow().sheet().origin())
                        .revision())
                .isEqualTo(1);
    }

    private HttpResponse<String> putEssence(String asked) throws Exception {
        List<String> fields = new ArrayList<>(List.of("choice", "26:7:5", "label", "lot 3", "made", "2026-01-02"));
        for (String pair : asked.split("&", -1)) {
            String[] sides = pair.split("=", -1);
            fields.add(sides[0]);
            fields.add(URLDecoder.decode(sides[1], StandardCharsets.UTF_8));
        }
        return post("/shelf/essence/put", fields.toArray(String[]::new));
    }

    @Test
    void anEssenceThatIsNotForDrinkingSaysWhyAndGetsNoPlace() throws Exception {
        String wintergreen = ESSENCE.replace("laurel", "wintergreen");
        assertThat(get("/shelf/essence?" + wintergreen).body()).contains("aspirin-equivalent");
        String oleander = (ESSENCE + "&oils.2.drop=21.5%20mg").replace("laurel", "oleander");
        assertThat(get("/shelf/essence?" + oleander).body())
                .contains("26 drops lemon, 7 drops black pepper, 5 drops oleander", "cardiac glycosides")
                .doesNotContain("/shelf/essence/put", "use: oleander");
        assertThat(putEssence(oleander).statusCode()).isEqualTo(422);
        assertThat(store.lots().all()).isEmpty();
        assertThat(store.recipes().heads(true)).isEmpty();
        assertThat(putEssence(oleander.replace("oleander", "laurel")).statusCode())
                .isEqualTo(303);
    }

    @Test
    void anEssenceThatIsNotUnderstoodComesBackWithWhatIsWrong() throws Exception {
        HttpResponse<String> answer = get("/shelf/essence?title=Winter&oils.0.oil=lemon&oils.0.parts=ten&dose=5");
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("lemon, parts", "value=\"ten\"", "“together” is missing");
        assertThat(post("/shelf/essence/put", "title", "Winter", "choice", "1:1", "made", "2026-01-02")
                        .statusCode())
                .isEqualTo(422);
        assertThat(store.lots().all()).isEmpty();
    }
}
