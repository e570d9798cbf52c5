package org.stillroom.core.safety;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Table;

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
            return after == null
                    || !same(before, after, "part", "food_category", "substance")
                    || limit(after, "max_mg_per_kg") > limit(before, "max_mg_per_kg");
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
            return after == null
                    || !same(before, after, "watched", "compares", "genotoxic", "unit")
                    || limit(after, "value") > limit(before, "value");
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

        @Override
        boolean loosens(Table.Row before, Table.@Nullable Row after) {
            return false;
        }
    };

    private final String label;
    private final String folder;
    private final String key;

    /** @param key columns by which a row is known, with semicolons between */
    RuleTable(String label, String folder, String key) {
        this.label = label;
        this.folder = folder;
        this.key = key;
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
    abstract boolean loosens(Table.Row before, Table.@Nullable Row after);

    /** Returns whether less is stopped by a row of names than before. */
    boolean stopsLess(Table.Row before, Table.@Nullable Row after) {
        return after == null || !holdsNames(before, after) || (isStop(before) && !isStop(after));
    }

    /** Returns whether a row stops recipes for good. */
    boolean isStop(Table.Row row) {
        return false;
    }

    /** Returns what a row is about; no two rows of a table are about the same. */
    String about(Table.Row row) {
        return String.join(", ", Words.list(key).stream().map(row::textOrEmpty).toList());
    }

    private static void numberOrEmpty(Table.Row row, String column) {
        if (!row.textOrEmpty(column).isEmpty()) {
            row.number(column);
        }
    }

    /** A word that no rule knows would stand there and never speak. */
    private static void known(Table.Row row, Table shipped, String column, String otherwise) {
        String word = row.textOrEmpty(column);
        if (shipped.rows().stream().noneMatch(each -> each.textOrEmpty(column).equals(word))) {
            throw row.fault(column, "\"" + word + "\" " + otherwise);
        }
    }

    private static boolean same(Table.Row before, Table.Row after, String... columns) {
        return Arrays.stream(columns)
                .allMatch(column -> before.textOrEmpty(column).equals(after.textOrEmpty(column)));
    }

    /** Returns a limit; where there is none, everything is allowed. */
    private static double limit(Table.Row row, String column) {
        return row.textOrEmpty(column).isEmpty() ? Double.POSITIVE_INFINITY : row.number(column);
    }

    private static boolean holdsNames(Table.Row before, Table.Row after) {
        Set<String> now = new HashSet<>(Words.names(after.text("names")));
        return now.containsAll(Words.names(before.text("names")));
    }
}
