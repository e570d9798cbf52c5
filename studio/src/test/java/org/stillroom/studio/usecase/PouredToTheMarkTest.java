package org.stillroom.studio.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.stillroom.core.gauging.Gauged;
import org.stillroom.core.gauging.Gauging;
import org.stillroom.core.gauging.Thermometer;
import org.stillroom.core.liquid.ModelDoubt;
import org.stillroom.core.plan.Band;
import org.stillroom.core.plan.Bands;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;

/** What is known of a vessel that was made up to a mark, held against batches drawn with the same errors. */
class PouredToTheMarkTest {
    private static WorkedPlan plan(String lastLine) {
        String text = """
                stillroom: 1
                title: Rowan and oat straw
                target: {volume: 2 L, strength: 28 %, sugar: 180 g/L}
                ingredients:
                  - {name: neutral spirit, kind: spirit, strength: 96 %, tolerance: 0.3 %}
                measures:
                  - {name: jug, kind: cylinder, marks: 10 ml, holds: 3 L, tolerance: 10 ml}
                lines:
                  - {use: neutral spirit, amount: free}
                  - {use: white sugar, amount: free}
                  - LAST
                """.replace("LAST", lastLine);
        RecipeReading.Understood read = (RecipeReading.Understood) new RecipeReader(OunceMeaning.US_FLUID).read(text);
        PlanRecipe.Outcome plan = PlanRecipe.answer(new Making(read.recipe(), Map.of()), null, Workings.NONE);
        return ((PlanRecipe.Outcome.Worked) plan).plan();
    }

    private static Gauged gauged(WorkedPlan plan) {
        return Gauging.of(List.of(), GaugeVessel.poured(plan.measured()), Thermometer.EXACT)
                .orElseThrow();
    }

    private static double half(Band band) {
        return 0.5 * (band.high() - band.low());
    }

    @Test
    void theVolumeIsThatOfTheMark() {
        WorkedPlan plan = plan("{use: water, amount: make up}");
        Gauged gauged = gauged(plan);
        Bands bands = Objects.requireNonNull(plan.bands());
        // Gauging holds the volume model for in doubt here too, where the drawn batches let it move the last line
        // alone.
        ModelDoubt model =
                ModelDoubt.of(plan.plan().liquid().toGrams(), plan.plan().millilitres());
        double expected = Math.hypot(
                half(bands.volume()),
                model.relativeVolumeHalfWidth() * plan.plan().millilitres());
        assertThat(Objects.requireNonNull(gauged.volume()).halfWidth()).isCloseTo(expected, withinPercentage(10.0));
        assertThat(gauged.strength().halfWidth()).isCloseTo(half(bands.strength()), withinPercentage(10.0));
    }

    @Test
    void withoutAMarkEveryMeasureMovesTheVolume() {
        Gauged poured = gauged(plan("{use: water, amount: free}"));
        Gauged toTheMark = gauged(plan("{use: water, amount: make up}"));
        assertThat(Objects.requireNonNull(poured.volume()).halfWidth())
                .isGreaterThan(1.3 * Objects.requireNonNull(toTheMark.volume()).halfWidth());
    }
}
