package org.stillroom.core.safety;

import java.util.List;
import java.util.Set;
import org.stillroom.core.extraction.Plants;
import org.stillroom.core.plan.PlannedLine;

/** Whether a plant can be in a drink by what is written of its ingredients; of what nobody knows, any can be in it. */
final class Presence {
    /** What is made of several plants, or of some that its name does not say. */
    private static final Set<String> OF_MANY = Set.of(
            "bitter",
            "bitters",
            "blend",
            "cordial",
            "elixir",
            "flavor",
            "flavoring",
            "flavour",
            "flavouring",
            "gin",
            "herb",
            "jam",
            "jelly",
            "liqueur",
            "mix",
            "mixture",
            "schnapps",
            "shrub",
            "spice");

    /** Words for spirits that are of grain, cane or grapes alone, English and German. */
    private static final Set<String> UNFLAVOURED = Set.of(
            "spirit",
            "alcohol",
            "ethanol",
            "vodka",
            "rum",
            "whisky",
            "whiskey",
            "brandy",
            "neutral",
            "grain",
            "wheat",
            "grape",
            "white",
            "red",
            "agricultural",
            "wine",
            "weingeist",
            "primasprit",
            "feinsprit",
            "trinkalkohol",
            "alkohol",
            "neutralalkohol",
            "kornbrand",
            "korn",
            "wodka",
            "weinbrand");

    private Presence() {}

    /** Returns whether something is named after one of some plants, or something is of plants that nobody knows. */
    static boolean mayHoldOneOf(Drink drink, List<String> plants) {
        List<String> names = plants.stream().map(Words::plain).toList();
        return drink.lines().stream()
                .filter(line -> line.ingredient().ingredient().from() == null)
                .anyMatch(line ->
                        Words.any(line.words() + ", " + line.ingredient().kind().label(), names)
                                || isOpen(drink, line));
    }

    /** Returns whether what an ingredient is made of is not all told by its name. */
    static boolean isOpen(Drink drink, PlannedLine line) {
        return switch (line.ingredient().kind()) {
            case SUGAR, HONEY, ACID, SALT, GLYCEROL, DAIRY, EGG, WATER -> false;
            case SPIRIT, WINE -> !isUnflavoured(line) && isOfUnknown(drink, line);
            case ESSENTIAL_OIL, ESSENCE, TINCTURE, MACERATE, DISTILLATE, HYDROSOL, LIQUEUR, SYRUP, JUICE, OTHER ->
                isOfUnknown(drink, line);
            case FRESH_PLANT, DRIED_PLANT -> isOfUnknown(drink, line);
        };
    }

    private static boolean isUnflavoured(PlannedLine line) {
        return Words.readings(line.words()).stream()
                .anyMatch(reading -> NameWords.of(reading).stream()
                        .allMatch(word -> UNFLAVOURED.contains(word) || NameWords.isPlain(word)));
    }

    private static boolean isOfUnknown(Drink drink, PlannedLine line) {
        if (Plants.find(line.ingredient().ingredient().plants()) != null) {
            return false;
        }
        NamedPlants named = NamedPlants.of(line.words(), drink.knowledge().plants());
        return named.plants().isEmpty()
                || !named.unread().isEmpty()
                || NameWords.of(line.words()).stream().anyMatch(OF_MANY::contains);
    }
}
