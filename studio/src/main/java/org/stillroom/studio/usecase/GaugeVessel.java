package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Gauged;
import org.stillroom.core.gauging.Gauging;
import org.stillroom.core.gauging.NoSuchLiquid;
import org.stillroom.core.gauging.Poured;
import org.stillroom.core.gauging.Reading;
import org.stillroom.core.gauging.Shown;
import org.stillroom.core.gauging.Thermometer;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.plan.Taken;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;
import org.stillroom.planner.marks.Measured;
import org.stillroom.planner.marks.MeasuredLine;

/** Finds what is in a vessel from readings and from the recipe that was poured. */
public final class GaugeVessel {
    private GaugeVessel() {}

    /**
     * What is known.
     *
     * @param readings of the liquid
     * @param thermometer that their temperatures were read by
     * @param poured what is known of it before it is read: what went in, or what a log says; null where nothing is
     */
    public record Asked(
            List<Reading> readings,
            Thermometer thermometer,
            @Nullable Poured poured) {
        public Asked {
            readings = List.copyOf(readings);
        }
    }

    /**
     * Returns what is in the vessel.
     *
     * @throws Impossible when that cannot be told from the readings, or no liquid shows them
     */
    public static Gauged answer(Asked asked, Workings workings) {
        asked.readings().forEach(reading -> Range.refuseOutside(reading.at()));
        try {
            Gauged gauged = Gauging.of(asked.readings(), asked.poured(), asked.thermometer())
                    .orElseThrow(() -> new Impossible(
                            "",
                            "what was read leaves open how strong and how sweet it is.",
                            "Add a reading of another kind: beside a density or a hydrometer a refractometer, the residue made up"
                                    + " again, or what the label says of the sugar."));
            explain(gauged, asked.readings(), workings);
            return gauged;
        } catch (NoSuchLiquid none) {
            throw new Impossible(
                    "",
                    Objects.requireNonNull(none.getMessage()),
                    "Check units, temperatures and which number stands where; leave out one reading after the other to see which it"
                            + " is.");
        }
    }

    private static void explain(Gauged gauged, List<Reading> readings, Workings workings) {
        for (int i = 0; i < readings.size(); i++) {
            Shown shown = readings.get(i).shown();
            String what = shown.label() + ", what it would show of the estimate";
            workings.step(what, gauged.pulls().get(i).expected(), shown.unit(), source(shown));
        }
        workings.step("strength that fits all best", gauged.strength().value(), "% vol at 20 °C", Source.VOLUME_MODEL);
        workings.step("sugar that fits all best", gauged.sugar().value(), "g/L at 20 °C", Source.VOLUME_MODEL);
        workings.step(
                "doubt of strength by the thermometer alone",
                gauged.warmth().strength(),
                "% vol, 90 %",
                Source.VOLUME_MODEL);
    }

    private static Source source(Shown shown) {
        return switch (shown) {
            case REFRACTOMETER, COMPENSATED_REFRACTOMETER, REFRACTIVE_INDEX -> Source.REFRACTION_SUM;
            case MASS -> Source.BALANCE;
            case DENSITY,
                    GRAVITY,
                    SACCHAROMETER,
                    BAUME,
                    SPIRIT_20C,
                    SPIRIT_15C,
                    PROOF,
                    VOLUME,
                    RESIDUE_DENSITY,
                    DRY_RESIDUE,
                    TRUE_STRENGTH,
                    TRUE_SUGAR,
                    ACIDITY -> Source.VOLUME_MODEL;
        };
    }

    /**
     * Returns what went in, and how far each label and each measure may have been off. Where it was made up to a mark, what another
     * line or label brings more takes as much less of the last one, so that the volume is that of the mark.
     */
    public static Poured poured(Measured measured) {
        Contents contents = Contents.NONE;
        List<Poured.Slip> slips = new ArrayList<>();
        for (MeasuredLine line : measured.lines()) {
            Taken taken = PlanRecipe.taken(line);
            double[] perGram = line.exact().ingredient().perGram().toGrams();
            double[] upper = line.exact().ingredient().perGramAtUpperLabel().toGrams();
            double[] label = new double[Substance.COUNT];
            double[] measure = new double[Substance.COUNT];
            for (int i = 0; i < label.length; i++) {
                label[i] = taken.grams() * (upper[i] - perGram[i]);
                measure[i] = PlanRecipe.gramsInDoubt(line) * perGram[i];
            }
            contents = contents.plus(line.exact().ingredient().perGram().times(taken.grams()));
            slips.add(new Poured.Slip("the label of " + line.exact().name(), label));
            slips.add(new Poured.Slip(measureOf(line), measure));
        }
        for (MeasuredLine line : measured.lines()) {
            if (PlanRecipe.isToTheMark(line)) {
                double[] all = contents.toGrams();
                slips.replaceAll(slip -> slip.what().equals(measureOf(line)) ? slip : upToTheMark(slip, all, line));
            }
        }
        return new Poured(contents, slips);
    }

    private static String measureOf(MeasuredLine line) {
        return "the measure of " + line.exact().name();
    }

    /** @param all grams of each substance in the vessel */
    private static Poured.Slip upToTheMark(Poured.Slip slip, double[] all, MeasuredLine last) {
        double[] moved = all.clone();
        for (int i = 0; i < moved.length; i++) {
            moved[i] = Math.max(0.0, moved[i] + slip.atItsEnd()[i]);
        }
        VolumeModel model = VolumeModel.atTwenty();
        double less = (model.millilitres(moved) - model.millilitres(all))
                * last.exact().ingredient().gramsPerMillilitre().orElse(1.0);
        double[] perGram = last.exact().ingredient().perGram().toGrams();
        double[] atItsEnd = slip.atItsEnd().clone();
        for (int i = 0; i < atItsEnd.length; i++) {
            atItsEnd[i] -= less * perGram[i];
        }
        return new Poured.Slip(slip.what(), atItsEnd);
    }
}
