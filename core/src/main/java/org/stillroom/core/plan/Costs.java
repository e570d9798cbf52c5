package org.stillroom.core.plan;

import java.util.List;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.recipe.Aim;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/**
 * What a gram of each line costs under an aim.
 *
 * <p>Where the maker names no aim it is money if every price is known, else as little as will do.
 *
 * @param recipe names the aim
 * @param ingredients of the lines, in their order
 * @param findings takes up which price is not known
 */
record Costs(Recipe recipe, List<Resolved> ingredients, List<Finding> findings) {
    /** Returns the problem with the cost of a gram put on each line. */
    Problem putOn(Problem problem) {
        Problem costed = problem;
        double least = leastToUseUp(problem);
        for (int i = 0; i < ingredients.size(); i++) {
            Problem.Line numbers = problem.lines()[i];
            costed = costed.withLine(
                    i, numbers.costing(perGram(recipe.lines().get(i), ingredients.get(i), numbers, least)));
        }
        return costed;
    }

    private double perGram(Line line, Resolved ingredient, Problem.Line numbers, double least) {
        Aim aim = recipe.aim();
        if (aim == null) {
            return allPriced() ? money(ingredient) : plainest(ingredient);
        }
        return switch (aim.what()) {
            case LEAST_COST -> money(ingredient);
            case LEAST_SPIRIT -> ingredient.kind() == Kind.SPIRIT ? 1.0 : 0.0;
            case LEAST_WATER -> ingredient.kind() == Kind.WATER ? 1.0 : 0.0;
            case USE_UP -> isToUseUp(line, ingredient) ? -weight(numbers.room(), least) : 0.0;
        };
    }

    private static double weight(double room, double least) {
        return least == Double.POSITIVE_INFINITY || room == 0.0 ? 1.0 : least / room;
    }

    private boolean isToUseUp(Line line, Resolved ingredient) {
        Aim aim = recipe.aim();
        return aim != null
                && aim.ingredients().stream()
                        .anyMatch(name -> name.equals(line.use()) || name.equals(ingredient.name()));
    }

    /**
     * Returns the least room of what is to be used up, g: of several each counts by the part of it that goes in, so that a small bottle
     * weighs as much as a large one. Infinite, so that each counts by its grams, where nothing says how much there is of one of them.
     */
    private double leastToUseUp(Problem problem) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ingredients.size(); i++) {
            double room = problem.lines()[i].room();
            if (room > 0.0 && isToUseUp(recipe.lines().get(i), ingredients.get(i))) {
                if (room == Double.POSITIVE_INFINITY) {
                    return room;
                }
                least = Math.min(least, room);
            }
        }
        return least;
    }

    private boolean allPriced() {
        return ingredients.stream().allMatch(each -> each.kind() == Kind.WATER || !Double.isNaN(price(each)));
    }

    /** Water is what a plain plan takes most of; everything else it takes as little of as will do. */
    private static double plainest(Resolved ingredient) {
        return ingredient.kind() == Kind.WATER ? 0.0 : 1.0;
    }

    private double money(Resolved ingredient) {
        double price = price(ingredient);
        if (!Double.isNaN(price)) {
            return price;
        }
        if (ingredient.kind() != Kind.WATER) {
            findings.add(Finding.of(
                    "price-not-known",
                    Severity.CAUTION,
                    ingredient.name(),
                    "not known",
                    "The price of " + ingredient.name() + " is not known; the least cost leaves it out.",
                    "Write its price, such as price: 22 EUR/L."));
        }
        return 0.0;
    }

    private static double price(Resolved ingredient) {
        return Cost.perGram(ingredient).orElse(Double.NaN);
    }
}
