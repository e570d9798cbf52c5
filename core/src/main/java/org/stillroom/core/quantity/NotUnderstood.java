package org.stillroom.core.quantity;

import java.util.List;
import java.util.function.Supplier;

/**
 * Ends the reading of a text that has no single meaning; {@link QuantityText} turns it into an {@link Understanding},
 * and none leaves this package.
 */
final class NotUnderstood extends Exception {
    private static final long serialVersionUID = 1L;

    private final String sentence;
    private final transient List<String> choices;

    private NotUnderstood(String sentence, List<String> choices) {
        super(sentence, null, false, false);
        this.sentence = sentence;
        this.choices = List.copyOf(choices);
    }

    static NotUnderstood because(String reason) {
        return new NotUnderstood(reason, List.of());
    }

    /** Returns a question, with texts that would each be understood. */
    static NotUnderstood asking(String question, String... choices) {
        return new NotUnderstood(question, List.of(choices));
    }

    /** Makes a quantity whose constructor knows its range, and refuses with that range where the value is outside. */
    static <Q> Q possible(Supplier<Q> quantity) throws NotUnderstood {
        try {
            return quantity.get();
        } catch (IllegalArgumentException outside) {
            throw because(String.valueOf(outside.getMessage()));
        }
    }

    /** Returns the same, with each choice written between two other parts of the text. */
    NotUnderstood within(String before, String after) {
        return new NotUnderstood(
                sentence,
                choices.stream().map(choice -> before + choice + after).toList());
    }

    <Q> Understanding<Q> about(String text) {
        return choices.isEmpty()
                ? new Understanding.Refused<>(text, sentence)
                : new Understanding.Ambiguous<>(text, sentence, choices);
    }
}
