package org.stillroom.studio.usecase;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Guide;
import org.stillroom.core.gauging.Method;
import org.stillroom.core.plan.Correction.Batch;
import org.stillroom.core.quantity.Volume;

/** Tells which readings serve best for a liquid, before anything is measured. */
public final class AdviseReadings {
    private AdviseReadings() {}

    /**
     * What is likely in the vessel, and what the maker can measure.
     *
     * @param likely the liquid, of about these figures
     * @param have ways to measure
     * @param batch how much there is, or null when it does not matter
     */
    public record Asked(
            Batch likely, List<Method> have, @Nullable Volume batch) {
        public Asked {
            have = List.copyOf(have);
        }
    }

    /** Returns the choices, best first; empty when nothing that is there can tell strength from sugar. */
    public static List<Guide.Choice> answer(Asked asked) {
        Volume batch = asked.batch();
        return Guide.choices(asked.have(), asked.likely().contents(), null, batch == null ? null : batch.millilitres());
    }
}
