package org.stillroom.core.extraction;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.alcohol.Strengths;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.VolumeBasis;

/**
 * A charge of ethanol and water boiled down in a pot without reflux, on paper (Rayleigh, 1902): ln(F/W) = ∫ dx/(y − x) from what is left
 * to what was charged, by amount. Volumes and strengths are at 20 °C.
 *
 * <p>A neck that condenses, a column, or a thumper gives stronger distillate than this.
 */
public final class PotStill {
    static final double GRAMS_PER_MOLE_ETHANOL = 46.06844;
    static final double GRAMS_PER_MOLE_WATER = 18.01528;
    /** What the vapour may be off by, part by amount; the rms against two printed tables is 0.009 and 0.013. */
    private static final double VAPOUR_DOUBT = 0.01;
    /** Less ethanol than this is as good as none, part by amount. */
    private static final double SPENT = 1e-6;

    private static final int PANELS = 48;
    private static final double[] NODES = {
        -0.906179845938664, -0.538469310105683, 0.0, 0.538469310105683, 0.906179845938664
    };
    private static final double[] WEIGHTS = {
        0.236926885056189, 0.478628670499366, 0.568888888888889, 0.478628670499366, 0.236926885056189
    };

    private final double charged;
    private final double moles;
    private final double shift;

    private PotStill(double charged, double moles, double shift) {
        this.charged = charged;
        this.moles = moles;
        this.shift = shift;
    }

    /**
     * Where a run stands.
     *
     * @param distillate mL collected
     * @param strength of all that was collected, % vol
     * @param running strength of what runs now, % vol
     * @param pot mL left
     * @param potStrength % vol
     * @param recovered part of the charge's ethanol that was collected
     * @param celsius boiling point in the pot
     */
    public record Stand(
            double distillate,
            double strength,
            double running,
            double pot,
            double potStrength,
            double recovered,
            double celsius) {}

    /**
     * Returns a pot with a charge.
     *
     * @param millilitres at 20 °C
     * @param strength below that of the azeotrope
     * @throws IllegalArgumentException when the charge is too strong or empty, with a text for people
     */
    public static PotStill charged(double millilitres, AlcoholByVolume strength) {
        double p = Strengths.massFraction(strength).fraction();
        double x = byAmount(p);
        if (!(x < Vapour.AZEOTROPE && x > SPENT)) {
            throw new IllegalArgumentException(
                    "a charge is stronger than 0 and weaker than 95 % vol: beyond, boiling parts nothing");
        }
        if (!(millilitres > 0.0)) {
            throw new IllegalArgumentException("there is nothing in the pot");
        }
        double grams = millilitres / 1000.0 * density(p);
        double amount = grams * (p / GRAMS_PER_MOLE_ETHANOL + (1.0 - p) / GRAMS_PER_MOLE_WATER);
        return new PotStill(x, amount, 0.0);
    }

    /** Returns the same pot with vapour that is as much stronger as it may be. */
    public PotStill withStrongerVapour() {
        return new PotStill(charged, moles, VAPOUR_DOUBT);
    }

    /**
     * Returns where the run stands when what runs has fallen to a strength.
     *
     * @throws IllegalArgumentException when it never runs so strong, with a text for people
     */
    public Stand whenRunning(double percent) {
        if (!(percent > 0.0)) {
            throw new IllegalArgumentException(
                    "0 % vol runs only when no alcohol is left in the pot, which no still comes to");
        }
        if (!(percent < running(charged))) {
            throw new IllegalArgumentException("the first drop runs at " + Math.round(running(charged))
                    + " % vol; it falls from there, and cannot be at "
                    + QuantityWords.fixed(percent, 1) + " % vol");
        }
        return at(falling(x -> running(x) - percent));
    }

