package org.stillroom.studio.usecase.rules;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.TableSet;
import org.stillroom.core.safety.Knowledge;
import org.stillroom.core.safety.SignedRules;
import org.stillroom.studio.store.RuleBook;

/**
 * What the rules of a studio know: the tables that ship, and in place of some those of signed-off files.
 *
 * @param knowledge of all of them
 * @param problems files that were taken and cannot be read any more, so that the tables before them count
 */
public record RulesInForce(Knowledge knowledge, List<Finding> problems) {
    private static final RulesInForce SHIPPED = new RulesInForce(Knowledge.SHIPPED, List.of());

    /** Reading all tables takes longer than a keystroke; they hardly ever change. */
    private static volatile Read latest = new Read(List.of(), SHIPPED);

    public RulesInForce {
        problems = List.copyOf(problems);
    }

    private record Read(List<String> texts, RulesInForce rules) {}

    /** Returns what is in force in a studio. */
    public static RulesInForce of(RuleBook book) {
        List<String> texts =
                book.tables().files().stream().map(RuleBook.Taken::text).toList();
        Read read = latest;
        if (!read.texts().equals(texts)) {
            read = new Read(texts, texts.isEmpty() ? SHIPPED : read(texts));
            latest = read;
        }
        return read.rules();
    }

    private static RulesInForce read(List<String> texts) {
        List<Finding> problems = new ArrayList<>();
        TableSet tables = TableSet.SHIPPED;
        for (String text : texts) {
            @Nullable SignedRules rules = SignedRules.read(text).rules();
            if (rules == null) {
                problems.add(Finding.of(
                        "rules-file",
                        Severity.CAUTION,
                        "",
                        "not understood",
                        "A table of rules that was taken cannot be read by this Stillroom; the one before it counts.",
                        "Take a newer edition of it under Settings, or take it back."));
            } else {
                tables = rules.takenInto(tables);
            }
        }
        return new RulesInForce(Knowledge.of(tables), problems);
    }
}
