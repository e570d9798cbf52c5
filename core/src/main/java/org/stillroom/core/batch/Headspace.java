package org.stillroom.core.batch;

import java.util.OptionalDouble;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Root;
import org.stillroom.core.quantity.Temperature;

/**
 * The empty room in a bottle as it warms: liquids expand more than glass, and a bottle that is full to the brim bursts or drives its
 * stopper out.
 *
 * <p>From the volume model at each temperature and the cubic expansion of soda-lime glass; 0 to 40 °C.
 */
public final class Headspace {
    /** Cubic expansion of soda-lime glass, 1/°C. Source: GLASS_EXPANSION, from memory. */
    static final double GLASS = 25e-6;

    /** The warmest that the volume model knows, °C. */
    public static final double WARMEST = 40.0;

    private Headspace() {}

    /**
     * Returns how much room so much of a liquid takes at a temperature, mL.
     *
     * @param millilitres of it at 20 °C
     */
    public static double taken(Contents liquid, double millilitres, Temperature temperature) {
        double[] grams = liquid.toGrams();
        double larger = VolumeModel.at(temperature).millilitres(grams)
                / VolumeModel.atTwenty().millilitres(grams);
        return millilitres * larger;
    }

    /**
     * Returns the room that is left at a temperature, mL; below zero when more is in it than it holds.
     *
     * @param millilitres in it at 20 °C
     * @param brimful what it holds up to its brim at 20 °C, mL
     */
    public static double left(Contents liquid, double millilitres, double brimful, Temperature temperature) {
        double glass = brimful * (1.0 + GLASS * (temperature.celsius() - 20.0));
        return glass - taken(liquid, millilitres, temperature);
    }

    /**
     * Returns the temperature at which a bottle is full to its brim, °C; empty when it is not full at {@link #WARMEST}. A closed bottle
     * must stay well below: the air above the liquid is pressed together before.
     *
     * @param millilitres in it at 20 °C
     * @param brimful what it holds up to its brim at 20 °C, mL
     */
    public static OptionalDouble fullAt(Contents liquid, double millilitres, double brimful) {
        if (left(liquid, millilitres, brimful, new Temperature(WARMEST)) > 0.0) {
            return OptionalDouble.empty();
        }
        if (left(liquid, millilitres, brimful, new Temperature(0.0)) <= 0.0) {
            return OptionalDouble.of(0.0);
        }
        double part = Root.of(p -> -left(liquid, millilitres, brimful, new Temperature(WARMEST * p)));
        return OptionalDouble.of(WARMEST * part);
    }
}
