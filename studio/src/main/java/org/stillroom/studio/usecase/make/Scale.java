package org.stillroom.studio.usecase.make;

import java.util.List;

/** What the scale shows under the vessel and under the second jar as the steps go by. */
final class Scale {
    private final double offset;
    private double vessel;
    private double vesselReally;
    private double second;
    private double secondReally;

    /** @param weighed what counts in the log about weighing the empty vessel */
    Scale(List<LogEntry> weighed) {
        double tare = 0.0;
        for (LogEntry entry : weighed) {
            boolean kept = "kept".equals(entry.said().second());
            tare = entry.kind().equals(Logged.WEIGHED_VESSEL) && kept
                    ? entry.said().grams()
                    : 0.0;
        }
        offset = tare;
    }

    /** Returns what it shows when everything so far is in as asked or as poured, g. */
    double shows(boolean secondJar) {
        return secondJar ? second : offset + vessel;
    }

    /** Returns what it shows of what is really in, g. */
    double inVessel(boolean secondJar) {
        return secondJar ? secondReally : offset + vesselReally;
    }

    void add(double grams, boolean secondJar, boolean isIn) {
        double really = isIn ? grams : 0.0;
        if (secondJar) {
            second += grams;
            secondReally += really;
        } else {
            vessel += grams;
            vesselReally += really;
        }
    }

    /** Empties the second jar into the vessel, really or as asked. */
    void secondJarIn(boolean done) {
        vessel += second;
        vesselReally += done ? secondReally : 0.0;
        second = 0.0;
        secondReally = 0.0;
    }
}
