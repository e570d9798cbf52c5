package org.stillroom.core.safety;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.PlainLetters;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/** The tables of rules of which a signed-off file can bring another edition. */
public enum RuleTable {
    EU_MAXIMA("eu_1334_2008_annex3", "safety/", "id") {
        @Override
        void check(Table.Row row, Table shipped) {
            KnowledgeTables.maximum(row);
            numberOrEmpty(row, "max_mg_per_kg");
            known(row, shipped, "food_category", "would never be applied");
            known(row, shipped, "substance", "is watched for by no rule");
        }

        @Override
        boolean loosens(Table.Row before, Table.@Nullable Row after) {
            return raises(before, after, "max_mg_per_kg", "part", "food_category", "substance");
        }
    },
    EU_PLANTS("eu_1334_2008_annex4", "safety/", "latin_name") {
        @Override
        void check(Table.Row row, Table shipped) {
            KnowledgeTables.restricted(row);
        }

        @Override
        boolean loosens(Table.Row before, Table.@Nullable Row after) {
            return after == null || !same(before, after, "part", "common_name", "condition");
        }

        @Override
        boolean isStop(Table.Row row) {
            return row.text("part").equals("A");
        }
    },
    INTAKE("intake_limits", "safety/", "substance;kind;year;issuing_body_or_paper;unit") {
        @Override
        void check(Table.Row row, Table shipped) {
            KnowledgeTables.guidance(row);
            known(row, shipped, "compares", "is no way to compare");
            known(row, shipped, "watched", "is no watched substance");
            if (!row.text("compares").equals("no")) {
                row.number("value");
            }
        }

        @Override
        boolean loosens(Table.Row before, Table.@Nullable Row after) {
            return raises(before, after, "value", "watched", "compares", "genotoxic", "unit");
        }
    },
    NOT_FOR_DRINKING("not_for_ingestion", "safety/", "material") {
        @Override
        void check(Table.Row row, Table shipped) {
            KnowledgeTables.blocked(row);
            known(row, shipped, "stops", "is neither yes nor no");
        }

        @Override
        boolean loosens(Table.Row before, Table.@Nullable Row after) {
            return stopsLess(before, after);
        }

        @Override
        boolean isStop(Table.Row row) {
            return row.text("stops").equals("yes");
        }
    },
    POISONOUS("toxic_plants", "safety/", "plant") {
        @Override
        void check(Table.Row row, Table shipped) {
            KnowledgeTables.poison(row);
            known(row, shipped, "action", "is no action");
        }

        @Override
        boolean loosens(Table.Row before, Table.@Nullable Row after) {
            return stopsLess(before, after);
        }

        @Override
        boolean isStop(Table.Row row) {
            return row.text("action").equals("stop");
        }
    },
    DUTY("duty", "label/", "country;above_pct_vol") {
        @Override
        void check(Table.Row row, Table shipped) {
            row.text("country");
            row.text("currency");
            row.text("as_of");
            RowStatus.of(row);
            if (!(row.number("above_pct_vol") < row.number("up_to_pct_vol"))) {
                throw row.fault("up_to_pct_vol", "does not lie above above_pct_vol");
            }
            if (!(row.number("per_litre_of_pure_alcohol") >= 0.0)) {
                throw row.fault("per_litre_of_pure_alcohol", "lies below zero");
            }
        }
    },
    US_OILS("us_21cfr182_20", "safety/", "common_name", true) {
        @Override
        void check(Table.Row row, Table shipped) {
            KnowledgeTables.spice(row);
        }
    },
    US_SPICES("us_21cfr182_10", "safety/", "common_name", true) {
        @Override
        void check(Table.Row row, Table shipped) {
            KnowledgeTables.spice(row);
        }
    },
    US_OTHERS("us_21cfr182_other", "safety/", "name", true) {
        @Override
        void check(Table.Row row, Table shipped) {
            KnowledgeTables.other(row);
            knownFlags(row, shipped);
        }
    },
    US_FLAVOURINGS("us_21cfr172_510", "safety/", "common_name", true) {
        @Override
        void check(Table.Row row, Table shipped) {
            KnowledgeTables.flavouring(row);
            knownFlags(row, shipped);
        }
    },
    US_LIMITS("us_limits", "safety/", "watched;drinks") {
        @Override
        void check(Table.Row row, Table shipped) {
            KnowledgeTables.usLimit(row);
            known(row, shipped, "watched", "is watched for by no rule");
            known(row, shipped, "drinks", "is no kind of drink");
            known(row, shipped, "edge", "is neither \"below\" nor \"up to\"");
        }

        @Override
        void checkWhole(Table table, Table shipped) {
            noneMissing(table, shipped);
        }

        @Override
        boolean loosens(Table.Row before, Table.@Nullable Row after) {
            return raises(before, after, "max_mg_per_kg", "edge");
        }
    },
    ADDED_LIMITS("added_limits", "safety/", "place;substance") {
        @Override
        void check(Table.Row row, Table shipped) {
            known(row, shipped, "place", "is no place whose law is asked");
            known(row, shipped, "sweetens", "is neither yes nor no");
            KnowledgeTables.addedLimit(row);
        }

        @Override
        void checkWhole(Table table, Table shipped) {
            noneMissing(table, shipped);
        }

        @Override
        boolean loosens(Table.Row before, Table.@Nullable Row after) {
            return raises(before, after, "max_mg_per_kg", "names", "sweetens");
        }
    },
    US_PROHIBITED("us_prohibited", "safety/", "clause") {
        @Override
        void check(Table.Row row, Table shipped) {
            for (String name : KnowledgeTables.prohibited(row).names()) {
                if (!isNamed("plants", "plant", name) && !isNamed("substances", "name", name)) {
                    throw row.fault("names", "\"" + name + "\" is neither a plant nor a substance that is watched for");
                }
            }
        }

        @Override
        boolean loosens(Table.Row before, Table.@Nullable Row after) {
            return after == null || !holdsNames(before, after) || !same(before, after, "parts_left_out");
        }

        @Override
        boolean isStop(Table.Row row) {
            return true;
        }
    },
    EU_CATEGORIES("eu_spirit_categories", "label/", "name") {
        @Override
        void check(Table.Row row, Table shipped) {
            row.text("clause");
            RowStatus.of(row);
            upwards(row, "min_abv_pct_vol", "max_abv_pct_vol");
            upwards(row, "sugar_min_g_per_L_invert", "sugar_max_g_per_L_invert");
            known(row, shipped, "open_end", "is neither min nor max");
        }

        @Override
        boolean loosens(Table.Row before, Table.@Nullable Row after) {
            return after != null
                    && (widens(before, after, "min_abv_pct_vol", "max_abv_pct_vol")
                            || widens(before, after, "sugar_min_g_per_L_invert", "sugar_max_g_per_L_invert")
                            || !same(before, after, "asks_besides"));
        }

        @Override
        String key(Table.Row row) {
            return PlainLetters.of(about(row));
        }
    },
    EU_CONTENTS("eu_category_contents", "label/", "name;what") {
        @Override
        void check(Table.Row row, Table shipped) {
            RowStatus.of(row);
            upwards(row, "min_g_per_L", "max_g_per_L");
            known(row, shipped, "what", "is looked for by no rule");
            boolean named = Tables.open(EU_CATEGORIES.path()).rows().stream()
                    .anyMatch(each -> EU_CATEGORIES.key(each).equals(PlainLetters.of(row.text("name"))));
            if (!named) {
                throw row.fault("name", "\"" + row.text("name") + "\" is no category");
            }
        }

        @Override
        boolean loosens(Table.Row before, Table.@Nullable Row after) {
            return after == null || widens(before, after, "min_g_per_L", "max_g_per_L");
        }

        @Override
        String key(Table.Row row) {
            return PlainLetters.of(about(row));
        }
    },
    EU_TOLERANCES("eu_abv_tolerance", "label/", "beverage") {
        @Override
        void check(Table.Row row, Table shipped) {
            RowStatus.of(row);
            known(row, shipped, "beverage", "is looked for by no rule");
            if (!(row.number("tolerance_pct_vol") >= 0.0)) {
                throw row.fault("tolerance_pct_vol", "lies below zero");
            }
        }

        @Override
        void checkWhole(Table table, Table shipped) {
            noneMissing(table, shipped);
        }

        @Override
        boolean loosens(Table.Row before, Table.@Nullable Row after) {
            return after == null || limit(after, "tolerance_pct_vol") > limit(before, "tolerance_pct_vol");
        }
    },
    BOTTLE_SIZES("bottle_sizes", "label/", "market;mL;rule", true) {
        @Override
        void check(Table.Row row, Table shipped) {
            RowStatus.of(row);
            known(row, shipped, "market", "is no market");
            if (!(row.number("mL") > 0.0)) {
                throw row.fault("mL", "does not lie above zero");
            }
        }

        @Override
        boolean loosens(Table.Row before, Table.@Nullable Row after) {
            return after != null && !same(before, after, "rule");
        }
    },
    US_CLASSES("us_spirit_classes", "label/", "name") {
        @Override
        void check(Table.Row row, Table shipped) {
            row.text("clause");
            RowStatus.of(row);
            upwards(row, "min_abv_pct_vol", "max_abv_pct_vol");
            upwards(row, "sugar_min_pct_weight", "sugar_max_pct_weight");
            known(row, shipped, "open_end", "is neither min nor max");
        }

        @Override
        boolean loosens(Table.Row before, Table.@Nullable Row after) {
            return after != null
                    && (widens(before, after, "min_abv_pct_vol", "max_abv_pct_vol")
                            || widens(before, after, "sugar_min_pct_weight", "sugar_max_pct_weight")
                            || !same(before, after, "asks_besides"));
        }

        @Override
        String key(Table.Row row) {
            return PlainLetters.of(about(row));
        }
    };

