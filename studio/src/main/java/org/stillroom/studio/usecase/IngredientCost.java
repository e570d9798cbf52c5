package org.stillroom.studio.usecase;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.stillroom.core.batch.Outlay;
import org.stillroom.core.label.Duty;
import org.stillroom.core.plan.Plan;
import org.stillroom.planner.shopping.Money;
import org.stillroom.planner.shopping.Shopping;
import org.stillroom.planner.shopping.ShoppingList;

/**
 * What goes into a bottle costs.
 *
 * @param perBottle for each currency
 * @param isComplete whether the price of all that goes in is known; else it costs more
 * @param unpriced what goes in without a known price, where its names are known
 */
public record IngredientCost(List<Money> perBottle, boolean isComplete, List<String> unpriced) {
    public IngredientCost {
        perBottle = List.copyOf(perBottle);
        unpriced = List.copyOf(unpriced);
    }

    /** Returns what a bottle costs with the duty that it bears; of different currencies nothing is added up. */
    public List<Money> with(Duty duty) {
        Map<String, Double> together = new TreeMap<>();
        perBottle.forEach(money -> together.merge(money.currency(), money.amount(), Double::sum));
        together.merge(duty.currency(), duty.perBottle(), Double::sum);
        return together.entrySet().stream()
                .map(each -> new Money(each.getKey(), each.getValue()))
                .toList();
    }

    /** Returns what one bottle has cost. */
    public static IngredientCost of(Outlay bottle) {
        List<Money> money = bottle.money().entrySet().stream()
                .map(each -> new Money(each.getKey(), each.getValue()))
                .toList();
        return new IngredientCost(money, bottle.complete(), List.of());
    }

    /** @param bottles how many bottles the plan fills; need not be whole */
    static IngredientCost of(Plan plan, double bottles) {
        ShoppingList list = Shopping.of(plan);
        return new IngredientCost(
                list.used().stream()
                        .map(money -> new Money(money.currency(), money.amount() / bottles))
                        .toList(),
                list.unpriced().isEmpty(),
                list.unpriced());
    }
}
