package org.stillroom.studio.recipefile;

import java.util.List;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;

/** What came of reading a recipe file: the whole recipe, or everything that is wrong with it. */
public sealed interface RecipeReading {
    /**
     * The file is a recipe.
     *
     * @param notes what was taken for granted, such as what an ounce is
     */
    record Understood(Recipe recipe, List<Finding> notes) implements RecipeReading {
        public Understood {
            notes = List.copyOf(notes);
        }
    }

    /** The file is no recipe yet; every problem that could be found, by line. */
    record Refused(List<Finding> problems) implements RecipeReading {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