    /** Tables by the rules that read them. */
    private static final Map<String, Set<RuleTable>> BY_RULE = Map.of(
            "eu-maximum", Set.of(EU_MAXIMA),
            "eu-restricted-plant", Set.of(EU_PLANTS),
            "intake", Set.of(INTAKE),
            "not-for-drinking", Set.of(NOT_FOR_DRINKING),
            "plant", Set.of(POISONOUS),
            "us-limit", Set.of(US_LIMITS),
            "added-limit", Set.of(ADDED_LIMITS),
            "us-prohibited", Set.of(US_PROHIBITED),
            "us-listed", Set.of(US_OILS, US_SPICES, US_FLAVOURINGS, US_OTHERS));

    private final String label;
    private final String folder;
    private final String key;
    private final boolean allows;

    /** @param key columns by which a row is known, with semicolons between */
    RuleTable(String label, String folder, String key) {
        this(label, folder, key, false);
    }

    /** @param allows whether what has a row is allowed, and what has none is not */
    RuleTable(String label, String folder, String key, boolean allows) {
        this.label = label;
        this.folder = folder;
        this.key = key;
        this.allows = allows;
    }

    /** Returns what files call it. */
    public String label() {
        return label;
    }

    /** Returns its path among the tables. */
    public String path() {
        return folder + label + ".csv";
    }

