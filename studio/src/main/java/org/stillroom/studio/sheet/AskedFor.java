package org.stillroom.studio.sheet;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Target;
import org.stillroom.studio.usecase.WorkedPlan;

/** The row of what was asked for, each figure with its unit and basis. */
final class AskedFor {
    private record Cell(String name, String figure, String unit) {}

    private final WorkedPlan worked;
    private final SheetOptions options;

    AskedFor(WorkedPlan worked, SheetOptions options) {
        this.worked = worked;
        this.options = options;
    }

    void write(Markup page) {
        List<Cell> cells = cells();
        page.open("table", "class", "asked")
                .element("caption", "Asked for")
                .open("tbody")
                .open("tr");
        for (Cell cell : cells) {
            page.open("td").element("span", cell.name(), "class", "name");
            page.text(" ").element("strong", cell.figure());
            page.text(Told.kept(" ")).element("span", cell.unit(), "class", "unit");
            page.close();
        }
        page.close().close().close();
    }

    private List<Cell> cells() {
        Target target = worked.plan().recipe().target();
        List<Cell> cells = new ArrayList<>();
        if (target.strength() != null) {
            cells.add(new Cell("Strength, 20 °C", Told.wanted(target.strength().value()), "% vol"));
        }
        if (target.sugar() != null) {
            cells.add(new Cell(
                    "Sugar, " + target.sugarBasis().label(),
                    Told.wanted(target.sugar().value()),
                    "g/L"));
        }
        if (target.acidity() != null) {
            cells.add(
                    new Cell("Acidity, as citric", Told.wanted(target.acidity().value()), "g/L"));
        }
        cells.add(volume(target.millilitres()));
        cells.add(weight());
        return cells;
    }

    private Cell volume(@org.jspecify.annotations.Nullable Span asked) {
        String name = asked == null ? "Volume, 20 °C, as it comes" : "Volume, 20 °C";
        Span millilitres = asked == null ? Span.exactly(Math.rint(worked.plan().millilitres())) : asked;
        String unit = options.units() == SheetOptions.Units.METRIC || !millilitres.isExact()
                ? "mL"
                : Told.kept("mL, " + QuantityWords.us(new Volume(millilitres.low())));
        return new Cell(name, Told.wanted(millilitres), unit);
    }

    private Cell weight() {
        double grams =
                worked.plan().lines().stream().mapToDouble(PlannedLine::grams).sum();
        String unit = options.units() == SheetOptions.Units.METRIC
                ? "g"
                : Told.kept("g, " + QuantityWords.us(new Mass(grams)));
        return new Cell("Weight in the jar", QuantityWords.fixed(grams, grams < 100 ? 1 : 0), unit);
    }
}
