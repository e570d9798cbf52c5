package org.stillroom.studio.web.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.make.BeginMake;
import org.stillroom.studio.usecase.shelf.Bottles;
import org.stillroom.studio.web.frame.Guest;

/** Looking at what would be, over real HTTP on a real store. */
class TryingPagesTest {
    @TempDir
    private Path dir;

    private Guest guest;
    private Store store;

    @BeforeEach
    void open() {
        guest = new Guest(dir, ComposeRoom::new);
        store = guest.store();
    }

    @AfterEach
    void close() {
        guest.close();
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

    @Test
    void aWeakerLotIsOfferedWithTheDoseThatFollows() throws Exception {
        tincture("lot 1", "1:5");
        String swap = "/compose/" + recipe() + "/swap?line=0&with="
                + tincture("lot 2", "1:8").id();

        assertThat(guest.page(swap))
                .contains("it is 0.63 times as strong: 12 ml/L become 19.2 ml/L")
                .contains("name=\"lines.0.amount\" value=\"19.2 ml/L\"", "name=\"lines.0.amount\" value=\"12 ml/L\"");
        assertThat(guest.page(swap + "&recipes=10%20ml&mine=12%20ml")).contains("By your comparison", "become 14.4 ml/L");
        assertThat(guest.page("/compose/" + recipe() + "/swap?line=1&with=spirit%2063%20%25"))
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
