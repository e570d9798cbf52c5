package org.stillroom.core.safety;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.TableSet;

/**
 * Everything the rules know, one list per shipped table; a row that is missing makes its answers unknown.
 *
 * @param watched substances that are watched for
 * @param plants plants by the names people write
 * @param compositions what source groups say is in a material
 * @param maxima Annex III of Regulation 1334/2008
 * @param restricted its Annex IV
 * @param usLists 21 CFR 172 and 182
 * @param usLimits greatest amounts by US food law
 * @param addedLimits greatest amounts of what is weighed in by itself
 * @param prohibited what US food law forbids
 * @param guidance intake guidance
 * @param blocked oils that are not for drinking
 * @param poisons plants to refuse or to check
 * @param cautions what follows from a name
 * @param textCautions what follows from the words of a step or a note
 * @param boughtDrinks what bought drinks may hold that a label has to say
 * @param allergens what the name of a thing brings of allergens and sulphites
 * @param flashPoints ethanol with water
 * @param standardDrinks by country
 * @param tables where all of it was read from
 */
public record Knowledge(
        List<Watched> watched,
        List<Plant> plants,
        List<Composed> compositions,
        List<EuMaximum> maxima,
        List<Restricted> restricted,
        List<UsEntry> usLists,
        List<UsLimit> usLimits,
        List<AddedLimit> addedLimits,
        List<Prohibited> prohibited,
        List<Guidance> guidance,
        List<Blocked> blocked,
        List<Poison> poisons,
        List<NamedCaution> cautions,
        List<TextCaution> textCautions,
        List<BoughtDrink> boughtDrinks,
        List<AllergenName> allergens,
        List<FlashPoint> flashPoints,
        List<StandardDrink> standardDrinks,
        TableSet tables) {
    /** What ships with the program. */
    public static final Knowledge SHIPPED = KnowledgeTables.read(TableSet.SHIPPED);

    public Knowledge {
        watched = List.copyOf(watched);
        plants = List.copyOf(plants);
        compositions = List.copyOf(compositions);
        maxima = List.copyOf(maxima);
        restricted = List.copyOf(restricted);
        usLists = List.copyOf(usLists);
        usLimits = List.copyOf(usLimits);
        addedLimits = List.copyOf(addedLimits);
        prohibited = List.copyOf(prohibited);
        guidance = List.copyOf(guidance);
        blocked = List.copyOf(blocked);
        poisons = List.copyOf(poisons);
        cautions = List.copyOf(cautions);
        textCautions = List.copyOf(textCautions);
        boughtDrinks = List.copyOf(boughtDrinks);
        allergens = List.copyOf(allergens);
        flashPoints = List.copyOf(flashPoints);
        standardDrinks = List.copyOf(standardDrinks);
    }

    /**
     * Returns what the tables say.
     *
     * @throws IllegalStateException when one of them cannot be read
     */
    public static Knowledge of(TableSet tables) {
        return KnowledgeTables.read(tables);
    }

    /** A row of Annex III: part A has no maximum. */
    public record EuMaximum(
            String id, String part, String substance, String category, String maximum, RowStatus status) {
        double milligramsPerKilogram() {
            return Double.parseDouble(maximum);
        }

        boolean isMaximum() {
            return !maximum.isEmpty();
        }
    }

    /** A row of Annex IV. */
    public record Restricted(String part, String latinName, String commonName, String condition, RowStatus status) {}

    /**
     * A greatest amount by US food law.
     *
     * @param watched of what
     * @param drinks "all", "alcoholic" or "without alcohol"
     * @param milligramsPerKilogram of the finished drink
     * @param edge whether the figure itself is allowed: "up to" or "below"
     * @param says what it is for
     */
    public record UsLimit(
            String watched, String drinks, double milligramsPerKilogram, String edge, String says, RowStatus status) {
        boolean isFor(Drink drink) {
            return drinks.equals("all") || drinks.equals("alcoholic") == drink.isAlcoholic();
        }
    }

    /**
     * A greatest amount of what is weighed in by itself.
     *
     * @param names in the plain form of {@link Words}
     * @param milligramsPerKilogram of the finished drink
     * @param says what it is for
     * @param sweetens whether other law can let it in as a sweetener
     */
    public record AddedLimit(
            Place place,
            String substance,
            List<String> names,
            double milligramsPerKilogram,
            String says,
            boolean sweetens,
            RowStatus status) {
        public AddedLimit {
            names = List.copyOf(names);
        }
    }

    /**
     * What US food law forbids adding to any food.
     *
     * @param names of plants and of watched substances
     * @param partsLeftOut words for parts of the plant that are not meant, in the plain form of {@link Words}
     */
    public record Prohibited(
            String clause, String what, List<String> names, List<String> partsLeftOut, RowStatus status) {
        boolean isAbout(Portion portion) {
            boolean part = Words.any(portion.words(), partsLeftOut);
            Watched substance = portion.substance();
            return (substance != null && names.contains(substance.name()))
                    || (!part && portion.plants().stream().anyMatch(plant -> names.contains(plant.name())));
        }
    }

    /**
     * A line of 21 CFR 172.510, 182.10, 182.20 and their neighbours.
     *
     * @param printed the name in the plain form of {@link Words}
     * @param names whole names that mean it, each as its words in the form of {@link NameWords}
     * @param parts words for parts of the plant that may be said besides
     */
    public record UsEntry(
            String clause,
            String name,
            String printed,
            List<Set<String>> names,
            Set<String> parts,
            String botanical,
            String limitation,
            List<String> flags,
            RowStatus status) {
        boolean has(String flag) {
            return flags.contains(flag);
        }

        /** Returns whether it stands among the spices, where oils do not. */
        boolean isSpiceAlone() {
            return clause.endsWith("182.10");
        }
    }

    /**
     * A value of intake guidance.
     *
     * @param substance as the body calls it
     * @param kind ADI, TDI …
     * @param value in {@code unit}, or empty
     * @param watched name of the watched substance, or empty
     * @param compares "per kg and day", "per person and day", "per kg at once", "per person at once", or "no"
     * @param genotoxic whether no threshold is known
     */
    public record Guidance(
            String substance,
            String kind,
            String value,
            String unit,
            String year,
            String body,
            RowStatus status,
            String watched,
            String compares,
            boolean genotoxic) {}

    /** An oil that is not for drinking. */
    public record Blocked(
            String material, String reason, String action, RowStatus status, List<String> names, boolean stops) {}

    /** A plant to refuse or to check. */
    public record Poison(
            String plant, String botanical, String reason, RowStatus status, List<String> names, boolean stops) {}

    /**
     * A caution that follows from a name.
     *
     * @param unless verdict of another that, said of the same ingredient, stands in its place; or empty
     */
    public record NamedCaution(
            String rule,
            List<String> names,
            String place,
            List<String> kinds,
            String unless,
            Severity severity,
            String verdict,
            String message,
            String remedy,
            RowStatus status) {}

    /**
     * Bought drinks and flavourings that may hold a watched substance.
     *
     * @param of what a label calls it
     */
    public record BoughtDrink(String watched, String of, List<TextWords.Phrase> names, RowStatus status) {
        public BoughtDrink {
            names = List.copyOf(names);
        }
    }

    /** The flash point of ethanol with water of a strength, % vol and °C. */
    public record FlashPoint(double strength, double celsius, RowStatus status) {}

    /**
     * What a country calls a drink, and what its guidance of low risk allows.
     *
     * @param grams of ethanol
     * @param millilitres of it at 20 °C
     * @param aWeek grams of ethanol a week: one figure, or one for men and one for women; empty where none is named
     * @param aDay the same on one day
     * @param year of the guidance, or empty where it is not known
     * @param place whose law goes with it, or null where neither
     * @param guideline as the body words it
     * @param body that names it
     */
    public record StandardDrink(
            String country,
            String name,
            double grams,
            double millilitres,
            List<Double> aWeek,
            List<Double> aDay,
            String year,
            @Nullable Place place,
            String guideline,
            String body,
            RowStatus status) {
        /** Grams of a millilitre of ethanol at 20 °C. Source: OIML R 22. */
        private static final double ETHANOL = 0.78924;

        public StandardDrink {
            aWeek = List.copyOf(aWeek);
            aDay = List.copyOf(aDay);
        }

        boolean isGuided() {
            return !aWeek.isEmpty() || !aDay.isEmpty();
        }

        /** Returns the strictest of a week, g; a day's counts seven times. */
        double leastAWeek() {
            return Math.min(least(aWeek), 7.0 * least(aDay));
        }

        double leastADay() {
            return least(aDay);
        }

        private static double least(List<Double> grams) {
            return grams.stream().mapToDouble(Double::doubleValue).min().orElse(Double.POSITIVE_INFINITY);
        }

        /**
         * Returns how many of them an amount of ethanol is; by mass or by volume, whichever is more.
         *
         * @param ethanol g
         */
        public double in(double ethanol) {
            return Math.max(ethanol / grams, ethanol / ETHANOL / millilitres);
        }
    }
}
