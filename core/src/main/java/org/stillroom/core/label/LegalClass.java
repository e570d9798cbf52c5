package org.stillroom.core.label;

import java.util.List;
import org.stillroom.core.reference.Source;

/**
 * A name that law keeps for drinks of certain figures, held against a drink.
 *
 * @param market whose law
 * @param name the lawful name
 * @param clause where it stands
 * @param misses which figures fall short; empty when the figures allow the name
 * @param notShown what may or may not be met, for the drink holds it in a range, or nobody knows how much
 * @param asksBesides what else the name asks that figures cannot show; empty when nothing
 * @param source where it was read, or from memory
 */
public record LegalClass(
        Market market,
        String name,
        String clause,
        List<Miss> misses,
        List<String> notShown,
        String asksBesides,
        Source source) {
    public LegalClass {
        misses = List.copyOf(misses);
        notShown = List.copyOf(notShown);
    }

    /** Returns whether no figure rules the name out. */
    public boolean isMet() {
        return misses.isEmpty();
    }
}
