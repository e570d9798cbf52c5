package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/**
 * Whether the US lists of 21 CFR 172.510, 182 and 184 name an oil or plant, by common name, synonym, part or botanical name.
 *
 * <p>A line that we have from memory never clears: it is told as such. What is on no list is told as not listed.
 */
final class UsListing {
    /** Outweighs any words: the plant is the same by its botanical name. */
    private static final int SAME_PLANT = 1000;

    private UsListing() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        if (serving.places().contains(Place.US)) {
            for (Portion portion : drink.portions()) {
                findings.add(judge(drink, portion));
            }
        }
        return findings;
    }

    private static Finding judge(Drink drink, Portion portion) {
        List<Knowledge.UsEntry> entries =
                find(portion.words(), portion.plants(), drink.knowledge().usLists());
        if (entries.isEmpty()) {
            return finding(
                    portion,
                    Severity.NOTE,
                    "not listed",
                    portion.name() + " was found on none of the US lists of oils, spices and natural flavourings.",
                    "Ask the supplier for its food-flavouring status.",
                    Source.CFR_21_LISTS);
        }
        Knowledge.UsEntry entry = entries.get(0);
        boolean read = entry.status().mayClear();
        String says = portion.name() + ": listed as " + entry.name() + " (" + entry.clause() + ")"
                + (entry.limitation().isEmpty() ? "" : ", " + entry.limitation()) + ".";
        if (entry.has("alcoholic_only") && !drink.isAlcoholic()) {
            return finding(
                    portion,
                    Severity.CAUTION,
                    "not in this drink",
                    says,
                    "Leave it out.",
                    Sources.usLists(entry.status()));
        }
        return finding(
                portion,
                Severity.NOTE,
                read ? "listed" : "listed, from memory",
                says + (read ? "" : " Our copy of that line is from memory."),
                read ? "" : "Compare with the text of the clause.",
                Sources.usLists(entry.status()));
    }

    private static Finding finding(
            Portion portion, Severity severity, String verdict, String message, String remedy, Source source) {
        return new Finding(
                "us-listed", severity, portion.where(), Place.US.label(), verdict, message, "", remedy, null, source);
    }

    /** Returns the lines of the lists that a name or its plants mean, those that fit the name best, lines that were read first. */
    static List<Knowledge.UsEntry> find(String name, List<Plant> plants, List<Knowledge.UsEntry> entries) {
        List<Knowledge.UsEntry> best = new ArrayList<>();
        int most = 0;
        String text = Words.plain(name);
        for (Knowledge.UsEntry entry : entries) {
            int fit = fit(text, plants, entry);
            if (fit > 0 && fit >= most) {
                if (fit > most) {
                    best.clear();
                }
                most = fit;
                best.add(entry);
            }
        }
        best.sort(Comparator.comparing(
                (Knowledge.UsEntry entry) -> !entry.status().mayClear()));
        return best;
    }

    /** How many letters of the entry's words the name holds, and more where the plant is the same. */
    private static int fit(String text, List<Plant> plants, Knowledge.UsEntry entry) {
        int fit = 0;
        for (String phrase : entry.phrases()) {
            fit += Words.holds(text, phrase) ? letters(phrase) : 0;
        }
        boolean same = plants.stream()
                .flatMap(plant -> plant.botanical().stream())
                .anyMatch(botanical -> names(entry.botanical(), botanical));
        return same ? SAME_PLANT + fit : fit;
    }

    private static int letters(String phrase) {
        return phrase.replace(" ", "").length();
    }

    private static boolean names(String listed, String botanical) {
        int blank = botanical.indexOf(' ');
        String genus = blank < 0 ? botanical : botanical.substring(0, blank);
        return listed.contains(botanical) || listed.contains(genus + " spp.");
    }
}
