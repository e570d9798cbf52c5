package org.stillroom.studio.usecase.shelf;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.MeasureKind;
import org.stillroom.studio.store.Calibration;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.InstrumentSheet;
import org.stillroom.studio.usecase.Impossible;

/**
 * What the maker's own instruments say to the question of gauging: its texts of what each shows too much and within what it is right,
 * from their calibration or, without one, from what their maker states. What is typed beside them comes first.
 */
public final class OwnInstruments {
    /** Kinds that can be chosen for gauging, in the order in which they are offered. */
    public static final List<String> KINDS = kinds();

    private static final String OFFSET = "offset";
    private static final String WITHIN = "within";
    /** A figure keeps so many digits, more than any instrument shows. */
    private static final MathContext DIGITS = new MathContext(6);

    private final OunceMeaning ounce;

    public OwnInstruments(OunceMeaning ounce) {
        this.ounce = ounce;
    }

    private static List<String> kinds() {
        List<String> kinds = new ArrayList<>();
        for (GaugeKind kind : GaugeKind.values()) {
            kinds.add(kind.label());
        }
        kinds.add(MeasureKind.SCALE.label());
        return List.copyOf(kinds);
    }

    /** Returns those of a shelf that can be chosen. */
    public static List<Instrument> choices(List<Instrument> shelf) {
        return shelf.stream()
                .filter(each -> KINDS.contains(each.sheet().kind()))
                .toList();
    }

    /**
     * Returns those that are meant, each by its id or its name.
     *
     * @param part of the question that names them
     * @param choices those that can be meant
     * @throws Impossible when one is not among them
     */
    public static List<Instrument> named(String part, List<String> names, List<Instrument> choices) {
        List<Instrument> named = new ArrayList<>();
        for (String name : names) {
            named.add(choices.stream()
                    .filter(each -> each.id().equals(name.strip())
                            || each.sheet().name().equalsIgnoreCase(name.strip()))
                    .findFirst()
                    .orElseThrow(() -> new Impossible(
                            part,
                            "there is no such instrument “" + name + "” on the shelf.",
                            choices.isEmpty()
                                    ? "Put your hydrometer, refractometer, flask or thermometer on the shelf first."
                                    : "Name one of: "
                                            + String.join(
                                                    ", ",
                                                    choices.stream()
                                                            .map(each ->
                                                                    each.sheet().name())
                                                            .toList())
                                            + ".")));
        }
        return named;
    }

    /**
     * Returns what was typed, with what the chosen instruments add to it.
     *
     * @param typed texts by the parts of the question
     * @throws Impossible when two of them would say different things of one reading
     */
    public Map<String, List<String>> with(List<Instrument> chosen, Map<String, List<String>> typed) {
        Map<String, List<String>> all = new LinkedHashMap<>(typed);
        Set<String> taken = new LinkedHashSet<>();
        for (Instrument instrument : chosen) {
            InstrumentSheet sheet = instrument.sheet();
            String scale = scale(sheet);
            if (!taken.add(part(sheet) + " " + scale)) {
                throw new Impossible(
                        "instrument",
                        "two of the instruments would tell of one reading, “" + sheet.name() + "” among them.",
                        "Choose the one that was read.");
            }
            if (isRead(sheet, typed)) {
                what(sheet).forEach((part, text) -> all.putIfAbsent(part, List.of(text)));
            }
            String unit = scale.isEmpty() ? "" : " " + scale;
            Calibration calibration = sheet.calibration();
            if (calibration != null) {
                add(all, OFFSET, part(sheet) + "=" + number(offset(sheet, calibration)) + unit);
            }
            within(sheet, calibration).ifPresent(half -> add(all, WITHIN, part(sheet) + "=" + half + unit));
        }
        return all;
    }

    /** Returns whether something was read with it; a flask is read by what it weighs. */
    private static boolean isRead(InstrumentSheet sheet, Map<String, List<String>> typed) {
        return typed.containsKey(sheet.kind().equals(GaugeKind.FLASK.label()) ? "flask-weight" : part(sheet));
    }

    /** Returns the part of the question that an instrument tells. */
    private static String part(InstrumentSheet sheet) {
        return sheet.kind().equals(MeasureKind.SCALE.label())
                ? "flask-weight"
                : sheet.kind().equals(GaugeKind.THERMOMETER.label()) ? "temperature" : sheet.kind();
    }

    private static String scale(InstrumentSheet sheet) {
        return sheet.kind().equals(GaugeKind.HYDROMETER.label())
                ? sheet.fields().getOrDefault(GaugeKind.SCALE, "")
                : "";
    }

    /** Returns what the kind of instrument says by itself. */
    private static Map<String, String> what(InstrumentSheet sheet) {
        Map<String, String> what = new LinkedHashMap<>();
        GaugeKind.of(sheet.kind()).ifPresent(kind -> {
            switch (kind) {
                case HYDROMETER -> put(what, GaugeKind.REFERENCE, sheet.fields().get(GaugeKind.REFERENCE));
                case REFRACTOMETER -> {
                    boolean compensates = GaugeKind.isYes(sheet.fields().getOrDefault(GaugeKind.COMPENSATED, ""));
                    put(what, GaugeKind.COMPENSATED, compensates ? GaugeKind.YES.get(0) : null);
                }
                case FLASK -> put(what, GaugeKind.FLASK.label(), sheet.fields().get(GaugeKind.HOLDS));
                case THERMOMETER -> {}
            }
        });
        return what;
    }

    private static void put(Map<String, String> what, String part, @Nullable String text) {
        if (text != null) {
            what.put(part, text);
        }
    }

    private double offset(InstrumentSheet sheet, Calibration calibration) {
        return sheet.kind().equals(GaugeKind.FLASK.label())
                ? millilitres(sheet.fields().getOrDefault(GaugeKind.HOLDS, "")).orElse(calibration.value())
                        - calibration.value()
                : calibration.value();
    }

    private Optional<Double> millilitres(String text) {
        return new QuantityText(ounce).volume(text) instanceof Understanding.Understood<Volume> understood
                ? Optional.of(understood.typed().value().millilitres())
                : Optional.empty();
    }

    /** Returns within what it is right: by its calibration and half of its mark, else as its maker states it. */
    private Optional<String> within(InstrumentSheet sheet, @Nullable Calibration calibration) {
        if (calibration != null) {
            double mark = sheet.kind().equals(GaugeKind.FLASK.label())
                    ? 0.0
                    : figure(sheet.fields().getOrDefault(GaugeKind.MARKS, "")).orElse(2.0 * calibration.halfWidth());
            return Optional.of(number(Math.hypot(calibration.halfWidth(), 0.5 * mark)));
        }
        return figure(sheet.fields().getOrDefault(GaugeKind.TOLERANCE, "")).map(OwnInstruments::number);
    }

    /** Returns the figure of a text, in g or mL where it has a unit. */
    private Optional<Double> figure(String text) {
        QuantityText quantities = new QuantityText(ounce);
        if (quantities.number(text) instanceof Understanding.Understood<Double> bare) {
            return Optional.of(bare.typed().value());
        }
        return millilitres(text)
                .or(() -> quantities.mass(text) instanceof Understanding.Understood<Mass> mass
                        ? Optional.of(mass.typed().value().grams())
                        : Optional.empty());
    }

    private static void add(Map<String, List<String>> all, String part, String text) {
        List<String> texts = new ArrayList<>(all.getOrDefault(part, List.of()));
        texts.add(text);
        all.put(part, texts);
    }

    private static String number(double value) {
        return new BigDecimal(value).round(DIGITS).stripTrailingZeros().toPlainString();
    }
}
