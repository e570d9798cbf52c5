package org.stillroom.studio.usecase.rules;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.safety.RuleChanges;
import org.stillroom.core.safety.SignedRules;
import org.stillroom.studio.store.Changing;
import org.stillroom.studio.store.RuleBook;

/** Tells what a signed-off file of rules would change, and, when that is accepted, takes it. */
public final class TakeRules {
    private TakeRules() {}

    /**
     * What would be done.
     *
     * @param changes row by row, or null where the file is not understood
     * @param problems everything that is wrong with it, by line; while one stands it cannot be taken
     * @param version of the tables that it would change
     * @param today on which it is looked at
     */
    public record Preview(@Nullable RuleChanges changes, List<Finding> problems, int version, LocalDate today) {
        public Preview {
            problems = List.copyOf(problems);
        }
    }

    /** Returns what a file would change in a studio. */
    public static Preview preview(RuleBook book, String text) {
        SignedRules.Reading read = SignedRules.read(text);
        int version = book.tables().version();
        SignedRules rules = read.rules();
        return new Preview(
                rules == null
                        ? null
                        : RuleChanges.between(
                                rules, RulesInForce.of(book).knowledge().tables()),
                read.problems(),
                version,
                LocalDate.now(ZoneId.systemDefault()));
    }

    /**
     * Takes a file whose preview was accepted.
     *
     * @param version that the preview was of
     * @return whether it was taken; not where it is not understood, or somebody changed the tables since
     */
    public static boolean accept(RuleBook book, String text, int version, String request) {
        return SignedRules.read(text).rules() != null && book.take(text, version, request) instanceof Changing.Changed;
    }
}
