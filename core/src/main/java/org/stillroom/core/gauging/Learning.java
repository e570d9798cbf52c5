package org.stillroom.core.gauging;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;

/**
 * What several vessels, each poured and read, tell of the labels of what went in.
 *
 * <p>Regularised least squares over all vessels: each label is off by the same in every vessel that it went into, and lies within its
 * tolerance as far as nothing speaks against that. Besides each vessel has errors of its own measures, and all share those of the
 * formulas, of the thermometer and of each instrument; how much of an instrument's error is the same each time is not known, so its
 * whole error counts twice, once as common to all vessels and once as chance. Where the readings contradict what is known, the vessel
 * or the label whose absence explains most is named, if it explains clearly more than any other. Method: docs/how-it-works/offsets.md.
 */
public final class Learning {
    /** What a label may be off when its tolerance does not hold, in its unit: so much that it says nothing. */
    private static final double OPEN = 50.0;
    /** By so much more than its cost must an explanation lower the sum of squares: once in a thousand by chance. */
    private static final double STANDS_OUT = 3.3 * 3.3;
    /** By so much must it be lower than with the next explanation: e times as likely. */
    private static final double CLEARLY = 2.0;

    private static final int MOST_ROUNDS = 20;
    private static final double SETTLED = 1e-9;
    /** Normal deviate that once in a thousand is surpassed. */
    private static final double ONCE_IN_A_THOUSAND = 3.090;

    private final List<Label> labels;
    private final List<Seen> vessels;
    private final Thermometer thermometer;
    private final List<Shown> instruments;

    private Learning(List<Label> labels, List<Seen> vessels, Thermometer thermometer) {
        this.labels = List.copyOf(labels);
        this.vessels = List.copyOf(vessels);
        this.thermometer = thermometer;
        this.instruments = vessels.stream()
                .flatMap(vessel -> vessel.readings().stream())
                .map(Reading::shown)
                .distinct()
                .toList();
    }

    /**
     * A figure on a label, the same in every vessel.
     *
     * @param halfWidth its tolerance, in its own unit, above 0; every value within is as likely
     * @param within index of the label that it is a part of, such as that of all bottles of which this is one; −1 for none. Where either
     *     may be beyond its tolerance, it is that one
     */
    public record Label(double halfWidth, int within) {
        public Label {
            if (!(halfWidth > 0.0 && halfWidth < OPEN)) {
                throw new IllegalArgumentException("a label is right within 0 to " + OPEN + ", not " + halfWidth);
            }
        }
    }

    /**
     * What a label does in a vessel: a parabola through three of its figures, which follows the density of spirits closely.
     *
     * @param label index of it
     * @param perUnit grams of each substance more in the vessel per unit that the figure is above the label
     * @param perSquare the same per square of that
     */
    @SuppressWarnings("ArrayRecordComponent") // grams, never compared
    public record Share(int label, double[] perUnit, double[] perSquare) {
        /**
         * Returns what it does by what it brings at two other figures.
         *
         * @param labelled grams that it brings when the label is right
         * @param off by how much the first other figure differs from the label, in its unit, not 0
         * @param then grams that it brings then
         * @param otherOff by how much the second does, neither 0 nor the first
         * @param otherThen grams that it brings then
         */
        public static Share of(
                int label, Contents labelled, double off, Contents then, double otherOff, Contents otherThen) {
            double[] middle = labelled.toGrams();
            double[] one = then.toGrams();
            double[] other = otherThen.toGrams();
            double[] perUnit = new double[middle.length];
            double[] perSquare = new double[middle.length];
            for (int i = 0; i < middle.length; i++) {
                double slope = (one[i] - middle[i]) / off;
                double otherSlope = (other[i] - middle[i]) / otherOff;
                perSquare[i] = (otherSlope - slope) / (otherOff - off);
                perUnit[i] = slope - perSquare[i] * off;
            }
            return new Share(label, perUnit, perSquare);
        }
    }

