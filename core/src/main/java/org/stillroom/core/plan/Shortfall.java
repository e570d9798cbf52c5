package org.stillroom.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Says in the maker's words why a target cannot be reached, what is nearest, and each single change that would help. */
final class Shortfall {
    private final Recipe recipe;
    private final Problem problem;
    private final List<Resolved> ingredients;
    private final Solution nearest;
    private final WaysOut waysOut;

    Shortfall(Recipe recipe, Problem problem, List<Resolved> ingredients) {
        this.recipe = recipe;
        this.problem = problem;
        this.ingredients = ingredients;
        this.waysOut = new WaysOut(problem);
        this.nearest = waysOut.nearest();
    }

    Solution nearest() {
        return nearest;
    }

    /** Returns whether any liquid is left at all: doses per litre that fill more than a litre leave none. */
    boolean leavesLiquid() {
        return nearest.millilitres() > 0.0;
    }

    static Finding noLiquid() {
        return Finding.of(
                "target-out-of-reach",
                Severity.STOP,
                "target",
                "cannot be reached",
                "Nothing can be made so: what is dosed per litre fills more than a litre by itself.",
                "Dose less per litre.");
    }

    /** Returns whether the nearest lies beside the target by less than can be measured. */
    boolean isWithinDoubt() {
        return problem.isMetWithinDoubt(nearest);
    }

    List<Finding> findings() {
        if (isWithinDoubt()) {
            return List.of(Finding.of(
                    "beside-the-target",
                    Severity.CAUTION,
                    "target",
                    "just beside",
                    "The amounts leave no play: the plan comes to " + reachedInWords() + ", where " + askedInWords()
                            + " was asked for.",
                    "Make one line free if it is to land exactly."));
        }
        List<WayOut> ways = waysOut.find(strengthened(), strengths());
        List<Finding> findings = new ArrayList<>();
        for (WayOut way : ways) {
            if (way.kind() == WayOut.Kind.TARGET) {
                findings.add(outOfReach(way, ways));
            }
        }
        if (findings.isEmpty()) {
            findings.add(outOfReach(ways));
        }
        return findings;
    }

    private Finding outOfReach(WayOut target, List<WayOut> ways) {
        boolean less = target.to() < target.from();
        String name = target.asked().label();
        String message = with() + keeping(target.asked()) + " the " + (less ? "most" : "least") + " "
                + (target.asked() == Asked.VOLUME ? "you can make" : "you reach") + " is " + bound(target) + ", and "
                + exact(target) + " is asked for.";
        return Finding.of(
                name + "-out-of-reach", Severity.STOP, "target, " + name, "cannot be reached", message, remedy(ways));
    }

    private Finding outOfReach(List<WayOut> ways) {
        return Finding.of(
                "target-out-of-reach",
                Severity.STOP,
                "target",
                "cannot be reached",
                with() + " " + askedInWords() + " cannot be reached together; the nearest is " + reachedInWords() + ".",
                ways.isEmpty()
                        ? "No single change of a target, a strength or an amount does it: change two, or free a line."
                        : remedy(ways));
    }

