package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.safety.Assay;
import org.stillroom.core.safety.LotAnalyses;
import org.stillroom.studio.usecase.shelf.ReadAnalysis;
import picocli.CommandLine.Option;

/** Analyses of lots as an option of the commands that compute with what is in an oil. */
final class AnalysisFiles {
    private static final String OPTION = "--analysis";

    @Option(
            names = OPTION,
            paramLabel = "INGREDIENT=FILE",
            description =
                    "the analysis of a lot: lines of constituent,percent of an oil, or of substance,mg/kg or mg/L of"
                            + " anything else; in place of the usual range")
    private Map<String, Path> files = new LinkedHashMap<>();

    /** What the files say of wholes, by ingredient. */
    private final Map<String, Assay> wholes = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);

    /**
     * Returns what they say.
     *
     * @throws Refusal when a file is not there or not understood
     */
    LotAnalyses read() {
        Map<String, List<Map<String, Double>>> read = new LinkedHashMap<>();
        Set<String> confirmed = new HashSet<>();
        List<Finding> problems = new ArrayList<>();
        files.forEach((ingredient, path) -> {
            ReadAnalysis.Outcome analysis = ReadAnalysis.answer(ingredient.strip(), InFile.text(OPTION, path));
            List<Map<String, Double>> parts = analysis.parts();
            if (parts == null) {
                analysis.problems().forEach(each -> problems.add(each.at(place(ingredient.strip(), each.where()))));
            } else {
                read.put(ingredient.strip(), parts);
                wholes.put(ingredient.strip(), analysis.whole());
            }
            if (analysis.confirmed()) {
                confirmed.add(ingredient.strip());
            }
        });
        if (!problems.isEmpty()) {
            throw new Refusal(Exit.WRONG_INPUT, problems);
        }
        Map<String, List<Assay>> bottles = new LinkedHashMap<>();
        wholes.forEach((ingredient, whole) -> bottles.put(ingredient, List.of(whole)));
        return LotAnalyses.of(read, confirmed).withWholes(bottles);
    }

    /** A line is one of the file of its oil. */
    private static String place(String oil, String where) {
        return where.isEmpty() || where.equals(oil) ? OPTION + " " + oil : OPTION + " " + oil + ", " + where;
    }

    /**
     * Refuses an analysis of what is in no line of a plan or of its stages, or in a unit that says nothing of it, so that a slip does
     * not leave a range standing in silence.
     */
    void requireLinesOf(Plan plan) {
        Map<String, Resolved> lines = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        collect(plan, lines);
        for (String file : files.keySet()) {
            String name = file.strip();
            Resolved line = lines.get(name);
            if (line == null) {
                throw Refusal.wrongInput(
                        OPTION,
                        "\"" + name + "\" stands in no line of this recipe.",
                        "Its lines are: " + String.join(", ", lines.keySet()) + ".");
            }
            Assay whole = wholes.getOrDefault(name, Assay.NONE);
            if (whole.parts().isEmpty() && !(line.perGram().grams(Substance.OIL) > 0.0)) {
                throw Refusal.wrongInput(
                        OPTION,
                        "\"" + name + "\" is no oil whose amount is known, so that per cent say nothing of it.",
                        "Write how much was found in the whole, such as thujone,8 mg/kg.");
            }
            Finding unfit = ReadAnalysis.unfit(
                    name, line.kind(), line.gramsPerMillilitre().isEmpty(), whole);
            if (unfit != null) {
                throw Refusal.wrongInput(OPTION + " " + name, unfit.message(), unfit.remedy());
            }
        }
    }

    private static void collect(Plan plan, Map<String, Resolved> lines) {
        plan.lines().forEach(line -> lines.put(line.name(), line.ingredient()));
        plan.stages().forEach(stage -> collect(stage.plan(), lines));
    }
}