    /**
     * Returns where the run stands when all that was collected has fallen to a strength.
     *
     * @throws IllegalArgumentException when it cannot, with a text for people
     */
    public Stand whenCollected(double percent) {
        double most = running(charged);
        double least = Strengths.byVolume(new MassFraction(byMass(charged)), VolumeBasis.AT_20C)
                .percent();
        if (!(percent < most && percent > least)) {
            throw new IllegalArgumentException("what is collected lies between " + Math.round(least)
                    + " % vol, all of the charge, and " + Math.round(most) + " % vol, its first drop; not at "
                    + QuantityWords.fixed(percent, 1) + " % vol");
        }
        return at(falling(x -> at(x).strength() - percent));
    }

    /** Returns the run in equal steps of what is left of the ethanol in the pot, first to a given stand. */
    public List<Stand> until(Stand end, int steps) {
        double last = byAmount(
                Strengths.massFraction(AlcoholByVolume.at20(end.potStrength())).fraction());
        List<Stand> stands = new ArrayList<>();
        for (int i = 1; i <= steps; i++) {
            stands.add(at(charged + (last - charged) * i / steps));
        }
        return stands;
    }

    private interface Strength {
        double over(double x);
    }

    /** Finds the liquid at which a strength that falls with it is zero, by halving. */
    private double falling(Strength strength) {
        double low = SPENT;
        double high = charged * (1.0 - 1e-9);
        for (int i = 0; i < 60; i++) {
            double middle = 0.5 * (low + high);
            boolean over = strength.over(middle) > 0.0;
            high = over ? middle : high;
            low = over ? low : middle;
        }
        return 0.5 * (low + high);
    }

    private double vapour(double x) {
        double y = Vapour.over(x).ethanol();
        return y + shift * 4.0 * y * (1.0 - y);
    }

    private double running(double x) {
        return Strengths.byVolume(new MassFraction(byMass(vapour(x))), VolumeBasis.AT_20C)
                .percent();
    }

    private Stand at(double x) {
        double left = moles * Math.exp(-logRatio(x));
        double ethanol = moles * charged - left * x;
        double water = moles * (1.0 - charged) - left * (1.0 - x);
        double p = ethanol * GRAMS_PER_MOLE_ETHANOL / (ethanol * GRAMS_PER_MOLE_ETHANOL + water * GRAMS_PER_MOLE_WATER);
        double grams = ethanol * GRAMS_PER_MOLE_ETHANOL + water * GRAMS_PER_MOLE_WATER;
        double rest = left * (x * GRAMS_PER_MOLE_ETHANOL + (1.0 - x) * GRAMS_PER_MOLE_WATER);
        return new Stand(
                1000.0 * grams / density(p),
                percent(p),
                running(x),
                1000.0 * rest / density(byMass(x)),
                percent(byMass(x)),
                ethanol / (moles * charged),
                Vapour.over(x).kelvin() - 273.15);
    }

    /** Integrates over ln x, where the integrand is smooth down to an empty pot. */
    private double logRatio(double x) {
        double from = Math.log(x);
        double half = 0.5 * (Math.log(charged) - from) / PANELS;
        double sum = 0.0;
        for (int panel = 0; panel < PANELS; panel++) {
            double middle = from + (2 * panel + 1) * half;
            for (int i = 0; i < NODES.length; i++) {
                double at = Math.exp(middle + half * NODES[i]);
                sum += WEIGHTS[i] * half * at / (vapour(at) - at);
            }
        }
        return sum;
    }

    private static double percent(double p) {
        return Strengths.byVolume(new MassFraction(p), VolumeBasis.AT_20C).percent();
    }

    private static double density(double p) {
        return EthanolWater.at(Temperature.TWENTY_CELSIUS).density(p);
    }

    private static double byAmount(double p) {
        double ethanol = p / GRAMS_PER_MOLE_ETHANOL;
        return ethanol / (ethanol + (1.0 - p) / GRAMS_PER_MOLE_WATER);
    }

    private static double byMass(double x) {
        double ethanol = x * GRAMS_PER_MOLE_ETHANOL;
        return ethanol / (ethanol + (1.0 - x) * GRAMS_PER_MOLE_WATER);
    }
}
