package org.stillroom.core.ingredient;

import java.util.List;
import java.util.OptionalDouble;
import org.stillroom.core.liquid.Contents;

/**
 * An ingredient as the balances see it.
 *
 * @param ingredient as the maker described it
 * @param perGram grams of each substance that one gram brings into the liquid
 * @param marcPerGram grams that stay behind in the strainer, per gram
 * @param perGramAtUpperLabel the same as {@code perGram} when the label's figure errs by its whole tolerance; equal to it when
 *     no tolerance is known
 * @param gramsPerMillilitre density at 20 °C for measuring it by volume (bulk density for grains), or empty when it is not
 *     measured so
 * @param relativeDensityDoubt half-width within which that density lies, as a part of it
 * @param solid whether it is weighed as a solid, so that it has no volume of its own in an answer
 */
public record Resolved(
        Ingredient ingredient,
        Contents perGram,
        double marcPerGram,
        Contents perGramAtUpperLabel,
        OptionalDouble gramsPerMillilitre,
        double relativeDensityDoubt,
        boolean solid) {

    public String name() {
        return ingredient.name();
    }

    public Kind kind() {
        return ingredient.kind();
    }

    /** Returns what the oil that it brings is made of. */
    public List<OilPart> oilParts() {
        return OilPart.of(ingredient);
    }
}
