package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;

class MixingOrderTest {
    private static Plan plan() {
        return new Kitchen()
                .volume("1 L")
                .strength("28 %")
                .sugar("180 g/L")
                .contains("bay oil", Kind.ESSENTIAL_OIL, Map.of())
                .free("water", "sugar", "spirit 96 %")
                .dose("bay oil", "0.1 g/L")
                .plan();
    }

    @Test
    void everyLineIsUsedOnce() {
        List<Integer> used = MixingOrder.of(plan()).stream()
                .flatMap(step -> step.lines().stream())
                .toList();
        assertThat(used).containsExactlyInAnyOrder(0, 1, 2, 3);
    }

    @Test
    void oilsGoIntoTheSpiritAndCrystalsIntoTheWater() {
        List<MixingStep> steps = MixingOrder.of(plan());
        assertThat(steps.get(1).lines()).containsExactly(2);
        assertThat(steps.get(2).lines()).containsExactly(3);
        assertThat(steps.get(3).lines()).containsExactly(1, 0);
        assertThat(steps.get(3).what()).contains("Let it cool");
        assertThat(steps.get(4).what()).contains("before you measure");
    }

    @Test
    void theMarkComesLast() {
        List<MixingStep> steps = MixingOrder.of(new Kitchen()
                .volume("1 L")
                .makeUp("water")
                .amount("vodka 40 %", "700 ml")
                .amount("sugar", "200 g")
                .plan());
        assertThat(steps.get(steps.size() - 1).lines()).containsExactly(0);
    }

    private static final MixingStep JAR = new MixingStep(
            "Weigh the empty jar and write its weight on it.",
            "Then what is in it can be weighed later, even half full.",
            List.of(),
            MixingStep.Act.WEIGH_VESSEL);
    private static final String DISSOLVED =
            "Crystals do not dissolve in strong spirit; hot syrup would drive alcohol off.";
    private static final String SLOWLY = "Poured slowly, no part of it turns weak before the rest.";

    private static MixingStep step(String what, String why, Integer... lines) {
        return new MixingStep(what, why, List.of(lines), act(what));
    }

    private static MixingStep.Act act(String what) {
        return switch (what.substring(0, what.indexOf(' '))) {
            case "Dissolve", "Stir" -> MixingStep.Act.SECOND_JAR;
            case "Fill" -> MixingStep.Act.MAKE_UP;
            case "Let" -> MixingStep.Act.REST;
            case "Turn", "Rack" -> MixingStep.Act.OWN;
            default -> MixingStep.Act.POUR;
        };
    }

    @Test
    void aWholeLiqueurIsMixedInThisOrder() {
        Plan plan = new Kitchen()
                .contains("balm", Kind.FRESH_PLANT, Map.of(Substance.WATER, "80 %"))
                .contains("bay oil", Kind.ESSENTIAL_OIL, Map.of())
                .contains("milk", Kind.DAIRY, Map.of(Substance.LACTOSE, "5 %"))
                .rest("3 weeks")
                .steps("Turn the jar daily.", "Rack it.")
                .amount("milk", "20 g")
                .amount("water", "300 g")
                .amount("honey", "50 g")
                .amount("citric acid", "3 g")
                .amount("sugar", "100 g")
                .amount("vodka 40 %", "200 g")
                .amount("spirit 96 %", "200 g")
                .amount("bay oil", "100 mg")
                .amount("balm", "10 g")
                .plan();
        List<MixingStep> steps = MixingOrder.of(plan);
        MixingStep cool = steps.get(8);
        assertThat(steps)
                .containsExactly(
                        JAR,
                        step("Put balm into the jar.", "Plants are covered by the spirit that follows.", 8),
                        step("Pour spirit 96 %. No flame near; lid on.", "", 6),
                        step(
                                "Add bay oil and swirl until it is clear.",
                                "Oils dissolve in strong spirit; in weak spirit they would stay as a haze.",
                                7),
                        step("Add vodka 40 %.", "", 5),
                        step(
                                "Dissolve citric acid and sugar in the water, warm, in a second jar. Let it cool. Pour it in slowly, "
                                        + "stirring.",
                                DISSOLVED,
                                3,
                                4,
                                1),
                        step("Pour in honey slowly, stirring.", SLOWLY, 2),
                        step("Add milk slowly, stirring.", "", 0),
                        cool,
                        step("Let it rest for 3 weeks.", ""),
                        step("Turn the jar daily.", ""),
                        step("Rack it.", ""));
        assertThat(cool.act()).isEqualTo(MixingStep.Act.COOL);
        assertThat(cool.what()).isEqualTo("Let it cool to the room's temperature before you measure anything.");
        assertThat(cool.why())
                .matches("Mixing warms it by up to [1-9] °C, and a warm liquid measures too much and too strong\\.");
    }

