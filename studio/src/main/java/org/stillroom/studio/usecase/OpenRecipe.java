package org.stillroom.studio.usecase;

import java.nio.file.Path;
import java.util.List;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeShelf;
import org.stillroom.studio.recipefile.ShelfReading;
import org.stillroom.studio.recipefile.StagedRecipe;

/** Opens a recipe file and the recipes that its ingredients come from; an ounce is the US fluid ounce unless the file says. */
public final class OpenRecipe {
    private OpenRecipe() {}

    /** What comes of it. */
    public sealed interface Outcome {
        /**
         * The recipe, ready to be worked out.
         *
         * @param notes what was taken for granted in reading it
         */
        record Opened(StagedRecipe recipe, List<Finding> notes) implements Outcome {
            public Opened {
                notes = List.copyOf(notes);
            }
        }

        /** The file is there and is no recipe; everything that is wrong with it. */
        record Refused(List<Finding> problems) implements Outcome {
            public Refused {
                problems = List.copyOf(problems);
            }
        }

        /** There is no such file. */
        record NotFound(List<Finding> problems) implements Outcome {
            public NotFound {
                problems = List.copyOf(problems);
            }
        }
    }

    /** Returns what is in a file. */
    public static Outcome at(Path file) {
        ShelfReading reading = new RecipeShelf(new RecipeReader(OunceMeaning.US_FLUID)).open(file);
        if (reading instanceof ShelfReading.Opened opened) {
            return new Outcome.Opened(opened.recipe(), opened.notes());
        }
        ShelfReading.Refused refused = (ShelfReading.Refused) reading;
        return switch (refused.found()) {
            case FILE -> new Outcome.Refused(refused.problems());
            case NO_FILE -> new Outcome.NotFound(refused.problems());
        };
    }
}
