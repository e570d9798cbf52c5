package org.stillroom.studio.usecase.left;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Dose;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.planner.leftovers.UseUp;
import org.stillroom.studio.recipefile.RecipeWriter;
import org.stillroom.studio.recipefile.SheetReader;
import org.stillroom.studio.recipefile.SheetReading;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.WorkedPlan;

/** Plans a liqueur that uses up several extracts of the shelf together. */
public final class PlanUseUp {
    /** More bottles than this are not used up together. */
    public static final int MOST_EXTRACTS = 3;

    private final SheetReader reader;
    private final Grounds grounds;
    private final List<Finding> problems = new ArrayList<>();

    private PlanUseUp(OunceMeaning ounce, Grounds grounds) {
        this.reader = new SheetReader(ounce);
        this.grounds = grounds;
    }

    /**
     * A wish as typed.
     *
     * @param extracts names, each alone or as NAME=DOSE with the most of it that a litre may hold, such as "bay essence=5 ml/L"
     * @param strength of the liqueur, such as "28 %"
     * @param sugar of the liqueur, such as "200 g/L"
     * @param most of it, such as "2 L"
     */
    public record Wish(List<String> extracts, String strength, String sugar, String most) {
        public Wish {
            extracts = List.copyOf(extracts);
        }
    }

    /** What comes of it. */
    public sealed interface Outcome {
        /**
         * There is a liqueur.
         *
         * @param useUp how much of each extract goes in
         * @param recipe to compose and make it by
         * @param worked the recipe worked out
         * @param findings what to know of it, the plan's own among them
         */
        record Found(UseUp useUp, Recipe recipe, WorkedPlan worked, List<Finding> findings) implements Outcome {
            public Found {
                findings = List.copyOf(findings);
            }

            /** Returns the recipe as the text of a recipe file. */
            public String text() {
                return RecipeWriter.write(recipe);
            }
        }

        /** It cannot be told so. */
        record Refused(List<Finding> problems) implements Outcome {
            public Refused {
                problems = List.copyOf(problems);
            }
        }
    }

    /** An extract with what bounds its dose. */
    private record Bounded(LeftOver left, DoseBound bound) {}

    /**
     * Returns the liqueur.
     *
     * @param left what is left on the shelf
     * @param recipes the maker's own, whose doses bound what the maker sets no bound to
     * @param grounds what it is judged on as a drink
     */
    public static Outcome answer(
            Wish wish, List<LeftOver> left, List<Candidate> recipes, OunceMeaning ounce, Grounds grounds) {
        return new PlanUseUp(ounce, grounds).answer(wish, left, recipes);
    }

    private Outcome answer(Wish wish, List<LeftOver> left, List<Candidate> recipes) {
        List<Bounded> bounded = new ArrayList<>();
        for (String text : wish.extracts()) {
            bounded(text, left, recipes, bounded);
        }
        if (problems.isEmpty() && (bounded.isEmpty() || bounded.size() > MOST_EXTRACTS)) {
            problem(
                    "extracts",
                    bounded.isEmpty() ? "No extract is named." : bounded.size() + " extracts are named.",
                    "Name one to " + MOST_EXTRACTS
                            + " that are to be used up together, each with the most that a litre may hold where you know it,"
                            + " such as bay tincture=15 ml/L." + there(left));
        }
        Typed<Span> strength = read("strength", wish.strength(), QuantityText::strengthSpan, "“28 %”");
        Typed<Span> sugar = read("sugar", wish.sugar(), QuantityText::sugarSpan, "“200 g/L”");
        Typed<Volume> most = read("most", wish.most(), QuantityText::volume, "“2 L”");
        if (most != null && !(most.value().millilitres() > 0.0)) {
            problem("most", "Nothing at all is wanted.", "Write how much liqueur you want at most, such as 2 L.");
        }
        if (!problems.isEmpty() || strength == null || sugar == null || most == null) {
            return new Outcome.Refused(problems);
        }
        List<UseUp.Extract> extracts = bounded.stream()
                .map(each -> new UseUp.Extract(
                        each.left().stocked().usedAs(each.left().name()),
                        each.left().grams(),
                        each.bound().gramsPerLitre()))
                .toList();
        UseUp.Asked asked =
                new UseUp.Asked(extracts, strength, sugar, most.value().millilitres());
        UseUp.Outcome outcome = UseUp.of(asked);
        return outcome.found() == null
                ? new Outcome.Refused(outcome.problems())
                : found(HeldBack.of(asked, outcome.found(), clear(bounded), grounds), bounded);
    }

