package org.stillroom.studio.web.clarity;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;

/**
 * A forecast, or why there is none.
 *
 * @param view what to show, or null
 * @param whyNot a sentence, or empty
 * @param problems what was not understood, or why nothing can be forecast
 */
public record Forecast(@Nullable ClarityView view, String whyNot, List<Finding> problems) {
    public Forecast {
        problems = List.copyOf(problems);
    }
}
