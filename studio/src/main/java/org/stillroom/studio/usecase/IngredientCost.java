package org.stillroom.studio.usecase;

import java.util.List;
import org.stillroom.core.plan.Plan;
import org.stillroom.planner.shopping.Money;
import org.stillroom.planner.shopping.Shopping;
import org.stillroom.planner.shopping.ShoppingList;

/**
 * What goes into a bottle costs, by the prices of the recipe.
 *
 * @param perBottle for each currency
 * @param unpriced what goes in without a known price, so that the sums leave it out
 */
public record IngredientCost(List<Money> perBottle, List<String> unpriced) {
    public IngredientCost {
        perBottle = List.copyOf(perBottle);
        unpriced = List.copyOf(unpriced);
    }

    /** @param bottles how many bottles the plan fills; need not be whole */
    static IngredientCost of(Plan plan, double bottles) {
        ShoppingList list = Shopping.of(plan);
        return new IngredientCost(
                list.used().stream()
                        .map(money -> new Money(money.currency(), money.amount() / bottles))
                        .toList(),
                list.unpriced());
    }
}
