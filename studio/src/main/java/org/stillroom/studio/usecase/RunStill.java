package org.stillroom.studio.usecase;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.extraction.PotStill;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;

/** Runs a pot still on paper, for those who are licensed: where the cut falls and what stays in the pot. */
public final class RunStill {
    private static final int STEPS = 10;

    private RunStill() {}

    /**
     * The question.
     *
     * @param charge in the pot, at 20 °C
     * @param strength of the charge
     * @param running strength that still runs when collection stops, or null
     * @param collected strength of all that is collected, or null; one of both is asked
     */
    public record Asked(
            Volume charge,
            Strength strength,
            @Nullable Strength running,
            @Nullable Strength collected) {}

    /**
     * The run.
     *
     * @param charged ethanol in the charge, mL at 20 °C
     * @param chargedGrams the same, g
     * @param distillate mL
     * @param strength of it, % vol
     * @param running strength at the cut, % vol
     * @param pot mL left
     * @param potStrength % vol
     * @param recovered of the ethanol, %
     * @param run how it went, in ten steps
     * @param findings the law and the hazards, always
     */
    public record Found(
            Estimate charged,
            Estimate chargedGrams,
            Estimate distillate,
            Estimate strength,
            Estimate running,
            Estimate pot,
            Estimate potStrength,
            Estimate recovered,
            List<PotStill.Stand> run,
            List<Finding> findings) {
        public Found {
            run = List.copyOf(run);
            findings = List.copyOf(findings);
        }
    }

    /**
     * Returns the run.
     *
     * @throws Impossible when it cannot run so
     */
    public static Found answer(Asked asked, Workings workings) {
        if (!(asked.charge().millilitres() > 0.0)) {
            throw new Impossible("charge", "there is nothing in the pot.", "Write how much is charged, such as 10L.");
        }
        PotStill still = Impossible.unless(
                "strength",
                "Give the strength of what is in the pot, such as 30%.",
                () -> PotStill.charged(asked.charge().millilitres(), percent(asked.strength())));
        PotStill.Stand stand = stand(still, asked);
        PotStill.Stand strong = stand(still.withStrongerVapour(), asked);
        workings.step("boiling point at the cut", stand.celsius(), "°C at 101.325 kPa", Source.VAPOUR_LIQUID);
        workings.step("ethanol collected", 100.0 * stand.recovered(), "% of the charge's", Source.RAYLEIGH);
        workings.step("distillate", stand.distillate(), "mL at 20 °C", Source.OIML_R22);
        double ethanol =
                0.01 * percent(asked.strength()).percent() * asked.charge().millilitres();
        double grams = MadeUp.spirit(asked.strength()).grams(Substance.ETHANOL)
                * asked.charge().litres();
        workings.step("ethanol in the charge", grams, "g", Source.OIML_R22);
        return new Found(
                new Estimate(ethanol, 0.0),
                new Estimate(grams, 0.0),
                between(stand.distillate(), strong.distillate()),
                between(stand.strength(), strong.strength()),
                between(stand.running(), strong.running()),
                between(stand.pot(), strong.pot()),
                between(stand.potStrength(), strong.potStrength()),
                between(100.0 * stand.recovered(), 100.0 * strong.recovered()),
                still.until(stand, STEPS),
                List.of(law(), hazards(), methanol(), model()));
    }

    private static PotStill.Stand stand(PotStill still, Asked asked) {
        Strength running = asked.running();
        Strength collected = asked.collected();
        if (running != null) {
            return Impossible.unless(
                    "to",
                    "Ask for less than the first drop has, and more than 0 % vol.",
                    () -> still.whenRunning(percent(running).percent()));
        }
        if (collected != null) {
            return Impossible.unless(
                    "to-average",
                    "Ask for a strength between the two; for a stronger one charge the still with a stronger liquid.",
                    () -> still.whenCollected(percent(collected).percent()));
        }
        throw new Impossible("to", "it is not said when collection stops.", "Give the strength that still runs then.");
    }

    private static AlcoholByVolume percent(Strength strength) {
        return AlcoholByVolume.at20(
                Math.min(100.0, Essentials.of(MadeUp.spirit(strength).toGrams()).strength()));
    }

    private static Estimate between(double value, double other) {
        return new Estimate(value, Math.abs(other - value));
    }

    private static Finding law() {
        return new Finding(
                "distilling-law",
                Severity.CAUTION,
                "",
                "most countries",
                "licence needed",
                "Distilling spirit without a licence is unlawful in most places, at home and in small amounts too.",
                "General knowledge, not a reading of any law.",
                "Ask the excise office of your country before anything is heated; this run is arithmetic.",
                null,
                Source.STILL_CAUTIONS);
    }

    private static Finding hazards() {
        return new Finding(
                "distilling-hazards",
                Severity.CAUTION,
                "",
                "",
                "fire and pressure",
                "Spirit vapour burns and creeps along the floor to a flame; a blocked outlet makes a closed pot burst.",
                "",
                "No flame and no spark near it, cooling on before heat, an outlet that cannot be shut, and never alone.",
                null,
                Source.STILL_CAUTIONS);
    }

    private static Finding methanol() {
        return new Finding(
                "methanol",
                Severity.NOTE,
                "",
                "",
                "where it comes from",
                "Methanol comes from fermented fruit pulp, not from distilling; spirit that was bought as potable brings none to speak of."
                        + " It runs all through the distillate, so that throwing away the first part does not take it out.",
                "Common knowledge of the trade, no source.",
                "Never run what was denatured or is of unknown origin.",
                null,
                Source.STILL_CAUTIONS);
    }

    private static Finding model() {
        return new Finding(
                "still-model",
                Severity.NOTE,
                "",
                "",
                "one pot, no reflux",
                "The pot is taken to boil at sea level without a column and without a neck that condenses; those give stronger distillate.",
                "The vapour is within 0.01 by amount of two printed tables, which is what the doubt is made of.",
                "",
                null,
                Source.VAPOUR_LIQUID);
    }
}
