package org.stillroom.core.safety;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.quantity.Span;

/**
 * What suppliers' analyses of lots say of the oils in a recipe and of other ingredients as a whole, by the name of the ingredient, and
 * what a laboratory found in the drink itself.
 *
 * <p>An analysis speaks for what it lists and for nothing else: what it leaves out stays within the range of the tables, or not
 * known. Where several bottles can be taken, only what the analyses of all of them list is counted, from the least to the most. Where
 * anything in it lies far from the tables of such an oil ({@link FarAnalysis}), of all that it lists the more adverse of both counts.
 */
public final class LotAnalyses {
    /** No lot was analysed. */
    public static final LotAnalyses NONE = new LotAnalyses(Map.of(), Map.of(), Assay.NONE);

    /** How an amount that rests on an analysis names its basis. */
    static final String BASIS = "the lot's own analysis";

    /** The same on one of the drink. */
    static final String OF_DRINK = "the drink's own analysis";

    /** What is listed as none or as traces counts as up to so much of the oil. From memory: what certificates call traces. */
    private static final double TRACE = 0.001;

    private final Map<String, Oil> oils = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    private final Map<String, List<Assay>> wholes = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
    private final Assay drink;

    private LotAnalyses(Map<String, Oil> oils, Map<String, List<Assay>> wholes, Assay drink) {
        this.oils.putAll(oils);
        wholes.forEach((ingredient, bottles) -> this.wholes.put(ingredient.strip(), List.copyOf(bottles)));
        this.drink = drink;
    }

    /**
     * One oil.
     *
     * @param parts as they count, 0 to 1
     * @param doubted what its analysis says far from the tables, as it says it
     * @param confirmed whether the maker says that this is meant
     */
    private record Oil(Map<String, Range> parts, Map<String, Range> doubted, boolean confirmed) {
        static final Oil NONE = new Oil(Map.of(), Map.of(), false);
    }

    private static Oil oil(String ingredient, Map<String, Range> listed, boolean confirmed) {
        if (listed.isEmpty()) {
            return Oil.NONE;
        }
        Map<String, Range> tabled = FarAnalysis.tabled(ingredient);
        Map<String, Range> doubted = FarAnalysis.far(ingredient, listed);
        if (doubted.isEmpty()) {
            return new Oil(listed, doubted, confirmed);
        }
        Map<String, Range> adverse = new LinkedHashMap<>();
        listed.forEach((key, part) -> adverse.put(key, FarAnalysis.hull(part, tabled.getOrDefault(key, part))));
        return new Oil(adverse, doubted, confirmed);
    }

    /**
     * Takes analyses of lots.
     *
     * @param lots by ingredient, for each bottle that can be taken the parts of the oil that its analysis lists, 0 to 1, by CAS
     *     number or by the name of a sum; an empty map where a bottle has none
     */
    public static LotAnalyses of(Map<String, List<Map<String, Double>>> lots) {
        return of(lots, Set.of());
    }

    /**
     * Takes analyses of lots, as {@link #of(Map)}.
     *
     * @param confirmed ingredients whose analyses the maker says are meant, however far they lie from the tables
     */
    public static LotAnalyses of(Map<String, List<Map<String, Double>>> lots, Set<String> confirmed) {
        Map<String, Oil> oils = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        lots.forEach((ingredient, analyses) ->
                oils.put(ingredient.strip(), oil(ingredient, together(analyses), confirmed.contains(ingredient))));
        return new LotAnalyses(oils, Map.of(), Assay.NONE);
    }

    /** Returns these with analyses of what is no oil, as a whole: by ingredient one for each bottle that can be taken. */
    public LotAnalyses withWholes(Map<String, List<Assay>> bottles) {
        return new LotAnalyses(oils, bottles, drink);
    }

    /** Returns these with what a laboratory found in the drink that is made of them. */
    public LotAnalyses ofDrink(Assay found) {
        return new LotAnalyses(oils, wholes, found);
    }

    private static Map<String, Range> together(List<Map<String, Double>> analyses) {
        Map<String, Range> parts = new LinkedHashMap<>();
        if (!analyses.isEmpty()) {
            for (String key : analyses.get(0).keySet()) {
                if (analyses.stream().allMatch(each -> each.containsKey(key))) {
                    double[] lots = analyses.stream()
                            .mapToDouble(each -> each.getOrDefault(key, 0.0))
                            .sorted()
                            .toArray();
                    double most = Math.max(lots[lots.length - 1], lots[0] == 0.0 ? TRACE : 0.0);
                    parts.put(key, new Range(lots[0], most));
                }
            }
        }
        return parts;
    }

    /** Returns these analyses, those of others in place of ours where both name an ingredient. */
    public LotAnalyses and(LotAnalyses others) {
        LotAnalyses both = new LotAnalyses(oils, wholes, others.drink.parts().isEmpty() ? drink : others.drink);
        both.oils.putAll(others.oils);
        both.wholes.putAll(others.wholes);
        return both;
    }

    /** Returns what a laboratory found in the drink itself. */
    Assay drink() {
        return drink;
    }

    /** Returns the analyses of an ingredient as a whole, one for each bottle that can be taken; empty where there is none. */
    List<Assay> wholes(String ingredient) {
        return wholes.getOrDefault(ingredient.strip(), List.of());
    }

    /**
     * Returns how what a recipe states of something counts, parts of 1: of an essential oil as one analysis of it does, far from the
     * tables the more adverse of both; of anything else as it stands.
     */
    static Map<String, Range> counted(Portion portion) {
        Map<String, Range> parts = together(List.of(portion.stated()));
        return portion.kind() == Kind.ESSENTIAL_OIL
                ? oil(portion.name(), parts, false).parts()
                : parts;
    }

    /** Returns whether the analyses of every lot of an ingredient list a constituent, by its name or CAS number. */
    public boolean lists(String ingredient, String constituent) {
        return part(ingredient, constituent) != null;
    }

    /** Returns the least and most part of an ingredient's oil, 0 to 1, that its lots have by their analyses; empty where none has one. */
    public Map<String, Span> oil(String ingredient) {
        Map<String, Span> spans = new TreeMap<>();
        of(ingredient).parts().forEach((key, range) -> spans.put(key, new Span(range.least(), range.most())));
        return spans;
    }

    /** Returns what part of an oil a constituent is by its analysis, 0 to 1, or null where no analysis lists it. */
    @Nullable
    Range part(String ingredient, String constituent) {
        String key = Materials.keyOf(constituent);
        return key == null ? null : of(ingredient).parts().get(key);
    }

    /** Returns what the analyses of an ingredient's lots say far from the tables, parts of 1; empty where nothing is. */
    Map<String, Range> doubted(String ingredient) {
        return of(ingredient).doubted();
    }

    /** Returns whether the maker says that what the analyses of an ingredient's lots list is meant. */
    boolean isConfirmed(String ingredient) {
        return of(ingredient).confirmed();
    }

    private Oil of(String ingredient) {
        return oils.getOrDefault(ingredient.strip(), Oil.NONE);
    }

    /** Returns whether a part is what an analysis calls none or traces. */
    static boolean isTrace(Range part) {
        return part.least() == 0.0 && part.most() == TRACE;
    }
}
