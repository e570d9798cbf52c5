package org.stillroom.core.quantity;

import java.util.Map;

/** What a percentage is said to be of, by the words around its sign; spaces, points and case do not matter. */
enum PercentWords {
    UNSAID,
    BY_VOLUME,
    BY_MASS,
    MASS_PER_VOLUME,
    UNKNOWN;

    private static final Map<String, PercentWords> BY_KEY = Map.ofEntries(
            Map.entry("%", UNSAID),
            Map.entry("%vol", BY_VOLUME),
            Map.entry("vol%", BY_VOLUME),
            Map.entry("vol-%", BY_VOLUME),
            Map.entry("volumen-%", BY_VOLUME),
            Map.entry("%v/v", BY_VOLUME),
            Map.entry("%(v/v)", BY_VOLUME),
            Map.entry("%abv", BY_VOLUME),
            Map.entry("abv", BY_VOLUME),
            Map.entry("%alc/vol", BY_VOLUME),
            Map.entry("%alcbyvol", BY_VOLUME),
            Map.entry("%alcoholbyvolume", BY_VOLUME),
            Map.entry("%byvolume", BY_VOLUME),
            Map.entry("%mass", BY_MASS),
            Map.entry("mass%", BY_MASS),
            Map.entry("mass-%", BY_MASS),
            Map.entry("masse-%", BY_MASS),
            Map.entry("gew-%", BY_MASS),
            Map.entry("gewichts-%", BY_MASS),
            Map.entry("%w/w", BY_MASS),
            Map.entry("%(w/w)", BY_MASS),
            Map.entry("%m/m", BY_MASS),
            Map.entry("%(m/m)", BY_MASS),
            Map.entry("%abw", BY_MASS),
            Map.entry("%wt", BY_MASS),
            Map.entry("wt%", BY_MASS),
            Map.entry("%bymass", BY_MASS),
            Map.entry("%byweight", BY_MASS),
            Map.entry("%w/v", MASS_PER_VOLUME),
            Map.entry("%(w/v)", MASS_PER_VOLUME),
            Map.entry("%m/v", MASS_PER_VOLUME),
            Map.entry("%(m/v)", MASS_PER_VOLUME));

    static PercentWords of(String words) {
        String key = Units.key(words).replace("percent", "%");
        return BY_KEY.getOrDefault(key, UNKNOWN);
    }
}
