package org.stillroom.studio.sheet;

import org.stillroom.core.liquid.DoubtWord;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.plan.Band;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.studio.usecase.WorkedPlan;

/** The figures of the finished liquid of the amounts as measured, with where they will lie in nine batches of ten. */
final class WhatItWillBe {
    private static final double FREEZER = -18.0;

    private final WorkedPlan worked;
    private final SheetOptions options;

    WhatItWillBe(WorkedPlan worked, SheetOptions options) {
        this.worked = worked;
        this.options = options;
    }

    void write(Markup page, String heading) {
        Essentials result = worked.measured().result();
        page.element(heading, "What it will be").open("table", "class", "will");
        page.open("thead").open("tr");
        page.element("th", "at 20 °C", "scope", "col").element("th", "figure", "scope", "col", "class", "n");
        page.element("th", "nine in ten; doubt", "scope", "col").close().close().open("tbody");
        row(page, "Strength", result.strength(), Figure.STRENGTH, worked.bands().strength(), 1, "% vol");
        if (result.sugar() > 0.0) {
            row(
                    page,
                    "Sugar, as dissolved",
                    result.sugar(),
                    Figure.SUGAR,
                    worked.bands().sugar(),
                    0,
                    "g/L");
        }
        if (result.acidity() > 0.05) {
            row(
                    page,
                    "Acidity, as citric",
                    result.acidity(),
                    Figure.ACIDITY,
                    worked.bands().acidity(),
                    1,
                    "g/L");
        }
        row(
                page,
                "Volume",
                result.millilitres(),
                Figure.VOLUME_20C,
                worked.bands().volume(),
                0,
                "mL");
        page.close().close();
        remarks(page);
        new TrianglePlate(worked.measured().liquid()).write(page);
    }

    private static void row(Markup page, String name, double value, Figure figure, Band band, int places, String unit) {
        Estimate estimate = new Estimate(value, 0.5 * (band.high() - band.low()));
        int shown = band.high() - band.low() < 2 * Math.pow(10, -places) ? places + 1 : places;
        page.open("tr").element("th", name, "scope", "row");
        page.open("td", "class", "n")
                .element("strong", Told.figure(value, shown, unit))
                .close();
        page.open("td");
        page.text(Told.kept(QuantityWords.fixed(band.low(), shown) + " to " + QuantityWords.fixed(band.high(), shown)))
                .typed("; ")
                .text("doubt " + DoubtWord.of(figure, estimate).label())
                .typed(band.mostFrom().isEmpty() ? "" : ";");
        if (!band.mostFrom().isEmpty()) {
            page.text(" ").element("small", "most from " + band.mostFrom());
        }
        page.close().close();
    }

    private void remarks(Markup page) {
        Figures figures = worked.figures();
        page.open("ul", "class", "plain");
        SugarBasis basis = worked.plan().recipe().target().sugarBasis();
        if (basis != SugarBasis.AS_DISSOLVED && worked.plan().recipe().target().sugar() != null) {
            Figure restated = basis == SugarBasis.AS_INVERT ? Figure.SUGAR_AS_INVERT : Figure.SUGAR_AS_SUCROSE;
            page.element("li", "Sugar " + basis.label() + ": " + Told.figure(figures.value(restated), 0, "g/L") + ".");
        }
        if (options.units() == SheetOptions.Units.US) {
            double millilitres = worked.measured().result().millilitres();
            page.element("li", "Volume: " + Told.kept(QuantityWords.us(new Volume(millilitres))) + ".");
        }
        if (figures.has(Figure.FREEZING_POINT)) {
            page.element("li", freezing(figures.value(Figure.FREEZING_POINT), figures.doubt(Figure.FREEZING_POINT)));
        }
        page.element(
                "li",
                "Energy: " + Told.figure(figures.value(Figure.ENERGY_KJ), 0, "kJ") + ", "
                        + Told.figure(figures.value(Figure.ENERGY_KCAL), 0, "kcal") + " in 100 mL at 20 °C.");
        page.close();
    }

    private static String freezing(double celsius, double doubt) {
        String ice = "first ice at about " + Told.figure(celsius, 0, "°C") + " ± " + Told.figure(doubt, 0, "°C") + ".";
        if (celsius + doubt < FREEZER) {
            return "Stays liquid in a freezer at −18 °C; " + ice;
        }
        return (celsius - doubt > FREEZER ? "Freezes in part at −18 °C; " : "May slush at −18 °C; ") + ice;
    }
}
