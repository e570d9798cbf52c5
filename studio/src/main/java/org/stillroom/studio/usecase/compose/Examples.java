package org.stillroom.studio.usecase.compose;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;

/** Recipes of our own to start from; they come with the program. */
public final class Examples {
    private static final List<String> FILES = List.of(
            "caraway-brought-down.yaml",
            "bay-leaf-with-cups.yaml",
            "fennel-and-lemon-peel.yaml",
            "pear-and-cocoa-nib.yaml",
            "quince-and-bay.yaml",
            "rhubarb-as-it-came.yaml",
            "sea-buckthorn-by-the-dozen.yaml");

    private Examples() {}

    /**
     * One of them.
     *
     * @param file its name
     * @param about the comment that the file begins with
     */
    public record Example(String file, String title, String about) {}

    /** Returns all, the simplest first. */
    public static List<Example> all() {
        return FILES.stream().map(Examples::example).toList();
    }

    private static Example example(String file) {
        String text = given(file).text();
        String first = text.substring(0, text.indexOf('\n'));
        return new Example(
                file,
                recipe(text).title(),
                first.startsWith("#") ? first.substring(1).strip() : "");
    }

    /** Returns an example with the recipes that it takes from, those first; empty when there is no such example. */
    public static List<ImportRecipes.Given> withStages(String file) {
        if (!FILES.contains(file)) {
            return List.of();
        }
        List<ImportRecipes.Given> files = new ArrayList<>();
        for (Ingredient ingredient : recipe(given(file).text()).ingredients()) {
            if (ingredient.from() != null) {
                files.add(given(ingredient.from()));
            }
        }
        files.add(given(file));
        return files;
    }

    private static Recipe recipe(String text) {
        return ((RecipeReading.Understood) new RecipeReader(OunceMeaning.US_FLUID).read(text)).recipe();
    }

    private static ImportRecipes.Given given(String file) {
        try (InputStream in = Objects.requireNonNull(Examples.class.getResourceAsStream("examples/" + file), file)) {
            return new ImportRecipes.Given(file.substring(file.lastIndexOf('/') + 1), in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
