package org.stillroom.studio.usecase;

import java.util.function.Supplier;
import org.stillroom.core.extraction.Finishing;
import org.stillroom.core.quantity.QuantityWords;

/** Ends a question that has no answer: which part of it cannot be, why, and what to ask instead. */
public final class Impossible extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String part;
    private final String reason;
    private final String remedy;

    /**
     * @param part the part of the question, named as in it, such as "temperature"
     * @param reason a sentence for a person, with value and bound
     * @param remedy what to ask instead; empty where the reason says it
     */
    public Impossible(String part, String reason, String remedy) {
        super(part + ": " + reason);
        this.part = part;
        this.reason = reason;
        this.remedy = remedy;
    }

    /** Computes with the core, whose refusals of wrong values are texts for people, and hands such a refusal on. */
    static <T> T unless(String part, String remedy, Supplier<T> computation) {
        try {
            return computation.get();
        } catch (Finishing.TooStrong beyond) {
            throw new Impossible(
                    "to",
                    String.valueOf(beyond.getMessage()),
                    "Ask for " + QuantityWords.fixed(Math.floor(10.0 * beyond.most()) / 10.0, 1)
                            + " % vol at most, or fortify with stronger spirit.");
        } catch (IllegalArgumentException refused) {
            String reason = refused.getMessage();
            throw new Impossible(part, reason == null ? "this cannot be computed" : reason, remedy);
        }
    }

    public String part() {
        return part;
    }

    public String reason() {
        return reason;
    }

    public String remedy() {
        return remedy;
    }
}
