package org.stillroom.studio.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.stillroom.core.clarity.Clarity;
import org.stillroom.core.clarity.Oils;
import org.stillroom.core.clarity.Remedies;
import org.stillroom.core.quantity.QuantityWords;

/**
 * The map of strength and dose for the oils of a liquid: right of the line it is clear, with the band of doubt about the line, the
 * liquid itself as a dot and the way there as a dashed line. The same is said in words in its title.
 */
public final class ClarityMap {
    private static final double HEIGHT = 340.0;
    private static final double MOST_STRENGTH = 96.0;
    private static final double LEAST_DOSE = 0.01;
    private static final double DECADES = 4.0;
    private static final int STEPS = 60;

    private ClarityMap() {}

    /**
     * Draws the map.
     *
     * @param liquid its composition of oil and its sugar hold for the whole map
     * @param path the liquid at each step of mixing, or nothing
     * @param figures how its readers write a figure that has a decimal point
     */
    public static String svg(Clarity liquid, List<Clarity> path, UnaryOperator<String> figures) {
        Chart chart = new Chart(words(liquid), HEIGHT, MOST_STRENGTH, LEAST_DOSE, DECADES, figures);
        for (int percent = 0; percent <= 80; percent += 20) {
            chart.upright(percent, percent + " % vol");
        }
        chart.levels(" g/L");
        List<String> band = boundary(chart, liquid, 1.0 / Clarity.SOLUBILITY_FACTOR);
        List<String> back = boundary(chart, liquid, Clarity.SOLUBILITY_FACTOR);
        Collections.reverse(back);
        band.addAll(back);
        chart.band(band);
        chart.line(boundary(chart, liquid, 1.0));
        chart.dashed(path.stream()
                .map(stop -> chart.place(stop.medium().strength(), stop.oils().gramsPerLitre()))
                .toList());
        chart.dot(
                liquid.medium().strength(),
                liquid.oils().gramsPerLitre(),
                liquid.verdict().label());
        return chart.svg();
    }

    private static String words(Clarity liquid) {
        OptionalDouble from = Remedies.clearFrom(liquid.oils(), liquid.medium());
        return "Strength and dose: at " + QuantityWords.fixed(liquid.medium().strength(), 1) + " % vol and "
                + QuantityWords.fixed(liquid.oils().gramsPerLitre(), 2) + " g/L of oil it is "
                + liquid.verdict().label()
                + (from.isPresent()
                        ? "; clear from " + QuantityWords.fixed(from.getAsDouble(), 1) + " % vol."
                        : "; clear at no strength.");
    }

    private static List<String> boundary(Chart chart, Clarity liquid, double solubility) {
        List<String> places = new ArrayList<>();
        double typed = liquid.oils().gramsPerLitre();
        for (int i = 0; i <= STEPS; i++) {
            double dose = LEAST_DOSE * Math.pow(10.0, DECADES * i / STEPS);
            Oils oils = liquid.oils().times(dose / typed);
            Remedies.clearFrom(oils, liquid.medium(), solubility)
                    .ifPresent(percent -> places.add(chart.place(percent, dose)));
        }
        return places;
    }
}
