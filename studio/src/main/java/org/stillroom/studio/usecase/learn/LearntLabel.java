package org.stillroom.studio.usecase.learn;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Gauged.Interval;
import org.stillroom.core.quantity.QuantityWords;

/**
 * What batches tell of a figure on a label.
 *
 * @param ingredient as recipes name it
 * @param lot id of the bottle, or null where it is told of all bottles of that name
 * @param figure which
 * @param labelled what the label says, in the unit of the figure
 * @param found what it comes out at, with the central 90 %
 * @param batches how many tell of it
 * @param standing how clear that is
 * @param beyondTolerance whether the batches contradict the label by more than its tolerance
 * @param orOf names of what went into the same batches, from which it cannot be told apart
 */
public record LearntLabel(
        String ingredient,
        @Nullable String lot,
        Figure figure,
        double labelled,
        Interval found,
        int batches,
        Standing standing,
        boolean beyondTolerance,
        List<String> orOf) {
    /** Labels that differ by more than this part are of different things, whatever their name. */
    private static final double NEAR = 0.1;

    public LearntLabel {
        orOf = List.copyOf(orOf);
    }

    /** The figures of labels. */
    public enum Figure {
        /** % vol at 20 °C. */
        STRENGTH("strength", "%", 1),
        /** Sugar, g/L. */
        SUGAR_PER_LITRE("sugar", "g/L", 0),
        /** Sugar, % by mass. */
        SUGAR_BY_MASS("sugar", "%", 1);

        private final String field;
        private final String unit;
        private final int decimals;

        Figure(String field, String unit, int decimals) {
            this.field = field;
            this.unit = unit;
            this.decimals = decimals;
        }

        /** Returns the field of an ingredient that it stands in. */
        public String field() {
            return field;
        }

        public String unit() {
            return unit;
        }

        public int decimals() {
            return decimals;
        }
    }

    /** How clear it is. */
    public enum Standing {
        /** It differs from the label by more than the doubt, so that the label can be put right. */
        CLEAR,
        /** It agrees with the label. */
        AS_LABELLED,
        /** Too little is known. */
        OPEN
    }

    /** Returns the figure as it would be typed, such as "95.2 %". */
    public String typed() {
        return QuantityWords.fixed(found.value(), figure.decimals()).replace('−', '-') + " " + figure.unit();
    }

    /** Returns its doubt as the tolerance of a label is typed: % vol, of sugar per cent of it; never less than the last digit. */
    public String tolerance() {
        double half = figure == Figure.STRENGTH ? found.halfWidth() : 100.0 * found.halfWidth() / found.value();
        return QuantityWords.fixed(Math.max(0.1, Math.ceil(10.0 * half) / 10.0), 1) + " %";
    }

    /**
     * Returns whether a label that says this can be put right by it; what is labelled quite otherwise is another thing. Where a bottle says
     * otherwise itself, it is enough that batches do not speak against that.
     */
    public boolean puts(double label) {
        double least = 0.5 * Math.pow(10.0, -figure.decimals());
        boolean same = Math.abs(label - labelled) < least;
        boolean near = Math.abs(label - found.value()) <= NEAR * label;
        boolean differs = Math.abs(label - found.value()) >= least && (label < found.low() || label > found.high());
        boolean known = standing != Standing.OPEN || (!same && batches > 1 && orOf.isEmpty());
        return known && differs && (same || near);
    }
}
