package org.stillroom.core.clarity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.stillroom.core.aroma.ConstituentGroup;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;

/**
 * The oils of a litre of liquid, constituent by constituent, made ready to be asked many times.
 *
 * <p>log₁₀ S = log₁₀ S_water + (0.93 log P + 0.40) f for each constituent in a liquid whose sugar-free part holds the fraction f of
 * ethanol. Source: Millard, Alvarez-Núñez, Yalkowsky, Int. J. Pharm. 245, 2002 (from memory). Derivation, other terms and how far it
 * errs: docs/how-it-works/clarity.md.
 */
public final class Oils {
    private static final double COSOLVENCY_SLOPE = 0.93;
    private static final double COSOLVENCY_CONSTANT = 0.40;
    private static final double LN_10 = Math.log(10.0);
    static final int MOST_STEPS = 60;

    private final List<OilPart> parts;
    private final double[] grams;
    private final double[] perWaterSolubility;
    private final double[] exponent;
    private final double total;
    private final double litres;

    private Oils(List<OilPart> parts, double[] grams) {
        this.parts = parts;
        this.grams = grams;
        this.perWaterSolubility = new double[grams.length];
        this.exponent = new double[grams.length];
        double sum = 0.0;
        double millilitres = 0.0;
        for (int i = 0; i < grams.length; i++) {
            OilPart part = parts.get(i);
            perWaterSolubility[i] = grams[i] / part.gramsPerLitreInWater();
            exponent[i] = LN_10 * (COSOLVENCY_SLOPE * part.logP() + COSOLVENCY_CONSTANT);
            sum += grams[i];
            millilitres += grams[i] / part.gramsPerMillilitre();
        }
        this.total = sum;
        this.litres = millilitres / 1000.0;
    }

    /**
     * Takes oils by their constituents.
     *
     * @param gramsPerLitre of liquid, by CAS number, name, or the name of a group of constituents
     */
    public static Oils of(Map<String, Double> gramsPerLitre) {
        return made(gramsPerLitre, OilParts::of);
    }

    private static Oils made(Map<String, Double> gramsPerLitre, Function<String, OilPart> known) {
        List<OilPart> parts = new ArrayList<>();
        List<Double> amounts = new ArrayList<>();
        new TreeMap<>(gramsPerLitre).forEach((key, amount) -> {
            if (!(amount >= 0.0 && amount < 1000.0)) {
                throw new IllegalArgumentException(
                        "a litre holds from 0 to below 1000 g of " + key + ", not " + amount);
            }
            if (amount > 0.0) {
                parts.add(known.apply(key));
                amounts.add(amount);
            }
        });
        return new Oils(
                List.copyOf(parts),
                amounts.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** Returns the oils of a litre, at 20 °C, of a liquid; oil of which no constituent is known is kept as that. */
    public static Oils of(Contents contents) {
        return of(contents, OilParts::of);
    }

    /**
     * Returns the same where the tables are not at hand, as in a browser.
     *
     * @param known what is known of a constituent, by the key that the liquid has it under
     */
    public static Oils of(Contents contents, Function<String, OilPart> known) {
        double litres = VolumeModel.atTwenty().millilitres(contents.toGrams()) / 1000.0;
        Map<String, Double> perLitre = new TreeMap<>();
        double rest = contents.grams(Substance.OIL);
        for (Map.Entry<String, Double> each : contents.aroma().entrySet()) {
            perLitre.put(each.getKey(), each.getValue() / litres);
            rest -= each.getValue();
        }
        if (rest > 1e-9 * contents.grams(Substance.OIL)) {
            perLitre.merge(ConstituentGroup.UNKNOWN.label(), rest / litres, Double::sum);
        }
        return made(perLitre, known);
    }

    public List<OilPart> parts() {
        return parts;
    }

    /** Returns grams per litre of a part. */
    public double gramsPerLitre(int part) {
        return grams[part];
    }

    /** Returns grams of oil in a litre of liquid. */
    public double gramsPerLitre() {
        return total;
    }

    /** Returns litres of oil in a litre of liquid. */
    double litres() {
        return litres;
    }

    /** Returns by how much ln S of each part grows with the part of cosolvent. */
    double[] exponents() {
        return exponent.clone();
    }

    /** Returns so many times as much of the same. */
    public Oils times(double factor) {
        return scaled(part -> factor);
    }

    /** Returns what is left when some parts are taken out. */
    public Oils without(Predicate<OilPart> removed) {
        return scaled(part -> removed.test(part) ? 0.0 : 1.0);
    }

    /** Returns the same with so many times as much of each part. */
    Oils scaled(ToDoubleFunction<OilPart> factor) {
        double[] scaled = grams.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] *= factor.applyAsDouble(parts.get(i));
        }
        return new Oils(parts, scaled);
    }

    /** Returns what is left when so many grams per litre of each part are gone. */
    Oils less(double[] gone) {
        double[] left = grams.clone();
        for (int i = 0; i < left.length; i++) {
            left[i] = Math.max(0.0, left[i] - gone[i]);
        }
        return new Oils(parts, left);
    }

