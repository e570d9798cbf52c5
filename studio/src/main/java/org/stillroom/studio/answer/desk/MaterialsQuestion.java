package org.stillroom.studio.answer.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.EssentialOil;
import org.stillroom.core.aroma.Material;
import org.stillroom.core.aroma.Material.Analysis;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Standing;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.answer.MaterialFields;
import org.stillroom.studio.answer.Shape;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.Told.Name;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.TellMaterial;

/** Shows the table of materials: all of it by name, or one row whole, each group of figures by itself. */
final class MaterialsQuestion extends DeskQuestion {
    private static final String ANY = "any";
    private static final List<Name> ENDS =
            List.of(new Name("least", "at least", "", 3), new Name("most", "at most", "", 3));
    private static final List<Name> PERCENT = List.of(
            new Name("least_percent", "at least", "%", Name.AS_STATED),
            new Name("most_percent", "at most", "%", Name.AS_STATED));

    private final Grounds grounds;

    /** Makes the question of materials that are judged on these grounds. */
    MaterialsQuestion(Grounds grounds) {
        this.grounds = grounds;
    }

    @Override
    public String name() {
        return "materials";
    }

    @Override
    public String summary() {
        return "What oils, plants and extracts are made of: every range with who states it, density, refraction.";
    }

    @Override
    public List<Part> parts() {
        return List.of(
                Part.text("name", "of an oil, a plant or an extract, such as lemon; left out, all of them are listed"),
                Part.usual("kind", ANY, "what to list: any, oil, plant or extract")
                        .oneOf(
                                new Part.Choice(ANY, "all materials"),
                                new Part.Choice("oil", "oils alone"),
                                new Part.Choice("plant", "plants alone"),
                                new Part.Choice("extract", "extracts alone")));
    }

    @Override
    public List<Manner.Given> example() {
        return List.of(new Manner.Given("name", "coriander"));
    }

    @Override
    public List<String> figures() {
        return List.of();
    }

    @Override
    public List<Shape.Key> further() {
        return List.of(MaterialFields.KEY);
    }

    @Override
    Told tell(AskedTexts asked, Workings workings) {
        String name = asked.text("name");
        if (name != null) {
            TellMaterial.Found found = found(asked, name);
            asked.choice("kind", List.of(Wanted.values()), Wanted::text)
                    .filter(wanted -> !wanted.takes(found.material().kind()))
                    .ifPresent(wanted -> asked.object(
                            "kind",
                            "\"" + name.strip() + "\" is of another kind.",
                            "Leave the kind out; the name is enough."));
            asked.refuseIfAnyWrong();
            found.material().analyses().forEach(analysis -> step(analysis, workings));
            return one(found);
        }
        Optional<Wanted> wanted = asked.choice("kind", List.of(Wanted.values()), Wanted::text);
        asked.refuseIfAnyWrong();
        return all(wanted.orElseThrow());
    }

    /** What no row has may be told all the same to be none to drink. */
    private TellMaterial.Found found(AskedTexts asked, String name) {
        try {
            return TellMaterial.answer(name, grounds);
        } catch (Impossible none) {
            asked.object(none.part(), none.reason(), none.remedy());
            asked.objectsToDrinking("name", Ingredient.named(name, Kind.ESSENTIAL_OIL), grounds);
            asked.refuseIfAnyWrong();
            throw none;
        }
    }

    /** What is listed. */
    private enum Wanted {
        ANY,
        OIL,
        PLANT,
        EXTRACT;

        String text() {
            return name().toLowerCase(Locale.ROOT);
        }

        boolean takes(Material.Kind kind) {
            return this == ANY || name().equals(kind.name());
        }
    }

    private static Told all(Wanted wanted) {
        List<Material> listed = Materials.list().stream()
                .filter(material -> wanted.takes(material.kind()))
                .toList();
        Told told = new Told("Materials in the table: " + listed.size());
        for (Material.Kind kind : Material.Kind.values()) {
            List<Told.Next.Pick> picks = listed.stream()
                    .filter(material -> material.kind() == kind)
                    .map(material -> new Told.Next.Pick(material.name(), material.title()))
                    .toList();
            if (!picks.isEmpty()) {
                told.next(new Told.Next(heading(kind), "name", picks));
            }
        }
        return told.put(
                MaterialFields.KEY.name(),
                listed.stream().map(MaterialFields::of).toList());
    }

