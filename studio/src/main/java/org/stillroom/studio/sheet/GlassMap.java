package org.stillroom.studio.sheet;

import java.util.function.UnaryOperator;
import org.stillroom.core.clarity.Glass;
import org.stillroom.core.clarity.Verdict;
import org.stillroom.core.quantity.QuantityWords;

/**
 * Oil load of a liqueur in the glass against what comes to it: below the dashed line it is clear, above the dotted one cloudy where enough
 * oil separates. With ice a dot shows where it is as cold as the ice can make it.
 */
public final class GlassMap {
    private static final double HEIGHT = 240.0;
    private static final double MOST_PARTS = 8.0;
    private static final double LEAST_LOAD = 0.01;
    private static final double DECADES = 5.0;

    private GlassMap() {}

    /**
     * Draws it.
     *
     * @param words what it says, as its title
     * @param across what is written along the scale of what comes to it, such as "parts of water to one part"
     * @param figures how its readers write a figure that has a decimal point
     */
    public static String svg(Glass glass, String words, String across, UnaryOperator<String> figures) {
        Chart chart = new Chart(words, HEIGHT, MOST_PARTS, LEAST_LOAD, DECADES, figures);
        for (int parts = 0; parts <= MOST_PARTS; parts += 2) {
            chart.upright(parts, QuantityWords.plain(parts));
        }
        chart.words(across);
        chart.levels("");
        chart.bound(Verdict.CLEAR_BELOW, "6 4");
        chart.bound(Verdict.CLOUDY_FROM, "2 3");
        chart.line(glass.points().stream()
                .filter(point -> point.parts() <= MOST_PARTS && point.load() > 0.0)
                .map(point -> chart.place(point.parts(), point.load()))
                .toList());
        glass.coldest()
                .ifPresent(point ->
                        chart.dot(point.parts(), point.load(), QuantityWords.fixed(point.celsius(), 0) + " °C"));
        return chart.svg();
    }
}
