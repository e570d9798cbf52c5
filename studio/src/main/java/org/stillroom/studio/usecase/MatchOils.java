package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.aroma.EssentialOil;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.tasting.OdourThreshold;
import org.stillroom.planner.match.Matching;

/** Tells which oils of a shelf come nearest to an essence, and what they cannot bring. */
public final class MatchOils {
    /** A constituent that comes to less than this part of what was wanted is told as missing. Own judgement. */
    private static final double MISSING = 0.5;
    /** Constituents below this part of the whole are not told one by one. Own judgement. */
    private static final double TRACE = 0.02;

    private MatchOils() {}

    /** What counts when profiles are compared. */
    public enum By {
        /** Milligrams. */
        MASS,
        /** Odour activity: milligrams over the threshold; what has no threshold does not count. */
        SMELL
    }

    /**
     * The question.
     *
     * @param wanted grams of each oil of the essence
     * @param shelf oils that there are
     */
    public record Asked(Map<EssentialOil, Double> wanted, List<EssentialOil> shelf, By by) {
        public Asked {
            wanted = Map.copyOf(wanted);
            shelf = List.copyOf(shelf);
        }
    }

    /** So much of an oil, mg. */
    public record Taken(String oil, double milligrams) {}

    /** A constituent, mg wanted and mg that come. */
    public record Compared(String name, double wanted, double comes) {}

    /**
     * The nearest.
     *
     * @param taken oils of the shelf, most first
     * @param compared constituents, most wanted first
     * @param missed how far the profile is off, %
     * @param findings what cannot be matched
     */
    public record Found(List<Taken> taken, List<Compared> compared, Estimate missed, List<Finding> findings) {}

    public static Found answer(Asked asked, Workings workings) {
        Map<String, Double> wanted = new TreeMap<>();
        asked.wanted()
                .forEach((oil, grams) ->
                        oil.shares().forEach((cas, part) -> wanted.merge(cas, 1000.0 * grams * part, Double::sum)));
        List<Matching.OnShelf> shelf = asked.shelf().stream()
                .map(oil -> new Matching.OnShelf(oil.name(), oil.shares()))
                .toList();
        Matching matching = Matching.of(wanted, shelf, weights(asked, wanted));
        double whole = wanted.values().stream().mapToDouble(each -> each).sum();
        workings.step("constituents wanted", whole, "mg", Source.OIL_COMPOSITIONS);
        workings.step(
                "profile that is off", 100.0 * matching.missed(), "% of what was wanted", Source.OIL_COMPOSITIONS);
        List<Taken> taken = new ArrayList<>();
        for (int i = 0; i < shelf.size(); i++) {
            if (matching.amounts().get(i) > 0.0) {
                taken.add(new Taken(shelf.get(i).name(), matching.amounts().get(i)));
            }
        }
        taken.sort((one, other) -> Double.compare(other.milligrams(), one.milligrams()));
        List<Compared> compared = matching.compared().stream()
                .map(each -> new Compared(name(each.cas()), each.wanted(), each.comes()))
                .sorted((one, other) ->
                        Double.compare(Math.max(other.wanted(), other.comes()), Math.max(one.wanted(), one.comes())))
                .toList();
        return new Found(
                List.copyOf(taken), compared, new Estimate(100.0 * matching.missed(), 0.0), findings(asked, compared));
    }

    private static String name(String cas) {
        Constituent constituent = Constituents.find(cas);
        return constituent == null ? cas : constituent.name();
    }

    private static Map<String, Double> weights(Asked asked, Map<String, Double> wanted) {
        Map<String, Double> weights = new TreeMap<>();
        if (asked.by() == By.SMELL) {
            List<String> all = new ArrayList<>(wanted.keySet());
            asked.shelf().forEach(oil -> all.addAll(oil.shares().keySet()));
            for (String cas : all) {
                OdourThreshold threshold = OdourThreshold.of(cas, OdourThreshold.Medium.SPIRIT.strength());
                weights.put(cas, threshold == null ? 0.0 : 1.0 / threshold.middle());
            }
        }
        return weights;
    }

    private static List<Finding> findings(Asked asked, List<Compared> compared) {
        double whole = compared.stream().mapToDouble(Compared::wanted).sum();
        List<String> missing = compared.stream()
                .filter(each -> each.wanted() > TRACE * whole && each.comes() < MISSING * each.wanted())
                .map(Compared::name)
                .toList();
        List<String> extra = compared.stream()
                .filter(each -> each.comes() > TRACE * whole && each.wanted() < MISSING * each.comes())
                .map(Compared::name)
                .toList();
        List<Finding> findings = new ArrayList<>();
        if (!missing.isEmpty()) {
            findings.add(told(
                    "cannot-be-matched", "The shelf does not bring enough of " + String.join(", ", missing) + "."));
        }
        if (!extra.isEmpty()) {
            findings.add(
                    told("comes-besides", "What comes besides and was not wanted: " + String.join(", ", extra) + "."));
        }
        findings.add(new Finding(
                "match-typical",
                Severity.CAUTION,
                "",
                "",
                "a place to start from",
                "Compositions are typical or mid-range, and limits of safety are not looked at here.",
                "Lots of one oil differ by half and more in their lesser constituents.",
                "Smell it against the original at drinking strength, and ask for the safety of the recipe that it goes into.",
                null,
                Source.OIL_COMPOSITIONS));
        if (asked.by() == By.SMELL) {
            findings.add(told("without-threshold", "Constituents without a known threshold were not counted."));
        }
        return List.copyOf(findings);
    }

    private static Finding told(String rule, String message) {
        return Finding.of(rule, Severity.NOTE, "", "", message, "");
    }
}
