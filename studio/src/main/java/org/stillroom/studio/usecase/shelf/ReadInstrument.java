package org.stillroom.studio.usecase.shelf;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.recipe.Measure;
import org.stillroom.core.recipe.MeasureKind;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.recipefile.SheetProblem;
import org.stillroom.studio.recipefile.SheetReader;
import org.stillroom.studio.recipefile.SheetReading;
import org.stillroom.studio.store.InstrumentSheet;

/** Reads what somebody typed about a thing to measure with, or an empty jar. */
public final class ReadInstrument {
    /** The kind of an empty jar. */
    public static final String JAR = "jar";

    private static final String TARE = "tare";
    private static final String HOLDS = "holds";

    private ReadInstrument() {}

    /** Returns the keys that are asked about a kind, and an example of each. */
    public static Map<String, String> asked(String kind) {
        if (GaugeKind.of(kind).isPresent()) {
            return GaugeKind.of(kind).get().asked();
        }
        Map<String, String> asked = new LinkedHashMap<>();
        if (kind.equals(JAR)) {
            asked.put(TARE, "312 g");
            asked.put(HOLDS, "500 ml");
        } else if (kind.equals(MeasureKind.SCALE.label())) {
            asked.put("marks", "0.1 g");
            asked.put("tolerance", "0.1 g");
            asked.put(HOLDS, "3 kg");
        } else if (kind.equals(MeasureKind.CYLINDER.label()) || kind.equals(MeasureKind.SYRINGE.label())) {
            asked.put("marks", "0.2 ml");
            asked.put("tolerance", "0.1 ml");
            asked.put(HOLDS, "10 ml");
        } else if (kind.equals(MeasureKind.DROPPER.label())) {
            asked.put("drop", "46 mg");
        } else {
            asked.put("sizes", "15 ml; 30 ml");
            asked.put("tolerance", "1 ml");
        }
        return asked;
    }

    /** Returns what was typed in, or everything that is wrong with it. */
    public static SheetReading<InstrumentSheet> answer(
            String name, String kind, Map<String, String> typed, String note, OunceMeaning ounce) {
        Map<String, String> fields = new LinkedHashMap<>();
        typed.forEach((key, text) -> {
            if (!text.isBlank()) {
                fields.put(key, text.strip());
            }
        });
        List<SheetProblem> problems = new ArrayList<>();
        if (name.isBlank()) {
            problems.add(missing("name", "It has no name.", "Write what you call it, such as “kitchen scale”."));
        }
        problems.addAll(GaugeKind.of(kind)
                .map(gauge -> gauge.problems(fields, ounce))
                .orElseGet(() -> kind.equals(JAR) ? ofJar(fields, ounce) : ofMeasure(name, kind, fields, ounce)));
        return problems.isEmpty()
                ? new SheetReading.Understood<>(
                        new InstrumentSheet(name.strip(), kind, fields, note.isBlank() ? null : note.strip()),
                        List.of())
                : new SheetReading.Refused<>(problems);
    }

    private static List<SheetProblem> ofMeasure(
            String name, String kind, Map<String, String> fields, OunceMeaning ounce) {
        String called = name.isBlank() ? "this" : name;
        SheetReading<Measure> reading = new SheetReader(ounce).measure(called, kind, fields);
        return reading instanceof SheetReading.Refused<Measure> refused ? refused.problems() : List.of();
    }

    private static List<SheetProblem> ofJar(Map<String, String> fields, OunceMeaning ounce) {
        List<SheetProblem> problems = new ArrayList<>();
        if (!fields.containsKey(TARE)) {
            problems.add(missing(
                    TARE,
                    "What the empty jar weighs is not said.",
                    "Weigh it with its lid, and write it such as 312 g."));
        }
        problems.addAll(problem(TARE, fields, QuantityText::mass, "“312 g”", ounce));
        problems.addAll(problem(HOLDS, fields, QuantityText::volume, "“500 ml”", ounce));
        return problems;
    }

    private static <Q> List<SheetProblem> problem(
            String key,
            Map<String, String> fields,
            BiFunction<QuantityText, String, Understanding<Q>> how,
            String example,
            OunceMeaning ounce) {
        String text = fields.getOrDefault(key, "");
        if (text.isEmpty()) {
            return List.of();
        }
        SheetReading<Typed<Q>> reading = new SheetReader(ounce).quantity(key, text, how, example);
        return reading instanceof SheetReading.Refused<Typed<Q>> refused ? refused.problems() : List.of();
    }

    private static SheetProblem missing(String key, String message, String remedy) {
        return new SheetProblem(key, Finding.of("field-missing", Severity.STOP, key, "missing", message, remedy));
    }

    /** Returns whether a kind is one that a recipe is measured with; jars and what gauges a vessel are not. */
    public static boolean isMeasure(String kind) {
        return !kind.equals(JAR) && GaugeKind.of(kind).isEmpty();
    }
}
