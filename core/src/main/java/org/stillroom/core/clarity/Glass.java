package org.stillroom.core.clarity;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.FreezingPoint;
import org.stillroom.core.liquid.HeatCapacity;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Root;
import org.stillroom.core.quantity.Temperature;

/**
 * What happens to a liqueur in the glass, as more and more of something else comes to it.
 *
 * @param addition what comes to it
 * @param points the liquid at rising dilution, none first
 * @param hazyFrom volumes added to one volume at which it is no longer clear, or empty where it stays clear or never was
 * @param cloudyFrom volumes at which it turns cloudy, or empty
 * @param coldest with ice, where it is as cold as the ice makes it by itself; empty with anything else
 */
public record Glass(
        GlassAddition addition,
        List<Point> points,
        OptionalDouble hazyFrom,
        OptionalDouble cloudyFrom,
        Optional<Point> coldest) {
    private static final double FINEST = 0.02;
    private static final double MOST = 20.0;
    private static final double STEP = 1.1;

    /** Heat that melts ice, J/g. Source: 6012 J/mol, as the properties of ice are tabulated (secondary). */
    private static final double MELTING = 333.7;

    /** Heat capacity of water near 0 °C, J/(g K) (secondary). */
    private static final double OF_WATER = 4.22;

    /** Below this no property of the liquid is known, °C. */
    private static final double LEAST_CELSIUS = -20.0;

    public Glass {
        points = List.copyOf(points);
    }

    /**
     * One dilution.
     *
     * @param parts volumes added to one volume, each at 20 °C; of ice, as the water that it melts to
     * @param strength of the mixture, % vol at 20 °C
     * @param celsius temperature
     */
    public record Point(
            double parts, double strength, double celsius, double load, double separated, Verdict verdict) {}

    /**
     * Returns what comes of a liqueur up to twenty volumes of what is added.
     *
     * <p>Ice melts at the cost of the liquid's warmth, m (333.7 J/g + 4.22 J/(g K) T) = C (T₀ − T), until it stands at its own freezing
     * point; more melts by the warmth of the room, at that temperature. Ice is taken at 0 °C.
     *
     * @param liqueur what is in the bottle, its oils among it
     * @param temperature of the glass; with ice, of the liqueur before
     */
    public static Glass of(Contents liqueur, GlassAddition addition, Temperature temperature) {
        Mixing mixing = new Mixing(litre(liqueur), litre(addition.litre()), addition.isIce(), temperature.celsius());
        List<Point> points = new ArrayList<>();
        points.add(mixing.point(0.0));
        for (double parts = FINEST; parts <= MOST; parts *= STEP) {
            points.add(mixing.point(parts));
        }
        return new Glass(
                addition,
                points,
                first(points, Verdict.HAZY),
                first(points, Verdict.CLOUDY),
                addition.isIce() ? Optional.of(mixing.point(mixing.mostMelt())) : Optional.empty());
    }

    private static Contents litre(Contents contents) {
        return contents.times(1000.0 / VolumeModel.atTwenty().millilitres(contents.toGrams()));
    }

    /** A litre of liqueur, a litre of what comes to it, and how warm the glass is. */
    private record Mixing(Contents liqueur, Contents more, boolean ice, double celsius) {
        Point point(double parts) {
            Contents mixed = liqueur.plus(more.times(parts));
            double cold = ice ? Math.max(freezing(mixed), byMelting(parts)) : celsius;
            Oils oils = Oils.of(mixed);
            Medium medium = Medium.of(mixed, new Temperature(cold));
            double load = oils.load(medium);
            double separated = load > 1.0 ? oils.separated(medium) : 0.0;
            Verdict verdict = Verdict.of(load, separated, oils.gramsPerLitre());
            return new Point(parts, medium.strength(), cold, load, separated, verdict);
        }

        /** Returns the temperature at which so much ice has melted at the cost of the liquid alone. */
        private double byMelting(double parts) {
            double heat = HeatCapacity.joulesPerKelvin(liqueur);
            double grams = parts * more.total();
            return (heat * celsius - grams * MELTING) / (heat + grams * OF_WATER);
        }

        private double freezing(Contents mixed) {
            @Nullable Estimate ice = FreezingPoint.of(mixed.toGrams());
            return ice == null ? LEAST_CELSIUS : Math.max(LEAST_CELSIUS, Math.min(celsius, ice.value()));
        }

        /** Returns the parts that melt until the liquid stands at its freezing point. */
        double mostMelt() {
            return Root.of(parts -> freezing(liqueur.plus(more.times(parts))) - byMelting(parts));
        }
    }

    private static OptionalDouble first(List<Point> points, Verdict turned) {
        if (points.get(0).verdict().compareTo(turned) >= 0) {
            return OptionalDouble.empty();
        }
        return points.stream()
                .filter(point -> point.verdict().compareTo(turned) >= 0)
                .mapToDouble(Point::parts)
                .findFirst();
    }
}
