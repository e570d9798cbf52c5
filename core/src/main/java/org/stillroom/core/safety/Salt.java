package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/**
 * A salt that is weighed in place of the base that laws count.
 *
 * @param name what we call it
 * @param watched the watched substance that it counts as
 * @param names by which it is found, in the plain form of {@link Words}
 * @param base g of the base in a gram of it: least with the most water of crystallisation, most with the least
 */
record Salt(String name, String watched, List<String> names, Range base) {
    private static final double WATER = 18.015;

    private static final List<Salt> ALL = read(Tables.open("safety/salts.csv"));

    /** Words beside the name of a salt that leave it a salt: grades of purity and pharmacopoeias. */
    private static final List<String> GRADES =
            List.of("bp", "usp", "ph", "eur", "dab", "anhydrous", "wasserfrei", "rein", "pur");

    /** Words by which a salt is dissolved in nobody knows how much. */
    private static final List<String> DISSOLVED = List.of("solution", "liquid");

    Salt {
        names = List.copyOf(names);
    }

    private static List<Salt> read(Table table) {
        List<Salt> salts = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            double base = row.number("units_of_base") * row.number("base");
            double dry = base + row.number("acid");
            salts.add(new Salt(
                    row.text("salt"),
                    row.text("watched"),
                    Words.names(row.text("names")),
                    new Range(
                            base / (dry + WATER * row.number("water_most")),
                            base / (dry + WATER * row.number("water_least")))));
        }
        return salts;
    }

    /** Returns the salt that a name means, or null where it means none or says more than a salt and its grade. */
    static @Nullable Salt find(String name) {
        Words.Named<Salt> named = Words.read(Words.plain(name), ALL, Salt::names);
        for (String word : named.rest().replace("|", " ").strip().split("\\s+", -1)) {
            String single = NameWords.single(word);
            boolean grade = GRADES.contains(word) || NameWords.saysNothing(single);
            if (DISSOLVED.contains(single) || (!word.isEmpty() && !grade)) {
                return null;
            }
        }
        return named.things().stream()
                .max(Comparator.comparingDouble(salt -> salt.base().most()))
                .orElse(null);
    }

    /** Returns how its weight counts. */
    String told() {
        String part = new Range(100.0 * base.least(), 100.0 * base.most()).told();
        return name + " counts as " + watched + " base with " + part + " % of its weight"
                + (base.least() < base.most() ? ", since its water is not said" : "");
    }
}
