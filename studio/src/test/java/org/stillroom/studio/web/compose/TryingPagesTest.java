package org.stillroom.studio.web.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.faults.FaultLog;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.make.BeginMake;
import org.stillroom.studio.usecase.shelf.Bottles;
import org.stillroom.studio.web.frame.StudioServer;

/** Looking at what would be, over real HTTP on a real store. */
class TryingPagesTest {
    @TempDir
    private Path dir;

    private Store store;
    private StudioServer server;

    @BeforeEach
    void open() {
        store = Store.open(new DataFolder(dir.resolve("data")));
        server = StudioServer.start(
                new StudioServer.Settings(0, "127.0.0.1"),
                store,
                List.of(new ComposeRoom(store)),
                new FaultLog(dir.resolve("log")));
    }

    @AfterEach
    void close() {
        server.close();
    }

    private Lot tincture(String label, String ratio) {
        return store.lots()
                .add(
                        List.of(Bottles.read(
                                "name",
                                "bay tincture",
                                "kind",
                                "tincture",
                                "strength",
                                "60 %",
                                "left",
                                label.equals("lot 1") ? "100 ml" : "200 ml",
                                "label",
                                label,
                                "ratio",
                                ratio)),
                        label)
                .get(0);
    }

    private String recipe() {
        String recipe = store.recipes().create("Bay", "r1");
        String text = """
                stillroom: 1
                title: Bay
                target: {volume: 1 L, strength: 30 %}
                ingredients: [{name: bay tincture, kind: tincture, strength: 60 %}]
                lines:
                  - {use: bay tincture, dose: 12 ml/L}
                  - {use: spirit 96 %, amount: free}
                  - {use: water, amount: make up}
                """;
        store.recipes().save(recipe, 0, "Bay", text, "bay.yaml", "r2");
        return recipe;
    }

    private String get(String path) throws Exception {
        URI address = URI.create(server.url()).resolve(path);
        HttpResponse<String> answer = HttpClient.newHttpClient()
                .send(
                        HttpRequest.newBuilder(address)
                                .header("Accept-Language", "en")
                                .build(),
                        HttpResponse.BodyHandlers.ofString());
        assertThat(answer.statusCode()).isEqualTo(200);
        return answer.body();
    }

    @Test
    void aWeakerLotIsOfferedWithTheDoseThatFollows() throws Exception {
        tincture("lot 1", "1:5");
        String swap = "/compose/" + recipe() + "/swap?line=0&with="
                + tincture("lot 2", "1:8").id();

        assertThat(get(swap))
                .contains("it is 0.63 times as strong: 12 ml/L become 19.2 ml/L")
                .contains("name=\"lines.0.amount\" value=\"19.2 ml/L\"", "name=\"lines.0.amount\" value=\"12 ml/L\"");
        assertThat(get(swap + "&recipes=10%20ml&mine=12%20ml")).contains("By your comparison", "become 14.4 ml/L");
        assertThat(get("/compose/" + recipe() + "/swap?line=1&with=spirit%2063%20%25"))
                .doesNotContain("times as strong");
    }

    @Test
    void aLotThatIsChosenForAMakeIsToldApartByItsStrength() {
        tincture("lot 1", "1:5");
        Lot weak = tincture("lot 2", "1:8");
        BeginMake begin = new BeginMake(store);
        Revision revision = store.recipes().latest(recipe()).orElseThrow();
        Map<String, BeginMake.Stronger> stronger = begin.stronger(revision, begin.lots(revision));

        assertThat(Objects.requireNonNull(stronger.get(weak.id())).offer().after())
                .isEqualTo("19.2 ml/L");
        assertThat(stronger).containsOnlyKeys(weak.id());
    }
}
