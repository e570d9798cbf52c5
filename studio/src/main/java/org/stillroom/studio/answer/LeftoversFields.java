package org.stillroom.studio.answer;

import java.util.List;
import java.util.OptionalDouble;
import org.stillroom.core.reference.Finding;
import org.stillroom.planner.leftovers.UseUp;
import org.stillroom.planner.shopping.ShoppingList;
import org.stillroom.studio.usecase.left.Candidate;
import org.stillroom.studio.usecase.left.CouldMake;
import org.stillroom.studio.usecase.left.LeftOver;
import org.stillroom.studio.usecase.left.PlanUseUp;

/** What is left and what it is good for, as fields. */
public final class LeftoversFields {
    private LeftoversFields() {}

    /** Returns what is left and what could be made of it. */
    public static Fields of(List<LeftOver> left, CouldMake.Ranking ranking, List<Finding> findings) {
        return new Fields()
                .put("left", left.stream().map(LeftoversFields::of).toList())
                .put(
                        "could_make",
                        ranking.could().stream().map(LeftoversFields::of).toList())
                .put(
                        "not_planned",
                        ranking.not().stream().map(LeftoversFields::of).toList())
                .put("findings", FindingFields.of(findings));
    }

    private static Fields of(LeftOver left) {
        Fields fields = new Fields()
                .put("name", left.name())
                .put("kind", left.ingredient().kind().label())
                .put("left_g", left.grams());
        put(fields, "left_ml", left.millilitres());
        fields.putCount("lots", left.lots().size());
        put(fields, "open_months", left.monthsOpen());
        put(fields, "keeps_months", left.ageing().months());
        return fields.put("past_usual", left.isPast())
                .put("keep", left.ageing().keep())
                .put("then", left.ageing().then())
                .put("status", "common practice");
    }

    private static void put(Fields fields, String key, OptionalDouble value) {
        if (value.isPresent()) {
            fields.put(key, value.getAsDouble());
        } else {
            fields.putNone(key);
        }
    }

    private static Fields of(CouldMake could) {
        return new Fields()
                .put("recipe", could.recipe().id())
                .put("title", could.recipe().title())
                .put("makes_ml", could.plan().millilitres())
                .put("reached", could.isReached())
                .put("bottles_emptied", could.emptied())
                .put("uses", could.uses().stream().map(LeftoversFields::of).toList())
                .put("buy", could.buy().stream().map(LeftoversFields::of).toList());
    }

    private static Fields of(CouldMake.Use use) {
        Fields fields = new Fields().put("name", use.of().name()).put("grams", use.grams());
        put(fields, "ml", use.of().millilitres(use.grams()));
        return fields.put("part_percent", 100.0 * use.part());
    }

    private static Fields of(ShoppingList.Item item) {
        return new Fields()
                .put("name", item.name())
                .put("needed_g", item.neededGrams())
                .put("at_hand_g", item.atHandGrams())
                .put("buy_g", item.boughtGrams());
    }

    private static Fields of(Candidate not) {
        return new Fields()
                .put("recipe", not.id())
                .put("title", not.title())
                .put("findings", FindingFields.of(not.problems()));
    }

    /** Returns a liqueur that uses several extracts up. */
    public static Fields of(PlanUseUp.Outcome.Found found) {
        UseUp useUp = found.useUp();
        return new Fields()
                .put("makes_ml", useUp.plan().millilitres())
                .put("all_used", useUp.isAll())
                .put("bottles_emptied", useUp.emptied())
                .put("used", useUp.used().stream().map(LeftoversFields::of).toList())
                .put("plan", PlanFields.of(found.worked()))
                .put("recipe", found.text())
                .put("findings", FindingFields.of(found.findings()));
    }

    private static Fields of(UseUp.Used used) {
        return new Fields()
                .put("name", used.extract().ingredient().name())
                .put("grams", used.grams())
                .put("g_per_l", used.perLitre())
                .put("part_percent", 100.0 * used.part())
                .put("left_g", used.extract().grams() - used.grams());
    }
}
