package org.stillroom.core.plan;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.recipe.SugarBasis;

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

        /** Returns the line with so many grams less to take. */
        Line leaving(double grams) {
            return new Line(perGram, fixed, dose, Math.max(0.0, room - grams), roomPerMillilitre, cost);
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

    /** Returns the problem leaving a figure open. */
    Problem leavingOpen(Asked what) {
        Map<Asked, Span> changed = new EnumMap<>(Asked.class);
        changed.putAll(asked);
        changed.remove(what);
        return new Problem(lines, changed, weights);
    }

    /** Returns the problem asking for nothing but its volume. */
    Problem leavingOpenComposition() {
        return leavingOpen(Asked.STRENGTH).leavingOpen(Asked.SUGAR).leavingOpen(Asked.ACIDITY);
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

    /** Returns what an answer comes to in a figure, in the figure's unit. */
    double figure(Asked what, Solution solution) {
        if (what == Asked.VOLUME) {
            return solution.millilitres();
        }
        double[] each = Objects.requireNonNull(weights.get(what));
        double sum = 0.0;
        for (int i = 0; i < lines.length; i++) {
            for (int s = 0; s < each.length; s++) {
                sum += each[s] * lines[i].perGram()[s] * solution.grams()[i];
            }
        }
        return sum / solution.millilitres();
    }

    /** Returns whether an answer lies beside what is asked by less than can be measured. */
    boolean isMetWithinDoubt(Solution solution) {
        for (Map.Entry<Asked, Span> each : asked.entrySet()) {
            Span span = each.getValue();
            double value = figure(each.getKey(), solution);
            if (Math.max(span.low() - value, value - span.high()) > unseen(each.getKey(), span)) {
                return false;
            }
        }
        return true;
    }

    /** Returns by how much a figure may lie beside the target before anyone's measure shows it. */
    static double unseen(Asked asked, Span span) {
        return switch (asked) {
            case VOLUME -> 1e-3 * span.low();
            case STRENGTH -> 0.05;
            case SUGAR -> 0.5;
            case ACIDITY -> 0.05;
        };
    }

    /** Returns the weights of every figure. */
    static Map<Asked, double[]> weights(SugarBasis basis) {
        Map<Asked, double[]> weights = new EnumMap<>(Asked.class);
        for (Asked asked : Asked.values()) {
            weights.put(asked, asked.weights(basis));
        }
        return weights;
    }
}
