package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.recipe.SugarBasis;

/**
 * Finds what to add to a batch so that it comes to a target.
 *
 * <p>Each way is the plan whose additions take the least room, or the nearest that they reach. Where the vessel cannot hold that, part of the
 * batch is drawn off first: everything is taken in the same smaller measure, so that the composition stays. Method:
 * docs/how-it-works/correcting.md.
 */
public final class Correction {
    private static final double STRENGTH_TOO_OPEN = 4.0;
    private static final double SUGAR_TOO_OPEN = 30.0;

    /** More rounds than an extract that fills half of a batch needs. */
    private static final int ROUNDS = 60;
    /** Part of the batch below which nothing grows any more. */
    private static final double CLOSE = 1e-10;

    private final Batch batch;
    private final Map<Asked, Double> target;
    private final SugarBasis basis;
    private final List<Added> flavours;
    private final @Nullable Double vessel;

    private Correction(
            Batch batch, Map<Asked, Double> target, SugarBasis basis, List<Added> flavours, @Nullable Double vessel) {
        this.batch = batch;
        this.target = target;
        this.basis = basis;
        this.flavours = List.copyOf(flavours);
        this.vessel = vessel;
    }

    /**
     * What is in the vessel, and how sure.
     *
     * @param contents grams
     * @param doubt half-widths of the central 90 % of the figures; what is absent is taken as exact
     */
    public record Batch(Contents contents, Map<Asked, Double> doubt) {
        public Batch {
            doubt = Map.copyOf(doubt);
        }

        double doubt(Asked asked) {
            return doubt.getOrDefault(asked, 0.0);
        }
    }

    /**
     * What may be added.
     *
     * @param name what the maker calls it
     * @param perGram what one gram of it brings
     * @param atHand grams of it that there are; infinite when that is not said
     */
    public record Addition(String name, Contents perGram, double atHand) {
        /** What every kitchen has. */
        public static final Addition WHITE_SUGAR =
                new Addition("white sugar", Contents.of(Substance.SUCROSE, 1.0), Double.POSITIVE_INFINITY);

        public static final Addition WATER =
                new Addition("water", Contents.of(Substance.WATER, 1.0), Double.POSITIVE_INFINITY);

        /** Returns whether it has neither alcohol nor water and is weighed. */
        public boolean isSolid() {
            return perGram.grams(Substance.ETHANOL) + perGram.grams(Substance.WATER) == 0.0;
        }

        /** Returns the room that a gram takes by itself, mL. */
        public double millilitresPerGram() {
            return VolumeModel.atTwenty().millilitres(perGram.toGrams());
        }
    }

    /**
     * How much to add of something.
     *
     * @param grams above zero
     */
    public record Added(Addition addition, double grams) {
        /** Returns its volume at 20 °C, mL. */
        public double millilitres() {
            return grams * addition.millilitresPerGram();
        }
    }

    /**
     * One way to correct a batch.
     *
     * @param added what to add, in the order in which it was offered
     * @param drawnOff mL of the batch at 20 °C to take out first, since the vessel is full; 0 when it is not
     * @param result what is in the vessel then
     * @param doubt half-widths of the central 90 % then, of strength (% vol), sugar and acidity (g/L)
     * @param reached whether it lands on the target; else it is the nearest
     * @param flavour part of the concentration that everything else in the batch keeps
     */
    public record Way(
            List<Added> added,
            double drawnOff,
            Contents result,
            Map<Asked, Double> doubt,
            boolean reached,
            double flavour) {
        public Way {
            added = List.copyOf(added);
            doubt = Map.copyOf(doubt);
        }

        public Essentials essentials() {
            return Essentials.of(result.toGrams());
        }
    }

    /**
     * Returns whether the batch lies within its own doubt of the target, so that nothing could be gained by correcting it.
     *
     * @param target % vol, g/L, g/L as citric; what is absent is not asked
     */
    public static boolean isGoodEnough(Batch batch, Map<Asked, Double> target) {
        Essentials now = Essentials.of(batch.contents().toGrams());
        return target.entrySet().stream().allMatch(each -> {
            double unseen = Problem.unseen(each.getKey(), Span.exactly(each.getValue()));
            double away = Math.abs(each.getValue() - of(each.getKey(), now));
            return away <= Math.max(unseen, batch.doubt(each.getKey()));
        });
    }

    /**
     * Returns whether so little is known of the batch that lying within its doubt of the target says nothing: more than
     * {@value #STRENGTH_TOO_OPEN} % vol or {@value #SUGAR_TOO_OPEN} g/L either way (our own judgement: twice what a hydrometer and a
     * refractometer leave open).
     */
    public static boolean isTooOpen(Batch batch) {
        return batch.doubt(Asked.STRENGTH) > STRENGTH_TOO_OPEN || batch.doubt(Asked.SUGAR) > SUGAR_TOO_OPEN;
    }

