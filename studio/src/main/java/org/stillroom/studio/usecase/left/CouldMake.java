package org.stillroom.studio.usecase.left;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.plan.Slips;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.Grounds;
import org.stillroom.core.safety.Safety;
import org.stillroom.planner.shopping.Shopping;
import org.stillroom.planner.shopping.ShoppingList;
import org.stillroom.studio.usecase.SizeRecipe;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.ShelfLots;

/**
 * A recipe that takes of what is left, in the size in which the first of its extracts is used up, or the largest that is wanted.
 *
 * @param recipe which
 * @param plan in that size, of what the shelf holds
 * @param uses what it takes of what is left, most of it first
 * @param buy what is wanting then, water excepted
 */
public record CouldMake(Candidate recipe, Plan plan, List<Use> uses, List<ShoppingList.Item> buy) {
    private static final int MOST_ROUNDS = 8;
    private static final double ROUNDING = 1e-9;

    /** Of a bottle of which more is taken nothing worth keeping stays. Own choice. */
    public static final double ALMOST_ALL = 0.995;
    /** Bottles emptied that differ by less count as the same, so that what must be bought decides. Own choice. */
    private static final double ALIKE = 0.1;

    private static final Comparator<CouldMake> BEST_FIRST = Comparator.<CouldMake>comparingLong(
                    each -> -Math.round(each.emptied() / ALIKE))
            .thenComparingInt(each -> each.buy().size())
            .thenComparingDouble(each -> -each.emptied())
            .thenComparing(each -> each.recipe().title());

    public CouldMake {
        uses = List.copyOf(uses);
        buy = List.copyOf(buy);
    }

    /**
     * What goes in of something that is left.
     *
     * @param grams that go in, of the recipe and its stages together
     */
    public record Use(LeftOver of, double grams) {
        /** Returns which part of what is left goes in, 0 to 1. */
        public double part() {
            return Math.min(1.0, grams / of.grams());
        }
    }

    /**
     * What could be made.
     *
     * @param could best first
     * @param not recipes that cannot be planned as they are
     */
    public record Ranking(List<CouldMake> could, List<Candidate> not) {
        public Ranking {
            could = List.copyOf(could);
            not = List.copyOf(not);
        }
    }

    /** Returns how many bottles it empties, parts of them counted as parts. */
    public double emptied() {
        return uses.stream().mapToDouble(Use::part).sum();
    }

    /** Returns how many bottles nothing stays in. */
    public long whole() {
        return uses.stream().filter(use -> use.part() > ALMOST_ALL).count();
    }

    /** Returns how many bottles something is taken of and something stays in. */
    public long inPart() {
        return uses.size() - whole();
    }

    /** Returns whether it comes out as the recipe asks. */
    public boolean isReached() {
        return plan.reached();
    }

    /**
     * Returns what could be made: the recipes that empty most bottles first, among alike ones those for which least must be bought.
     *
     * <p>What a rule stops, and what doses an oil far beyond what is plausible, is offered to nobody; it is among what is not planned.
     *
     * @param mostMillilitres how much of a liqueur is wanted at most, at 20 °C
     * @param grounds what each is judged on as a drink
     */
    public static Ranking ranked(
            List<Candidate> recipes,
            List<LeftOver> left,
            List<LotOnShelf> shelf,
            double mostMillilitres,
            Grounds grounds) {
        List<CouldMake> could = new ArrayList<>();
        List<Candidate> not = new ArrayList<>();
        for (Candidate recipe : recipes) {
            if (recipe.making() == null) {
                not.add(recipe);
                continue;
            }
            Making ofShelf = ofShelf(recipe.made(), shelf);
            Plan plan = inSize(ofShelf, left, mostMillilitres);
            if (plan == null) {
                not.add(recipe);
                continue;
            }
            List<Use> uses = uses(plan, left);
            List<Finding> against = against(plan, grounds);
            if (!uses.isEmpty() && !against.isEmpty()) {
                not.add(new Candidate(recipe.id(), recipe.title(), recipe.making(), against));
            } else if (!uses.isEmpty()) {
                could.add(new CouldMake(recipe, plan, uses, buy(plan, shelf)));
            }
        }
        could.sort(BEST_FIRST);
        return new Ranking(could, not);
    }

    private static List<Finding> against(Plan plan, Grounds grounds) {
        return Stream.concat(Slips.of(plan).stream(), Safety.ofPlan(plan, grounds).stream())
                .filter(finding -> finding.severity() == Severity.STOP || Slips.isQuestion(finding.rule()))
                .toList();
    }

