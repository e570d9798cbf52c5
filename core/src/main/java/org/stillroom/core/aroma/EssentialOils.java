package org.stillroom.core.aroma;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/** The essential oils whose composition ships with the program. */
public final class EssentialOils {
    /** Words by which people say in what form they have an oil, not which oil it is. */
    private static final Pattern FORM =
            Pattern.compile("\\b(essential|oils?|of|essence|tincture|extract|pure|organic|macerate|distillate)\\b");

    private static final List<EssentialOil> ALL =
            read(Tables.open("aroma/oils.csv"), Tables.open("aroma/oil_compositions.csv"));
    private static final Map<String, EssentialOil> BY_NAME = byName(ALL);

    private EssentialOils() {}

    /** Returns every oil. */
    public static List<EssentialOil> list() {
        return ALL;
    }

    /** Returns the oil that a name means, such as "lemon", "Lemon oil" or "essence of lemon", or null when there is none. */
    public static @Nullable EssentialOil find(String name) {
        return BY_NAME.get(key(name));
    }

    private static String key(String name) {
        String bare = FORM.matcher(name.toLowerCase(Locale.ROOT)).replaceAll(" ").replace(',', ' ');
        return String.join(" ", bare.strip().split("\\s+"));
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
            throw new IllegalStateException("aroma/oil_compositions.csv: aroma/oils.csv does not list " + shares.keySet());
        }
        return List.copyOf(all);
    }

    private static EssentialOil oil(Table.Row row, Map<String, Map<String, Double>> shares) {
        Map<String, Double> own = shares.remove(row.text("name"));
        if (own == null) {
            throw row.fault("name", "has no composition: " + row.text("name"));
        }
        String aliases = row.textOrEmpty("aliases");
        return new EssentialOil(
                row.text("name"),
                aliases.isEmpty() ? List.of() : List.of(aliases.split(";", -1)),
                row.number("density_g_per_ml"),
                own,
                row.standing("status"),
                row.textOrEmpty("source"));
    }

    private static Map<String, EssentialOil> byName(List<EssentialOil> all) {
        Map<String, EssentialOil> byName = new HashMap<>();
        for (EssentialOil oil : all) {
            List<String> names = new ArrayList<>(oil.aliases());
            names.add(oil.name());
            for (String name : names) {
                @Nullable EssentialOil other = byName.put(key(name), oil);
                if (other != null) {
                    throw new IllegalStateException(
                            "aroma/oils.csv: " + name + " means both " + other.name() + " and " + oil.name());
                }
            }
        }
        return byName;
    }
}
