package org.stillroom.core.safety;

import java.util.List;
import org.stillroom.core.reference.Finding;

/**
 * One thing that is looked at.
 *
 * @param name short, as findings of it carry it
 * @param holds what it is asked of
 * @param says what it says, one sentence
 * @param check looks at a drink
 */
public record Rule(String name, Holds holds, String says, Check check) {
    /** What a rule is asked of. */
    public enum Holds {
        /** Of drinks alone: not of what its recipe says is an essence. */
        OF_DRINKS,
        /** Of everything that is made. */
        OF_ALL
    }

    /** Looks at a drink and says what it finds; nothing where the rule has no bearing on it. */
    @FunctionalInterface
    public interface Check {
        List<Finding> of(Drink drink, Serving serving);
    }
}
