package org.stillroom.studio.web.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.compose.WorkOnRecipe;
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
        String text = recipeOf("bay tincture, kind: tincture, strength: 60 %", "bay tincture, dose: 12 ml/L");
        store.recipes().save(recipe, 0, "Bay", text, "bay.yaml", "r2");
        return recipe;
    }

    /** What a form does not show it would lose at the next save. */
    @Test
    void whatAnExtractCarriesIsShownWithEveryKeyAndPerLitre() throws Exception {
        String recipe = store.recipes().create("Bitter", "r1");
        String text = """
                stillroom: 1
                title: Bitter
                target: {volume: 1 L, strength: 30 %}
                ingredients:
                  - {name: bitter, kind: macerate, strength: 60 %, aroma: laurel 2 mg/L, plant: dried yarrow, ratio: 1:5}
                lines:
                  - {use: bitter, dose: 12 ml/L}
                  - {use: spirit 96 %, amount: free}
                  - {use: water, amount: make up}
                """;
        store.recipes().save(recipe, 0, "Bitter", text, "bitter.yaml", "r2");

        assertThat(guest.get("/compose/" + recipe).body())
                .contains("name=\"ingredients.0.aroma\" value=\"laurel 2 mg/L\"")
                .contains("name=\"ingredients.0.plant\" value=\"dried yarrow\"")
                .contains("name=\"ingredients.0.ratio\" value=\"1:5\"")
                .contains("Per litre: 2.40 g of plant (dried yarrow, 1:5).");
    }

    @Test
    void aWeakerLotIsOfferedWithTheDoseThatFollows() throws Exception {
        tincture("lot 1", "1:5");
        String swap = "/compose/" + recipe() + "/swap?line=0&with="
                + tincture("lot 2", "1:8").id();

        assertThat(guest.page(swap))
                .contains("By plant to extract it is 0.63 times as strong: 12 ml/L become 19.2 ml/L")
                .contains("name=\"lines.0.amount\" value=\"19.2 ml/L\"", "name=\"lines.0.amount\" value=\"12 ml/L\"");
        assertThat(guest.page(swap + "&equal=10%20ml%3D12%20ml"))
                .contains("By your comparison it is 0.83 times as strong", "become 14.4 ml/L", "become 19.2 ml/L")
                .contains("name=\"lines.0.amount\" value=\"14.4 ml/L\"");
        assertThat(guest.page(swap + "&equal=10%20ml%3D12%20ml&by=RATIO"))
                .contains("name=\"lines.0.amount\" value=\"19.2 ml/L\"");
        assertThat(guest.page(swap + "&content=12%20%25&my-content=17%20%25"))
                .contains("By the constituent it is 1.42 times as strong: 12 ml/L become 8.47 ml/L");
        assertThat(guest.page(swap + "&ratio=1%3A5&mine=1%3A5"))
                .contains("By plant to extract it is as strong (1.00 times): 12 ml/L stay.");
        assertThat(guest.page("/compose/" + recipe() + "/swap?line=1&with=spirit%2063%20%25"))
                .doesNotContain("times as strong");
    }

    @Test
    void whatIsTypedWrongIsSaidAtItsFieldAndNothingFollowsOfIt() throws Exception {
        tincture("lot 1", "1:5");
        String swap = "/compose/" + recipe() + "/swap?line=0&with="
                + tincture("lot 2", "1:8").id();
        HttpResponse<String> wrong = guest.get(swap + "&content=strong&my-content=17&equal=10%20ml%3D8%20g");

        assertThat(wrong.statusCode()).isEqualTo(422);
        assertThat(wrong.body())
                .contains("value=\"strong\"", "is not one unit above zero", "Give both by volume")
                .contains("By plant to extract it is 0.63 times as strong")
                .doesNotContain("By your comparison", "By the constituent");
        assertThat(guest.get(swap + "&content=12").body()).contains("it is missing.");
    }

    /** From the choice of lots for a make the dose is saved as a revision, and the make goes on with it. */
    @Test
    void aDoseThatIsTakenForAMakeIsSavedAndLeadsBack() throws Exception {
        tincture("lot 1", "1:5");
        String recipe = recipe();
        String swap = "/compose/" + recipe + "/swap?line=0&then=make&with="
                + tincture("lot 2", "1:8").id();
        assertThat(guest.page(swap)).contains("Save with the dose that follows, and make it", "Back to the make");
        Map<String, String> fields = new LinkedHashMap<>(new WorkOnRecipe(store.recipes(), OunceMeaning.US_FLUID)
                .open(recipe)
                .form()
                .fields());
        fields.put("lines.0.amount", "19.2 ml/L");
        fields.put("based-on", "1");
        fields.put("then", "make");
        fields.put("do", "save");

        HttpResponse<String> saved = guest.post("/compose/" + recipe, fields);
        assertThat(saved.headers().firstValue("Location")).contains("/make/begin?recipe=" + recipe);
        assertThat(store.recipes().latest(recipe).orElseThrow().text()).contains("19.2 ml/L");
    }

    @Test
    void constituentsThatBothLotsWereAnalysedForAreNamed() throws Exception {
        String old = oil("lot 1", "carvone;52\nlimonene;45");
        String fresh = oil("lot 2", "carvone;60\nlimonene;37\nmyrcene;1");
        assertThat(old).isNotEqualTo(fresh);
        String recipe = store.recipes().create("Caraway", "r1");
        String text = recipeOf("caraway oil, kind: essential oil", "caraway oil, dose: 2 drops/L");
        store.recipes().save(recipe, 0, "Caraway", text, "caraway.yaml", "r2");

        assertThat(guest.page("/compose/" + recipe + "/swap?line=0&with=" + fresh))
                .contains("carvone 52.0\u00a0% and 60.0\u00a0%; d-limonene 45.0\u00a0% and 37.0\u00a0%.")
                .doesNotContain("myrcene");
    }

    private String oil(String label, String analysis) {
        return store.lots()
                .add(
                        List.of(Bottles.read(
                                "name",
                                "caraway oil",
                                "kind",
                                "essential oil",
                                "left",
                                "10 ml",
                                "label",
                                label,
                                "analysis",
                                analysis)),
                        label)
                .get(0)
                .id();
    }

    private static String recipeOf(String ingredient, String line) {
        return """
                stillroom: 1
                title: Bay
                target: {volume: 1 L, strength: 30 %}
                ingredients: [{name: INGREDIENT}]
                lines:
                  - {use: LINE}
                  - {use: spirit 96 %, amount: free}
                  - {use: water, amount: make up}
                """.replace("INGREDIENT", ingredient).replace("LINE", line);
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
        assertThat(begin.dosed(revision)).containsExactly(Map.entry("bay tincture", 0));
    }
}
