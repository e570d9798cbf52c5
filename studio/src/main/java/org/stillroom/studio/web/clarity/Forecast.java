package org.stillroom.studio.web.clarity;

import org.jspecify.annotations.Nullable;

/**
 * A forecast, or why there is none.
 *
 * @param view what to show, or null
 * @param whyNot a sentence, or empty
 */
public record Forecast(@Nullable ClarityView view, String whyNot) {
    static Forecast not(String why) {
        return new Forecast(null, why);
    }
}
