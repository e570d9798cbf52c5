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
        for (int i = 0; i < ingredients.size(); i++) {
            costed = costed.withLine(
                    i, problem.lines()[i].costing(perGram(recipe.lines().get(i), ingredients.get(i))));
        }
        return costed;
    }

    private double perGram(Line line, Resolved ingredient) {
        Aim aim = recipe.aim();
        if (aim == null) {
            return allPriced() ? money(ingredient) : plainest(ingredient);
        }
        return switch (aim.what()) {
            case LEAST_COST -> money(ingredient);
            case LEAST_SPIRIT -> ingredient.kind() == Kind.SPIRIT ? 1.0 : 0.0;
            case LEAST_WATER -> ingredient.kind() == Kind.WATER ? 1.0 : 0.0;
            case USE_UP ->
                List.of(line.use(), ingredient.name()).contains(String.valueOf(aim.ingredient())) ? -1.0 : 0.0;
        };
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
