package org.stillroom.studio.web.tables;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.wording.Words;

/**
 * A question as its page shows it.
 *
 * @param told the answer, or null as long as nothing was asked or something is wrong
 * @param steps by which the answer came about
 * @param problems what is wrong with what was typed
 */
public record Asked(List<AskedField> fields, @Nullable Told told, List<Workings.Step> steps, List<Finding> problems) {
    public Asked {
        fields = List.copyOf(fields);
        steps = List.copyOf(steps);
        problems = List.copyOf(problems);
    }

    /** Returns the value of a figure as the reader writes it. */
    public String value(Told.Row row, Words words) {
        Estimate estimate = row.estimate();
        return estimate == null
                ? "–"
                : words.number(estimate.value(), row.name().decimals());
    }

    /** Returns the half-width of the central 90 %, in one decimal more where it would vanish; empty where there is none. */
    public String doubt(Told.Row row, Words words) {
        Estimate estimate = row.estimate();
        if (estimate == null || estimate.doubt() == 0.0) {
            return "";
        }
        int decimals = row.name().decimals();
        boolean vanishes = estimate.doubt() < 0.5 * Math.pow(10, -decimals);
        return "± " + words.number(estimate.doubt(), vanishes ? decimals + 1 : decimals);
    }
}
