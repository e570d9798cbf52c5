package org.stillroom.core.aroma;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/**
 * The essential oils whose composition ships with the program: those with a typical composition of their own, then those of
 * {@link Materials} at the middle of their ranges.
 */
public final class EssentialOils {
    private static final List<EssentialOil> ALL =
            withMaterials(read(Tables.open("aroma/oils.csv"), Tables.open("aroma/oil_compositions.csv")));
    private static final Map<String, EssentialOil> BY_NAME = byName(ALL);

    private EssentialOils() {}

    /** Returns every oil. */
    public static List<EssentialOil> list() {
        return ALL;
    }

    /** Returns the oil that a name means, such as "lemon", "Lemon oil" or "essence of lemon", or null when there is none. */
    public static @Nullable EssentialOil find(String name) {
        return PlainName.readings(name).stream()
                .map(BY_NAME::get)
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    /**
     * Returns the other oils that a name may mean when it does not call one of them wholly, such as "lime" of which there is an expressed
     * and a distilled one; none where it is an oil's own name.
     */
    public static List<EssentialOil> otherSorts(String name) {
        EssentialOil found = find(name);
        List<String> readings = PlainName.readings(name);
        if (found == null || readings.contains(PlainName.of(found.name()))) {
            return List.of();
        }
        return ALL.stream()
                .filter(oil -> !oil.equals(found))
                .filter(oil -> readings.stream().anyMatch(reading -> hasWordsOf(reading, oil.name())))
                .toList();
    }

    private static boolean hasWordsOf(String reading, String name) {
        return List.of(PlainName.of(name).split(" ", -1)).containsAll(List.of(reading.split(" ", -1)));
    }

    static List<EssentialOil> read(Table oils, Table compositions) {
        Map<String, Map<String, Double>> shares = new HashMap<>();
        for (Table.Row row : compositions.rows()) {
            String constituent = row.text("constituent");
            if (Constituents.find(constituent) == null && ConstituentGroup.named(constituent) == null) {
                throw row.fault("constituent", "is no constituent of the table: " + constituent);
            }
            shares.computeIfAbsent(row.text("oil"), oil -> new TreeMap<>())
                    .merge(constituent, row.number("percent_by_mass") / 100.0, Double::sum);
        }
        List<EssentialOil> all = new ArrayList<>();
        for (Table.Row row : oils.rows()) {
            all.add(oil(row, shares));
        }
        if (!shares.isEmpty()) {
            throw new IllegalStateException(
                    "aroma/oil_compositions.csv: aroma/oils.csv does not list " + shares.keySet());
        }
        return List.copyOf(all);
    }

    private static List<EssentialOil> withMaterials(List<EssentialOil> typical) {
        Map<String, EssentialOil> known = byName(typical);
        List<EssentialOil> all = new ArrayList<>(typical);
        for (Material material : Materials.list()) {
            Material.@Nullable Analysis analysis = material.analysis();
            if (material.kind() == Material.Kind.OIL
                    && analysis != null
                    && !known.containsKey(PlainName.of(material.name()))) {
                List<String> free = material.aliases().stream()
                        .filter(alias -> !known.containsKey(PlainName.of(alias)))
                        .toList();
                all.add(middle(material, free, analysis));
            }
        }
        return List.copyOf(all);
    }

    private static EssentialOil middle(Material material, List<String> aliases, Material.Analysis analysis) {
        double over = Math.max(1.0, analysis.middles() / 100.0);
        Map<String, Double> shares = new TreeMap<>();
        analysis.percent().forEach((key, range) -> {
            if (Constituents.find(key) != null) {
                shares.put(key, range.middle() / 100.0 / over);
            }
        });
        return new EssentialOil(
                material.name(),
                aliases,
                null,
                shares,
                analysis.standing(),
                "middle of the range: " + analysis.group(),
                ranges(analysis, over),
                from(analysis));
    }

    private static Map<String, Material.Range> ranges(Material.Analysis analysis, double over) {
        Map<String, Material.Range> ranges = new TreeMap<>();
        analysis.percent().forEach((key, range) -> {
            if (Constituents.find(key) != null) {
                ranges.put(key, new Material.Range(range.low() / 100.0 / over, range.high() / 100.0 / over));
            }
        });
        return ranges;
    }

    private static String from(Material.Analysis analysis) {
        return analysis.group() + " (" + analysis.standing().label() + ")";
    }

    private static EssentialOil oil(Table.Row row, Map<String, Map<String, Double>> shares) {
        Map<String, Double> own = shares.remove(row.text("name"));
        if (own == null) {
            throw row.fault("name", "has no composition: " + row.text("name"));
        }
        Material material = Materials.find(row.text("name"));
        Material.@Nullable Analysis analysis =
                material == null || material.kind() != Material.Kind.OIL ? null : material.analysis();
        return new EssentialOil(
                row.text("name"),
                aliases(row, material),
                row.textOrEmpty("density_g_per_ml").isEmpty() ? null : row.number("density_g_per_ml"),
                own,
                row.standing("status"),
                row.textOrEmpty("source"),
                analysis == null ? Map.of() : ranges(analysis, 1.0),
                analysis == null ? "" : from(analysis));
    }

    /** Returns its further names: those of its row, and those by which the table of materials knows it. */
    private static List<String> aliases(Table.Row row, @Nullable Material material) {
        String said = row.textOrEmpty("aliases");
        List<String> names = new ArrayList<>(said.isEmpty() ? List.of() : List.of(said.split(";", -1)));
        if (material != null) {
            names.add(material.name());
            names.addAll(material.aliases());
        }
        Map<String, String> once = new LinkedHashMap<>();
        names.forEach(name -> once.putIfAbsent(PlainName.of(name), name));
        once.remove(PlainName.of(row.text("name")));
        return List.copyOf(once.values());
    }

    private static Map<String, EssentialOil> byName(List<EssentialOil> all) {
        Map<String, EssentialOil> byName = new HashMap<>();
        for (EssentialOil oil : all) {
            List<String> names = new ArrayList<>(oil.aliases());
            names.add(oil.name());
            for (String name : names) {
                @Nullable EssentialOil other = byName.put(PlainName.of(name), oil);
                if (other != null) {
                    throw new IllegalStateException(
                            "aroma/oils.csv: " + name + " means both " + other.name() + " and " + oil.name());
                }
            }
        }
        return byName;
    }
}
