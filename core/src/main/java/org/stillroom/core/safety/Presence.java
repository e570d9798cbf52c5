package org.stillroom.core.safety;

import org.stillroom.core.extraction.Plants;
import org.stillroom.core.plan.PlannedLine;

/** Whether what is written of an ingredient tells all that it is made of; of what nobody knows, anything can be in it. */
final class Presence {
    private Presence() {}

    /** Returns whether what an ingredient is made of is not all told by its name. */
    static boolean isOpen(Drink drink, PlannedLine line) {
        return switch (line.ingredient().kind()) {
            case SUGAR, HONEY, ACID, SALT, GLYCEROL, DAIRY, EGG, WATER -> false;
            case SPIRIT, WINE -> !isOnlyOf(line, WordList.UNFLAVOURED_SPIRITS) && isOfUnknown(drink, line);
            case ESSENTIAL_OIL, ESSENCE, TINCTURE, MACERATE, DISTILLATE, HYDROSOL, LIQUEUR, SYRUP, JUICE, OTHER ->
                isOfUnknown(drink, line);
            case FRESH_PLANT, DRIED_PLANT -> isOfUnknown(drink, line);
        };
    }

    /** Returns whether its name is of words of a list alone, beside forms and qualities. */
    static boolean isOnlyOf(PlannedLine line, WordList list) {
        return Words.readings(line.words()).stream()
                .anyMatch(reading -> NameWords.of(reading).stream()
                        .allMatch(word -> list.words().contains(word) || NameWords.isPlain(word)));
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
