package org.stillroom.studio.cli;

import static org.stillroom.core.liquid.Figure.ENERGY_KCAL;
import static org.stillroom.core.liquid.Figure.ENERGY_KJ;
import static org.stillroom.core.liquid.Figure.STRENGTH;
import static org.stillroom.core.liquid.Figure.SUGAR;
import static org.stillroom.core.liquid.Figure.SUGAR_AS_INVERT;
import static org.stillroom.core.liquid.Figure.SUGAR_BY_MASS;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.label.Duty;
import org.stillroom.core.label.LegalClass;
import org.stillroom.core.label.LegalClasses;
import org.stillroom.core.label.Market;
import org.stillroom.core.label.Miss;
import org.stillroom.core.label.StatedStrength;
import org.stillroom.core.label.WayThere;
import org.stillroom.core.reference.Standing;
import org.stillroom.core.safety.Counted;
import org.stillroom.core.safety.Knowledge;
import org.stillroom.core.safety.Safety;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.LabelFields;
import org.stillroom.studio.usecase.IngredientCost;
import org.stillroom.studio.usecase.TellLabel;

/** A label, the same for a person and for a script. */
record LabelAnswer(TellLabel.Found found, @Nullable Path written) implements Answer {
    /** Standard drinks that the page shows; the answer for scripts has all. */
    private static final List<String> SHOWN = List.of("UK", "USA", "Australia", "Germany", "France");

    @Override
    public Exit exit() {
        return found.isStopped() ? Exit.OUT_OF_REACH : Exit.DONE;
    }

    @Override
    public Fields fields() {
        Fields fields = LabelFields.of(found);
        return written == null ? fields : fields.put("file", written.toString());
    }

    @Override
    public void print(Page page) {
        if (written != null) {
            page.verbatim("Written: " + written);
            found.against().forEach(page::finding);
            return;
        }
        StatedStrength strength = found.strength();
        page.heading(found.title() + ": " + Figure.decimals(strength.percent(), 1) + " % vol on the label");
        page.paragraph("The bottle may hold " + range(strength) + mayHoldInUs(strength) + ".");
        if (!found.against().isEmpty()) {
            page.blank();
            page.heading("What speaks against it as a drink");
            found.against().forEach(page::finding);
        }
        if (!found.called().isEmpty()) {
            page.blank();
            page.heading("What was wanted");
            found.called().forEach(each -> told(page, each));
        }
        page.blank();
        page.heading("What it may be called");
        found.open().forEach(each -> told(page, each));
        if (found.open().isEmpty()) {
            page.paragraph("None of the names that law keeps here.");
        }
        missed(page);
        page.blank();
        page.heading("In figures");
        page.table(figures());
        page.blank();
        page.heading("What the label says");
        found.statements()
                .forEach(
                        each -> page.paragraph("- " + each.market() + ": " + each.words() + " (" + each.basis() + ")"));
        found.findings().forEach(each -> page.paragraph("- " + each.where() + ": " + each.remedy()));
        if (found.keeping() != null && !found.keeping().label().isEmpty()) {
            page.paragraph("- " + found.keeping().label() + ".");
        }
        page.paragraph("- At home: " + TellLabel.NOT_FOR_SALE + ". Batch number and date of filling.");
        cost(page);
        duty(page);
        page.blank();
        page.paragraph(Safety.STANDING);
    }

    private static void told(Page page, LegalClass each) {
        List<String> parts = new ArrayList<>();
        boolean besides = each.standing() == LegalClass.Standing.ASKS_BESIDES;
        parts.add("- " + each.market() + ": " + each.name() + ", "
                + each.standing().label() + (besides ? ":" : "."));
        each.misses().forEach(miss -> parts.add(sentence(miss)));
        parts.addAll(each.byRounding());
        if (!each.misses().isEmpty()) {
            parts.add(wayThere(each));
        }
        each.ruledOut().forEach(shown -> parts.add(shown.why()));
        each.notShown().forEach(open -> parts.add("Not shown: " + open + "."));
        if (!each.asksBesides().isEmpty()) {
            parts.add((besides ? "" : "Besides: ") + each.asksBesides());
        }
        parts.add("(" + each.clause() + status(each) + ")");
        page.paragraph(String.join(" ", parts));
    }

    private static String status(LegalClass each) {
        return each.source().standing() == Standing.READ ? "" : ", in part from memory";
    }

    /** Of what is missed the page shows the plain liqueurs, and what lines alone rule out; the answer for scripts has all. */
    private void missed(Page page) {
        List<LegalClass> plain = found.near().stream()
                .filter(each -> each.misses().isEmpty()
                        || each.name().startsWith("liqueur")
                        || each.name().startsWith("crème de (")
                        || each.name().equals(LegalClasses.SPIRIT_DRINK))
                .filter(each -> !found.called().contains(each))
                .toList();
        if (!plain.isEmpty()) {
            page.blank();
            page.heading("What it misses, and what gets there");
            plain.forEach(each -> told(page, each));
            page.paragraph("All others are in the answer for scripts (--json); --called NAME shows one.");
        }
        if (!found.far().isEmpty()) {
            page.blank();
            page.paragraph("Out of reach, for it is far too weak or something that they ask for is surely not in it: "
                    + found.far().stream()
                            .map(each -> each.market() + " " + each.name())
                            .collect(Collectors.joining("; "))
                    + ".");
        }
    }

