package org.stillroom.studio.web.compose;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.CarriedPlant;
import org.stillroom.core.ingredient.DoseUnits;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Slips;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.MeasureKind;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.Target;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.Amount;
import org.stillroom.core.safety.Drink;
import org.stillroom.core.safety.Range;
import org.stillroom.core.safety.Rules;
import org.stillroom.core.safety.Serving;
import org.stillroom.planner.marks.MeasuredLine;
import org.stillroom.planner.shopping.ShoppingList;
import org.stillroom.studio.recipefile.FormReading;
import org.stillroom.studio.usecase.WorkedPlan;
import org.stillroom.studio.usecase.compose.Composed;
import org.stillroom.studio.usecase.compose.WorkOnRecipe;
import org.stillroom.studio.usecase.learn.Learnt;
import org.stillroom.studio.web.frame.LearntLines;
import org.stillroom.studio.web.triangle.TriangleView;
import org.stillroom.studio.wording.UnitSystem;
import org.stillroom.studio.wording.Words;

/**
 * What the page of a recipe shows.
 *
 * @param work the recipe and what is typed
 * @param composed what came of it
 * @param triangle or null as long as there is no plan
 * @param shopping or null as long as there is no plan
 * @param names that a line may use
 * @param shelf lots that can be put in, by id and in words
 * @param droppers that lines in drops can be dosed with
 * @param learnt what batches tell of labels and droppers
 * @param words of the reader
 */
