package org.stillroom.studio.usecase.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.safety.Assay;
import org.stillroom.core.safety.Grounds;
import org.stillroom.core.safety.HouseRule;
import org.stillroom.core.safety.HouseRules;
import org.stillroom.core.safety.LotAnalyses;
import org.stillroom.studio.shelffile.OilAnalysis;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.rules.RulesInForce;

/** What drinks are judged on in a studio: the tables in force, the analyses of its lots, the rules of the house, and who drinks how much under whose law. */
public final class MakersGrounds {
    private MakersGrounds() {}

    /** Returns what drinks of this studio are judged on now. */
    public static Grounds of(Store store) {
        return of(store, store.lots().all());
    }

    /** Returns the same where these lots are what there is. */
    public static Grounds of(Store store, List<Lot> lots) {
        RulesInForce rules = RulesInForce.of(store.rules());
        String house = store.rules().house().text();
        List<HouseRule> notRead = rules.problems().stream()
                .map(problem -> (HouseRule) new HouseRule.NotUnderstood(problem))
                .toList();
        return Grounds.of(rules.knowledge())
                .with(analyses(lots))
                .with(HouseRules.read(house, rules.knowledge()).kept().and(new HouseRules(notRead)))
                .with(MakersServing.of(store.settings()));
    }

    /** Returns what drinks are judged on where these lots are what there is. */
    public static Grounds of(List<Lot> lots) {
        return Grounds.SHIPPED.with(analyses(lots));
    }

    /** Returns what the analyses of the lots say; one without analysis lets the range stand for all of its name. */
    static LotAnalyses analyses(List<Lot> lots) {
        Analyses analyses = new Analyses();
        for (Lot lot : lots) {
            boolean empty = Stock.isKnown(lot) && lot.left() <= 0;
            if (!lot.sheet().setAside() && !empty) {
                analyses.add(lot.sheet().name().strip(), lot);
            }
        }
        return analyses.together();
    }

    /** Gathers what the analyses of lots say, by the name under which they go in. */
    static final class Analyses {
        private final Map<String, List<Map<String, Double>>> byName = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
        private final Set<String> confirmed = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        private final Set<String> open = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
        private final Map<String, List<Assay>> wholes = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);

        void add(String name, Lot lot) {
            add(name, ends(lot), whole(lot), read(lot).confirmed());
        }

        /** Adds a bottle of which nobody knows which it was. */
        void addUnknown(String name) {
            add(name, List.of(Map.of()), Assay.NONE, false);
        }

        private void add(String name, List<Map<String, Double>> ends, Assay whole, boolean meant) {
            byName.computeIfAbsent(name, some -> new ArrayList<>()).addAll(ends);
            wholes.computeIfAbsent(name, some -> new ArrayList<>()).add(whole);
            (meant ? confirmed : open).add(name);
        }

        LotAnalyses together() {
            confirmed.removeAll(open);
            return LotAnalyses.of(byName, confirmed).withWholes(wholes);
        }
    }

    /** Returns what the analysis of a lot says of it as a whole; nothing where it has none, or one that does not hold together. */
    private static Assay whole(Lot lot) {
        OilAnalysis read = read(lot);
        String name = lot.sheet().name();
        Kind kind = ShelfLots.kind(lot.sheet().kind());
        return isWhole(read) && ReadAnalysis.unfit(name, kind, false, read.whole()) == null ? read.whole() : Assay.NONE;
    }

    /**
     * Returns the parts of its oil that the analysis of a lot lists, 0 to 1, by CAS number or by the name of a sum; none where it has
     * no analysis, or one that does not hold together.
     */
    public static Map<String, Double> oil(Lot lot) {
        OilAnalysis read = read(lot);
        return isWhole(read) ? read.shares() : Map.of();
    }

    /** Returns what the analysis of a lot only bounds, such as &lt; 0.5 %: parts of its oil, 0 to 1, from the least to the most. */
    public static Map<String, Span> bounded(Lot lot) {
        List<Map<String, Double>> ends = ends(lot);
        Map<String, Span> bounded = new TreeMap<>();
        if (ends.size() > 1) {
            ends.get(0).forEach((key, least) -> {
                double most = ends.get(1).getOrDefault(key, least);
                if (most > least) {
                    bounded.put(key, new Span(least, most));
                }
            });
        }
        return bounded;
    }

    /** Returns the same from the least to the most, where the analysis only bounds some of it. */
    private static List<Map<String, Double>> ends(Lot lot) {
        OilAnalysis read = read(lot);
        return isWhole(read) ? read.ends() : List.of(Map.of());
    }

    private static OilAnalysis read(Lot lot) {
        String analysis = lot.sheet().analysis();
        return OilAnalysis.read(analysis == null ? "" : analysis);
    }

    /** An analysis whose numbers do not hold together speaks for nothing; one that names what we do not know does. */
    private static boolean isWhole(OilAnalysis read) {
        return read.problems().stream()
                .allMatch(problem -> problem.finding().rule().equals(OilAnalysis.NOT_KNOWN));
    }
}
