package org.stillroom.core.tasting;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.reference.Standing;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/**
 * The content from which a constituent is smelt, in one medium, over all figures that there are of it.
 *
 * @param medium in which it was found
 * @param low least figure, µg/L
 * @param high greatest figure, µg/L
 * @param standing the weakest of the figures' standings
 * @param sources where they come from
 */
public record OdourThreshold(Medium medium, double low, double high, Standing standing, List<String> sources) {
    /** To this strength a drink is taken for water, % vol. Own judgement. */
    private static final double STILL_WATER = 5.0;

    /** So far from the strength of its medium a threshold is taken to hold, % vol. Own judgement. */
    private static final double STILL_ALIKE = 15.0;

    private static final Map<String, Map<Medium, OdourThreshold>> ALL =
            read(Tables.open("tasting/odour_thresholds.csv"));
    private static final Map<String, String> SMELLS = smells(Tables.open("tasting/smells.csv"));

    public OdourThreshold {
        sources = List.copyOf(sources);
    }

    /** What a threshold was found in. */
    public enum Medium {
        WATER("water", 0.0),
        WINE("water with 10 % mass of ethanol", 12.0),
        SPIRIT("spirit of 40 % vol", 40.0);

        private final String label;
        private final double strength;

        Medium(String label, double strength) {
            this.label = label;
            this.strength = strength;
        }

        public String label() {
            return label;
        }

        /** Returns its strength, % vol. */
        public double strength() {
            return strength;
        }
    }

    /**
     * Returns the threshold in the medium nearest to a strength, or null when none was found at all.
     *
     * @param cas constituent
     * @param strength of the liquid, % vol
     */
    public static @Nullable OdourThreshold of(String cas, double strength) {
        OdourThreshold nearest = null;
        for (OdourThreshold each : ALL.getOrDefault(cas, Map.of()).values()) {
            boolean nearer = nearest == null
                    || Math.abs(each.medium().strength() - strength)
                            < Math.abs(nearest.medium().strength() - strength);
            nearest = nearer ? each : nearest;
        }
        return nearest;
    }

    /** Returns what a constituent smells of, in a word or two, or an empty text. */
    public static String smell(String cas) {
        return SMELLS.getOrDefault(cas, "");
    }

    /** Returns the CAS numbers of which a threshold is known. */
    public static List<String> known() {
        return List.copyOf(ALL.keySet());
    }

    /** Returns whether it was found in something else than a liquid of a strength, so that there it can lie far away. */
    public boolean isOfAnotherMedium(double strength) {
        return medium == Medium.WATER ? strength > STILL_WATER : Math.abs(medium.strength() - strength) > STILL_ALIKE;
    }

    /** Returns the geometric middle, µg/L. */
    public double middle() {
        return Math.sqrt(low * high);
    }

    static Map<String, Map<Medium, OdourThreshold>> read(Table table) {
        Map<String, Map<Medium, OdourThreshold>> all = new TreeMap<>();
        for (Table.Row row : table.rows()) {
            Medium medium = Medium.valueOf(row.text("medium").toUpperCase(Locale.ROOT));
            OdourThreshold one = new OdourThreshold(
                    medium,
                    row.number("low_ug_per_l"),
                    row.number("high_ug_per_l"),
                    row.standing("status"),
                    List.of(row.text("source")));
            all.computeIfAbsent(key(row), key -> new TreeMap<>()).merge(medium, one, OdourThreshold::with);
        }
        return all;
    }

    private static String key(Table.Row row) {
        String key = row.text("key");
        if (Constituents.find(key) == null) {
            throw row.fault("key", "is no constituent of the table: " + key);
        }
        return key;
    }

    private OdourThreshold with(OdourThreshold other) {
        List<String> both = new ArrayList<>(sources);
        other.sources.stream().filter(each -> !both.contains(each)).forEach(both::add);
        Standing weaker = standing.compareTo(other.standing) > 0 ? standing : other.standing;
        return new OdourThreshold(medium, Math.min(low, other.low), Math.max(high, other.high), weaker, both);
    }

    private static Map<String, String> smells(Table table) {
        Map<String, String> smells = new TreeMap<>();
        table.rows().forEach(row -> smells.put(key(row), row.text("smells_of")));
        return smells;
    }
}
