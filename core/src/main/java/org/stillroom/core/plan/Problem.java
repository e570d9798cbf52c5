package org.stillroom.core.plan;

import java.util.EnumMap;
import java.util.Map;
import org.stillroom.core.quantity.Span;

/**
 * A recipe in numbers: what each line brings, how much of it may be taken, and what is asked of the whole.
 *
 * <p>A line's grams are {@code fixed + dose·V + y} with {@code 0 ≤ y ≤ room + roomPerMillilitre·V}, V being the millilitres of the
 * finished liquid at 20 °C.
 *
 * @param lines the lines
 * @param asked what is asked; what is absent is open
 * @param weights what turns grams of each substance into an asked figure times V, see {@link Asked#weights}
 */
@SuppressWarnings("ArrayRecordComponent") // numbers of the inner loop, never compared, never leaving the package
record Problem(Line[] lines, Map<Asked, Span> asked, Map<Asked, double[]> weights) {

    /**
     * One line in numbers.
     *
     * @param perGram grams of each substance in a gram of it
     * @param fixed grams taken in any case
     * @param dose grams taken in any case for each millilitre of finished liquid
     * @param room further grams that may be taken; infinite when there is no limit
     * @param roomPerMillilitre further grams that may be taken for each millilitre of finished liquid
     * @param cost what a gram costs, in the measure of the aim
     */
    @SuppressWarnings("ArrayRecordComponent") // numbers of the inner loop, never compared, never leaving the package
    record Line(double[] perGram, double fixed, double dose, double room, double roomPerMillilitre, double cost) {
        boolean canVary() {
            return room > 0.0 || roomPerMillilitre > 0.0;
        }

        Line bringing(double[] other) {
            return new Line(other, fixed, dose, room, roomPerMillilitre, cost);
        }

        /** Returns the line free to take from so much to so much. */
        Line between(double least, double most) {
            return new Line(perGram, least, 0.0, most - least, 0.0, cost);
        }

        /** Returns the line free to take from so much to so much for each millilitre of finished liquid. */
        Line dosedBetween(double least, double most) {
            return new Line(perGram, 0.0, least, 0.0, most - least, cost);
        }

        Line costing(double perGramOfIt) {
            return new Line(perGram, fixed, dose, room, roomPerMillilitre, perGramOfIt);
        }
    }

    Problem withLine(int index, Line line) {
        Line[] changed = lines.clone();
        changed[index] = line;
        return new Problem(changed, asked, weights);
    }

    /** Returns the problem asking something else of one figure. */
    Problem asking(Asked what, Span span) {
        Map<Asked, Span> changed = new EnumMap<>(Asked.class);
        changed.putAll(asked);
        changed.put(what, span);
        return new Problem(lines, changed, weights);
    }

    /** Returns the problem with every range narrowed to its middle. */
    Problem aimingAtTheMiddle() {
        Problem narrowed = this;
        for (Map.Entry<Asked, Span> each : asked.entrySet()) {
            Span span = each.getValue();
            narrowed = narrowed.asking(each.getKey(), Span.exactly(0.5 * (span.low() + span.high())));
        }
        return narrowed;
    }

    boolean asksForARange() {
        return asked.values().stream().anyMatch(span -> !span.isExact());
    }
}
