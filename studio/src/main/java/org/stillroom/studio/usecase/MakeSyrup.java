package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.Syrup;
import org.stillroom.core.quantity.Brix;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Ratio;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;

/** Tells what syrup comes of sugar and water, or what makes the syrup that is wanted. */
public final class MakeSyrup {
    /** What is told where no amount is given. */
    private static final Mass KILOGRAM = new Mass(1000.0);

    private MakeSyrup() {}

    /** The ways in which makers say what syrup they mean. */
    public sealed interface Way {}

    /** Sugar and water, weighed. */
    public record ByWeight(Mass sugar, Mass water) implements Way {}

    /** So much sugar per mass; for a kilogram of syrup. */
    public record ByBrix(Brix brix) implements Way {}

    /** Sugar made up with water to a volume at 20 °C. */
    public record ByMakingUp(Mass sugar, Volume mark) implements Way {}

    /** Parts of sugar to parts of water, by mass; for a kilogram of syrup. */
    public record ByPartsOfMass(Ratio sugarToWater) implements Way {}

    /** Parts of loose sugar to parts of water, by volume; for a kilogram of syrup. */
    public record ByPartsOfVolume(Ratio sugarToWater) implements Way {}

    /** Which sugar, and how the syrup is said. */
    public record Asked(Syrup.Of sugar, Way way) {}

    /**
     * The syrup at 20 °C.
     *
     * @param sugar g
     * @param water g
     * @param brix sugar per mass, %
     * @param density kg/m³
     * @param sugarPerLitre g/L
     * @param volume mL
     * @param findings what to know of it at 20 °C
     */
    public record Found(
            Estimate sugar,
            Estimate water,
            Estimate brix,
            Estimate density,
            Estimate sugarPerLitre,
            Estimate volume,
            List<Finding> findings) {}

    /**
     * Returns the syrup.
     *
     * @throws Impossible when there is none such
     */
    public static Found answer(Asked asked, Workings workings) {
        Syrup.Of sugar = asked.sugar();
        if (asked.way() instanceof ByWeight by) {
            refuseNothing(by);
            return found(Syrup.ofWeighed(sugar, new Syrup.Weighed(by.sugar(), by.water())), workings);
        }
        if (asked.way() instanceof ByMakingUp by) {
            return found(
                    Impossible.unless(
                            "sugar",
                            "Take less sugar, or make up to a larger volume.",
                            () -> Syrup.madeUpTo(sugar, by.sugar(), by.mark())),
                    workings);
        }
        if (asked.way() instanceof ByPartsOfVolume by) {
            return between(sugar, by.sugarToWater(), workings);
        }
        return found(Syrup.ofBrix(sugar, brix(asked.way()), KILOGRAM), workings);
    }

    private static void refuseNothing(ByWeight by) {
        if (by.sugar().grams() + by.water().grams() == 0.0) {
            throw new Impossible("sugar", "there is neither sugar nor water.", "Give an amount above zero.");
        }
    }

    private static Brix brix(Way way) {
        if (way instanceof ByBrix by) {
            return by.brix();
        }
        Ratio parts = ((ByPartsOfMass) way).sugarToWater();
        return new Brix(100.0 * parts.left() / (parts.left() + parts.right()));
    }

    private static Found found(Syrup syrup, Workings workings) {
        Solution solution = Solution.of(syrup.contents(), workings);
        List<Finding> findings = new ArrayList<>(solution.findings());
        findings.addAll(syrup.findings(Temperature.TWENTY_CELSIUS));
        return new Found(
                new Estimate(syrup.contents().sugars(), 0.0),
                new Estimate(syrup.contents().grams(Substance.WATER), 0.0),
                new Estimate(syrup.brix(), 0.0),
                solution.estimate(Figure.DENSITY),
                solution.estimate(Figure.SUGAR),
                solution.estimate(Figure.VOLUME_20C),
                findings);
    }

    /** Loose sugar weighs this or that: the middle of the thinnest and the thickest syrup, and half of what is between. */
    private static Found between(Syrup.Of sugar, Ratio parts, Workings workings) {
        List<Syrup> ends = Syrup.ofVolumes(sugar, new Volume(parts.left()), new Volume(parts.right()));
        Found thin = kilogram(sugar, ends.get(0), workings);
        Found thick = kilogram(sugar, ends.get(ends.size() - 1), workings);
        return new Found(
                middle(thin.sugar(), thick.sugar()),
                middle(thin.water(), thick.water()),
                middle(thin.brix(), thick.brix()),
                middle(thin.density(), thick.density()),
                middle(thin.sugarPerLitre(), thick.sugarPerLitre()),
                middle(thin.volume(), thick.volume()),
                thick.findings());
    }

    private static Found kilogram(Syrup.Of sugar, Syrup syrup, Workings workings) {
        return found(Syrup.ofBrix(sugar, new Brix(syrup.brix()), KILOGRAM), workings);
    }

    private static Estimate middle(Estimate one, Estimate other) {
        double half = Math.abs(one.value() - other.value()) / 2;
        return new Estimate((one.value() + other.value()) / 2, half + Math.max(one.doubt(), other.doubt()));
    }
}