    /** Returns a figure of a liquid in the unit in which it is asked. */
    public static double of(Asked asked, Essentials liquid) {
        return switch (asked) {
            case VOLUME -> liquid.millilitres();
            case STRENGTH -> liquid.strength();
            case SUGAR -> liquid.sugar();
            case ACIDITY -> liquid.acidity();
        };
    }

    /**
     * Returns the way that adds least.
     *
     * @param target strength, sugar and acidity; never the volume
     * @param vessel the most that there is room for at 20 °C, mL, or null
     */
    public static Way with(List<Addition> additions, Batch batch, Map<Asked, Double> target, @Nullable Double vessel) {
        return restoring(List.of(), additions, batch, target, vessel);
    }

    /**
     * Returns the way that adds least and as much more of some extracts as keeps their flavour at its concentration.
     *
     * @param flavours extracts with how much of each went into the batch
     */
    public static Way restoring(
            List<Added> flavours,
            List<Addition> additions,
            Batch batch,
            Map<Asked, Double> target,
            @Nullable Double vessel) {
        return new Correction(batch, target, SugarBasis.AS_DISSOLVED, flavours, vessel).with(additions);
    }

    /**
     * Returns the way that adds least to a liquid of which nothing is in doubt.
     *
     * @param target strength, % vol, and sugar, g/L on the basis; what is absent is open
     */
    public static Way with(List<Addition> additions, Contents liquid, Map<Asked, Double> target, SugarBasis basis) {
        return new Correction(new Batch(liquid, Map.of()), target, basis, List.of(), null).with(additions);
    }

    private Way with(List<Addition> additions) {
        double before = VolumeModel.atTwenty().millilitres(batch.contents().toGrams());
        double grown = 0.0;
        Solution solution = Solver.solve(problem(additions, grown));
        // More extract makes more liquid, which wants more extract: what one round adds to the other shrinks by its
        // part of the batch.
        for (int i = 0; i < ROUNDS && !flavours.isEmpty(); i++) {
            double now = solution.millilitres() / before - 1.0;
            if (Math.abs(now - grown) < CLOSE) {
                break;
            }
            grown = now;
            solution = Solver.solve(problem(additions, grown));
        }
        return way(additions, solution, grown, before);
    }

    private Way way(List<Addition> additions, Solution solution, double grown, double before) {
        double part = vessel == null ? 1.0 : Math.min(1.0, vessel / solution.millilitres());
        double least = 1e-6 * batch.contents().total();
        List<Added> added = new ArrayList<>();
        flavours.forEach(each -> put(each.addition(), part * grown * each.grams(), least, added));
        for (int i = 0; i < additions.size(); i++) {
            put(additions.get(i), part * solution.grams()[i + 1], least, added);
        }
        Contents result = batch.contents().times(part);
        for (Added each : added) {
            result = result.plus(each.addition().perGram().times(each.grams()));
        }
        double kept = before / solution.millilitres();
        return new Way(added, (1.0 - part) * before, result, doubt(kept), solution.reached(), kept);
    }

    private static void put(Addition addition, double grams, double least, List<Added> added) {
        if (grams > least) {
            added.add(new Added(addition, grams));
        }
    }

    /** What is in doubt of the batch is thinned like all else in it. */
    private Map<Asked, Double> doubt(double kept) {
        Map<Asked, Double> doubt = new EnumMap<>(Asked.class);
        batch.doubt().forEach((asked, half) -> doubt.put(asked, half * kept));
        return doubt;
    }

    /** @param grown by what part of the batch there is more liquid, and so more of each extract is wanted */
    private Problem problem(List<Addition> additions, double grown) {
        Problem.Line[] lines = new Problem.Line[additions.size() + 1];
        Contents there = batch.contents();
        for (Added each : flavours) {
            there = there.plus(each.addition().perGram().times(grown * each.grams()));
        }
        lines[0] = new Problem.Line(there.perGram().toGrams(), there.total(), 0.0, 0.0, 0.0, 0.0);
        for (int i = 0; i < additions.size(); i++) {
            Addition addition = additions.get(i);
            lines[i + 1] = new Problem.Line(
                    addition.perGram().toGrams(), 0.0, 0.0, addition.atHand(), 0.0, addition.millilitresPerGram());
        }
        Map<Asked, Span> asked = new EnumMap<>(Asked.class);
        target.forEach((what, value) -> asked.put(what, Span.exactly(value)));
        return new Problem(lines, asked, Problem.weights(basis));
    }
}
