package org.stillroom.core.gauging;

import java.util.ArrayList;
import java.util.List;
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

    List<Finding> findings() {
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
            findings.add(contradicting());
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

    private Finding contradicting() {
        String most = pulls.all().get(pulls.indexOfWorst()).name();
        return Finding.of(
                "readings-contradict",
                Severity.CAUTION,
                most,
                "cannot be told",
                "What is known contradicts itself by " + QuantityWords.fixed(pulls.worst(), 1)
                        + " standard deviations, "
                        + most
                        + " most, and too few readings are spare to tell which is wrong. All doubts are widened by that much.",
                "Repeat the readings, and add one of another kind.");
    }

    private static Finding nothingSpare() {
        return Finding.of(
                "no-reading-spare",
                Severity.NOTE,
                "",
                "cannot be told",
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
