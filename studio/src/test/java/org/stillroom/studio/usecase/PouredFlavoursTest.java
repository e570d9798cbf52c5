package org.stillroom.studio.usecase;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.stillroom.core.plan.Correction.Added;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Workings;
import org.stillroom.planner.marks.Measured;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;

/** Which of what was poured is a dose of flavour. */
class PouredFlavoursTest {
    @Test
    void tincturesAndDistillatesCountWhereTheyAreDosedNotWhereTheyAreTheBase() {
        String text = """
                stillroom: 1
                title: Juniper in pear
                target: {volume: 1 L, strength: 30 %, sugar: 150 g/L}
                ingredients:
                  - {name: pear brandy, kind: distillate, strength: 45 %}
                  - {name: juniper tincture, kind: tincture, strength: 60 %}
                lines:
                  - {use: pear brandy, amount: free}
                  - {use: juniper tincture, amount: 40 ml}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: free}
                """;
        RecipeReading.Understood read = (RecipeReading.Understood) new RecipeReader(OunceMeaning.US_FLUID).read(text);
        PlanRecipe.Outcome plan = PlanRecipe.answer(new Making(read.recipe(), Map.of()), null, Workings.NONE);
        Measured poured = ((PlanRecipe.Outcome.Worked) plan).plan().measured();
        List<Added> flavours = PouredFlavours.of(Objects.requireNonNull(poured), 1.0);
        assertThat(flavours).hasSize(1);
        assertThat(flavours.get(0).addition().name()).isEqualTo("juniper tincture");
        assertThat(flavours.get(0).grams()).isBetween(35.0, 38.0);
    }
}
