package org.stillroom.core.safety;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Rounded;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

/** What EU labels say of liquorice, caffeine and quinine, and of what is bought: that its own label is to be asked. */
final class EuStatements {
    private static final String LIQUORICE = "glycyrrhizic acid";
    private static final String STIMULANT = "caffeine";

    /** As long as what a label leaves blank for batch and day. */
    private static final String BLANK = "________";

    private static final String BITTER = "quinine";

    /** Glycyrrhizic acid from which liquorice is to be named, and is to be warned of, mg/L. Source: Regulation (EU) 1169/2011, Annex III 3. */
    private static final Threshold LIQUORICE_NAMED = Threshold.from(10.0);

    private static final Threshold LIQUORICE_WARNED = Threshold.from(300.0);
    private static final Threshold LIQUORICE_WARNED_WITHOUT_ALCOHOL = Threshold.from(50.0);
    /** Caffeine in excess of which it is to be said, mg/L. Source: the same, Annex III 4.1. */
    private static final Threshold CAFFEINE = new Threshold(150.0, false);

    private static final Threshold ANY = Threshold.from(0.0);

    private static final String ASK = "not known: ask";

    private EuStatements() {}

    /**
     * From where on something is to be said.
     *
     * @param value mg/L
     * @param included whether at the figure itself too
     */
    private record Threshold(double value, boolean included) {
        static Threshold from(double value) {
            return new Threshold(value, true);
        }

        boolean isReached(double found) {
            double told = Rounded.toNinth(found);
            return included ? told >= value : told > value;
        }

        String told() {
            return value > 0.0 ? (included ? "from " : "above ") + Range.figures(value) + " mg/L" : "at any amount";
        }
    }

    static List<Finding> judge(Drink drink, Serving serving) {
        List<Finding> findings = new ArrayList<>();
        if (!serving.places().contains(Place.EU)) {
            return findings;
        }
        Threshold warned = drink.isAlcoholic() ? LIQUORICE_WARNED : LIQUORICE_WARNED_WITHOUT_ALCOHOL;
        @Nullable Amount liquorice = drink.amount(LIQUORICE);
        // The warning names liquorice, so that the shorter statement would say it twice.
        if (isFrom(liquorice, warned)) {
            statement(
                    findings,
                    liquorice,
                    warned,
                    "Contains liquorice – people suffering from hypertension should avoid excessive consumption");
        } else {
            statement(findings, liquorice, LIQUORICE_NAMED, "Contains liquorice");
        }
        @Nullable Amount caffeine = drink.amount(STIMULANT);
        statement(
                findings,
                caffeine,
                CAFFEINE,
                "High caffeine content. Not recommended for children or pregnant or breast-feeding women ("
                        + perHundred(caffeine) + " mg per 100 mL)");
        statement(findings, drink.amount(BITTER), ANY, "flavouring: quinine");
        bought(drink, findings);
        return findings;
    }

    /** Returns the most there is in 100 mL; a blank to fill in where nobody knows. */
    private static String perHundred(@Nullable Amount amount) {
        return amount == null || !amount.isKnown()
                ? BLANK
                : QuantityWords.figures(amount.perLitre().most() / 10.0);
    }

    private static boolean isFrom(@Nullable Amount amount, Threshold from) {
        return amount != null
                && !(amount.isKnown() && !from.isReached(amount.perLitre().most()));
    }

    private static void statement(List<Finding> findings, @Nullable Amount amount, Threshold from, String words) {
        if (amount == null || !isFrom(amount, from)) {
            return;
        }
        boolean sure =
                from.isReached(amount.perLitre().least()) && !amount.from().isEmpty();
        String since = from.told();
        findings.add(new Finding(
                "eu-statement",
                Severity.NOTE,
                amount.where(),
                Place.EU.label(),
                sure ? "to be said" : "to be said unless shown otherwise",
                amount.watched().name() + ": "
                        + (amount.isKnown() ? amount.perLitre().told() + " mg/L" : "how much is not known")
                        + "; the label says it " + since + "."
                        + (words.contains(BLANK) ? " Its figure is left blank: fill it in by an analysis." : ""),
                Limit.howSure(amount),
                "Write on the label: " + words + ".",
                since,
                Source.EU_1169_LABEL));
    }

    /** What is made elsewhere may hold what its name does not tell; its own label does, or its maker. */
    private static void bought(Drink drink, List<Finding> findings) {
        Set<String> named = new LinkedHashSet<>();
        for (Knowledge.BoughtDrink row : drink.knowledge().boughtDrinks()) {
            List<String> names = drink.lines().stream()
                    .filter(EuStatements::isBought)
                    .filter(line -> TextWords.says(line.words(), row.names()) && !isTold(drink, row.watched(), line))
                    .map(PlannedLine::name)
                    .distinct()
                    .toList();
            named.addAll(names);
            if (!names.isEmpty()) {
                findings.add(ask(
                        names,
                        "Drinks and flavourings of such a name can hold " + row.of()
                                + "; whether there is any in it, and" + " how much, is not known.",
                        "Look at its label or ask its maker, and say " + row.of() + " on yours where it holds any.",
                        "general knowledge, from memory"));
            }
        }
        List<String> open = drink.lines().stream()
                .filter(line -> isMade(line.ingredient().kind()) && !Sourness.isPlainSyrup(line))
                .filter(line -> isBought(line) && Presence.isOpen(drink, line))
                .map(PlannedLine::name)
                .filter(name -> !named.contains(name))
                .distinct()
                .collect(Collectors.toCollection(ArrayList::new));
        open.removeAll(substances(drink));
        if (!open.isEmpty()) {
            findings.add(ask(
                    open,
                    "Whether there is liquorice, caffeine or quinine in it is not known.",
                    "Look at its label, and say on yours what it says of liquorice, caffeine and quinine.",
                    ""));
        }
    }

    /** Returns the names of what is a watched substance by itself, in which nothing else hides. */
    private static List<String> substances(Drink drink) {
        return drink.portions().stream()
                .filter(portion -> portion.substance() != null)
                .map(Portion::name)
                .toList();
    }

    private static Finding ask(List<String> names, String message, String remedy, String howSure) {
        return new Finding(
                "eu-statement",
                Severity.NOTE,
                String.join("; ", names),
                "",
                ASK,
                message,
                howSure,
                remedy,
                null,
                Source.EU_1169_LABEL);
    }

    private static boolean isBought(PlannedLine line) {
        return line.ingredient().ingredient().from() == null;
    }

    /** Kinds in which makers put together what they like; a plant, an oil or a fruit juice is what it is called. */
    private static boolean isMade(Kind kind) {
        return switch (kind) {
            case LIQUEUR, ESSENCE, TINCTURE, MACERATE, SPIRIT, WINE, SYRUP, OTHER -> true;
            case ESSENTIAL_OIL, DISTILLATE, HYDROSOL, SUGAR, HONEY, JUICE -> false;
            case FRESH_PLANT, DRIED_PLANT, ACID, SALT, GLYCEROL, DAIRY, EGG, WATER -> false;
        };
    }

    private static boolean isTold(Drink drink, String watched, PlannedLine line) {
        @Nullable Amount amount = drink.amount(watched);
        return amount != null
                && drink.portions().stream()
                        .filter(portion -> portion.name().equals(line.name()))
                        .anyMatch(portion -> amount.from().contains(portion.where())
                                || amount.notKnownFrom().contains(portion.where()));
    }
}
