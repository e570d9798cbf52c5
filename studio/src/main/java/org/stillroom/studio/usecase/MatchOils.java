package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.aroma.EssentialOil;
import org.stillroom.core.aroma.EssentialOils;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.plan.Slips;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.core.safety.OilLimits;
import org.stillroom.core.tasting.OdourThreshold;
import org.stillroom.planner.match.Matching;
import org.stillroom.studio.recipefile.Nearest;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.usecase.shelf.Stock;

/** Tells which oils of a shelf come nearest to an essence, and what they cannot bring. */
public final class MatchOils {
    /** A constituent that comes to less than this part of what was wanted is told as missing. Own judgement. */
    private static final double MISSING = 0.5;
    /** Constituents below this part of the whole are not told one by one. Own judgement. */
    private static final double TRACE = 0.02;

    /** A profile that is off by so much, %, is another one. Own judgement. */
    private static final double ANOTHER = 70.0;

    /** Some maxima are not to be reached, so that all are kept by a hair. */
    private static final double BELOW = 1.0 - 1e-6;

    /** So many oils are named to somebody who may have meant one of them. */
    private static final int MOST_NEAR = 8;

    /** Less than this leaves nothing open, %. */
    private static final double NOTHING = 1e-9;

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
     * @param litres of drink that the essence goes into
     * @param strength of that drink
     * @param grounds what the oils are judged on
     */
    public record Asked(
            Map<EssentialOil, Double> wanted,
            List<Bottle> shelf,
            By by,
            double litres,
            AlcoholByVolume strength,
            Grounds grounds) {
        public Asked {
            wanted = Map.copyOf(wanted);
            shelf = List.copyOf(shelf);
        }
    }

    /**
     * An oil that there is.
     *
     * @param name as it is called
     * @param parts of it by CAS number or by the label of a group, 0 to 1; empty where its composition is not known
     * @param bounded those of them of which only a bound is known, from the least to the most; its parts hold their middle
     * @param grams of it that there are; infinite where that is not said
     */
    public record Bottle(String name, Map<String, Double> parts, Map<String, Span> bounded, double grams) {
        public Bottle {
            parts = Map.copyOf(parts);
            bounded = Map.copyOf(bounded);
        }

        private Span span(String cas) {
            return bounded.getOrDefault(cas, Span.exactly(parts.getOrDefault(cas, 0.0)));
        }

        /** Returns an oil of the table, as much of it as is wanted. */
        public static Bottle of(EssentialOil oil) {
            return new Bottle(oil.name(), oil.shares(), Map.of(), Double.POSITIVE_INFINITY);
        }

        /** Returns the essential oils of a shelf; the supplier's analysis of a lot takes the place of the usual composition. */
        public static List<Bottle> of(List<LotOnShelf> shelf) {
            List<Bottle> bottles = new ArrayList<>();
            for (LotOnShelf lot : shelf) {
                if (lot.kind() == Kind.ESSENTIAL_OIL && lot.isAvailable()) {
                    bottles.add(new Bottle(lot.name(), parts(lot), bounded(lot), grams(lot)));
                }
            }
            return bottles;
        }

        private static Map<String, Double> parts(LotOnShelf lot) {
            Map<String, Double> single = new TreeMap<>(MakersGrounds.oil(lot.lot()));
            single.keySet().removeIf(key -> Constituents.find(key) == null); // a sum smells of no one thing
            if (!single.isEmpty()) {
                return single;
            }
            EssentialOil oil = EssentialOils.find(lot.name());
            return oil == null ? Map.of() : oil.shares();
        }

        private static Map<String, Span> bounded(LotOnShelf lot) {
            Map<String, Span> single = new TreeMap<>(MakersGrounds.bounded(lot.lot()));
            single.keySet().removeIf(key -> Constituents.find(key) == null);
            return single;
        }

