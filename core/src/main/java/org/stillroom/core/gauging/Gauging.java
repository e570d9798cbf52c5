package org.stillroom.core.gauging;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.quantity.Temperature;

/**
 * Finds what is in a vessel from whatever was read of it and from what was poured.
 *
 * <p>The one liquid is sought that every reading and every label fits best, each by its own error (least squares on the volume and
 * refraction models, whose own errors are unknowns too). What stands out by more than {@link #STANDS_OUT} standard deviations
 * from what the others say is left out and named, where at least two are spare; with fewer nobody can tell which of them is wrong,
 * and all doubts are widened instead. Method: docs/how-it-works/gauging.md.
 */
public final class Gauging {
    /** Standard deviations from which a reading does not fit: by chance it happens once in a thousand. */
    static final double STANDS_OUT = 3.3;
    /** By so much a sum of squares must be lower than the next for its explanation to be taken: e times as likely. */
    private static final double CLEARLY = 2.0;
    /** What was poured explains more than one reading by chance alone, for it says more: by one square each. */
    private static final double POURED_SAYS_MORE = 3.0;
    /** Half-widths from which strength (% vol) and sugar (g/L) are not known at all. */
    private static final double STRENGTH_OPEN = 25.0;

    private static final double SUGAR_OPEN = 250.0;

    private final List<Reading> readings;
    private final @Nullable Poured poured;
    private final Vessel vessel;
    private final boolean[] kept;
    private boolean pouredKept;

    private Gauging(List<Reading> readings, @Nullable Poured poured) {
        this.readings = List.copyOf(readings);
        this.poured = poured;
        this.vessel = Vessel.holding(poured == null ? null : poured.contents(), expectedMass(readings, poured));
        this.kept = new boolean[readings.size()];
        Arrays.fill(kept, true);
        this.pouredKept = poured != null;
    }

    /**
     * Returns what is in the vessel; empty when the readings leave strength or sugar open.
     *
     * @param poured what went in, or null when that is not known
     * @throws ArithmeticException when no liquid comes near the readings
     */
    public static Optional<Gauged> of(List<Reading> readings, @Nullable Poured poured) {
        return new Gauging(readings, poured).gauged();
    }

    private static double expectedMass(List<Reading> readings, @Nullable Poured poured) {
        if (poured != null) {
            return poured.contents().total();
        }
        for (Reading reading : readings) {
            boolean tells = reading.shown() == Shown.MASS || reading.shown() == Shown.VOLUME;
            if (tells && reading.value() > 0.0) {
                return reading.value();
            }
        }
        return 1000.0;
    }

    private Optional<Gauged> gauged() {
        Fit fit = fit();
        Pulls pulls = pulls(fit);
        while (pulls.worst() > STANDS_OUT && leavesOut(fit, pulls)) {
            fit = fit();
            pulls = pulls(fit);
        }
        double worst = pulls.worst();
        Outlook outlook = new Outlook(fit, worst > STANDS_OUT ? worst : 1.0);
        if (outlook.strength().halfWidth() > STRENGTH_OPEN || outlook.sugar().halfWidth() > SUGAR_OPEN) {
            return Optional.empty();
        }
        if (!fit.settled()) {
            throw new ArithmeticException("no liquid comes near these readings");
        }
        return Optional.of(new Gauged(
                Contents.ofGrams(fit.grams()),
                outlook.strength(),
                outlook.sugar(),
                outlook.acidity(),
                tellsAmount() ? outlook.volume() : null,
                hidden(fit.mixture()),
                outlook.correlation(),
                pulls.all(),
                new Judgement(readings, pulls, spare(), poured != null, pouredKept, tells(Shown.ACIDITY)).findings()));
    }

    private Fit fit() {
        List<Reading> used = used();
        Prior prior = prior();
        double[] start = pouredKept ? prior.mean() : Start.nearest(vessel, used, prior);
        return Fit.of(vessel, used, prior, start);
    }

    private Prior prior() {
        return poured != null && pouredKept
                ? Prior.of(vessel, poured)
                : Prior.ofNothing(vessel, tellsAmount(), tells(Shown.ACIDITY));
    }

    private Pulls pulls(Fit fit) {
        return Pulls.of(fit, readings, kept, pouredKept ? vessel.mixture(prior().mean()) : null, prior());
    }

    private List<Reading> used() {
        List<Reading> used = new ArrayList<>();
        for (int i = 0; i < kept.length; i++) {
            if (kept[i]) {
                used.add(readings.get(i));
            }
        }
        return used;
    }

    /**
     * Leaves out the one whose absence best explains that something stands out, where what remains can bear witness against it;
     * returns whether it did.
     */
    private boolean leavesOut(Fit fit, Pulls pulls) {
        double least = Double.POSITIVE_INFINITY;
        double next = Double.POSITIVE_INFINITY;
        int best = -1;
        for (int i = 0; i <= readings.size(); i++) {
            double without = i < readings.size() ? withoutReading(i, fit, pulls) : withoutPoured();
            next = Math.min(next, Math.max(least, without));
            best = without < least ? i : best;
            least = Math.min(least, without);
        }
        boolean told = best >= 0 && next - least > CLEARLY && (best == readings.size() || spare() >= 2);
        if (told && best == readings.size()) {
            pouredKept = false;
        } else if (told) {
            kept[best] = false;
        }
        return told;
    }

    /** Returns the sum of squares that would be left without a reading: lower by the square of its pull. */
    private double withoutReading(int index, Fit fit, Pulls pulls) {
        double size = pulls.size(index);
        return size == 0.0 ? Double.POSITIVE_INFINITY : fit.misfit() - size * size;
    }

    /** Returns the same without what was poured; beyond all bounds where the readings by themselves have none to spare. */
    private double withoutPoured() {
        if (!pouredKept) {
            return Double.POSITIVE_INFINITY;
        }
        pouredKept = false;
        double without = spare() >= 1 ? fit().misfit() + POURED_SAYS_MORE : Double.POSITIVE_INFINITY;
        pouredKept = true;
        return without;
    }

    /** Returns how many of what is used could be missing and strength, sugar and all else that is sought would still be known. */
    private int spare() {
        int sought = 2 + (tellsAmount() ? 1 : 0) + (tells(Shown.ACIDITY) || pouredKept ? 1 : 0);
        return used().size() + (pouredKept ? Vessel.AMOUNTS : 0) - sought;
    }

    private boolean tellsAmount() {
        return pouredKept || tells(Shown.MASS) || tells(Shown.VOLUME);
    }

    private boolean tells(Shown shown) {
        return used().stream().anyMatch(reading -> reading.shown() == shown);
    }

    /** Returns what sugar and acid hide from a spirit hydrometer in any liquid that follows the formulas, % vol. */
    public static double hidden(Contents liquid) {
        return hidden(new Mixture(liquid.toGrams(), 0.0, 0.0));
    }

    /** Returns what sugar and acid hide from a spirit hydrometer at 20 °C, % vol; all of it where the stem sinks to zero. */
    private static double hidden(Mixture mixture) {
        return mixture.strength() - Math.max(0.0, Shown.SPIRIT_20C.of(mixture, Temperature.TWENTY_CELSIUS));
    }
}
