package org.stillroom.core.safety;

import static org.stillroom.core.safety.Rule.Holds.OF_ALL;
import static org.stillroom.core.safety.Rule.Holds.OF_DRINKS;

import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** The rules in force, in the order in which they are asked; what passes a limit in law comes before guidance. */
public final class Rules {
    /** Every rule. */
    public static final List<Rule> ALL = List.of(
            new Rule(
                    "not-for-drinking",
                    OF_ALL,
                    "Oils that are not for drinking stop the recipe.",
                    NotForDrinking::judge),
            new Rule("plant", OF_ALL, "Poisonous plants stop the recipe; others ask for care.", PoisonousPlants::judge),
            new Rule("named", OF_ALL, "Names that call for a caution.", NamedCautions::judge),
            new Rule(
                    Kernels.NAME,
                    OF_ALL,
                    "Stones, kernels, seeds and leaves that set hydrogen cyanide free.",
                    Kernels::judge),
            new Rule("allergens", OF_ALL, "Allergens and sulphites, known and not known.", Allergens::judge),
            new Rule("text", OF_ALL, "Materials and methods of which steps and notes speak.", TextCautions::judge),
            new Rule(InWords.NAME, OF_ALL, "What steps and notes name and no line brings.", InWords::judge),
            new Rule(
                    FarAnalysis.NAME,
                    OF_ALL,
                    "Analyses of lots that lie far from every table of such an oil.",
                    FarAnalysis::judge),
            new Rule(
                    AnalysedDrink.NAME,
                    OF_DRINKS,
                    "What a laboratory found in the drink itself.",
                    AnalysedDrink::judge),
            new Rule("eu-not-as-such", OF_ALL, "EU: fifteen substances must not be added as such.", EuLaw::notAsSuch),
            new Rule(
                    "eu-restricted-plant",
                    OF_ALL,
                    "EU: plants that are banned or restricted.",
                    EuLaw::restrictedPlants),
            new Rule("eu-maximum", OF_DRINKS, "EU: the most of a substance in the drink as consumed.", EuMaxima::judge),
            new Rule(
                    "eu-use-limit",
                    OF_DRINKS,
                    "EU: the most of quinine, camphor, glycyrrhizic acid.",
                    EuLaw::useLimits),
            new Rule(
                    "added-limit",
                    OF_DRINKS,
                    "The most of sweeteners, gums and acids that are weighed in.",
                    AddedLimits::judge),
            new Rule("eu-statement", OF_DRINKS, "EU: statements on liquorice, caffeine, quinine.", EuStatements::judge),
            new Rule(
                    EnergyFactors.NAME,
                    OF_DRINKS,
                    "EU: energy of what the figures count as carbohydrate and the law does not.",
                    EnergyFactors::judge),
            new Rule("us-prohibited", OF_ALL, "US: calamus, coumarin, tonka, safrole.", UsLaw::prohibited),
            new Rule("us-limit", OF_DRINKS, "US: thujone free, quinine, glycyrrhizin, prussic acid.", UsLaw::limits),
            new Rule(HouseRule.NAME, OF_ALL, "The rules of the maker's own house.", HouseRules::judge),
            new Rule("us-listed", OF_ALL, "US: whether oils and plants are listed, and how.", UsListing::judge),
            new Rule(
                    "intake",
                    OF_DRINKS,
                    "What a day's servings come to beside intake guidance.",
                    IntakeGuidance::judge),
            new Rule("not-known", OF_ALL, "What is not known is said.", NotKnown::judge),
            new Rule("concentrate", OF_ALL, "A concentrate is not for drinking as it is.", Handling::concentrate),
            new Rule(
                    "who-should-not",
                    OF_DRINKS,
                    "Who is harmed by what is watched in it: epilepsy, medicines.",
                    Handling::watched),
            new Rule("neat-oil", OF_ALL, "Essential oil per serving and per batch.", Handling::neatOil),
            new Rule("growth", OF_DRINKS, "What can grow in it: bottles that burst, botulism.", Growth::judge),
            new Rule(Growth.KEEPING, OF_DRINKS, "Where it keeps, and until when.", Growth::keeping),
            new Rule("flash-point", OF_ALL, "How easily its liquids catch fire.", Handling::flashPoint),
            new Rule("alcohol", OF_DRINKS, "The alcohol itself.", AlcoholItself::judge));

