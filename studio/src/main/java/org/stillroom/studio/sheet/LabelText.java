package org.stillroom.studio.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.label.IngredientNames;
import org.stillroom.core.label.LegalClass;
import org.stillroom.core.label.LegalClasses;
import org.stillroom.core.label.Market;
import org.stillroom.core.label.StatedStrength;
import org.stillroom.core.label.Statements;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.safety.Counted;
import org.stillroom.core.safety.Knowledge;
import org.stillroom.core.safety.Rules;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.TellLabel;

/** What a label says, in its language, each text with what it is. */
final class LabelText {
    /** What a label says goes by this name in the phrasebook. */
    static final String LABEL = "label";

    /** Whose standard drinks are counted: where it is read, and, in the EU, by the language that it is in. */
    private static final String US_DRINKS = "USA";

    private static final String GERMAN_DRINKS = "Germany";
    private static final String OTHER_DRINKS = "Ireland";

    private static final String LIQUEUR = "Liqueur";

    private final TellLabel.Found found;
    private final LabelSheet.Look look;

    LabelText(TellLabel.Found found, LabelSheet.Look look) {
        this.found = found;
        this.look = look;
    }

    /**
     * The name that law gives it: the one that was asked for, else the plainest that no figure rules out.
     *
     * @throws Impossible when its figures miss the name that was asked for
     */
    String lawfulName() {
        @Nullable
        LegalClass called = found.called().stream()
                .filter(each -> each.market() == found.market())
                .min(Comparator.comparing(LegalClass::isMissed))
                .orElse(null);
        if (called == null) {
            return plainName();
        }
        if (!called.ruledOut().isEmpty()) {
            String why = called.ruledOut().get(0).why();
            throw new Impossible(
                    "called",
                    called.name() + " is missed: " + Character.toLowerCase(why.charAt(0)) + why.substring(1),
                    "Ask for another name, or see what gets there.");
        }
        if (called.isMissed()) {
            throw new Impossible(
                    "called",
                    "its figures miss what " + called.name() + " asks.",
                    "Ask for another name, or see what gets there.");
        }
        return printed(called);
    }

    private String printed(LegalClass name) {
        if (name.name().startsWith(LegalClasses.EXCEPTIONS)) {
            return said(LIQUEUR);
        }
        return said(name.name())
                .replaceAll(" / .*", "")
                .replaceAll(" \\((general|allgemein)\\)", "")
                .replaceAll(" \\(.*\\)", " ________");
    }

    /** Where it is no plain liqueur, what its title rightly calls it stands before what is true of every spirit. */
    private String plainName() {
        if (allows(found.market() == Market.US ? LegalClasses.CORDIAL : LegalClasses.LIQUEUR)) {
            return said(LIQUEUR);
        }
        return found.titled()
                .map(this::printed)
                .orElseGet(() -> said(allows(LegalClasses.SPIRIT_DRINK) ? "Spirit drink" : "Drink with alcohol"));
    }

    private boolean allows(String name) {
        return found.classes().stream().anyMatch(each -> each.name().equals(name) && !each.isMissed());
    }

    String strength() {
        return said(QuantityWords.fixed(found.strength().percent(), 1)
                + (found.market() == Market.US ? " % alc/vol · " : " % vol · ")
                + QuantityWords.plain(found.bottleMillilitres()) + " mL");
    }

    /** Returns the small print in the order in which it stands. */
    List<String> small(String marking) {
        List<String> small = new ArrayList<>();
        if (!found.ingredients().isEmpty()) {
            small.add(said("Ingredients:") + " "
                    + found.ingredients().stream()
                            .map(name -> IngredientNames.in(look.saying().tag(), name))
                            .collect(Collectors.joining(", "))
                    + ".");
        }
        small.addAll(allergens());
        small.addAll(statements());
        small.add(said(energy()) + " · " + said(sugar()));
        found.drinks().stream()
                .filter(drink -> drink.country().equals(country()))
                .findFirst()
                .ifPresent(drink -> small.add(said(drinks(drink))));
        if (found.keeping() != null && !found.keeping().label().isEmpty()) {
            small.add(said(found.keeping().label()));
        }
        if (look.cost() == LabelSheet.Cost.PRINTED) {
            small.add(said(cost()));
        }
        small.add(marking);
        small.add(said(TellLabel.NOT_FOR_SALE));
        return small;
    }

