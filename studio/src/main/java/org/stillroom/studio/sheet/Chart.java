package org.stillroom.studio.sheet;

import java.util.List;
import java.util.function.UnaryOperator;
import org.stillroom.core.quantity.QuantityWords;

/** A chart with a straight scale across and a logarithmic one up, drawn in the colour of the text around it. */
final class Chart {
    private static final double LEFT = 60.0;
    private static final double WIDTH = 560.0;
    private static final double TOP = 20.0;
    /** Below the chart: the figures of the scale, and a line of words. */
    private static final double FIGURES = 20.0;

    private static final double WORDS = 44.0;
    private static final double FOOT = 50.0;
    private static final String GRID = "0.25";

    private final Markup page = new Markup();
    private final double height;
    private final double most;
    private final double least;
    private final double decades;
    private final UnaryOperator<String> figures;

    /**
     * Begins a chart.
     *
     * @param title what it says, in words
     * @param height of the chart in a drawing 640 wide
     * @param most end of the scale across, which begins at 0
     * @param least beginning of the scale up
     * @param decades that the scale up runs over
     * @param figures how its readers write a figure that has a decimal point
     */
    Chart(String title, double height, double most, double least, double decades, UnaryOperator<String> figures) {
        this.figures = figures;
        this.height = height;
        this.most = most;
        this.least = least;
        this.decades = decades;
        page.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 640 " + QuantityWords.plain(TOP + height + FOOT),
                "role",
                "img",
                "font-family",
                "sans-serif",
                "font-size",
                "12",
                "fill",
                "currentColor");
        page.element("title", title);
    }

    /** Draws an upright line of the grid with its figure below. */
    void upright(double value, String figure) {
        String x = number(right(value));
        stroke("M" + x + " " + number(TOP) + "V" + number(TOP + height), "1", GRID, "none");
        page.element(
                "text", figures.apply(figure), "x", x, "y", number(TOP + height + FIGURES), "text-anchor", "middle");
    }

    /** Draws a level line of the grid with its figure on the left. */
    void level(double value, String figure) {
        level(value, GRID, "none");
        page.element(
                "text",
                figures.apply(figure),
                "x",
                number(LEFT - 6.0),
                "y",
                number(down(value)),
                "dy",
                "4",
                "text-anchor",
                "end");
    }

    /** Draws the levels of whole powers of ten, each with its figure and unit. */
    void levels(String unit) {
        for (int i = 0; i <= decades; i++) {
            double value = least * Math.pow(10.0, i);
            level(value, QuantityWords.plain(Math.rint(value / least) * least) + unit);
        }
    }

    /** Draws a level that means something. */
    void bound(double value, String dashes) {
        level(value, "0.8", dashes);
    }

    private void level(double value, String opacity, String dashes) {
        stroke("M" + number(LEFT) + " " + number(down(value)) + "H" + number(LEFT + WIDTH), "1", opacity, dashes);
    }

    /** Writes what the scale across shows. */
    void words(String text) {
        page.element(
                "text",
                text,
                "x",
                number(LEFT + 0.5 * WIDTH),
                "y",
                number(TOP + height + WORDS),
                "text-anchor",
                "middle");
    }

    /** Returns a place on the chart; what lies beyond a scale is drawn at its end. */
    String place(double across, double up) {
        return number(right(across)) + " " + number(down(up));
    }

    /** Draws a line through places, two units wide. */
    void line(List<String> places) {
        stroke(path(places), "2", "1", "none");
    }

    /** Draws a dashed line through places. */
    void dashed(List<String> places) {
        stroke(path(places), "1", "1", "4 4");
    }

    private void stroke(String path, String width, String opacity, String dashes) {
        page.empty(
                "path",
                "d",
                path,
                "fill",
                "none",
                "stroke",
                "currentColor",
                "stroke-width",
                width,
                "stroke-opacity",
                opacity,
                "stroke-dasharray",
                dashes);
    }

    /** Fills the inside of an outline lightly. */
    void band(List<String> places) {
        String end = places.isEmpty() ? "" : "z";
        page.empty("path", "d", path(places) + end, "fill", "currentColor", "fill-opacity", "0.18");
    }

    /** Draws a dot with a word beside it. */
    void dot(double across, double up, String word) {
        String x = number(right(across));
        String y = number(down(up));
        page.empty("circle", "cx", x, "cy", y, "r", "5", "fill", "currentColor");
        page.element("text", word, "x", x, "y", y, "dx", "9", "dy", "4", "font-weight", "bold");
    }

    /** Returns it as SVG; nothing can be drawn any more. */
    String svg() {
        return page.close().toString();
    }

    private static String path(List<String> places) {
        return places.isEmpty() ? "" : "M" + String.join("L", places);
    }

    private double right(double value) {
        return LEFT + WIDTH * Math.min(most, value) / most;
    }

    private double down(double value) {
        double part = Math.log10(value / least) / decades;
        return TOP + height * (1.0 - Math.max(0.0, Math.min(1.0, part)));
    }

    private static String number(double value) {
        return QuantityWords.fixed(value, 1);
    }
}
