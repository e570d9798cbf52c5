package org.stillroom.core.gauging;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Finding;

/**
 * Finds what is in a vessel from whatever was read of it and from what was poured.
 *
 * <p>The one liquid is sought that every reading and every label fits best, each by its own error (least squares on the volume and
 * refraction models, whose own errors are unknowns too, as is that of the thermometer, which all readings share). Where something stands out by more than {@link #STANDS_OUT} standard
 * deviations from what the others say, the one reading, label or measure is sought that, held for wrong, leaves least unexplained.
 * It is named and no longer relied on, where at least two are spare and no other explains it as well; else nobody can tell, and
 * each figure reaches over all that it may be. Method: docs/how-it-works/gauging.md.
 */
public final class Gauging {
    /** Standard deviations from which a reading does not fit: by chance it happens once in a thousand. */
    static final double STANDS_OUT = 3.3;
    /** By so much a sum of squares must be lower than the next for its explanation to be taken: 4.5 times as likely. */
    private static final double CLEARLY = 3.0;
    /** What was poured explains more than one reading by chance alone, for it says more: by one square each. */
    private static final double POURED_SAYS_MORE = 3.0;
    /** How many times as much the readings alone must leave open, to say that the strength rests on what was poured. */
    private static final double RESTS_ON_POURED = 2.0;

    private static final String NONE_NEAR = "No liquid is found that comes near these readings.";

    private final List<Reading> readings;
    private final @Nullable Poured poured;
    private final Thermometer thermometer;
    private final Vessel vessel;

    private Gauging(List<Reading> readings, @Nullable Poured poured, Thermometer thermometer) {
        this.readings = List.copyOf(readings);
        this.poured = poured;
        this.thermometer = thermometer;
        this.vessel =
                Vessel.holding(poured == null ? null : poured.contents(), expectedMass(readings, poured), thermometer);
    }

    /**
     * Returns what is in the vessel; empty when the readings leave strength or sugar open.
     *
     * @param poured what went in, or null when that is not known
     * @param thermometer that the temperatures of all readings were read by
     * @throws NoSuchLiquid when no liquid comes near the readings
     */
    public static Optional<Gauged> of(List<Reading> readings, @Nullable Poured poured, Thermometer thermometer) {
        try {
            return new Gauging(readings, poured, thermometer).gauged();
        } catch (NoSuchLiquid told) {
            throw told;
        } catch (ArithmeticException singular) {
            throw new NoSuchLiquid(NONE_NEAR);
        }
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
        Trust trust = Trust.ofAll(poured != null);
        Fit fit = fit(trust);
        Pulls pulls = pulls(trust, fit);
        List<Suspect> likely = List.of();
        while (pulls.worst() > STANDS_OUT) {
            likely = likely(trust, fit, pulls);
            Trust without = trust;
            for (Suspect suspect : likely) {
                without = without.and(suspect.without());
            }
            Fit rest = fit(without);
            if (!canBeTold(likely, trust) || !new Outlook(List.of(rest)).isTold()) {
                break;
            }
            likely = List.of();
            trust = without;
            fit = rest;
            pulls = pulls(trust, fit);
        }
        if (!new Outlook(List.of(fit)).isTold()) {
            return Optional.empty();
        }
        refuseWhatNoLiquidShows(trust, fit, pulls);
        return Optional.of(gauged(trust, fit, pulls, likely));
    }

    /** @param likely what may be wrong where that cannot be told, each alone */
    private Gauged gauged(Trust trust, Fit fit, Pulls pulls, List<Suspect> likely) {
        List<Fit> possible = new ArrayList<>(List.of(fit));
        for (Suspect suspect : likely) {
            possible.add(fit(suspect.without()));
        }
        Outlook outlook = new Outlook(possible);
        Judgement judgement =
                new Judgement(readings, pulls, spare(trust), poured != null, trust.poured(), tellsAcidity(trust));
        List<Finding> findings = new ArrayList<>(
                judgement.findings(likely.stream().map(Suspect::name).toList()));
        Prior prior = prior(trust);
        for (Poured.Slip slip : trust.wrong()) {
            double times = prior.timesItsRange(vessel, slip, fit.unknowns());
            findings.add(Judgement.wrong(slip, times, trust.wrong().size()));
        }
        if (trust.poured()) {
            restsOnPoured(trust, outlook).ifPresent(findings::add);
        }
        return new Gauged(
                Contents.ofGrams(fit.grams()),
                outlook.strength(),
                outlook.sugar(),
                tellsAcidity(trust) ? outlook.acidity() : null,
                tellsAmount(trust) ? outlook.volume() : null,
                hidden(fit.mixture()),
                outlook.correlation(),
                outlook.warmth(thermometer),
                pulls.all(),
                findings);
    }