    /**
     * Throws an exception that names the cell where a row is not one of this table.
     *
     * @param shipped the table of the program, whose words a row may use
     */
    abstract void check(Table.Row row, Table shipped);

    /** Returns whether less is forbidden or warned of than before; the row is gone where after is null. */
    boolean loosens(Table.Row before, Table.@Nullable Row after) {
        return allows && after != null;
    }

    /** Returns whether less is stopped by a row of names than before. */
    boolean stopsLess(Table.Row before, Table.@Nullable Row after) {
        return after == null || !holdsNames(before, after) || (isStop(before) && !isStop(after));
    }

    /** Returns whether a row stops recipes for good. */
    boolean isStop(Table.Row row) {
        return false;
    }

    /**
     * Throws an exception where rows are missing without which nothing can be answered.
     *
     * @param shipped the table of the program
     */
    void checkWhole(Table table, Table shipped) {}

    void noneMissing(Table table, Table shipped) {
        for (Table.Row row : shipped.rows()) {
            if (table.rows().stream().noneMatch(each -> key(each).equals(key(row)))) {
                throw new IllegalStateException("It has no row of " + about(row));
            }
        }
    }

    /** Returns whether a row that is new allows something. */
    boolean loosensWhenAdded() {
        return allows;
    }

    /** Returns what a row is about. */
    String about(Table.Row row) {
        return String.join(", ", Words.list(key).stream().map(row::textOrEmpty).toList());
    }

