package org.stillroom.studio.web.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.plan.Band;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.planner.marks.MeasuredLine;
import org.stillroom.planner.shopping.ShoppingList;
import org.stillroom.studio.recipefile.FormReading;
import org.stillroom.studio.usecase.WorkedPlan;
import org.stillroom.studio.usecase.compose.Composed;
import org.stillroom.studio.web.triangle.TriangleView;
import org.stillroom.studio.wording.UnitSystem;
import org.stillroom.studio.wording.Words;

/**
 * What the page of a recipe shows.
 *
 * @param id of the recipe
 * @param basedOn number of the revision that the work is based on, 0 for none
 * @param hasDraft whether something is typed that is not saved
 * @param composed what came of the form
 * @param triangle or null as long as there is no plan
 * @param shopping or null as long as there is no plan
 * @param names that a line may use
 * @param shelf lots that can be put in, by id and in words
 * @param words of the reader
 */
public record ComposeView(
        String id,
        int basedOn,
        boolean hasDraft,
        Composed composed,
        @Nullable TriangleView triangle,
        @Nullable ShoppingList shopping,
        List<String> names,
        Map<String, String> shelf,
        Words words) {

    /**
     * One line of the recipe as the page shows it.
     *
     * @param index its place on the page
     * @param place its place among the lines of the plan, which has no empty ones
     */
    public record LineRow(
            int index,
            int place,
            String use,
            String amount,
            String note,
            @Nullable MeasuredLine planned) {
        public boolean isFree() {
            return amount.strip().equals("free");
        }

        public String grams(Words words) {
            return planned == null
                    ? "–"
                    : words.number(planned.exact().grams(), planned.exact().grams() < 10 ? 2 : 1);
        }

        public String millilitres(Words words) {
            if (planned == null || planned.exact().millilitres().isEmpty()) {
                return "–";
            }
            double millilitres = planned.exact().millilitres().getAsDouble();
            return words.number(millilitres, millilitres < 10 ? 2 : 1);
        }

        /** Returns what the instrument at hand shows. */
        public String reading(Words words) {
            if (planned == null) {
                return "";
            }
            String reading = words.units() == UnitSystem.US
                    ? planned.reading().us()
                    : planned.reading().words();
            return words.marked(reading) + ", " + planned.reading().instrument();
        }
    }

    /** A figure with its doubt: where it lies nine times in ten. */
    public record FigureRow(
            String key,
            String label,
            String value,
            String unit,
            String band,
            String from,
            String source,
            String status) {}

    public String typed(String field) {
        return composed.form().typed(field);
    }

    public List<Finding> problems(String field) {
        return composed.reading().problemsAt(field);
    }

    public boolean isRefused(String field) {
        return !problems(field).isEmpty();
    }

    /** Returns what was taken for granted at a field. */
    public List<Finding> notes(String field) {
        return composed.reading().notes().stream()
                .filter(at -> at.field().equals(field))
                .map(FormReading.At::finding)
                .toList();
    }

    public int count(String list) {
        return composed.form().count(list);
    }

    /** Returns the lines in the order in which they are written. */
    public List<LineRow> lines() {
        List<LineRow> rows = new ArrayList<>();
        int planned = 0;
        WorkedPlan worked = composed.worked();
        for (int i = 0; i < count("lines"); i++) {
            String start = "lines." + i + ".";
            String use = typed(start + "use");
            boolean blank = use.isBlank() && typed(start + "amount").isBlank();
            MeasuredLine line = worked == null
                            || blank
                            || planned >= worked.measured().lines().size()
                    ? null
                    : worked.measured().lines().get(planned);
            rows.add(new LineRow(i, planned, use, typed(start + "amount"), typed(start + "note"), line));
            planned += blank ? 0 : 1;
        }
        return rows;
    }

    /** Returns the figures that matter first; those that few ask for stand under {@link #more}. */
    public List<FigureRow> figures() {
        WorkedPlan worked = composed.worked();
        if (worked == null) {
            return List.of();
        }
        List<FigureRow> rows = new ArrayList<>();
        rows.add(row(worked, Figure.STRENGTH, worked.bands().strength(), 1));
        rows.add(row(worked, Figure.SUGAR, worked.bands().sugar(), 0));
        if (worked.figures().value(Figure.ACIDITY) > 0) {
            rows.add(row(worked, Figure.ACIDITY, worked.bands().acidity(), 1));
        }
        rows.add(row(worked, Figure.VOLUME_20C, worked.bands().volume(), 0));
        return rows;
    }

    public List<FigureRow> more() {
        WorkedPlan worked = composed.worked();
        if (worked == null) {
            return List.of();
        }
        List<FigureRow> rows = new ArrayList<>();
        for (Figure figure : Figure.values()) {
            boolean first = figure == Figure.STRENGTH || figure == Figure.SUGAR || figure == Figure.ACIDITY;
            if (!first
                    && figure != Figure.VOLUME
                    && figure != Figure.VOLUME_20C
                    && worked.figures().has(figure)) {
                rows.add(row(worked, figure, null, figure.decimals()));
            }
        }
        return rows;
    }

    private FigureRow row(WorkedPlan worked, Figure figure, @Nullable Band band, int decimals) {
        double value = worked.figures().value(figure);
        double half = worked.figures().doubt(figure);
        String range = band == null
                ? (half == 0 ? "" : "± " + words.number(half, decimals))
                : words.say("compose.band", words.number(band.low(), decimals), words.number(band.high(), decimals));
        return new FigureRow(
                figure.key(),
                figure.label(),
                words.number(value, decimals),
                figure.unit().replace("the temperature asked", "20 °C"),
                range,
                band == null ? "" : band.mostFrom(),
                figure.source().title(),
                figure.source().standing().label());
    }

    /** Returns the strength without its unit, for the line that stays on top. */
    public String strength() {
        WorkedPlan worked = composed.worked();
        return worked == null ? "–" : words.number(worked.figures().value(Figure.STRENGTH), 1);
    }

    public String sugar() {
        WorkedPlan worked = composed.worked();
        return worked == null ? "–" : words.number(worked.figures().value(Figure.SUGAR), 0);
    }

    /** Returns what goes in, as money; empty where no price is known. */
    public String cost() {
        if (shopping == null || shopping.used().isEmpty()) {
            return "";
        }
        return shopping.used().stream()
                .map(money -> words.number(money.amount(), 2) + "\u00a0" + money.currency())
                .collect(Collectors.joining(" + "));
    }

    /** Returns how much is left after what the recipe loses, or empty. */
    public String volume() {
        WorkedPlan worked = composed.worked();
        return worked == null ? "" : words.amount(new Volume(worked.plan().millilitres()));
    }

    public List<Finding> findings() {
        return composed.findings();
    }
}
