package org.stillroom.studio.answer.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.HydrometerScale;
import org.stillroom.core.gauging.Shown;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.recipe.MeasureKind;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.answer.desk.CalibrateQuestion.Calibration;
import org.stillroom.studio.usecase.CalibrateInstrument.Former;
import org.stillroom.studio.usecase.shelf.GaugeKind;

/** The question of calibrating, asked of an instrument on the shelf: what its sheet says need not be typed again. */
public final class OwnCalibration {
    private static final String BARE = "[-−+.,0-9]+";

    private final String kind;
    private final Map<String, String> fields;
    private final @Nullable Former former;

    /**
     * @param kind of the instrument
     * @param fields what is written about it
     * @param former what it was found to show too much before, or null
     */
    public OwnCalibration(String kind, Map<String, String> fields, @Nullable Former former) {
        this.kind = kind;
        this.fields = Map.copyOf(fields);
        this.former = former;
    }

    /** Returns the question that is asked of it. */
    public CalibrateQuestion question() {
        return new CalibrateQuestion(former);
    }

    /** Returns the parts of the question that are asked of such an instrument; none where it is not calibrated. */
    public static List<String> asked(String kind) {
        if (kind.equals(MeasureKind.DROPPER.label())) {
            return List.of(CalibrateQuestion.DROPS, CalibrateQuestion.WEIGHED);
        }
        return GaugeKind.of(kind)
                .map(gauge -> switch (gauge) {
                    case HYDROMETER ->
                        List.of(CalibrateQuestion.HYDROMETER, CalibrateQuestion.IN, CalibrateQuestion.TEMPERATURE);
                    case REFRACTOMETER ->
                        List.of(CalibrateQuestion.REFRACTOMETER, CalibrateQuestion.IN, CalibrateQuestion.TEMPERATURE);
                    case FLASK ->
                        List.of(
                                CalibrateQuestion.EMPTY,
                                CalibrateQuestion.FULL,
                                CalibrateQuestion.TEMPERATURE,
                                CalibrateQuestion.MARKS);
                    case THERMOMETER -> List.of(CalibrateQuestion.THERMOMETER, CalibrateQuestion.TRUE);
                })
                .orElse(List.of());
    }

    /**
     * Returns what was found.
     *
     * @param typed texts by the parts that are asked of it
     * @throws WrongInput when it cannot be told because of what was typed
     */
    public Calibration found(Map<String, List<String>> typed, Manner manner) {
        Calibration found = question().found(whole(typed), manner);
        String unit = unit();
        if (unit != null && !unit.equals(found.unit())) {
            throw new WrongInput(List.of(Finding.of(
                    "other-scale",
                    Severity.STOP,
                    manner.name(kind),
                    "other scale",
                    "It was read in " + found.unit() + ", and its scale is " + unit + ".",
                    "Write what it shows on its own scale.")));
        }
        return found;
    }

    /** Returns the unit of its scale, where it may be read on others. */
    private @Nullable String unit() {
        Optional<GaugeKind> gauge = GaugeKind.of(kind);
        if (gauge.isPresent() && gauge.get() == GaugeKind.REFRACTOMETER) {
            return Shown.REFRACTOMETER.unit();
        }
        return gauge.isPresent() && gauge.get() == GaugeKind.HYDROMETER
                ? HydrometerScale.of(field(GaugeKind.SCALE), basis())
                        .map(Shown::unit)
                        .orElse(null)
                : null;
    }

    private VolumeBasis basis() {
        return field(GaugeKind.REFERENCE).strip().startsWith("15") ? VolumeBasis.AT_15C : VolumeBasis.AT_20C;
    }

    private String field(String key) {
        return fields.getOrDefault(key, "");
    }

    /** Returns those of the texts that are asked of such an instrument. */
    public Map<String, List<String>> typedOf(Map<String, List<String>> typed) {
        Map<String, List<String>> own = new LinkedHashMap<>(typed);
        own.keySet().retainAll(asked(kind));
        return own;
    }

    /** Returns them with what its sheet says. */
    public Map<String, List<String>> whole(Map<String, List<String>> typed) {
        Map<String, List<String>> whole = typedOf(typed);
        GaugeKind.of(kind).ifPresent(gauge -> {
            switch (gauge) {
                case HYDROMETER -> {
                    onScale(whole, CalibrateQuestion.HYDROMETER, field(GaugeKind.SCALE));
                    put(whole, GaugeKind.REFERENCE, field(GaugeKind.REFERENCE));
                }
                case REFRACTOMETER -> {
                    onScale(whole, CalibrateQuestion.REFRACTOMETER, "Bx");
                    put(whole, GaugeKind.COMPENSATED, GaugeKind.isYes(field(GaugeKind.COMPENSATED)) ? "yes" : "");
                }
                case FLASK -> put(whole, CalibrateQuestion.FLASK, field(GaugeKind.HOLDS));
                case THERMOMETER -> {
                    onScale(whole, CalibrateQuestion.THERMOMETER, "C");
                    onScale(whole, CalibrateQuestion.TRUE, "C");
                }
            }
            put(whole, CalibrateQuestion.MARKS, field(GaugeKind.MARKS));
        });
        return whole;
    }

    private static void put(Map<String, List<String>> whole, String part, String text) {
        if (!text.isBlank()) {
            whole.putIfAbsent(part, List.of(text));
        }
    }

    /** A bare number is on the instrument's own scale. */
    private static void onScale(Map<String, List<String>> whole, String part, String scale) {
        List<String> texts = new ArrayList<>();
        for (String text : whole.getOrDefault(part, List.of())) {
            texts.add(text.strip().matches(BARE) ? text.strip() + " " + scale : text);
        }
        if (!texts.isEmpty()) {
            whole.put(part, texts);
        }
    }
}
