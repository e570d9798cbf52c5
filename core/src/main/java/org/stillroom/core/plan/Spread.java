package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.ModelDoubt;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Percentile;
import org.stillroom.core.quantity.SeededDraws;
import org.stillroom.core.recipe.LineAmount;

/**
 * How far a finished batch may lie from its plan: many batches drawn at random, each with labels, measures and the volume model
 * erring within what is known of them.
 *
 * <p>A label and a measure err anywhere within their tolerance, each value as likely (JCGM 100:2008, 4.3.7: only the limits are
 * known). The volume model errs by one normal deviate for the whole batch, since whatever is wrong with it is wrong for all of
 * it. A liquid made up to the mark has the volume that was measured: there the model's doubt moves the amount of water, not the
 * strength.
 */
public final class Spread {
    /** Batches drawn where no other number is asked for. */
    public static final int DRAWS = 10_000;

    /** Half-widths of the central 90 % of a normal distribution in standard deviations. */
    private static final double CENTRAL_90 = 1.6448536269514722;

    private static final int FIGURES = Asked.values().length;

    private final List<PlannedLine> lines;
    private final List<Taken> taken;
    private final int[][] brings;
    private final double[][] perGram;
    private final double[][] labelError;
    private final int toTheMark;
    private final double mark;
    private final ModelDoubt model;
    private final double[] total = new double[Substance.COUNT];

    private Spread(Plan plan, List<Taken> taken) {
        this.lines = plan.lines();
        this.taken = taken;
        this.brings = new int[lines.size()][];
        this.perGram = new double[lines.size()][];
        this.labelError = new double[lines.size()][];
        int found = -1;
        for (int i = 0; i < lines.size(); i++) {
            perGram[i] = lines.get(i).ingredient().perGram().toGrams();
            labelError[i] = lines.get(i).ingredient().perGramAtUpperLabel().toGrams();
            for (int s = 0; s < labelError[i].length; s++) {
                labelError[i][s] -= perGram[i][s];
            }
            brings[i] = brought(perGram[i], labelError[i]);
            if (lines.get(i).line().amount() instanceof LineAmount.MakeUp) {
                found = i;
            }
        }
        this.toTheMark = found;
        this.mark = plan.millilitres();
        addUp(new double[2 * lines.size() + 1]);
        this.model = ModelDoubt.of(total, VolumeModel.atTwenty().millilitres(total));
    }

    /** Returns which substances a line brings at all, by their place: few of many, and each is added up ten thousand times. */
    private static int[] brought(double[] own, double[] error) {
        return IntStream.range(0, own.length)
                .filter(s -> own[s] != 0.0 || error[s] != 0.0)
                .toArray();
    }

    /**
     * Returns where volume (mL), strength (% vol), sugar and acidity (g/L, as dissolved and as citric) will lie, at 20 °C.
     *
     * @param taken what is taken of each line of the plan, in its order
     * @param seed the same seed gives the same answer
     * @param draws how many batches are drawn, at least 100
     */
    public static Bands of(Plan plan, List<Taken> taken, long seed, int draws) {
        if (draws < 100 || taken.size() != plan.lines().size()) {
            throw new IllegalArgumentException(
                    "a spread needs at least 100 draws and what is taken of each line, not " + draws + " draws and "
                            + taken.size() + " of " + plan.lines().size() + " lines");
        }
        return new Spread(plan, taken).bands(seed, draws);
    }

    /** Returns all that the answer to such a question depends on. */
    static SpreadMemory.Question question(Plan plan, List<Taken> taken, long seed, int draws) {
        Spread spread = new Spread(plan, taken);
        List<Double> numbers = new ArrayList<>(List.of((double) spread.toTheMark, spread.mark));
        for (int i = 0; i < spread.perGram.length; i++) {
            numbers.add(taken.get(i).grams());
            numbers.add(taken.get(i).halfWidth());
            numbers.add(spread.lines.get(i).ingredient().gramsPerMillilitre().orElse(1.0));
            for (int s : spread.brings[i]) {
                numbers.addAll(List.of((double) s, spread.perGram[i][s], spread.labelError[i][s]));
            }
        }
        List<String> names = plan.lines().stream().map(PlannedLine::name).toList();
        return new SpreadMemory.Question(names, List.copyOf(numbers), seed, draws);
    }

