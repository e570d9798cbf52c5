package org.stillroom.core.recipe;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.quantity.Wait;

/**
 * What a maker asks for, as written: it stands alone, and every quantity keeps the text it was typed in.
 *
 * @param title name of what is made
 * @param makes whether it is a drink or an essence, or null where nothing is said, which is a drink
 * @param target what it is to be
 * @param ingredients what the maker owns or buys; built-in generics may be used without being listed
 * @param lines what goes in
 * @param measures what it is measured with; empty takes a scale of 0.1 g, and says so
 * @param ounce what "oz" means in this recipe, or null for the US fluid ounce or what the settings say
 * @param room temperature at which volumes are poured; null is 20 °C
 * @param vessel what it is mixed in, or null
 * @param aim what is to be least where several plans fit; null is least cost where all prices are known, else the
 *     fewest and plainest
 * @param rest how long the result rests before it is used, or null
 * @param loss what the result loses before it is used, or null
 * @param ph pH of what it makes as it was last measured, 0 to 14, or null where nobody measured it
 * @param treatment what is done so that it keeps, or null where nothing is said
 * @param steps the maker's own steps, after the ones that Stillroom works out
 * @param notes anything else, or null
 */
public record Recipe(
        String title,
        @Nullable Purpose makes,
        Target target,
        List<Ingredient> ingredients,
        List<Line> lines,
        List<Measure> measures,
        @Nullable Typed<OunceMeaning> ounce,
        @Nullable Typed<Temperature> room,
        @Nullable Typed<Volume> vessel,
        @Nullable Aim aim,
        @Nullable Typed<Wait> rest,
        @Nullable Typed<Loss> loss,
        @Nullable Typed<Double> ph,
        @Nullable Treatment treatment,
        List<String> steps,
        @Nullable String notes) {
    public Recipe {
        ingredients = List.copyOf(ingredients);
        lines = List.copyOf(lines);
        measures = List.copyOf(measures);
        steps = List.copyOf(steps);
    }

    /** Returns a recipe that says no more than what it is to be and what goes in. */
    public static Recipe plain(String title, Target target, List<Ingredient> ingredients, List<Line> lines) {
        return new Recipe(
                title,
                null,
                target,
                ingredients,
                lines,
                List.of(),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                List.of(),
                null);
    }

    /** Returns whether it says that what it makes is dosed into drinks and not drunk as it is. */
    public boolean isEssence() {
        return makes == Purpose.ESSENCE;
    }

    /** Returns the recipe saying that it makes something else. */
    public Recipe making(Purpose other) {
        return new Recipe(
                title,
                other,
                target,
                ingredients,
                lines,
                measures,
                ounce,
                room,
                vessel,
                aim,
                rest,
                loss,
                ph,
                treatment,
                steps,
                notes);
    }

    /** Returns what is known of the drink that it makes. */
    public Condition condition() {
        return new Condition(ph == null ? null : ph.value(), treatment == null ? Treatment.NONE : treatment);
    }

    /** Returns the recipe with something else to be least where several plans fit. */
    public Recipe aimedAt(Aim other) {
        return new Recipe(
                title,
                makes,
                target,
                ingredients,
                lines,
                measures,
                ounce,
                room,
                vessel,
                other,
                rest,
                loss,
                ph,
                treatment,
                steps,
                notes);
    }

    /** Returns the dropper that a line is dosed with in drops: the one that it names, else the first there is; null where there is none. */
    public @Nullable Measure dropper(Line line) {
        Measure first = null;
        for (Measure measure : measures) {
            if (measure.kind() == MeasureKind.DROPPER) {
                if (measure.name().equals(line.with())) {
                    return measure;
                }
                first = first == null ? measure : first;
            }
        }
        return first;
    }

    /** Returns the recipe measured with other measures. */
    public Recipe measuredWith(List<Measure> others) {
        return new Recipe(
                title,
                makes,
                target,
                ingredients,
                lines,
                others,
                ounce,
                room,
                vessel,
                aim,
                rest,
                loss,
                ph,
                treatment,
                steps,
                notes);
    }

    /** Returns the recipe with other lines. */
    public Recipe withLines(List<Line> others) {
        return new Recipe(
                title,
                makes,
                target,
                ingredients,
                others,
                measures,
                ounce,
                room,
                vessel,
                aim,
                rest,
                loss,
                ph,
                treatment,
                steps,
                notes);
    }

    /** Returns the recipe with other ingredients listed. */
    public Recipe withIngredients(List<Ingredient> others) {
        return new Recipe(
                title, makes, target, others, lines, measures, ounce, room, vessel, aim, rest, loss, ph, treatment,
                steps, notes);
    }
}
