package org.stillroom.core.ingredient;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.reference.PlainLetters;

/**
 * Oils of kitchens, which are fats and no essential oils: for garnish, for washing spirit with fat.
 *
 * <p>Names: common usage. Almond oil is not among them, for the oil of bitter almonds is sold under that name too.
 */
public final class FattyOils {
    /** Names as whole words in small letters, one blank before each word. */
    public static final List<String> NAMES = List.of(
            " olive oil",
            " sunflower oil",
            " rapeseed oil",
            " canola oil",
            " grapeseed oil",
            " grape seed oil",
            " walnut oil",
            " hazelnut oil",
            " sesame oil",
            " peanut oil",
            " pumpkin seed oil",
            " vegetable oil",
            " neutral oil",
            " frying oil",
            " coconut oil",
            " olivenöl",
            " sonnenblumenöl",
            " rapsöl",
            " traubenkernöl",
            " walnussöl",
            " haselnussöl",
            " sesamöl",
            " erdnussöl",
            " kürbiskernöl",
            " pflanzenöl",
            " kokosöl");

    /** What may stand beside such a name and brings nothing else in. */
    private static final Set<String> BESIDE = Set.of(
            "extra",
            "virgin",
            "cold",
            "pressed",
            "refined",
            "unrefined",
            "organic",
            "mild",
            "fine",
            "good",
            "toasted",
            "roasted",
            "light",
            "for",
            "garnish",
            "natives",
            "nativ",
            "kaltgepresst",
            "kaltgepresstes",
            "bio",
            "mildes",
            "feines",
            "gerostetes",
            "raffiniertes",
            "zum",
            "garnieren");

    private FattyOils() {}

    /** Returns whether a name says nothing but a fatty oil; peppermint oil in sunflower oil is not one. */
    public static boolean isOne(String name) {
        String plain = " " + PlainLetters.of(name) + " ";
        return NAMES.stream()
                .map(each -> " " + PlainLetters.of(each) + " ")
                .anyMatch(each -> plain.contains(each)
                        && Arrays.stream(plain.replace(each, " ").strip().split(" "))
                                .allMatch(word -> word.isEmpty() || BESIDE.contains(word)));
    }

    /** Returns whether oil is said of an ingredient that is fat. */
    static boolean isMeant(Ingredient ingredient) {
        boolean alone = ingredient.kind() == Kind.OTHER && ingredient.aroma() == null && ingredient.plant() == null;
        return alone
                && ingredient.contains().containsKey(Substance.OIL)
                && !ingredient.contains().containsKey(Substance.FAT)
                && isOne(ingredient.name());
    }

    /** Returns the ingredient with fat in place of the oil that is said of it, where it is a fatty oil. */
    static Ingredient asFat(Ingredient ingredient) {
        if (!isMeant(ingredient)) {
            return ingredient;
        }
        Map<Substance, Typed<Share>> parts = new LinkedHashMap<>();
        ingredient
                .contains()
                .forEach(
                        (substance, share) -> parts.put(substance == Substance.OIL ? Substance.FAT : substance, share));
        return ingredient.containing(parts);
    }
}
