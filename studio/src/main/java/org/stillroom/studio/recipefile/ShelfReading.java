package org.stillroom.studio.recipefile;

import java.util.List;
import org.stillroom.core.reference.Finding;

/** What came of opening a recipe file and the files that it names: all of them, or everything that is wrong. */
public sealed interface ShelfReading {
    /**
     * All files are recipes.
     *
     * @param notes what was taken for granted, in any of them
     */
    record Opened(StagedRecipe recipe, List<Finding> notes) implements ShelfReading {
        public Opened {
            notes = List.copyOf(notes);
        }
    }

    /**
     * Something stands against it.
     *
     * @param found whether there was a file at all
     * @param problems everything that is wrong; the place begins with the name of the file where it is not the one asked for
     */
    record Refused(Found found, List<Finding> problems) implements ShelfReading {
        public Refused {
            problems = List.copyOf(problems);
        }
    }

    /** Whether the file that was asked for is there. */
    enum Found {
        FILE,
        NO_FILE
    }
}
