package org.stillroom.studio.usecase.essence;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Purpose;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.recipe.Target;
import org.stillroom.planner.drops.OilDrop;
import org.stillroom.studio.recipefile.EssenceSheet;
import org.stillroom.studio.recipefile.RecipeWriter;

/** An essence in whole drops as a recipe: so many drops of each oil, and carrier up to the mark. */
public final class EssenceRecipe {
    private EssenceRecipe() {}

    /** Returns the recipe as the text of a recipe file, from which others take the essence. */
    public static String text(EssenceSheet sheet, PlanEssence.Found found, PlanEssence.Made made) {
        return RecipeWriter.write(of(sheet, found, made));
    }

    static Recipe of(EssenceSheet sheet, PlanEssence.Found found, PlanEssence.Made made) {
        List<Ingredient> ingredients = new ArrayList<>();
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < found.asked().oils().size(); i++) {
            OilDrop oil = found.asked().oils().get(i);
            Mass drop = new Mass(oil.gramsPerDrop());
            Drops drops = new Drops(made.choice().drops().get(i));
            ingredients.add(Ingredient.named(oil.name(), Kind.ESSENTIAL_OIL).ofDrop(milligrams(drop)));
            Typed<Amount> amount = new Typed<>(QuantityWords.metric(drops), drops);
            lines.add(new Line(oil.name(), new LineAmount.Fixed(amount), null, null));
        }
        String carrier = "spirit " + sheet.carrier().text();
        ingredients.add(Ingredient.named(carrier, Kind.SPIRIT).ofStrength(sheet.carrier()));
        lines.add(new Line(carrier, new LineAmount.MakeUp(), null, null));
        Typed<Span> volume = new Typed<>(millilitres(made.essence()), Span.exactly(made.essence()));
        Target target = new Target(volume, null, null, null, SugarBasis.AS_DISSOLVED, null);
        return Recipe.plain(sheet.title(), target, ingredients, lines).making(Purpose.ESSENCE);
    }

    /** Returns g/L of each oil. */
    static Map<String, Double> oils(PlanEssence.Found found, PlanEssence.Made made) {
        Map<String, Double> oils = new LinkedHashMap<>();
        for (int i = 0; i < found.asked().oils().size(); i++) {
            oils.put(found.asked().oils().get(i).name(), made.oils().get(i));
        }
        return oils;
    }

    private static Typed<Amount> milligrams(Mass drop) {
        return new Typed<>(QuantityWords.fixed(1000.0 * drop.grams(), 2) + " mg", drop);
    }

    private static String millilitres(double volume) {
        return QuantityWords.fixed(volume, 2) + " ml";
    }
}
