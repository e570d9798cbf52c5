package org.stillroom.core.clarity;

import java.util.Map;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.quantity.Temperature;

/**
 * The verdict on many liquids that hold the same oils, as when a whole triangle is shaded.
 *
 * <p>Σ cᵢ/Sᵢ and the load from which it is cloudy are tabulated once over the part of cosolvent and straight on a logarithmic scale
 * between; the load errs by less than 0.1 % of itself against {@link Oils#load}.
 */
public final class Shading {
    private static final int LOADS = 512;
    private static final int BOUNDS = 64;
    private static final int HALVINGS = 40;

    private final Oils oils;
    private final Temperature temperature;
    private final double[] logSums = new double[LOADS + 1];
    private final double[] logBounds = new double[BOUNDS + 1];

    /**
     * Makes ready to shade.
     *
     * @param oils of each litre, whatever else is in it
     */
    public Shading(Oils oils, Temperature temperature) {
        if (!(oils.gramsPerLitre() > 0.0)) {
            throw new IllegalArgumentException("a liquid without oils has no shading");
        }
        this.oils = oils;
        this.temperature = temperature;
        for (int i = 0; i <= LOADS; i++) {
            logSums[i] = Math.log(oils.sum((double) i / LOADS));
        }
        for (int i = 0; i <= BOUNDS; i++) {
            logBounds[i] = Math.log(cloudyFrom((double) i / BOUNDS));
        }
    }

    /** Takes the oils of a recipe by their constituents, g/L by CAS number. */
    public static Shading of(Map<String, Double> gramsPerLitre, Temperature temperature) {
        return new Shading(Oils.of(gramsPerLitre), temperature);
    }

    /** Returns the oil load of a liquid by the grams of everything but oil in it. */
    public double load(Contents liquid) {
        Medium medium = Medium.of(liquid, temperature);
        return Math.exp(at(logSums, medium.cosolvent(oils.litres())) - medium.logFactor());
    }

    /** Returns how a liquid looks by the grams of everything but oil in it. */
    public Verdict verdict(Contents liquid) {
        Medium medium = Medium.of(liquid, temperature);
        double cosolvent = medium.cosolvent(oils.litres());
        double logLoad = at(logSums, cosolvent) - medium.logFactor();
        if (logLoad < Math.log(Verdict.CLEAR_BELOW) || oils.gramsPerLitre() < Verdict.UNSEEN_GRAMS_PER_LITRE) {
            return Verdict.CLEAR;
        }
        return logLoad >= at(logBounds, cosolvent) ? Verdict.CLOUDY : Verdict.HAZY;
    }

    private static double at(double[] values, double part) {
        double place = part * (values.length - 1);
        int below = Math.min((int) place, values.length - 2);
        return values[below] + (place - below) * (values[below + 1] - values[below]);
    }

    /** Returns the load from which it is cloudy at a part of cosolvent: at the same parts, all solubilities fall together. */
    private double cloudyFrom(double cosolvent) {
        if (oils.gramsPerLitre() <= Verdict.CLOUDY_GRAMS_PER_LITRE) {
            return Double.MAX_VALUE;
        }
        double low = Math.log(Verdict.CLOUDY_FROM);
        if (oils.separatedAt(cosolvent, Verdict.CLOUDY_FROM) >= Verdict.CLOUDY_GRAMS_PER_LITRE) {
            return Verdict.CLOUDY_FROM;
        }
        double high = low + 40.0;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (oils.separatedAt(cosolvent, Math.exp(middle)) >= Verdict.CLOUDY_GRAMS_PER_LITRE) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return Math.exp(high);
    }
}
