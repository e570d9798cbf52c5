package org.stillroom.studio.sheet;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.recipe.Measure;
import org.stillroom.core.recipe.MeasureKind;
import org.stillroom.planner.marks.Measured;
import org.stillroom.planner.marks.MeasuredLine;
import org.stillroom.studio.usecase.WorkedPlan;

/** The table of amounts in the order of mixing: what to take as the instrument shows it, largest, and the exact amounts. */
final class Amounts {
    private static final double TENTH_OF_A_GRAM = 0.1;

    private final WorkedPlan worked;
    private final SheetOptions options;

    Amounts(WorkedPlan worked, SheetOptions options) {
        this.worked = worked;
        this.options = options;
    }

    void write(Markup page, String heading) {
        page.element(heading, "Amounts, in order of mixing");
        page.open("div", "class", "scroll", "tabindex", "0", "role", "region", "aria-label", page.said(label()));
        page.open("table", "class", "weigh");
        head(page);
        page.open("tbody");
        Map<Integer, Measured.RunningTotal> totals = new HashMap<>();
        worked.runningTotals().forEach(total -> totals.put(total.line(), total));
        worked.runningTotals().forEach(total -> row(page, total.line(), total));
        IntStream.range(0, worked.measured().lines().size())
                .filter(line -> !totals.containsKey(line))
                .forEach(line -> row(page, line, null));
        page.close();
        page.close().close();
    }

    /** Several parts on one sheet each have such a region, told apart by what is made. */
    private String label() {
        return "Amounts for " + worked.plan().recipe().title();
    }

    private static void head(Markup page) {
        page.open("thead").open("tr");
        page.element("th", "done", "scope", "col", "class", "box");
        page.element("th", "ingredient", "scope", "col", "class", "what");
        page.element("th", "take", "scope", "col", "class", "take");
        page.element("th", "exact g", "scope", "col", "class", "n");
        page.element("th", Told.kept("mL at 20 °C"), "scope", "col", "class", "n");
        page.element("th", "untared scale then shows", "scope", "col", "class", "n untared");
        page.element("th", "poured", "scope", "col", "class", "line");
        page.close().close();
    }

    private void row(Markup page, int index, Measured.@org.jspecify.annotations.Nullable RunningTotal total) {
        MeasuredLine line = worked.measured().lines().get(index);
        page.open("tr");
        boolean taken = total != null;
        box(page, "box", taken ? "tick" : "");
        page.open("th", "scope", "row").open("strong").typed(line.name()).close();
        page.text(" ").open("small");
        Described.write(page, line.exact());
        page.close().close();
        page.open("td", "class", "take").text(take(line));
        if (!line.reading().instrument().isEmpty()) {
            String instrument = line.reading().instrument();
            page.text(" ").open("small");
            (instrument.equals(MeasureKind.SCALE.label()) ? page.text(instrument) : page.typed(instrument)).close();
        }
        page.close();
        page.element("td", bare(Told.grams(line.exact().grams()), "g"), "class", "n");
        OptionalDouble millilitres = line.exact().millilitres();
        page.element(
                "td",
                millilitres.isPresent() ? bare(Told.millilitres(millilitres.getAsDouble()), "mL") : "–",
                "class",
                "n");
        page.element("td", total == null ? "–" : running(total.total()), "class", "n");
        box(page, "line", taken ? "gap" : "");
        page.close();
    }

    /** Adds a cell to write in, or an empty one. */
    private static void box(Markup page, String kind, String inside) {
        page.open("td", "class", kind);
        if (!inside.isEmpty()) {
            page.element("span", "", "class", inside);
        }
        page.close();
    }

    private String take(MeasuredLine line) {
        return Told.amount(
                options.units() == SheetOptions.Units.METRIC
                        ? line.reading().words()
                        : line.reading().us());
    }

    /** The heading of the column says the unit; another one, such as kg, stays. */
    private static String bare(String figure, String unit) {
        String tail = Told.kept(" ") + unit;
        return figure.endsWith(tail) ? figure.substring(0, figure.length() - tail.length()) : figure;
    }

    private String running(double grams) {
        return options.units() == SheetOptions.Units.METRIC
                ? Told.figure(grams, scalePlaces(), "g")
                : Told.kept(QuantityWords.us(new Mass(grams)));
    }

    /** Returns the places that the coarsest of the maker's scales shows: a whole batch stands on that one. */
    private int scalePlaces() {
        double coarsest = worked.plan().recipe().measures().stream()
                .filter(measure -> measure.kind() == MeasureKind.SCALE)
                .mapToDouble(Amounts::marks)
                .max()
                .orElse(TENTH_OF_A_GRAM);
        return coarsest > 0.5 ? 0 : coarsest > 0.05 ? 1 : 2;
    }

    private static double marks(Measure scale) {
        return scale.marks() != null && scale.marks().value() instanceof Mass mass ? mass.grams() : TENTH_OF_A_GRAM;
    }
}