    private String energy() {
        Counted.Side side = found.counted().energy();
        return side == Counted.Side.ANYWHERE
                ? "Energy not known"
                : "Energy " + bound(side) + QuantityWords.fixed(found.figures().value(Figure.ENERGY_KJ), 0) + " kJ, "
                        + QuantityWords.fixed(found.figures().value(Figure.ENERGY_KCAL), 0) + " kcal per 100 mL";
    }

    private String sugar() {
        return "Sugar " + bound(found.counted().sugar())
                + QuantityWords.fixed(found.figures().value(Figure.SUGAR) / 10.0, 1) + " g per 100 mL";
    }

    private static String bound(Counted.Side side) {
        return side == Counted.Side.THERE ? "" : side.label() + " ";
    }

    /** Returns the warning of the USA, word for word in English, where the label is read there; else nothing. */
    String warning() {
        return found.market() == Market.US && found.strength().percent() >= Statements.US_WARNING_FROM
                ? Statements.US_WARNING
                : "";
    }

    private List<String> allergens() {
        List<String> all = new ArrayList<>();
        String contained = found.findings().stream()
                .filter(finding -> finding.verdict().startsWith("contains "))
                .map(finding -> afterFirstWord(look.saying().said(finding.rule(), finding.verdict())))
                .distinct()
                .collect(Collectors.joining(", "));
        if (!contained.isEmpty()) {
            all.add(said("Contains " + contained + "."));
        }
        // What nobody knows is said, since silence would say that there is none.
        found.findings().stream()
                .filter(finding -> finding.verdict().contains("not known") && Rules.isOfAllergens(finding))
                .map(finding -> sentence(look.saying().said(finding.rule(), finding.verdict())))
                .distinct()
                .forEach(all::add);
        return all;
    }

    private List<String> statements() {
        List<String> all = new ArrayList<>();
        if (found.isStopped()) {
            all.add(said("Above a limit of law or of the house."));
        }
        if (!found.doses().isEmpty()) {
            all.add(said("Dose not said to be meant:") + " "
                    + found.doses().stream()
                            .map(name -> IngredientNames.in(look.saying().tag(), name))
                            .collect(Collectors.joining(", "))
                    + ".");
        }
        String written = "Write on the label: ";
        found.findings().stream()
                .map(Finding::remedy)
                .filter(remedy -> remedy.startsWith(written))
                .map(remedy -> said(remedy.substring(written.length())))
                .distinct()
                .forEach(all::add);
        if (found.findings().stream().anyMatch(finding -> finding.rule().equals("honey"))) {
            all.add(said("Contains honey: not for infants under 12 months."));
        }
        if (found.market() == Market.US && found.strength().leftIn() == StatedStrength.LeftIn.FRUIT_OR_PLANTS) {
            all.add("Bottled at " + QuantityWords.fixed(found.strength().percent(), 1) + " percent alcohol by volume");
        }
        return all;
    }

    private String country() {
        if (found.market() == Market.US) {
            return US_DRINKS;
        }
        return look.saying().tag().equals("de") ? GERMAN_DRINKS : OTHER_DRINKS;
    }

    private String drinks(Knowledge.StandardDrink drink) {
        return QuantityWords.fixed(drink.in(found.ethanolPerBottle()), 1) + " standard drinks of "
                + QuantityWords.plain(drink.grams()) + " g alcohol";
    }

    private static String afterFirstWord(String text) {
        return text.substring(text.indexOf(' ') + 1);
    }

    private static String sentence(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1) + ".";
    }

    private String cost() {
        if (found.together().isEmpty()) {
            throw new Impossible(
                    "print-cost", "no price of what is in the bottle is known.", "Leave it out, or write the prices.");
        }
        String sum = found.together().stream()
                .map(money -> QuantityWords.fixed(money.amount(), 2) + " " + money.currency())
                .collect(Collectors.joining(" + "));
        return (found.borne() == null ? "Cost " : "Cost with duty ")
                + (found.cost().isComplete() ? "" : "more than ")
                + sum;
    }

    private String said(String english) {
        return look.saying().said(LABEL, english);
    }
}
