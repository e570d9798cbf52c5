package org.stillroom.studio.usecase.essence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.recipefile.EssenceForm;
import org.stillroom.studio.recipefile.EssenceReader;
import org.stillroom.studio.recipefile.EssenceReading;
import org.stillroom.studio.recipefile.EssenceSheet;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.recipefile.SheetReader;
import org.stillroom.studio.recipefile.SheetReading;
import org.stillroom.studio.usecase.shelf.MadeHere;

class EssenceRecipeTest {
    private static final EssenceForm FORM = form();

    private final EssenceSheet sheet = ((EssenceReading.Understood) EssenceReader.read(FORM)).sheet();
    private final PlanEssence.Found found = PlanEssence.answer(sheet, Grounds.SHIPPED, Workings.NONE);
    private final PlanEssence.Made made = found.choices().get(0);

    private static EssenceForm form() {
        Map<String, String> typed = new LinkedHashMap<>(Map.of(
                "title", "Winter",
                "together", "0.4 g/L",
                "carrier", "96 %",
                "dose", "5 ml/L",
                "marks", "0.1 ml",
                "batch", "1 L"));
        String[][] oils = {{"lemon", "10", "20.5 mg"}, {"black pepper", "3", "23 mg"}, {"laurel", "2", "21.5 mg"}};
        for (int i = 0; i < oils.length; i++) {
            typed.put(EssenceForm.ofOil(i, "oil"), oils[i][0]);
            typed.put(EssenceForm.ofOil(i, "parts"), oils[i][1]);
            typed.put(EssenceForm.ofOil(i, "drop"), oils[i][2]);
        }
        return new EssenceForm(typed);
    }

    /** What the recipe makes is the essence that was planned: same volume, strength and constituents. */
    @Test
    @Tag("property")
    void theRecipeMakesTheEssence() {
        RecipeReading reading = new RecipeReader(OunceMeaning.US_FLUID).read(EssenceRecipe.text(sheet, found, made));
        Plan plan =
                ((Planning.Planned) Planner.plan(Making.alone(((RecipeReading.Understood) reading).recipe()))).plan();

        assertThat(plan.millilitres()).isCloseTo(made.essence(), within(0.005));
        assertThat(Essentials.of(plan.liquid().toGrams()).strength()).isCloseTo(made.strength(), within(0.02));
        holdsTheSame(plan.liquid().times(1000.0 / plan.millilitres()), 0.02);
    }

    /** A lot of it holds the same, as far as its sheet is rounded. */
    @Test
    @Tag("property")
    void theLotHoldsWhatTheEssenceHolds() {
        SheetReading<Ingredient> reading = new SheetReader(OunceMeaning.US_FLUID)
                .ingredient(
                        "Winter",
                        "essence",
                        MadeHere.fields(made.contents(), EssenceRecipe.oils(found, made), Map.of()));
        Ingredient lot = ((SheetReading.Understood<Ingredient>) reading).value();
        Contents perGram = Objects.requireNonNull(Resolution.of(lot).resolved()).perGram();
        double litre = 1000.0 / Essentials.of(perGram.toGrams()).millilitres();

        holdsTheSame(perGram.times(litre), 0.02);
    }

    private void holdsTheSame(Contents litre, double gramsPerLitre) {
        assertThat(litre.aroma().keySet()).isEqualTo(made.constituents().keySet());
        made.constituents()
                .forEach((cas, grams) ->
                        assertThat(litre.aroma().get(cas)).as(cas).isCloseTo(grams, within(gramsPerLitre)));
    }
}
