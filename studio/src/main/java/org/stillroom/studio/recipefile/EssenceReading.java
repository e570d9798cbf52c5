package org.stillroom.studio.recipefile;

import java.util.List;
import org.stillroom.core.reference.Finding;

/** What came of reading an essence file. */
public sealed interface EssenceReading {
    /**
     * The file is an essence.
     *
     * @param notes what was taken for granted
     */
    record Understood(EssenceSheet sheet, List<Finding> notes) implements EssenceReading {
        public Understood {
            notes = List.copyOf(notes);
        }
    }

    /** The file is no essence yet; every problem that could be found, by line. */
    record Refused(List<Finding> problems) implements EssenceReading {
        public Refused {
            problems = List.copyOf(problems);
        }
    }
}
