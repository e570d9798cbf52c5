package org.stillroom.studio.usecase;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Gauging;
import org.stillroom.core.gauging.Guide;
import org.stillroom.core.gauging.Method;
import org.stillroom.core.gauging.Poured;
import org.stillroom.core.liquid.Contents;
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
     * @param likely the liquid, of about these figures; where it is known what was poured, that counts instead
     * @param have ways to measure
     * @param batch how much there is, or null when it does not matter
     * @param poured what is known of it before it is read, or null
     */
    public record Asked(
            Batch likely,
            List<Method> have,
            @Nullable Volume batch,
            @Nullable Poured poured) {
        public Asked {
            have = List.copyOf(have);
        }
    }

    /**
     * The advice.
     *
     * @param choices of one or two ways, best first; empty when nothing that is there can tell strength from sugar
     * @param together what all of them together would tell, where they tell anything
     * @param hidden strength that sugar hides from a spirit hydrometer, % vol
     */
    public record Advice(List<Guide.Choice> choices, Optional<Guide.Choice> together, double hidden) {
        public Advice {
            choices = List.copyOf(choices);
        }
    }

    /** Returns the advice. */
    public static Advice answer(Asked asked, Workings workings) {
        Volume batch = asked.batch();
        Poured poured = asked.poured();
        Contents likely = poured == null ? asked.likely().contents() : poured.contents();
        List<Guide.Choice> choices =
                Guide.choices(asked.have(), likely, poured, batch == null ? null : batch.millilitres());
        choices.forEach(choice -> workings.step(
                "doubt of strength by " + methods(choice), choice.strength(), "% vol, 90 %", Source.DOUBT_TABLE));
        double hidden = Gauging.hidden(likely);
        workings.step("strength that sugar hides from a spirit hydrometer", hidden, "% vol", Source.VOLUME_MODEL);
        return new Advice(choices, Guide.choice(asked.have(), likely, poured), hidden);
    }

    private static String methods(Guide.Choice choice) {
        return String.join(" and ", choice.methods().stream().map(Method::label).toList());
    }
}
