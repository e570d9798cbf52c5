package org.stillroom.core.aroma;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Material.Analysis;
import org.stillroom.core.aroma.Material.Range;
import org.stillroom.core.reference.Standing;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/** The materials that ship with the program: oils, plants and extracts, with what is stated of their composition. */
public final class Materials {
    private static final Map<String, String> OTHER_NAMES = otherNames(Tables.open("aroma/other_names.csv"));
    private static final Map<String, String> NAMES_OF_OTHERS = namesOfOthers(Tables.open("aroma/other_names.csv"));
    private static final List<Material> ALL =
            read(Tables.open("aroma/materials.csv"), Tables.open("aroma/material_compositions.csv"));
    private static final Map<String, Material> BY_NAME = byName(ALL);

    private Materials() {}

    public static List<Material> list() {
        return ALL;
    }

    /** Returns the material that a name means, such as "lemon", "lemon oil" or "essential oil of lemon", or null. */
    public static @Nullable Material find(String name) {
        return PlainName.readings(name).stream()
                .map(BY_NAME::get)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    /** Returns the materials whose names share a word with a name, for a person who may mean one of them. */
    public static List<Material> like(String name) {
        Set<String> words = new TreeSet<>();
        PlainName.readings(name).forEach(reading -> words.addAll(List.of(reading.split(" ", -1))));
        words.remove("");
        return ALL.stream()
                .filter(material -> names(material).stream()
                        .flatMap(each -> Stream.of(PlainName.of(each).split(" ", -1)))
                        .anyMatch(words::contains))
                .toList();
    }

    private static List<String> names(Material material) {
        List<String> names = new ArrayList<>(material.aliases());
        names.add(material.name());
        return names;
    }

    /**
     * Returns the one key of a constituent: its CAS number, or the name of a sum such as "furocoumarins (sum)"; null when the
     * name has no partner.
     *
     * @param name CAS number, name or alias
     */
    public static @Nullable String keyOf(String name) {
        Constituent constituent = Constituents.find(name);
        return constituent != null
                ? constituent.cas()
                : OTHER_NAMES.get(name.strip().toLowerCase(Locale.ROOT));
    }

    /** Returns the name of a constituent or a sum by its key. */
    public static String nameOf(String key) {
        Constituent constituent = Constituents.find(key);
        return constituent == null ? NAMES_OF_OTHERS.getOrDefault(key, key) : constituent.name();
    }

    private static Map<String, String> namesOfOthers(Table table) {
        Map<String, String> names = new TreeMap<>();
        table.rows().forEach(row -> names.put(row.text("key"), row.text("name")));
        return names;
    }

    private static Map<String, String> otherNames(Table table) {
        Map<String, String> keys = new TreeMap<>();
        for (Table.Row row : table.rows()) {
            List<String> names = new ArrayList<>(List.of(row.text("key"), row.text("name")));
            names.addAll(List.of(row.textOrEmpty("aliases").split(";", -1)));
            names.stream()
                    .filter(name -> !name.isEmpty())
                    .forEach(name -> keys.put(name.toLowerCase(Locale.ROOT), row.text("key")));
        }
        return keys;
    }

    static List<Material> read(Table materials, Table compositions) {
        Map<String, Map<String, Analysis>> groups = groups(compositions);
        List<Material> all = new ArrayList<>();
        for (Table.Row row : materials.rows()) {
            Map<String, Analysis> own = groups.remove(row.text("id"));
            all.add(material(row, own == null ? List.of() : List.copyOf(own.values())));
        }
        if (!groups.isEmpty()) {
            throw new IllegalStateException(
                    "aroma/material_compositions.csv: aroma/materials.csv does not list " + groups.keySet());
        }
        return List.copyOf(all);
    }

    private static Map<String, Map<String, Analysis>> groups(Table compositions) {
        Map<String, Map<String, Analysis>> groups = new TreeMap<>();
        for (Table.Row row : compositions.rows()) {
            String key = row.text("key");
            if (!key.equals(keyOf(key))) {
                throw row.fault("key", "is no constituent and no sum: " + key);
            }
            Map<String, Analysis> own = groups.computeIfAbsent(row.text("material"), id -> new LinkedHashMap<>());
            Standing standing = row.standing("status");
            Map<String, Range> percent = new LinkedHashMap<>();
            Analysis before = own.get(row.text("group"));
            if (before != null) {
                percent.putAll(before.percent());
            }
            if (percent.put(key, new Range(row.number("min_percent"), row.number("max_percent"))) != null) {
                throw row.fault("key", "stands twice in its group: " + key);
            }
            own.put(row.text("group"), new Analysis(row.text("group"), standing, percent));
        }
        return groups;
    }

    private static Material material(Table.Row row, List<Analysis> analyses) {
        String aliases = row.textOrEmpty("aliases");
        String status = row.textOrEmpty("density_status");
        return new Material(
                row.text("id"),
                row.text("name"),
                aliases.isEmpty() ? List.of() : List.of(aliases.split(";", -1)),
                Material.Kind.valueOf(row.text("kind").toUpperCase(Locale.ROOT)),
                row.text("title"),
                row.text("botanical"),
                row.text("part"),
                row.textOrEmpty("cas"),
                row.textOrEmpty("standard"),
                range(row, "density_min", "density_max"),
                row.textOrEmpty("density_basis"),
                status.isEmpty() ? null : row.standing("density_status"),
                range(row, "n20_min", "n20_max"),
                row.textOrEmpty("note"),
                analyses);
    }

    private static @Nullable Range range(Table.Row row, String low, String high) {
        return row.textOrEmpty(low).isEmpty() ? null : new Range(row.number(low), row.number(high));
    }

    private static Map<String, Material> byName(List<Material> all) {
        Map<String, Material> byName = new TreeMap<>();
        for (Material material : all) {
            for (String name : names(material)) {
                @Nullable Material other = byName.put(PlainName.of(name), material);
                if (other != null && !other.equals(material)) {
                    throw new IllegalStateException(
                            "aroma/materials.csv: " + name + " means both " + other.id() + " and " + material.id());
                }
            }
        }
        return byName;
    }
}