    /** Whose stops mean that nobody is to drink it. */
    private static final Set<String> NOT_TO_DRINK =
            Set.of("not-for-drinking", "plant", "wrong-alcohol", "not-food-grade");

    /** What says that something is not known, or asks. */
    private static final Set<String> ASKS = Set.of(
            NotKnown.NAME, NotKnown.OF_FLAVOUR, InWords.NAME, FarAnalysis.NAME, AnalysedDrink.NAME, "kind-not-said");

    /** The names of all findings of these rules. */
    private static final Set<String> NAMES = names();

    /** What weighs most first: stops, and of one severity what can hurt, law, guidance, what is not known, and what is no rule's. */
    public static final Comparator<Finding> GRAVEST_FIRST =
            Comparator.comparing(Finding::severity).reversed().thenComparing(Rules::weight);

    /** What compares with the guidance of health bodies. */
    private static final Set<String> GUIDANCE = Set.of("intake", AlcoholItself.GUIDANCE);

    private Rules() {}

    /** Returns whether a finding means that nobody is to drink it: a stop that no amount, no law and no wish lifts. */
    public static boolean isNotForDrinking(Finding finding) {
        return finding.severity() == Severity.STOP && NOT_TO_DRINK.contains(finding.rule());
    }

    /** Returns whether a finding is of a poison or an oil that is not for drinking, in what goes in or in the words about it. */
    public static boolean isOfPoison(Finding finding) {
        return (finding.rule().equals("plant") && finding.verdict().equals("poisonous"))
                || (finding.rule().equals("not-for-drinking")
                        && finding.verdict().equals("not for drinking"));
    }

    /**
     * Returns who decides what a finding compares with: a law and whose, guidance, or the maker's own house; empty where it compares with
     * nothing that anybody has laid down.
     */
    public static String whoDecides(Finding finding) {
        if (finding.jurisdiction().equals(HouseRule.JURISDICTION)) {
            return "Rule of your own house";
        }
        if (!finding.jurisdiction().isEmpty()) {
            return "Law, " + finding.jurisdiction();
        }
        return GUIDANCE.contains(finding.rule()) ? "Guidance, no law" : "";
    }

    /** Returns whether a finding tells of an allergen or of sulphites: that it is in there, that it is not known, or that it is exempt. */
    public static boolean isOfAllergens(Finding finding) {
        return finding.rule().startsWith("allergen") || finding.rule().equals(AllergenName.SULPHITES);
    }

    /** Returns whether a finding of this name comes from one of these rules or from the tables of cautions. */
    public static boolean isOne(String name) {
        return NAMES.contains(name);
    }

    private static Set<String> names() {
        Set<String> names = new HashSet<>();
        ALL.forEach(rule -> names.add(rule.name()));
        Knowledge.SHIPPED.cautions().forEach(caution -> names.add(caution.rule()));
        Knowledge.SHIPPED.textCautions().forEach(caution -> names.add(caution.rule()));
        Knowledge.SHIPPED.allergens().forEach(each -> names.add(each.rule()));
        return Set.copyOf(names);
    }

    /** Returns whether a finding is of what poisons, burns, bursts or spoils, and not of what a law, guidance or a table says of it. */
    public static boolean canHurt(Finding finding) {
        return weight(finding) == Weight.HURTS;
    }

    /** Returns whether a finding is of a figure that a label says, so that it is of no matter with the vessel in hand. */
    public static boolean isOfFigures(Finding finding) {
        return finding.rule().equals(EnergyFactors.NAME);
    }

    private enum Weight {
        HURTS,
        LAW,
        GUIDANCE,
        ASKS,
        OTHER
    }

    private static Weight weight(Finding finding) {
        if (!isOne(finding.rule()) || isOfFigures(finding)) {
            return Weight.OTHER;
        } else if (ASKS.contains(finding.rule())) {
            return Weight.ASKS;
        } else if (GUIDANCE.contains(finding.rule())) {
            return Weight.GUIDANCE;
        }
        return finding.jurisdiction().isEmpty() && !isOfAllergens(finding) ? Weight.HURTS : Weight.LAW;
    }
}