        private static double grams(LotOnShelf lot) {
            Ingredient ingredient = lot.ingredient();
            Resolved resolved =
                    ingredient == null ? null : Resolution.of(ingredient).resolved();
            if (!Stock.isKnown(lot.lot()) || resolved == null) {
                return Double.POSITIVE_INFINITY;
            }
            boolean byMass = lot.lot().sheet().unit().equals(Stock.GRAMS);
            return lot.lot().left()
                    * (byMass ? 1.0 : resolved.gramsPerMillilitre().orElse(1.0));
        }
    }

    /**
     * What comes of a watched substance, mg/kg of the drink at most, and how much law allows.
     *
     * @param holdsBack whether more of it would have come nearer
     */
    public record Watched(String substance, double comes, OilLimits.Maximum maximum, boolean holdsBack) {
        public double most() {
            return maximum.milligramsPerKilogram();
        }
    }

    /** So much of an oil, mg. */
    public record Taken(String oil, double milligrams) {}

    /** A constituent or group, mg wanted and mg that come. */
    public record Compared(String cas, String name, double wanted, double comes) {}

    /**
     * The nearest.
     *
     * @param taken oils of the shelf, most first
     * @param compared constituents, most wanted first
     * @param missed how far the profile is off, %
     * @param notNear that nothing comes near, where it is so; else null
     * @param watched substances that law sets a maximum for
     * @param findings what cannot be matched
     */
    public record Found(
            List<Taken> taken,
            List<Compared> compared,
            Estimate missed,
            @Nullable Finding notNear,
            List<Watched> watched,
            List<Finding> findings) {
        public Found {
            taken = List.copyOf(taken);
            compared = List.copyOf(compared);
            watched = List.copyOf(watched);
            findings = List.copyOf(findings);
        }
    }

    /** The bottles that may be taken, and what the law leaves room for of each. */
    private record Usable(List<Bottle> bottles, OilLimits limits, List<Finding> leftOut) {}

    public static Found answer(Asked asked, Workings workings) {
        Map<String, Double> wanted = new TreeMap<>();
        asked.wanted()
                .forEach((oil, grams) ->
                        oil.shares().forEach((cas, part) -> wanted.merge(cas, 1000.0 * grams * part, Double::sum)));
        Usable usable = usable(asked);
        List<Matching.OnShelf> shelf = usable.bottles().stream()
                .map(bottle -> new Matching.OnShelf(bottle.name(), bottle.parts()))
                .toList();
        Map<String, Matching.Bound> maxima = maxima(asked, usable);
        List<Matching.Bound> bounds = new ArrayList<>(maxima.values());
        bounds.addAll(bottles(usable));
        Map<String, Double> weights = weights(asked, wanted);
        Matching matching = Matching.of(wanted, shelf, weights, bounds);
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
                .map(each -> new Compared(each.cas(), name(each.cas()), each.wanted(), each.comes()))
                .sorted((one, other) ->
                        Double.compare(Math.max(other.wanted(), other.comes()), Math.max(one.wanted(), one.comes())))
                .toList();
        List<Watched> watched = watched(usable, maxima, matching);
        List<Finding> findings = new ArrayList<>(wantedNotToBeDrunk(asked));
        findings.addAll(usable.leftOut());
        findings.addAll(heldBack(watched));
        for (Taken each : taken) {
            Slips.ofDose(each.oil(), null, each.milligrams() / 1000.0 / asked.litres())
                    .ifPresent(findings::add);
        }
        findings.addAll(findings(asked, usable, compared));
        Span off = missed(matching, usable.bottles(), weights);
        boundsTold(usable.bottles(), matching, off).ifPresent(findings::add);
        double missed = 100.0 * matching.missed();
        return new Found(taken, compared, inDoubt(missed, off), notNear(missed, usable), watched, findings);
    }

