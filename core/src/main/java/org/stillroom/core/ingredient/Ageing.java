package org.stillroom.core.ingredient;

import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Material;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/**
 * How long an opened bottle of something that flavours keeps. Common practice, no source: it says when to smell and taste first, and
 * never that something is fit to drink.
 *
 * @param key such as "expressed_oil"
 * @param months that it keeps its flavour once opened; empty where it keeps for years
 * @param words what it is
 * @param keep how to keep it
 * @param then what becomes of it
 */
public record Ageing(String key, OptionalDouble months, String words, String keep, String then) {
    private static final double STRONG = 40.0;
    private static final double WEAK = 25.0;
    private static final double RICH = 0.65;
    private static final double ROUNDING = 1e-6;
    private static final Map<String, Ageing> ALL = read(Tables.open("ingredient/ageing.csv"));

    /** Returns how everything keeps, by key. */
    public static Map<String, Ageing> all() {
        return ALL;
    }

    /** Returns how an ingredient keeps, or null for what is no flavouring or keeps as dry goods do. */
    public static @Nullable Ageing of(Ingredient ingredient) {
        return switch (ingredient.kind()) {
            case ESSENTIAL_OIL -> known(isExpressed(ingredient.name()) ? "expressed_oil" : "distilled_oil");
            case ESSENCE -> known("essence");
            case TINCTURE, MACERATE -> known(extract(ingredient));
            case DISTILLATE -> known("distillate");
            case HYDROSOL -> known("hydrosol");
            case SYRUP -> known(sugarByMass(ingredient) >= RICH - ROUNDING ? "rich_syrup" : "thin_syrup");
            case JUICE -> known("juice");
            case SPIRIT, WINE, LIQUEUR, SUGAR, HONEY, FRESH_PLANT, DRIED_PLANT, ACID, SALT, GLYCEROL -> null;
            case DAIRY, EGG, WATER, OTHER -> null;
        };
    }

    private static Ageing known(String key) {
        Ageing ageing = ALL.get(key);
        if (ageing == null) {
            throw new IllegalStateException("ingredient/ageing.csv has no row " + key);
        }
        return ageing;
    }

    private static boolean isExpressed(String name) {
        Material material = Materials.find(name);
        return material != null && material.part().contains("pressed");
    }

    private static String extract(Ingredient ingredient) {
        Resolved resolved = Resolution.of(ingredient).resolved();
        if (resolved == null) {
            return "very_weak_extract";
        }
        double strength = Essentials.of(resolved.perGram().toGrams()).strength();
        return strength >= STRONG - ROUNDING
                ? "strong_extract"
                : strength >= WEAK - ROUNDING ? "weak_extract" : "very_weak_extract";
    }

    private static double sugarByMass(Ingredient ingredient) {
        Resolved resolved = Resolution.of(ingredient).resolved();
        if (resolved == null) {
            return 0.0;
        }
        return resolved.perGram().sugars() / resolved.perGram().total();
    }

    private static Map<String, Ageing> read(Table table) {
        Map<String, Ageing> all = new TreeMap<>();
        for (Table.Row row : table.rows()) {
            boolean forYears = row.textOrEmpty("months").isEmpty();
            String key = row.text("key");
            all.put(
                    key,
                    new Ageing(
                            key,
                            forYears ? OptionalDouble.empty() : OptionalDouble.of(row.number("months")),
                            row.text("words"),
                            row.text("keep"),
                            row.text("then")));
        }
        return Map.copyOf(all);
    }
}