    /** Returns the making with what the shelf holds in place of what its recipes list; what the shelf holds is made by no stage. */
    private static Making ofShelf(Making making, List<LotOnShelf> shelf) {
        Recipe recipe = making.recipe();
        Map<String, Ingredient> listed = new LinkedHashMap<>();
        recipe.ingredients().forEach(each -> listed.put(each.name(), each.withAtHand(null)));
        for (Line line : recipe.lines()) {
            Stocked stocked = Stocked.of(ShelfLots.ofLine(line, recipe, shelf));
            if (stocked != null) {
                Ingredient used = stocked.usedAs(line.use());
                listed.put(
                        line.use(), line.amount() instanceof LineAmount.All ? used.withAtHand(stocked.atHand()) : used);
            } else if (line.amount() instanceof LineAmount.All) {
                recipe.ingredients().stream()
                        .filter(each -> each.name().equals(line.use()))
                        .forEach(each -> listed.put(each.name(), each));
            }
        }
        Map<String, Making> stages = new LinkedHashMap<>();
        making.stages().forEach((from, stage) -> stages.put(from, ofShelf(stage, shelf)));
        return new Making(recipe.withIngredients(List.copyOf(listed.values())), stages);
    }

    private static @Nullable Plan inSize(Making making, List<LeftOver> left, double most) {
        double millilitres = most;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            SizeRecipe.Outcome sized = SizeRecipe.answer(making, new Volume(millilitres));
            boolean free = sized instanceof SizeRecipe.Outcome.Sized;
            Planning planning = Planner.plan(sized instanceof SizeRecipe.Outcome.Sized other ? other.making() : making);
            if (!(planning instanceof Planning.Planned planned)) {
                return null;
            }
            double enoughFor = enoughFor(planned.plan(), left);
            if (!free || enoughFor >= 1.0 - ROUNDING) {
                return planned.plan();
            }
            millilitres *= enoughFor * (1.0 - ROUNDING);
        }
        return null;
    }

    /** Returns which part of a plan the scarcest of what is left is enough for. */
    private static double enoughFor(Plan plan, List<LeftOver> left) {
        double part = 1.0;
        for (Use use : uses(plan, left)) {
            part = Math.min(part, use.of().grams() / use.grams());
        }
        return part;
    }

    private static List<Use> uses(Plan plan, List<LeftOver> left) {
        List<Use> uses = new ArrayList<>();
        for (LeftOver each : left) {
            double grams = taken(plan, each.name());
            if (grams > 0.0) {
                uses.add(new Use(each, grams));
            }
        }
        uses.sort(Comparator.comparingDouble(use -> -use.part()));
        return uses;
    }

    private static double taken(Plan plan, String name) {
        double grams = 0.0;
        for (Plan.StagePlan stage : plan.stages()) {
            grams += taken(stage.plan(), name);
        }
        for (PlannedLine line : plan.lines()) {
            grams += Generics.same(line.name(), name) ? line.grams() : 0.0;
        }
        return grams;
    }

    private static List<ShoppingList.Item> buy(Plan plan, List<LotOnShelf> shelf) {
        return Shopping.of(withAtHand(plan, shelf)).items().stream()
                .filter(item -> item.boughtGrams() > 0.0 && item.ingredient().kind() != Kind.WATER)
                .filter(item -> !isThereWithoutAmount(item.ingredient().ingredient(), shelf))
                .toList();
    }

    private static boolean isThereWithoutAmount(Ingredient ingredient, List<LotOnShelf> shelf) {
        Stocked stocked = Stocked.of(ingredient, shelf);
        return stocked != null && stocked.grams().isEmpty();
    }

    private static Plan withAtHand(Plan plan, List<LotOnShelf> shelf) {
        List<PlannedLine> lines =
                plan.lines().stream().map(line -> withAtHand(line, shelf)).toList();
        List<Plan.StagePlan> stages = plan.stages().stream()
                .map(stage -> new Plan.StagePlan(
                        stage.ingredient(),
                        withAtHand(stage.plan(), shelf),
                        stage.yieldGrams(),
                        stage.yieldMillilitres()))
                .toList();
        return new Plan(
                plan.recipe(), lines, plan.liquid(), plan.millilitres(), plan.reached(), stages, plan.findings());
    }

    private static PlannedLine withAtHand(PlannedLine line, List<LotOnShelf> shelf) {
        Resolved is = line.ingredient();
        Stocked stocked = Stocked.of(is.ingredient(), shelf);
        Ingredient ingredient = is.ingredient().withAtHand(stocked == null ? null : stocked.atHand());
        return new PlannedLine(line.line(), is.described(ingredient), line.grams());
    }
}
