package org.stillroom.studio.usecase;

import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.liquid.Liquid;
import org.stillroom.core.liquid.StrengthFromDensity;
import org.stillroom.core.liquid.StrengthFromDensity.Measured;
import org.stillroom.core.liquid.StrengthFromDensity.Weighing;
import org.stillroom.core.quantity.Density;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Workings;

/** Finds the strength of a liquid from what was measured on it. */
public final class MeasureStrength {
    private MeasureStrength() {}

    /** What was measured. */
    public sealed interface Reading {}

    /** A density, at the temperature of the measurement. */
    public record ByDensity(Density density) implements Reading {}

    /** A spirit hydrometer, with the basis of its scale. */
    public record ByHydrometer(Strength stem) implements Reading {}

    /** The weight of a known volume. */
    public record ByWeight(Weighing weighing) implements Reading {}

    /**
     * The question.
     *
     * @param reading what was measured
     * @param temperature of the liquid then, −20 to 40 °C
     * @param sugar sucrose known to be in it, per litre at 20 °C
     */
    public record Asked(Reading reading, Temperature temperature, MassConcentration sugar) {}

    /**
     * What was found.
     *
     * @param strength % vol at 20 °C
     * @param byMass % mass of the whole
     * @param proof US proof
     * @param figures of a litre of the liquid at the temperature of the measurement; the doubts of its strengths are those
     *     of a liquid known by its grams, not of this measurement
     */
    public record Found(Estimate strength, Estimate byMass, Estimate proof, Figures figures) {}

    /**
     * Returns the strength.
     *
     * @throws Impossible when no liquid gives that reading, or outside the range of temperature
     */
    public static Found answer(Asked asked, Workings workings) {
        Range.refuseOutside(asked.temperature());
        Measured measured = measured(asked, workings);
        Figures figures = Liquid.figures(measured.litre(), asked.temperature());
        return new Found(
                new Estimate(measured.strength().percent(), measured.doubt()),
                alike(figures, Figure.STRENGTH_BY_MASS, measured),
                alike(figures, Figure.PROOF_US, measured),
                figures);
    }

    /** Returns the same strength on another scale, with the same part of it in doubt. */
    private static Estimate alike(Figures figures, Figure scale, Measured measured) {
        double value = figures.value(scale);
        double percent = measured.strength().percent();
        return new Estimate(value, percent > 0.0 ? measured.doubt() * value / percent : measured.doubt());
    }

    private static Measured measured(Asked asked, Workings workings) {
        Temperature temperature = asked.temperature();
        MassConcentration sugar = asked.sugar();
        if (asked.reading() instanceof ByDensity by) {
            return Impossible.unless(
                    "density", "", () -> StrengthFromDensity.of(by.density(), temperature, sugar, workings));
        }
        if (asked.reading() instanceof ByWeight by) {
            return Impossible.unless(
                    "mass", "", () -> StrengthFromDensity.ofWeighing(by.weighing(), temperature, sugar, workings));
        }
        ByHydrometer by = (ByHydrometer) asked.reading();
        return Impossible.unless(
                "hydrometer", "", () -> StrengthFromDensity.ofHydrometer(by.stem(), temperature, sugar, workings));
    }
}
