package org.stillroom.core.safety;

import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What analyses of a whole ingredient say that it brings of watched substances.
 *
 * @param where the place, such as "line 3, wormwood distillate"
 * @param bottle which of several of its line says so, or null where there is one
 * @param grams in the whole batch
 */
record Found(String where, Drawn.@Nullable Bottle bottle, Map<Watched, Range> grams) {
    Found {
        grams = Map.copyOf(grams);
    }
}
