package org.stillroom.core.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.tasting.AromaContents;
import org.stillroom.core.tasting.Note;

/**
 * The most of an oil that is plausible in a drink: bounds of our own judgement, wide enough that what is beyond is nearly always a slip.
 *
 * <p>No table of usual doses could be read, so it follows from what the oil is made of. At most 3 g/L where anethole is more than
 * half of it (2 g/L is the most that aniseed drinks may hold), 2 g/L where limonene is more than two fifths, 0.5 g/L of all others.
 * Where anethole or limonene also leads, by odour activity at the middle of content and threshold, it stays at that. Of any other oil
 * the dose is looked at of which one constituent surely stands {@value #TIMES} times over its odour threshold in water, by its least
 * content and its highest threshold: that dose says how strong an oil is, but thresholds are known to a decade at best, so that the
 * most is the geometric middle between it and the bound of the class. The number of times is own judgement too: by it 0.2 g/L of
 * juniper pass and 0.1 g/L of rose are asked. Below {@link #LEAST} no oil is asked about.
 *
 * @param gramsPerLitre infinite for what carries no oil
 * @param surest the constituent that most surely stands above its threshold, in a drink with 1 g/L of the oil; null where none does
 */
record MostOil(double gramsPerLitre, @Nullable Note surest) {
    private static final String ANETHOLE = "4180-23-8";
    private static final String LIMONENE = "5989-27-5";

    static final double OF_ANETHOLE = 3.0;
    private static final double OF_LIMONENE = 2.0;
    private static final double OF_OTHERS = 0.5;

    /** So often over its threshold stands what makes an oil a strong one. Own judgement. */
    static final int TIMES = 250;

    /** So much, some three drops, is asked about of no oil, g/L. Own judgement. */
    static final double LEAST = 0.06;

    private static final double A_GRAM = 1000.0;

    /**
     * Returns the most of an oil.
     *
     * @param name of the oil, by which the ranges of its constituents are found
     * @param perGram what a gram of the oil, or of what carries it, holds
     */
    static MostOil of(String name, Contents perGram) {
        double oil = perGram.grams(Substance.OIL);
        if (!(oil > 0.0)) {
            return new MostOil(Double.POSITIVE_INFINITY, null);
        }
        Map<String, Double> parts = parts(perGram, oil);
        List<Note> notes = Note.of(AromaContents.of(name, A_GRAM, parts), 0.0);
        Note surest = notes.stream()
                .filter(note -> note.atHighestFound() > 0.0)
                .max(Comparator.comparingDouble(Note::atHighestFound))
                .orElse(null);
        double ofClass = ofClass(parts);
        boolean leads = ofClass > OF_OTHERS
                && List.of(ANETHOLE, LIMONENE).contains(notes.get(0).cas());
        double most = surest == null || leads
                ? ofClass
                : Math.min(ofClass, Math.max(LEAST, Math.sqrt(ofClass * TIMES / surest.atHighestFound())));
        return new MostOil(most, surest);
    }

    /** Returns the part of each constituent in the oil. */
    static Map<String, Double> parts(Contents perGram, double oil) {
        Map<String, Double> parts = new TreeMap<>();
        perGram.aroma().forEach((cas, grams) -> parts.put(cas, grams / oil));
        return parts;
    }

    /** Returns that constituent in a drink with so much of the oil per litre, or null. */
    @Nullable
    Note surest(double perLitre) {
        return surest == null
                ? null
                : new Note(
                        surest.cas(),
                        surest.name(),
                        surest.content().times(perLitre),
                        surest.threshold(),
                        surest.strength());
    }

    private static double ofClass(Map<String, Double> parts) {
        if (parts.getOrDefault(ANETHOLE, 0.0) > 0.5) {
            return OF_ANETHOLE;
        }
        return parts.getOrDefault(LIMONENE, 0.0) > 0.4 ? OF_LIMONENE : OF_OTHERS;
    }
}
