package org.stillroom.studio.recipefile;

import java.util.List;
import org.stillroom.core.reference.Finding;

/**
 * What came of reading a sheet that somebody filled in.
 *
 * @param <T> what the sheet describes
 */
public sealed interface SheetReading<T> {
    /**
     * The sheet describes something.
     *
     * @param notes what was taken for granted, such as what an ounce is
     */
    record Understood<T>(T value, List<Finding> notes) implements SheetReading<T> {
        public Understood {
            notes = List.copyOf(notes);
        }
    }

    /** The sheet does not yet say what is needed, or says what cannot be; everything that is wrong with it. */
    record Refused<T>(List<SheetProblem> problems) implements SheetReading<T> {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