    /** Bounds of analyses leave a doubt that can be told; how far a lot lies from the typical composition of its oil is not told. */
    private static Estimate inDoubt(double missed, Span off) {
        double doubt = Math.max(missed - off.low(), off.high() - missed);
        return doubt > NOTHING ? new Estimate(missed, doubt) : Estimate.inDoubtNotTold(missed);
    }

    /** Returns by how many per cent the profile is off at least and at most, wherever within their bounds constituents lie. */
    private static Span missed(Matching matching, List<Bottle> bottles, Map<String, Double> weights) {
        double least = 0.0;
        double most = 0.0;
        double whole = 0.0;
        for (Matching.Compared each : matching.compared()) {
            double low = 0.0;
            double high = 0.0;
            for (int i = 0; i < bottles.size(); i++) {
                Span span = bottles.get(i).span(each.cas());
                low += matching.amounts().get(i) * span.low();
                high += matching.amounts().get(i) * span.high();
            }
            double weight = weights.getOrDefault(each.cas(), 1.0);
            double below = Math.abs(weight * (low - each.wanted()));
            double above = Math.abs(weight * (high - each.wanted()));
            boolean between = low <= each.wanted() && each.wanted() <= high;
            least += between ? 0.0 : Math.pow(Math.min(below, above), 2);
            most += Math.pow(Math.max(below, above), 2);
            whole += Math.pow(weight * each.wanted(), 2);
        }
        return new Span(100.0 * Math.sqrt(least / whole), 100.0 * Math.sqrt(most / whole));
    }

    private static Optional<Finding> boundsTold(List<Bottle> bottles, Matching matching, Span off) {
        List<String> bounded = new ArrayList<>();
        for (int i = 0; i < bottles.size(); i++) {
            Bottle bottle = bottles.get(i);
            if (matching.amounts().get(i) > 0.0 && !bottle.bounded().isEmpty()) {
                bounded.add(bottle.name() + " ("
                        + bottle.bounded().entrySet().stream()
                                .map(each -> name(each.getKey()) + " below "
                                        + QuantityWords.plain(
                                                100.0 * each.getValue().high()) + " %")
                                .sorted()
                                .collect(Collectors.joining(", "))
                        + ")");
            }
        }
        return bounded.isEmpty()
                ? Optional.empty()
                : Optional.of(Finding.of(
                        "only-bounded",
                        Severity.NOTE,
                        "",
                        "only bounded",
                        "Of some constituents the analysis gives a bound alone; the middle between none and that was taken: "
                                + String.join("; ", bounded) + ". Wherever they lie, the profile is off by "
                                + QuantityWords.fixed(off.low(), 0) + " to " + QuantityWords.fixed(off.high(), 0)
                                + " %.",
                        "Ask the supplier for figures where it matters."));
    }

    private static Usable usable(Asked asked) {
        List<Bottle> bottles = new ArrayList<>();
        List<Finding> leftOut = new ArrayList<>();
        OilLimits all = Impossible.unless(
                "strength",
                "Give the strength of the drink that the essence goes into, such as 30 %.",
                () -> OilLimits.of(
                        asked.shelf().stream().map(Bottle::name).toList(), asked.strength(), asked.grounds()));
        List<OilLimits.OfOil> limits = new ArrayList<>();
        for (int i = 0; i < asked.shelf().size(); i++) {
            Bottle bottle = asked.shelf().get(i);
            OilLimits.OfOil its = all.oils().get(i);
            if (bottle.parts().isEmpty()) {
                leftOut.add(
                        Finding.of(
                                "not-in-table",
                                Severity.NOTE,
                                bottle.name(),
                                "left out",
                                "What it is made of is not known here, so that it cannot be compared.",
                                "Give the supplier's analysis on its page of the shelf, or call it as the table of oils does."));
            } else if (its.isAllowed()) {
                bottles.add(bottle);
                limits.add(its);
            } else {
                leftOut.add(leftOut(bottle, its.stops().get(0)));
            }
        }
        return new Usable(List.copyOf(bottles), new OilLimits(limits, all.maxima()), List.copyOf(leftOut));
    }

