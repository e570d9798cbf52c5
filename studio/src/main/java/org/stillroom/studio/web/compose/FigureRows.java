package org.stillroom.studio.web.compose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.plan.Band;
import org.stillroom.core.recipe.StartingPoints;
import org.stillroom.studio.usecase.WorkedPlan;
import org.stillroom.studio.usecase.compose.Composed;
import org.stillroom.studio.wording.Words;

/** The figures of the finished liquid as a page shows them: the ones that matter first, each with where it lies nine times in ten. */
public final class FigureRows {
    private final @Nullable WorkedPlan worked;
    private final Words words;

    FigureRows(Composed composed, Words words) {
        this.worked = composed.worked();
        this.words = words;
    }

    /**
     * A figure.
     *
     * @param value with no finer digits than its doubt allows
     * @param band from where to where it lies nine times in ten, or ± the doubt of the formulas
     * @param spread the band, or null where only the formulas' doubt is known
     * @param from what most of the doubt comes from; empty where that is not known
     * @param usual where recipes of a kind mostly lie, or empty
     */
    public record Row(
            Figure figure,
            String value,
            String unit,
            String band,
            @Nullable Band spread,
            String from,
            String usual) {
        public String source() {
            return figure.source().title() + " (" + figure.source().standing().label() + ")";
        }
    }

    /** Returns the figures that a maker looks at first. */
    public List<Row> first() {
        if (worked == null) {
            return List.of();
        }
        List<Row> rows = new ArrayList<>();
        bands(worked).forEach((figure, band) -> {
            boolean none = figure == Figure.ACIDITY && worked.figures().value(figure) == 0.0;
            if (!none) {
                rows.add(row(worked, figure, band, figure == Figure.SUGAR || figure == Figure.VOLUME_20C ? 0 : 1));
            }
        });
        if (worked.figures().has(Figure.FREEZING_POINT)) {
            rows.add(row(worked, Figure.FREEZING_POINT, null, 0));
        }
        return rows;
    }

    private static Map<Figure, Band> bands(WorkedPlan worked) {
        Map<Figure, Band> bands = new LinkedHashMap<>();
        bands.put(Figure.STRENGTH, worked.bands().strength());
        bands.put(Figure.SUGAR, worked.bands().sugar());
        bands.put(Figure.ACIDITY, worked.bands().acidity());
        bands.put(Figure.VOLUME_20C, worked.bands().volume());
        return bands;
    }

    /** Returns the figures that few ask for. */
    public List<Row> more() {
        if (worked == null) {
            return List.of();
        }
        List<Row> rows = new ArrayList<>();
        for (Figure figure : Figure.values()) {
            boolean shown = bands(worked).containsKey(figure) || figure == Figure.FREEZING_POINT;
            if (!shown && figure != Figure.VOLUME && worked.figures().has(figure)) {
                rows.add(row(worked, figure, null, figure.decimals()));
            }
        }
        return rows;
    }

    private Row row(WorkedPlan plan, Figure figure, @Nullable Band band, int decimals) {
        double value = plan.figures().value(figure);
        double half = plan.figures().doubt(figure);
        String range;
        if (band != null) {
            range = range(words, words.number(band.low(), decimals), words.number(band.high(), decimals), decimals);
        } else {
            range = half == 0 ? "" : "± " + words.number(half, decimals);
        }
        return new Row(
                figure,
                words.number(value, decimals),
                figure.unit().replace("the temperature asked", "20 °C"),
                range,
                band,
                band == null ? "" : band.mostFrom(),
                usual(figure, value));
    }

    /** A band narrower than the digits shown is said to be within half of the last digit. */
    private static String range(Words words, String low, String high, int decimals) {
        return low.equals(high)
                ? words.say("compose.within", words.number(0.5 * Math.pow(10, -decimals), decimals + 1))
                : words.say("compose.band", low, high);
    }

    private static String usual(Figure figure, double value) {
        StartingPoints.@Nullable Of of = switch (figure) {
            case STRENGTH -> StartingPoints.Of.STRENGTH;
            case SUGAR -> StartingPoints.Of.SUGAR;
            default -> null;
        };
        StartingPoints.@Nullable Row row = of == null ? null : StartingPoints.matching(of, value);
        return row == null
                ? ""
                : "Usual in " + row.kind() + " liqueurs: " + row.words() + " (common practice, no source).";
    }
}
