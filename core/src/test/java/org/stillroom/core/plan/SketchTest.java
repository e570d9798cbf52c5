package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.recipe.Aim;

@Tag("property")
class SketchTest {
    private static Kitchen medlar() {
        return new Kitchen()
                .volume("1.2 L")
                .strength("26..28 %")
                .sugar("170 g/L")
                .acidity("2 g/L")
                .bought("medlar oil", Kind.ESSENTIAL_OIL, "25 mg", null, null, null)
                .spirit("grain spirit", "63 %", "900 ml", null)
                .free("grain spirit", "spirit 96 %", "sugar", "citric acid")
                .amount("honey", "60 g")
                .dose("medlar oil", "4 drops/L")
                .makeUp("water");
    }

    @Test
    void itAnswersAsThePlannerDoes() {
        Plan plan = medlar().plan();
        Sketch.Answer answer = Sketch.of(plan).answer();
        assertThat(answer.grams())
                .isEqualTo(plan.lines().stream().map(PlannedLine::grams).toList());
        assertThat(answer.liquid()).isEqualTo(plan.liquid());
        assertThat(answer.reached()).isTrue();
    }

    @Test
    void itAnswersAsThePlannerDoesWhereTheTargetCannotBeReached() {
        for (String strength : List.of("75 %", "90 %")) {
            Plan plan = medlar().strength(strength).plan();
            Sketch.Answer answer = Sketch.of(plan).answer();
            assertThat(answer.grams())
                    .isEqualTo(plan.lines().stream().map(PlannedLine::grams).toList());
            assertThat(answer.reached()).isEqualTo(plan.reached());
        }
    }

    @Test
    void itKeepsTheAim() {
        for (Aim.What what : List.of(Aim.What.LEAST_SPIRIT, Aim.What.LEAST_WATER)) {
            Plan plan = medlar().aim(what).plan();
            assertThat(Sketch.of(plan).answer().grams())
                    .isEqualTo(plan.lines().stream().map(PlannedLine::grams).toList());
        }
    }

    @Test
    void askedForAnotherStrengthItComesToThat() {
        Sketch sketch = Sketch.of(medlar().plan()).asking(Asked.STRENGTH, Span.exactly(33));
        Essentials essentials = Essentials.of(sketch.answer().liquid().toGrams());
        assertThat(essentials.strength()).isCloseTo(33, within(1e-9));
        assertThat(essentials.sugar()).isCloseTo(170, within(1e-8));
        assertThat(essentials.millilitres()).isCloseTo(1200, within(1e-7));
    }

    @Test
    void madeOfItsNumbersAgainItAnswersTheSame() {
        Sketch sketch = Sketch.of(medlar().plan());
        Sketch again = new Sketch(sketch.lines(), sketch.asked(), sketch.sugarBasis(), sketch.withoutAim());
        assertThat(again.answer()).isEqualTo(sketch.answer());
    }
}
