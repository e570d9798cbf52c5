package org.stillroom.core.clarity;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Root;
import org.stillroom.core.quantity.Temperature;

/** What would make a liquid clear, or keep it so; each is worked out by the same formulas as the forecast. */
public final class Remedies {
    /** More oil than this in a litre is no liqueur, g/L. */
    private static final double MOST_OIL = 300.0;

    private Remedies() {}

    /**
     * What chilling and filtering takes out.
     *
     * @param removed oil taken out, g/L
     * @param part of all the oil, 0 to 1
     * @param after the liquid back at its first temperature
     */
    public record Filtered(double removed, double part, Clarity after) {}

    /** Returns the least strength at which it is clear, % vol at 20 °C, the sugar unchanged; empty where none is. */
    public static OptionalDouble clearFrom(Oils oils, Medium medium) {
        return clearFrom(oils, medium, 1.0);
    }

    /** Returns the same strength if every solubility is so many times what is thought. */
    public static OptionalDouble clearFrom(Oils oils, Medium medium, double solubilityFactor) {
        double most = Math.min(100.0, Math.max(0.0, medium.mostStrength() - 100.0 * oils.litres()));
        DoubleUnaryOperator margin =
                part -> margin(oils.load(medium.ofStrength(AlcoholByVolume.at20(part * most))) / solubilityFactor);
        if (oils.gramsPerLitre() < Verdict.UNSEEN_GRAMS_PER_LITRE || margin.applyAsDouble(0.0) >= 0.0) {
            return OptionalDouble.of(0.0);
        }
        return margin.applyAsDouble(1.0) < 0.0 ? OptionalDouble.empty() : OptionalDouble.of(most * Root.of(margin));
    }

    /** Above zero where a load is below the bound of what is clear. */
    private static double margin(double load) {
        return Verdict.LOG_CLEAR_BELOW - Math.log(load);
    }

    /** Returns the most oil of this composition that stays clear, g/L; empty where any amount met in liqueurs does, or there is none. */
    public static OptionalDouble mostOil(Oils oils, Medium medium) {
        double typed = oils.gramsPerLitre();
        if (!(typed > 0.0)) {
            return OptionalDouble.empty();
        }
        double most = MOST_OIL / typed;
        DoubleUnaryOperator over = part -> oils.times(part * most).load(medium) - Verdict.CLEAR_BELOW;
        if (over.applyAsDouble(1.0) <= 0.0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Math.max(Verdict.UNSEEN_GRAMS_PER_LITRE, MOST_OIL * Root.of(over)));
    }

    /** Returns the most sugar with which it is clear at this strength, g/L; empty where leaving sugar out does not help. */
    public static OptionalDouble clearBelowSugar(Oils oils, Medium medium) {
        double now = medium.sugar();
        DoubleUnaryOperator over = part -> -margin(oils.load(medium.ofSugar(new MassConcentration(part * now))));
        if (now == 0.0 || over.applyAsDouble(0.0) > 0.0 || over.applyAsDouble(1.0) <= 0.0) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(now * Root.of(over));
    }

    /** Returns the forecast with the terpene hydrocarbons left out, as in a terpeneless oil of as much aroma. */
    public static Clarity withoutTerpenes(Clarity clarity, Doubts doubts) {
        return Clarity.of(clarity.oils().without(OilPart::isTerpeneHydrocarbon), clarity.medium(), doubts);
    }

    /**
     * A folded oil in place of the oil.
     *
     * @param fold from how many parts of oil one part is made
     * @param left monoterpene hydrocarbons left of those in the oil, 0 to 1
     * @param clarity of the liquid with as much of everything else
     */
    public record Folded(double fold, double left, Clarity clarity) {}

    /**
     * Returns the forecast with oils folded so many times; empty where they do not hold enough monoterpene hydrocarbons for that.
     *
     * <p>Taken as if folding took out monoterpene hydrocarbons alone, all of them alike: own assumption. Real folded oils also lose light
     * aldehydes and keep more of the terpenes that boil late.
     *
     * @param fold above 1
     */
    public static Optional<Folded> folded(Clarity clarity, double fold, Doubts doubts) {
        if (!(fold > 1.0)) {
            throw new IllegalArgumentException("an oil is folded more than once, not " + fold);
        }
        Oils oils = clarity.oils();
        Oils others = oils.without(OilPart::isMonoterpene);
        double monoterpenes = oils.gramsPerLitre() - others.gramsPerLitre();
        double kept = oils.gramsPerLitre() / fold - others.gramsPerLitre();
        if (!(monoterpenes > 0.0 && kept >= 0.0)) {
            return Optional.empty();
        }
        double left = kept / monoterpenes;
        Oils folded = oils.scaled(part -> part.isMonoterpene() ? left : 1.0);
        return Optional.of(new Folded(fold, left, Clarity.of(folded, clarity.medium(), doubts)));
    }

    /** Returns what chilling until the oil has separated, and filtering cold, takes out and leaves. */
    public static Filtered chilledAndFiltered(Clarity clarity, Temperature cold, Doubts doubts) {
        Oils oils = clarity.oils();
        double[] gone = oils.separatedParts(clarity.medium().at(cold));
        double removed = oils.separated(clarity.medium().at(cold));
        double part = removed == 0.0 ? 0.0 : removed / oils.gramsPerLitre();
        return new Filtered(removed, part, Clarity.of(oils.less(gone), clarity.medium(), doubts));
    }
}