    /** Who types how much a litre may hold may want it cloudy. */
    private static Set<Integer> clear(List<Bounded> bounded) {
        return IntStream.range(0, bounded.size())
                .filter(i -> bounded.get(i).bound().from() != DoseBound.From.TYPED)
                .boxed()
                .collect(Collectors.toSet());
    }

    private void problem(String where, String message, String remedy) {
        problems.add(Finding.of("use-up", Severity.STOP, where, "not understood", message, remedy));
    }

    private void bounded(String text, List<LeftOver> left, List<Candidate> recipes, List<Bounded> bounded) {
        int cut = text.lastIndexOf('=');
        String name = (cut < 0 ? text : text.substring(0, cut)).strip();
        LeftOver of = left.stream()
                .filter(each -> Generics.same(each.name(), name))
                .findFirst()
                .orElse(null);
        if (of == null) {
            problem(
                    "extracts",
                    "Of “" + name
                            + "” nothing is left that is known: it is not on the shelf, does not flavour, or how much"
                            + " is left of it is not said.",
                    left.isEmpty()
                            ? "Put it on the shelf with how much is left."
                            : there(left).strip());
            return;
        }
        if (bounded.stream().anyMatch(each -> each.left().equals(of))) {
            problem("extracts", "“" + name + "” is named twice.", "Name it once.");
            return;
        }
        if (cut < 0) {
            bounded.add(new Bounded(of, DoseBound.usual(of, recipes)));
            return;
        }
        Typed<Dose> dose = read("extracts", text.substring(cut + 1), QuantityText::dose, "“5 ml/L”");
        OptionalDouble grams = dose == null
                ? OptionalDouble.empty()
                : DoseBound.grams(dose.value().perLitre(), of.stocked().resolved());
        if (grams.isPresent() && grams.getAsDouble() > 0.0) {
            bounded.add(new Bounded(of, new DoseBound(grams.getAsDouble(), DoseBound.From.TYPED)));
        } else if (dose != null) {
            problem("extracts", "“" + text + "” leaves no room for it.", "Write such as " + name + "=5 ml/L.");
        }
    }

    private static String there(List<LeftOver> left) {
        return left.isEmpty()
                ? ""
                : " There are: "
                        + String.join(", ", left.stream().map(LeftOver::name).toList()) + ".";
    }

    private <Q> @Nullable Typed<Q> read(
            String where, String text, BiFunction<QuantityText, String, Understanding<Q>> how, String example) {
        if (text.isBlank()) {
            problem(where, "It is not said.", "Write it such as " + example + ".");
            return null;
        }
        SheetReading<Typed<Q>> reading = reader.quantity(where, text, how, example);
        if (reading instanceof SheetReading.Understood<Typed<Q>> understood) {
            return understood.value();
        }
        ((SheetReading.Refused<Typed<Q>>) reading).problems().forEach(each -> problems.add(each.finding()));
        return null;
    }

    private Outcome found(HeldBack held, List<Bounded> bounded) {
        UseUp useUp = held.useUp();
        Recipe recipe = recipe(useUp);
        PlanRecipe.Outcome worked = PlanRecipe.answer(Making.alone(recipe), null, grounds, Workings.NONE);
        if (worked instanceof PlanRecipe.Outcome.Refused refused) {
            return new Outcome.Refused(refused.problems());
        }
        WorkedPlan plan = ((PlanRecipe.Outcome.Worked) worked).plan();
        List<Finding> findings = new ArrayList<>();
        for (int i = 0; i < bounded.size(); i++) {
            DoseBound.From from =
                    held.by().getOrDefault(i, bounded.get(i).bound().from());
            findings.addAll(said(bounded.get(i).left(), from, useUp.used().get(i)));
        }
        findings.addAll(plan.findings());
        return new Outcome.Found(useUp, recipe, plan, findings);
    }

