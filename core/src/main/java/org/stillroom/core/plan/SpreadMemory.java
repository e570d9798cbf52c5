package org.stillroom.core.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Spreads that were drawn, so that a stage whose figures stay the same while its recipe is typed is not drawn anew for each key.
 *
 * <p>Answers what {@link Spread#of} answers: nothing is known again but what was asked with the same numbers. Several threads may
 * ask at once.
 */
public final class SpreadMemory {
    private final Map<Question, Bands> drawn;

    /** All that a spread depends on: names, and numbers in a fixed order. */
    record Question(List<String> names, List<Double> numbers, long seed, int draws) {}

    /** @param most spreads that are kept; the one that was not asked for longest goes first */
    public SpreadMemory(int most) {
        this.drawn = new LinkedHashMap<>(16, 0.75f, true) {
            private static final long serialVersionUID = 1;

            @Override
            protected boolean removeEldestEntry(Map.Entry<Question, Bands> eldest) {
                return size() > most;
            }
        };
    }

    /** Returns the same as {@link Spread#of}. */
    public Bands of(Plan plan, List<Taken> taken, long seed, int draws) {
        Question question = Spread.question(plan, taken, seed, draws);
        synchronized (drawn) {
            Bands before = drawn.get(question);
            if (before != null) {
                return before;
            }
        }
        Bands bands = Spread.of(plan, taken, seed, draws);
        synchronized (drawn) {
            drawn.put(question, bands);
        }
        return bands;
    }
}
