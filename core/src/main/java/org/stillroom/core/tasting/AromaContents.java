package org.stillroom.core.tasting;

import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.aroma.Material;
import org.stillroom.core.aroma.Materials;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.tasting.Note.Content;

/** What an oil brings of each constituent, from the least to the most that its ranges say. */
public final class AromaContents {
    /** How far a typical figure without a range is taken to be off, by a factor; own estimate. */
    private static final double WITHOUT_RANGE = 2.0;

    private AromaContents() {}

    /**
     * Returns what so much of an oil brings, in the unit of its amount.
     *
     * @param name of the oil, by which its ranges are found
     * @param amount of oil
     * @param typical part of it by CAS number, 0 to 1; empty where the oil is not known
     */
    public static Map<String, Content> of(String name, double amount, Map<String, Double> typical) {
        Map<String, Content> contents = new TreeMap<>();
        Material material = Materials.find(name);
        Material.@Nullable Analysis analysis = material == null ? null : material.analysis();
        if (analysis != null) {
            analysis.percent().forEach((key, range) -> {
                if (Constituents.find(key) != null) {
                    double usual = typical.getOrDefault(key, range.middle() / 100.0);
                    contents.put(
                            key,
                            content(range.low() / 100.0, usual, range.high() / 100.0)
                                    .times(amount));
                }
            });
        }
        typical.forEach((key, part) -> contents.computeIfAbsent(
                key,
                other -> content(part / WITHOUT_RANGE, part, Math.min(1.0, part * WITHOUT_RANGE))
                        .times(amount)));
        return once(contents);
    }

    /**
     * Returns what so much of an oil brings by the analyses of its lots: no more range than lies between them.
     *
     * @param parts the least and most part of it, 0 to 1, by CAS number or the name of a sum
     */
    public static Map<String, Content> analysed(double amount, Map<String, Span> parts) {
        Map<String, Content> contents = new TreeMap<>();
        parts.forEach((key, part) -> contents.put(
                key, new Content(part.low(), 0.5 * (part.low() + part.high()), part.high()).times(amount)));
        return once(contents);
    }

    /**
     * Counts under one key what is one thing by two names: citral is geranial and neral together. What states the parts is taken for
     * the whole where it comes to more than what states that.
     */
    private static Map<String, Content> once(Map<String, Content> contents) {
        Constituents.WHOLES.forEach((whole, parts) -> {
            Content together = null;
            for (String part : parts) {
                Content one = contents.remove(part);
                together = one == null ? together : together == null ? one : together.plus(one);
            }
            if (together != null) {
                contents.merge(whole, together, (a, b) -> a.typical() >= b.typical() ? a : b);
            }
        });
        return contents;
    }

    private static Content content(double low, double typical, double high) {
        return new Content(Math.min(low, typical), typical, Math.max(high, typical));
    }
}
