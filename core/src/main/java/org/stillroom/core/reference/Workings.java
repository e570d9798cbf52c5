package org.stillroom.core.reference;

import java.util.ArrayList;
import java.util.List;

/**
 * Receives the steps of a computation as it runs, so that the explanation is the computation and not a second one.
 *
 * <p>Pass {@link #NONE} where nobody listens; it costs one virtual call a step.
 */
public interface Workings {
    /** Listens to nothing. */
    Workings NONE = (what, value, unit, source) -> {};

    /**
     * Takes one step.
     *
     * @param what the figure in the trade's words, such as "density of the ethanol and water"
     * @param value its value
     * @param unit unit and basis, such as "kg/m³ at 20 °C"
     * @param source where the formula or the number comes from
     */
    void step(String what, double value, String unit, Source source);

    /** Steps kept in the order they were taken. */
    final class Written implements Workings {
        private final List<Step> steps = new ArrayList<>();

        @Override
        public void step(String what, double value, String unit, Source source) {
            steps.add(new Step(what, value, unit, source));
        }

        public List<Step> steps() {
            return List.copyOf(steps);
        }
    }

    /** One step of a computation: a figure, its unit and basis, and its source. */
    record Step(String what, double value, String unit, Source source) {}
}
