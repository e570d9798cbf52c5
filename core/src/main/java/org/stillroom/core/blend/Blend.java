package org.stillroom.core.blend;

import java.util.List;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.liquid.Warming;
import org.stillroom.core.quantity.Temperature;

/**
 * What happens when parts are mixed: grams add, the volume shrinks, and it warms.
 *
 * @param liquid what is in the mixture
 * @param millilitres its volume at 20 °C
 * @param unmixedMillilitres the volumes of the parts before mixing, at 20 °C, crystals by their own volume
 * @param warming how much warmer it gets at first when nothing is lost to the vessel, °C, with its doubt
 */
public record Blend(Contents liquid, double millilitres, double unmixedMillilitres, Estimate warming) {
    /** Volume of a gram of crystals of sugar or fruit acid, mL; densities lie from 1.54 to 1.69 g/mL. From memory. */
    private static final double CRYSTAL_MILLILITRES_PER_GRAM = 1.0 / 1.59;

    /** Returns the mixture of parts that are at the same temperature; parts that hold nothing are passed over. */
    public static Blend of(List<Contents> parts) {
        Contents liquid = Contents.NONE;
        double unmixed = 0.0;
        for (Contents part : parts) {
            liquid = liquid.plus(part);
            unmixed += unmixed(part);
        }
        List<Contents> present =
                parts.stream().filter(part -> part.total() > 0.0).toList();
        return new Blend(
                liquid,
                VolumeModel.atTwenty().millilitres(liquid.toGrams()),
                unmixed,
                Warming.of(present, Temperature.TWENTY_CELSIUS));
    }

    private static double unmixed(Contents part) {
        double wet = part.grams(Substance.ETHANOL) + part.grams(Substance.WATER);
        boolean liquid =
                wet > 0.01 * part.total() || part.grams(Substance.GLYCEROL) > 0 || part.grams(Substance.OIL) > 0;
        return liquid
                ? VolumeModel.atTwenty().millilitres(part.toGrams())
                : part.total() * CRYSTAL_MILLILITRES_PER_GRAM;
    }

    /** Returns by how much less the mixture measures than its parts did, mL. */
    public double contraction() {
        return unmixedMillilitres - millilitres;
    }
}
