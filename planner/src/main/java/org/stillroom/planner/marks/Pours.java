package org.stillroom.planner.marks;

import java.util.List;
import java.util.StringJoiner;

/** Fillings in words. */
final class Pours {
    private Pours() {}

    /** Returns "2 × 45 mL + 22.5 mL"; whole kitchen measures are counted: "1 1/2 cups", "2 tsp". */
    static String inWords(List<Reading.Filling> fillings) {
        if (isWholeAndPart(fillings)) {
            String part = fillings.get(1).size();
            int gap = part.indexOf(' ');
            return fillings.get(0).times() + " " + part.substring(0, gap) + " " + plural(part.substring(gap + 1));
        }
        StringJoiner words = new StringJoiner(" + ");
        for (Reading.Filling filling : fillings) {
            words.add(one(filling));
        }
        return words.toString();
    }

    /** Returns the kitchen unit of which a size is just one, such as "cup" of "1 cup", or nothing. */
    static String wholeUnit(String size) {
        return size.startsWith("1 ") && isKitchen(size.substring(2)) ? size.substring(2) : "";
    }

    private static boolean isKitchen(String unit) {
        return unit.equals("cup") || unit.equals("tbsp") || unit.equals("tsp");
    }

    private static boolean isWholeAndPart(List<Reading.Filling> fillings) {
        if (fillings.size() != 2 || fillings.get(1).times() != 1) {
            return false;
        }
        String unit = wholeUnit(fillings.get(0).size());
        String part = fillings.get(1).size();
        return !unit.isEmpty()
                && part.indexOf('/') == 1
                && part.endsWith(" " + unit)
                && part.length() == 4 + unit.length();
    }

    private static String one(Reading.Filling filling) {
        String unit = wholeUnit(filling.size());
        if (!unit.isEmpty()) {
            return filling.times() + " " + (filling.times() > 1 ? plural(unit) : unit);
        }
        return filling.times() == 1 ? filling.size() : filling.times() + " × " + filling.size();
    }

    private static String plural(String unit) {
        return unit.equals("cup") ? "cups" : unit;
    }
}
