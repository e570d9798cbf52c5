package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.CommonNames;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/**
 * Whether the US lists of 21 CFR 172.510, 182 and 184 name an oil or plant, by common name, synonym, part or botanical name.
 *
 * <p>A line is meant by a whole name of it. Any other word in the name of the ingredient, unless it says nothing of the plant or
 * names a part that fits, makes it another plant, of which nothing is known. A line that we have from memory never clears: it is
 * told as such. What is on no list is told as not listed.
 */
final class UsListing {
    /** Words by which a line says which kind of a plant it means, beside parts. */
    private static final Set<String> QUALIFIERS =
            Set.of("free", "from", "prussic", "acid", "ffpa", "decocainized", "absolute", "oil", "molasse", "tree");

    /** Of synthetic flavourings we hold no more. */
    private static final String NAME_ALONE =
            " Our copy of 182.60 holds names alone, and nothing of 172.515 is held: that was not checked.";

    private static final Pattern AT_MOST = Pattern.compile("at most (\\d+(?:\\.\\d+)?) ppm(?: in drinks)?");

    private static final String FROM_MEMORY = " Our copy of that line is from memory.";

    private static final String LISTED = "listed";
    private static final String LISTED_FROM_MEMORY = "listed, from memory";

    private UsListing() {}

    /** Returns whether a finding says no more than that a list names it, as we read or remember it; that clears nothing. */
    static boolean isListed(Finding finding) {
        return finding.verdict().equals(LISTED) || finding.verdict().equals(LISTED_FROM_MEMORY);
    }

    /** How a line of the lists speaks of what a name means; the best first. */
    enum Fit {
        LISTED,
        /** Lines for parts of the plant, and which part it is, is not said. */
        PART_NOT_SAID,
        /** The line is for the oil alone, and it is none. */
        OIL_ALONE,
        /** The line is for the spice alone, and it is its oil. */
        SPICE_ALONE,
        NOT_LISTED
    }

