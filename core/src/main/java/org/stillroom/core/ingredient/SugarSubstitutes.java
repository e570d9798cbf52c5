package org.stillroom.core.ingredient;

import java.util.List;
import org.stillroom.core.reference.PlainLetters;

/**
 * What sweetens or stands in for sugar and is none by law: sugars are the monosaccharides and disaccharides of a food without its
 * polyols (Regulation (EU) No 1169/2011, Annex I 8).
 *
 * <p>Names: common usage, from memory; allulose and tagatose stand here, for their energy is not that of sugar. Isomaltulose is a sugar.
 */
final class SugarSubstitutes {
    /** Parts of names in any case and with or without umlauts. */
    private static final List<String> NAMES = List.of(
            "erythrit",
            "xylit",
            "birch sugar",
            "birkenzucker",
            "sorbit",
            "mannit",
            "maltit",
            "lactit",
            "isomalt",
            "polyol",
            "sugar alcohol",
            "zuckeralkohol",
            "allulose",
            "inulin",
            "fibre",
            "fiber",
            "ballaststoff",
            "polydextrose",
            "oligofructose",
            "oligofruktose",
            "stevi",
            "rebaudiosid",
            "monk fruit",
            "sucralose",
            "saccharin",
            "aspartam",
            "cyclamat",
            "acesulfam",
            "sweetener",
            "süßstoff",
            "süßungsmittel",
            "streusüße",
            "sugar substitute",
            "zuckerersatz",
            "zuckeraustausch",
            "sugar alternative",
            "zuckeralternative",
            "zero calorie",
            "kalorienfrei",
            "tagatose");

    private static final String A_SUGAR = "isomaltulos";

    private SugarSubstitutes() {}

    /** Returns whether its name says that something else than sugar sweetens, and nobody says what it holds. */
    static boolean isUnsaid(Ingredient ingredient) {
        return ingredient.contains().isEmpty() && countsAsSucrose(ingredient) && isOne(ingredient.name());
    }

    private static boolean countsAsSucrose(Ingredient ingredient) {
        boolean isDissolved = ingredient.kind() == Kind.SYRUP || ingredient.kind() == Kind.OTHER;
        return ingredient.kind() == Kind.SUGAR || (isDissolved && ingredient.sugar() != null);
    }

    private static boolean isOne(String name) {
        String plain = PlainLetters.of(name).replace(A_SUGAR, "");
        return NAMES.stream().map(PlainLetters::of).anyMatch(plain::contains);
    }
}
