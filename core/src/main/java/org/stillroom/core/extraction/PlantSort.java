package org.stillroom.core.extraction;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/**
 * What is alike among plants for whoever macerates them.
 *
 * @param key short name, such as "dried_root"
 * @param words for people
 * @param drainedPerGram mL that a gram of the plant, as used, holds when its marc is drained and squeezed by hand
 * @param pressedPerGram mL that it holds after a press
 * @param perDay rate of first order at room temperature, order of magnitude only
 * @param strengthLow lowest strength that suits it, % vol
 * @param strengthHigh highest strength that suits it, % vol
 */
public record PlantSort(
        String key,
        String words,
        double drainedPerGram,
        double pressedPerGram,
        double perDay,
        double strengthLow,
        double strengthHigh) {
    /** Half-width of what a marc holds, part of it: yields of the same tincture differ so much. Own estimate. */
    public static final double HELD_DOUBT = 0.4;

    private static final Map<String, PlantSort> ALL = read(Tables.open("extraction/sorts.csv"));

    static PlantSort of(String key) {
        PlantSort sort = ALL.get(key);
        if (sort == null) {
            throw new IllegalStateException("extraction/sorts.csv has no sort " + key);
        }
        return sort;
    }

    /** Returns the sort of a key, or null when there is none. */
    public static @Nullable PlantSort find(String key) {
        return ALL.get(key);
    }

    /** Returns all sorts by their keys. */
    public static List<PlantSort> list() {
        return List.copyOf(ALL.values());
    }

    /**
     * Returns the sort that a plant of no table most likely is, by the words of its name and its water.
     *
     * @param water part of its mass
     */
    public static PlantSort guess(String name, double water) {
        List<String> words = List.of(PlantWords.key(name).split(" ", -1));
        boolean dry = water < 1.0 / 3.0;
        if (words.contains("nut") || words.contains("kernel")) {
            return of("nuts");
        }
        if (words.contains("leaf") || words.contains("herb") || words.contains("flower")) {
            return of(dry ? "dried_leaf" : "fresh_herb");
        }
        if (dry) {
            return of("dried_root");
        }
        return of(
                words.contains("peel") || words.contains("zest")
                        ? "fresh_peel"
                        : words.contains("root") ? "fresh_root" : "fresh_fruit");
    }

    /** Returns whether it is a fresh fruit, with sugar in its juice. */
    public boolean isFruit() {
        return key.equals("fresh_fruit");
    }

    /** Returns whether the plant brings juice of its own. */
    public boolean fresh() {
        return key.startsWith("fresh");
    }

    private static Map<String, PlantSort> read(Table table) {
        Map<String, PlantSort> all = new TreeMap<>();
        for (Table.Row row : table.rows()) {
            all.put(
                    row.text("sort"),
                    new PlantSort(
                            row.text("sort"),
                            row.text("words"),
                            row.number("drained_ml_per_g"),
                            row.number("pressed_ml_per_g"),
                            row.number("per_day"),
                            row.number("strength_low"),
                            row.number("strength_high")));
        }
        return all;
    }
}