    /**
     * A vessel.
     *
     * @param poured what went in if all labels are right
     * @param shares what each label does in it
     * @param slips of its own measures
     * @param readings of it
     */
    public record Seen(Contents poured, List<Share> shares, List<Poured.Slip> slips, List<Reading> readings) {
        public Seen {
            shares = List.copyOf(shares);
            slips = List.copyOf(slips);
            readings = List.copyOf(readings);
        }
    }

    /** What still counts: vessels, and tolerances of labels. */
    @SuppressWarnings("ArrayRecordComponent") // never compared
    private record Kept(boolean[] vessels, boolean[] labels) {
        Kept without(int vessel) {
            boolean[] less = vessels.clone();
            less[vessel] = false;
            return new Kept(less, labels);
        }

        Kept opening(int label) {
            boolean[] less = labels.clone();
            less[label] = false;
            return new Kept(vessels, less);
        }

        int count() {
            int count = 0;
            for (boolean vessel : vessels) {
                count += vessel ? 1 : 0;
            }
            return count;
        }
    }

    /** Returns what is learned. */
    public static Learned of(List<Label> labels, List<Seen> vessels, Thermometer thermometer) {
        return new Learning(labels, vessels, thermometer).learned();
    }

    private Learned learned() {
        boolean[] all = new boolean[vessels.size()];
        boolean[] tolerances = new boolean[labels.size()];
        Arrays.fill(all, true);
        Arrays.fill(tolerances, true);
        Kept kept = new Kept(all, tolerances);
        Solved solved = solved(kept);
        Explained explained = explained(kept, solved);
        for (Kept better = explained.kept(); better != null; better = explained.kept()) {
            kept = better;
            solved = solved(kept);
            explained = explained(kept, solved);
        }
        boolean contradicts = solved.misfit() > mostByChance(readings(kept));
        double wider = contradicts ? Math.sqrt(solved.misfit() / readings(kept)) : 1.0;
        return new Learned(
                Arrays.copyOf(solved.mean(), labels.size()),
                solved.covariance(),
                wider,
                kept.labels(),
                kept.vessels(),
                vesselsOfEach(kept),
                explained.suspects());
    }

    private int[] vesselsOfEach(Kept kept) {
        int[] count = new int[labels.size()];
        for (int v = 0; v < vessels.size(); v++) {
            if (kept.vessels()[v]) {
                vessels.get(v).shares().stream()
                        .mapToInt(Share::label)
                        .distinct()
                        .forEach(label -> count[label]++);
            }
        }
        return count;
    }

    private int readings(Kept kept) {
        int count = 0;
        for (int v = 0; v < vessels.size(); v++) {
            count += kept.vessels()[v] ? vessels.get(v).readings().size() : 0;
        }
        return Math.max(1, count);
    }

    /**
     * An explanation.
     *
     * @param kept what is kept then, or null when none is needed or none is clear
     * @param suspects labels that may be behind it where it is not clear
     */
    private record Explained(@Nullable Kept kept, Set<Integer> suspects) {}

    private Explained explained(Kept kept, Solved solved) {
        List<Kept> candidates = new ArrayList<>();
        List<Double> left = new ArrayList<>();
        List<Integer> ofLabel = new ArrayList<>();
        int[] count = vesselsOfEach(kept);
        for (int j = 0; j < labels.size(); j++) {
            if (kept.labels()[j] && count[j] >= 2) {
                candidates.add(kept.opening(j));
                left.add(solved(kept.opening(j)).misfit() + 1.0);
                ofLabel.add(j);
            }
        }
        for (int v = 0; v < vessels.size(); v++) {
            if (kept.vessels()[v] && kept.count() > 2 && 2 * (kept.count() - 1) > vessels.size()) {
                candidates.add(kept.without(v));
                left.add(solved(kept.without(v)).misfit()
                        + vessels.get(v).readings().size());
                ofLabel.add(-1);
            }
        }
        return clearest(solved.misfit(), candidates, left, ofLabel);
    }

