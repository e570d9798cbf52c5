package org.stillroom.planner.marks;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/**
 * Finds amounts too small for their instrument: where its tolerance, or half a mark, is more than a tenth of the amount.
 *
 * <p>The tenth is common practice, no source. What drops differ in is said where drops are converted, so that only their
 * whole numbers count here.
 */
final class SmallDose {
    private static final double TOO_MUCH = 0.10;
    private static final double[] SCALES = {0.1, 0.01};

    /** Name of the rule. */
    static final String NAME = "dose-too-small";

    private SmallDose() {}

    static @Nullable Finding of(String where, Portion portion, Take take, double batchMillilitres) {
        boolean drops = take.reading().unit().equals("drops");
        double error = drops ? take.halfMarkGrams() : Math.max(take.toleranceGrams(), take.halfMarkGrams());
        if (error <= TOO_MUCH * portion.grams() * (1.0 + 1e-9)) {
            return null;
        }
        double factor = error / (TOO_MUCH * portion.grams());
        String name = portion.line().name();
        return new Finding(
                NAME,
                Severity.CAUTION,
                where,
                "",
                "too small to measure",
                QuantityWords.metric(new Mass(portion.grams())) + " of " + name + " are too little for "
                        + take.reading().instrument() + ", which may be off by "
                        + QuantityWords.fixed(100.0 * error / portion.grams(), 0) + " % there.",
                "",
                remedy(portion, factor, take.scalesWithAmount(), batchMillilitres),
                QuantityWords.fixed(100 * TOO_MUCH, 0) + " %",
                take.source() == null ? Source.TRADE : take.source());
    }

    private static String remedy(Portion portion, double factor, boolean batchDoesNotHelp, double batchMillilitres) {
        int dilution = factor <= 10.0 ? 10 : factor <= 100.0 ? 100 : 1000;
        StringBuilder words = new StringBuilder("Dilute it first: 1 g of it made up to " + dilution + " g with "
                + (portion.isSolid() ? "water" : "strong spirit") + " of the recipe, and take " + dilution
                + " times as much");
        for (double step : SCALES) {
            if (InstrumentReader.scaleTolerance(step) <= TOO_MUCH * portion.grams()) {
                words.append("; or weigh it on a scale that shows ")
                        .append(QuantityWords.plain(step))
                        .append(" g");
                break;
            }
        }
        if (!batchDoesNotHelp) {
            double litres = Math.ceil(batchMillilitres * factor / 100.0) / 10.0;
            words.append("; or make at least ")
                    .append(QuantityWords.fixed(litres, 1))
                    .append(" L");
        }
        return words.append(".").toString();
    }
}
