package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;

/**
 * How a making can go on after what was poured.
 *
 * @param keeping holds the volume; the nearest where it cannot hold everything
 * @param more holds strength, sugar, acidity and doses, with more of everything; null when {@code keeping} is on the target, or
 *     when what is at hand does not allow it
 * @param less holds them with less of everything and nothing added to what is in; null when there is no such way, or no need
 * @param wanting what {@code more} would take beyond what is at hand; empty when there is such a way
 */
public record Replanned(
        Way keeping, @Nullable Way more, @Nullable Way less, List<Wanting> wanting) {
    public Replanned {
        wanting = List.copyOf(wanting);
    }

    /**
     * More than there is.
     *
     * @param line index of the line
     * @param grams what it would take, g
     * @param atHand what there is, g
     */
    public record Wanting(int line, double grams, double atHand) {}

    /** Returns the ways in the order in which they are offered, the one that asks for nothing first. */
    public List<Way> ways() {
        List<Way> ways = new ArrayList<>(List.of(keeping));
        if (more != null) {
            ways.add(more);
        }
        if (less != null) {
            ways.add(less);
        }
        return ways;
    }

    /** Returns the way of a kind, or null when it is not open. */
    public @Nullable Way way(Way.Kind kind) {
        return switch (kind) {
            case KEEP_VOLUME -> keeping;
            case MORE_OF_EVERYTHING -> more;
            case LESS_OF_EVERYTHING -> less;
        };
    }

    /** Returns in words what changed against the plan, what can no longer be reached, and what can be done. */
    public List<Finding> findings() {
        return new Consequences(this).findings();
    }
}
