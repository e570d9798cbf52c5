package org.stillroom.studio.recipefile;

import java.nio.file.Path;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.stillroom.core.recipe.Recipe;

/**
 * A recipe with the recipes whose results it uses, down to the first stage.
 *
 * @param file where it was read from
 * @param recipe what it says
 * @param sources the recipes that its ingredients come from, by the text of "from"
 */
public record StagedRecipe(Path file, Recipe recipe, Map<String, StagedRecipe> sources) {
    public StagedRecipe {
        sources = Collections.unmodifiableMap(new LinkedHashMap<>(sources));
    }
}
