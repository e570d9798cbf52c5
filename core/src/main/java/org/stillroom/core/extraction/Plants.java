package org.stillroom.core.extraction;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Standing;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/** The plants whose water and sugar ship with the program. */
public final class Plants {
    /** How far a lot may lie from the table's water, part of the mass; own estimate. */
    private static final double LOTS = 0.03;
    /** How far a lot may lie from the table's sugar, part of that sugar; own estimate. */
    private static final double LOTS_SUGAR = 0.25;

    private static final List<Plant> ALL = read(Tables.open("extraction/plants.csv"));
    private static final Map<String, Plant> BY_NAME = byName(ALL);

    private Plants() {}

    public static List<Plant> list() {
        return ALL;
    }

    /** Returns the plant of a name or alias, in capitals or not, or null when there is none. */
    public static @Nullable Plant find(String name) {
        return BY_NAME.get(key(name));
    }

    /** Returns plants whose names hold one of the words, for a person who may mean one of them. */
    public static List<String> like(String name) {
        List<String> like = new ArrayList<>();
        for (Plant plant : ALL) {
            for (String word : key(name).split(" ", -1)) {
                if (word.length() > 3 && key(plant.name()).contains(word) && !like.contains(plant.name())) {
                    like.add(plant.name());
                }
            }
        }
        return like;
    }

    private static String key(String name) {
        return String.join(" ", name.toLowerCase(Locale.ROOT).strip().split("\\s+"));
    }

    static List<Plant> read(Table table) {
        List<Plant> all = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            String aliases = row.textOrEmpty("aliases");
            boolean sugar = !row.textOrEmpty("sugar_percent").isEmpty();
            boolean range = !row.textOrEmpty("water_low").isEmpty();
            double doubt = range ? 0.5 * (row.number("water_high") - row.number("water_low")) / 100.0 : LOTS;
            double ofSugar = sugar ? row.number("sugar_percent") / 100.0 : 0.0;
            Standing standing = row.standing("status");
            all.add(new Plant(
                    row.text("name"),
                    aliases.isEmpty() ? List.of() : List.of(aliases.split(";", -1)),
                    PlantSort.of(row.text("sort")),
                    row.number("water_percent") / 100.0,
                    doubt,
                    ofSugar,
                    LOTS_SUGAR * ofSugar,
                    sugar,
                    standing));
        }
        return List.copyOf(all);
    }

    private static Map<String, Plant> byName(List<Plant> all) {
        Map<String, Plant> byName = new TreeMap<>();
        for (Plant plant : all) {
            List<String> names = new ArrayList<>(plant.aliases());
            names.add(plant.name());
            for (String name : names) {
                @Nullable Plant other = byName.put(key(name), plant);
                if (other != null && !other.equals(plant)) {
                    throw new IllegalStateException(
                            "extraction/plants.csv: " + name + " means both " + other.name() + " and " + plant.name());
                }
            }
        }
        return byName;
    }
}
