package org.stillroom.studio.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.stillroom.core.clarity.Clarity;
import org.stillroom.core.clarity.Oils;
import org.stillroom.core.clarity.Remedies;
import org.stillroom.core.quantity.QuantityWords;

/**
 * The map of strength and dose for the oils of a liquid: right of the line it is clear, with the band of doubt about the line, the
 * liquid itself as a dot and the way there as a dashed line. The same is said in words in its title.
 */
public final class ClarityMap {
    private static final double LEFT = 60.0;
    private static final double WIDTH = 560.0;
    private static final double TOP = 20.0;
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
     */
    public static String svg(Clarity liquid, List<Clarity> path) {
        Markup page = new Markup();
        page.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 0 640 410",
                "role",
                "img",
                "font-family",
                "sans-serif",
                "font-size",
                "12");
        page.element("title", words(liquid));
        axes(page);
        List<String> band = boundary(liquid, 1.0 / Clarity.SOLUBILITY_FACTOR);
        List<String> back = boundary(liquid, Clarity.SOLUBILITY_FACTOR);
        Collections.reverse(back);
        band.addAll(back);
        page.empty("path", "d", line(band) + (band.isEmpty() ? "" : "z"), "fill", "#888", "fill-opacity", "0.25");
        page.empty("path", "d", line(boundary(liquid, 1.0)), "fill", "none", "stroke", "#222", "stroke-width", "2");
        List<String> way = new ArrayList<>(path.stream().map(ClarityMap::place).toList());
        page.empty("path", "d", line(way), "fill", "none", "stroke", "#222", "stroke-dasharray", "4 4");
        dot(page, liquid);
        return page.close().toString();
    }

    private static String words(Clarity liquid) {
        OptionalDouble from = Remedies.clearFrom(liquid.oils(), liquid.medium());
        return "Strength and dose: at " + number(liquid.medium().strength()) + " % vol and "
                + QuantityWords.fixed(liquid.oils().gramsPerLitre(), 2) + " g/L of oil it is "
                + liquid.verdict().label()
                + (from.isPresent() ? "; clear from " + number(from.getAsDouble()) + " % vol." : "; clear at no strength.");
    }

    private static void axes(Markup page) {
        for (int percent = 0; percent <= 80; percent += 20) {
            String x = number(right(percent));
            page.empty("path", "d", "M" + x + " " + number(TOP) + "V" + number(TOP + HEIGHT), "stroke", "#ccc");
            page.element("text", percent + " % vol", "x", x, "y", "380", "text-anchor", "middle");
        }
        for (double dose = LEAST_DOSE; dose < 150.0; dose *= 10.0) {
            String y = number(down(dose));
            page.empty("path", "d", "M" + number(LEFT) + " " + y + "H" + number(LEFT + WIDTH), "stroke", "#ccc");
            String label = QuantityWords.plain(Math.rint(100.0 * dose) / 100.0) + " g/L";
            page.element("text", label, "x", number(LEFT - 6.0), "y", y, "dy", "4", "text-anchor", "end");
        }
    }

    private static List<String> boundary(Clarity liquid, double solubility) {
        List<String> places = new ArrayList<>();
        double typed = liquid.oils().gramsPerLitre();
        for (int i = 0; i <= STEPS; i++) {
            double dose = LEAST_DOSE * Math.pow(10.0, DECADES * i / STEPS);
            Oils oils = liquid.oils().times(dose / typed);
            Remedies.clearFrom(oils, liquid.medium(), solubility)
                    .ifPresent(percent -> places.add(number(right(percent)) + " " + number(down(dose))));
        }
        return places;
    }

    private static void dot(Markup page, Clarity liquid) {
        String[] place = place(liquid).split(" ", -1);
        page.empty("circle", "cx", place[0], "cy", place[1], "r", "5", "fill", "#2f6b5e");
        page.element(
                "text", liquid.verdict().label(), "x", place[0], "y", place[1], "dx", "9", "dy", "4", "font-weight", "bold");
    }

    private static String place(Clarity liquid) {
        return number(right(liquid.medium().strength())) + " "
                + number(down(liquid.oils().gramsPerLitre()));
    }

    private static String line(List<String> places) {
        return places.isEmpty() ? "" : "M" + String.join("L", places);
    }

    private static double right(double percent) {
        return LEFT + WIDTH * Math.min(MOST_STRENGTH, percent) / MOST_STRENGTH;
    }

    private static double down(double dose) {
        double part = Math.log10(dose / LEAST_DOSE) / DECADES;
        return TOP + HEIGHT * (1.0 - Math.max(0.0, Math.min(1.0, part)));
    }

    private static String number(double value) {
        return QuantityWords.fixed(value, 1);
    }
}
