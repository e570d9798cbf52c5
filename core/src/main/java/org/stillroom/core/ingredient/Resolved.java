package org.stillroom.core.ingredient;

import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.OilDensity;
import org.stillroom.core.drops.DropLiquid;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;

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

    /** Returns where its density comes from when it is an oil that nobody measured, else null. */
    public @Nullable OilDensity oilDensity() {
        return Resolution.oilDensity(ingredient, perGram);
    }

    /** Returns what a drop of it weighs, g: from the maker's own dropper where that is said, else from the official one. */
    public double gramsPerDrop() {
        Typed<Amount> drop = ingredient.drop();
        if (drop != null && drop.value() instanceof Mass mass) {
            return mass.grams();
        }
        return drop != null && drop.value() instanceof Volume volume && gramsPerMillilitre.isPresent()
                ? volume.millilitres() * gramsPerMillilitre.getAsDouble()
                : DropLiquid.gramsPerDrop(ingredient.name(), perGram);
    }
}
