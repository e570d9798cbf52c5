package org.stillroom.studio.answer;

import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Figures;

/** The figures of a liquid as fields for scripts, under the keys that they have everywhere. */
public final class FiguresFields {
    private FiguresFields() {}

    /** Returns the figures themselves; null where the liquid has none such. */
    public static Fields values(Figures figures) {
        Fields fields = new Fields();
        for (Figure figure : Figure.values()) {
            if (figures.has(figure)) {
                fields.put(figure.key(), figures.value(figure));
            } else {
                fields.putNone(figure.key());
            }
        }
        return fields;
    }

    /** Returns the half-widths of the central 90 % that the formulas leave, grams taken as exact. */
    public static Fields doubts(Figures figures) {
        Fields fields = new Fields();
        for (Figure figure : Figure.values()) {
            if (figures.has(figure)) {
                fields.put(figure.key(), figures.doubt(figure));
            } else {
                fields.putNone(figure.key());
            }
        }
        return fields;
    }
}
