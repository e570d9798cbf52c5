package org.stillroom.core.ingredient;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.Plant;
import org.stillroom.core.extraction.Plants;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Standing;

/** Gives plants of a recipe the water and the sugar of the table of plants, where their maker says none. */
final class TablePlants {
    private TablePlants() {}

    /** Returns the plant of the table that stands in for what the maker did not say, or null where there is none or nothing is left to say. */
    static @Nullable Plant of(Ingredient ingredient) {
        boolean plant = ingredient.kind() == Kind.FRESH_PLANT || ingredient.kind() == Kind.DRIED_PLANT;
        if (!plant || ingredient.from() != null || ingredient.contains().containsKey(Substance.WATER)) {
            return null;
        }
        Plant found = Plants.find(ingredient.name());
        return found != null && found.isDried() == (ingredient.kind() == Kind.DRIED_PLANT) ? found : null;
    }

    /** Returns the ingredient with the water of its plant, and with its sugar where the maker says nothing of it. */
    static Ingredient completed(Ingredient ingredient) {
        Plant plant = of(ingredient);
        if (plant == null) {
            return ingredient;
        }
        Map<Substance, Typed<Share>> contains = new LinkedHashMap<>(ingredient.contains());
        contains.put(Substance.WATER, part(plant.water()));
        Ingredient known = ingredient.containing(contains);
        return takesSugar(ingredient, plant) ? known.ofSugar(part(plant.sugar())) : known;
    }

    /** Returns the contents of a lot that has more water than the table by its whole doubt, and less sugar by the whole of that. */
    static Contents wetter(Contents perGram, Plant plant) {
        double room = 1.0 - perGram.total();
        double drop = perGram.sugars() > 0.0 ? Math.min(1.0, plant.sugarDoubt() / perGram.sugars()) : 0.0;
        double[] grams = perGram.toGrams();
        double less = 0.0;
        for (Substance substance : Substance.values()) {
            if (substance.sugar() != null) {
                less += drop * grams[substance.ordinal()];
                grams[substance.ordinal()] *= 1.0 - drop;
            }
        }
        grams[Substance.WATER.ordinal()] += Math.min(plant.waterDoubt(), room + less);
        return Contents.ofGrams(grams);
    }

    private static boolean takesSugar(Ingredient ingredient, Plant plant) {
        return plant.sugar() > 0.0
                && ingredient.sugar() == null
                && ingredient.contains().keySet().stream().noneMatch(each -> each.sugar() != null);
    }

    private static Typed<Share> part(double part) {
        return new Typed<>(percent(part), new MassFraction(part));
    }

    private static String percent(double part) {
        return QuantityWords.fixed(100.0 * part, 1) + " %";
    }

    /** Returns what is to be said of an ingredient that takes a plant of the table. */
    static Finding told(Ingredient ingredient, Plant plant) {
        String sugar = takesSugar(ingredient, plant) ? " and " + percent(plant.sugar()) + " sugar" : "";
        boolean recalled = plant.standing() == Standing.FROM_MEMORY;
        return new Finding(
                "ingredient-assumed",
                Severity.CAUTION,
                ingredient.name(),
                "",
                "assumed",
                "It is counted with " + percent(plant.water()) + " water" + sugar + ", as the table of plants has "
                        + plant.name() + ".",
                recalled ? "from memory, and not your lot's" : "a typical value, not your lot's",
                "Write its contents if you know them, such as contains: {water: 84 %}.",
                null,
                recalled ? Source.TRADE : Source.USDA_SR);
    }
}
