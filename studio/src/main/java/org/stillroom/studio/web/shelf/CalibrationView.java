package org.stillroom.studio.web.shelf;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Calibrated;
import org.stillroom.core.gauging.HydrometerScale;
import org.stillroom.core.gauging.Shown;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.recipe.MeasureKind;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.answer.desk.CalibrateQuestion;
import org.stillroom.studio.answer.desk.OwnCalibration;
import org.stillroom.studio.recipefile.SheetProblem;
import org.stillroom.studio.store.Calibration;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.InstrumentSheet;
import org.stillroom.studio.usecase.shelf.GaugeKind;
import org.stillroom.studio.wording.Words;

/**
 * What the page of a calibration shows.
 *
 * @param instrument that is calibrated
 * @param typed what was read, by field
 * @param found what that tells, or null
 * @param problems with what was typed
 * @param words of the reader
 */
public record CalibrationView(
        Instrument instrument,
        Map<String, List<String>> typed,
        CalibrateQuestion.@Nullable Calibration found,
        List<Finding> problems,
        Words words) {
    public CalibrationView {
        problems = List.copyOf(problems);
    }

    /** Returns whether an instrument can be calibrated. */
    static boolean isFor(InstrumentSheet sheet) {
        return !OwnCalibration.asked(sheet.kind()).isEmpty();
    }

    public String kind() {
        return instrument.sheet().kind();
    }

    /** Returns the fields with what was typed into them. */
    public List<FormField> fields() {
        return OwnCalibration.asked(kind()).stream().map(this::field).toList();
    }

    private FormField field(String part) {
        return new FormField(
                part,
                words.say("shelf.calibrate.field." + part),
                words.say("shelf.calibrate.help." + part),
                "",
                String.join("; ", typed.getOrDefault(part, List.of())),
                false,
                problems.stream()
                        .filter(problem -> problem.where().equals(part))
                        .map(problem -> new SheetProblem(part, problem))
                        .toList());
    }

    /** Returns what is wrong with no single field. */
    public List<Finding> otherProblems() {
        List<String> fields = OwnCalibration.asked(kind());
        return problems.stream()
                .filter(problem -> !fields.contains(problem.where()))
                .toList();
    }

    /** Returns what was found, in a sentence. */
    public String says() {
        return found == null ? "" : says(instrument.sheet(), found.found().calibrated(), words);
    }

    /** Returns what is kept of an instrument, in sentences; empty where it is not calibrated. */
    static String kept(InstrumentSheet sheet, Words words) {
        Calibration calibration = sheet.calibration();
        return calibration == null
                ? ""
                : words.say(
                        sheet.kind().equals(MeasureKind.DROPPER.label())
                                ? "shelf.calibrate.keptDrop"
                                : "shelf.calibrate.kept",
                        words.day(LocalDate.parse(calibration.day())),
                        says(sheet, new Calibrated(calibration.value(), calibration.halfWidth()), words));
    }

    private static String says(InstrumentSheet sheet, Calibrated calibrated, Words words) {
        int decimals = decimals(sheet);
        String doubt = words.number(calibrated.halfWidth(), decimals);
        if (sheet.kind().equals(GaugeKind.FLASK.label())) {
            return words.say("shelf.calibrate.holds", words.number(calibrated.value(), decimals), doubt);
        }
        if (sheet.kind().equals(MeasureKind.DROPPER.label())) {
            return words.say("shelf.calibrate.drop", words.number(calibrated.value(), decimals), doubt);
        }
        return words.say(
                calibrated.value() >= 0.0 ? "shelf.calibrate.tooMuch" : "shelf.calibrate.tooLittle",
                words.number(Math.abs(calibrated.value()), decimals),
                unit(sheet),
                doubt);
    }

    private static int decimals(InstrumentSheet sheet) {
        Shown shown = shown(sheet);
        int plain = sheet.kind().equals(MeasureKind.DROPPER.label()) ? 1 : 2;
        return shown == null ? plain : shown.decimals() + 1;
    }

    private static String unit(InstrumentSheet sheet) {
        Shown shown = shown(sheet);
        return shown == null ? "°C" : shown.unit();
    }

    private static @Nullable Shown shown(InstrumentSheet sheet) {
        if (sheet.kind().equals(GaugeKind.REFRACTOMETER.label())) {
            return Shown.REFRACTOMETER;
        }
        return sheet.kind().equals(GaugeKind.HYDROMETER.label())
                ? HydrometerScale.of(sheet.fields().getOrDefault(GaugeKind.SCALE, ""), VolumeBasis.AT_20C)
                        .orElse(null)
                : null;
    }
}
