package org.stillroom.studio.usecase.rules;

import java.util.List;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.safety.HouseRules;
import org.stillroom.core.safety.Knowledge;
import org.stillroom.studio.store.Changing;
import org.stillroom.studio.store.RuleBook;

/** Writes the rules of the house anew; a text with anything wrong in it changes nothing. */
public final class WriteHouseRules {
    private WriteHouseRules() {}

    /** What comes of it. */
    public sealed interface Outcome {
        /** They are in force. */
        record Written(RuleBook.House now) implements Outcome {}

        /** Everything that is wrong with the text, by line. */
        record Refused(List<Finding> problems) implements Outcome {
            public Refused {
                problems = List.copyOf(problems);
            }
        }

        /** Somebody wrote them meanwhile. */
        record Overtaken(RuleBook.House current) implements Outcome {}
    }

    /**
     * Writes them.
     *
     * @param version that the change began with
     */
    public static Outcome answer(RuleBook book, String text, int version, String request) {
        HouseRules.Reading read = HouseRules.read(text, Knowledge.SHIPPED);
        if (!read.problems().isEmpty()) {
            return new Outcome.Refused(read.problems());
        }
        Changing<RuleBook.House> changing = book.writeHouse(text, version, request);
        return changing instanceof Changing.Overtaken<RuleBook.House> overtaken
                ? new Outcome.Overtaken(overtaken.current())
                : new Outcome.Written(((Changing.Changed<RuleBook.House>) changing).now());
    }
}
