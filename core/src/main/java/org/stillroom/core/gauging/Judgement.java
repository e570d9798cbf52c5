package org.stillroom.core.gauging;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.core.gauging.Gauged.Pull;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** What to know about an estimate: which reading does not fit and what may be behind it, and what nobody can tell. */
final class Judgement {
    private final List<Reading> readings;
    private final Pulls pulls;
    private final int spare;
    private final boolean pouredKnown;
    private final boolean pouredKept;
    private final boolean acidTold;

    Judgement(
            List<Reading> readings, Pulls pulls, int spare, boolean pouredKnown, boolean pouredKept, boolean acidTold) {
        this.readings = readings;
        this.pulls = pulls;
        this.spare = spare;
        this.pouredKnown = pouredKnown;
        this.pouredKept = pouredKept;
        this.acidTold = acidTold;
    }

    /** @param suspects what may be wrong where that cannot be told */
    List<Finding> findings(List<String> suspects) {
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < readings.size(); i++) {
            if (pulls.all().get(i).setAside()) {
                findings.add(setAside(readings.get(i), pulls.all().get(i)));
            }
        }
        if (pouredKnown && !pouredKept) {
            findings.add(pouredSetAside());
        }
        if (pulls.worst() > Gauging.STANDS_OUT) {
            findings.add(contradicting(suspects));
        } else if (spare < 1) {
            findings.add(nothingSpare());
        }
        if (!pouredKnown && !acidTold) {
            findings.add(acidCountsAsSugar());
        }
        return findings;
    }

    private static Finding setAside(Reading reading, Pull pull) {
        String name = reading.shown().label();
        return Finding.of(
                "reading-does-not-fit",
                Severity.CAUTION,
                name,
                "left out",
                "The " + name + " does not fit the others: it shows " + shown(reading, reading.value())
                        + ", they make it " + shown(reading, pull.expected()) + ". It is left out.",
                reading.shown().suspicion());
    }

    private static String shown(Reading reading, double value) {
        return QuantityWords.fixed(value, reading.shown().decimals()) + "\u00a0"
                + reading.shown().unit();
    }

    private static Finding pouredSetAside() {
        return Finding.of(
                "poured-does-not-fit",
                Severity.CAUTION,
                "what was poured",
                "left out",
                "What was poured does not fit the readings, which agree with each other. It is left out.",
                "Look for a bottle of another strength than its label, a measure that slipped, or a line that went in twice or not"
                        + " at all.");
    }

    private Finding contradicting(List<String> suspects) {
        String most = pulls.all().get(pulls.indexOfWorst()).name();
        return Finding.of(
                "readings-contradict",
                Severity.CAUTION,
                most,
                "cannot be told",
                "What is known contradicts itself by " + QuantityWords.fixed(pulls.worst(), 1)
                        + " standard deviations, " + most + " most. " + mayBeWrong(suspects)
                        + " The doubts reach over all that it may be.",
                "Repeat the readings, and add one of another kind.");
    }

    private static String mayBeWrong(List<String> suspects) {
        return switch (suspects.size()) {
            case 0, 1 -> "Too few readings are spare to tell which is wrong.";
            case 2 ->
                "It cannot be told whether this is wrong: " + suspects.get(0) + ", or this: " + suspects.get(1) + ".";
            default ->
                "It cannot be told whether this is wrong: " + suspects.get(0) + ", or this: " + suspects.get(1)
                        + ", or one of " + (suspects.size() - 2) + " more.";
        };
    }

    /**
     * Returns that a label or a measure does not fit.
     *
     * @param times by how many times its range it is off; below zero where less of it is in the vessel than was thought
     * @param of how many that explain it alike
     */
    static Finding wrong(Poured.Slip slip, double times, int of) {
        String reach = "about " + QuantityWords.fixed(Math.abs(times), Math.abs(times) < 10.0 ? 1 : 0)
                + " times what was allowed for it, towards " + (times < 0.0 ? "less" : "more") + " than was reckoned";
        return Finding.of(
                "poured-part-does-not-fit",
                Severity.CAUTION,
                slip.what(),
                "not reckoned with",
                of == 1
                        ? "By the readings, which agree with each other, it is off by " + reach + "."
                        : "It is one of " + of
                                + " that may be wrong; between them the readings cannot tell. By the best fit it is off by "
                                + reach + ".",
                "Check this bottle and this line: a strength other than its label, a measure that slipped, a line that went in twice"
                        + " or not at all.");
    }

    /** Returns that the doubt told is that of what was poured, with what the readings say without it, if they tell anything. */
    static Finding restsOnPoured(Optional<Outlook> alone) {
        String without = alone.map(outlook -> "The readings alone say "
                        + figure(outlook.strength(), 1) + "\u00a0% vol and " + figure(outlook.sugar(), 0)
                        + "\u00a0g/L.")
                .orElse("The readings alone leave strength or sugar open.");
        return Finding.of(
                "rests-on-poured",
                Severity.NOTE,
                Pulls.POURED,
                "taken for granted",
                "The strength rests mostly on the labels and measures of what was poured. " + without,
                "Where a label may be wrong by more than was allowed for it, gauge without what was poured, or add readings.");
    }

    private static String figure(Gauged.Interval interval, int decimals) {
        return QuantityWords.fixed(interval.value(), decimals) + " ± "
                + QuantityWords.fixed(interval.halfWidth(), decimals);
    }

    /** Returns what to say of a reading that no liquid shows together with the others. */
    static String noSuchLiquid(Reading reading, double nearest) {
        return "No liquid of alcohol, water, sugar and acid shows these readings together: the "
                + reading.shown().label()
                + " shows " + shown(reading, reading.value()) + ", the nearest liquid would show "
                + shown(reading, nearest) + ".";
    }

    private static Finding nothingSpare() {
        return Finding.of(
                "no-reading-spare",
                Severity.NOTE,
                "",
                "no reading to spare",
                "No reading is spare: it cannot be told whether they are right.",
                "Add one of another kind, or what was poured.");
    }

    private static Finding acidCountsAsSugar() {
        return Finding.of(
                "acid-counts-as-sugar",
                Severity.NOTE,
                "acidity",
                "taken for granted",
                "Nothing tells how much acid or glycerol is in it, so none is reckoned with: a gram of them counts nearly as a gram"
                        + " of sugar.",
                "Give the acidity where the liquid is sour.");
    }
}
