package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.TableSet;

/**
 * A drink looked at by every rule.
 *
 * @param drink what was looked at
 * @param serving who drinks how much, and where
 * @param findings what was found, stops first
 */
public record Safety(Drink drink, Serving serving, List<Finding> findings) {
    /** What every answer says once. */
    public static final String STANDING =
            "Information, not legal or medical advice; local law and licensed practice decide.";

    /** Rules whose notes tell who should not drink it, or what its label has to say. */
    private static final Set<String> OF_DRINKERS =
            Set.of("honey", "medicines", "light-on-skin", "eu-statement", Growth.NAME, "who-should-not");

    public Safety {
        findings = List.copyOf(findings);
    }

    /**
     * Looks at what a plan makes.
     *
     * @throws IllegalArgumentException when it makes nothing
     */
    public static Safety of(Plan plan, Serving serving, Grounds grounds) {
        Drink drink = Drink.of(plan, grounds);
        List<Finding> findings = new ArrayList<>();
        for (Rule rule : Rules.ALL) {
            if (rule.holds() == Rule.Holds.OF_ALL || !drink.isEssence()) {
                findings.addAll(rule.check().of(drink, serving));
            }
        }
        List<Finding> each = new ArrayList<>(findings.stream()
                .distinct()
                .map(finding -> withEdition(finding, drink.knowledge().tables()))
                .toList());
        each.sort(Rules.GRAVEST_FIRST);
        return new Safety(drink, serving, each);
    }

    /** Returns a finding with the editions that its rule reads in place of shipped tables, so that no figure of a file passes for the law's. */
    private static Finding withEdition(Finding finding, TableSet tables) {
        List<String> told = tables.editions().stream()
                .filter(edition -> RuleTable.readBy(finding.rule()).contains(edition.table()))
                .map(TableSet.Edition::told)
                .toList();
        return told.isEmpty()
                ? finding
                : finding.knowing("by an edition that was taken in: " + String.join("; ", told));
    }

    /** Returns what is said of an essence that holds so much essential oil, g/L: it is no drink, and how it is kept. */
    public static Finding ofEssence(double gramsPerLitre) {
        return Handling.essence(gramsPerLitre);
    }

    /** Returns where it keeps until when; of an essence, which is no drink, null. */
    public @Nullable Keeping keeping() {
        return drink.isEssence() ? null : Keeping.of(drink);
    }

    /** Returns what there is to know of it where it stands, stops first: what a plan tells, what can grow in it and where it keeps until when. */
    public List<Finding> ofStock() {
        return told(Set.of(Growth.NAME, Growth.KEEPING)).stream()
                .sorted(Comparator.comparing(Finding::severity)
                        .reversed()
                        .thenComparing(finding -> !isOfGrowth(finding)))
                .toList();
    }

    /** Returns what lawful names ask for beside strength and sugar, by their words. */
    public Map<String, Held> held() {
        return Map.of(
                "anethole", Held.of(drink, "trans-anethole"),
                "glycyrrhizic acid", Held.of(drink, "glycyrrhizic acid"),
                "egg yolk", Held.yolk(drink),
                "sloe", Held.sloes(drink));
    }

    /** Returns everything that went into it, stages and all. */
    public List<WentIn> wentIn() {
        return WentIn.of(drink);
    }

    /** Returns whether a rule forbids it. */
    public boolean isStopped() {
        return findings.stream().anyMatch(finding -> finding.severity() == Severity.STOP);
    }

    /** Returns whether of something in it no table tells what watched substances it holds. */
    public boolean tellsUnknown() {
        return findings.stream()
                .anyMatch(finding -> finding.rule().equals(NotKnown.NAME)
                        || finding.rule().equals(NotKnown.OF_FLAVOUR)
                        || finding.rule().equals(InWords.NAME));
    }

    /** Returns whether a finding has to be known where it is filled: what stops it, what can grow in it and where it keeps until when. */
    public static boolean isOfFilling(Finding finding) {
        return finding.severity() == Severity.STOP || isOfGrowth(finding);
    }

    private static boolean isOfGrowth(Finding finding) {
        return finding.rule().equals(Growth.NAME) || finding.rule().equals(Growth.KEEPING);
    }

    private static boolean asksForCold(Finding finding) {
        return finding.rule().equals(Growth.KEEPING) && !finding.verdict().equals(Keeping.Where.SHELF.label());
    }

    /**
     * Returns what a plan tells: stops, cautions, allergens, what is not known and what has to stand in the cold; nothing where all is known and below the limits.
     *
     * <p>How many a day somebody drinks is not the plan's to say, so that alcohol itself is left to the question that names it.
     */
    public static List<Finding> ofPlan(Plan plan, Grounds grounds) {
        return told(plan, grounds, Set.of());
    }

    /** Returns what goes along with a recipe that strangers will drink of: what a plan tells, and who should not drink it, or not in the sun. */
    public static List<Finding> ofPublished(Plan plan, Grounds grounds) {
        return told(plan, grounds, OF_DRINKERS);
    }

    /** Returns whether a note tells who should not drink it, or what its label has to say. */
    public static boolean isOfDrinkers(Finding finding) {
        return OF_DRINKERS.contains(finding.rule());
    }

    /** @param notes rules whose notes are told besides */
    private static List<Finding> told(Plan plan, Grounds grounds, Set<String> notes) {
        if (plan.liquid().total() == 0.0) {
            return List.of();
        }
        return of(plan, grounds.serving(), grounds).told(notes);
    }

    private List<Finding> told(Set<String> notes) {
        return findings.stream()
                .filter(finding -> finding.severity() != Severity.NOTE
                        || notes.contains(finding.rule())
                        || finding.rule().equals(NotKnown.NAME)
                        || (Rules.isOfAllergens(finding) && !finding.verdict().equals(Allergens.EXEMPT))
                        || asksForCold(finding))
                .filter(finding -> !finding.rule().equals(AlcoholItself.GUIDANCE))
                .toList();
    }
}
