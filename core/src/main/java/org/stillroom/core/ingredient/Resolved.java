package org.stillroom.core.ingredient;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.OilDensity;
import org.stillroom.core.drops.DropBasis;
import org.stillroom.core.drops.DropLiquid;
import org.stillroom.core.drops.OfficialDropper;
import org.stillroom.core.drops.OwnDropper;
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
 * @param dropper that it is dosed with in drops, or null where none is known
 */
public record Resolved(
        Ingredient ingredient,
        Contents perGram,
        double marcPerGram,
        Contents perGramAtUpperLabel,
        OptionalDouble gramsPerMillilitre,
        double relativeDensityDoubt,
        boolean solid,
        @Nullable OwnDropper dropper) {

    /** Returns the same, dosed with another dropper. */
    public Resolved from(@Nullable OwnDropper other) {
        return new Resolved(
                ingredient,
                perGram,
                marcPerGram,
                perGramAtUpperLabel,
                gramsPerMillilitre,
                relativeDensityDoubt,
                solid,
                other);
    }

    /** Returns the same as its maker describes it otherwise, where that says nothing new of its substances. */
    public Resolved described(Ingredient otherwise) {
        return new Resolved(
                otherwise,
                perGram,
                marcPerGram,
                perGramAtUpperLabel,
                gramsPerMillilitre,
                relativeDensityDoubt,
                solid,
                dropper);
    }

    /** Returns the same with an oil made of these parts by CAS number or the name of a group, 0 to 1. */
    public Resolved knowingOil(Map<String, Double> shares) {
        return new Resolved(
                ingredient,
                perGram.knowingOil(shares),
                marcPerGram,
                perGramAtUpperLabel.knowingOil(shares),
                gramsPerMillilitre,
                relativeDensityDoubt,
                solid,
                dropper);
    }

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

    /** Returns the grams of plant that a gram of it carries; 0 where that is not said. */
    public double gramsOfPlant() {
        Typed<PlantRatio> ratio = ingredient.ratio();
        return ratio == null || gramsPerMillilitre.isEmpty()
                ? 0.0
                : ratio.value().gramsPerMillilitre() / gramsPerMillilitre.getAsDouble();
    }

    /** Returns what a drop of it weighs, g: as it was weighed where that is said, else from its own dropper, else from the official one. */
    public double gramsPerDrop() {
        OptionalDouble weighed = weighedDrop();
        return weighed.isPresent() ? weighed.getAsDouble() : ruledDrop();
    }

    /** Returns what says how much a drop of it weighs. */
    public DropBasis dropBasis() {
        if (weighedDrop().isPresent()) {
            return DropBasis.WEIGHED;
        }
        return dropper == null ? DropBasis.OFFICIAL : DropBasis.OWN_DROPPER;
    }

    /** Returns within which part of its weight a drop of it lies in nine cases of ten: what says it, and how far drops of one dropper differ. */
    public double dropDoubt() {
        return switch (dropBasis()) {
            case WEIGHED -> Math.hypot(OfficialDropper.ALLOWANCE, densityDoubtOfDrop());
            case OWN_DROPPER ->
                Math.hypot(
                        OfficialDropper.ALLOWANCE,
                        Objects.requireNonNull(dropper).doubtOfOthers());
            case OFFICIAL -> OfficialDropper.RELATIVE_DOUBT;
        };
    }

    private double ruledDrop() {
        return DropLiquid.gramsPerDrop(name(), perGram) * (dropper == null ? 1.0 : dropper.times());
    }

    private double densityDoubtOfDrop() {
        Typed<Amount> drop = ingredient.drop();
        return drop != null && drop.value() instanceof Volume ? relativeDensityDoubt : 0.0;
    }

    private OptionalDouble weighedDrop() {
        Typed<Amount> drop = ingredient.drop();
        if (drop != null && drop.value() instanceof Mass mass) {
            return OptionalDouble.of(mass.grams());
        }
        return drop != null && drop.value() instanceof Volume volume && gramsPerMillilitre.isPresent()
                ? OptionalDouble.of(volume.millilitres() * gramsPerMillilitre.getAsDouble())
                : OptionalDouble.empty();
    }
}
