package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.aroma.Material;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/**
 * What an analysis says that lies far from everything the tables have of such an oil: typed as fractions, or of another oil.
 *
 * <p>Such an analysis lifts no limit: {@link LotAnalyses} takes the more adverse of the analysis and the tables, and the maker is asked.
 */
public final class FarAnalysis {
    /** Name of the rule that asks. */
    static final String NAME = "analysis-far";

    /** So many times less than the least, or more than the most, of all groups is far. Own judgement. */
    private static final double FAR = 3.0;

    /** Of what no group names, so much of the oil is far, a part of 1: what an oil holds that much of is its character. Own judgement. */
    private static final double UNHEARD_OF = 0.10;

    /** What no table has more of is left to chance, a part of 1. Own judgement. */
    private static final double SMALL = 0.005;

    /** Tables that account for less of an oil do not say what is not in it, %. Own judgement. */
    private static final double A_PICTURE = 50.0;

    /** All of it together up to here may be fractions of 1, %. */
    private static final double WHOLE_AS_FRACTION = 1.0;

    private FarAnalysis() {}

    /**
     * Returns what the tables have of an oil: from the least to the most of all groups that name a constituent, parts of 1; empty where
     * no table knows it.
     */
    static Map<String, Range> tabled(String oil) {
        Map<String, Range> tabled = new LinkedHashMap<>();
        for (Material material : materials(oil)) {
            for (Material.Analysis group : material.analyses()) {
                group.percent()
                        .forEach((key, percent) -> tabled.merge(
                                key, new Range(percent.low() / 100.0, percent.high() / 100.0), FarAnalysis::hull));
            }
        }
        return tabled;
    }

    /** Returns the oil of that name, and those of the plants that it names. */
    private static Set<Material> materials(String oil) {
        Set<Material> materials = new LinkedHashSet<>();
        @Nullable Material named = Materials.find(oil);
        if (named != null) {
            materials.add(named);
        }
        List<String> ids = NamedPlants.of(oil, Knowledge.SHIPPED.plants()).plants().stream()
                .flatMap(plant -> plant.oilMaterials().stream())
                .toList();
        Materials.list().stream()
                .filter(material -> ids.contains(material.id()))
                .forEach(materials::add);
        return materials;
    }

    static Range hull(Range one, Range other) {
        return new Range(Math.min(one.least(), other.least()), Math.max(one.most(), other.most()));
    }

    /** Returns what an analysis of an oil says far from the tables, as it says it; nothing where no table knows the oil. */
    static Map<String, Range> far(String oil, Map<String, Range> parts) {
        Map<String, Range> tabled = tabled(oil);
        boolean pictured = materials(oil).stream().anyMatch(FarAnalysis::isPictured);
        Map<String, Range> far = new LinkedHashMap<>();
        parts.forEach((key, part) -> {
            @Nullable Range usual = tabled.get(key);
            boolean isFar = usual == null
                    ? pictured && part.least() > UNHEARD_OF && !isNamedOtherwise(key, tabled.keySet())
                    : isBelow(part, usual) || isAbove(part, usual);
            if (isFar) {
                far.put(key, part);
            }
        });
        return far;
    }

    private static boolean isPictured(Material material) {
        return material.analyses().stream().anyMatch(group -> group.middles() >= A_PICTURE);
    }

    /** Citral is geranial and neral, whichever of them the tables name. */
    private static boolean isNamedOtherwise(String key, Set<String> tabled) {
        return Constituents.WHOLES.entrySet().stream()
                .anyMatch(whole ->
                        (whole.getKey().equals(key) && whole.getValue().stream().anyMatch(tabled::contains))
                                || (whole.getValue().contains(key) && tabled.contains(whole.getKey())));
    }

    /** What is said to be none or traces is meant so: no slip of units writes it. */
    private static boolean isBelow(Range part, Range usual) {
        return !LotAnalyses.isTrace(part) && usual.least() >= SMALL && part.most() < usual.least() / FAR;
    }

    private static boolean isAbove(Range part, Range usual) {
        return part.least() > usual.most() * FAR && part.least() > usual.most() + SMALL;
    }

    /**
     * Returns why an analysis of an oil cannot be taken as per cent: all that it lists comes to next to nothing, where the tables have
     * far more of the same; null where it can.
     *
     * @param oil name of the oil
     * @param ends what it lists, parts of 1, from the least to the most
     */
    public static @Nullable Finding asFractions(String oil, List<Map<String, Double>> ends) {
        Map<String, Double> most = ends.get(ends.size() - 1);
        Map<String, Range> tabled = tabled(oil);
        double sum = 100.0 * most.values().stream().mapToDouble(each -> each).sum();
        double usual = 100.0
                * most.keySet().stream()
                        .mapToDouble(
                                key -> tabled.getOrDefault(key, Range.NOTHING).least())
                        .sum();
        if (!(sum > 0.0 && sum <= WHOLE_AS_FRACTION * (1.0 + 1e-9) && usual > 10.0 * sum)) {
            return null;
        }
        return fractions(
                oil,
                "All that the analysis lists is " + QuantityWords.figures(sum)
                        + " % of the oil; by the tables the same comes to " + QuantityWords.figures(usual)
                        + " % at least. Are these fractions of 1?",
                "Write per cent, such as 25 for 0.25. If they are per cent, list more of what is in the oil, or add the line"
                        + " “confirmed” to the analysis.");
    }

