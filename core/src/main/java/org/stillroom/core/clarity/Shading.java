package org.stillroom.core.clarity;

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

    /** Where nobody sees anything, whatever the liquid. */
    private static final double UNSEEN = -1.0;

    private final Oils oils;
    private final Temperature temperature;
    private final double oilLitres;
    private final double logColdness;
    private final boolean unseen;
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
        this.oilLitres = oils.litres();
        this.logColdness = Medium.logColdness(temperature);
        this.unseen = oils.gramsPerLitre() < Verdict.UNSEEN_GRAMS_PER_LITRE;
        for (int i = 0; i <= LOADS; i++) {
            logSums[i] = Math.log(oils.sum((double) i / LOADS));
        }
        for (int i = 0; i <= BOUNDS; i++) {
            logBounds[i] = Math.log(cloudyFrom((double) i / BOUNDS));
        }
    }

    /** Returns the load from which it is cloudy at a part of cosolvent: at the same parts, all solubilities fall together. */
    private double cloudyFrom(double cosolvent) {
        return oils.gramsPerLitre() <= Verdict.CLOUDY_GRAMS_PER_LITRE
                ? Double.MAX_VALUE
                : Math.max(Verdict.CLOUDY_FROM, oils.loadThatSeparates(cosolvent, Verdict.CLOUDY_GRAMS_PER_LITRE));
    }

    /** Returns the oil load of a liquid by the grams of everything but oil in it. */
    public double load(Contents liquid) {
        Medium medium = Medium.of(liquid, temperature);
        return Math.exp(at(logSums, medium.cosolvent(oilLitres)) - medium.logFactor());
    }

    /** Returns how a liquid looks by the grams of everything but oil in it. */
    public Verdict verdict(Contents liquid) {
        Medium medium = Medium.of(liquid, temperature);
        return look(murk(medium.strength() / 100.0, medium.sugar(), medium.otherSolids()));
    }

    /**
     * Returns how a liquid looks as a number without steps: below 0 it is clear, from 1 on cloudy, hazy between.
     *
     * @param ethanol litres in a litre, at 20 °C; more than sugar and solids leave room for counts as all of that room
     * @param sugar g/L
     * @param otherSolids g/L
     */
    public double murk(double ethanol, double sugar, double otherSolids) {
        if (unseen) {
            return UNSEEN;
        }
        double waterless = Medium.waterless(sugar + otherSolids);
        double cosolvent = Math.min(1.0, (ethanol + oilLitres) / waterless);
        double logLoad = at(logSums, cosolvent) - Medium.logFactor(waterless, sugar) + logColdness;
        return (logLoad - Verdict.LOG_CLEAR_BELOW) / (at(logBounds, cosolvent) - Verdict.LOG_CLEAR_BELOW);
    }

    /** Returns what a {@link #murk} looks like. */
    public static Verdict look(double murk) {
        if (murk < 0.0) {
            return Verdict.CLEAR;
        }
        return murk < 1.0 ? Verdict.HAZY : Verdict.CLOUDY;
    }

    private static double at(double[] values, double part) {
        double place = part * (values.length - 1);
        int below = Math.min((int) place, values.length - 2);
        return values[below] + (place - below) * (values[below + 1] - values[below]);
    }
}
