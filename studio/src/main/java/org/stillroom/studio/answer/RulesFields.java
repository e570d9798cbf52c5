package org.stillroom.studio.answer;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.stillroom.core.reference.TableSet;
import org.stillroom.core.safety.RuleChanges;
import org.stillroom.studio.usecase.rules.TakenRules;

/** Editions of tables of rules, and what one would change, as fields. */
public final class RulesFields {
    private RulesFields() {}

    /** Returns the editions that stand in place of shipped tables. */
    public static List<Fields> editions(TableSet tables) {
        return tables.editions().stream().map(RulesFields::edition).toList();
    }

    private static Fields edition(TableSet.Edition edition) {
        return new Fields()
                .put("table", edition.table())
                .put("as_of", edition.asOf())
                .put("signed_off_by", edition.signedBy())
                .put("source", edition.source());
    }

    /** Returns a file that was taken. */
    public static Fields taken(TakenRules taken) {
        Fields fields = new Fields()
                .putCount("entry", taken.entry())
                .put("taken", taken.at().toString());
        return taken.edition() == null ? fields.putNone("edition") : fields.put("edition", edition(taken.edition()));
    }

    /** Returns what a file would change, or has changed. */
    public static Fields changes(RuleChanges changes) {
        return new Fields()
                .put("edition", edition(changes.file().edition()))
                .putTexts(
                        "asked",
                        changes.asked(LocalDate.now(ZoneId.systemDefault())).stream()
                                .map(RuleChanges.Day::said)
                                .toList())
                .put("rows", changes.rows().stream().map(RulesFields::change).toList())
                .putCount("same", changes.same())
                .putCount("loud", changes.loud().size());
    }

    private static Fields change(RuleChanges.Change change) {
        return new Fields()
                .put("fate", change.fate().name().toLowerCase(Locale.ROOT))
                .put("about", change.about())
                .putCount("line", change.line())
                .put("less_cautious", change.loosens())
                .put(
                        "differences",
                        change.differences().entrySet().stream()
                                .map(each -> new Fields()
                                        .put("column", each.getKey())
                                        .put("before", each.getValue().before())
                                        .put("after", each.getValue().after()))
                                .toList());
    }
}
