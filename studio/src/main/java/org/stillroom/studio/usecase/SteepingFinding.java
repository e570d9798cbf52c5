package org.stillroom.studio.usecase;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.SteepingFit;
import org.stillroom.core.liquid.Bounded;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** What a maker's own samples say of an extraction, and what they leave open. */
final class SteepingFinding {
    private SteepingFinding() {}

    static void of(SteepingFit fit, List<Finding> findings) {
        findings.add(shape(fit));
        if (fit.fallen() > 0.0) {
            findings.add(new Finding(
                    "samples-fall",
                    Severity.CAUTION,
                    "sample",
                    "",
                    "slip or loss",
                    "Your last sample lies " + QuantityWords.fixed(100.0 * fit.fallen(), 0)
                            + " % below the highest; an extraction only rises.",
                    "What falls by more than 5 % is taken for no scatter; own estimate. All samples are fitted, so that the days "
                            + "are less sure.",
                    "Taste once more; where it is a slip leave the sample out, where it is none close the jar and end here: oils "
                            + "escape and fade.",
                    null,
                    Source.STEEPING_SAMPLES));
        }
    }

    private static Finding shape(SteepingFit fit) {
        String day = QuantityWords.plain(fit.last());
        return switch (fit.shape()) {
            case LEVELS_OFF ->
                note(
                        "samples-level-off",
                        "Your samples level off: they bound what there is to gain" + ends(fit.end()) + ".",
                        "",
                        "");
            case END_IN_DOUBT ->
                note(
                        "samples-no-end",
                        "The best fit levels off, but a straight line does as well within what your samples scatter: how much there "
                                + "is to gain, and when little of it is left, has no upper bound.",
                        "open upwards",
                        later(fit.last()));
            case STRAIGHT ->
                note(
                        "samples-no-end",
                        "Up to day " + day
                                + " your samples rise as a straight line does, or faster, and show no end: neither how much there "
                                + "is to gain nor a day can be told.",
                        "not known",
                        later(fit.last()));
            case STANDS ->
                note(
                        "samples-stand",
                        "Your samples stand still from the first: what there is to gain had come by then, and when cannot be told.",
                        "not known",
                        "Take samples earlier next time: after hours, a day and two.");
        };
    }

    private static String ends(@Nullable Bounded end) {
        return end == null
                ? ""
                : " to between " + QuantityWords.figures(end.low()) + " and " + QuantityWords.figures(end.high());
    }

    private static String later(double last) {
        return "Taste again on day " + QuantityWords.plain(Math.ceil(2.0 * last))
                + " or later, and give that sample too.";
    }

    private static Finding note(String rule, String message, String verdict, String remedy) {
        return new Finding(
                rule,
                verdict.isEmpty() ? Severity.NOTE : Severity.CAUTION,
                "sample",
                "",
                verdict,
                message,
                "Fitted by first order, with Student's t of so few samples; a reading repeats to 1 % at best, own estimate.",
                remedy,
                null,
                Source.STEEPING_SAMPLES);
    }
}
