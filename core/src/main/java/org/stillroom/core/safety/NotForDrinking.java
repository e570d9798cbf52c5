package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Oils that are not for drinking; a row from memory stops on the cautious side and says that it is from memory. */
final class NotForDrinking {
    private static final List<String> AS_OIL =
            List.of(" oil", " crystal", " absolute", " absolue", " essence", " isothiocyanate");

    /** More than this part of what is carried is the most of it. */
    private static final double MOST = 0.5;

    private NotForDrinking() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        for (Portion portion : drink.portions()) {
            boolean oil = isOil(portion);
            Set<Knowledge.Blocked> rows = new LinkedHashSet<>();
            if ((oil || isPowder(portion)) && !Portions.isFreed(portion.name())) {
                Words.named(portion.words(), drink.knowledge().blocked(), Knowledge.Blocked::names).stream()
                        .filter(row -> (oil || isSubstance(row, drink.knowledge()) || isItself(row, portion))
                                && !isOfAnother(row, portion))
                        .forEach(rows::add);
            }
            rows.addAll(ofStated(portion, drink.knowledge()));
            rows.forEach(row -> findings.add(finding(portion, row)));
        }
        Passages.of(drink.plan()).forEach(passage -> inWords(passage, drink.knowledge(), findings));
        return findings;
    }

    /**
     * Returns the rows of substances that are stated to be the most of what is carried and are not there by its plant: it is no better
     * than the oil that is blocked for them.
     */
    private static List<Knowledge.Blocked> ofStated(Portion portion, Knowledge knowledge) {
        List<String> most = knowledge.watched().stream()
                .filter(watched -> stated(portion, watched) > MOST && !isOfPlant(portion, watched))
                .flatMap(watched -> watched.names().stream())
                .toList();
        return knowledge.blocked().stream()
                .filter(row -> row.names().stream().anyMatch(most::contains))
                .toList();
    }

    private static boolean isOfPlant(Portion portion, Watched watched) {
        return portion.plants().stream()
                .flatMap(plant -> plant.holds().stream())
                .anyMatch(watched::covers);
    }

    private static double stated(Portion portion, Watched watched) {
        return portion.stated().entrySet().stream()
                .filter(each -> watched.isNumbered(each.getKey()))
                .mapToDouble(Map.Entry::getValue)
                .sum();
    }

    /** Returns whether a row that only asks is of a plant that this is known not to be: clary sage is no sage. What stops, stops by its name. */
    private static boolean isOfAnother(Knowledge.Blocked row, Portion portion) {
        return !row.stops()
                && !portion.plants().isEmpty()
                && portion.plants().stream()
                        .noneMatch(plant -> plant.names().stream().anyMatch(row.names()::contains));
    }

    /** What a step or a note names need not go in, so that it asks and does not stop. */
    private static void inWords(Passages.Passage passage, Knowledge knowledge, List<Finding> findings) {
        for (Knowledge.Blocked row : Words.named(passage.text(), knowledge.blocked(), NotForDrinking::asOil)) {
            if (row.stops()) {
                findings.add(new Finding(
                        "not-for-drinking",
                        Severity.CAUTION,
                        passage.where(),
                        "",
                        "not for drinking",
                        "These words name an oil that is not for drinking and must not touch the drink: "
                                + row.material() + ": " + row.reason() + ".",
                        row.status().mayClear() ? "" : "general knowledge, from memory; on the cautious side",
                        "Leave it out, and what it touched.",
                        null,
                        Sources.blocked(row.status())));
            }
        }
    }

    /** Returns the names under which a sentence speaks of the oil and not of the plant. */
    private static List<String> asOil(Knowledge.Blocked row) {
        List<String> names = new ArrayList<>();
        for (String name : row.names()) {
            names.add(name.endsWith(" oil") ? name : name + " oil");
            names.add(name + " essential oil");
            names.add(" oil of" + name);
        }
        return names;
    }

    private static boolean isOil(Portion portion) {
        return portion.kind() == Kind.ESSENTIAL_OIL
                || portion.form() == Portion.Form.OIL
                || Words.any(portion.words(), AS_OIL);
    }

    private static boolean isPowder(Portion portion) {
        return portion.kind() == Kind.SALT || portion.kind() == Kind.OTHER;
    }

    /** Returns whether what goes in is, by its name, the substance for which an oil is blocked. */
    private static boolean isItself(Knowledge.Blocked row, Portion portion) {
        List<String> substances = row.names().stream()
                .filter(Words.names(String.join(";", WordList.PURE_SUBSTANCES.words()))::contains)
                .toList();
        return Words.any(portion.words(), substances);
    }

    /** Returns whether the row is of a substance that can be had by itself, such as camphor, and not of a plant's oil alone. */
    private static boolean isSubstance(Knowledge.Blocked row, Knowledge knowledge) {
        return knowledge.watched().stream().anyMatch(watched -> row.names().contains(Words.plain(watched.name())));
    }

    /** Returns what it is called and what the table calls it, once where both are the same. */
    private static String named(String name, String material) {
        return name.strip().equalsIgnoreCase(material) ? material : name + " (" + material + ")";
    }

    private static Finding finding(Portion portion, Knowledge.Blocked row) {
        return new Finding(
                "not-for-drinking",
                row.stops() ? Severity.STOP : Severity.CAUTION,
                portion.where(),
                "",
                row.stops() ? "not for drinking" : "check",
                named(portion.name(), row.material()) + ": " + row.reason() + ".",
                row.status().mayClear() ? "" : "general knowledge, from memory; on the cautious side",
                row.stops()
                        ? "Leave it out. Use the herb where it is allowed, or another plant."
                        : "Keep to the limits of law, and to a lot whose analysis you have.",
                null,
                Sources.blocked(row.status()));
    }
}
