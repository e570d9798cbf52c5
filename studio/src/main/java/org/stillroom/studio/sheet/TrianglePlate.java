package org.stillroom.studio.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.clarity.Verdict;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.triangle.Company;
import org.stillroom.core.triangle.Contours;
import org.stillroom.core.triangle.HazeShade;
import org.stillroom.core.triangle.Plate;
import org.stillroom.core.triangle.Spot;

/**
 * The mixing triangle of a liquid, by mass: water left, sugar right, spirit up, with lines of equal strength, and shaded where it would
 * not stay clear with the oils that it holds.
 *
 * <p>It shows the part with at least 40 % water. Whatever else is in the liquid is left out of the three shares.
 */
final class TrianglePlate {
    private static final Plate PLATE = Plate.PART;

    /** Greys that a printer tells apart and black lines stand out from. */
    private static final String HAZY = "#e6e6e6";

    private static final String CLOUDY = "#bfbfbf";

    private final Spot here;
    private final Contours contours;
    private final @Nullable HazeShade haze;

    TrianglePlate(Contents liquid) {
        here = Company.spot(liquid);
        contours = new Contours(Company.of(liquid, SugarBasis.AS_DISSOLVED), PLATE);
        haze = HazeShade.of(liquid, PLATE);
    }

    /** Draws it with the same in words below; a liquid outside the part shown has the words alone. */
    void write(Markup page) {
        page.open("div", "class", "plate");
        if (PLATE.shows(here)) {
            drawing(page);
        }
        page.open("p").typed(said(page)).close().close();
    }

    /** Returns it in sentences. */
    private List<String> words() {
        List<String> words = new ArrayList<>();
        words.add("By mass, of spirit, water and sugar alone: " + share(here.ethanol()) + " ethanol, "
                + share(here.water()) + " water, " + share(here.sugar()) + " sugar.");
        if (PLATE.shows(here)) {
            words.add("The lines are of equal strength, % vol at 20 °C.");
        }
        if (haze != null) {
            words.addAll(words(haze));
        }
        return words;
    }

    private List<String> words(HazeShade shade) {
        String oil = QuantityWords.fixed(shade.gramsPerLitre(), shade.gramsPerLitre() < 0.1 ? 3 : 2);
        String strength = shade.verdict() == Verdict.CLEAR || shade.clearFrom().isEmpty()
                ? ""
                : ", clear from " + Told.figure(shade.clearFrom().getAsDouble(), 1, "% vol") + " at this sugar";
        String looks = "With its " + Told.kept(oil + " g/L") + " of oil it is "
                + shade.verdict().label() + " by the forecast at 20 °C" + strength + ".";
        return PLATE.shows(here)
                ? List.of("Light grey is where it would be hazy, dark grey where cloudy.", looks)
                : List.of(looks);
    }

    private String said(Markup page) {
        return words().stream().map(page::said).collect(Collectors.joining(" "));
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
                page.said("Mixing triangle"),
                "aria-label",
                page.said("Mixing triangle") + ". " + said(page));
        if (haze != null) {
            area(page, haze.hazy(), HAZY);
            area(page, haze.cloudy(), CLOUDY);
        }
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

    private static void area(Markup page, String path, String grey) {
        if (!path.isEmpty()) {
            page.empty("path", "d", path, "fill", grey);
        }
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
