package org.stillroom.studio.sheet;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.QuantityWords;

/**
 * The mixing triangle of a liquid, by mass: water left, sugar right, spirit up, with lines of equal strength.
 *
 * <p>It shows the part with at least 40 % water. Whatever else is in the liquid is left out of the three shares.
 */
final class TrianglePlate {
    /** Least share of water that is shown. */
    private static final double LEAST_WATER = 0.40;

    private static final double SHOWN = 1.0 - LEAST_WATER;
    private static final int STEPS = 24;
    private static final double[] STRENGTHS = {10.0, 20.0, 30.0, 40.0, 50.0};

    private final double ethanol;
    private final double sugar;

    TrianglePlate(Contents liquid) {
        double alcohol = liquid.grams(Substance.ETHANOL);
        double sweet = liquid.sugars();
        double three = alcohol + sweet + liquid.grams(Substance.WATER);
        ethanol = three > 0.0 ? alcohol / three : 0.0;
        sugar = three > 0.0 ? sweet / three : 0.0;
    }

    private record Spot(double ethanol, double sugar) {
        double x() {
            return 60 + 620 * sugar / SHOWN + 310 * ethanol / SHOWN;
        }

        double y() {
            return 600 - 537 * ethanol / SHOWN;
        }

        @Override
        public String toString() {
            return QuantityWords.fixed(x(), 1) + " " + QuantityWords.fixed(y(), 1);
        }
    }

    /** Draws it with the same in words below; a liquid outside the part shown has the words alone. */
    void write(Markup page) {
        page.open("div", "class", "plate");
        if (ethanol + sugar <= SHOWN) {
            drawing(page);
        }
        page.element("p", words()).close();
    }

    private String words() {
        return "By mass, of spirit, water and sugar alone: " + share(ethanol) + " ethanol, "
                + share(1 - ethanol - sugar)
                + " water, " + share(sugar) + " sugar."
                + (ethanol + sugar <= SHOWN ? " The lines are of equal strength, % vol at 20 °C." : "");
    }

    private static String share(double part) {
        return Told.figure(100 * part, 1, "%");
    }

    private void drawing(Markup page) {
        page.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                "triangle",
                "width",
                "140",
                "height",
                "127",
                "viewBox",
                "0 0 740 670",
                "role",
                "img",
                "alt",
                "Mixing triangle",
                "aria-label",
                "Mixing triangle. " + words());
        line(page, List.of(new Spot(0, 0), new Spot(SHOWN, 0), new Spot(0, SHOWN), new Spot(0, 0)), "3");
        for (double strength : STRENGTHS) {
            contour(page, strength);
        }
        Spot here = new Spot(ethanol, sugar);
        page.open(
                        "circle",
                        "cx",
                        QuantityWords.fixed(here.x(), 1),
                        "cy",
                        QuantityWords.fixed(here.y(), 1),
                        "r",
                        "13",
                        "fill",
                        "#000000")
                .close();
        label(page, "water", new Spot(0, 0), "start", 48);
        label(page, "sugar", new Spot(0, SHOWN), "end", 48);
        label(page, "spirit", new Spot(SHOWN, 0), "middle", -18);
        page.close();
    }

    private static void contour(Markup page, double strength) {
        List<Spot> spots = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double sugar = SHOWN * i / STEPS;
            double ethanol = ethanolAt(strength, sugar);
            if (ethanol + sugar <= SHOWN) {
                spots.add(new Spot(ethanol, sugar));
            }
        }
        if (spots.size() > 1) {
            line(page, spots, "1.6");
            Spot first = spots.get(0);
            label(page, QuantityWords.plain(strength) + " %", new Spot(first.ethanol(), -0.005), "end", 8);
        }
    }

    /** Returns the share of ethanol that makes this strength beside a share of sugar, by halving. */
    private static double ethanolAt(double strength, double sugar) {
        double low = 0.0;
        double high = 1.0 - sugar;
        for (int i = 0; i < 40; i++) {
            double middle = 0.5 * (low + high);
            double[] grams = new double[Substance.COUNT];
            grams[Substance.ETHANOL.ordinal()] = middle;
            grams[Substance.SUCROSE.ordinal()] = sugar;
            grams[Substance.WATER.ordinal()] = 1.0 - middle - sugar;
            if (Essentials.of(grams).strength() < strength) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    private static void line(Markup page, List<Spot> spots, String width) {
        List<String> points = spots.stream().map(Spot::toString).toList();
        page.open(
                        "path",
                        "d",
                        "M" + String.join("L", points),
                        "fill",
                        "none",
                        "stroke",
                        "#000000",
                        "stroke-width",
                        width)
                .close();
    }

    private static void label(Markup page, String text, Spot spot, String anchor, int below) {
        page.element(
                "text",
                text,
                "x",
                QuantityWords.fixed(spot.x(), 1),
                "y",
                QuantityWords.fixed(spot.y() + below, 1),
                "text-anchor",
                anchor,
                "font-family",
                "DejaVu Sans",
                "font-size",
                "28",
                "fill",
                "#000000");
    }
}