    /** Returns why an oil that is wanted must not be drunk itself; what stands in for it is judged by itself. */
    private static List<Finding> wantedNotToBeDrunk(Asked asked) {
        List<Finding> told = new ArrayList<>();
        for (EssentialOil oil : asked.wanted().keySet()) {
            OilLimits.told(List.of(oil.name()), asked.grounds()).stream()
                    .filter(finding -> finding.severity() == Severity.STOP)
                    .forEach(why -> told.add(new Finding(
                            why.rule(),
                            Severity.CAUTION,
                            oil.name(),
                            why.jurisdiction(),
                            "not to be drunk itself",
                            "The oil that is wanted must not be drunk: " + why.message(),
                            why.howSure(),
                            "Do without it. What comes near it here is judged by itself.",
                            why.limit(),
                            why.source())));
        }
        return told;
    }

    private static @Nullable Finding notNear(double missed, Usable usable) {
        if (missed < ANOTHER) {
            return null;
        }
        return new Finding(
                "nothing-near",
                Severity.CAUTION,
                "have",
                "",
                "nothing comes near",
                usable.bottles().isEmpty()
                        ? "None of the oils there may or can be taken, so that nothing comes."
                        : "Nothing of what is there comes near: the best of it is off by "
                                + QuantityWords.fixed(missed, 0) + " %, and off by 100 % is to have nothing of it.",
                "from " + QuantityWords.plain(ANOTHER) + " % on it is taken to be another smell; own judgement",
                "Name more of what you have, or look for another oil that comes nearer.",
                null,
                Source.OIL_COMPOSITIONS);
    }

    private static Finding leftOut(Bottle bottle, Finding why) {
        return new Finding(
                why.rule(),
                Severity.CAUTION,
                bottle.name(),
                why.jurisdiction(),
                "left out",
                "It is not taken: " + why.message(),
                why.howSure(),
                why.remedy(),
                why.limit(),
                why.source());
    }

    /** A maximum is in mg per kg of drink, an amount in mg; what a g/L brings is brought by 1000 mg in each litre. */
    private static Map<String, Matching.Bound> maxima(Asked asked, Usable usable) {
        Map<String, Matching.Bound> bounds = new TreeMap<>();
        usable.limits().maxima().forEach((substance, maximum) -> {
            List<Double> perMilligram = usable.limits().oils().stream()
                    .map(oil -> oil.reach().getOrDefault(substance, 0.0) / (1000.0 * asked.litres()))
                    .toList();
            bounds.put(substance, new Matching.Bound(perMilligram, BELOW * maximum.milligramsPerKilogram()));
        });
        return bounds;
    }

    private static List<Matching.Bound> bottles(Usable usable) {
        List<Matching.Bound> bounds = new ArrayList<>();
        for (int i = 0; i < usable.bottles().size(); i++) {
            double grams = usable.bottles().get(i).grams();
            if (grams < Double.POSITIVE_INFINITY) {
                List<Double> alone =
                        new ArrayList<>(Collections.nCopies(usable.bottles().size(), 0.0));
                alone.set(i, 1.0);
                bounds.add(new Matching.Bound(alone, 1000.0 * grams));
            }
        }
        return bounds;
    }

    private static List<Watched> watched(Usable usable, Map<String, Matching.Bound> maxima, Matching matching) {
        List<Watched> all = new ArrayList<>();
        maxima.forEach((substance, bound) -> {
            double comes = bound.sum(matching.amounts());
            OilLimits.Maximum maximum = usable.limits().maxima().get(substance);
            if (comes > 0.0 && maximum != null) {
                all.add(new Watched(substance, comes, maximum, bound.isReachedBy(matching.amounts())));
            }
        });
        return all;
    }

