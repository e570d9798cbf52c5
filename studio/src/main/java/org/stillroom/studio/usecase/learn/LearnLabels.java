package org.stillroom.studio.usecase.learn;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Gauged.Interval;
import org.stillroom.core.gauging.Learned;
import org.stillroom.core.gauging.Learning;
import org.stillroom.core.gauging.Poured;
import org.stillroom.core.gauging.Thermometer;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.studio.usecase.learn.LearntLabel.Standing;

/**
 * Gathers what went into batches and what was read of them, and tells what follows for the labels.
 *
 * <p>Half of the variance of a tolerance is taken as common to all bottles of a name and label, half as each bottle's own.
 */
final class LearnLabels {
    /** Part of a tolerance that is common to bottles of a name, and that is a bottle's own: each half of the variance. */
    private static final double HALF = Math.sqrt(0.5);
    /** What leaves more than this part of a tolerance open has told nothing. */
    private static final double TOLD = 0.8;
    /** Half-width of the central 90 % of what lies evenly within 1. */
    private static final double OF_TOLERANCE = 1.6448536269514722 / Math.sqrt(3.0);

    private static final int ENOUGH = 2;

    private final Function<String, @Nullable Ingredient> bottles;
    private final List<Learning.Label> labels = new ArrayList<>();
    private final Map<String, Named> named = new LinkedHashMap<>();
    private final Map<String, Bottle> ofBottles = new LinkedHashMap<>();
    private final List<Learning.Seen> vessels = new ArrayList<>();
    private final List<Integer> numbers = new ArrayList<>();
    private Thermometer thermometer = Thermometer.EXACT;

    /** @param bottles tells what stands on the shelf under an id */
    LearnLabels(Function<String, @Nullable Ingredient> bottles) {
        this.bottles = bottles;
    }

    /** A name and what its label says. */
    private record Named(int label, Labelled what) {}

    /** A bottle of it. */
    private record Bottle(int label, String lot, Named named) {}

    /** Adds a batch that was read. */
    void add(int number, PouredBatch batch, FirstReadings read) {
        if (read.readings().isEmpty() || batch.lines().isEmpty()) {
            return;
        }
        Contents poured = Contents.NONE;
        List<Learning.Share> shares = new ArrayList<>();
        List<Poured.Slip> slips = new ArrayList<>();
        for (PouredBatch.Line line : batch.lines()) {
            Labelled planned = Labelled.of(line.ingredient().ingredient()).orElse(null);
            Contents perGram = line.ingredient().perGram();
            slips.add(new Poured.Slip(
                    "the measure of " + line.name(),
                    perGram.times(line.inDoubt()).toGrams()));
            if (planned == null) {
                poured = poured.plus(perGram.times(line.grams()));
                continue;
            }
            double unnamed = 1.0;
            for (Map.Entry<String, Double> part : line.byLot().entrySet()) {
                unnamed -= part.getValue();
                Labelled labelled = planned.labelled(bottles.apply(part.getKey()));
                double grams = line.grams() * part.getValue();
                poured = poured.plus(labelled.perGram().times(grams));
                Bottle bottle = bottle(labelled, part.getKey());
                shares.add(labelled.share(bottle.named().label(), grams));
                shares.add(labelled.share(bottle.label(), grams));
            }
            if (unnamed > 1e-9) {
                double grams = line.grams() * unnamed;
                poured = poured.plus(planned.perGram().times(grams));
                shares.add(planned.share(named(planned).label(), grams));
                slips.add(ofUnknownBottle(planned, grams));
            }
        }
        vessels.add(new Learning.Seen(poured, shares, slips, read.readings()));
        numbers.add(number);
        if (read.thermometer().halfWidth() > thermometer.halfWidth()) {
            thermometer = read.thermometer();
        }
    }

    private static Poured.Slip ofUnknownBottle(Labelled labelled, double grams) {
        double below = -Math.min(HALF * labelled.tolerance(), 0.9 * labelled.value());
        double[] then = labelled.off(below).times(grams).toGrams();
        double[] plain = labelled.perGram().times(grams).toGrams();
        for (int i = 0; i < then.length; i++) {
            then[i] -= plain[i];
        }
        return new Poured.Slip("a bottle of " + labelled.ingredient().name(), then);
    }

    private Named named(Labelled what) {
        return named.computeIfAbsent(what.group(), group -> new Named(label(what, -1), what));
    }

    private Bottle bottle(Labelled what, String lot) {
        Named of = named(what);
        return ofBottles.computeIfAbsent(what.group() + " " + lot, key -> new Bottle(label(what, of.label()), lot, of));
    }

    private int label(Labelled what, int within) {
        labels.add(new Learning.Label(HALF * what.tolerance(), within));
        return labels.size() - 1;
    }

