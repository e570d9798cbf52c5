package org.stillroom.studio.usecase;

import java.util.List;
import org.stillroom.core.acid.Acid;
import org.stillroom.core.acid.AcidSolution;
import org.stillroom.core.liquid.AcidByVolume;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;

/** Tells what to weigh for an acid solution. */
public final class MakeAcid {
    private MakeAcid() {}

    /** How much of it. */
    public sealed interface HowMuch {}

    /** So much solution: by mass where the strength is by mass, by volume at 20 °C where it is per litre. */
    public record Whole(Amount amount) implements HowMuch {}

    /** All the solution that the acid on hand gives, weighed in its form. */
    public record OnHand(Mass acid) implements HowMuch {}

    /**
     * The question.
     *
     * @param acid which
     * @param form in which it is weighed
     * @param strength anhydrous acid per mass, or per litre at 20 °C
     * @param howMuch of the solution or of the acid
     */
    public record Asked(Acid acid, AcidSolution.Form form, Share strength, HowMuch howMuch) {}

    /**
     * The solution at 20 °C.
     *
     * @param weigh acid in its form, g
     * @param acid anhydrous acid, g
     * @param water to add, g
     * @param solution mass, g
     * @param byMass anhydrous acid per mass, %
     * @param perLitre anhydrous acid, g/L
     * @param density kg/m³
     * @param volume mL
     * @param findings what to know of it
     */
    public record Found(
            Estimate weigh,
            Estimate acid,
            Estimate water,
            Estimate solution,
            Estimate byMass,
            Estimate perLitre,
            Estimate density,
            Estimate volume,
            List<Finding> findings) {}

    /**
     * Returns what to weigh.
     *
     * @throws Impossible when there is no such solution, or the amount is of the wrong kind
     */
    public static Found answer(Asked asked, Workings workings) {
        if (asked.form() == AcidSolution.Form.CITRIC_MONOHYDRATE && asked.acid() != Acid.CITRIC) {
            throw new Impossible(
                    "form",
                    "only citric acid is sold as a monohydrate, not "
                            + asked.acid().label() + " acid.",
                    "Leave the form out.");
        }
        AcidSolution made = asked.strength() instanceof MassFraction fraction
                ? byMass(asked, fraction)
                : byVolume(asked, (MassConcentration) asked.strength());
        return found(asked.acid(), made, workings);
    }

    private static AcidSolution byMass(Asked asked, MassFraction strength) {
        if (asked.howMuch() instanceof OnHand onHand) {
            return Impossible.unless("percent", "", () -> AcidSolution.ofAcid(strength, onHand.acid(), asked.form()));
        }
        if (((Whole) asked.howMuch()).amount() instanceof Mass solution) {
            return Impossible.unless("percent", "", () -> AcidSolution.ofSolution(strength, solution, asked.form()));
        }
        throw new Impossible(
                "make",
                "a solution in per cent by mass is made by mass.",
                "Give its mass, such as 250 g, or the strength per litre, such as 50 g/L.");
    }

    private static AcidSolution byVolume(Asked asked, MassConcentration strength) {
        return Impossible.unless(
                        "concentration",
                        "",
                        () -> AcidByVolume.of(asked.acid(), strength, volume(asked, strength), asked.form()))
                .made();
    }

    private static Volume volume(Asked asked, MassConcentration strength) {
        if (asked.howMuch() instanceof OnHand onHand) {
            if (strength.gramsPerLitre() == 0.0) {
                throw new Impossible("concentration", "a solution of 0 g/L takes no acid.", "Give one above 0 g/L.");
            }
            double acid = onHand.acid().grams() / asked.form().gramsPerGramOfAcid();
            return Volume.litres(acid / strength.gramsPerLitre());
        }
        if (((Whole) asked.howMuch()).amount() instanceof Volume volume) {
            return volume;
        }
        throw new Impossible(
                "make",
                "a solution of " + QuantityWords.plain(strength.gramsPerLitre()) + " g/L is made by volume.",
                "Give its volume, such as 1 L, or the strength in per cent by mass.");
    }

    private static Found found(Acid acid, AcidSolution made, Workings workings) {
        double grams = made.acid().grams();
        double whole = made.asWeighed().grams() + made.water().grams();
        if (!(whole > 0.0)) {
            throw new Impossible("make", "there is nothing to make.", "Give an amount above zero.");
        }
        Contents contents = Contents.of(substance(acid), grams).with(Substance.WATER, Math.max(0.0, whole - grams));
        Solution solution = Solution.of(contents, workings);
        return new Found(
                new Estimate(made.asWeighed().grams(), 0.0),
                new Estimate(grams, 0.0),
                new Estimate(made.water().grams(), 0.0),
                new Estimate(whole, 0.0),
                new Estimate(100.0 * grams / whole, 0.0),
                solution.estimate(Figure.ACID),
                solution.estimate(Figure.DENSITY),
                solution.estimate(Figure.VOLUME_20C),
                solution.findings());
    }

    private static Substance substance(Acid acid) {
        for (Substance substance : Substance.values()) {
            if (substance.acid() == acid) {
                return substance;
            }
        }
        throw new IllegalArgumentException(acid.label() + " acid is no substance of a liquid");
    }
}
