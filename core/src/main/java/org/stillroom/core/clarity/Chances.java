package org.stillroom.core.clarity;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.stillroom.core.quantity.Percentile;
import org.stillroom.core.quantity.SeededDraws;
import org.stillroom.core.quantity.Span;

/**
 * How likely each verdict is when solubility, composition, dose and strength err within what is known of them.
 *
 * @param clear probability, 0 to 1
 * @param hazy probability
 * @param cloudy probability
 * @param lowLoad oil load that one batch in twenty stays below
 * @param highLoad oil load that one batch in twenty lies above
 * @param from what the load is in doubt from, the most first; each as the factor by which it alone may be off, one standard deviation
 */
public record Chances(double clear, double hazy, double cloudy, double lowLoad, double highLoad, List<From> from) {
    /** Batches drawn where no other number is asked for. */
    public static final int DRAWS = 2_000;

    /** The same liquid gets the same answer each time. */
    private static final long SEED = 5;

    /** Half-width of the central 90 % of a normal distribution in standard deviations. */
    private static final double CENTRAL_90 = 1.6448536269514722;

    public Chances {
        from = List.copyOf(from);
    }

    /** One thing that the load is in doubt from. */
    public record From(DoubtFrom what, double factor) {}

    /** Returns the chances by {@link #DRAWS} batches. */
    public static Chances of(Oils oils, Medium medium, Doubts doubts) {
        return new Draw(oils, medium, doubts).chances(DRAWS);
    }

    /** Returns the chance of a verdict. */
    public double of(Verdict verdict) {
        return switch (verdict) {
            case CLEAR -> clear;
            case HAZY -> hazy;
            case CLOUDY -> cloudy;
        };
    }

    /** One batch after another; arrays are made once. */
    private static final class Draw {
        private final Medium medium;
        private final Doubts doubts;
        private final int size;
        private final double[] exponent;
        private final ShiftFactors shifted;
        private final double[] typical;
        private final double[] typicalMoles;
        private final double[] less;
        private final double[] more;
        private final double[] logFactor;
        private final double[] loads;
        private final double[] moles;
        private final double[] gramsPerMole;
        private final double oil;
        private final double typicalCosolvent;
        private final SeededDraws random = new SeededDraws(SEED);

        Draw(Oils oils, Medium medium, Doubts doubts) {
            this.medium = medium;
            this.doubts = doubts;
            this.size = oils.parts().size();
            this.oil = oils.gramsPerLitre();
            this.typicalCosolvent = medium.cosolvent(oils.litres());
            this.typical = oils.loads(medium);
            this.exponent = oils.exponents();
            this.shifted = new ShiftFactors(exponent, strengthDeviation());
            this.typicalMoles = new double[size];
            this.gramsPerMole = new double[size];
            this.less = new double[size];
            this.more = new double[size];
            this.logFactor = new double[size];
            this.loads = new double[size];
            this.moles = new double[size];
            for (int i = 0; i < size; i++) {
                gramsPerMole[i] = oils.parts().get(i).gramsPerMole();
                typicalMoles[i] = oils.gramsPerLitre(i) / gramsPerMole[i];
                double usual = oil > 0.0 ? CompositionDoubt.usual(oils.gramsPerLitre(i) / oil) : 0.0;
                Span published = doubts.composition().get(oils.parts().get(i).key());
                less[i] = published == null ? usual : 1.0 - published.low();
                more[i] = published == null ? usual : published.high() - 1.0;
                logFactor[i] = Math.log(oils.parts().get(i).doubtFactor());
            }
        }

