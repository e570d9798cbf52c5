package org.stillroom.studio.sheet;

import java.util.List;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.triangle.Company;
import org.stillroom.core.triangle.Contours;
import org.stillroom.core.triangle.Plate;
import org.stillroom.core.triangle.Spot;

/**
 * The mixing triangle of a liquid, by mass: water left, sugar right, spirit up, with lines of equal strength.
 *
 * <p>It shows the part with at least 40 % water. Whatever else is in the liquid is left out of the three shares.
 */
final class TrianglePlate {
    private static final Plate PLATE = Plate.PART;

    private final Spot here;
    private final Contours contours;

    TrianglePlate(Contents liquid) {
        here = Company.spot(liquid);
        contours = new Contours(Company.of(liquid, SugarBasis.AS_DISSOLVED), PLATE);
    }

    /** Draws it with the same in words below; a liquid outside the part shown has the words alone. */
    void write(Markup page) {
        page.open("div", "class", "plate");
        if (PLATE.shows(here)) {
            drawing(page);
        }
        page.element("p", words()).close();
    }

    private String words() {
        return "By mass, of spirit, water and sugar alone: " + share(here.ethanol()) + " ethanol, "
                + share(here.water())
                + " water, " + share(here.sugar()) + " sugar."
                + (PLATE.shows(here) ? " The lines are of equal strength, % vol at 20 °C." : "");
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
        line(page, PLATE.outline(PLATE.frame()), "3");
        for (Contours.Contour contour : contours.strengths()) {
            line(page, PLATE.line(contour.spots()), "1.6");
            Plate.Place foot = PLATE.place(contour.foot());
            label(page, QuantityWords.plain(contour.value()) + " %", foot.x() - 5, foot.y() + 8, "end");
        }
        point(page, PLATE.place(here));
        List<Plate.Place> corners = PLATE.frame().stream().map(PLATE::place).toList();
        label(page, "water", corners.get(0).x(), corners.get(0).y() + 48, "start");
        label(page, "spirit", corners.get(1).x(), corners.get(1).y() - 18, "middle");
        label(page, "sugar", corners.get(2).x(), corners.get(2).y() + 48, "end");
        page.close();
    }

    private static void point(Markup page, Plate.Place place) {
        page.open(
                        "circle",
                        "cx",
                        QuantityWords.fixed(place.x(), 1),
                        "cy",
                        QuantityWords.fixed(place.y(), 1),
                        "r",
                        "13",
                        "fill",
                        "#000000")
                .close();
    }

    private static void line(Markup page, String path, String width) {
        page.open("path", "d", path, "fill", "none", "stroke", "#000000", "stroke-width", width)
                .close();
    }

    private static void label(Markup page, String text, double x, double y, String anchor) {
        page.element(
                "text",
                text,
                "x",
                QuantityWords.fixed(x, 1),
                "y",
                QuantityWords.fixed(y, 1),
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