    /** Returns what the readings would say without what was poured, where that is much less. */
    private Optional<Finding> restsOnPoured(Trust trust, Outlook outlook) {
        Trust readingsAlone = trust.withoutPoured();
        Optional<Outlook> alone = spare(readingsAlone) < 0
                ? Optional.empty()
                : Optional.of(new Outlook(List.of(fit(readingsAlone)))).filter(Outlook::isTold);
        double open = alone.map(each -> each.strength().halfWidth()).orElse(Double.POSITIVE_INFINITY);
        return open > RESTS_ON_POURED * outlook.strength().halfWidth()
                ? Optional.of(Judgement.restsOnPoured(alone))
                : Optional.empty();
    }

    /** A reading that nothing else speaks of is met exactly, unless no liquid can meet it. */
    private void refuseWhatNoLiquidShows(Trust trust, Fit fit, Pulls pulls) {
        for (int i = 0; i < readings.size(); i++) {
            Reading reading = readings.get(i);
            double expected = pulls.all().get(i).expected();
            double away = Math.abs(reading.value() - expected) / Math.sqrt(reading.variance());
            if (trust.keeps(i) && !pulls.all().get(i).canBeTold() && away > STANDS_OUT) {
                throw new NoSuchLiquid(Judgement.noSuchLiquid(reading, expected));
            }
        }
        if (!fit.settled()) {
            throw new NoSuchLiquid(NONE_NEAR);
        }
    }

    private Fit fit(Trust trust) {
        List<Reading> used = trust.used(readings);
        Prior prior = prior(trust);
        double[] start = trust.poured() ? prior.mean() : Start.nearest(vessel, used, prior);
        return Fit.of(vessel, used, prior, start);
    }

    private Prior prior(Trust trust) {
        return poured != null && trust.poured()
                ? Prior.of(vessel, poured, trust.wrong())
                : Prior.ofNothing(vessel, tellsAmount(trust), tellsAcidity(trust));
    }

    private Pulls pulls(Trust trust, Fit fit) {
        Prior prior = prior(trust);
        return Pulls.of(fit, readings, trust, trust.poured() ? vessel.mixture(prior.mean()) : null, prior);
    }

    /** What may be wrong, what is relied on without it, and the sum of squares that is left then. */
    private record Suspect(String name, Trust without, double left, boolean poured) {}

    /** Returns what explains nearly best that something stands out. */
    private List<Suspect> likely(Trust trust, Fit fit, Pulls pulls) {
        List<Suspect> suspects = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            double size = pulls.size(i);
            if (size > 0.0) {
                // Without a reading the sum of squares is lower by the square of its pull.
                double left = fit.misfit() - size * size;
                suspects.add(new Suspect(readings.get(i).shown().label(), trust.withoutReading(i), left, false));
            }
        }
        if (poured != null && trust.poured()) {
            for (Poured.Slip slip : poured.slips()) {
                Trust doubting = trust.doubting(slip);
                suspects.add(new Suspect(slip.what(), doubting, fit(doubting).misfit(), true));
            }
            Trust without = trust.withoutPoured();
            if (spare(without) >= 1) {
                double left = fit(without).misfit() + POURED_SAYS_MORE;
                suspects.add(new Suspect(Pulls.POURED, without, left, true));
            }
        }
        double least = suspects.stream().mapToDouble(Suspect::left).min().orElse(0.0);
        return suspects.stream()
                .filter(suspect -> suspect.left() <= least + CLEARLY)
                .sorted(Comparator.comparingDouble(Suspect::left))
                .toList();
    }

    /** Labels and measures that explain it alike are doubted together; where a reading does so too, nobody can tell. */
    private boolean canBeTold(List<Suspect> likely, Trust trust) {
        boolean one = likely.size() == 1 || likely.stream().allMatch(Suspect::poured);
        return one
                && !likely.isEmpty()
                && (spare(trust) >= 2 || !likely.get(0).without().poured());
    }

    /** Returns how many of what is used could be missing and strength, sugar and all else that is sought would still be known. */
    private int spare(Trust trust) {
        int sought = 2 + (tellsAmount(trust) ? 1 : 0) + (tellsAcidity(trust) ? 1 : 0);
        int fromPoured = trust.poured() ? Vessel.AMOUNTS - trust.wrong().size() : 0;
        return trust.used(readings).size() + fromPoured - sought;
    }

    private boolean tellsAmount(Trust trust) {
        return trust.poured() || tells(trust, Shown.MASS) || tells(trust, Shown.VOLUME);
    }

    private boolean tellsAcidity(Trust trust) {
        return trust.poured() || tells(trust, Shown.ACIDITY);
    }

    private boolean tells(Trust trust, Shown shown) {
        return trust.used(readings).stream().anyMatch(reading -> reading.shown() == shown);
    }

    /** Returns what sugar and acid hide from a spirit hydrometer in any liquid that follows the formulas, % vol. */
    public static double hidden(Contents liquid) {
        return hidden(new Mixture(liquid.toGrams()));
    }

    /** Returns what sugar and acid hide from a spirit hydrometer at 20 °C, % vol; all of it where the stem sinks to zero. */
    private static double hidden(Mixture mixture) {
        return mixture.strength() - Math.max(0.0, Shown.SPIRIT_20C.of(mixture, Temperature.TWENTY_CELSIUS));
    }
}
