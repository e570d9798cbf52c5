package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.stillroom.core.extraction.Plant;
import org.stillroom.core.extraction.Plants;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.PlannedLine;

/**
 * What an ingredient brings that turns or works in a drink, by its kind or by its words, whichever says it first.
 *
 * <p>Words for what ferments and for milks of plants: general knowledge of kitchens, from memory. They ask for the cold and never
 * clear: what no word tells is not known.
 */
final class Brought {
    /** Whether yeast comes in with an ingredient. */
    enum YeastIn {
        YES,
        NOT_KNOWN,
        /** It was distilled, or is sugar, acid, salt or water by itself. */
        NO
    }

    private static final Set<String> MILK_AND_EGG = Set.of("milk", "egg");

    /** Parts that are the flesh of a fruit themselves. */
    private static final Set<String> FLESH = Set.of("berry", "fruit", "flesh", "pulp", "hip", "pod");

    private Brought() {}

    /** Returns whether it is milk, egg or milk of a plant, or is made with such. */
    static boolean isMilkOrEgg(PlannedLine line, Knowledge knowledge) {
        Kind kind = line.ingredient().kind();
        return kind == Kind.DAIRY
                || kind == Kind.EGG
                || WordList.MILKS_OF_PLANTS.isInAnyReading(line.words())
                || AllergenWords.in(line.words(), knowledge.allergens()).stream()
                        .anyMatch(row ->
                                row.says() == AllergenName.Says.CONTAINS && MILK_AND_EGG.contains(row.allergen()));
    }

    /** Returns whether it brings yeast. What stands above the strength at which yeast stops has none that is known to live. */
    static YeastIn yeast(PlannedLine line) {
        Kind kind = line.ingredient().kind();
        YeastIn named = byName(line.words());
        return switch (kind) {
            case DISTILLATE, ESSENTIAL_OIL -> YeastIn.NO;
            case SPIRIT -> named == YeastIn.YES && Handling.strength(line) < Yeast.STOPS ? YeastIn.YES : YeastIn.NO;
            case SUGAR, ACID, SALT, GLYCEROL -> named == YeastIn.NO ? YeastIn.NO : YeastIn.NOT_KNOWN;
            case WATER -> named;
            case SYRUP -> Sourness.isPlainSyrup(line) ? YeastIn.NO : inMade(line, named);
            case LIQUEUR, ESSENCE, TINCTURE, MACERATE, HYDROSOL, DRIED_PLANT, DAIRY, EGG, OTHER -> inMade(line, named);
            case JUICE, FRESH_PLANT, WINE, HONEY -> YeastIn.YES;
        };
    }

    private static YeastIn inMade(PlannedLine line, YeastIn named) {
        return named == YeastIn.YES && Handling.strength(line) < Yeast.STOPS ? YeastIn.YES : YeastIn.NOT_KNOWN;
    }

    /** Of peel, seeds or leaves of a fruit it is not known. */
    private static YeastIn byName(String words) {
        YeastIn found = YeastIn.NO;
        for (String reading : Words.readings(words)) {
            Words.Named<Plant> named = Words.read(reading, Plants.list(), Brought::names);
            boolean fruit = named.things().stream().anyMatch(Brought::isFruit) || WordList.FERMENTS.isIn(named.rest());
            boolean part =
                    NameWords.of(reading).stream().anyMatch(word -> NameWords.isPart(word) && !FLESH.contains(word));
            if (fruit && !part) {
                return YeastIn.YES;
            }
            found = fruit ? YeastIn.NOT_KNOWN : found;
        }
        return found;
    }

    private static boolean isFruit(Plant plant) {
        return plant.sort().key().endsWith("_fruit");
    }

    private static List<String> names(Plant plant) {
        List<String> names = new ArrayList<>(List.of(Words.plain(plant.name())));
        plant.aliases().forEach(alias -> names.add(Words.plain(alias)));
        return names;
    }
}
