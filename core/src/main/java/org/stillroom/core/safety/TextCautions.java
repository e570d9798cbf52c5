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
        return all.findings;
    }

    private void line(PlannedLine line) {
        String whole = String.join(". ", line.name(), line.ingredient().kind().label(), Passages.notes(line));
        find(whole, TextCaution.Of.INGREDIENTS, line.name());
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
