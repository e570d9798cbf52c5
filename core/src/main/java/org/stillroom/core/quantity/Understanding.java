package org.stillroom.core.quantity;

import java.util.List;

/** What was made of a text that a person typed for a quantity. */
public sealed interface Understanding<Q> {
    /** The text has one meaning. */
    record Understood<Q>(Typed<Q> typed) implements Understanding<Q> {}

    /**
     * The text has several meanings, and none is picked for the person.
     *
     * @param question what is asked, one sentence
     * @param choices texts that would each be understood, to choose from
     */
    record Ambiguous<Q>(String text, String question, List<String> choices) implements Understanding<Q> {}

    /**
     * The text is no such quantity, or one that cannot be.
     *
     * @param reason what is wrong and what to write instead, one sentence
     */
    record Refused<Q>(String text, String reason) implements Understanding<Q> {}
}
