package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.label.Duty;
import org.stillroom.core.label.LegalClass;
import org.stillroom.core.label.Market;
import org.stillroom.core.label.Miss;
import org.stillroom.core.label.StatedStrength;
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
        page.paragraph("The bottle may hold " + Figure.decimals(strength.low(), 1) + " to "
                + Figure.decimals(strength.high(), 1) + " % vol.");
        if (!found.against().isEmpty()) {
            page.blank();
            page.heading("What speaks against it as a drink");
            found.against().forEach(page::finding);
        }
        page.blank();
        page.heading("What its figures allow it to be called");
        page.table(met());
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

    private Table met() {
        Table table = new Table().text("").text("name").text("asks besides").text("clause");
        found.classes().stream()
                .filter(LegalClass::isMet)
                .forEach(each ->
                        table.row(each.market().name(), each.name(), besides(each), each.clause() + status(each)));
        return table;
    }

    private static String besides(LegalClass each) {
        String text =
                each.notShown().isEmpty() ? each.asksBesides() : "not shown: " + String.join("; ", each.notShown());
        return text.isEmpty() ? "–" : short60(text);
    }

    private static String status(LegalClass each) {
        return each.source().standing() == org.stillroom.core.reference.Standing.READ ? "" : " (from memory)";
    }

    private static String short60(String text) {
        return text.length() <= 60 ? text : text.substring(0, text.lastIndexOf(' ', 58)) + " …";
    }

    /** Of what is missed the page shows the plain liqueurs; the answer for scripts has all. */
    private void missed(Page page) {
        for (LegalClass each : found.classes()) {
            boolean plain = each.name().startsWith("liqueur") || each.name().startsWith("creme de (");
            if (plain && !each.isMet()) {
                page.paragraph("Not " + each.name() + " (" + each.market() + "): "
                        + String.join(
                                "; ",
                                each.misses().stream().map(LabelAnswer::told).toList()) + ".");
            }
        }
    }

    private static String told(Miss miss) {
        return miss.what() + " " + Figure.decimals(miss.found(), 1) + ", wanted " + miss.way() + " "
                + Figure.decimals(miss.wanted(), 1) + " " + miss.unit() + ", off by " + Figure.decimals(miss.by(), 1);
    }

    private Table figures() {
        Table table = new Table().text("").figure("").text("");
        double kilojoules = found.figures().value(org.stillroom.core.liquid.Figure.ENERGY_KJ);
        double kilocalories = found.figures().value(org.stillroom.core.liquid.Figure.ENERGY_KCAL);
        double served = found.servingMillilitres() / 100.0;
        table.row("energy", Figure.decimals(kilojoules, 0), "kJ per 100 mL");
        table.row("", Figure.decimals(kilocalories, 0), "kcal per 100 mL");
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
        page.paragraph("What goes into a bottle costs " + PlanPage.sum(cost.perBottle()) + "."
                + (cost.unpriced().isEmpty()
                        ? ""
                        : " Without a known price: " + String.join(", ", cost.unpriced()) + "."));
        Duty borne = found.borne();
        if (borne != null) {
            page.paragraph("With the duty of " + borne.country() + ", " + Figure.decimals(borne.perBottle(), 2) + " "
                    + borne.currency() + " as of " + borne.asOf() + ", a bottle costs "
                    + (cost.isComplete() ? "" : "more than ") + PlanPage.sum(found.together()) + ".");
        }
    }

    private void duty(Page page) {
        page.blank();
        page.heading("Duty on paper, from memory: check the rates");
        found.tables().editions().forEach(edition -> page.paragraph("Rules: " + edition.told() + "."));
        Table table = new Table().text("").figure("a bottle").text("").text("as of");
        for (Duty each : found.duty()) {
            table.row(each.country(), Figure.decimals(each.perBottle(), 2), each.currency(), each.asOf());
        }
        page.table(table);
    }
}
