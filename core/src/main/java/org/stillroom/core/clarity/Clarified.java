package org.stillroom.core.clarity;

import java.util.OptionalDouble;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Volume;

/**
 * One way to clarify worked out for a volume: what to take, what is lost, how strong it is then.
 *
 * @param way how
 * @param volume of the liquid before
 * @param least what to take at least, g or mL as the way says; 0 where it takes nothing
 * @param most what to take at most
 * @param leastWater water that comes in with the least, mL
 * @param mostWater water that comes in with the most, mL
 * @param leftAtLeast volume that is left after the loss, with the least, mL
 * @param leftAtMost the same with the most, mL
 * @param strength before, % vol at 20 °C; empty where it was not said
 * @param afterLeast strength with the least, % vol; empty where it was not said
 * @param afterMost strength with the most
 * @param isTooStrong whether the way hardly works at this strength
 */
public record Clarified(
        OtherHazes.Way way,
        Volume volume,
        double least,
        double most,
        double leastWater,
        double mostWater,
        double leftAtLeast,
        double leftAtMost,
        OptionalDouble strength,
        OptionalDouble afterLeast,
        OptionalDouble afterMost,
        boolean isTooStrong) {
    private static final double MILLILITRES_PER_LITRE = 1000.0;

    /**
     * Works a way out.
     *
     * @param strength at 20 °C of a liquid taken as without sugar, which moves the strength after by less than a tenth of the fall; empty
     *     where it is not known
     */
    public static Clarified of(OtherHazes.Way way, Volume volume, OptionalDouble strength) {
        double litres = volume.millilitres() / MILLILITRES_PER_LITRE;
        double least = way.dose().least() * litres;
        double most = way.dose().most() * litres;
        double leastWater = least * way.dose().waterPerUnit();
        double mostWater = most * way.dose().waterPerUnit();
        double kept = 1.0 - way.lossPercent() / 100.0;
        return new Clarified(
                way,
                volume,
                least,
                most,
                leastWater,
                mostWater,
                kept * (volume.millilitres() + leastWater),
                kept * (volume.millilitres() + mostWater),
                strength,
                after(strength, leastWater / litres),
                after(strength, mostWater / litres),
                strength.isPresent() && strength.getAsDouble() > way.dose().worksBelow());
    }

    private static OptionalDouble after(OptionalDouble strength, double water) {
        if (strength.isEmpty()) {
            return strength;
        }
        double waterGrams = water * MadeUp.spirit(AlcoholByVolume.at20(0.0)).total() / MILLILITRES_PER_LITRE;
        Contents litre = MadeUp.spirit(AlcoholByVolume.at20(strength.getAsDouble()));
        Contents mixed = litre.plus(Contents.of(Substance.WATER, waterGrams));
        return OptionalDouble.of(strength.getAsDouble()
                * VolumeModel.atTwenty().millilitres(litre.toGrams())
                / VolumeModel.atTwenty().millilitres(mixed.toGrams()));
    }
}
