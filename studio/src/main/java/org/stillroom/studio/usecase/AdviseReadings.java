package org.stillroom.studio.usecase;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Gauging;
import org.stillroom.core.gauging.Guide;
import org.stillroom.core.gauging.Method;
import org.stillroom.core.plan.Correction.Batch;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;

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
    public static List<Guide.Choice> answer(Asked asked, Workings workings) {
        Volume batch = asked.batch();
        List<Guide.Choice> choices = Guide.choices(
                asked.have(), asked.likely().contents(), null, batch == null ? null : batch.millilitres());
        choices.forEach(choice -> workings.step(
                "doubt of strength by " + methods(choice), choice.strength(), "% vol, 90 %", Source.DOUBT_TABLE));
        double hidden = Gauging.hidden(asked.likely().contents());
        workings.step("strength that sugar hides from a spirit hydrometer", hidden, "% vol", Source.VOLUME_MODEL);
        return choices;
    }

    private static String methods(Guide.Choice choice) {
        return String.join(" and ", choice.methods().stream().map(Method::label).toList());
    }
}