    private static List<Finding> said(LeftOver left, DoseBound.From from, UseUp.Used used) {
        List<Finding> said = new ArrayList<>();
        if (from == DoseBound.From.NONE) {
            said.add(note(
                    "use-up-no-bound",
                    left.name(),
                    "no bound",
                    "No recipe of yours says how much of it a litre can take, so nothing bounds its dose.",
                    "Name a bound if it would be too much, such as " + left.name() + "=20 ml/L.",
                    Source.TRADE));
        } else if (used.atItsMost()) {
            said.add(note(
                    "use-up-at-its-most",
                    left.name(),
                    "at its most",
                    "It goes in as strong as " + told(from) + ", and "
                            + amount(left, used.extract().grams() - used.grams()) + " stay.",
                    from == DoseBound.From.LAW
                            ? "Make more of the liqueur, or have an analysis of the lot that says less."
                            : "Make more of the liqueur, or let a litre hold more of it: NAME=DOSE.",
                    source(from)));
        }
        if (left.isPast()) {
            said.add(note(
                    "use-up-past",
                    left.name(),
                    "open for long",
                    "It has been open for "
                            + QuantityWords.fixed(left.monthsOpen().orElseThrow(), 0) + " months; "
                            + left.ageing().words() + " usually keeps for "
                            + QuantityWords.plain(left.ageing().months().orElseThrow()) + ". "
                            + capital(left.ageing().then()) + ".",
                    "Look at it, smell and taste it before it goes in.",
                    Source.TRADE));
        }
        return said;
    }

    private static Finding note(
            String rule, String where, String verdict, String message, String remedy, @Nullable Source source) {
        return new Finding(rule, Severity.NOTE, where, "", verdict, message, "", remedy, null, source);
    }

    private static @Nullable Source source(DoseBound.From from) {
        return switch (from) {
            case OIL -> Source.RULE_OF_THUMB;
            case DISSOLVED -> Source.CLARITY_MODEL;
            case TYPED, RECIPES, LAW, NONE -> null;
        };
    }

    private static String told(DoseBound.From from) {
        return switch (from) {
            case TYPED -> "you allow";
            case RECIPES -> "in the strongest of your recipes";
            case OIL -> "is plausible for its oil";
            case LAW -> "law and your house allow of what it may hold at worst";
            case DISSOLVED -> "stays clear by the forecast";
            case NONE -> "can be";
        };
    }

    private static String capital(String sentence) {
        return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }

    private static String amount(LeftOver left, double grams) {
        OptionalDouble millilitres = left.millilitres(grams);
        return millilitres.isPresent()
                ? QuantityWords.metric(new Volume(millilitres.getAsDouble()))
                : QuantityWords.metric(new Mass(grams));
    }

    /** Returns the recipe to make it by: the extracts as amounts to pour, spirit and sugar as much as it takes. */
    private static Recipe recipe(UseUp useUp) {
        Recipe planned = useUp.plan().recipe();
        List<Line> lines = new ArrayList<>();
        List<Ingredient> ingredients = new ArrayList<>();
        for (int i = 0; i < planned.lines().size(); i++) {
            Line line = planned.lines().get(i);
            PlannedLine exact = useUp.plan().lines().get(i);
            if (i >= useUp.used().size()) {
                if (exact.grams() > 0.0) {
                    lines.add(line);
                }
                continue;
            }
            ingredients.add(useUp.used().get(i).extract().ingredient());
            lines.add(new Line(line.use(), new LineAmount.Fixed(written(exact.grams())), null, null));
        }
        return Recipe.plain(planned.title(), planned.target(), ingredients, lines);
    }

    /** What is less than a gram is written in mg in three figures, so that the file asks for what was judged. */
    private static Typed<Amount> written(double grams) {
        Amount amount = new Mass(grams);
        return new Typed<>(
                grams < 1.0 ? QuantityWords.figures(1000.0 * grams) + " mg" : QuantityWords.metric(amount), amount);
    }
}