    private static String heading(Material.Kind kind) {
        return switch (kind) {
            case OIL -> "Oils";
            case PLANT -> "Plants";
            case EXTRACT -> "Extracts";
        };
    }

    private static Told one(TellMaterial.Found found) {
        Material material = found.material();
        Told told = new Told(material.title())
                .section("What it is", whatItIs(material))
                .section("What amounts are worked out with", counted(found.counted(), material))
                .put(MaterialFields.KEY.name(), List.of(MaterialFields.of(material)));
        @Nullable Standing standing = material.densityStanding();
        if (standing != null) {
            told.shown(new Told.Series(
                    "ranges", "Density and refraction: " + standing.label(), ENDS, densityAndRefraction(material)));
        }
        for (Analysis analysis : material.analyses()) {
            told.shown(new Told.Series("analyses", stated(analysis), PERCENT, lines(analysis)));
        }
        return told.findings(found.findings());
    }

    /** Whoever asks how, sees how much of the material each group accounts for. */
    private static void step(Analysis analysis, Workings workings) {
        boolean recalled = analysis.standing() == Standing.FROM_MEMORY;
        workings.step(
                "its constituents at their middles together, " + analysis.group(),
                analysis.middles(),
                "%",
                recalled ? Source.OIL_RANGES_RECALLED : Source.OIL_RANGES);
    }

    private static String stated(Analysis analysis) {
        return "Stated by " + analysis.group() + ": " + analysis.standing().label();
    }

    private static List<String> whatItIs(Material material) {
        List<String> told = new ArrayList<>();
        told.add("Botanical name " + material.botanical());
        told.add("Part and process: " + material.part());
        if (!material.cas().isEmpty()) {
            told.add("CAS number " + material.cas());
        }
        if (!material.standard().isEmpty()) {
            told.add("Described by " + material.standard());
        }
        if (!material.aliases().isEmpty()) {
            told.add("Found as " + material.name() + ", " + String.join(", ", material.aliases()));
        }
        if (!material.note().isEmpty()) {
            told.add(material.note());
        }
        return told;
    }

    private static List<String> counted(@Nullable EssentialOil oil, Material material) {
        if (material.analyses().isEmpty()) {
            return List.of("Nobody states a composition that the table could hold: what is in it is not known.");
        }
        List<String> told = new ArrayList<>();
        if (oil != null) {
            told.add("Notes and haze go by " + (oil.source().isEmpty() ? "what is typical of the trade" : oil.source())
                    + " (" + oil.standing().label() + ").");
        }
        told.add("Safety looks at every group below and takes the one that is worst.");
        told.add(
                "Lots differ: the analysis of your own lot, as its supplier hands it out, takes the place of all this.");
        return told;
    }

    private static List<Told.Series.Line> densityAndRefraction(Material material) {
        List<Told.Series.Line> lines = new ArrayList<>();
        String basis = material.densityBasis();
        boolean relative = basis.startsWith("SG") || basis.contains("/");
        addRange(lines, (relative ? "relative density, to water: " : "density in g/mL: ") + basis, material.density());
        addRange(lines, "refractive index at 20 °C", material.refraction());
        return lines;
    }

    private static void addRange(List<Told.Series.Line> lines, String name, Material.@Nullable Range range) {
        if (range != null) {
            lines.add(new Told.Series.Line(name, List.of(range.low(), range.high())));
        }
    }

    private static List<Told.Series.Line> lines(Analysis analysis) {
        List<Told.Series.Line> lines = new ArrayList<>();
        for (Map.Entry<String, Material.Range> part : analysis.percent().entrySet()) {
            lines.add(new Told.Series.Line(
                    Materials.nameOf(part.getKey()),
                    List.of(part.getValue().low(), part.getValue().high())));
        }
        return lines;
    }
}
