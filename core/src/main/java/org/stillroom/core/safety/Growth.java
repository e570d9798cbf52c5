package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.ingredient.FattyOils;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** What can grow in a drink and harm by it: bottles that burst, botulism; and where it keeps until when. */
final class Growth {
    /** Name of the findings that say what can grow. */
    static final String NAME = "growth";

    /** Name of the finding that says where it keeps. */
    static final String KEEPING = "keeping";

    /** Below this water activity botulism does not grow. From memory: 0.94 for the kinds that withstand heat. */
    private static final double BOTULISM = 0.94;

    private static final String SURE =
            "water activity to about 0.02; bounds from memory and times by common practice, no"
                    + " source, on the cautious side";

    private Growth() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        Keeping keeping = Keeping.of(drink);
        if (!drink.condition().isPasteurised()) {
            ferments(drink, keeping, findings);
        }
        if (drink.condition().isPasteurised() && drink.strength() >= Keeping.HELD) {
            findings.add(needlessHeat(drink));
        }
        if (isPlantUnderOil(drink)) {
            findings.add(underOil());
        } else if (canHoldBotulism(drink, keeping)) {
            findings.add(botulism(drink, keeping));
        }
        if (drink.plan().liquid().grams(Substance.ETHANOL) > 0.0 && !drink.isAlcoholic()) {
            findings.add(new Finding(
                    NAME,
                    Severity.NOTE,
                    "",
                    "",
                    "not free of alcohol",
                    at(drink) + "it holds traces of alcohol, also where it is called without.",
                    "",
                    "Say so to whoever must have none.",
                    null,
                    Source.HANDLING_CAUTIONS));
        }
        return findings.stream()
                .map(finding -> finding.severity() == Severity.NOTE ? finding : atTheFilling(finding, drink))
                .toList();
    }

    /** Returns what is said where it is filled or put away, for there it matters; as it is where no step of the maker's own says so. */
    private static Finding atTheFilling(Finding finding, Drink drink) {
        List<String> steps = Passages.ownSteps(drink.plan()).stream()
                .filter(step -> WordList.FILLS_OR_KEEPS.isIn(step.text()))
                .map(Passages.Passage::where)
                .toList();
        if (steps.isEmpty()) {
            return finding;
        }
        String last = steps.get(steps.size() - 1);
        return finding.at(finding.where().isEmpty() ? last : finding.where() + "; " + last);
    }

    /** Says where it keeps until when, with the figures that this follows from. */
    static List<Finding> keeping(Drink drink, Serving serving) {
        Keeping keeping = Keeping.of(drink);
        boolean weak = keeping.isCold() && keeping.days() <= 14;
        Finding told = new Finding(
                KEEPING,
                weak ? Severity.CAUTION : Severity.NOTE,
                "",
                "",
                keeping.where().label(),
                at(drink) + "water activity is " + QuantityWords.fixed(keeping.waterActivity(), 2) + ", "
                        + keeping.sourness().told() + ". " + keeping.reason(),
                SURE,
                remedy(drink, keeping),
                keeping.until().isEmpty() ? null : "best within " + keeping.until() + " of filling",
                keeping.source());
        return List.of(keeping.isCold() ? atTheFilling(told, drink) : told);
    }

    /** Spirit is not heated in closed bottles for nothing. */
    private static Finding needlessHeat(Drink drink) {
        return new Finding(
                NAME,
                Severity.CAUTION,
                "",
                "",
                "not to be pasteurised",
                at(drink)
                        + "its alcohol alone holds yeast, mould and bacteria. Heated, it gives off vapour that lights, and"
                        + " a closed bottle builds pressure and can burst.",
                "from memory",
                "Leave the heating out.",
                QuantityWords.plain(Keeping.HELD) + " % vol",
                Source.HANDLING_CAUTIONS);
    }

    private static String remedy(Drink drink, Keeping keeping) {
        String measure = keeping.sourness().ph() == null && drink.strength() < Keeping.HELD
                ? " Measure its pH: at 4.6 or below it keeps longer."
                : "";
        String again = drink.condition().ph() != null && drink.strength() < Keeping.HELD
                ? " Measure its pH again when anything of it changes."
                : "";
        return switch (keeping.where()) {
            case SHELF -> "";
            case COLD_ONCE_OPEN -> "Keep it closed in the cool, in the fridge once open." + again;
            case FRIDGE ->
                "Keep it in the fridge and use it within " + keeping.until() + "."
                        + (Keeping.hasMilkOrEgg(drink)
                                ? " Use pasteurised milk and egg."
                                : keeping.days() > 14 || isPlantUnderOil(drink) ? "" : measure)
                        + again;
        };
    }

    private static void ferments(Drink drink, Keeping keeping, List<Finding> findings) {
        boolean held = keeping.delle() >= Yeast.DELLE_HOLDS;
        if (Keeping.canFerment(drink)) {
            findings.add(held ? likelyHeld(drink, keeping) : ferments(drink, keeping));
        } else if (!held && new Yeast(drink.strength(), Keeping.sugar(drink)).findsFood()) {
            List<String> unknown = new ArrayList<>();
            mayBringYeast(drink.plan(), unknown);
            if (!unknown.isEmpty()) {
                findings.add(mayFerment(drink, keeping, unknown));
            }
        }
    }

    /** Adds the lines of which nobody says whether they bring yeast; what steeped in spirit as strong as stops it brings none alive. */
    private static void mayBringYeast(Plan plan, List<String> names) {
        for (PlannedLine line : plan.lines()) {
            boolean made = line.ingredient().ingredient().from() != null;
            if (!made
                    && line.grams() > 0.0
                    && Handling.strength(line) < Yeast.STOPS
                    && Brought.yeast(line) == Brought.YeastIn.NOT_KNOWN
                    && !names.contains(line.name())) {
                names.add(line.name());
            }
        }
        plan.stages().stream()
                .map(Plan.StagePlan::plan)
                .filter(stage ->
                        stage.liquid().total() > 0.0 && Yeast.in(stage.liquid()).strength() < Yeast.STOPS)
                .forEach(stage -> mayBringYeast(stage, names));
    }

    private static Finding mayFerment(Drink drink, Keeping keeping, List<String> unknown) {
        return new Finding(
                NAME,
                Severity.CAUTION,
                String.join("; ", unknown),
                "",
                "not known if it can ferment",
                at(drink) + "and " + QuantityWords.fixed(Keeping.sugar(drink), 0)
                        + " g/L of sugar yeast can work, and a closed bottle can burst: whether this brings any is not known. "
                        + QuantityWords.fixed(keeping.delle(), 0)
                        + " units of Delle, from 78 on yeast is likely held, from memory.",
                "below about 17 to 18 % vol by common practice, no source; the units from memory",
                "Ask whether it was pasteurised. " + againstYeast(drink, keeping),
                "18 % vol",
                Source.DELLE);
    }

    private static Finding ferments(Drink drink, Keeping keeping) {
        return new Finding(
                NAME,
                Severity.CAUTION,
                "",
                "",
                "can ferment again",
                at(drink) + "and " + QuantityWords.fixed(Keeping.sugar(drink), 0)
                        + " g/L of sugar yeast that fresh plants, fruit, wine or honey bring can work again, and a closed bottle can burst: "
                        + QuantityWords.fixed(keeping.delle(), 0)
                        + " units of Delle, from 78 on yeast is likely held, from memory.",
                "below about 17 to 18 % vol by common practice, no source; the units from memory",
                againstYeast(drink, keeping),
                "18 % vol",
                Source.DELLE);
    }

    /** The units of Delle are from memory, and memory clears nothing. */
    private static Finding likelyHeld(Drink drink, Keeping keeping) {
        return new Finding(
                NAME,
                Severity.CAUTION,
                "",
                "",
                "yeast likely held",
                at(drink) + "and " + QuantityWords.fixed(Keeping.sugar(drink), 0)
                        + " g/L of sugar yeast that fresh plants, fruit, wine or honey bring is likely held, "
                        + QuantityWords.fixed(keeping.delle(), 0)
                        + " units of Delle, from 78 on; if it is not, a closed bottle can burst.",
                "from memory, so that it clears nothing",
                againstYeast(drink, keeping),
                "18 % vol",
                Source.DELLE);
    }

    /** Spores outlive the heat that yeast does not: where nothing holds them, closed bottles are not heated. */
    private static String againstYeast(Drink drink, Keeping keeping) {
        if (canHoldBotulism(drink, keeping)) {
            return "Keep it in the fridge; bring it below pH 4.6 before it is pasteurised in closed bottles.";
        }
        return drink.isAlcoholic()
                ? "Keep it in the fridge, pasteurise it in closed bottles, or make it "
                        + QuantityWords.plain(Yeast.STOPS) + " % vol or stronger."
                : "Keep it in the fridge, or pasteurise it in closed bottles.";
    }

    /** A plant under fatty oil has neither air nor acid nor alcohol, whatever the drink is that it garnishes. */
    static boolean isPlantUnderOil(Drink drink) {
        boolean fatty = drink.lines().stream().anyMatch(line -> Words.any(line.name(), FattyOils.NAMES));
        boolean fresh =
                drink.lines().stream().anyMatch(line -> line.ingredient().kind() == Kind.FRESH_PLANT);
        return fatty && fresh && drink.strength() < Keeping.SPORES_HELD;
    }

    private static boolean canHoldBotulism(Drink drink, Keeping keeping) {
        return drink.strength() < Keeping.SPORES_HELD
                && keeping.waterActivity() > BOTULISM
                && !keeping.sourness().isAtMost(Keeping.ACID);
    }

    private static Finding botulism(Drink drink, Keeping keeping) {
        boolean known = keeping.sourness().ph() != null;
        return new Finding(
                NAME,
                Severity.CAUTION,
                "",
                "",
                "botulism",
                at(drink) + "with a water activity of " + QuantityWords.fixed(keeping.waterActivity(), 2)
                        + " and " + (known ? keeping.sourness().told() : "a pH that is not known")
                        + " spores of botulism are not held in a closed bottle; boiling does not kill them, and nothing is"
                        + " seen or smelt of it.",
                SURE,
                "Bring it below pH 4.6 and measure that, or to 10 % vol and more; else keep it below 4 °C.",
                "pH 4.6 where water activity is above 0.94",
                Source.GROWTH_LIMITS);
    }

    private static Finding underOil() {
        return new Finding(
                NAME,
                Severity.CAUTION,
                "",
                "",
                "botulism",
                "A fresh plant or garlic under oil has no air and no acid: spores of botulism can grow there, and nothing is"
                        + " seen or smelt of it.",
                "from memory",
                "Use it within four days from the fridge, freeze it, or take the plant dried.",
                null,
                Source.HANDLING_CAUTIONS);
    }

    private static String at(Drink drink) {
        return "At " + QuantityWords.fixed(drink.strength(), 1) + " % vol ";
    }
}
