package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/**
 * What a day's servings bring beside intake guidance, which is no legal limit and is never told as one.
 *
 * <p>For a substance that damages genes there is no harmless amount: it is told as "as low as can be", whatever the figure.
 */
final class IntakeGuidance {
    private IntakeGuidance() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        for (Amount amount : drink.amounts()) {
            for (Knowledge.Guidance row : drink.knowledge().guidance()) {
                if (row.watched().equals(amount.watched().name()) && !Kernels.isToldOnce(drink, amount)) {
                    @Nullable Finding finding = judge(amount, row, serving);
                    if (finding != null) {
                        findings.add(finding);
                    }
                }
            }
        }
        return findings;
    }

    /** From this margin of exposure on a genotoxic substance is of low concern: EFSA, opinion of 2005, from memory; it clears nothing. */
    private static final double WIDE = 10_000.0;

    private static @Nullable Finding judge(Amount amount, Knowledge.Guidance row, Serving serving) {
        if (row.compares().equals("no")) {
            return row.genotoxic() ? asLowAsCanBe(amount, row, serving) : null;
        }
        double allowed =
                Double.parseDouble(row.value()) * (row.compares().startsWith("per kg") ? serving.bodyKilograms() : 1.0);
        boolean atOnce = row.compares().endsWith("at once");
        Range taken = atOnce ? amount.perLitre().times(serving.millilitres() / 1000.0) : amount.perDay(serving);
        return row.genotoxic()
                ? genotoxic(amount, row, taken, allowed)
                : compared(amount, row, taken, allowed, atOnce, serving);
    }

    private static Finding compared(
            Amount amount, Knowledge.Guidance row, Range taken, double allowed, boolean atOnce, Serving serving) {
        boolean over = taken.most() > allowed;
        String reached = taken.most() > 0.0
                ? " Reached at worst by " + Range.figures(allowed / taken.most() * (atOnce ? 1.0 : serving.perDay()))
                        + (amount.isKnown() ? " servings." : " servings of what is known alone, sooner with the rest.")
                : "";
        return finding(
                amount,
                row,
                over ? Severity.CAUTION : Severity.NOTE,
                over ? "above guidance at worst" : amount.isKnown() ? "beside guidance" : "not known",
                taken(amount, taken, atOnce ? "a serving" : "a day") + "guidance is " + Range.figures(allowed) + " mg ("
                        + origin(row) + ")." + reached,
                over ? "Use less of what brings it, or drink less of it." : "",
                "guidance of " + Range.figures(allowed) + " mg " + (atOnce ? "at once" : "a day"));
    }

    private static Finding genotoxic(Amount amount, Knowledge.Guidance row, Range taken, double allowed) {
        boolean over = taken.middle() > allowed;
        return finding(
                amount,
                row,
                over ? Severity.CAUTION : Severity.NOTE,
                "as low as can be",
                taken(amount, taken, "a day")
                        + "it can damage genes, so no amount counts as harmless; a value named for" + " medicines is "
                        + Range.figures(allowed) + " mg (" + origin(row) + ").",
                "Use as little as can be of what brings it.",
                "as low as can be");
    }

    private static Finding asLowAsCanBe(Amount amount, Knowledge.Guidance row, Serving serving) {
        Range taken = amount.perDay(serving);
        OptionalDouble margin = margin(row, taken, serving);
        boolean narrow = margin.isPresent() && margin.getAsDouble() < WIDE;
        String told = narrow
                ? " At worst the dose that harmed one animal in ten is " + Range.figures(margin.getAsDouble())
                        + " times as much; below 10 000 that is of concern."
                : "";
        return finding(
                amount,
                row,
                narrow ? Severity.CAUTION : Severity.NOTE,
                "as low as can be",
                taken(amount, taken, "a day")
                        + "it belongs to the substances that can damage genes, and no amount of it counts as harmless ("
                        + origin(row) + ")." + told,
                "Use as little as can be of what brings it.",
                "as low as can be");
    }

    /** Returns how many times the day's most goes into the dose that harmed one animal in ten; empty where the row names no such dose. */
    private static OptionalDouble margin(Knowledge.Guidance row, Range taken, Serving serving) {
        boolean named = row.kind().contains("BMDL10") && row.unit().startsWith("mg/kg bw/day");
        return named && taken.most() > 0.0
                ? OptionalDouble.of(Double.parseDouble(row.value()) * serving.bodyKilograms() / taken.most())
                : OptionalDouble.empty();
    }

    private static String taken(Amount amount, Range taken, String per) {
        String name = amount.watched().name();
        String upper = Character.toUpperCase(name.charAt(0)) + name.substring(1);
        if (amount.from().isEmpty()) {
            return upper + ": how much there is, is not known; ";
        }
        return upper + ": " + taken.told() + " mg " + per
                + (amount.isKnown() ? "" : " of what is known, the rest is not") + "; ";
    }

    private static String origin(Knowledge.Guidance row) {
        return row.kind() + ", " + row.body() + (row.year().isEmpty() ? "" : ", " + row.year())
                + (row.status().mayClear() ? "" : "; from memory");
    }

    private static Finding finding(
            Amount amount,
            Knowledge.Guidance row,
            Severity severity,
            String verdict,
            String message,
            String remedy,
            String limit) {
        return new Finding(
                "intake",
                severity,
                amount.where(),
                "",
                verdict,
                message,
                Limit.howSure(amount),
                remedy,
                limit,
                Sources.intake(row.status()));
    }
}
