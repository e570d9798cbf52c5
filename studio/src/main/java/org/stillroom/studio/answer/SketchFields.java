package org.stillroom.studio.answer;

import java.util.List;
import java.util.OptionalDouble;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Sketch;

/** A recipe in bare numbers as fields, such as a browser reads to work with it. */
public final class SketchFields {
    private SketchFields() {}

    public static Fields of(Sketch sketch) {
        List<Fields> lines = sketch.lines().stream().map(SketchFields::line).toList();
        Fields asked = new Fields();
        sketch.asked()
                .forEach((what, span) -> asked.put(
                        what.label(), new Fields().put("low", span.low()).put("high", span.high())));
        return new Fields()
                .put("lines", lines)
                .put("asked", asked)
                .put("sugar_basis", sketch.sugarBasis().label())
                .put("without_aim", sketch.withoutAim());
    }

    private static Fields line(Sketch.Line line) {
        Fields fields = new Fields()
                .put("per_gram", contents(line.perGram()))
                .put("fixed_g", line.fixed())
                .put("dose_g_per_ml", line.dose())
                .put("cost_per_g", line.cost());
        orNone(
                fields,
                "room_g",
                Double.isInfinite(line.room()) ? OptionalDouble.empty() : OptionalDouble.of(line.room()));
        orNone(fields, "density_g_per_ml", line.gramsPerMillilitre());
        return fields;
    }

    private static Fields contents(Contents contents) {
        Fields fields = new Fields();
        for (Substance substance : Substance.values()) {
            if (contents.grams(substance) > 0.0) {
                fields.put(substance.label().replace(' ', '_'), contents.grams(substance));
            }
        }
        return fields;
    }

    private static void orNone(Fields fields, String key, OptionalDouble value) {
        if (value.isPresent()) {
            fields.put(key, value.getAsDouble());
        } else {
            fields.putNone(key);
        }
    }
}
