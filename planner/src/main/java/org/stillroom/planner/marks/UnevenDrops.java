package org.stillroom.planner.marks;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** What whole drops leave of a dose that does not come out whole. */
final class UnevenDrops {
    /** So far off, part of the dose, is told. Own judgement, as for doses too small to measure. */
    private static final double TOO_MUCH = 0.1;

    /** So close, part of the dose, is even. Own judgement. */
    private static final double EVEN = 0.02;

    /** A larger batch than so many is no help. Own judgement. */
    private static final int MOST_BATCHES = 12;

    /** Name of the rule. */
    static final String NAME = "drops-uneven";

    private UnevenDrops() {}

    /** Returns what to know where a dose is rounded to whole drops by more than a tenth, or null. */
    static @Nullable Finding of(String where, Portion portion, Take take, double batchMillilitres) {
        if (!(take.reading().amount() instanceof Drops drops) || !(drops.count() > 0.0)) {
            return null;
        }
        double wanted = drops.count() * portion.grams() / take.grams();
        double error = take.grams() / portion.grams() - 1.0;
        if (Math.abs(error) <= TOO_MUCH * (1.0 + 1e-9)) {
            return null;
        }
        return new Finding(
                NAME,
                Severity.CAUTION,
                where,
                "",
                "drops cannot be split",
                QuantityWords.metric(drops) + " are " + QuantityWords.fixed(100.0 * Math.abs(error), 0) + " % "
                        + (error > 0.0 ? "more" : "less") + " than the " + QuantityWords.fixed(wanted, 2) + " drops of "
                        + portion.line().name() + " that the plan wants.",
                "",
                remedy(wanted, batchMillilitres),
                QuantityWords.fixed(100.0 * TOO_MUCH, 0) + " %",
                Source.TRADE);
    }

    private static String remedy(double wanted, double batchMillilitres) {
        String dilute = "ilute it first: 1 drop with 9 drops of strong spirit, and take " + Math.round(10.0 * wanted)
                + " drops of that once you know that both drop alike, or weigh both.";
        for (int batches = 2; batches <= MOST_BATCHES; batches++) {
            double drops = batches * wanted;
            if (Math.abs(Math.rint(drops) - drops) <= EVEN * drops) {
                return "Make " + batches + " times as much, "
                        + QuantityWords.figures(batches * batchMillilitres / 1000.0) + " L, which takes "
                        + Math.round(drops) + " drops; or d" + dilute;
            }
        }
        return "D" + dilute;
    }
}