    /** Returns the oil load: Σ cᵢ/Sᵢ; above 1 an oil phase can exist. */
    public double load(Medium medium) {
        return sum(medium.cosolvent(litres)) * Math.exp(-medium.logFactor());
    }

    /** Returns Σ cᵢ/Sᵢ at 25 °C without sugar, at a part of cosolvent. */
    double sum(double cosolvent) {
        double sum = 0.0;
        for (int i = 0; i < grams.length; i++) {
            sum += perWaterSolubility[i] * Math.exp(-exponent[i] * cosolvent);
        }
        return sum;
    }

    /** Returns what each part puts into the load. */
    public double[] loads(Medium medium) {
        return loads(medium.cosolvent(litres), Math.exp(-medium.logFactor()));
    }

    private double[] loads(double cosolvent, double factor) {
        double[] loads = new double[grams.length];
        for (int i = 0; i < loads.length; i++) {
            loads[i] = perWaterSolubility[i] * Math.exp(-exponent[i] * cosolvent) * factor;
        }
        return loads;
    }

    /** Returns the oil that would separate if the liquid stood long enough, g/L. */
    public double separated(Medium medium) {
        return sum(separatedParts(medium));
    }

    /**
     * Returns the load from which so much oil separates, when the loads stand to each other as at a part of cosolvent.
     *
     * <p>Where they add up to L, part i makes the share rᵢ of it and N moles of oil phase are there, only u = N L decides how much
     * separates: Σ cᵢ u rᵢ / (nᵢ + u rᵢ). That rises and is concave, so that Newton's rule from zero never overshoots; then L = 1 / Σ nᵢ rᵢ / (nᵢ + u rᵢ).
     *
     * @param separated g/L, above zero and below all of the oil
     */
    double loadThatSeparates(double cosolvent, double separated) {
        double[] shares = loads(cosolvent, 1.0);
        double all = sum(shares);
        double[] moles = moles();
        double phase = 0.0;
        for (int step = 0; step < MOST_STEPS; step++) {
            double grown = 0.0;
            double slope = 0.0;
            for (int i = 0; i < moles.length; i++) {
                double below = moles[i] * all + phase * shares[i];
                double part = below > 0.0 ? grams[i] * shares[i] / below : 0.0;
                grown += part * phase;
                slope += below > 0.0 ? part * moles[i] * all / below : 0.0;
            }
            double next = phase + (separated - grown) / slope;
            if (!(next - phase > 1e-12 * next)) {
                break;
            }
            phase = next;
        }
        double dissolved = 0.0;
        for (int i = 0; i < moles.length; i++) {
            double below = moles[i] * all + phase * shares[i];
            dissolved += below > 0.0 ? moles[i] * shares[i] / below : 0.0;
        }
        return 1.0 / dissolved;
    }

    private static double sum(double[] values) {
        double sum = 0.0;
        for (double each : values) {
            sum += each;
        }
        return sum;
    }

    /** Returns the grams per litre of each part that would separate. */
    public double[] separatedParts(Medium medium) {
        return separated(loads(medium));
    }

    private double[] moles() {
        double[] moles = new double[grams.length];
        for (int i = 0; i < moles.length; i++) {
            moles[i] = grams[i] / parts.get(i).gramsPerMole();
        }
        return moles;
    }

    private double[] separated(double[] loads) {
        double[] moles = moles();
        double phase = oilPhase(moles, loads);
        double[] separated = new double[grams.length];
        for (int i = 0; i < separated.length; i++) {
            separated[i] = grams[i] == 0.0 ? 0.0 : grams[i] * phase / (moles[i] / loads[i] + phase);
        }
        return separated;
    }

    /**
     * Returns the moles of oil phase in a litre, N, of Σ nᵢ / (sᵢ + N) = 1 where part i alone would saturate at sᵢ = nᵢ / loadᵢ; zero
     * where the loads together stay below one.
     *
     * <p>1 / Σ nᵢ/(sᵢ + N) − 1 rises and is concave, straight for a single part, so that Newton's rule from zero never overshoots.
     */
    static double oilPhase(double[] moles, double[] loads) {
        double phase = 0.0;
        for (int step = 0; step < MOST_STEPS; step++) {
            double next = closerPhase(moles, loads, phase);
            if (next - phase <= 1e-14 * next) {
                return next;
            }
            phase = next;
        }
        return phase;
    }

    /** Returns the next of Newton's steps from below, or the same where there is no more to go. */
    static double closerPhase(double[] moles, double[] loads, double phase) {
        double sum = 0.0;
        double slope = 0.0;
        for (int i = 0; i < moles.length; i++) {
            double below = 1.0 / (moles[i] + phase * loads[i]);
            double term = loads[i] > 0.0 ? moles[i] * loads[i] * below : 0.0;
            sum += term;
            slope += loads[i] > 0.0 ? term * loads[i] * below : 0.0;
        }
        return sum <= 1.0 ? phase : phase + sum * (sum - 1.0) / slope;
    }
}