        Chances chances(int draws) {
            int[] counts = new int[Verdict.values().length];
            double[] drawn = new double[draws];
            double common = medium.logFactorDoubt();
            double strength = strengthDeviation();
            for (int n = 0; n < draws; n++) {
                double better = random.normal() * common;
                double cosolvent = clamp(random.normal() * strength);
                double dose = 1.0 + doubts.doseHalfWidth() * random.between();
                drawn[n] = batch(better, cosolvent, dose);
                counts[verdict(drawn[n], dose).ordinal()]++;
            }
            double each = 1.0 / draws;
            return new Chances(
                    counts[0] * each,
                    counts[1] * each,
                    counts[2] * each,
                    Percentile.of(drawn, 0.05),
                    Percentile.of(drawn, 0.95),
                    from());
        }

        /** Returns how much each doubt alone would move the logarithm of the load, to the first order. */
        private List<From> from() {
            double load = 0.0;
            double estimated = 0.0;
            double composition = 0.0;
            double steeper = 0.0;
            for (int i = 0; i < size; i++) {
                load += typical[i];
                estimated = Math.hypot(estimated, typical[i] * logFactor[i]);
                // evenly below and evenly above the typical amount, half of the batches each
                composition = Math.hypot(composition, typical[i] * Math.hypot(less[i], more[i]) / Math.sqrt(6.0));
                steeper += typical[i] * exponent[i];
            }
            double per = load > 0.0 ? 1.0 / load : 0.0;
            double strength = strengthDeviation();
            return Stream.of(
                            new From(DoubtFrom.SOLUBILITY, Math.exp(medium.logFactorDoubt())),
                            new From(DoubtFrom.ESTIMATE, Math.exp(per * estimated)),
                            new From(DoubtFrom.COMPOSITION, Math.exp(per * composition)),
                            new From(DoubtFrom.DOSE, Math.exp(doubts.doseHalfWidth() / Math.sqrt(3.0))),
                            new From(DoubtFrom.STRENGTH, Math.exp(per * steeper * strength)))
                    .sorted(Comparator.comparingDouble((From each) -> each.factor())
                            .reversed())
                    .toList();
        }

        /** Returns one standard deviation of the part of cosolvent, as far as the strength leaves it open. */
        private double strengthDeviation() {
            return doubts.strengthHalfWidth() / CENTRAL_90 * medium.cosolventPerPercent();
        }

        private double clamp(double shift) {
            return Math.max(-typicalCosolvent, Math.min(1.0 - typicalCosolvent, shift));
        }

        /** Draws the parts of a batch and returns its load; the loads and moles of the parts stay behind. */
        private double batch(double better, double shift, double dose) {
            double factor = dose * Math.exp(-better);
            double load = 0.0;
            shifted.at(shift);
            for (int i = 0; i < size; i++) {
                double place = random.between();
                double amount = 1.0 + (place < 0.0 ? less[i] : more[i]) * place;
                double part = amount * factor * typical[i] * shifted.of(i);
                if (logFactor[i] > 0.0) {
                    part *= Math.exp(-logFactor[i] * random.normal());
                }
                moles[i] = typicalMoles[i] * amount * dose;
                loads[i] = part;
                load += part;
            }
            return load;
        }

        private Verdict verdict(double load, double dose) {
            double separated = load >= Verdict.CLOUDY_FROM ? separated() : 0.0;
            return Verdict.of(load, separated, oil * dose);
        }

        /** Returns the oil that separates, or less of it that is enough to be cloudy: the oil phase is approached from below. */
        private double separated() {
            double phase = 0.0;
            double grams = 0.0;
            for (int step = 0; step < Oils.MOST_STEPS && grams < Verdict.CLOUDY_GRAMS_PER_LITRE; step++) {
                double next = Oils.closerPhase(moles, loads, phase);
                if (next == phase) {
                    return grams;
                }
                phase = next;
                grams = separated(phase);
            }
            return grams;
        }

        private double separated(double phase) {
            double sum = 0.0;
            for (int i = 0; i < size; i++) {
                double all = moles[i] + phase * loads[i];
                sum += all > 0.0 ? gramsPerMole[i] * moles[i] * phase * loads[i] / all : 0.0;
            }
            return sum;
        }
    }
}
