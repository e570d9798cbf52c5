package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.recipe.Recipe;
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
        all.plan(drink.plan(), "");
        return all.findings;
    }

    /** @param stage name under which the result of a stage is used, with a colon behind; empty for the recipe itself */
    private void plan(Plan plan, String stage) {
        Recipe recipe = plan.recipe();
        for (PlannedLine line : plan.lines()) {
            if (line.grams() > 0.0) {
                line(line);
            }
        }
        for (int i = 0; i < recipe.steps().size(); i++) {
            text(recipe.steps().get(i), stage + "step " + (i + 1) + " of your own");
        }
        text(recipe.notes(), stage + "notes");
        text(recipe.vessel() == null ? null : recipe.vessel().text(), stage + "vessel");
        plan.stages().forEach(each -> plan(each.plan(), each.ingredient() + ": "));
    }

    private void line(PlannedLine line) {
        Ingredient ingredient = line.ingredient().ingredient();
        text(ingredient.note(), line.name());
        text(line.line().note(), line.name());
        String whole = String.join(
                ". ",
                line.name(),
                ingredient.kind().label(),
                orEmpty(ingredient.note()),
                orEmpty(line.line().note()));
        find(whole, TextCaution.Of.INGREDIENTS, line.name());
    }

    private static String orEmpty(@Nullable String text) {
        return text == null ? "" : text;
    }

    private void text(@Nullable String text, String where) {
        if (text != null) {
            find(text, TextCaution.Of.TEXTS, where);
        }
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
