package org.stillroom.studio.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Material;
import org.stillroom.core.aroma.Material.Analysis;
import org.stillroom.core.aroma.Material.Range;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.reference.Standing;

/** A row of the table of materials as fields: the groups of figures each by itself. */
public final class MaterialFields {
    private static final Shape PERCENT = Shape.group(
            Shape.text("key", "CAS number, or the name of a sum"),
            Shape.text("name", "of the constituent"),
            Shape.number("least_percent", "%"),
            Shape.number("most_percent", "%"));

    private static final Shape RANGE = Shape.group(
            new Shape.Key("least", new Shape.MaybeAmount("")),
            new Shape.Key("most", new Shape.MaybeAmount("")),
            Shape.text("basis", "of what, at which temperature: d20/20 and SG are relative to water, d20 is g/mL"),
            Shape.text("status", "how it came to us, or empty"));

    /** Where they stand in an answer, and what stands there. */
    public static final Shape.Key KEY = new Shape.Key(
            "materials",
            new Shape.ListOf(Shape.group(
                    Shape.text("name", "by which recipes call it"),
                    new Shape.Key("aliases", new Shape.ListOf(new Shape.Text("another name"))),
                    Shape.text("kind", "oil, plant or extract"),
                    Shape.text("title", "in full"),
                    Shape.text("botanical", "name of the plant"),
                    Shape.text("part", "of the plant, and the process"),
                    Shape.text("cas", "number of the material, or empty"),
                    Shape.text("standard", "that describes it, or empty"),
                    Shape.text("note", "what else is to know, or empty"),
                    new Shape.Key("density", RANGE),
                    new Shape.Key("refractive_index", RANGE),
                    new Shape.Key(
                            "analyses",
                            new Shape.ListOf(Shape.group(
                                    Shape.text("group", "who states the figures"),
                                    Shape.text("status", "how they came to us"),
                                    new Shape.Key("constituents", new Shape.ListOf(PERCENT))))))));

    private MaterialFields() {}

    /** Returns the row; density and refraction are null where the table has none. */
    public static Fields of(Material material) {
        List<Fields> analyses = new ArrayList<>();
        material.analyses().forEach(analysis -> analyses.add(analysis(analysis)));
        @Nullable Standing standing = material.densityStanding();
        return new Fields()
                .put("name", material.name())
                .putTexts("aliases", material.aliases())
                .put("kind", material.kind().name().toLowerCase(Locale.ROOT))
                .put("title", material.title())
                .put("botanical", material.botanical())
                .put("part", material.part())
                .put("cas", material.cas())
                .put("standard", material.standard())
                .put("note", material.note())
                .put("density", range(material.density(), material.densityBasis(), standing))
                .put("refractive_index", range(material.refraction(), "20 °C", standing))
                .put("analyses", analyses);
    }

    private static Fields range(@Nullable Range range, String basis, @Nullable Standing standing) {
        return new Fields()
                .putOrNone("least", range == null ? null : (Double) range.low())
                .putOrNone("most", range == null ? null : (Double) range.high())
                .put("basis", basis)
                .put("status", range == null || standing == null ? "" : standing.label());
    }

    private static Fields analysis(Analysis analysis) {
        List<Fields> constituents = new ArrayList<>();
        for (Map.Entry<String, Range> part : analysis.percent().entrySet()) {
            constituents.add(new Fields()
                    .put("key", part.getKey())
                    .put("name", Materials.nameOf(part.getKey()))
                    .put("least_percent", part.getValue().low())
                    .put("most_percent", part.getValue().high()));
        }
        return new Fields()
                .put("group", analysis.group())
                .put("status", analysis.standing().label())
                .put("constituents", constituents);
    }
}
