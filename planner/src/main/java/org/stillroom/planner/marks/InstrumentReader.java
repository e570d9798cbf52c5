package org.stillroom.planner.marks;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Measure;
import org.stillroom.core.recipe.MeasureKind;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/**
 * Makes an instrument of what the maker wrote about a measure; what is left out takes the usual of its kind, and is said.
 *
 * <p>Tolerances that the maker did not say: cylinders ASTM E1272 class B; scales, syringes, jiggers, spoons and cups from
 * memory, see docs/how-it-works/measures.md.
 */
final class InstrumentReader {
    /** Part of the amount by which an unmarked jigger may be wrong: 5 to 10 %, from memory; the larger is taken. */
    private static final double JIGGER = 0.10;

    /** Measuring spoons: our own estimate, from memory that cheap sets are off by up to a third. */
    private static final double SPOON = 0.10;

    /** Measuring cups: our own estimate. */
    private static final double CUP = 0.05;

    /** ISO 7886-1 allows a syringe 5 % below half of what it holds, from memory. */
    private static final double SYRINGE = 0.05;

    /** Scales by the step that they show, g, then how far they may be wrong, g; from memory. */
    private static final double[][] SCALES = {{0.01, 0.03}, {0.1, 0.2}, {1.0, 1.0}};

    private final OunceMeaning ounce;
    private final List<Finding> findings;

    InstrumentReader(OunceMeaning ounce, List<Finding> findings) {
        this.ounce = ounce;
        this.findings = findings;
    }

    Instrument read(Measure measure) {
        return switch (measure.kind()) {
            case SCALE, CYLINDER, SYRINGE -> graduated(measure);
            case JIGGER, SPOON, CUP ->
                measure.sizes().isEmpty() && measure.marks() != null ? graduated(measure) : sizedSet(measure);
            case DROPPER -> new Dropper(measure.name());
        };
    }

    /** Returns what is taken where the maker names no measures. */
    static Instrument assumedScale() {
        return new Graduated(
                "scale",
                true,
                0.1,
                Double.POSITIVE_INFINITY,
                new Graduated.Tolerance(scaleTolerance(0.1), 0.0),
                Source.USUAL_TOLERANCES);
    }

    /** Returns how far a scale that shows such steps may be wrong, g: that of the next coarser one known, else the step. */
    static double scaleTolerance(double step) {
        for (double[] scale : SCALES) {
            if (step <= scale[0] * (1.0 + 1e-9)) {
                return scale[1];
            }
        }
        return step;
    }

    private Graduated graduated(Measure measure) {
        boolean weighs = measure.kind() == MeasureKind.SCALE;
        double holds = measure.holds() == null ? Double.POSITIVE_INFINITY : value(measure.holds());
        Typed<Amount> marks = measure.marks();
        double step = marks == null || value(marks) <= 0.0 ? assumedStep(measure, holds) : value(marks);
        Typed<Amount> said = measure.tolerance();
        if (said != null) {
            return new Graduated(measure.name(), weighs, step, holds, new Graduated.Tolerance(value(said), 0.0), null);
        }
        OptionalDouble glass =
                measure.kind() == MeasureKind.CYLINDER ? GlassTolerances.millilitres(holds) : OptionalDouble.empty();
        double fixed = weighs ? scaleTolerance(step) : glass.orElse(step);
        double part = measure.kind() == MeasureKind.SYRINGE ? SYRINGE : 0.0;
        Source source = glass.isPresent() ? Source.ASTM_E1272 : Source.USUAL_TOLERANCES;
        return new Graduated(measure.name(), weighs, step, holds, new Graduated.Tolerance(fixed, part), source);
    }

    /** Glass is usually marked to a hundredth of what it holds; kitchen scales show 1 g. Common practice, no source. */
    private double assumedStep(Measure measure, double holds) {
        boolean weighs = measure.kind() == MeasureKind.SCALE;
        double step = weighs || holds == Double.POSITIVE_INFINITY ? 1.0 : holds / 100.0;
        String words = QuantityWords.plain(step) + (weighs ? " g" : " mL");
        findings.add(new Finding(
                "marks-assumed",
                Severity.NOTE,
                measure.name(),
                "",
                "assumed",
                "The marks of " + measure.name() + " are not said; steps of " + words + " are assumed.",
                "",
                "Write them, such as marks: " + words + ".",
                null,
                Source.TRADE));
        return step;
    }

    private SizedSet sizedSet(Measure measure) {
        List<Typed<Volume>> sizes = measure.sizes().isEmpty() ? usualSizes(measure) : measure.sizes();
        Typed<Amount> said = measure.tolerance();
        if (said != null) {
            return new SizedSet(measure.name(), sizes, new SizedSet.Pour(value(said)), 0.0, null);
        }
        double part = measure.kind() == MeasureKind.JIGGER ? JIGGER : measure.kind() == MeasureKind.CUP ? CUP : SPOON;
        return new SizedSet(measure.name(), sizes, new SizedSet.Pour(0.0), part, Source.USUAL_TOLERANCES);
    }

    private List<Typed<Volume>> usualSizes(Measure measure) {
        List<Typed<Volume>> sizes = switch (measure.kind()) {
            case CUP -> cups();
            case SPOON -> spoons();
            case JIGGER ->
                List.of(
                        new Typed<>("1 1/2 oz", new Volume(1.5 * ounce.millilitres())),
                        new Typed<>("3/4 oz", new Volume(0.75 * ounce.millilitres())));
            case SCALE, CYLINDER, SYRINGE, DROPPER ->
                throw new IllegalArgumentException("a " + measure.kind().label() + " has no sizes");
        };
        StringBuilder words = new StringBuilder();
        sizes.forEach(size -> words.append(words.isEmpty() ? "" : ", ").append(size.text()));
        findings.add(new Finding(
                "sizes-assumed",
                Severity.NOTE,
                measure.name(),
                "",
                "assumed",
                "The sizes of " + measure.name() + " are not said; " + words + " are assumed.",
                "",
                "Write them, such as sizes: [" + words + "].",
                null,
                Source.TRADE));
        return sizes;
    }

    private static List<Typed<Volume>> cups() {
        double cup = 8 * Volume.MILLILITRES_PER_US_OUNCE;
        return List.of(
                new Typed<>("1 cup", new Volume(cup)),
                new Typed<>("1/2 cup", new Volume(cup / 2)),
                new Typed<>("1/3 cup", new Volume(cup / 3)),
                new Typed<>("1/4 cup", new Volume(cup / 4)));
    }

    private static List<Typed<Volume>> spoons() {
        double teaspoon = Volume.MILLILITRES_PER_US_OUNCE / 6;
        return List.of(
                new Typed<>("1 tbsp", new Volume(3 * teaspoon)),
                new Typed<>("1 tsp", new Volume(teaspoon)),
                new Typed<>("1/2 tsp", new Volume(teaspoon / 2)),
                new Typed<>("1/4 tsp", new Volume(teaspoon / 4)));
    }

    private static double value(@Nullable Typed<Amount> amount) {
        if (amount == null) {
            throw new IllegalArgumentException("no amount");
        }
        return amount.value() instanceof Mass mass ? mass.grams() : ((Volume) amount.value()).millilitres();
    }
}
