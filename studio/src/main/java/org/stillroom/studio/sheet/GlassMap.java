package org.stillroom.studio.sheet;

import java.util.List;
import org.stillroom.core.clarity.Glass;
import org.stillroom.core.quantity.QuantityWords;

/** Oil load of a liqueur in the glass against the water that comes to it; above the upper line it is cloudy, below the lower one clear. */
public final class GlassMap {
    private static final double LEFT = 60.0;
    private static final double WIDTH = 560.0;
    private static final double TOP = 20.0;
    private static final double HEIGHT = 240.0;
    private static final double MOST_PARTS = 8.0;
    private static final double LEAST_LOAD = 0.01;
    private static final double DECADES = 5.0;

    private GlassMap() {}

    /**
     * Draws it.
     *
     * @param words what it says, as its title
     * @param axis what is written along the water, such as "parts of water to one"
     */
    public static String svg(Glass glass, String words, String axis) {
        Markup page = new Markup();
        page.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 640 330",
                "role",
                "img",
                "font-family",
                "sans-serif",
                "font-size",
                "12",
                "fill",
                "currentColor");
        page.element("title", words);
        for (int parts = 0; parts <= MOST_PARTS; parts += 2) {
            String x = number(right(parts));
            upright(page, x);
            page.element("text", "" + parts, "x", x, "y", "282", "text-anchor", "middle");
        }
        page.element("text", axis, "x", number(LEFT + 0.5 * WIDTH), "y", "306", "text-anchor", "middle");
        for (double load = LEAST_LOAD; load < 1001.0; load *= 10.0) {
            String y = number(down(load));
            across(page, y, "0.25", "none");
            page.element(
                    "text",
                    QuantityWords.plain(load),
                    "x",
                    number(LEFT - 6.0),
                    "y",
                    y,
                    "dy",
                    "4",
                    "text-anchor",
                    "end");
        }
        across(page, number(down(0.7)), "0.8", "6 4");
        across(page, number(down(1.5)), "0.8", "2 3");
        page.empty("path", "d", curve(glass.points()), "fill", "none", "stroke", "currentColor", "stroke-width", "2");
        return page.close().toString();
    }

    private static void upright(Markup page, String x) {
        page.empty(
                "path",
                "d",
                "M" + x + " " + number(TOP) + "V" + number(TOP + HEIGHT),
                "stroke",
                "currentColor",
                "stroke-opacity",
                "0.25");
    }

    private static void across(Markup page, String y, String opacity, String dashes) {
        page.empty(
                "path",
                "d",
                "M" + number(LEFT) + " " + y + "H" + number(LEFT + WIDTH),
                "stroke",
                "currentColor",
                "stroke-opacity",
                opacity,
                "stroke-dasharray",
                dashes);
    }

    private static String curve(List<Glass.Point> points) {
        StringBuilder path = new StringBuilder();
        for (Glass.Point point : points) {
            if (point.parts() <= MOST_PARTS && point.load() > 0.0) {
                path.append(path.isEmpty() ? "M" : "L")
                        .append(number(right(point.parts())))
                        .append(' ')
                        .append(number(down(point.load())));
            }
        }
        return path.toString();
    }

    private static double right(double parts) {
        return LEFT + WIDTH * parts / MOST_PARTS;
    }

    private static double down(double load) {
        double part = Math.log10(load / LEAST_LOAD) / DECADES;
        return TOP + HEIGHT * (1.0 - Math.max(0.0, Math.min(1.0, part)));
    }

    private static String number(double value) {
        return QuantityWords.fixed(value, 1);
    }
}
