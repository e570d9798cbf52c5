package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.safety.LotAnalyses;
import org.stillroom.studio.usecase.shelf.ReadAnalysis;
import picocli.CommandLine.Option;

/** Analyses of lots as an option of the commands that compute with what is in an oil. */
final class AnalysisFiles {
    private static final String OPTION = "--analysis";

    @Option(
            names = OPTION,
            paramLabel = "INGREDIENT=FILE",
            description = "the analysis of a lot, as lines of constituent,percent; in place of the usual range")
    private Map<String, Path> files = new LinkedHashMap<>();

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
            }
            if (analysis.confirmed()) {
                confirmed.add(ingredient.strip());
            }
        });
        if (!problems.isEmpty()) {
            throw new Refusal(Exit.WRONG_INPUT, problems);
        }
        return LotAnalyses.of(read, confirmed);
    }

    /** A line is one of the file of its oil. */
    private static String place(String oil, String where) {
        return where.isEmpty() || where.equals(oil) ? OPTION + " " + oil : OPTION + " " + oil + ", " + where;
    }

    /**
     * Refuses an analysis of what is no oil of a plan or of its stages, so that a slip in a name does not leave a range standing
     * in silence.
     */
    void requireOilsOf(Plan plan) {
        Set<String> oils = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        collect(plan, oils);
        for (String ingredient : files.keySet()) {
            if (!oils.contains(ingredient.strip())) {
                throw Refusal.wrongInput(
                        OPTION,
                        "\"" + ingredient.strip() + "\" is no oil of this recipe.",
                        oils.isEmpty()
                                ? "It has none whose amount is known."
                                : "Its oils are: " + String.join(", ", oils) + ".");
            }
        }
    }

    private static void collect(Plan plan, Set<String> oils) {
        plan.lines().stream()
                .filter(line -> line.ingredient().perGram().grams(Substance.OIL) > 0.0)
                .forEach(line -> oils.add(line.name()));
        plan.stages().forEach(stage -> collect(stage.plan(), oils));
    }
}
