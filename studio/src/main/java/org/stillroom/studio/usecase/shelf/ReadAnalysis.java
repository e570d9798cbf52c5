package org.stillroom.studio.usecase.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.Assay;
import org.stillroom.core.safety.FarAnalysis;
import org.stillroom.studio.shelffile.LineProblem;
import org.stillroom.studio.shelffile.OilAnalysis;

/** Reads the analysis of a lot that somebody gives to be reckoned with: all of it, or every problem with its line. */
public final class ReadAnalysis {
    private ReadAnalysis() {}

    /**
     * What was made of it.
     *
     * @param parts of the oil by CAS number or by the name of a sum, 0 to 1, from the least to the most; null when something is wrong with it
     * @param whole what it says of a whole that is no oil
     * @param confirmed whether it says that it is meant, however far it lies from the tables
     * @param problems everything that is wrong
     */
    public record Outcome(
            @Nullable List<Map<String, Double>> parts, Assay whole, boolean confirmed, List<Finding> problems) {
        public Outcome {
            problems = List.copyOf(problems);
        }
    }

    /** On a shelf what no table knows is kept with the rest; here it is refused, so that a slip does not pass for a constituent. */
    private static Finding refusing(LineProblem problem) {
        Finding finding = problem.finding();
        return finding.rule().equals(OilAnalysis.NOT_KNOWN)
                        && !finding.verdict().equals(OilAnalysis.OF_WHOLE_ALONE)
                ? Finding.of(
                        finding.rule(),
                        finding.severity(),
                        finding.where(),
                        finding.verdict(),
                        finding.message(),
                        "Write its CAS number or another of its names; or take the line out: nothing is reckoned with it.")
                : finding;
    }

    /**
     * Returns what a text says.
     *
     * @param oil what it is an analysis of
     */
    public static Outcome answer(String oil, String text) {
        OilAnalysis read = OilAnalysis.read(text);
        List<Finding> problems = new ArrayList<>(
                read.problems().stream().map(ReadAnalysis::refusing).toList());
        if (problems.isEmpty() && read.whole().parts().isEmpty() && !(read.percent() > 0.0)) {
            problems.add(Finding.of(
                    "analysis-empty",
                    Severity.STOP,
                    "",
                    "missing",
                    "The analysis says of nothing how much there is.",
                    "Write lines such as linalool,31.5 of an oil, or thujone,8 mg/L of anything else."));
        }
        if (problems.isEmpty()) {
            problems.addAll(fractions(oil, read));
        }
        return new Outcome(problems.isEmpty() ? read.ends() : null, read.whole(), read.confirmed(), problems);
    }

    /** Returns why an analysis is plainly not in per cent, as a whole and line by line; nothing where it is, or says that it is meant. */
    static List<Finding> fractions(String oil, OilAnalysis read) {
        Finding whole = read.confirmed() ? null : FarAnalysis.asFractions(oil, read.ends());
        List<Finding> fractions = new ArrayList<>();
        if (whole != null) {
            fractions.add(whole);
            for (OilAnalysis.Part part : read.parts()) {
                Finding line = part.key() == null
                        ? null
                        : FarAnalysis.fraction(oil, part.line(), part.key(), part.percent() / 100.0);
                if (line != null) {
                    fractions.add(line);
                }
            }
        }
        return fractions;
    }

    /**
     * Returns what is wrong with an analysis of a whole for a kind of ingredient; null where nothing is. Of an oil the tables know per cent,
     * so that an analysis in mg/kg could not be held to them.
     *
     * @param weighed whether it is weighed as a solid, so that no litre of it can be meant
     */
    public static @Nullable Finding unfit(String name, Kind kind, boolean weighed, Assay whole) {
        if (kind == Kind.ESSENTIAL_OIL && !whole.parts().isEmpty()) {
            return unfit(
                    name,
                    "Of an essential oil per cent are wanted, not mg/kg or mg/L.",
                    "Write its parts, such as alpha-thujone,25.");
        }
        return weighed && whole.parts().stream().anyMatch(Assay.Part::isPerLitre)
                ? unfit(name, name + " is weighed, so that mg/L says nothing of it.", "Write mg/kg.")
                : null;
    }

    private static Finding unfit(String name, String message, String remedy) {
        return Finding.of("analysis-share", Severity.STOP, name, "cannot be used", message, remedy);
    }

    /** Returns what to look at in an analysis that is kept on a shelf: what is wrong with its lines, and what lies far from the tables. */
    public static List<LineProblem> look(String oil, OilAnalysis read) {
        List<LineProblem> look = new ArrayList<>(read.problems());
        Finding far = FarAnalysis.asked(oil, read.ends(), read.confirmed());
        if (far != null) {
            look.add(new LineProblem(0, far));
        }
        return look;
    }
}
