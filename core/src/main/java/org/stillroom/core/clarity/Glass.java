package org.stillroom.core.clarity;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Temperature;

/**
 * What happens to a liqueur in the glass, as more and more of something thinner comes to it.
 *
 * @param points the liquid at rising dilution, none first
 * @param hazyFrom volumes added to one volume at which it is no longer clear, or empty where it stays clear or never was
 * @param cloudyFrom volumes at which it turns cloudy, or empty
 */
public record Glass(List<Point> points, OptionalDouble hazyFrom, OptionalDouble cloudyFrom) {
    private static final double FINEST = 0.02;
    private static final double MOST = 20.0;
    private static final double STEP = 1.1;

    public Glass {
        points = List.copyOf(points);
    }

    /**
     * One dilution.
     *
     * @param parts volumes added to one volume, each at 20 °C
     * @param strength of the mixture, % vol at 20 °C
     */
    public record Point(double parts, double strength, double load, double separated, Verdict verdict) {}

    /**
     * Returns what comes of a liqueur up to twenty volumes of what is added.
     *
     * @param liqueur what is in the bottle, its oils among it
     * @param added water, melted ice (the same) or a drink
     * @param temperature of the glass
     */
    public static Glass of(Contents liqueur, Contents added, Temperature temperature) {
        Contents litre = litre(liqueur);
        Contents more = litre(added);
        List<Point> points = new ArrayList<>();
        points.add(point(litre, more, 0.0, temperature));
        for (double parts = FINEST; parts <= MOST; parts *= STEP) {
            points.add(point(litre, more, parts, temperature));
        }
        return new Glass(points, first(points, Verdict.HAZY), first(points, Verdict.CLOUDY));
    }

    private static Contents litre(Contents contents) {
        return contents.times(1000.0 / VolumeModel.atTwenty().millilitres(contents.toGrams()));
    }

    private static Point point(Contents litre, Contents more, double parts, Temperature temperature) {
        Contents mixed = litre.plus(more.times(parts));
        Oils oils = Oils.of(mixed);
        Medium medium = Medium.of(mixed, temperature);
        double load = oils.load(medium);
        double separated = load > 1.0 ? oils.separated(medium) : 0.0;
        return new Point(
                parts, medium.strength(), load, separated, Verdict.of(load, separated, oils.gramsPerLitre()));
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
