package org.stillroom.studio.store;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What an instrument was found to do, against water or something else that is known.
 *
 * @param day on which, such as 2026-11-26
 * @param value of a flask its volume, mL at 20 °C; of a dropper what its drop of water weighs, mg; of all others what they show too
 *     much, in their own unit
 * @param halfWidth within which that is right
 * @param typed what was read, by the parts of the question, as typed
 */
public record Calibration(String day, double value, double halfWidth, Map<String, List<String>> typed) {
    public Calibration {
        typed = Collections.unmodifiableMap(new LinkedHashMap<>(typed));
    }
}
