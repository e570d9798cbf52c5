package org.stillroom.core.liquid;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** What a maker should know about the figures of a liquid; each rule is one method, and {@link #of} is the list in force. */
final class Cautions {
    /** Part of the volume from which a rule-of-thumb density is worth telling. */
    private static final double WORTH_TELLING = 1e-4;

    private final double[] grams;
    private final Temperature temperature;
    private final double millilitres;
    private final List<Finding> findings = new ArrayList<>();

    private Cautions(double[] grams, Temperature temperature, double millilitres) {
        this.grams = grams;
        this.temperature = temperature;
        this.millilitres = millilitres;
    }

    static List<Finding> of(double[] grams, Temperature temperature, double millilitresAt20, ModelDoubt doubt) {
        Cautions cautions = new Cautions(grams, temperature, millilitresAt20);
        cautions.strengthNotKnown(doubt);
        cautions.noWater();
        cautions.coldWithSolutes();
        cautions.fitsEnded();
        cautions.rulesOfThumb();
        cautions.sugarMayCrashOut();
        cautions.freezingTablesEnded();
        return cautions.findings;
    }

    private double grams(Substance substance) {
        return grams[substance.ordinal()];
    }

    private void strengthNotKnown(ModelDoubt doubt) {
        if (!doubt.known()) {
            findings.add(new Finding(
                    "strength-doubt-unknown",
                    Severity.CAUTION,
                    "",
                    "",
                    "not known",
                    "Nobody published densities of liquids this strong and this sweet; the strength may be off by at"
                            + " least 0.5 % vol, more likely too high.",
                    "not known",
                    "Have it distilled and measured where the strength matters.",
                    null,
                    Source.DOUBT_TABLE));
        }
    }

    private void noWater() {
        boolean dry = grams(Substance.WATER) == 0.0 && millilitres > 0.0 && grams(Substance.ETHANOL) < total();
        if (dry) {
            findings.add(Finding.of(
                    "no-water",
                    Severity.CAUTION,
                    "",
                    "no water",
                    "There is no water to dissolve anything in; the volume is that of the substances as if dissolved.",
                    "Add water, or weigh instead of measuring volume."));
        }
    }

    private double total() {
        double sum = 0.0;
        for (double each : grams) {
            sum += each;
        }
        return sum;
    }

    private void coldWithSolutes() {
        if (temperature.celsius() < 0.0 && grams(Substance.ETHANOL) + grams(Substance.WATER) < total()) {
            findings.add(new Finding(
                    "cold-volume",
                    Severity.NOTE,
                    "temperature",
                    "",
                    "outside its range",
                    "Sweetened liquids are known from 0 to 40 °C; the figures at " + roughly(temperature.celsius())
                            + " °C continue the formulas.",
                    "less sure than at room temperature",
                    "Measure at room temperature where it matters.",
                    "0 to 40 °C",
                    Source.ICUMSA_SPS4));
        }
    }

    private void fitsEnded() {
        for (Substance substance : Substance.values()) {
            double amount = grams(substance);
            if (substance.ordinal() > Substance.SUCROSE.ordinal() && amount > 0.0) {
                ApparentVolume volume = ApparentVolume.of(substance);
                double w = amount / (amount + grams(Substance.WATER));
                if (w > volume.fitEnd()) {
                    findings.add(fitEnded(substance, w, volume));
                }
            }
        }
    }

    private static Finding fitEnded(Substance substance, double w, ApparentVolume volume) {
        return new Finding(
                "density-fit-ended",
                Severity.NOTE,
                substance.label(),
                "",
                "value held",
                "Densities of " + substance.label() + " with water were read up to " + roughly(100.0 * volume.fitEnd())
                        + " % mass; here it is " + roughly(100.0 * w) + " %, and the last value is kept.",
                "its volume is good to about 4 %",
                "",
                roughly(100.0 * volume.fitEnd()) + " % mass",
                volume.source());
    }

    private void rulesOfThumb() {
        for (Substance substance : Substance.values()) {
            if (substance.ordinal() > Substance.SUCROSE.ordinal()
                    && grams(substance) > 0.0
                    && ApparentVolume.of(substance).ruleOfThumb()) {
                double part = VolumeModel.soluteDoubt(substance.ordinal(), grams(substance), grams(Substance.WATER))
                        / millilitres;
                if (part >= WORTH_TELLING) {
                    findings.add(ruleOfThumb(substance, part));
                }
            }
        }
    }

    private static Finding ruleOfThumb(Substance substance, double part) {
        return new Finding(
                "density-rule-of-thumb",
                Severity.NOTE,
                substance.label(),
                "",
                "rule of thumb",
                "No density table of " + substance.label()
                        + " was at hand; its volume is a rule of thumb, which leaves " + roughly(100.0 * part)
                        + " % of the whole volume open.",
                "its volume is good to about "
                        + roughly(100.0 * ApparentVolume.of(substance).doubt()) + " %",
                "Measure the density of the finished liquid.",
                null,
                Source.RULE_OF_THUMB);
    }

    private void sugarMayCrashOut() {
        if (grams(Substance.SUCROSE) == 0.0 || !SugarLimit.known(grams)) {
            return;
        }
        double limit = SugarLimit.of(grams).value();
        double sucrose = 1000.0 * grams(Substance.SUCROSE) / millilitres;
        if (sucrose > (1.0 - SugarLimit.MARGIN) * limit) {
            findings.add(new Finding(
                    "sugar-crash",
                    Severity.CAUTION,
                    "sucrose",
                    "",
                    sucrose > limit ? "will likely crystallise" : "may crystallise",
                    "It holds " + roughly(sucrose) + " g/L of sucrose; a spirit of this strength keeps about "
                            + roughly(limit) + " g/L dissolved at 14 °C.",
                    "advice only: the limit is from memory, so a fifth is kept as a margin",
                    "Use less sugar or less strength, or replace part of the sucrose by invert sugar or glucose syrup.",
                    roughly(limit) + " g/L",
                    Source.SOLUBILITY_IN_ALCOHOL));
        }
    }

    private void freezingTablesEnded() {
        if (grams(Substance.WATER) == 0.0) {
            return;
        }
        for (Substance substance : FreezingPoint.beyondTables(grams)) {
            findings.add(new Finding(
                    "freezing-table-ended",
                    Severity.NOTE,
                    substance.label(),
                    "",
                    "value held",
                    "The table of freezing points ends before so much " + substance.label()
                            + "; its last value is kept, so the liquid freezes at the figure shown or colder.",
                    "an upper bound",
                    "",
                    null,
                    Source.CRC_SOLUTIONS));
        }
    }

    /** About three digits that count. */
    private static String roughly(double value) {
        double scale = Math.abs(value) >= 100.0 ? 1.0 : Math.abs(value) >= 1.0 ? 10.0 : 1000.0;
        return QuantityWords.plain(Math.rint(value * scale) / scale);
    }
}
