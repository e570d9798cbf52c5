package org.stillroom.studio.usecase.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.safety.Safety;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;

/** What is said of a drink leaves the studio with its recipe. */
class HandOutTest {
    private static final String DRINK = """
            stillroom: 1
            title: Meadow cup
            target: {volume: 1 L, strength: 30 %}
            ingredients:
              - {name: OIL, kind: essential oil}
            lines:
              - {use: OIL, dose: 0.02 g/L}
              - {use: spirit 96 %, amount: free}
              - {use: water, amount: free}
            notes: |
              as it stands
            """;

    @TempDir
    private Path dir;

    private Store store;

    @BeforeEach
    void open() {
        store = Store.open(new DataFolder(dir.resolve("data")));
    }

    @AfterEach
    void close() {
        store.close();
    }

    private String handedOut(String text) {
        return new HandOut(store).file(text);
    }

    @Test
    void whatStopsTheDrinkIsWrittenBelowTheRecipe() {
        String text = DRINK.replace("OIL", "pennyroyal oil");
        assertThat(handedOut(text))
                .startsWith(text + HandOut.START + "\n# " + Safety.STANDING + "\n# stop, not for drinking: ")
                .contains("pennyroyal oil");
    }

    /** Notes that a plan leaves to who asks for all belong to what strangers will drink of. */
    @Test
    void whoShouldNotDrinkItGoesAlong() {
        assertThat(handedOut(DRINK.replace("OIL", "expressed lime oil")))
                .contains("# light: expressed lime oil", "# who should not: Not for children");
        assertThat(handedOut(DRINK.replace("{name: OIL, kind: essential oil}", "{name: honey, kind: honey}")
                        .replace("{use: OIL, dose: 0.02 g/L}", "{use: honey, amount: 100 g}")))
                .contains("# not for infants: honey: ");
    }

    @Test
    void aDoseThatIsHardlyMeantIsAskedWhenItLeavesAndWhenItComesIn() {
        String asked =
                DRINK.replace("OIL, dose: 0.02 g/L", "OIL, amount: 12 ml").replace("OIL", "caraway oil");
        assertThat(handedOut(asked)).contains("# caution, is this meant?: ", "“meant: ");
        ImportRecipes imports = new ImportRecipes(store.recipes(), OunceMeaning.US_FLUID);
        byte[] bytes = asked.getBytes(StandardCharsets.UTF_8);
        ImportRecipes.Imported imported = imports.answer(List.of(new ImportRecipes.Given("drink.yaml", bytes)), "in");
        assertThat(imported.asked()).containsOnlyKeys(imported.ids().get(0));
        assertThat(imported.asked().get(imported.ids().get(0)))
                .extracting(each -> each.finding().verdict())
                .containsExactly("is this meant?");
    }

    @Test
    void theFileIsTheSameRecipe() {
        String text = DRINK.replace("OIL", "sage oil");
        RecipeReader reader = new RecipeReader(OunceMeaning.US_FLUID);
        assertThat(reader.read(handedOut(text)))
                .isInstanceOfSatisfying(
                        RecipeReading.Understood.class,
                        understood -> assertThat(understood.recipe())
                                .isEqualTo(((RecipeReading.Understood) reader.read(text)).recipe()));
    }

    /** Handed out, brought in again and changed: what was said before goes, what is said now stands there once. */
    @Test
    void itIsWrittenAnewEachTimeAndCannotBeTakenAlong() {
        String first = handedOut(DRINK.replace("OIL", "pennyroyal oil"));
        String harmless = first.replace("pennyroyal oil", "caraway oil");
        String again = handedOut(harmless);
        assertThat(again).doesNotContain("not for drinking");
        assertThat(again.split(HandOut.START, -1)).hasSize(2);
        String cut = first.substring(0, first.indexOf(HandOut.START));
        assertThat(handedOut(cut)).isEqualTo(first);
        assertThat(handedOut(first.replace("stop, not for drinking", "harmless")))
                .isEqualTo(first);
    }

    @Test
    void whatCannotBeWorkedOutIsSaidToBeNotKnown() {
        assertThat(handedOut("stillroom: 1\ntitle: Half a thought\n"))
                .contains("# What is in it, and what rules say of it, is not known");
        assertThat(handedOut("no recipe at all")).contains(Safety.STANDING, "is not known");
    }

    @Test
    void houseRulesOfTheStudioAreSaidToo() {
        store.rules().writeHouse("no caraway", 0, "r");
        assertThat(handedOut(DRINK.replace("OIL", "caraway oil"))).contains("# stop, against the house rule (house): ");
    }
}
