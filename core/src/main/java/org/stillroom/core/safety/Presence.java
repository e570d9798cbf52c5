package org.stillroom.core.safety;

import java.util.List;
import org.stillroom.core.extraction.Plants;
import org.stillroom.core.plan.PlannedLine;

/** Whether a plant can be in a drink by what is written of its ingredients; of what nobody knows, any can be in it. */
final class Presence {
    private Presence() {}

    /** Returns whether something is named after one of some plants, or something is of plants that nobody knows. */
    static boolean mayHoldOneOf(Drink drink, List<String> plants) {
        List<String> names = plants.stream().map(Words::plain).toList();
        return drink.lines().stream()
                .filter(line -> line.ingredient().ingredient().from() == null)
                .anyMatch(line ->
                        Words.any(line.words() + "; " + line.ingredient().kind().label(), names)
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
                        .allMatch(word ->
                                WordList.UNFLAVOURED_SPIRITS.words().contains(word) || NameWords.isPlain(word)));
    }

    private static boolean isOfUnknown(Drink drink, PlannedLine line) {
        if (Plants.find(line.ingredient().ingredient().plants()) != null) {
            return false;
        }
        NamedPlants named = NamedPlants.of(line.words(), drink.knowledge().plants());
        return named.plants().isEmpty()
                || !named.unread().isEmpty()
                || NameWords.of(line.words()).stream().anyMatch(WordList.OF_MANY_PLANTS.words()::contains);
    }
}
