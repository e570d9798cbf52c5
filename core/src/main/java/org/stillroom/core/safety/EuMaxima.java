package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/**
 * Annex III part B of Regulation (EC) 1334/2008: maxima in the drink as consumed, by category.
 *
 * <p>No figure of another category is borrowed: estragole, methyleugenol, safrole and coumarin have no row for alcoholic drinks, and
 * that is what is said.
 */
final class EuMaxima {
    private EuMaxima() {}

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        if (serving.places().contains(Place.EU)) {
            for (Amount amount : drink.amounts()) {
                if (!amount.watched().euName().isEmpty() && !Kernels.isToldOnce(drink, amount)) {
                    findings.addAll(judge(drink, amount));
                }
            }
        }
        return findings;
    }

    private static List<Finding> judge(Drink drink, Amount amount) {
        List<Finding> findings = new ArrayList<>();
        for (Knowledge.EuMaximum row : drink.knowledge().maxima()) {
            boolean its =
                    row.isMaximum() && row.substance().equals(amount.watched().euName());
            if (its && applies(row.category(), drink)) {
                findings.add(new Limit(
                                "eu-maximum",
                                Place.EU.label(),
                                row.category(),
                                row.milligramsPerKilogram(),
                                Limit.Basis.PER_KILOGRAM,
                                Limit.Edge.UP_TO,
                                Source.EU_1334_2008)
                        .judge(amount));
            }
        }
        return findings.isEmpty() ? List.of(noRow(drink, amount)) : findings;
    }

    /** Returns whether the table that ships has a maximum where the edition in force has none. */
    private static boolean hadOne(Drink drink, Amount amount) {
        return Knowledge.SHIPPED.maxima().stream()
                .anyMatch(row -> row.isMaximum()
                        && row.substance().equals(amount.watched().euName())
                        && applies(row.category(), drink));
    }

    private static Finding noRow(Drink drink, Amount amount) {
        boolean takenOut = hadOne(drink, amount);
        String kind = drink.isAlcoholic() ? "alcoholic drinks of this kind" : "drinks of this kind";
        String found = amount.from().isEmpty()
                ? "how much there is, is not known"
                : amount.perKilogram().told() + " mg/kg come of it"
                        + (amount.isKnown() ? "" : ", and more from what is not known");
        return new Finding(
                "eu-maximum",
                takenOut ? Severity.CAUTION : Severity.NOTE,
                amount.where(),
                Place.EU.label(),
                takenOut ? "limit taken out" : "no limit known",
                "No EU maximum of " + amount.watched().name() + " is known for " + kind + "; " + found
                        + ". The figures for other foods do not count here.",
                Limit.howSure(amount),
                (takenOut
                                ? "The table that ships has one, the edition in force does not: ask whether it is whole. "
                                : "")
                        + "Look at the intake guidance; as little as can be is right.",
                null,
                Source.EU_1334_2008);
    }

    static boolean applies(String category, Drink drink) {
        boolean alcoholic = drink.isAlcoholic();
        return switch (category) {
            case "Alcoholic beverages" -> alcoholic;
            case "Non-alcoholic beverages" -> !alcoholic;
            case "Mint/peppermint containing alcoholic beverages" -> alcoholic && drink.hasMint();
            case "Mint/peppermint containing non-alcoholic beverages" -> !alcoholic && drink.hasMint();
            case "Bitter-tasting spirit drinks or bitter" -> drink.isSpiritDrink() && drink.isBitter();
            case "Liqueurs with a bitter taste" -> drink.isLiqueur() && drink.isBitter();
            case "Other alcoholic beverages" -> alcoholic && !(drink.isSpiritDrink() && drink.isBitter());
            case "Alcoholic beverages except those produced from Artemisia species" ->
                alcoholic && !drink.hasArtemisia();
            case "Alcoholic beverages produced from Artemisia species" -> alcoholic && drink.hasArtemisia();
            case "Non-alcoholic beverages produced from Artemisia species" -> !alcoholic && drink.hasArtemisia();
            default -> false; // other foods
        };
    }
}