    private static String sentence(Miss miss) {
        return sentence(miss.what()) + " is " + Figure.decimals(miss.found(), 1) + ", wanted is " + miss.way()
                + " " + Figure.decimals(miss.wanted(), 1) + " " + miss.unit()
                + (miss.by() == 0.0 ? "." : ": off by " + Figure.decimals(miss.by(), 1) + ".");
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    private static String wayThere(LegalClass each) {
        WayThere way = each.wayThere();
        if (way == null) {
            return "Adding spirit, sugar or water does not lead there.";
        }
        if (!way.isSensible()) {
            return "No sensible way by adding: it would take more than there is of the drink.";
        }
        String open = String.join("; ", way.open()) + ".";
        if (way.added().isEmpty()) {
            return "Spirit, sugar and water alone do not lead there: " + open;
        }
        List<String> added = way.added().stream()
                .map(one -> Figure.decimals(one.grams(), 1) + " g "
                        + (one.addition().isSolid() ? "" : "(" + Figure.decimals(one.millilitres(), 1) + " mL) ")
                        + "of " + one.addition().name())
                .toList();
        String sweet = each.market() == Market.EU
                ? Figure.decimals(way.then().value(SUGAR_AS_INVERT), 1) + " g/L as invert"
                : Figure.decimals(way.then().value(SUGAR_BY_MASS), 1) + " % sugar by weight";
        return "To the " + Figure.decimals(way.from(), 0) + " mL of it add " + String.join(" and ", added)
                + ": then it has " + Figure.decimals(way.then().value(STRENGTH), 1) + " % vol and " + sweet + " in "
                + Figure.decimals(way.millilitres(), 0) + " mL."
                + (way.open().isEmpty() ? "" : " This alone does not lead there, for then: " + open);
    }

    private Table figures() {
        Table table = new Table().text("").figure("").text("");
        double kilojoules = found.figures().value(ENERGY_KJ);
        double kilocalories = found.figures().value(ENERGY_KCAL);
        double served = found.servingMillilitres() / 100.0;
        table.row("energy" + side(found.counted().energy()), Figure.decimals(kilojoules, 0), "kJ per 100 mL");
        table.row("", Figure.decimals(kilocalories, 0), "kcal per 100 mL");
        table.row(
                "sugar" + side(found.counted().sugar()),
                Figure.decimals(found.figures().value(SUGAR) / 10.0, 1),
                "g per 100 mL");
        table.row("energy of a serving", Figure.decimals(kilojoules * served, 0), "kJ per " + serving());
        table.row("", Figure.decimals(kilocalories * served, 0), "kcal per " + serving());
        for (Knowledge.StandardDrink drink : found.drinks()) {
            if (SHOWN.contains(drink.country())) {
                table.row(
                        drink.country() + ", " + drink.name(),
                        Figure.decimals(drink.in(found.ethanolPerServing()), 1),
                        "in " + serving());
            }
        }
        table.row(
                "bottle",
                Figure.decimals(found.bottleMillilitres(), 0),
                "mL, " + lawful(Market.EU) + ", " + lawful(Market.US));
        return table;
    }

    private static String side(Counted.Side side) {
        return switch (side) {
            case THERE -> "";
            case ABOVE, BELOW -> ", " + side.label();
            case ANYWHERE -> " not known; counted";
        };
    }

    private static String range(StatedStrength strength) {
        return Figure.decimals(strength.low(), 1) + " to " + Figure.decimals(strength.high(), 1) + " % vol";
    }

    /** Where the law of both places is told, both are, unless they say the same. */
    private String mayHoldInUs(StatedStrength strength) {
        StatedStrength inUs = strength.inUs();
        boolean both = Stream.of(Market.values())
                .allMatch(place -> found.statements().stream().anyMatch(each -> each.market() == place));
        return both && inUs.tolerance() != strength.tolerance()
                ? " in the EU, " + range(inUs) + " in the USA (27 CFR 5.65, from memory)"
                : "";
    }

    private String lawful(Market market) {
        boolean lawful = market == Market.EU ? found.lawfulInEu() : found.lawfulInUs();
        return (lawful ? "a size for spirits in the " : "no size for spirits in the ") + market;
    }

    private String serving() {
        return Figure.decimals(found.servingMillilitres(), 0) + " mL";
    }

    private void cost(Page page) {
        IngredientCost cost = found.cost();
        page.blank();
        String costs = cost.perBottle().isEmpty()
                ? "What a bottle costs is not known."
                : "What goes into a bottle costs " + PlanPage.sum(cost.perBottle()) + ".";
        page.paragraph(costs
                + (cost.unpriced().isEmpty()
                        ? ""
                        : " Without a known price: " + String.join(", ", cost.unpriced()) + "."));
        Duty borne = found.borne();
        if (borne != null) {
            page.paragraph("With the duty of " + borne.country() + ", " + Figure.decimals(borne.perBottle(), 2) + " "
                    + borne.currency() + " by rates as of " + borne.asOf() + " (check), a bottle costs "
                    + (cost.isComplete() ? "" : "more than ") + PlanPage.sum(found.together()) + ".");
        }
    }

    private void duty(Page page) {
        page.blank();
        page.heading("Duty on paper: rates as of the day beside them; check them before use");
        if (!found.withoutDuty().isEmpty()) {
            page.paragraph("The table has no rate for this strength of " + String.join(", ", found.withoutDuty())
                    + "; whether any duty is due there, it does not say.");
        }
        if (found.duty().isEmpty()) {
            return;
        }
        Table table = new Table().text("").figure("a bottle").text("").text("rates as of");
        for (Duty each : found.duty()) {
            table.row(
                    each.country(),
                    Figure.decimals(each.perBottle(), 2),
                    each.currency(),
                    each.asOf() + (each.recalled() ? ", from memory" : "") + ", check");
        }
        page.table(table);
        found.tables().editions().forEach(edition -> page.paragraph("Rules: " + edition.told() + "."));
    }
}