    /**
     * What the lists say of a name.
     *
     * @param entries the lines, those that fit the name best, lines that were read first
     */
    record Listing(Fit fit, List<Knowledge.UsEntry> entries) {}

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        if (serving.places().contains(Place.US)) {
            for (Portion portion : drink.portions()) {
                boolean prohibited = drink.knowledge().prohibited().stream().anyMatch(row -> row.isAbout(portion));
                if (!prohibited) { // what the law forbids is told as that alone
                    findings.add(judge(drink, portion));
                }
            }
        }
        return findings;
    }

    private static Finding judge(Drink drink, Portion portion) {
        Listing listing = find(portion.made(), isOil(portion), drink.knowledge().usLists());
        return switch (listing.fit()) {
            case LISTED -> listed(drink, portion, listing.entries().get(0));
            case PART_NOT_SAID ->
                finding(
                        portion,
                        Severity.NOTE,
                        "part not said",
                        portion.name() + ": the US lists name only parts or kinds of it: " + told(listing.entries())
                                + ".",
                        "Say in its name which it is; of any other ask the supplier.",
                        Source.CFR_21_LISTS);
            case OIL_ALONE ->
                notListed(portion, " is listed as oil alone, and it is none: " + told(listing.entries()) + ".");
            case SPICE_ALONE ->
                notListed(portion, " is listed as a spice alone, not its oil: " + told(listing.entries()) + ".");
            case NOT_LISTED ->
                notListed(
                        portion,
                        " was found on none of the US lists of oils, spices and natural flavourings. Of synthetic ones our copy holds names of 182.60 alone and nothing of 172.515: not checked.");
        };
    }

    private static boolean isNameAlone(Knowledge.UsEntry entry) {
        return entry.clause().endsWith("182.60");
    }

    private static Finding notListed(Portion portion, String message) {
        return finding(
                portion,
                Severity.NOTE,
                "not listed",
                portion.name() + message,
                "Ask the supplier for its food-flavouring status.",
                Source.CFR_21_LISTS);
    }

    private static String told(List<Knowledge.UsEntry> entries) {
        return String.join(
                "; ", entries.stream().map(UsListing::told).distinct().toList());
    }

    private static String told(Knowledge.UsEntry entry) {
        return entry.name() + " (" + entry.clause() + ")"
                + (entry.limitation().isEmpty() ? "" : ", " + entry.limitation());
    }

    private static Finding listed(Drink drink, Portion portion, Knowledge.UsEntry entry) {
        boolean read = entry.status().mayClear();
        String says = portion.name() + ": listed as " + told(entry) + ".";
        if (entry.has("carbonated_only")) {
            return finding(
                    portion,
                    Severity.NOTE,
                    "listed for other drinks",
                    says,
                    "Ask for its status in a drink that is not carbonated.",
                    Source.CFR_21_LIMITS);
        }
        if (entry.has("alcoholic_only") && !drink.isAlcoholic()) {
            return finding(
                    portion,
                    Severity.STOP,
                    "not in this drink",
                    says + (read ? "" : FROM_MEMORY),
                    "Leave it out.",
                    Sources.usLists(entry.status()));
        }
        @Nullable Amount safrole = entry.has("safrole_free") ? drink.amount("safrole") : null;
        if (safrole != null && !(safrole.isKnown() && safrole.perKilogram().most() == 0.0)) {
            return finding(
                    portion,
                    Severity.CAUTION,
                    "not shown to be free",
                    says
                            + (safrole.isKnown()
                                    ? " The drink may hold "
                                            + safrole.perKilogram().told() + " mg/kg of safrole."
                                    : " How much safrole the drink holds is not known."),
                    "Have the drink analysed, or leave it out.",
                    Sources.usLists(entry.status()));
        }
        double perKilogram = 1000.0 * portion.grams().most() / drink.kilograms();
        if (perKilogram > mostOf(entry)) {
            return finding(
                    portion,
                    Severity.CAUTION,
                    "above what is listed",
                    says + " " + QuantityWords.figures(perKilogram) + " mg/kg of it go into the drink.",
                    "Take less.",
                    Sources.usLists(entry.status()));
        }
        return finding(
                portion,
                Severity.NOTE,
                read ? LISTED : LISTED_FROM_MEMORY,
                says + (read ? "" : FROM_MEMORY) + (isNameAlone(entry) ? NAME_ALONE : ""),
                read ? "" : "Compare with the text of the clause.",
                Sources.usLists(entry.status()));
    }

    /** Returns how much of it itself a line lists at most, mg/kg of the food; infinite where it does not say. */
    private static double mostOf(Knowledge.UsEntry entry) {
        Matcher most = AT_MOST.matcher(entry.limitation());
        return most.matches() ? Double.parseDouble(most.group(1)) : Double.POSITIVE_INFINITY;
    }

    private static Finding finding(
            Portion portion, Severity severity, String verdict, String message, String remedy, Source source) {
        return new Finding(
                "us-listed", severity, portion.where(), Place.US.label(), verdict, message, "", remedy, null, source);
    }

    private static boolean isOil(Portion portion) {
        return portion.kind() == Kind.ESSENTIAL_OIL || portion.form() == Portion.Form.OIL;
    }

    /** Returns what the lists say of a name; where a botanical name leaves open which plant it is, the worst of them counts. */
    static Listing find(String name, boolean isOil, List<Knowledge.UsEntry> entries) {
        return CommonNames.readings(name).stream()
                .map(reading -> ofReading(reading, isOil, entries))
                .max(Comparator.comparing(Listing::fit))
                .orElseThrow();
    }

    private static Listing ofReading(String name, boolean isOil, List<Knowledge.UsEntry> entries) {
        Set<String> words = NameWords.of(isOil ? name + " oil" : name);
        boolean asOil = words.contains("oil");
        String plain = Words.plain(name);
        List<Knowledge.UsEntry> whole = best(
                words,
                entries.stream()
                        .filter(entry -> entry.printed().equals(plain) || isWhole(words, entry))
                        .toList());
        if (whole.isEmpty()) {
            List<Knowledge.UsEntry> parts =
                    entries.stream().filter(entry -> isPartOf(words, entry)).toList();
            return new Listing(parts.isEmpty() ? Fit.NOT_LISTED : Fit.PART_NOT_SAID, parts);
        }
        Predicate<Knowledge.UsEntry> fits = entry -> asOil ? !entry.isSpiceAlone() : !entry.has("oil_only");
        List<Knowledge.UsEntry> fitting = whole.stream().filter(fits).toList();
        return fitting.isEmpty()
                ? new Listing(asOil ? Fit.SPICE_ALONE : Fit.OIL_ALONE, whole)
                : new Listing(Fit.LISTED, fitting);
    }

    /** Those that name most of it come first, of them those that were read. */
    private static List<Knowledge.UsEntry> best(Set<String> words, List<Knowledge.UsEntry> entries) {
        List<Knowledge.UsEntry> sorted = new ArrayList<>(entries);
        sorted.sort(Comparator.comparing((Knowledge.UsEntry entry) -> -named(words, entry))
                .thenComparing(entry -> !entry.status().mayClear()));
        return sorted;
    }

    private static int named(Set<String> words, Knowledge.UsEntry entry) {
        return entry.names().stream()
                .filter(words::containsAll)
                .mapToInt(Set::size)
                .max()
                .orElse(words.size());
    }

    private static boolean isWhole(Set<String> words, Knowledge.UsEntry entry) {
        return entry.names().stream().filter(words::containsAll).anyMatch(name -> {
            Set<String> rest = new LinkedHashSet<>(words);
            rest.removeAll(name);
            rest.removeIf(NameWords::isPlain);
            return entry.parts().containsAll(rest);
        });
    }

    /** Whether nothing but the part, or what was taken out of it, is missing from a name of the line. */
    private static boolean isPartOf(Set<String> words, Knowledge.UsEntry entry) {
        Set<String> said = new LinkedHashSet<>(words);
        said.removeIf(NameWords::isPlain);
        return !said.isEmpty()
                && said.stream().anyMatch(word -> !NameWords.isPart(word))
                && entry.names().stream()
                        .filter(name -> name.containsAll(said))
                        .anyMatch(name -> name.stream()
                                .allMatch(word -> said.contains(word)
                                        || NameWords.isPart(word)
                                        || NameWords.isPlain(word)
                                        || QUALIFIERS.contains(word)));
    }
}