    /** Names what the recipe has to work with: the lines that bring alcohol or sugar. */
    private String with() {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < ingredients.size(); i++) {
            Resolved ingredient = ingredients.get(i);
            String name = recipe.lines().get(i).use();
            Typed<Strength> strength = ingredient.ingredient().strength();
            if (strength != null) {
                names.add(name + (name.contains(strength.text()) ? "" : " (" + strength.text() + ")"));
            } else if (ingredient.perGram().sugars() > 0.1
                    || ingredient.perGram().grams(Substance.ETHANOL) > 0.01) {
                names.add(name);
            }
        }
        return names.isEmpty() ? "With these lines" : "With " + joined(names, "and");
    }

    private String keeping(Asked except) {
        List<String> kept = new ArrayList<>();
        problem.asked().forEach((asked, span) -> {
            if (asked != except) {
                kept.add(words(asked, span));
            }
        });
        return kept.isEmpty() ? "" : " and keeping to " + joined(kept, "and") + ",";
    }

    private String remedy(List<WayOut> ways) {
        List<String> words = new ArrayList<>();
        for (WayOut way : ways) {
            String change = switch (way.kind()) {
                case TARGET -> "ask for " + most(way) + " " + bound(way) + (way.asked() == Asked.SUGAR ? " sugar" : "");
                case STRENGTH_OF_INGREDIENT ->
                    "use " + name(way) + " of " + most(way) + " " + Words.bound(way.from(), way.to(), 1) + " % vol";
                case AT_HAND -> "have " + most(way) + " " + amount(way, 1.0) + " of " + name(way);
                case FIXED_AMOUNT -> "take " + most(way) + " " + amount(way, 1.0) + " of " + name(way);
                case DOSE -> "take " + most(way) + " " + amount(way, 1000.0) + " of " + name(way) + " per litre";
            };
            words.add(change);
        }
        String list = joined(words, "or");
        return Character.toUpperCase(list.charAt(0))
                + list.substring(1)
                + (ways.size() > 1 ? "; one of them is enough." : ".");
    }

    private static String most(WayOut way) {
        return way.to() < way.from() ? "at most" : "at least";
    }

    private static String bound(WayOut way) {
        return Words.bound(way.from(), way.to(), way.asked() == Asked.VOLUME ? 0 : 1) + " "
                + way.asked().unit();
    }

    private static String exact(WayOut way) {
        return Words.number(way.from(), way.asked() == Asked.VOLUME ? 0 : 1) + " "
                + way.asked().unit();
    }

    private String name(WayOut way) {
        return recipe.lines().get(way.line()).use();
    }

    private String amount(WayOut way, double times) {
        Resolved ingredient = ingredients.get(way.line());
        double grams = times * way.to();
        String mass = Words.bound(times * way.from(), grams, grams < 10 ? 2 : 0) + " g";
        if (ingredient.solid() || ingredient.gramsPerMillilitre().isEmpty()) {
            return mass;
        }
        double perMillilitre = ingredient.gramsPerMillilitre().getAsDouble();
        return mass + " (" + Words.bound(times * way.from() / perMillilitre, grams / perMillilitre, grams < 10 ? 2 : 0)
                + " mL)";
    }

    private String askedInWords() {
        List<String> words = new ArrayList<>();
        problem.asked().forEach((asked, span) -> words.add(words(asked, span)));
        return joined(words, "and");
    }

    private String reachedInWords() {
        List<String> words = new ArrayList<>();
        problem.asked().forEach((asked, span) -> words.add(words(asked, Span.exactly(Math.max(0.0, figure(asked))))));
        return joined(words, "and");
    }

    private String words(Asked asked, Span span) {
        int decimals = asked.decimals();
        String value = Words.number(span.low(), decimals)
                + (span.isExact() ? "" : " to " + Words.number(span.high(), decimals));
        String what =
                asked == Asked.SUGAR ? " sugar " + recipe.target().sugarBasis().label() : "";
        return value + " " + asked.unit() + what;
    }

    private double figure(Asked asked) {
        return problem.figure(asked, nearest);
    }

    private List<Double> strengths() {
        List<Double> strengths = new ArrayList<>();
        for (Resolved ingredient : ingredients) {
            Typed<Strength> strength = ingredient.ingredient().strength();
            strengths.add(
                    strength != null && strength.value() instanceof AlcoholByVolume byVolume
                            ? byVolume.percent()
                            : 0.0);
        }
        return strengths;
    }

    private List<@Nullable DoubleFunction<double[]>> strengthened() {
        List<@Nullable DoubleFunction<double[]>> functions = new ArrayList<>();
        for (Resolved ingredient : ingredients) {
            Typed<Strength> strength = ingredient.ingredient().strength();
            boolean byVolume = strength != null && strength.value() instanceof AlcoholByVolume;
            functions.add(byVolume ? percent -> atStrength(ingredient, percent) : null);
        }
        return functions;
    }

    private static double[] atStrength(Resolved ingredient, double percent) {
        Ingredient other = ingredient.ingredient().ofStrength(new Typed<>("", AlcoholByVolume.at20(percent)));
        Resolved resolved = Resolution.of(other).resolved();
        return resolved == null
                ? ingredient.perGram().toGrams()
                : resolved.perGram().toGrams();
    }

    static String joined(List<String> words, String last) {
        if (words.size() < 2) {
            return String.join("", words);
        }
        return String.join(", ", words.subList(0, words.size() - 1)) + " " + last + " " + words.get(words.size() - 1);
    }
}
