package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Source;

/** Reads steps, notes and the vessel, of stages too, for materials and methods that call for a caution. */
final class TextCautions {
    private final Drink drink;
    private final boolean spirit;
    private final List<Finding> findings = new ArrayList<>();

    private TextCautions(Drink drink) {
        this.drink = drink;
        this.spirit = drink.lines().stream().anyMatch(line -> Handling.strength(line) >= Keeping.HELD);
    }

    static List<Finding> judge(Drink drink, Serving serving) {
        TextCautions all = new TextCautions(drink);
        drink.lines().forEach(all::line);
        Passages.of(drink.plan()).forEach(each -> all.find(each.text(), TextCaution.Of.TEXTS, each.where()));
        return all.findings.stream().distinct().toList();
    }

    private void line(PlannedLine line) {
        find(whole(line), TextCaution.Of.INGREDIENTS, line.name());
    }

    /** Returns what is read of a line: its name, its kind and its notes together. */
    static String whole(PlannedLine line) {
        return String.join(". ", line.name(), line.ingredient().kind().label(), Passages.notes(line));
    }

    /** Returns whether words say what stands in the place of a caution that a name calls for: elderberries that are cooked. */
    static boolean say(Knowledge.NamedCaution inPlaceOf, String text, TextCaution.Of of, Drink drink) {
        return drink.knowledge().textCautions().stream()
                .anyMatch(row -> row.rule().equals(inPlaceOf.rule())
                        && row.verdict().equals(inPlaceOf.unless())
                        && row.of() == of
                        && row.isSaidIn(TextWords.of(text)));
    }

    private void find(String text, TextCaution.Of of, String where) {
        TextWords words = TextWords.of(text);
        for (TextCaution caution : drink.knowledge().textCautions()) {
            if (caution.of() == of && (spirit || !caution.onlyWithSpirit()) && caution.isSaidIn(words)) {
                findings.add(new Finding(
                        caution.rule(),
                        caution.severity(),
                        where,
                        "",
                        caution.verdict(),
                        caution.message(),
                        caution.status().mayClear() ? "" : "general knowledge, from memory",
                        caution.remedy(),
                        null,
                        Source.HANDLING_CAUTIONS));
            }
        }
    }
}
