package org.stillroom.core.aroma;

import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Standing;

/**
 * Something that carries aroma, by what standards, law and analyses state of it.
 *
 * @param id short name by which compositions refer to it
 * @param name the name that we show, without the word oil
 * @param aliases other names that mean the same
 * @param kind oil, plant or extract
 * @param title its full name with how it was won
 * @param botanical name of the plant
 * @param part of the plant, and the process: pressed or distilled
 * @param cas CAS number of the material, or empty
 * @param standard that describes it, or empty
 * @param density relative density or g/mL near 20 °C, or null where none is known
 * @param densityBasis what the density is: "d20/20" and "SG" are relative to water of the same temperature, "d20" is g/mL; or empty
 * @param densityStanding how density and refraction came to us, or null where there are none
 * @param refraction refractive index at 20 °C, or null where none is known
 * @param note what else is to know
 * @param analyses its composition, one per group of figures; never merged
 */
public record Material(
        String id,
        String name,
        List<String> aliases,
        Kind kind,
        String title,
        String botanical,
        String part,
        String cas,
        String standard,
        @Nullable Range density,
        String densityBasis,
        @Nullable Standing densityStanding,
        @Nullable Range refraction,
        String note,
        List<Analysis> analyses) {
    /** What it is. */
    public enum Kind {
        OIL,
        PLANT,
        EXTRACT
    }

    /** From the least to the most, both included. */
    public record Range(double low, double high) {
        public Range {
            if (!(low >= 0.0 && low <= high && high < 1e9)) {
                throw new IllegalArgumentException(
                        "a range runs upwards from zero or more, not from " + low + " to " + high);
            }
        }

        public double middle() {
            return 0.5 * (low + high);
        }
    }

    /**
     * One group of figures on its composition.
     *
     * @param group the standard, law or analysis that states them
     * @param standing how they came to us
     * @param percent of the material, by CAS number or the name of a sum
     */
    public record Analysis(String group, Standing standing, Map<String, Range> percent) {
        public Analysis {
            percent = Collections.unmodifiableMap(new LinkedHashMap<>(percent));
        }

        /** Returns the middles together, leaving sums out, %. */
        public double middles() {
            return percent.entrySet().stream()
                    .filter(each -> Constituents.find(each.getKey()) != null)
                    .mapToDouble(each -> each.getValue().middle())
                    .sum();
        }
    }

    /** An analysis that accounts for less of the material than this is no picture of it, %. Own judgement. */
    private static final double A_PICTURE = 50.0;

    public Material {
        aliases = List.copyOf(aliases);
        analyses = List.copyOf(analyses);
    }

    /**
     * Returns the analysis to compute with, or null when there is none: of those that account for half of the material the one
     * of the best standing, among equals the one that names most; where none does, the one that accounts for most.
     */
    public @Nullable Analysis analysis() {
        Comparator<Analysis> byStanding = Comparator.comparing(Analysis::standing);
        Comparator<Analysis> byNumber =
                Comparator.comparing(each -> -each.percent().size());
        return analyses.stream()
                .filter(each -> each.middles() >= A_PICTURE)
                .min(byStanding.thenComparing(byNumber))
                .or(() -> analyses.stream().max(Comparator.comparing(Analysis::middles)))
                .orElse(null);
    }
}