    private static List<Finding> heldBack(List<Watched> watched) {
        List<Finding> findings = new ArrayList<>();
        for (Watched each : watched) {
            if (each.holdsBack()) {
                findings.add(new Finding(
                        "held-back",
                        Severity.NOTE,
                        each.substance(),
                        each.maximum().whose(),
                        "at the limit",
                        "More would come nearer; " + each.substance() + " is at the most that law allows in the drink, "
                                + QuantityWords.plain(each.most()) + " mg/kg.",
                        "what comes at most, by the most adverse composition",
                        "Make more of the drink with it, or have an analysis of the lot that says less.",
                        QuantityWords.plain(each.most()) + " mg/kg",
                        each.maximum().source()));
            }
        }
        return findings;
    }

    private static String name(String cas) {
        Constituent constituent = Constituents.find(cas);
        return constituent == null ? cas : constituent.name();
    }

    private static Map<String, Double> weights(Asked asked, Map<String, Double> wanted) {
        Map<String, Double> weights = new TreeMap<>();
        if (asked.by() == By.SMELL) {
            List<String> all = new ArrayList<>(wanted.keySet());
            asked.shelf().forEach(bottle -> all.addAll(bottle.parts().keySet()));
            for (String cas : all) {
                OdourThreshold threshold = OdourThreshold.of(cas, OdourThreshold.Medium.SPIRIT.strength());
                weights.put(cas, threshold == null ? 0.0 : 1.0 / threshold.middle());
            }
        }
        return weights;
    }

    private static List<Finding> findings(Asked asked, Usable usable, List<Compared> compared) {
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
                "Compositions are typical or mid-range. It is kept within the maxima of law for "
                        + QuantityWords.plain(asked.litres()) + " L of a drink of "
                        + QuantityWords.plain(asked.strength().percent())
                        + " % vol with no other flavouring in it; a substance of which law"
                        + " has no maximum, such as estragole, is not held back.",
                "Lots of one oil differ by half and more in their lesser constituents.",
                "Smell it against the original at drinking strength, and ask for the safety of the recipe that it goes into.",
                null,
                Source.OIL_COMPOSITIONS));
        List<String> unknown = usable.limits().oils().stream()
                .filter(oil -> !oil.unknown().isEmpty())
                .map(oil -> oil.name() + " (" + String.join(", ", oil.unknown()) + ")")
                .toList();
        if (!unknown.isEmpty()) {
            findings.add(Finding.of(
                    "limit-not-known",
                    Severity.CAUTION,
                    "",
                    "not known",
                    "How much of a watched substance it brings is not known, so that no limit could be kept: "
                            + String.join("; ", unknown) + ".",
                    "Ask the supplier for an analysis."));
        }
        if (asked.by() == By.SMELL) {
            findings.add(bySmell(compared));
        }
        return List.copyOf(findings);
    }

    private static Finding bySmell(List<Compared> compared) {
        double most = compared.stream()
                .mapToDouble(each -> Math.max(each.wanted(), each.comes()))
                .sum();
        String without = compared.stream()
                .filter(each -> Math.max(each.wanted(), each.comes()) > TRACE * most)
                .filter(each -> OdourThreshold.of(each.cas(), OdourThreshold.Medium.SPIRIT.strength()) == null)
                .map(Compared::name)
                .collect(Collectors.joining(", "));
        return Finding.of(
                "without-threshold",
                Severity.NOTE,
                "",
                "by smell",
                "Counted is what lies over its threshold, and most thresholds are known to a decade at best. "
                        + (without.isEmpty()
                                ? "Every constituent of any weight has one."
                                : "Without one, and not counted: " + without + "."),
                "Compare with what comes by mass, and smell both.");
    }

    /** Returns the names of oils of the table that somebody may have meant, nearest first. */
    public static List<String> near(String name) {
        return Nearest.of(
                name, EssentialOils.list().stream().map(EssentialOil::name).toList(), MOST_NEAR);
    }

    private static Finding told(String rule, String message) {
        return Finding.of(rule, Severity.NOTE, "", "", message, "");
    }
}