    /** Returns what follows, beside what is known of drops. */
    Learnt answer(List<LearntDrop> drops) {
        Learned learned = Learning.of(labels, vessels, thermometer);
        List<LearntLabel> told = new ArrayList<>();
        for (Named each : named.values()) {
            told.add(told(learned, each, null));
            ofBottles.values().stream()
                    .filter(bottle -> bottle.named().equals(each))
                    .map(bottle -> told(learned, each, bottle))
                    .forEach(told::add);
        }
        List<Integer> leftOut = new ArrayList<>();
        for (int v = 0; v < vessels.size(); v++) {
            if (learned.isLeftOut(v)) {
                leftOut.add(numbers.get(v));
            }
        }
        return new Learnt(told, drops, leftOut, vessels.size());
    }

    private LearntLabel told(Learned learned, Named of, @Nullable Bottle bottle) {
        Labelled what = of.what();
        Interval off = bottle == null ? learned.off(of.label()) : learned.off(of.label(), bottle.label());
        int batches = learned.vessels(bottle == null ? of.label() : bottle.label());
        boolean beyond =
                learned.isBeyondTolerance(of.label()) || (bottle != null && learned.isBeyondTolerance(bottle.label()));
        Set<String> others = others(learned, of);
        Standing standing = standing(what, off, batches, beyond, bottle != null, !others.isEmpty());
        return new LearntLabel(
                what.ingredient().name(),
                bottle == null ? null : bottle.lot(),
                what.figure(),
                what.value(),
                figure(what, off),
                batches,
                standing,
                beyond,
                List.copyOf(others));
    }

    private static Standing standing(
            Labelled what, Interval off, int batches, boolean beyond, boolean ofBottle, boolean orOther) {
        double before = OF_TOLERANCE * what.tolerance() * (ofBottle ? 1.0 : HALF);
        double least = 0.5 * Math.pow(10.0, -what.figure().decimals());
        Interval figure = figure(what, off);
        boolean differs = Math.abs(figure.value() - what.value()) >= least;
        if (batches >= ENOUGH && !orOther && differs && Math.abs(off.value()) > off.halfWidth()) {
            return Standing.CLEAR;
        }
        return orOther || batches < ENOUGH || (!beyond && off.halfWidth() > TOLD * before)
                ? Standing.OPEN
                : Standing.AS_LABELLED;
    }

    /** Returns the figure that an offset makes of the label; of sugar it is a part of that. */
    private static Interval figure(Labelled what, Interval off) {
        if (what.figure() == LearntLabel.Figure.STRENGTH) {
            double value = Math.max(0.0, Math.min(100.0, what.value() + off.value()));
            return new Interval(value, value - off.halfWidth(), value + off.halfWidth());
        }
        double per = what.value() / 100.0;
        double value = Math.max(0.0, what.value() + per * off.value());
        return new Interval(value, value - per * off.halfWidth(), value + per * off.halfWidth());
    }

    /** Returns the names of others that may be behind what is off: together they are clearly off, and none of them by itself. */
    private Set<String> others(Learned learned, Named one) {
        Set<String> others = new TreeSet<>();
        boolean suspect = isSuspect(learned, one);
        for (Named other : named.values()) {
            if (other.equals(one)) {
                continue;
            }
            boolean both = suspect && isSuspect(learned, other);
            if (both
                    || (isClear(together(learned, one, other))
                            && !isClear(alone(learned, one))
                            && !isClear(alone(learned, other)))) {
                others.add(other.what().ingredient().name());
            }
        }
        return others;
    }

    private boolean isSuspect(Learned learned, Named of) {
        return learned.suspects().contains(of.label())
                || ofBottles.values().stream()
                        .anyMatch(bottle ->
                                bottle.named().equals(of) && learned.suspects().contains(bottle.label()));
    }

    private static boolean isClear(Interval interval) {
        return interval.low() > 0.0 || interval.high() < 0.0;
    }

    private Interval alone(Learned learned, Named of) {
        return learned.together(weights(Set.of(of)));
    }

    private Interval together(Learned learned, Named one, Named other) {
        return learned.together(weights(Set.of(one, other)));
    }

    /** Returns what a unit of each label of some names brings of alcohol, and where it has none of sugar, in all vessels together. */
    private double[] weights(Set<Named> of) {
        Set<Integer> counted = of.stream().map(Named::label).collect(Collectors.toSet());
        ofBottles.values().stream()
                .filter(bottle -> of.contains(bottle.named()))
                .map(Bottle::label)
                .forEach(counted::add);
        double[] weights = new double[labels.size()];
        for (Learning.Seen vessel : vessels) {
            for (Learning.Share share : vessel.shares()) {
                if (counted.contains(share.label())) {
                    weights[share.label()] += share.perUnit()[Substance.ETHANOL.ordinal()];
                }
            }
        }
        return weights;
    }
}
