package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.drops.DropWeighings;
import org.stillroom.core.gauging.Calibrated;
import org.stillroom.core.gauging.Shown;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;

/** Tells what a maker's own instrument does, against water or something else that is known. */
public final class CalibrateInstrument {
    /** From so many usual errors on, it is asked whether something went wrong. */
    private static final double FAR = 5.0;
    /** A flask further from its mark than this part of it is asked about: classes of glassware lie within 0.3 %. */
    private static final double FAR_FLASK = 0.02;

    private CalibrateInstrument() {}

    /**
     * What was found.
     *
     * @param calibrated of a flask its volume, mL at 20 °C; of a dropper what its drop of water weighs, mg; of all others what they
     *     show too much, in their own unit
     * @param offset what it shows too much; of a flask mL at its mark, of a dropper nothing
     * @param within how far it may be off once that is taken off, read to half of its mark
     * @param findings what to know
     */
    public record Found(Calibrated calibrated, double offset, double within, List<Finding> findings) {
        public Found {
            findings = List.copyOf(findings);
        }
    }

    /**
     * What the instrument was found to show too much before, elsewhere on its scale.
     *
     * @param day on which, such as 2026-11-26
     * @param in what it stood in, as typed
     */
    public record Former(String day, String in, Calibrated calibrated) {}

    /**
     * Returns what an instrument shows too much of a liquid that is known.
     *
     * @param former what it showed too much in another liquid, or null
     */
    public static Found inLiquid(
            Calibrated.Known known,
            Shown shown,
            List<Double> reads,
            double halfMark,
            Temperature at,
            @Nullable Former former,
            Workings workings) {
        Range.refuseOutside(at);
        Calibrated offset = Calibrated.in(known, shown, reads, halfMark, at);
        workings.step("what it shows, on the mean", mean(reads), shown.unit(), Source.BALANCE);
        workings.step("what it should show", mean(reads) - offset.value(), shown.unit(), Source.VOLUME_MODEL);
        workings.step("what it shows too much", offset.value(), shown.unit(), Source.VOLUME_MODEL);
        List<Finding> findings = findings(offset, shown.usualHalfWidth(reads.get(0)));
        findings.add(former == null ? atOnePoint() : beside(former, offset, shown));
        return new Found(offset, offset.value(), offset.whenRead(halfMark), findings);
    }

    private static Finding atOnePoint() {
        return Finding.of(
                "calibrated-at-one-point",
                Severity.NOTE,
                "",
                "",
                "It is known at this one point of the scale, and taken for the same along all of it.",
                "A second one, such as sugar weighed into water to 10\u00a0°Bx, tells whether it is.");
    }

    /** Returns whether it is off alike at two points of its scale; independent errors add as their squares. */
    private static Finding beside(Former former, Calibrated now, Shown shown) {
        double apart = Math.abs(now.value() - former.calibrated().value());
        boolean alike = apart <= Math.hypot(now.halfWidth(), former.calibrated().halfWidth());
        String then = "In " + former.in() + " it showed " + offset(former.calibrated(), shown) + " too much ("
                + former.day() + "), here " + offset(now, shown) + ": ";
        return alike
                ? Finding.of(
                        "calibrations-alike",
                        Severity.NOTE,
                        "",
                        "alike",
                        then + "the same within their doubt.",
                        "It may be taken for the same along the scale.")
                : Finding.of(
                        "calibrations-apart",
                        Severity.CAUTION,
                        "",
                        "not alike",
                        then + "more apart than their doubt allows, so that it is not off alike along its scale.",
                        "Keep the one in the liquid that is nearer to what you will read, and count on less elsewhere.");
    }

    private static String offset(Calibrated calibrated, Shown shown) {
        return QuantityWords.fixed(calibrated.value(), shown.decimals() + 1);
    }

    /** Returns what a thermometer shows too much. */
    public static Found thermometer(
            Temperature truth, double ofTruth, List<Double> reads, double halfMark, Workings workings) {
        Calibrated offset = Calibrated.thermometer(truth, ofTruth, reads, halfMark);
        workings.step("what it shows, on the mean", mean(reads), "°C", Source.BALANCE);
        workings.step("what it shows too much", offset.value(), "°C", Source.BALANCE);
        return new Found(offset, offset.value(), offset.whenRead(halfMark), findings(offset, 1.0));
    }

    /** Returns by how much the mark of a flask says too much. */
    public static Found flask(
            Volume mark, Mass empty, List<Mass> full, double halfMark, Temperature at, Workings workings) {
        Range.refuseOutside(at);
        if (full.stream().anyMatch(each -> !(each.grams() > empty.grams()))) {
            throw new Impossible(
                    "full", "full of water it weighs no more than empty.", "Weigh it dry and empty, then full.");
        }
        Calibrated volume = Calibrated.flask(empty, full, halfMark, at);
        double water = mean(full.stream().map(Mass::grams).toList()) - empty.grams();
        workings.step("water in it, as weighed in air", water, "g", Source.BALANCE);
        workings.step("volume of a gram weighed so", volume.value() / water, "mL at 20 °C", Source.OIML_R22);
        workings.step("volume of the flask", volume.value(), "mL at 20 °C", Source.GLASS_EXPANSION);
        Calibrated offset = new Calibrated(mark.millilitres() - volume.value(), volume.halfWidth());
        List<Finding> findings = findings(offset, FAR_FLASK * mark.millilitres() / FAR);
        return new Found(volume, offset.value(), volume.halfWidth(), findings);
    }

    /** Returns what a drop of water weighs, mg; the half-width is that of the central 90 %. */
    public static Found dropper(DropWeighings weighings, Workings workings) {
        double milligrams = 1000.0 * weighings.gramsPerDrop();
        workings.step("a run of drops, on the mean", mean(weighings.grams()), "g", Source.BALANCE);
        workings.step("a drop of water", milligrams, "mg", Source.BALANCE);
        Calibrated drop = new Calibrated(milligrams, weighings.doubt() * milligrams);
        List<Finding> findings = new ArrayList<>();
        weighings.inconsistent().forEach(run -> findings.add(WeighDrops.inconsistent(run, weighings)));
        return new Found(drop, 0.0, drop.halfWidth(), findings);
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(each -> each).average().orElseThrow();
    }

    private static List<Finding> findings(Calibrated offset, double usual) {
        List<Finding> findings = new ArrayList<>();
        if (!offset.tellsAnOffset()) {
            findings.add(Finding.of(
                    "calibration-tells-none",
                    Severity.NOTE,
                    "",
                    "right",
                    "What it shows too much is less than this calibration can tell from nothing.",
                    "It may be taken as right; a finer scale or more readings tell more."));
        }
        if (Math.abs(offset.value()) > FAR * usual) {
            findings.add(Finding.of(
                    "calibration-far-off",
                    Severity.CAUTION,
                    "",
                    "far off",
                    "It is off by much more than such instruments are.",
                    "Look again at scale, unit, temperature and what it stood in before you keep this."));
        }
        return findings;
    }
}
