package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Source;

/** Look-alikes, kernels, medicines, materials and methods: what a name calls for. */
final class NamedCautions {
    private NamedCautions() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        for (PlannedLine line : drink.lines()) {
            Kind kind = line.ingredient().kind();
            findings.addAll(find(line.words() + said(kind), line.name(), drink, row -> applies(row, kind)));
        }
        return findings;
    }

    /** A honey is such by its kind, whatever it is called. */
    private static String said(Kind kind) {
        return kind == Kind.HONEY ? ", " + kind.label() : "";
    }

    /** Names are found among the rows of one rule at a time: bitter orange oil is still bitter orange. */
    private static List<Finding> find(String text, String where, Drink drink, Predicate<Knowledge.NamedCaution> which) {
        Map<String, List<Knowledge.NamedCaution>> families = new LinkedHashMap<>();
        drink.knowledge().cautions().stream()
                .filter(which)
                .forEach(row -> families.computeIfAbsent(row.rule(), any -> new ArrayList<>())
                        .add(row));
        List<Knowledge.NamedCaution> named = families.values().stream()
                .flatMap(rows -> Words.named(text, rows, Knowledge.NamedCaution::names).stream())
                .toList();
        return named.stream()
                .filter(row -> named.stream().noneMatch(other -> other.verdict().equals(row.unless())))
                .map(row -> finding(row, where))
                .toList();
    }

    private static boolean applies(Knowledge.NamedCaution row, Kind kind) {
        boolean plant = kind == Kind.FRESH_PLANT || kind == Kind.DRIED_PLANT;
        boolean place = row.place().equals("ingredients") || (row.place().equals("plants") && plant);
        return place && (row.kinds().isEmpty() || row.kinds().contains(kind.label()));
    }

    private static Finding finding(Knowledge.NamedCaution row, String where) {
        return new Finding(
                row.rule(),
                row.severity(),
                where,
                "",
                row.verdict(),
                row.message(),
                row.status().mayClear() ? "" : "general knowledge, from memory",
                row.remedy(),
                null,
                source(row));
    }

    private static Source source(Knowledge.NamedCaution row) {
        return row.status().mayClear() ? Source.NOT_FOR_DRINKING : Source.HANDLING_CAUTIONS;
    }
}
