package org.stillroom.core.safety;

import java.util.Map;

/**
 * What analyses of a whole ingredient say that it brings of watched substances.
 *
 * @param where the place, such as "line 3, wormwood distillate"
 * @param grams in the whole batch
 */
record Found(String where, Map<Watched, Range> grams) {
    Found {
        grams = Map.copyOf(grams);
    }
}
