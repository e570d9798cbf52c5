package org.stillroom.studio.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.stillroom.core.aroma.ConstituentGroup;
import org.stillroom.core.clarity.OilPart;
import org.stillroom.core.clarity.OilParts;
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
                .put("oil_parts", oilParts(sketch))
                .put("asked", asked)
                .put("sugar_basis", sketch.sugarBasis().label())
                .put("without_aim", sketch.withoutAim());
    }

    /** Returns what is known of each constituent of the lines' oils. */
    private static List<Fields> oilParts(Sketch sketch) {
        Set<String> keys = new TreeSet<>();
        for (Sketch.Line line : sketch.lines()) {
            if (line.perGram().grams(Substance.OIL) > 0.0) {
                keys.add(ConstituentGroup.UNKNOWN.label());
                keys.addAll(line.perGram().aroma().keySet());
            }
        }
        List<Fields> parts = new ArrayList<>();
        for (String key : keys) {
            OilPart part = OilParts.of(key);
            parts.add(new Fields()
                    .put("key", key)
                    .put("g_per_mol", part.gramsPerMole())
                    .put("g_per_l_in_water", part.gramsPerLitreInWater())
                    .put("log_p", part.logP())
                    .put("g_per_ml", part.gramsPerMillilitre()));
        }
        return parts;
    }

    private static List<Fields> oilShares(Contents perGram) {
        List<Fields> shares = new ArrayList<>();
        perGram.aroma()
                .forEach((key, grams) ->
                        shares.add(new Fields().put("key", key).put("share", grams / perGram.grams(Substance.OIL))));
        return shares;
    }

    private static Fields line(Sketch.Line line) {
        Fields fields = new Fields()
                .put("per_gram", contents(line.perGram()))
                .put("oil_shares", oilShares(line.perGram()))
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
