package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Source;

/** Look-alikes, kernels, medicines, allergens, materials and methods: what a name or the words of a step call for. */
final class NamedCautions {
    private NamedCautions() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        for (PlannedLine line : drink.lines()) {
            List<Knowledge.NamedCaution> rows = drink.knowledge().cautions().stream()
                    .filter(row -> applies(row, line.ingredient().kind()))
                    .toList();
            Words.named(line.name(), rows, Knowledge.NamedCaution::names)
                    .forEach(row -> findings.add(finding(row, line.name())));
        }
        List<Knowledge.NamedCaution> ofSteps = drink.knowledge().cautions().stream()
                .filter(row -> row.place().equals("steps"))
                .toList();
        List<String> steps = drink.plan().recipe().steps();
        for (int i = 0; i < steps.size(); i++) {
            String where = "step " + (i + 1) + " of your own";
            Words.named(steps.get(i), ofSteps, Knowledge.NamedCaution::names)
                    .forEach(row -> findings.add(finding(row, where)));
        }
        return findings;
    }

    private static boolean applies(Knowledge.NamedCaution row, Kind kind) {
        boolean plant = kind == Kind.FRESH_PLANT || kind == Kind.DRIED_PLANT;
        boolean place = row.place().equals("ingredients") || (row.place().equals("plants") && plant);
        return place && (row.kinds().isEmpty() || row.kinds().contains(kind.label()));
    }

    private static Finding finding(Knowledge.NamedCaution row, String where) {
        boolean law = row.rule().startsWith("allergen") || row.rule().equals("sulphites");
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
                law ? Source.EU_1169_LABEL : source(row));
    }

    private static Source source(Knowledge.NamedCaution row) {
        return row.status().mayClear() ? Source.NOT_FOR_DRINKING : Source.HANDLING_CAUTIONS;
    }
}
