package org.stillroom.core.plan;

import java.util.OptionalDouble;
import org.stillroom.core.ingredient.Aroma;
import org.stillroom.core.ingredient.Resolved;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.recipe.Line;

/**
 * How much of an ingredient a plan takes.
 *
 * @param line the recipe's line
 * @param ingredient what it is
 * @param grams what to take, g
 */
public record PlannedLine(Line line, Resolved ingredient, double grams) {
    /** Returns the name as the maker wrote it on the line. */
    public String name() {
        return line.use();
    }

    /** Returns every word by which what is in it may be recognised: its name, and the plant and the oils that its maker says. */
    public String words() {
        StringBuilder words = new StringBuilder(name());
        String plant = ingredient.ingredient().plant();
        if (plant != null) {
            words.append("; ").append(plant);
        }
        Typed<Aroma> aroma = ingredient.ingredient().aroma();
        if (aroma != null) {
            aroma.value().parts().forEach(part -> words.append("; ").append(part.name()));
        }
        return words.toString();
    }

    /** Returns the volume at 20 °C in mL, or empty for what is weighed as a solid. */
    public OptionalDouble millilitres() {
        return ingredient.solid() ? OptionalDouble.empty() : measurable();
    }

    /** Returns the volume that a measure would show at 20 °C, mL, solids by their bulk; empty when that is not known. */
    public OptionalDouble measurable() {
        OptionalDouble density = ingredient.gramsPerMillilitre();
        return density.isPresent() ? OptionalDouble.of(grams / density.getAsDouble()) : density;
    }

    /** Returns the volume in mL at the temperature at which it is poured, from −20 to 40 °C; empty for solids. */
    public OptionalDouble millilitresAt(Temperature room) {
        OptionalDouble atTwenty = millilitres();
        if (atTwenty.isEmpty()) {
            return atTwenty;
        }
        double[] perGram = ingredient.perGram().toGrams();
        double expansion = VolumeModel.at(room).millilitres(perGram)
                / VolumeModel.atTwenty().millilitres(perGram);
        return OptionalDouble.of(atTwenty.getAsDouble() * expansion);
    }
}
