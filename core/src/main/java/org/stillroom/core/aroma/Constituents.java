package org.stillroom.core.aroma;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituent.Property;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/**
 * The aroma constituents that ship with the program.
 *
 * <p>A name that means several substances (thujone is alpha and beta) is no name of any of them; anethole means trans-anethole,
 * limonene means d-limonene, as in the trade. Sources stand beside each figure in the table; German names are from memory.
 */
public final class Constituents {
    /** What is one thing with its parts, by CAS numbers: citral is geranial and neral together. */
    public static final Map<String, List<String>> WHOLES = Map.of("5392-40-5", List.of("141-27-5", "106-26-3"));

    private static final List<Constituent> ALL = read(Tables.open("aroma/constituents.csv"));
    private static final Map<String, Constituent> BY_NAME =
            withGerman(byName(ALL), Tables.open("aroma/german_constituents.csv"));

    private Constituents() {}

    /** Returns every constituent. */
    public static List<Constituent> list() {
        return ALL;
    }

    /** Returns the constituent of a CAS number, name or alias, in capitals or not, or null when there is none. */
    public static @Nullable Constituent find(String casOrName) {
        return BY_NAME.get(key(casOrName));
    }

    private static String key(String name) {
        return name.trim().toLowerCase(Locale.ROOT);
    }

    static List<Constituent> read(Table table) {
        List<Constituent> all = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            all.add(constituent(row));
        }
        return List.copyOf(all);
    }

    private static Constituent constituent(Table.Row row) {
        String cas = row.text("cas");
        if (!hasCheckDigit(cas)) {
            throw row.fault("cas", "is no CAS number: " + cas);
        }
        return new Constituent(
                cas,
                row.text("name"),
                aliases(row.textOrEmpty("aliases")),
                row.text("formula"),
                positive(row, "molar_mass"),
                new Property(
                        positive(row, "water_solubility_mg_per_l"),
                        row.standing("water_solubility_status"),
                        row.textOrEmpty("water_solubility_source")),
                new Property(row.number("log_p"), row.standing("log_p_status"), row.textOrEmpty("log_p_source")),
                density(row));
    }

    private static @Nullable Property density(Table.Row row) {
        if (row.textOrEmpty("density_g_per_ml").isEmpty()) {
            return null;
        }
        return new Property(
                positive(row, "density_g_per_ml"), row.standing("density_status"), row.textOrEmpty("density_source"));
    }

    private static List<String> aliases(String cell) {
        return cell.isEmpty() ? List.of() : List.of(cell.split(";", -1));
    }

    private static double positive(Table.Row row, String column) {
        double number = row.number(column);
        if (!(number > 0.0)) {
            throw row.fault(column, "is not above zero");
        }
        return number;
    }

    /** The last digit is the sum of the others, each times its place from the right, modulo 10. */
    private static boolean hasCheckDigit(String cas) {
        int sum = 0;
        int place = 0;
        for (int i = cas.length() - 2; i >= 0; i--) {
            char c = cas.charAt(i);
            if (c != '-') {
                place++;
                sum += place * (c - '0');
            }
        }
        return place >= 4 && sum % 10 == cas.charAt(cas.length() - 1) - '0';
    }

    private static Map<String, Constituent> withGerman(Map<String, Constituent> byName, Table table) {
        for (Table.Row row : table.rows()) {
            Constituent constituent = byName.get(row.text("cas"));
            if (constituent == null) {
                throw row.fault("cas", "is no constituent");
            }
            for (String name : row.text("german").split(";", -1)) {
                if (!constituent.equals(byName.getOrDefault(key(name), constituent))) {
                    throw row.fault("german", "means another constituent: " + name);
                }
                byName.put(key(name), constituent);
            }
        }
        return byName;
    }

    private static Map<String, Constituent> byName(List<Constituent> all) {
        Map<String, Constituent> byName = new HashMap<>();
        for (Constituent constituent : all) {
            List<String> names = new ArrayList<>(constituent.aliases());
            names.add(constituent.name());
            names.add(constituent.cas());
            for (String name : names) {
                @Nullable Constituent other = byName.put(key(name), constituent);
                if (other != null) {
                    throw new IllegalStateException("aroma/constituents.csv: " + name + " means both " + other.name()
                            + " and " + constituent.name());
                }
            }
        }
        return byName;
    }
}
