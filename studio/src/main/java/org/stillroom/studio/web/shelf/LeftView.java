package org.stillroom.studio.web.shelf;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.stillroom.core.ingredient.Ageing;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.planner.shopping.ShoppingList;
import org.stillroom.studio.usecase.left.Candidate;
import org.stillroom.studio.usecase.left.CouldMake;
import org.stillroom.studio.usecase.left.LeftOver;
import org.stillroom.studio.wording.Words;

/** What is left and what could be made of it, as its page shows it. */
public record LeftView(Words words, List<LeftOver> left, CouldMake.Ranking ranking, List<Finding> findings) {
    public LeftView {
        findings = List.copyOf(findings);
    }

    /**
     * An extract.
     *
     * @param lot id of the lot to use first
     * @param open since when, in months, or that it is not known
     * @param keeps how long it usually keeps
     * @param past whether that is over
     */
    public record Row(String name, String lot, String left, String open, String keeps, String how, boolean past) {}

    /**
     * A recipe.
     *
     * @param takes what it takes of what is left
     * @param buy what is wanting, or that nothing is
     */
    public record Choice(
            String recipe, String title, String size, String emptied, String takes, String buy, boolean reached) {}

    public List<Row> rows() {
        return left.stream().map(this::row).toList();
    }

    private Row row(LeftOver each) {
        Ageing ageing = each.ageing();
        return new Row(
                each.name(),
                each.lots().get(0).lot().id(),
                amount(each, each.grams()),
                each.monthsOpen().isPresent()
                        ? words.say(
                                "left.months", words.number(each.monthsOpen().getAsDouble(), 0))
                        : words.say("left.notSaid"),
                keeps(ageing.months()),
                words.say("left.keep." + ageing.key()),
                each.isPast());
    }

    private String keeps(OptionalDouble months) {
        if (months.isEmpty()) {
            return words.say("left.years");
        }
        double value = months.getAsDouble();
        return value < 1.0
                ? words.say("left.days", words.number(30.0 * value, 0))
                : words.say(value < 1.5 ? "left.month" : "left.months", words.number(value, 0));
    }

    private String amount(LeftOver of, double grams) {
        OptionalDouble millilitres = of.millilitres(grams);
        Amount amount = millilitres.isPresent() ? new Volume(millilitres.getAsDouble()) : new Mass(grams);
        return words.amount(amount);
    }

    public List<Choice> choices() {
        return ranking.could().stream().map(this::choice).toList();
    }

    private Choice choice(CouldMake could) {
        String takes = could.uses().stream()
                .map(use -> words.say(
                        "left.takesOne",
                        use.of().name(),
                        amount(use.of(), use.grams()),
                        words.number(100.0 * use.part(), 0)))
                .collect(Collectors.joining(", "));
        String buy = could.buy().stream().map(this::bought).collect(Collectors.joining(", "));
        return new Choice(
                could.recipe().id(),
                could.recipe().title(),
                words.amount(new Volume(could.plan().millilitres())),
                words.say("left.emptied", "" + could.whole(), "" + could.inPart()),
                takes,
                buy.isEmpty() ? words.say("left.buyNothing") : buy,
                could.isReached());
    }

    private String bought(ShoppingList.Item item) {
        OptionalDouble density = item.ingredient().gramsPerMillilitre();
        Amount amount = item.ingredient().solid() || density.isEmpty()
                ? new Mass(item.boughtGrams())
                : new Volume(item.boughtGrams() / density.getAsDouble());
        return item.name() + "\u00a0" + words.amount(amount);
    }

    public List<Candidate> notPlanned() {
        return ranking.not();
    }
}