    /**
     * Returns what a part of an analysis would be if it is a fraction of 1, where the tables of the oil have far more of it as per cent;
     * null where they do not.
     *
     * @param line on which it stands
     * @param key CAS number or name of a sum
     * @param part of the oil, of 1, as it is if it is in per cent
     */
    public static @Nullable Finding fraction(String oil, int line, String key, double part) {
        Range usual = tabled(oil).getOrDefault(key, Range.NOTHING);
        if (!(part > 0.0) || !isBelow(new Range(part, part), usual)) {
            return null;
        }
        return fractions(
                oil,
                "Line " + line + ", " + Materials.nameOf(key) + ": " + QuantityWords.figures(100.0 * part)
                        + " % of the oil, " + told(usual) + " % in the tables.",
                "Write " + QuantityWords.figures(1e4 * part) + " if it is a fraction of 1.");
    }

    private static Finding fractions(String oil, String message, String remedy) {
        return new Finding(
                "analysis-fractions",
                Severity.STOP,
                oil,
                "",
                "not possible",
                message,
                "",
                remedy,
                null,
                Source.OIL_COMPOSITIONS);
    }

    /**
     * Returns what an analysis says far from the tables, as a question or, where the maker confirms it, as a note; null where nothing is.
     *
     * @param ends what it lists, parts of 1, from the least to the most
     */
    public static @Nullable Finding asked(String oil, List<Map<String, Double>> ends, boolean confirmed) {
        LotAnalyses analysis = LotAnalyses.of(Map.of(oil, ends), confirmed ? Set.of(oil) : Set.of());
        Map<String, Range> doubted = analysis.doubted(oil);
        return doubted.isEmpty() ? null : finding(oil, oil, doubted, confirmed ? By.CONFIRMED : By.ANALYSIS);
    }

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        for (Portion portion : drink.portions()) {
            Map<String, Range> doubted = drink.analyses().doubted(portion.name());
            if (portion.form() == Portion.Form.OIL && !doubted.isEmpty()) {
                boolean confirmed = drink.analyses().isConfirmed(portion.name());
                findings.add(finding(portion.where(), portion.name(), doubted, confirmed ? By.CONFIRMED : By.ANALYSIS));
            }
            Map<String, Range> stated = new LinkedHashMap<>();
            portion.stated().forEach((key, part) -> stated.put(key, new Range(part, part)));
            Map<String, Range> far = far(portion.name(), stated);
            if (portion.kind() == Kind.ESSENTIAL_OIL && !far.isEmpty()) {
                findings.add(finding(portion.where(), portion.name(), far, By.RECIPE));
            }
        }
        return findings;
    }

    /** Who says what lies far from the tables. */
    private enum By {
        ANALYSIS(
                "The analysis of the lot",
                "Look whether it is of this oil, and in per cent; if it is meant, add the line “confirmed” to it. Of"
                        + " what it lists and of the tables the more adverse counts, so that it lifts no limit."),
        CONFIRMED(
                "The analysis of the lot",
                "It is confirmed as meant. Of what it lists and of the tables the more adverse counts all the same, so"
                        + " that it lifts no limit."),
        RECIPE(
                "What the recipe states",
                "Look whether it is of this oil, and in per cent. Of what it states and of the tables the more adverse"
                        + " counts, so that it lifts no limit.");

        private final String what;
        private final String remedy;

        By(String what, String remedy) {
            this.what = what;
            this.remedy = remedy;
        }
    }

    private static Finding finding(String where, String oil, Map<String, Range> doubted, By by) {
        Map<String, Range> tabled = tabled(oil);
        boolean confirmed = by == By.CONFIRMED;
        List<String> said = new ArrayList<>();
        doubted.forEach((key, part) -> said.add(Materials.nameOf(key) + " " + told(part) + " % ("
                + (tabled.containsKey(key)
                        ? told(tabled.getOrDefault(key, Range.NOTHING)) + " % in the tables"
                        : "in no table of it")
                + ")"));
        return new Finding(
                NAME,
                confirmed ? Severity.NOTE : Severity.CAUTION,
                where,
                "",
                confirmed ? "confirmed by the maker" : "is this meant?",
                by.what + " lies far from every table of such an oil: " + String.join(", ", said) + ".",
                "far is a third of the least or three times the most of all groups of figures, or a tenth of the oil of what"
                        + " none of them names; own judgement",
                by.remedy,
                null,
                Source.OIL_COMPOSITIONS);
    }

    private static String told(Range part) {
        return part.times(100.0).told();
    }
}
