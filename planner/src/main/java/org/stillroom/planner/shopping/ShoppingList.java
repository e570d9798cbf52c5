package org.stillroom.planner.shopping;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Typed;

/**
 * What to buy for a plan and its stages.
 *
 * @param items each ingredient that is not made by a stage, in the order in which it is needed
 * @param used what the ingredients cost as far as they go in, for each currency
 * @param atTheTill what is paid for the packs to buy, for each currency
 * @param unpriced names of what goes in without a known price, so that the sums leave it out; water needs none
 */
public record ShoppingList(List<Item> items, List<Money> used, List<Money> atTheTill, List<String> unpriced) {
    public ShoppingList {
        items = List.copyOf(items);
        used = List.copyOf(used);
        atTheTill = List.copyOf(atTheTill);
        unpriced = List.copyOf(unpriced);
    }

    /**
     * One ingredient.
     *
     * @param ingredient what it is
     * @param neededGrams what goes in, g
     * @param atHandGrams what there is, g; 0 when that was not said
     * @param pack how much one pack holds, or null when it is bought by weight or volume, or when that was not said
     * @param packs packs to buy, 0 without a pack
     * @param boughtGrams what is bought, g: whole packs, or just what is wanting
     * @param used cost of what goes in, or null when it is not known
     * @param atTheTill cost of what is bought, or null when it is not known
     */
    public record Item(
            Resolved ingredient,
            double neededGrams,
            double atHandGrams,
            @Nullable Typed<Amount> pack,
            int packs,
            double boughtGrams,
            @Nullable Money used,
            @Nullable Money atTheTill) {
        public String name() {
            return ingredient.name();
        }

        /** Returns what goes in by volume at 20 °C, mL; empty for solids. */
        public OptionalDouble neededMillilitres() {
            OptionalDouble density = ingredient.gramsPerMillilitre();
            return ingredient.solid() || density.isEmpty()
                    ? OptionalDouble.empty()
                    : OptionalDouble.of(neededGrams / density.getAsDouble());
        }

        /** Returns what is left when it is made, g; what is left over of a bottle is yours. */
        public double leftGrams() {
            return Math.max(0.0, atHandGrams + boughtGrams - neededGrams);
        }
    }
}