    private Bands bands(long seed, int draws) {
        double[][] drawn = new double[FIGURES][draws];
        SeededDraws random = new SeededDraws(seed);
        double[] errors = new double[2 * lines.size() + 1];
        double[] figures = new double[FIGURES];
        for (int n = 0; n < draws; n++) {
            for (int i = 0; i < errors.length - 1; i++) {
                errors[i] = random.between();
            }
            errors[errors.length - 1] = random.normal();
            figures(errors, figures);
            for (int f = 0; f < FIGURES; f++) {
                drawn[f][n] = figures[f];
            }
        }
        double[][] variances = variances(figures.length);
        Band[] bands = new Band[FIGURES];
        for (int f = 0; f < FIGURES; f++) {
            bands[f] = band(drawn[f], variances[f]);
        }
        return new Bands(
                bands[Asked.VOLUME.ordinal()],
                bands[Asked.STRENGTH.ordinal()],
                bands[Asked.SUGAR.ordinal()],
                bands[Asked.ACIDITY.ordinal()]);
    }

    private Band band(double[] drawn, double[] variances) {
        int most = 0;
        double all = 0.0;
        for (int i = 0; i < variances.length; i++) {
            all += variances[i];
            most = variances[i] > variances[most] ? i : most;
        }
        boolean none = all == 0.0;
        return new Band(
                Percentile.of(drawn, 0.05),
                Percentile.of(drawn, 0.95),
                none ? "" : name(most),
                none ? 0.0 : variances[most] / all);
    }

    private String name(int error) {
        if (error == 2 * lines.size()) {
            return "the volume model";
        }
        String line = lines.get(error / 2).name();
        if (error % 2 == 0) {
            return "the label of " + line;
        }
        return error / 2 == toTheMark ? "the mark" : "the measure of " + line;
    }

    /** Returns for each figure the variance that each error makes by itself; a uniform one has a third of its half-width squared. */
    private double[][] variances(int figures) {
        int errors = 2 * lines.size() + 1;
        double[][] variances = new double[figures][errors];
        double[] up = new double[figures];
        double[] down = new double[figures];
        for (int e = 0; e < errors; e++) {
            double[] one = new double[errors];
            one[e] = 1.0;
            figures(one, up);
            one[e] = -1.0;
            figures(one, down);
            double share = e == errors - 1 ? 1.0 : 1.0 / 3.0;
            for (int f = 0; f < figures; f++) {
                double half = 0.5 * (up[f] - down[f]);
                variances[f][e] = share * half * half;
            }
        }
        return variances;
    }

    /** Works out the figures of a batch with these errors: of label and measure of each line in turn, then of the model. */
    private void figures(double[] errors, double[] figures) {
        addUp(errors);
        Essentials plain = Essentials.of(total);
        double z = toTheMark >= 0 ? 0.0 : errors[errors.length - 1] / CENTRAL_90;
        double larger = 1.0 + z * model.relativeVolumeHalfWidth();
        figures[Asked.VOLUME.ordinal()] = plain.millilitres() * larger;
        figures[Asked.STRENGTH.ordinal()] = plain.strength() - z * model.strengthHalfWidth();
        figures[Asked.SUGAR.ordinal()] = plain.sugar() / larger;
        figures[Asked.ACIDITY.ordinal()] = plain.acidity() / larger;
    }

    /** Adds up a batch with these errors into {@link #total}. */
    private void addUp(double[] errors) {
        Arrays.fill(total, 0.0);
        for (int i = 0; i < perGram.length; i++) {
            double grams = taken.get(i).grams();
            if (i != toTheMark) {
                grams = Math.max(0.0, grams + errors[2 * i + 1] * taken.get(i).halfWidth());
            }
            add(i, grams, errors[2 * i]);
        }
        if (toTheMark >= 0) {
            fillToTheMark(errors);
        }
    }

    private void add(int line, double grams, double label) {
        double[] own = perGram[line];
        double[] error = labelError[line];
        for (int s : brings[line]) {
            total[s] += grams * Math.max(0.0, own[s] + label * error[s]);
        }
    }

    /** Adds to or takes from the last line until the volume stands at the mark as read; the model's doubt moves only its amount. */
    private void fillToTheMark(double[] errors) {
        double wanted = mark + errors[2 * toTheMark + 1] * taken.get(toTheMark).halfWidth();
        double density = lines.get(toTheMark).ingredient().gramsPerMillilitre().orElse(1.0);
        double poured = taken.get(toTheMark).grams();
        for (int step = 0; step < 3; step++) {
            double more = (wanted - VolumeModel.atTwenty().millilitres(total)) * density;
            more = Math.max(more, -poured);
            poured += more;
            for (int s = 0; s < total.length; s++) {
                total[s] = Math.max(0.0, total[s] + more * perGram[toTheMark][s]);
            }
        }
    }
}