    private Explained clearest(double now, List<Kept> candidates, List<Double> left, List<Integer> ofLabel) {
        int best = -1;
        double least = now - STANDS_OUT;
        for (int i = 0; i < candidates.size(); i++) {
            if (left.get(i) < least) {
                least = left.get(i);
                best = i;
            }
        }
        Set<Integer> suspects = new HashSet<>();
        boolean ofVessel = false;
        @Nullable Kept broadest = null;
        for (int i = 0; i < candidates.size(); i++) {
            if (best < 0 || left.get(i) - least >= CLEARLY) {
                continue;
            }
            int label = ofLabel.get(i);
            ofVessel |= label < 0;
            if (label >= 0) {
                int whole = labels.get(label).within() < 0
                        ? label
                        : labels.get(label).within();
                suspects.add(whole);
                broadest = broadest == null || whole == label ? candidates.get(i) : broadest;
            }
        }
        if (best >= 0 && ofLabel.get(best) < 0 && suspects.isEmpty() && tied(left, least) == 1) {
            return new Explained(candidates.get(best), Set.of());
        }
        return suspects.size() == 1 && !ofVessel ? new Explained(broadest, Set.of()) : new Explained(null, suspects);
    }

    private static long tied(List<Double> left, double least) {
        return left.stream().filter(each -> each - least < CLEARLY).count();
    }

    /** Returns the sum of squares that so many readings surpass once in a thousand (Wilson and Hilferty, from memory). */
    private static double mostByChance(int readings) {
        double part = 2.0 / (9.0 * readings);
        return readings * Math.pow(1.0 - part + ONCE_IN_A_THOUSAND * Math.sqrt(part), 3.0);
    }

    /**
     * The least squares.
     *
     * @param mean of labels (in their units) and of what is common besides (in standard deviations)
     * @param misfit sum of squares in standard deviations
     */
    @SuppressWarnings("ArrayRecordComponent") // numbers of the inner loop, never compared
    private record Solved(double[] mean, double[][] covariance, double misfit) {}

    private Solved solved(Kept kept) {
        double[] x = new double[unknowns()];
        for (int round = 0; ; round++) {
            double[][] information = prior(kept);
            double[] right = new double[x.length];
            double misfit = 0.0;
            for (int k = 0; k < x.length; k++) {
                right[k] = -information[k][k] * x[k];
                misfit += information[k][k] * x[k] * x[k];
            }
            for (int v = 0; v < vessels.size(); v++) {
                misfit += kept.vessels()[v] ? add(vessels.get(v), x, information, right) : 0.0;
            }
            double[] step = Symmetric.solve(Symmetric.root(information), right);
            if (round == MOST_ROUNDS || Arrays.stream(step).map(Math::abs).max().orElse(0.0) < SETTLED) {
                return new Solved(x, Symmetric.inverse(information), misfit);
            }
            for (int k = 0; k < x.length; k++) {
                x[k] += step[k];
            }
        }
    }

    private int unknowns() {
        return labels.size() + Common.COUNT + instruments.size();
    }

    /** What all vessels share besides labels and instruments. */
    private static final class Common {
        static final int VOLUME = 0;
        static final int REFRACTION = 1;
        static final int THERMOMETER = 2;
        static final int COUNT = 3;
    }

    private double[][] prior(Kept kept) {
        double[][] information = new double[unknowns()][unknowns()];
        for (int k = 0; k < information.length; k++) {
            double sigma =
                    k >= labels.size() ? 1.0 : (kept.labels()[k] ? labels.get(k).halfWidth() : OPEN) / Math.sqrt(3.0);
            information[k][k] = 1.0 / (sigma * sigma);
        }
        return information;
    }

