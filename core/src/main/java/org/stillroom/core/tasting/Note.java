package org.stillroom.core.tasting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.Constituents;

/**
 * A constituent of a liquid: how much there is of it, and how far that lies above what is smelt.
 *
 * @param cas CAS number, or the name of a group of constituents
 * @param name the name that we show
 * @param content mg/L
 * @param threshold in the medium nearest to the liquid, or null where none was found
 */
public record Note(
        String cas, String name, Content content, @Nullable OdourThreshold threshold) {
    private static final double MICROGRAMS = 1000.0;

    /**
     * How much there is of something.
     *
     * @param min mg/L when the lot has the least of its range
     * @param typical mg/L
     * @param max mg/L when the lot has the most
     */
    public record Content(double min, double typical, double max) {
        public Content {
            if (!(min >= 0.0 && min <= typical && typical <= max && max < 1e9)) {
                throw new IllegalArgumentException(
                        "a content runs from least to typical to most, not " + min + ", " + typical + ", " + max);
            }
        }

        public Content plus(Content other) {
            return new Content(min + other.min, typical + other.typical, max + other.max);
        }

        public Content times(double factor) {
            return new Content(min * factor, typical * factor, max * factor);
        }
    }

    /** Returns the notes of a liquid, the leading one first; those without a threshold come last, by content. */
    public static List<Note> of(Map<String, Content> contents, double strength) {
        List<Note> notes = new ArrayList<>();
        contents.forEach((cas, content) -> {
            Constituent constituent = Constituents.find(cas);
            notes.add(new Note(
                    cas, constituent == null ? cas : constituent.name(), content, OdourThreshold.of(cas, strength)));
        });
        notes.sort(Comparator.comparingDouble(Note::activity)
                .thenComparingDouble(note -> note.content().typical())
                .reversed());
        return List.copyOf(notes);
    }

    /** Returns the odour activity, content over threshold at the middle of both; 0 where no threshold is known. */
    public double activity() {
        return threshold == null ? 0.0 : MICROGRAMS * content.typical() / threshold.middle();
    }

    /** Returns the least odour activity that the ranges allow. */
    public double least() {
        return threshold == null ? 0.0 : MICROGRAMS * content.min() / threshold.high();
    }

    /** Returns the greatest odour activity that the ranges allow. */
    public double most() {
        return threshold == null ? 0.0 : MICROGRAMS * content.max() / threshold.low();
    }

    /** Returns whether the activity is known to no better than a decade. */
    public boolean withinADecade() {
        return threshold != null && most() >= 10.0 * Math.max(least(), 1e-12);
    }
}
