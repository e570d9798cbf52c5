package org.stillroom.planner.shopping;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.plan.Cost;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Price;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;

/** Writes the shopping list of a plan: what is wanting of each ingredient, in whole packs, and what that costs. */
public final class Shopping {
    /** A pack is not bought for what rounding of the arithmetic adds. */
    private static final double ROUNDING = 1e-9;

    private final Map<Key, Resolved> ingredients = new LinkedHashMap<>();
    private final Map<Key, Double> grams = new LinkedHashMap<>();

    /** What is bought as one thing: a name may mean something else in a stage's own recipe. */
    private record Key(String name, Contents perGram) {}

    private Shopping() {}

    /** Returns what to buy for a plan and all its stages; what a stage makes is not bought, but what goes into it. */
    public static ShoppingList of(Plan plan) {
        Shopping shopping = new Shopping();
        shopping.collect(plan);
        return shopping.list();
    }

    private void collect(Plan plan) {
        plan.stages().forEach(stage -> collect(stage.plan()));
        Set<String> made =
                plan.stages().stream().map(Plan.StagePlan::ingredient).collect(Collectors.toSet());
        for (PlannedLine line : plan.lines()) {
            if (!made.contains(line.name()) && line.grams() > 0.0) {
                Key key = new Key(line.name(), line.ingredient().perGram());
                ingredients.merge(key, line.ingredient(), Shopping::better);
                grams.merge(key, line.grams(), Double::sum);
            }
        }
    }

    /** Of two entries for the same thing, the one that has a price. */
    private static Resolved better(Resolved first, Resolved second) {
        return first.ingredient().price() == null && second.ingredient().price() != null ? second : first;
    }

    private ShoppingList list() {
        List<ShoppingList.Item> items = new ArrayList<>();
        List<Money> used = new ArrayList<>();
        List<Money> paid = new ArrayList<>();
        List<String> unpriced = new ArrayList<>();
        ingredients.forEach((key, ingredient) -> {
            ShoppingList.Item item = item(ingredient, grams.getOrDefault(key, 0.0));
            items.add(item);
            add(used, item.used());
            add(paid, item.atTheTill());
            if ((item.used() == null || item.atTheTill() == null) && ingredient.kind() != Kind.WATER) {
                unpriced.add(item.name());
            }
        });
        return new ShoppingList(items, totals(used), totals(paid), unpriced);
    }

    private static void add(List<Money> to, @Nullable Money money) {
        if (money != null) {
            to.add(money);
        }
    }

    private static List<Money> totals(List<Money> all) {
        Map<String, Double> sums = new TreeMap<>();
        all.forEach(money -> sums.merge(money.currency(), money.amount(), Double::sum));
        List<Money> totals = new ArrayList<>();
        sums.forEach((currency, amount) -> totals.add(new Money(currency, amount)));
        return totals;
    }

    private static ShoppingList.Item item(Resolved resolved, double needed) {
        Ingredient ingredient = resolved.ingredient();
        double atHand = grams(resolved, ingredient.atHand()).orElse(0.0);
        double wanting = needed - atHand <= ROUNDING * needed ? 0.0 : needed - atHand;
        OptionalDouble pack = grams(resolved, ingredient.pack());
        boolean inPacks = pack.isPresent() && pack.getAsDouble() > 0.0;
        int packs = inPacks ? (int) Math.ceil(wanting / pack.getAsDouble() * (1.0 - ROUNDING)) : 0;
        double bought = inPacks ? packs * pack.getAsDouble() : wanting;
        return new ShoppingList.Item(
                resolved,
                needed,
                atHand,
                inPacks ? ingredient.pack() : null,
                packs,
                bought,
                cost(resolved, needed),
                cost(resolved, bought));
    }

    private static @Nullable Money cost(Resolved ingredient, double grams) {
        Typed<Price> price = ingredient.ingredient().price();
        OptionalDouble perGram = Cost.perGram(ingredient);
        return price == null || perGram.isEmpty()
                ? null
                : new Money(price.value().currency(), grams * perGram.getAsDouble());
    }

    private static OptionalDouble grams(Resolved ingredient, @Nullable Typed<Amount> amount) {
        if (amount == null) {
            return OptionalDouble.empty();
        }
        if (amount.value() instanceof Mass mass) {
            return OptionalDouble.of(mass.grams());
        }
        OptionalDouble density = ingredient.gramsPerMillilitre();
        return amount.value() instanceof Volume volume && density.isPresent()
                ? OptionalDouble.of(volume.millilitres() * density.getAsDouble())
                : OptionalDouble.empty();
    }
}
