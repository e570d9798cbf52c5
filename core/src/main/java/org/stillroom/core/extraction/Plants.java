package org.stillroom.core.extraction;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.CommonNames;
import org.stillroom.core.reference.Standing;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/** The plants whose water and sugar ship with the program. */
public final class Plants {
    /** How far a lot may lie from the table's water, part of the mass; own estimate. */
    private static final double LOTS = 0.03;
    /** How far a lot may lie from the table's sugar, part of that sugar; own estimate. */
    private static final double LOTS_SUGAR = 0.25;

    private static final int MOST_LIKE = 6;

    private static final List<Plant> ALL = read(Tables.open("extraction/plants.csv"));
    private static final Map<String, Plant> BY_NAME = byName(ALL);

    private Plants() {}

    public static List<Plant> list() {
        return ALL;
    }

    /**
     * Returns the plant that a name means, or null when none does: by the same words, in whatever order, in one or many, with or without
     * what says nothing ("of", "whole"); "dried" and "fresh" may be left out or added only where the plant is so. A word more is another plant.
     */
    public static @Nullable Plant find(String name) {
        for (String reading : CommonNames.readings(name)) {
            Plant plant = BY_NAME.get(PlantWords.key(reading));
            if (plant != null) {
                return plant;
            }
            Plant stated = BY_NAME.get(PlantWords.withoutState(reading));
            if (stated != null && PlantWords.state(reading) == PlantWords.stateOf(stated)) {
                return stated;
            }
        }
        return null;
    }

    /** Returns plants whose names share a word with a name, for a person who may mean one of them; those that share most first. */
    public static List<String> like(String name) {
        Set<String> words = new TreeSet<>();
        CommonNames.readings(name).forEach(reading -> words.addAll(PlantWords.tellingWords(reading)));
        Set<String> all = new TreeSet<>(List.of(PlantWords.key(name).split(" ", -1)));
        return ALL.stream()
                .filter(plant -> shared(plant, words) > 0)
                .sorted(Comparator.comparingInt((Plant plant) -> -shared(plant, words))
                        .thenComparingInt(plant -> -shared(plant, all)))
                .limit(MOST_LIKE)
                .map(Plant::name)
                .toList();
    }

    /** Returns how many of the words a name of the plant holds, by the name that holds most. */
    private static int shared(Plant plant, Set<String> words) {
        return names(plant).stream()
                .mapToInt(name -> (int) Arrays.stream(PlantWords.key(name).split(" ", -1))
                        .filter(words::contains)
                        .count())
                .max()
                .orElse(0);
    }

    private static List<String> names(Plant plant) {
        List<String> names = new ArrayList<>(plant.aliases());
        names.add(plant.name());
        return names;
    }

    static List<Plant> read(Table table) {
        List<Plant> all = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            String aliases = row.textOrEmpty("aliases");
            boolean sugar = !row.textOrEmpty("sugar_percent").isEmpty();
            boolean range = !row.textOrEmpty("water_low").isEmpty();
            double doubt = range ? 0.5 * (row.number("water_high") - row.number("water_low")) / 100.0 : LOTS;
            PlantSort sort = PlantSort.of(row.text("sort"));
            double water = row.number("water_percent") / 100.0;
            double unknown = Plant.unknownSugar(sort, water);
            double ofSugar = sugar ? row.number("sugar_percent") / 100.0 : unknown;
            Standing standing = row.standing("status");
            all.add(new Plant(
                    row.text("name"),
                    aliases.isEmpty() ? List.of() : List.of(aliases.split(";", -1)),
                    sort,
                    water,
                    doubt,
                    Plant.By.TABLE,
                    ofSugar,
                    sugar ? LOTS_SUGAR * ofSugar : unknown,
                    sugar ? Plant.By.TABLE : Plant.By.NOBODY,
                    standing));
        }
        return List.copyOf(all);
    }

    private static Map<String, Plant> byName(List<Plant> all) {
        Map<String, Plant> byName = new TreeMap<>();
        for (Plant plant : all) {
            for (String name : names(plant)) {
                @Nullable Plant other = byName.put(PlantWords.key(name), plant);
                if (other != null && !other.equals(plant)) {
                    throw new IllegalStateException(
                            "extraction/plants.csv: " + name + " means both " + other.name() + " and " + plant.name());
                }
            }
        }
        return byName;
    }
}
