package org.stillroom.studio.usecase.left;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.stillroom.core.clarity.Clarity;
import org.stillroom.core.clarity.Doubts;
import org.stillroom.core.clarity.Verdict;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.mixing.PlanClarity;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.Grounds;
import org.stillroom.planner.leftovers.UseUp;
import org.stillroom.studio.usecase.AmountLimits;

/**
 * A liqueur that uses extracts up, held back to what law and the house allow of their substances at worst, and to what of their oil stays
 * dissolved by the forecast: of what brings too much, a litre takes less, each in the same proportion.
 *
 * @param useUp what comes of it
 * @param by what holds each extract back, by its place; nothing where its own bound does
 */
record HeldBack(UseUp useUp, Map<Integer, DoseBound.From> by) {
    /** Halvings of the part that is left; the last is finer than any amount is written. */
    private static final int HALVINGS = 12;

    /** Amounts are written in three figures: with so much less, part of it, what is written passes no limit either. */
    private static final double WRITTEN = 0.99;

    private static final Pattern LINE = Pattern.compile("line (\\d+),");

    HeldBack {
        by = Map.copyOf(by);
    }

    /**
     * Returns the liqueur within what holds it back: each extract as if it went in alone, then all of them together. What stays too much
     * however little of it goes in is left as it is: its findings say so.
     *
     * @param first without it
     * @param clear places of the extracts of which no more goes in than stays clear
     */
    static HeldBack of(UseUp.Asked asked, UseUp first, Set<Integer> clear, Grounds grounds) {
        return asked.extracts().size() == 1
                ? new HeldBack(first, Map.of()).within(asked, clear, grounds)
                : eachAlone(asked, first, clear, grounds).within(asked, clear, grounds);
    }

    private static HeldBack eachAlone(UseUp.Asked asked, UseUp first, Set<Integer> clear, Grounds grounds) {
        List<UseUp.Extract> extracts = new ArrayList<>();
        Map<Integer, DoseBound.From> by = new HashMap<>();
        for (int i = 0; i < asked.extracts().size(); i++) {
            UseUp.Extract extract = asked.extracts().get(i);
            UseUp.Asked alone = with(asked, List.of(extract));
            UseUp found = UseUp.of(alone).found();
            HeldBack held = found == null ? null : of(alone, found, clear.contains(i) ? Set.of(0) : Set.of(), grounds);
            if (held == null || held.by().isEmpty()) {
                extracts.add(extract);
            } else {
                extracts.add(most(extract, held.useUp().used().get(0).perLitre()));
                by.put(i, Objects.requireNonNull(held.by().get(0)));
            }
        }
        UseUp useUp = UseUp.of(with(asked, extracts)).found();
        return useUp == null ? new HeldBack(first, Map.of()) : new HeldBack(useUp, by);
    }

    private HeldBack within(UseUp.Asked asked, Set<Integer> clear, Grounds grounds) {
        HeldBack lawful = within(
                asked,
                passing(useUp.plan(), grounds),
                plan -> passing(plan, grounds).isEmpty(),
                DoseBound.From.LAW);
        Set<Integer> clouding = isClear(lawful.useUp().plan()) ? Set.of() : oily(lawful.useUp(), clear);
        return lawful.within(asked, clouding, HeldBack::isClear, DoseBound.From.DISSOLVED);
    }

    private HeldBack within(UseUp.Asked asked, Set<Integer> tooMuch, Predicate<Plan> holds, DoseBound.From from) {
        double low = 0.0;
        double high = 1.0;
        for (int i = 0; i < HALVINGS && !tooMuch.isEmpty(); i++) {
            double middle = (low + high) / 2.0;
            UseUp tried = UseUp.of(less(asked, tooMuch, middle)).found();
            if (tried != null && holds.test(tried.plan())) {
                low = middle;
            } else {
                high = middle;
            }
        }
        UseUp best = low == 0.0
                ? null
                : UseUp.of(less(asked, tooMuch, low * WRITTEN)).found();
        if (best == null) {
            return this;
        }
        Map<Integer, DoseBound.From> all = new HashMap<>(by);
        tooMuch.forEach(place -> all.put(place, from));
        return new HeldBack(best, all);
    }

    /** Of what was held back before, no more may go in than that. */
    private UseUp.Asked less(UseUp.Asked asked, Set<Integer> tooMuch, double part) {
        List<UseUp.Extract> extracts = new ArrayList<>();
        for (int i = 0; i < asked.extracts().size(); i++) {
            UseUp.Used used = useUp.used().get(i);
            extracts.add(tooMuch.contains(i) ? most(used.extract(), part * used.perLitre()) : used.extract());
        }
        return with(asked, extracts);
    }

    private static UseUp.Extract most(UseUp.Extract extract, double perLitre) {
        return new UseUp.Extract(extract.ingredient(), extract.grams(), Math.max(Double.MIN_NORMAL, perLitre));
    }

    private static UseUp.Asked with(UseUp.Asked asked, List<UseUp.Extract> extracts) {
        return new UseUp.Asked(extracts, asked.strength(), asked.sugar(), asked.mostMillilitres());
    }

    /** Returns the places of the extracts by which a limit is passed. */
    private static Set<Integer> passing(Plan plan, Grounds grounds) {
        Set<Integer> places = new TreeSet<>();
        for (Finding finding : AmountLimits.of(plan, grounds)) {
            Matcher line = LINE.matcher(finding.where());
            while (finding.severity() == Severity.STOP && line.find()) {
                places.add(Integer.parseInt(line.group(1)) - 1);
            }
        }
        return places;
    }

    private static Set<Integer> oily(UseUp useUp, Set<Integer> among) {
        Set<Integer> oily = new TreeSet<>();
        for (int place : among) {
            if (useUp.plan().lines().get(place).ingredient().perGram().grams(Substance.OIL) > 0.0) {
                oily.add(place);
            }
        }
        return oily;
    }

    private static boolean isClear(Plan plan) {
        Contents liquid = PlanClarity.liquid(plan);
        return liquid.grams(Substance.OIL) == 0.0
                || Clarity.of(liquid, Temperature.TWENTY_CELSIUS, Doubts.NONE).verdict() == Verdict.CLEAR;
    }
}
