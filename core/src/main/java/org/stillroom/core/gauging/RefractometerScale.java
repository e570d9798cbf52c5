package org.stillroom.core.gauging;

import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.quantity.Brix;
import org.stillroom.core.quantity.RefractiveIndex;
import org.stillroom.core.quantity.Root;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.sugar.SucroseRefraction;
import org.stillroom.core.sugar.SucroseWater;

/**
 * What a refractometer shows away from 20 °C.
 *
 * <p>The refraction of a gram does not change with temperature (Lorentz, Lorenz), so that L(n) falls with the density. An
 * instrument that compensates takes what it sees for sucrose in water; held to OIV-MA-AS2-02 in the tests.
 */
final class RefractometerScale {
    private static final double LEAST = -10.0;

    private RefractometerScale() {}

    /** Returns the degrees Brix that stand at an index on the scale at 20 °C; below water it is drawn on as a straight line. */
    static double degrees(double index) {
        if (index < SucroseRefraction.WATER) {
            RefractiveIndex water = new RefractiveIndex(SucroseRefraction.WATER);
            return Math.max(LEAST, (index - SucroseRefraction.WATER) / SucroseRefraction.slope(water));
        }
        double most = SucroseRefraction.index(new Brix(100.0)).value();
        return SucroseRefraction.brix(new RefractiveIndex(Math.min(index, most)))
                .degrees();
    }

    /**
     * Returns the degrees of the sucrose solution that shows so many at another temperature.
     *
     * @param shown what an instrument without compensation shows, °Bx
     */
    static double compensated(double shown, Temperature at) {
        if (at.celsius() == 20.0 || shown <= 0.0) {
            return shown - degrees(ofSyrup(0.0, at));
        }
        double most = degrees(ofSyrup(90.0, at));
        if (shown >= most) {
            return shown;
        }
        double least = degrees(ofSyrup(0.0, at));
        if (shown <= least) {
            return shown - least;
        }
        return 90.0 * Root.of(part -> degrees(ofSyrup(90.0 * part, at)) - shown);
    }

    /** Returns the index of sucrose in water at a temperature. */
    private static double ofSyrup(double brix, Temperature at) {
        double at20 = SucroseRefraction.index(new Brix(brix)).value();
        double fraction = brix / 100.0;
        return moved(at20, density(fraction, at) / density(fraction, Temperature.TWENTY_CELSIUS));
    }

    private static double density(double fraction, Temperature at) {
        return EthanolWater.at(at).water() + SucroseWater.at(at).excess(fraction);
    }

    /** Returns the index of a liquid that has become so many times as dense. */
    static double moved(double index, double denser) {
        double square = index * index;
        double refraction = denser * (square - 1.0) / (square + 2.0);
        return Math.sqrt((1.0 + 2.0 * refraction) / (1.0 - refraction));
    }
}
