package org.stillroom.studio.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.usecase.OpenRecipe.Outcome;

class OpenRecipeTest {
    @TempDir
    Path folder;

    @Test
    void aRecipeIsOpened() throws IOException {
        Path file = written("stillroom: 1\ntitle: Plain\nlines:\n  - {use: water, amount: 1 L}\n");
        assertThat(OpenRecipe.at(file))
                .isInstanceOfSatisfying(
                        Outcome.Opened.class,
                        opened -> assertThat(opened.recipe().recipe().title()).isEqualTo("Plain"));
    }

    @Test
    void whatIsNoRecipeIsRefusedWithItsProblems() throws IOException {
        assertThat(OpenRecipe.at(written("title: 7\n")))
                .isInstanceOfSatisfying(
                        Outcome.Refused.class,
                        refused -> assertThat(refused.problems()).isNotEmpty());
    }

    @Test
    void aMissingFileIsNotFound() {
        assertThat(OpenRecipe.at(folder.resolve("missing.yaml")))
                .isInstanceOfSatisfying(
                        Outcome.NotFound.class,
                        none -> assertThat(none.problems()).hasSize(1));
    }

    private Path written(String text) throws IOException {
        return Files.writeString(folder.resolve("recipe.yaml"), text);
    }
}
