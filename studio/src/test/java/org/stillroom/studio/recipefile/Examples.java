package org.stillroom.studio.recipefile;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;

/** The example recipes, and the shortest ways to read one. */
final class Examples {
    static final Path FOLDER = Path.of("..", "examples");

    private Examples() {}

    static List<Path> files() {
        try (Stream<Path> files = Files.walk(FOLDER)) {
            return files.filter(file -> file.toString().endsWith(".yaml"))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static RecipeReader reader() {
        return new RecipeReader(OunceMeaning.US_FLUID);
    }

    /** Returns the recipe of a text that must be one. */
    static Recipe recipe(String text) {
        RecipeReading reading = reader().read(text);
        if (reading instanceof RecipeReading.Understood understood) {
            return understood.recipe();
        }
        throw new AssertionError(text + "\n" + ((RecipeReading.Refused) reading).problems());
    }

    /** Returns the problems of a text that must have some. */
    static List<Finding> problems(String text) {
        RecipeReading reading = reader().read(text);
        if (reading instanceof RecipeReading.Refused refused) {
            return refused.problems();
        }
        throw new AssertionError("read without a problem:\n" + text);
    }
}
