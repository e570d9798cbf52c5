package org.stillroom.studio.recipefile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.reference.Finding;

class RecipeShelfTest {
    @TempDir
    Path folder = Path.of("");

    @Test
    void aRecipeIsOpenedWithTheRecipesThatItsIngredientsComeFrom() {
        ShelfReading reading = shelf().open(Examples.FOLDER.resolve("quince-and-bay.yaml"));
        StagedRecipe staged = ((ShelfReading.Opened) reading).recipe();
        assertThat(staged.sources()).containsOnlyKeys("stages/caraway-essence.yaml", "stages/bay-leaf-tincture.yaml");
        assertThat(staged.sources().values())
                .extracting(source -> source.recipe().title())
                .containsExactly("Caraway and cardamom essence", "Bay leaf tincture");
    }

    @Test
    void everyExampleOpens() {
        assertThat(Examples.files())
                .hasSize(9)
                .allSatisfy(file -> assertThat(shelf().open(file)).isInstanceOf(ShelfReading.Opened.class));
    }

    @Test
    void recipesThatUseEachOtherInACircleAreNamed() throws IOException {
        write("a.yaml", "b.yaml");
        write("b.yaml", "c.yaml");
        write("c.yaml", "b.yaml");
        assertThat(problems("a.yaml")).singleElement().satisfies(finding -> {
            assertThat(finding.where()).isEqualTo("c.yaml, line 4, essence, from");
            assertThat(finding.message()).contains("in a circle: b.yaml → c.yaml → b.yaml.");
            assertThat(finding.remedy()).contains("out of the circle");
        });
    }

    @Test
    void aRecipeThatComesFromItselfIsACircle() throws IOException {
        write("a.yaml", "./a.yaml");
        assertThat(problems("a.yaml"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.message()).contains("a.yaml → a.yaml"));
    }

    @Test
    void aFileMayBeUsedTwiceWithoutBeingACircle() throws IOException {
        write("base.yaml", "tail.yaml");
        Files.writeString(folder.resolve("tail.yaml"), plain(""));
        Files.writeString(folder.resolve("top.yaml"), plain("""
                        ingredients:
                          - {name: one, kind: essence, from: base.yaml}
                          - {name: two, kind: essence, from: tail.yaml}
                        """));
        assertThat(shelf().open(folder.resolve("top.yaml"))).isInstanceOf(ShelfReading.Opened.class);
    }

    @Test
    void nothingOutsideTheFolderIsOpened() throws IOException {
        Path inner = Files.createDirectory(folder.resolve("inner"));
        Files.writeString(folder.resolve("outside.yaml"), plain(""));
        Files.createSymbolicLink(inner.resolve("link.yaml"), folder.resolve("outside.yaml"));
        for (String from :
                List.of("../outside.yaml", "a/../../outside.yaml", "/etc/hostname", "C:\\x.yaml", "link.yaml")) {
            write("inner/top.yaml", from);
            assertThat(problems("inner/top.yaml")).as(from).singleElement().satisfies(finding -> {
                assertThat(finding.rule()).isEqualTo("recipe-outside");
                assertThat(finding.where()).isEqualTo("line 4, essence, from");
                assertThat(finding.remedy()).contains("beside this one");
            });
        }
    }

    @Test
    void aMissingSourceIsToldWithTheNearestFile() throws IOException {
        Files.writeString(folder.resolve("bay-tincture.yaml"), plain(""));
        write("top.yaml", "bay-tinctur.yaml");
        assertThat(problems("top.yaml")).singleElement().satisfies(finding -> {
            assertThat(finding.where()).isEqualTo("line 4, essence, from");
            assertThat(finding.message()).contains("There is “bay-tincture.yaml”.");
        });
    }

    @Test
    void aMissingFileIsToldApartFromAWrongOne() {
        ShelfReading reading = shelf().open(folder.resolve("nothing.yaml"));
        assertThat(((ShelfReading.Refused) reading).found()).isEqualTo(ShelfReading.Found.NO_FILE);
    }

    @Test
    void problemsOfASourceNameItsFileAndComeAfterThoseOfTheRecipe() throws IOException {
        Files.writeString(folder.resolve("essence.yaml"), plain("vessel: 3 kg\n"));
        write("top.yaml", "essence.yaml");
        Files.writeString(folder.resolve("top.yaml"), Files.readString(folder.resolve("top.yaml")) + "rest: soon\n");
        assertThat(problems("top.yaml"))
                .extracting(Finding::where)
                .containsExactly("line 7, rest", "essence.yaml, line 3, vessel");
    }

    @Test
    void aChainIsBounded() throws IOException {
        for (int i = 0; i < 20; i++) {
            write("s" + i + ".yaml", "s" + (i + 1) + ".yaml");
        }
        Files.writeString(folder.resolve("s20.yaml"), plain(""));
        assertThat(problems("s0.yaml")).singleElement().satisfies(finding -> {
            assertThat(finding.where()).isEqualTo("s11.yaml, line 4, essence, from");
            assertThat(finding.message()).contains("More than 12 recipes");
        });
    }

    @Test
    void aTenMegabyteFileIsRefusedUnread() throws IOException {
        Files.write(folder.resolve("big.yaml"), new byte[10_000_000]);
        assertThat(problems("big.yaml")).singleElement().satisfies(finding -> {
            assertThat(finding.message()).contains("The file has 10 MB");
            assertThat(finding.remedy()).contains("file you meant");
        });
    }

    @Test
    void aFolderIsNoRecipe() {
        assertThat(problems(""))
                .singleElement()
                .satisfies(finding -> assertThat(finding.rule()).isEqualTo("file-not-readable"));
    }

    private List<Finding> problems(String name) {
        return ((ShelfReading.Refused) shelf().open(folder.resolve(name))).problems();
    }

    private void write(String name, String from) throws IOException {
        Files.writeString(
                folder.resolve(name),
                plain("ingredients:\n  - {name: essence, kind: essence, from: '" + from + "'}\n"));
    }

    private static String plain(String more) {
        return "stillroom: 1\ntitle: t\n" + more + "lines:\n  - {use: water, amount: 1 L}\n";
    }

    private static RecipeShelf shelf() {
        return new RecipeShelf(Examples.reader());
    }
}