    /** Returns what tells a row from the others of its table: what it is about, of lawful names in any letters. */
    String key(Table.Row row) {
        return about(row);
    }

    private static void upwards(Table.Row row, String least, String most) {
        numberOrEmpty(row, least);
        numberOrEmpty(row, most);
        if (limitOr(row, least, 0.0) < 0.0 || limitOr(row, most, 0.0) < 0.0) {
            throw row.fault(limitOr(row, least, 0.0) < 0.0 ? least : most, "lies below zero");
        }
        if (limitOr(row, least, 0.0) > limit(row, most)) {
            throw row.fault(most, "lies below " + least);
        }
    }

    private static boolean widens(Table.Row before, Table.Row after, String least, String most) {
        return limitOr(after, least, 0.0) < limitOr(before, least, 0.0) || limit(after, most) > limit(before, most);
    }

    private static void knownFlags(Table.Row row, Table shipped) {
        Set<String> flags = new HashSet<>();
        shipped.rows().forEach(each -> flags.addAll(Words.list(each.textOrEmpty("flags"))));
        for (String flag : Words.list(row.textOrEmpty("flags"))) {
            if (!flags.contains(flag)) {
                throw row.fault("flags", "\"" + flag + "\" is understood by no rule");
            }
        }
    }

    private static void numberOrEmpty(Table.Row row, String column) {
        if (!row.textOrEmpty(column).isEmpty() && !(row.number(column) >= 0.0)) {
            throw row.fault(column, "lies below zero");
        }
    }

    /** A word that no rule knows would stand there and never speak. */
    private static void known(Table.Row row, Table shipped, String column, String otherwise) {
        String word = row.textOrEmpty(column);
        if (shipped.rows().stream().noneMatch(each -> each.textOrEmpty(column).equals(word))) {
            throw row.fault(column, "\"" + word + "\" " + otherwise);
        }
    }

    private static boolean isNamed(String table, String column, String name) {
        return Tables.open("safety/" + table + ".csv").rows().stream()
                .anyMatch(each -> each.text(column).equals(name));
    }

    /** Returns whether a limit is gone, is of something else now, or lies higher. */
    private static boolean raises(Table.Row before, Table.@Nullable Row after, String limit, String... kept) {
        return after == null || !same(before, after, kept) || limit(after, limit) > limit(before, limit);
    }

    private static boolean same(Table.Row before, Table.Row after, String... columns) {
        return Arrays.stream(columns)
                .allMatch(column -> before.textOrEmpty(column).equals(after.textOrEmpty(column)));
    }

    /** Returns a limit; where there is none, everything is allowed. */
    private static double limit(Table.Row row, String column) {
        return limitOr(row, column, Double.POSITIVE_INFINITY);
    }

    /** Returns what the tables are called that a rule reads. */
    static Set<String> readBy(String rule) {
        return BY_RULE.getOrDefault(rule, Set.of()).stream()
                .map(RuleTable::label)
                .collect(Collectors.toUnmodifiableSet());
    }

    private static double limitOr(Table.Row row, String column, double none) {
        return row.textOrEmpty(column).isEmpty() ? none : row.number(column);
    }

    private static boolean holdsNames(Table.Row before, Table.Row after) {
        Set<String> now = new HashSet<>(Words.names(after.text("names")));
        return now.containsAll(Words.names(before.text("names")));
    }
}
