package org.stillroom.core.tasting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.reference.Standing;

/**
 * A constituent of a liquid: how much there is of it, and how far that lies above what is smelt.
 *
 * @param cas CAS number, or the name of a group of constituents
 * @param name the name that we show
 * @param content mg/L
 * @param threshold in the medium nearest to the liquid, or null where none was found
 * @param strength of the liquid, % vol
 */
public record Note(
        String cas, String name, Content content, @Nullable OdourThreshold threshold, double strength) {
    private static final double MICROGRAMS = 1000.0;

    /** A threshold from memory, or of another strength, is known to no less than a decade from end to end. Own judgement. */
    private static final double DECADE = 10.0;

    /** A whole number that came of arithmetic is whole. */
    private static final double A_HAIR = 1e-9;

    /** Why an odour activity is a hint and no more. */
    public enum Weakness {
        /** What ranges and thresholds allow reaches over a decade. */
        DECADE("within_a_decade", "known to a decade at best"),
        RECALLED("threshold_from_memory", "its threshold from memory"),
        /** Ethanol moves thresholds, of some constituents hundreds of times. */
        OTHER_MEDIUM("threshold_of_another_medium", "its threshold not of this strength");

        private final String key;
        private final String words;

        Weakness(String key, String words) {
            this.key = key;
            this.words = words;
        }

        public String key() {
            return key;
        }

        public String words() {
            return words;
        }
    }

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
                    cas,
                    constituent == null ? cas : constituent.name(),
                    content,
                    OdourThreshold.of(cas, strength),
                    strength));
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

    /** Returns the least odour activity that the ranges allow, of a weak threshold by half a decade to either side at least. */
    public double least() {
        return threshold == null ? 0.0 : atHighestFound() / widening();
    }

    /** Returns the greatest odour activity that the ranges allow, of a weak threshold by half a decade to either side at least. */
    public double most() {
        return threshold == null ? 0.0 : MICROGRAMS * content.max() / threshold.low() * widening();
    }

    /** Returns the odour activity by the least content and the highest threshold that was found, 0 where none was. */
    public double atHighestFound() {
        return threshold == null ? 0.0 : MICROGRAMS * content.min() / threshold.high();
    }

    /** One figure of a weak threshold looks surer than several that differ; returns by how much each end lies further out. */
    private double widening() {
        if (threshold == null || !isWeak(threshold)) {
            return 1.0;
        }
        return Math.max(1.0, Math.sqrt(DECADE * threshold.low() / threshold.high()));
    }

    private boolean isWeak(OdourThreshold found) {
        return found.standing() == Standing.FROM_MEMORY || found.isOfAnotherMedium(strength);
    }

    /**
     * Its odour activity in as many figures as are known of it, its ends rounded outwards.
     *
     * @param activity at the middle of content and threshold
     * @param least that the ranges allow
     * @param most that they allow
     */
    public record Told(double activity, double least, double most) {}

    /** Returns its odour activity as it is told: in one figure where it is known to a decade at best, else in two. */
    public Told told() {
        return new Told(
                rounded(activity(), Math::rint),
                rounded(least(), value -> Math.floor(value + A_HAIR)),
                rounded(most(), value -> Math.ceil(value - A_HAIR)));
    }

    private double rounded(double value, DoubleUnaryOperator to) {
        if (value == 0.0) {
            return 0.0;
        }
        int places = (isWithinADecade() ? 1 : 0) - (int) Math.floor(Math.log10(value));
        double scale = Math.pow(10.0, Math.abs(places));
        return places >= 0 ? to.applyAsDouble(value * scale) / scale : to.applyAsDouble(value / scale) * scale;
    }

    private boolean isWithinADecade() {
        return most() < 10.0 * Math.max(least(), 1e-12);
    }

    /** Returns why its activity is a hint and no more; empty where it is better known, or not at all. */
    public Set<Weakness> weaknesses() {
        Set<Weakness> weaknesses = EnumSet.noneOf(Weakness.class);
        if (threshold == null) {
            return weaknesses;
        }
        if (!isWithinADecade()) {
            weaknesses.add(Weakness.DECADE);
        }
        if (threshold.standing() == Standing.FROM_MEMORY) {
            weaknesses.add(Weakness.RECALLED);
        }
        if (threshold.isOfAnotherMedium(strength)) {
            weaknesses.add(Weakness.OTHER_MEDIUM);
        }
        return weaknesses;
    }
}
