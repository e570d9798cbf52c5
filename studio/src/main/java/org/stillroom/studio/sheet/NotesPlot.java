package org.stillroom.studio.sheet;

import java.util.List;
import java.util.function.UnaryOperator;
import org.stillroom.core.quantity.QuantityWords;

/**
 * Odour activity of constituents by decades: a mark where it is taken to be, a line from the least to the most that the ranges allow. The
 * line is whole where the activity is well known, and broken where it is a hint and no more. Names stand above their lines, so that all of
 * it fits the width of a phone.
 */
public final class NotesPlot {
    private static final double LEFT = 14.0;
    private static final double WIDTH = 332.0;
    private static final double TOP = 4.0;
    private static final double EDGE = 12.0;
    private static final double ROW = 40.0;
    private static final double NAME = 16.0;
    private static final double LINE = 29.0;

    /** Of more decades than these only every other one is written out. */
    private static final int WRITTEN = 5;

    private static final int LEAST_DECADE = -2;
    private static final int MOST_DECADE = 6;

    private final Markup page = new Markup();
    private final int from;
    private final int to;
    private final double bottom;
    private final UnaryOperator<String> figures;

    private NotesPlot(List<Bar> bars, UnaryOperator<String> figures) {
        this.figures = figures;
        double least = bars.stream().mapToDouble(Bar::typical).min().orElse(1.0) / 10.0;
        double most = bars.stream().mapToDouble(Bar::most).max().orElse(1.0);
        this.from = Math.max(LEAST_DECADE, Math.min(-1, (int) Math.floor(Math.log10(Math.max(least, 1e-9)))));
        this.to = Math.min(MOST_DECADE, Math.max(1, (int) Math.ceil(Math.log10(Math.max(most, 1e-9)))));
        this.bottom = TOP + ROW * bars.size();
    }

    /**
     * A constituent.
     *
     * @param least odour activity that the ranges allow, 0 or more
     * @param typical above 0
     * @param most above 0
     * @param weak whether the activity is a hint and no more
     */
    public record Bar(String name, double least, double typical, double most, boolean weak) {}

    /**
     * Draws it.
     *
     * @param bars the leading one first, with thresholds that are known
     * @param title what it says
     * @param axis what is written along the decades
     * @param figures how its readers write a figure that has a decimal point
     */
    public static String svg(List<Bar> bars, String title, String axis, UnaryOperator<String> figures) {
        return new NotesPlot(bars, figures).drawn(bars, title, axis);
    }

    private String drawn(List<Bar> bars, String title, String axis) {
        page.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 360 " + number(bottom + 48.0),
                "role",
                "img",
                "font-family",
                "sans-serif",
                "font-size",
                "13",
                "fill",
                "currentColor");
        page.element("title", title);
        for (int decade = from; decade <= to; decade++) {
            decade(decade);
        }
        page.element(
                "text", axis, "x", number(LEFT + 0.5 * WIDTH), "y", number(bottom + 40.0), "text-anchor", "middle");
        for (int i = 0; i < bars.size(); i++) {
            bar(bars.get(i), TOP + ROW * i);
        }
        return page.close().toString();
    }

    /** The threshold itself, 1, is drawn stronger: what lies left of it is not smelt. */
    private void decade(int decade) {
        String x = number(right(Math.pow(10.0, decade)));
        String opacity = decade == 0 ? "1" : "0.25";
        page.empty(
                "path",
                "d",
                "M" + x + " " + number(TOP) + "V" + number(bottom),
                "stroke",
                "currentColor",
                "stroke-opacity",
                opacity,
                "stroke-width",
                decade == 0 ? "2" : "1");
        if (to - from > WRITTEN && decade % 2 != 0) {
            return;
        }
        String label = decade < 0 ? QuantityWords.plain(Math.pow(10.0, decade)) : thousands(decade);
        boolean last = decade == to;
        page.element(
                "text",
                figures.apply(label),
                "x",
                last ? number(LEFT + WIDTH + EDGE) : x,
                "y",
                number(bottom + 18.0),
                "text-anchor",
                last ? "end" : "middle");
    }

    private static String thousands(int decade) {
        return decade >= 3
                ? QuantityWords.plain(Math.pow(10.0, decade - 3)) + " 000"
                : QuantityWords.plain(Math.pow(10.0, decade));
    }

    private void bar(Bar bar, double top) {
        String y = number(top + LINE);
        page.element("text", bar.name(), "x", number(LEFT), "y", number(top + NAME));
        page.empty(
                "path",
                "d",
                "M" + number(right(bar.least())) + " " + y + "H" + number(right(bar.most())),
                "stroke",
                "currentColor",
                "stroke-width",
                "3",
                "stroke-dasharray",
                bar.weak() ? "5 4" : "none");
        page.empty(
                "circle",
                "cx",
                number(right(bar.typical())),
                "cy",
                y,
                "r",
                "5.5",
                "stroke",
                "currentColor",
                "stroke-width",
                "2",
                "fill",
                "currentColor",
                "fill-opacity",
                bar.weak() ? "0.15" : "1");
    }

    private double right(double activity) {
        double part = activity > 0.0 ? (Math.log10(activity) - from) / (to - from) : 0.0;
        return LEFT + WIDTH * Math.max(0.0, Math.min(1.0, part));
    }

    private static String number(double value) {
        return QuantityWords.fixed(value, 1);
    }
}