    /** Adds what a vessel tells, and returns the square of its distance. */
    private double add(Seen vessel, double[] x, double[][] information, double[] right) {
        int n = vessel.readings().size();
        double[][] slopes = slopes(vessel, x);
        double[] away = new double[n];
        double[] expected = shown(vessel, x);
        for (int i = 0; i < n; i++) {
            away[i] = vessel.readings().get(i).value() - expected[i];
        }
        double[][] root = Symmetric.root(ownErrors(vessel, x));
        double[] weighed = Symmetric.solve(root, away);
        double misfit = 0.0;
        for (int i = 0; i < n; i++) {
            misfit += away[i] * weighed[i];
        }
        for (int k = 0; k < x.length; k++) {
            double[] column = new double[n];
            for (int i = 0; i < n; i++) {
                column[i] = slopes[i][k];
                right[k] += slopes[i][k] * weighed[i];
            }
            double[] solvedColumn = Symmetric.solve(root, column);
            for (int l = 0; l < x.length; l++) {
                for (int i = 0; i < n; i++) {
                    information[l][k] += slopes[i][l] * solvedColumn[i];
                }
            }
        }
        return misfit;
    }

    /** Returns the covariance of what a vessel's own measures and chance do to its readings. */
    private double[][] ownErrors(Seen vessel, double[] x) {
        int n = vessel.readings().size();
        double[][] covariance = new double[n][n];
        for (int i = 0; i < n; i++) {
            covariance[i][i] = vessel.readings().get(i).variance();
        }
        double[] plain = shown(vessel, x);
        for (Poured.Slip slip : vessel.slips()) {
            double[] end = shown(vessel, x, slip.atItsEnd());
            for (int i = 0; i < n; i++) {
                for (int j = 0; j < n; j++) {
                    covariance[i][j] += (end[i] - plain[i]) * (end[j] - plain[j]) / 3.0;
                }
            }
        }
        return covariance;
    }

    private double[][] slopes(Seen vessel, double[] x) {
        double[][] slopes = new double[vessel.readings().size()][x.length];
        for (int k = 0; k < x.length; k++) {
            if (!concerns(vessel, k)) {
                continue;
            }
            double step = k < labels.size() ? 1e-3 : 1e-2;
            double[] up = x.clone();
            double[] down = x.clone();
            up[k] += step;
            down[k] -= step;
            double[] above = shown(vessel, up);
            double[] below = shown(vessel, down);
            for (int i = 0; i < slopes.length; i++) {
                slopes[i][k] = (above[i] - below[i]) / (2.0 * step);
            }
        }
        return slopes;
    }

    private boolean concerns(Seen vessel, int unknown) {
        return unknown >= labels.size() || vessel.shares().stream().anyMatch(share -> share.label() == unknown);
    }

    private double[] shown(Seen vessel, double[] x) {
        return shown(vessel, x, new double[0]);
    }

    /** Returns what its instruments would show. */
    private double[] shown(Seen vessel, double[] x, double[] more) {
        double[] grams = vessel.poured().toGrams();
        for (Share share : vessel.shares()) {
            double off = x[share.label()];
            add(grams, share.perUnit(), off);
            add(grams, share.perSquare(), off * off);
        }
        add(grams, more, 1.0);
        for (int i = 0; i < grams.length; i++) {
            grams[i] = Math.max(0.0, grams[i]);
        }
        int common = labels.size();
        Mixture mixture = new Mixture(
                grams,
                x[common + Common.VOLUME],
                x[common + Common.REFRACTION],
                thermometer.sigma() * x[common + Common.THERMOMETER]);
        double[] shown = new double[vessel.readings().size()];
        for (int i = 0; i < shown.length; i++) {
            Reading reading = vessel.readings().get(i);
            double ofInstrument = x[common + Common.COUNT + instruments.indexOf(reading.shown())];
            shown[i] = reading.of(mixture) + Math.sqrt(reading.variance()) * ofInstrument;
        }
        return shown;
    }

    private static void add(double[] grams, double[] more, double times) {
        for (int i = 0; i < more.length; i++) {
            grams[i] += times * more[i];
        }
    }
}
