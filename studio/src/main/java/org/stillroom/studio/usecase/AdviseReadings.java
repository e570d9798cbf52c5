package org.stillroom.studio.usecase;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Gauging;
import org.stillroom.core.gauging.Guide;
import org.stillroom.core.gauging.Method;
import org.stillroom.core.gauging.Poured;
import org.stillroom.core.gauging.Thermometer;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.VolumeModel;
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
     * @param likely the liquid
     * @param have ways to measure
     * @param batch how much there is, or null when it does not matter
     * @param poured what went in, or null
     */
    public record Asked(
            Contents likely,
            List<Method> have,
            @Nullable Volume batch,
            @Nullable Poured poured) {
        public Asked {
            have = List.copyOf(have);
        }

        /** Returns what is asked of a liquid of about these figures. */
        public static Asked about(Batch likely, List<Method> have, @Nullable Volume batch) {
            return new Asked(likely.contents(), have, batch, null);
        }

        /** Returns what is asked where it is known what went in, or what a log says of it. */
        public static Asked ofPoured(Poured poured, List<Method> have) {
            Volume batch = new Volume(
                    VolumeModel.atTwenty().millilitres(poured.contents().toGrams()));
            return new Asked(poured.contents(), have, batch, poured);
        }
    }

    /**
     * The advice.
     *
     * @param choices of one or two ways, best first; empty when nothing that is there can tell strength from sugar
     * @param together what all of them together would tell, where they tell anything
     * @param before what is known without measuring, where it is known what was poured
     * @param hidden strength that sugar hides from a spirit hydrometer, % vol
     */
    public record Advice(
            List<Guide.Choice> choices, Optional<Guide.Choice> together, Optional<Guide.Choice> before, double hidden) {
        /** Readings that leave more than this part of what was in doubt before are not worth a sample for their figures. */
        private static final double HARDLY_LESS = 0.8;

        public Advice {
            choices = List.copyOf(choices);
        }

        /** Returns whether what was poured is known so well that readings hardly narrow it, and only tell of slips. */
        public boolean onlyChecks() {
            return before.isPresent()
                    && together.isPresent()
                    && together.get().strength() > HARDLY_LESS * before.get().strength()
                    && together.get().sugar() > HARDLY_LESS * before.get().sugar();
        }
    }

    /** Returns the advice. */
    public static Advice answer(Asked asked, Workings workings) {
        Volume batch = asked.batch();
        List<Guide.Choice> choices = Guide.choices(
                asked.have(),
                asked.likely(),
                asked.poured(),
                Thermometer.USUAL,
                batch == null ? null : batch.millilitres());
        Optional<Guide.Choice> before = together(asked, List.of());
        before.ifPresent(known -> workings.step(
                "doubt of strength by what was poured alone", known.strength(), "% vol, 90 %", Source.DOUBT_TABLE));
        choices.forEach(choice -> workings.step(
                "doubt of strength by " + methods(choice), choice.strength(), "% vol, 90 %", Source.DOUBT_TABLE));
        double hidden = Gauging.hidden(asked.likely());
        workings.step("strength that sugar hides from a spirit hydrometer", hidden, "% vol", Source.VOLUME_MODEL);
        return new Advice(choices, together(asked, asked.have()), before, hidden);
    }

    private static Optional<Guide.Choice> together(Asked asked, List<Method> methods) {
        return Guide.choice(methods, asked.likely(), asked.poured(), Thermometer.USUAL);
    }

    private static String methods(Guide.Choice choice) {
        return String.join(" and ", choice.methods().stream().map(Method::label).toList());
    }
}
