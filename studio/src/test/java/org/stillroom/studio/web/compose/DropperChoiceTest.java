package org.stillroom.studio.web.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.studio.recipefile.RecipeForm;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.InstrumentSheet;
import org.stillroom.studio.usecase.compose.WorkOnRecipe;
import org.stillroom.studio.web.frame.Guest;

/** A dropper of the shelf is chosen at a line in drops. */
class DropperChoiceTest {
    private static final String TEXT = """
            stillroom: 1
            title: Lemon
            target: {volume: 1 L, strength: 40 %}
            measures:
              - {name: scale, kind: scale, marks: 0.1 g}
            ingredients: [{name: lemon oil, kind: essential oil}]
            lines:
              - {use: lemon oil, dose: 6 drops/L}
              - {use: spirit 96 %, amount: free}
              - {use: water, amount: make up}
            """;

    @TempDir
    private Path dir;

    private Guest guest;

    @BeforeEach
    void open() {
        guest = new Guest(dir, ComposeRoom::new);
    }

    @AfterEach
    void close() {
        guest.close();
    }

    private String recipe() {
        String recipe = guest.store().recipes().create("Lemon", "r1");
        guest.store().recipes().save(recipe, 0, "Lemon", TEXT, "lemon.yaml", "r2");
        return recipe;
    }

    private Instrument dropper(String drop) {
        return guest.store()
                .instruments()
                .add(new InstrumentSheet("pipette", "dropper", Map.of("drop", drop), null), "r" + drop);
    }

    private RecipeForm form(String recipe) {
        return new WorkOnRecipe(guest.store().recipes(), OunceMeaning.US_FLUID)
                .open(recipe)
                .form();
    }

    private void choose(String recipe, String dropper) throws Exception {
        Map<String, String> fields = new LinkedHashMap<>(form(recipe).fields());
        fields.put("lines.0.with", dropper);
        fields.put("based-on", "1");
        fields.put("do", "work");
        guest.page("/compose/" + recipe);
        assertThat(guest.post("/compose/" + recipe, fields).statusCode()).isEqualTo(303);
    }

    @Test
    void withoutADropperOfOnesOwnNothingIsAskedAndTheOfficialOneIsSaid() throws Exception {
        assertThat(guest.page("/compose/" + recipe()))
                .contains(
                        "A drop of it weighs 18.9\u00a0mg, as from the official dropper; from yours within 30\u00a0%.")
                .doesNotContain("<select class=\"write\" id=\"f-lines.0.with\"");
    }

    /** A drop of lemon oil from it weighs 40 · 27.5 / 72.75 mg. */
    @Test
    void aDropperOfTheShelfIsListedInTheRecipeWithItsDropOfWater() throws Exception {
        String recipe = recipe();
        Instrument pipette = dropper("40 mg");
        assertThat(guest.page("/compose/" + recipe))
                .contains("pipette of the shelf, a drop of water is 40 mg", "none of mine: the official dropper");

        choose(recipe, "shelf:" + pipette.id());
        assertThat(form(recipe).fields())
                .containsEntry("lines.0.with", "pipette")
                .containsEntry("measures.1.name", "pipette")
                .containsEntry("measures.1.kind", "dropper")
                .containsEntry("measures.1.drop", "40 mg");
        assertThat(guest.page("/compose/" + recipe))
                .contains(
                        "A drop of it weighs 15.1\u00a0mg, by the drop of water from pipette", "each within 14\u00a0%")
                .doesNotContain("pipette of the shelf");
        assertThat(guest.page("/compose/" + recipe, "de")).contains("Ein Tropfen davon wiegt 15,1\u00a0mg");
    }

    @Test
    void aDropperThatWasWeighedAnewTakesThePlaceOfTheOneThatIsListed() throws Exception {
        String recipe = recipe();
        choose(recipe, "shelf:" + dropper("40 mg").id());
        Instrument again = dropper("30 mg");
        choose(recipe, "shelf:" + again.id());

        assertThat(form(recipe).fields())
                .containsEntry("measures.1.drop", "30 mg")
                .doesNotContainKey("measures.2.name");
        choose(recipe, "shelf:gone");
        assertThat(form(recipe).typed("lines.0.with")).isEmpty();
    }
}
