package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** One rule of a maker's own house. It only adds to what law and guidance say: it clears nothing and hides nothing. */
public sealed interface HouseRule {
    /** Whose rule it is, as its findings say. */
    String JURISDICTION = "house";

    /** Name of its findings. */
    String NAME = "house-rule";

    /** Returns the line of the file on which it stands. */
    int line();

    /** Returns the rule as it was written, without its reason. */
    String written();

    /** Returns why, as the maker wrote it; empty where nothing is said. */
    String because();

    /** Returns what it finds in a drink. */
    List<Finding> judge(Drink drink);

    /**
     * Something that must not go in: whatever has these words in its name, and whatever is, or can bring, what they mean.
     *
     * @param thing in the plain form of {@link Words}
     */
    record LeaveOut(int line, String written, String because, String thing) implements HouseRule {
        @Override
        public List<Finding> judge(Drink drink) {
            List<Finding> findings = new ArrayList<>();
            List<Plant> meant = HouseRules.plants(thing, drink.knowledge());
            for (PlannedLine line : drink.lines()) {
                if (names(line, meant, drink.knowledge())) {
                    findings.add(stop(line.name(), line.name() + " is what it names."));
                }
            }
            for (Passages.Passage passage : Passages.of(drink.plan())) {
                if (names(passage.goingIn(), meant, drink.knowledge())) {
                    findings.add(stop(passage.where(), "these words name it.").withoutStop());
                }
            }
            findings.addAll(ofAllergens(drink));
            for (Amount amount : drink.amounts()) {
                if (amount.watched().names().contains(thing)) {
                    findings.add(stop(
                            amount.where(),
                            amount.watched().name() + " is in it, or is to be expected: "
                                    + (amount.isKnown()
                                            ? amount.perLitre().told() + " mg/L."
                                            : "how much is not known.")));
                }
            }
            return findings;
        }

        private boolean names(String text, List<Plant> meant, Knowledge knowledge) {
            boolean asOil = Words.holds(thing, HouseRules.OIL);
            return Words.any(text, List.of(thing))
                    || (!asOil
                            && HouseRules.plants(Words.plain(text), knowledge).stream()
                                    .anyMatch(meant::contains));
        }

        /** What it names may be an allergen, or all of a group of them. */
        private List<Finding> ofAllergens(Drink drink) {
            List<Finding> findings = new ArrayList<>();
            List<AllergenName> meant =
                    AllergenWords.meant(thing, drink.knowledge().allergens());
            for (Finding told : meant.isEmpty() ? List.<Finding>of() : Allergens.judge(drink, Serving.USUAL)) {
                boolean named = meant.stream()
                        .anyMatch(row -> told.rule().equals(row.rule())
                                && (AllergenWords.isGroup(thing, row)
                                        || told.verdict().equals(Allergens.EXEMPT)
                                        || told.verdict().endsWith(" " + row.what())));
                if (named) {
                    Finding stop = stop(told.where(), told.verdict() + ".");
                    findings.add(told.verdict().startsWith("contains ") ? stop : stop.withoutStop());
                }
            }
            return findings;
        }

        /** An oil by name means the oil alone; a plant means all that is made of it. */
        private boolean names(PlannedLine line, List<Plant> meant, Knowledge knowledge) {
            boolean oily = line.ingredient().perGram().grams(Substance.OIL) > 0.0;
            if (Words.any(line.words(), List.of(thing)) || (oily && HouseRules.isAllOil(thing))) {
                return true;
            }
            boolean asOil = Words.holds(thing, HouseRules.OIL);
            boolean isOil = line.ingredient().kind() == Kind.ESSENTIAL_OIL;
            return (isOil || !asOil)
                    && HouseRules.plants(Words.plain(line.words()), knowledge).stream()
                            .anyMatch(meant::contains);
        }

        private Finding stop(String where, String message) {
            return new Finding(
                    NAME,
                    Severity.STOP,
                    where,
                    JURISDICTION,
                    "against the house rule",
                    HouseRules.opening(this) + message,
                    "",
                    "Leave it out, or change the rule.",
                    written(),
                    null);
        }
    }

    /**
     * Something that the maker put in force and that cannot be read.
     *
     * @param problem what is wrong with it
     */
    record NotUnderstood(Finding problem) implements HouseRule {
        @Override
        public int line() {
            String digits = problem.where().replaceAll("\\D", "");
            return digits.isEmpty() ? 0 : Integer.parseInt(digits);
        }

        @Override
        public String written() {
            return "";
        }

        @Override
        public String because() {
            return "";
        }

        @Override
        public List<Finding> judge(Drink drink) {
            return List.of(new Finding(
                    NAME,
                    Severity.CAUTION,
                    problem.where(),
                    JURISDICTION,
                    "not understood",
                    problem.message(),
                    "",
                    problem.remedy(),
                    null,
                    null));
        }
    }

    /**
     * The most of something in a drink; of an essence it is not asked.
     *
     * @param of the watched substance, plant or oil that it limits, in the plain form of {@link Words}; {@link HouseRules#OIL}
     *     alone is all essential oil that is poured
     * @param milligrams mg/L or mg/kg
     */
    record AtMost(int line, String written, String because, String of, double milligrams, Limit.Basis basis)
            implements HouseRule {
        @Override
        public List<Finding> judge(Drink drink) {
            if (drink.isEssence()) {
                return List.of();
            }
            @Nullable Amount amount = HouseRules.amount(of, drink);
            if (amount == null) {
                return List.of();
            }
            Finding said = new Limit(NAME, JURISDICTION, "house rule", milligrams, basis, Limit.Edge.UP_TO, null)
                    .judge(amount);
            return List.of(new Finding(
                    NAME,
                    said.severity(),
                    said.where(),
                    JURISDICTION,
                    said.verdict(),
                    HouseRules.opening(this) + said.message(),
                    said.howSure(),
                    said.remedy(),
                    written(),
                    null));
        }
    }
}
