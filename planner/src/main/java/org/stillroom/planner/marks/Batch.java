package org.stillroom.planner.marks;

import java.util.List;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.recipe.LineAmount;

/** A plan's batch made with other amounts: what comes of it, and how far that lies from the plan. */
final class Batch {
    /** Deviations that weigh alike: strength, % vol. */
    private static final double STRENGTH = 0.05;

    /** Sugar, g/L. */
    private static final double SUGAR = 0.5;

    /** Acidity, g/L as citric. */
    private static final double ACIDITY = 0.05;

    /** Volume, part of it. */
    private static final double VOLUME = 0.001;

    /** A dose per litre, part of it: what the maker asked for is a result too. */
    private static final double DOSE = 0.01;

    private static final int NO_LINE = -1;
    private static final int NEWTON_STEPS = 8;

    private final List<PlannedLine> lines;
    private final double[][] perGram;
    private final double[] exactGrams;
    private final int[] dosed;
    private final int makeUp;
    private final Essentials exact;

    Batch(Plan plan) {
        lines = plan.lines();
        perGram = new double[lines.size()][];
        exactGrams = new double[lines.size()];
        int mark = NO_LINE;
        for (int i = 0; i < lines.size(); i++) {
            perGram[i] = lines.get(i).ingredient().perGram().toGrams();
            exactGrams[i] = lines.get(i).grams();
            mark = lines.get(i).line().amount() instanceof LineAmount.MakeUp ? i : mark;
        }
        makeUp = mark;
        dosed = java.util.stream.IntStream.range(0, lines.size())
                .filter(i -> lines.get(i).line().amount() instanceof LineAmount.PerLitre && exactGrams[i] > 0.0)
                .toArray();
        exact = Essentials.of(total(exactGrams));
    }

    Essentials exact() {
        return exact;
    }

    double[] exactGrams() {
        return exactGrams.clone();
    }

    /** Returns the finished liquid; where a vessel is made up to its mark, the grams of that line are set to what it takes. */
    Essentials result(double[] grams) {
        if (makeUp == NO_LINE) {
            return Essentials.of(total(grams));
        }
        double[] partial = new double[Substance.COUNT];
        for (int step = 0; step < NEWTON_STEPS; step++) {
            double over = VolumeModel.partialVolumes(total(grams), partial) - exact.millilitres();
            if (Math.abs(over) <= 1e-13 * exact.millilitres()) {
                break;
            }
            double each = 0.0;
            for (int s = 0; s < partial.length; s++) {
                each += partial[s] * perGram[makeUp][s];
            }
            grams[makeUp] = Math.max(0.0, grams[makeUp] - over / each);
        }
        return Essentials.of(total(grams));
    }

    private double[] total(double[] grams) {
        double[] total = new double[Substance.COUNT];
        for (int i = 0; i < grams.length; i++) {
            for (int s = 0; s < total.length; s++) {
                total[s] += grams[i] * perGram[i][s];
            }
        }
        return total;
    }

    /**
     * Returns by how much the result differs from the plan's, each figure in units that weigh alike: volume, strength, sugar,
     * acidity, then each dose.
     */
    double[] deviations(double[] grams) {
        Essentials result = result(grams);
        double[] off = new double[4 + dosed.length];
        off[0] = (result.millilitres() / exact.millilitres() - 1.0) / VOLUME;
        off[1] = (result.strength() - exact.strength()) / STRENGTH;
        off[2] = (result.sugar() - exact.sugar()) / SUGAR;
        off[3] = (result.acidity() - exact.acidity()) / ACIDITY;
        for (int d = 0; d < dosed.length; d++) {
            double dose = grams[dosed[d]] / exactGrams[dosed[d]];
            off[4 + d] = (dose * exact.millilitres() / result.millilitres() - 1.0) / DOSE;
        }
        return off;
    }

    /** Returns the sum of the squared deviations. */
    double distance(double[] grams) {
        return squared(deviations(grams));
    }

    static double squared(double[] off) {
        double sum = 0.0;
        for (double each : off) {
            sum += each * each;
        }
        return sum;
    }
}
