package org.stillroom.studio.usecase.rules;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.TableSet;
import org.stillroom.core.safety.SignedRules;
import org.stillroom.studio.store.RuleBook;

/**
 * A signed-off file that stands in place of a shipped table.
 *
 * @param entry by which it is taken back
 * @param at when it was taken
 * @param edition whose it is, or null where this Stillroom cannot read it
 */
public record TakenRules(long entry, Instant at, TableSet.@Nullable Edition edition) {
    /** Returns the files in force, the earliest first; of two of one table the later counts. */
    public static List<TakenRules> all(RuleBook book) {
        return book.tables().files().stream().map(TakenRules::of).toList();
    }

    private static TakenRules of(RuleBook.Taken taken) {
        SignedRules rules = SignedRules.read(taken.text()).rules();
        return new TakenRules(taken.entry(), taken.at(), rules == null ? null : rules.edition());
    }
}