public record ComposeView(
        WorkOnRecipe.Work work,
        Composed composed,
        @Nullable TriangleView triangle,
        @Nullable ShoppingList shopping,
        List<String> names,
        Map<String, String> shelf,
        DropperChoice droppers,
        Learnt learnt,
        Words words) {
    public String id() {
        return work.head().id();
    }

    public int basedOn() {
        return work.basedOn();
    }

    public boolean hasDraft() {
        return work.head().hasDraft();
    }

    /** Returns whether somebody saved a revision since this work began. */
    public boolean isOvertaken() {
        return work.head().revision() > work.basedOn();
    }

    public String typed(String field) {
        return composed.form().typed(field);
    }

    public List<FormReading.At> problems(String field) {
        return composed.reading().problemsAt(field);
    }

    public boolean isRefused(String field) {
        return !problems(field).isEmpty();
    }

    /** Returns what was taken for granted at a field. */
    public List<FormReading.At> notes(String field) {
        return composed.reading().notes().stream()
                .filter(at -> at.field().equals(field))
                .toList();
    }

    public int count(String list) {
        return composed.form().count(list);
    }

    /** Returns the fields of an ingredient that are filled beyond the usual ones, such as "contains.malic". */
    public List<String> contents(String ingredient) {
        return composed.form().fields().keySet().stream()
                .filter(name -> name.startsWith(ingredient + "contains."))
                .toList();
    }

    /** Returns the keys by which an ingredient says what it carries, as far as its kind can or something is typed there. */
    public List<String> carries(String ingredient) {
        String label = typed(ingredient + "kind");
        boolean ofPlants = Arrays.stream(Kind.values())
                .filter(kind -> kind.label().equals(label))
                .anyMatch(Kind::isOfPlants);
        return Stream.of("aroma", "plant", "ratio")
                .filter(key -> ofPlants || !typed(ingredient + key).isBlank())
                .toList();
    }

    /** Returns the name of what was taken out last, or empty. */
    public String takenOut() {
        Map<String, String> item = composed.form().takenOut();
        return item.values().stream()
                .filter(text -> !text.isBlank())
                .findFirst()
                .orElse("");
    }

    /** Returns the fields of a measure: those of its kind, and whatever else is filled. */
    public List<String> measureFields(String measure) {
        List<String> usual = typed(measure + "kind").equals(MeasureKind.DROPPER.label())
                ? List.of("drop", "tolerance")
                : List.of("marks", "tolerance", "holds");
        return Stream.of("drop", "marks", "tolerance", "holds")
                .filter(key -> usual.contains(key) || !typed(measure + key).isBlank())
                .toList();
    }

    /** Returns the droppers that a line can be dosed with, in words by what is sent; none where it is not dosed in drops, or there is no choice. */
    public Map<String, String> droppers(LineRow line) {
        return line.isInDrops() ? droppers.choices(composed.form(), line.index(), words) : Map.of();
    }

    /** Returns the lines in the order in which they are written. */
    public List<LineRow> lines() {
        List<LineRow> rows = new ArrayList<>();
        for (int i = 0; i < count("lines"); i++) {
            String start = "lines." + i + ".";
            rows.add(new LineRow(
                    i,
                    composed.place(i),
                    typed(start + "use"),
                    typed(start + "amount"),
                    typed(start + "note"),
                    composed.measured(i),
                    dose(composed.measured(i)),
                    plant(composed.measured(i))));
        }
        return rows;
    }

    /**
     * What batches would put right of a line's ingredient.
     *
     * @param press what the button that takes it says to the form; empty where the ingredient is not listed, so that nothing can be typed
     */
    public record Offer(String told, String press, String take) {}

    /** Returns the question whether a line's dose of oil is meant; null where there is none, or it is answered. */
    public Slips.@Nullable Asked question(LineRow line) {
        WorkedPlan worked = composed.worked();
        return worked == null
                ? null
                : Slips.asked(worked.plan()).stream()
                        .filter(asked -> asked.from() == null && asked.line() == line.place())
                        .findFirst()
                        .orElse(null);
    }

    /** Returns what batches would put right of a line's ingredient. */
    public List<Offer> offers(LineRow line) {
        MeasuredLine measured = line.measured();
        if (measured == null) {
            return List.of();
        }
        Ingredient ingredient = measured.exact().ingredient().ingredient();
        LearntLines lines = new LearntLines(words);
        List<Offer> offers = new ArrayList<>();
        learnt.offered(ingredient)
                .ifPresent(label -> offers.add(
                        offer(ingredient, lines.offer(label), label.typed() + "|tolerance=" + label.tolerance())));
        if (measured.exact().line().amount() instanceof LineAmount.PerLitre
                || measured.reading().unit().equals("drops")) {
            learnt.offeredDrop(ingredient)
                    .ifPresent(drop -> offers.add(offer(ingredient, lines.offer(drop), drop.typed())));
        }
        return offers;
    }

    private Offer offer(Ingredient ingredient, LearntLines.Line line, String typed) {
        for (int i = 0; i < count("ingredients"); i++) {
            if (typed("ingredients." + i + ".name").strip().equals(ingredient.name())) {
                return new Offer(line.told(), "take:ingredients." + i + "|" + line.field() + "=" + typed, line.take());
            }
        }
        return new Offer(line.told(), "", "");
    }

    private @Nullable DoseUnits dose(@Nullable MeasuredLine line) {
        WorkedPlan worked = composed.worked();
        return worked == null || line == null ? null : worked.dose(line.exact());
    }

    private @Nullable CarriedPlant plant(@Nullable MeasuredLine line) {
        WorkedPlan worked = composed.worked();
        return worked == null || line == null ? null : worked.plant(line.exact());
    }

    /** Returns what a field of the target was understood as, with its basis; empty as long as it was not. */
    public String understood(String field) {
        Recipe recipe = composed.reading().recipe();
        if (recipe == null || typed(field).isBlank()) {
            return "";
        }
        Target target = recipe.target();
        return switch (field) {
            case "target.volume" ->
                target.volume() == null ? "" : said("volume", target.volume().value(), 0);
            case "target.bottles" -> target.millilitres() == null ? "" : said("together", target.millilitres(), 0);
            case "target.strength" ->
                target.strength() == null
                        ? ""
                        : said("strength", target.strength().value(), 1);
            case "target.sugar" ->
                target.sugar() == null
                        ? ""
                        : said(
                                "sugar." + target.sugarBasis().name(),
                                target.sugar().value(),
                                0);
            case "target.acidity" ->
                target.acidity() == null ? "" : said("acidity", target.acidity().value(), 1);
            default -> "";
        };
    }

    private String said(String key, Span span, int decimals) {
        String low = words.number(span.low(), decimals);
        String high = words.number(span.high(), decimals);
        return words.say("compose.is." + key, low.equals(high) ? low : words.say("compose.band", low, high));
    }

    /** Returns the figures of the finished liquid; none as long as there is no plan. */
    public FigureRows figures() {
        return new FigureRows(composed, words);
    }

    /** Returns the strength without its unit, for the line that stays on top. */
    public String strength() {
        WorkedPlan worked = composed.worked();
        return worked == null ? "–" : words.number(worked.measured().exact().strength(), 1);
    }

    public String sugar() {
        WorkedPlan worked = composed.worked();
        return worked == null ? "–" : words.number(worked.measured().exact().sugar(), 0);
    }

    public String volume() {
        WorkedPlan worked = composed.worked();
        return worked == null ? "–" : volume(worked.plan().millilitres());
    }

    private String volume(double millilitres) {
        return words.units() == UnitSystem.US
                ? words.amount(new Volume(millilitres))
                : words.number(millilitres, 0) + "\u00a0mL";
    }

    /** Returns what the recipe leaves after its rest and loss; empty when it says nothing of them. */
    public String leaves(WorkedPlan worked) {
        Recipe recipe = worked.plan().recipe();
        if (recipe.loss() == null) {
            return "";
        }
        double left = Planner.leaving(recipe.title(), worked.plan()).yieldMillilitres();
        return words.say("compose.leaves", volume(left), recipe.loss().text());
    }

    /** Returns what goes in, as money; empty where no price is known. */
    public String cost() {
        if (shopping == null) {
            return "";
        }
        return shopping.used().stream()
                .map(money -> words.number(money.amount(), 2) + "\u00a0" + money.currency())
                .collect(Collectors.joining(" + "));
    }

    /** Returns what asks for something. */
    public List<Finding> findings() {
        return composed.findings().stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .toList();
    }

    /** Returns the stops of what is planned, what nobody is to drink before all else; without a stop its cautions. */
    public List<Finding> foremost() {
        if (composed.worked() == null) {
            return List.of();
        }
        Severity gravest = findings().stream().anyMatch(ComposeView::stops) ? Severity.STOP : Severity.CAUTION;
        return findings().stream()
                .filter(finding -> finding.severity() == gravest)
                .sorted(Rules.GRAVEST_FIRST)
                .toList();
    }

    private static boolean stops(Finding finding) {
        return finding.severity() == Severity.STOP;
    }

    /** Returns what is good to know. */
    public List<Finding> remarks() {
        return composed.findings().stream()
                .filter(finding -> finding.severity() == Severity.NOTE)
                .toList();
    }

    private Serving drinks() {
        WorkedPlan worked = composed.worked();
        return worked == null ? Serving.USUAL : worked.grounds().serving();
    }

    /** Returns how much of it somebody drinks a day, as it was settled. */
    public String serving() {
        double glasses = drinks().perDay();
        return words.say(
                glasses == 1.0 ? "compose.servings.one" : "compose.servings",
                words.plain(glasses),
                words.plain(drinks().millilitres()));
    }

    /** Returns the watched substances in what is made; nothing without a plan that makes something. */
    public List<Amount> substances() {
        WorkedPlan worked = composed.worked();
        return worked == null || worked.plan().liquid().total() == 0.0
                ? List.of()
                : Drink.of(worked.plan(), worked.grounds()).amounts();
    }

    /** Returns milligrams of what is known on a day, at most, in three figures. */
    public String aDay(Amount amount) {
        return words.marked(Range.figures(amount.perDay(drinks()).most()));
    }

    /** Returns least and most of it in the drink, mg/kg, in three figures. */
    public String inIt(Amount amount) {
        String least = words.marked(Range.figures(amount.perKilogram().least()));
        String most = words.marked(Range.figures(amount.perKilogram().most()));
        return least.equals(most) ? most : words.say("compose.fromTo", least, most);
    }
}
