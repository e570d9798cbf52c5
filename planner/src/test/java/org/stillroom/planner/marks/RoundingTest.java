package org.stillroom.planner.marks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.MeasureKind;

class RoundingTest {
    /** Returns a recipe that can be reached, with instruments from coarse to fine. */
    private static Kitchen anyKitchen(Random random) {
        Kitchen kitchen = new Kitchen()
                .volume(QuantityWords.fixed(200 + random.nextInt(1300), 0) + " ml")
                .strength(QuantityWords.fixed(18 + random.nextInt(18), 0) + " %")
                .sugar(QuantityWords.fixed(60 + random.nextInt(160), 0) + " g/L");
        switch (random.nextInt(4)) {
            case 0 -> kitchen.marked(MeasureKind.SCALE, "1 g", null);
            case 1 -> kitchen.marked(MeasureKind.SCALE, "5 g", null).marked(MeasureKind.CYLINDER, "10 ml", "500 ml");
            case 2 -> kitchen.sized(MeasureKind.CUP).sized(MeasureKind.SPOON);
            default -> kitchen.sized(MeasureKind.JIGGER, "45 ml", "22.5 ml").sized(MeasureKind.CUP);
        }
        if (random.nextBoolean()) {
            kitchen.dose("glycerol", QuantityWords.fixed(3 + random.nextInt(8), 0) + " g/L", null);
        }
        kitchen.free(random.nextBoolean() ? "spirit 96 %" : "spirit 70 %");
        kitchen.free(random.nextBoolean() ? "white sugar" : "simple syrup 1:1");
        return random.nextInt(3) == 0 ? kitchen.makeUp("water") : kitchen.free("water");
    }

    private static List<Rounding.Choice> choices(Plan plan) {
        Bench bench = new Bench(plan.recipe(), new ArrayList<>());
        List<Rounding.Choice> choices = new ArrayList<>();
        for (int i = 0; i < plan.lines().size(); i++) {
            LineAmount amount = plan.lines().get(i).line().amount();
            boolean free = amount instanceof LineAmount.Free;
            if ((free || amount instanceof LineAmount.PerLitre)
                    && plan.lines().get(i).grams() > 1e-6) {
                Portion portion = Portion.of(plan.lines().get(i), Temperature.TWENTY_CELSIUS);
                choices.add(new Rounding.Choice(i, portion, bench.forLine(portion, ""), free ? 2 : 1));
            }
        }
        return choices;
    }

    private static double distance(Batch batch, List<Rounding.Choice> choices, List<Take> takes) {
        double[] grams = batch.exactGrams();
        for (int i = 0; i < takes.size(); i++) {
            grams[choices.get(i).line()] = takes.get(i).grams();
        }
        return batch.distance(grams);
    }

    /** Returns the least distance of all combinations, each judged by the real forward model. */
    private static double bruteForce(Batch batch, List<Rounding.Choice> choices, List<Take> taken) {
        if (taken.size() == choices.size()) {
            return distance(batch, choices, taken);
        }
        Rounding.Choice next = choices.get(taken.size());
        double least = Double.POSITIVE_INFINITY;
        for (Take take : next.instrument().near(next.portion(), next.reach())) {
            List<Take> more = new ArrayList<>(taken);
            more.add(take);
            least = Math.min(least, bruteForce(batch, choices, more));
        }
        return least;
    }

    @Test
    @Tag("property")
    void comesAsCloseAsTryingEveryCombination() {
        int lines = 0;
        for (int seed = 0; seed < 200; seed++) {
            Plan plan = anyKitchen(new Random(seed)).plan();
            Batch batch = new Batch(plan);
            List<Rounding.Choice> choices = choices(plan);
            lines += choices.size();
            double found = distance(batch, choices, Rounding.together(batch, choices));
            double least = bruteForce(batch, choices, List.of());
            assertThat(found).as("seed %d", seed).isCloseTo(least, within(1e-9 * (1.0 + least)));
        }
        assertThat(lines).isGreaterThan(500);
    }

    @Test
    @Tag("property")
    void isNeverWorseThanRoundingEachByItselfAndAtTimesBetter() {
        int better = 0;
        for (int seed = 1000; seed < 1500; seed++) {
            Plan plan = anyKitchen(new Random(seed)).plan();
            Batch batch = new Batch(plan);
            List<Rounding.Choice> choices = choices(plan);
            double together = distance(batch, choices, Rounding.together(batch, choices));
            List<Take> alone = choices.stream()
                    .map(choice -> choice.instrument().nearest(choice.portion()))
                    .toList();
            double apart = distance(batch, choices, alone);
            assertThat(together).as("seed %d", seed).isLessThanOrEqualTo(apart);
            better += together < 0.99 * apart ? 1 : 0;
        }
        assertThat(better).isGreaterThan(50);
    }

    @Test
    @Tag("property")
    void volumeStaysExactWhereItIsMadeUpToTheMark() {
        for (int seed = 0; seed < 100; seed++) {
            Plan plan = new Kitchen()
                    .volume("750 ml")
                    .strength(22 + seed % 9 + " %")
                    .sugar(100 + seed + " g/L")
                    .sized(MeasureKind.CUP)
                    .free("spirit 96 %", "white sugar")
                    .makeUp("water")
                    .plan();
            Measured measured = Measuring.of(plan);
            assertThat(measured.effect().millilitres()).as("seed %d", seed).isCloseTo(0.0, within(1e-8));
        }
    }

    @Test
    void manyLinesAreStillRoundedTogether() {
        Kitchen kitchen =
                new Kitchen().volume("2 L").strength("30 %").sugar("200 g/L").acidity("3 g/L");
        kitchen.marked(MeasureKind.SCALE, "1 g", null);
        for (int i = 0; i < 20; i++) {
            kitchen.dose("glycerol", QuantityWords.fixed(1.0 + 0.37 * i, 2) + " g/L", null);
        }
        Plan plan = kitchen.free("spirit 96 %", "white sugar", "citric acid", "water")
                .plan();
        Batch batch = new Batch(plan);
        List<Rounding.Choice> choices = choices(plan);
        List<Take> alone = choices.stream()
                .map(choice -> choice.instrument().nearest(choice.portion()))
                .toList();
        double together = distance(batch, choices, Rounding.together(batch, choices));
        assertThat(together).isLessThanOrEqualTo(distance(batch, choices, alone));
    }
}