    @Test
    void withoutCrystalsTheWaterThinsWhatIsThick() {
        Plan both = new Kitchen()
                .amount("water", "300 g")
                .amount("glycerol", "5 g")
                .amount("honey", "50 g")
                .amount("simple syrup 1:1", "50 g")
                .plan();
        assertThat(MixingOrder.of(both))
                .contains(step(
                        "Stir glycerol, honey and simple syrup 1:1 with the water in a second jar, then pour it in slowly, stirring.",
                        SLOWLY,
                        1,
                        2,
                        3,
                        0));
        Plan water = new Kitchen()
                .amount("vodka 40 %", "300 g")
                .amount("water", "5 g")
                .plan();
        assertThat(MixingOrder.of(water)).contains(step("Pour in water slowly, stirring.", SLOWLY, 1));
    }

    @Test
    void crystalsWithoutWaterTakeDays() {
        Plan plan = new Kitchen()
                .amount("vodka 40 %", "300 g")
                .amount("salt", "5 g")
                .plan();
        assertThat(MixingOrder.of(plan))
                .startsWith(
                        JAR,
                        step("Pour vodka 40 %. No flame near; lid on.", "", 0),
                        step(
                                "Add salt and shake now and then until nothing is left at the bottom.",
                                "There is no water of its own to dissolve it in: it takes days.",
                                1));
    }

    @Test
    void crystalsTakePartOfTheWaterThatGoesToTheMark() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .amount("vodka 40 %", "300 g")
                .amount("sugar", "50 g")
                .makeUp("water")
                .plan();
        assertThat(MixingOrder.of(plan))
                .contains(
                        step(
                                "Dissolve sugar in part of the water, warm, in a second jar. Let it cool. Pour it in slowly, stirring.",
                                DISSOLVED,
                                1),
                        step("Fill up to the mark with water, mix, and fill up again.", "It shrinks as it mixes.", 2));
    }

    @Test
    void aSpiritToTheMarkAfterCrystalsIsNoWater() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .amount("sugar", "50 g")
                .makeUp("spirit 96 %")
                .plan();
        List<MixingStep> steps = MixingOrder.of(plan);
        assertThat(steps.get(1).what())
                .isEqualTo("Add sugar and shake now and then until nothing is left at the bottom.");
        assertThat(steps.get(steps.size() - 1).what())
                .isEqualTo("Fill up to the mark with spirit 96 %, mix, and fill up again.");
    }

    @Test
    void weakWineIsNoSpiritAndAnEssenceIsAnOil() {
        Plan plan = new Kitchen()
                .spirit("weak spirit", "30 %", null, null)
                .ingredient(Ingredient.named("bay essence", Kind.ESSENCE)
                        .ofStrength(Kitchen.typed(Kitchen.TEXT.strength("90 %"))))
                .amount("weak spirit", "100 g")
                .amount("bay essence", "5 g")
                .plan();
        // 30 % vol is 24.6 % by mass, below the 30 % from which oils dissolve
        assertThat(MixingOrder.of(plan))
                .startsWith(
                        JAR,
                        step(
                                "Add bay essence and swirl until it is clear.",
                                "Oils dissolve in strong spirit; in weak spirit they would stay as a haze.",
                                1),
                        step("Add weak spirit slowly, stirring.", "", 0));
    }

    @Test
    void theStrongestSpiritIsPouredFirst() {
        Plan plan = new Kitchen()
                .amount("vodka 40 %", "10 g")
                .amount("spirit 96 %", "10 g")
                .spirit("middle spirit", "60 %", null, null)
                .amount("middle spirit", "10 g")
                .plan();
        assertThat(MixingOrder.of(plan))
                .startsWith(
                        JAR,
                        step("Pour spirit 96 %. No flame near; lid on.", "", 1),
                        step("Add middle spirit and vodka 40 %, the strongest first.", "", 2, 0));
    }

    @Test
    void whatTakesNothingAndWhatDoesNotWarmIsNotMentioned() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .strength("40 %")
                .free("vodka 40 %", "water")
                .plan();
        assertThat(MixingOrder.of(plan)).containsExactly(JAR, step("Pour vodka 40 %. No flame near; lid on.", "", 0));
    }
}
