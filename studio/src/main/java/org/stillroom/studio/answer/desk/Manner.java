package org.stillroom.studio.answer.desk;

import java.util.List;

/** How whoever asks writes the parts of a question, so that an answer speaks of them in the same manner. */
public interface Manner {
    /** Returns the name of a part as it is written, such as "--make-up-to". */
    String name(String part);

    /** Returns parts with their values as they are written, such as "--mass 474g --flask 500ml". */
    String write(List<Given> given);

    /** A part with a value. */
    record Given(String part, String value) {}
}
