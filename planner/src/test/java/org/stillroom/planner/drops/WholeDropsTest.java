package org.stillroom.planner.drops;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class WholeDropsTest {
    /** Three oils 10 : 3 : 2 by mass, 0.40 g/L together, for batches of 1 L that take 5 mL of the essence. */
    private static final Essence STORY =
            essence(new double[] {10, 3, 2}, new double[] {20.5, 23.0, 21.5}, 0.40, 0.02, 10);

    private static Essence essence(
            double[] parts, double[] milligrams, double gramsPerBatch, double tolerance, int most) {
        double sum = IntStream.range(0, parts.length).mapToDouble(i -> parts[i]).sum();
        List<OilDrop> oils = new ArrayList<>();
        for (int i = 0; i < parts.length; i++) {
            oils.add(new OilDrop("oil " + (i + 1), parts[i] / sum, milligrams[i] / 1000.0));
        }
        return new Essence(oils, gramsPerBatch, 5.0, 0.1, tolerance, most);
    }

    @Test
    void theThreeOilsComeOutAsTheirStoryIsTold() {
        assertThat(STORY.dropsPerBatch().get(0)).isCloseTo(13.0, within(0.01));
        assertThat(STORY.dropsPerBatch().get(1)).isCloseTo(3.48, within(0.005));
        assertThat(STORY.dropsPerBatch().get(2)).isCloseTo(2.48, within(0.005));
        List<Choice> choices = WholeDrops.choices(STORY, 5);
        Choice best = choices.get(0);
        assertThat(best.drops()).containsExactly(26, 7, 5);
        assertThat(best.grams()).isCloseTo(0.8015, within(1e-9));
        assertThat(best.batches()).isEqualTo(2);
        assertThat(best.worstError()).isCloseTo(0.006, within(0.0005));
        assertThat(best.toleranceKept()).isTrue();
        assertThat(choices.get(1).drops()).containsExactly(52, 14, 10);
        assertThat(choices.get(1).batches()).isEqualTo(4);
    }

    @Test
    void dropsForOneBatchAloneMissAnOilByASixth() {
        Choice thirteen = Choice.of(STORY.of(STORY.oils()), List.of(13, 3, 2));
        double byWanted = 2 * 21.5 / (0.4 * 1000 * 2 / 15) - 1.0;
        assertThat(thirteen.worstError()).isBetween(0.14, 0.16);
        assertThat(byWanted).isBetween(-0.20, -0.15);
        assertThat(thirteen.toleranceKept()).isFalse();
    }

    @Test
    void whereNothingKeepsTheToleranceTheNearestIsShownAndMarked() {
        Essence narrow = essence(new double[] {10, 3, 2}, new double[] {20.5, 23.0, 21.5}, 0.40, 0.0001, 2);
        List<Choice> choices = WholeDrops.choices(narrow, 3);
        assertThat(choices).isNotEmpty().noneMatch(Choice::toleranceKept);
        assertThat(choices.get(0).drops()).containsExactly(26, 7, 5);
        assertThat(choices.stream().map(Choice::worstError).toList()).isSorted();
    }

    @Test
    @Tag("property")
    void itFindsWhatTryingEverythingFinds() {
        long seed = 20260521L;
        Random random = new Random(seed);
        for (int run = 0; run < 40; run++) {
            int oils = 2 + random.nextInt(3);
            double[] parts = random.doubles(oils, 1.0, 8.0).toArray();
            double[] milligrams = random.doubles(oils, 12.0, 40.0).toArray();
            Essence essence =
                    essence(parts, milligrams, 0.1 + 0.12 * random.nextDouble(), 0.005 + 0.05 * random.nextDouble(), 3);
            List<Choice> all = everything(essence);
            List<Choice> found = WholeDrops.choices(essence, 5).stream()
                    .filter(Choice::toleranceKept)
                    .toList();
            assertThat(found).as("seed " + seed + ", run " + run).isEqualTo(all.subList(0, Math.min(5, all.size())));
        }
    }

    /** 5 drops cannot be split in 3: what serves the fewest batches is found as trying everything finds it. */
    @Test
    @Tag("property")
    void theEssenceForTheFewestBatchesIsTheSmallestThatTryingEverythingFinds() {
        long seed = 20261126L;
        Random random = new Random(seed);
        int found = 0;
        for (int run = 0; run < 40; run++) {
            double[] parts = random.doubles(3, 1.0, 8.0).toArray();
            double[] milligrams = random.doubles(3, 12.0, 40.0).toArray();
            Essence essence = essence(parts, milligrams, 0.1 + 0.12 * random.nextDouble(), 0.03, 4);
            Choice fewest = everything(essence).stream()
                    .min(Comparator.comparingInt(Choice::batches).thenComparing(Choice.BETTER_FIRST))
                    .orElse(null);
            found += fewest == null ? 0 : 1;
            assertThat(WholeDrops.smallest(essence))
                    .as("seed " + seed + ", run " + run)
                    .isEqualTo(fewest);
        }
        assertThat(found).isBetween(5, 40);
    }

    /** Every number of drops up to what the largest essence can hold, judged one by one. */
    private static List<Choice> everything(Essence essence) {
        List<Choice> kept = new ArrayList<>();
        double most = (essence.mostBatches() + 1) * essence.gramsPerBatch();
        count(essence, new ArrayList<>(), most, kept);
        kept.sort(Choice.BETTER_FIRST);
        return kept;
    }

    private static void count(Essence essence, List<Integer> drops, double most, List<Choice> kept) {
        int place = drops.size();
        if (place == essence.oils().size()) {
            Choice choice = Choice.of(essence, drops);
            boolean serves = choice.batches() >= 1 && choice.batches() <= essence.mostBatches();
            if (serves && choice.toleranceKept()) {
                kept.add(choice);
            }
            return;
        }
        for (int n = 1; n * essence.oils().get(place).gramsPerDrop() <= most; n++) {
            drops.add(n);
            count(essence, drops, most, kept);
            drops.remove(place);
        }
    }

    /** How long it takes is measured by a benchmark, not here. */
    @Test
    void sixOilsAreFoundTheBestFirst() {
        Essence six =
                essence(new double[] {12, 7, 5, 3, 2, 1.3}, new double[] {18.9, 21, 25, 20, 24.7, 27.5}, 0.8, 0.02, 10);
        assertThat(WholeDrops.choices(six, 5))
                .hasSize(5)
                .allMatch(Choice::toleranceKept)
                .isSortedAccordingTo(Choice.BETTER_FIRST);
    }

    @Test
    void anOilThatIsTooFewDropsIsDilutedFirst() {
        PreDilution diluted = Objects.requireNonNull(PreDilution.of(STORY, 0.0158));
        assertThat(diluted.choice().toleranceKept()).isTrue();
        assertThat(diluted.choice().batches()).isEqualTo(1);
        assertThat(diluted.dilutions()).extracting(PreDilution.Dilution::oil).containsExactly(1, 2);
        PreDilution.Dilution first = diluted.dilutions().get(0);
        assertThat(first.oneIn()).isEqualTo(10);
        assertThat(first.spirit()).isCloseTo(9 * first.drops() * 0.023, within(1e-12));
        assertThat(first.drops() * 0.023 * 10).isGreaterThanOrEqualTo(2.0);
    }

    @Test
    void aDilutionIsCountedInFiveToSixtyDropsHoweverNarrowTheTolerance() {
        Random random = new Random(11);
        int offered = 0;
        for (int run = 0; run < 100; run++) {
            Essence essence = essence(
                    random.doubles(3, 1.0, 10.0).toArray(),
                    random.doubles(3, 15.0, 30.0).toArray(),
                    0.05 + 0.5 * random.nextDouble(),
                    0.001 + 0.03 * random.nextDouble(),
                    3);
            PreDilution diluted = PreDilution.of(essence, 0.0158);
            if (diluted != null) {
                offered++;
                assertThat(diluted.dilutions())
                        .as("seed 11, run " + run)
                        .allMatch(each -> each.oneIn() == 10 || each.oneIn() == 100)
                        .allMatch(each -> each.drops() >= 5, "made of five drops of the oil or more")
                        .extracting(each -> diluted.choice().drops().get(each.oil()))
                        .allMatch(drops -> drops >= 5 && drops <= 60);
            }
        }
        assertThat(offered).isBetween(20, 100);
    }

    @Test
    void whereWholeDropsDoNothingIsDiluted() {
        Essence even = essence(new double[] {2, 1}, new double[] {20, 20}, 0.6, 0.01, 5);
        assertThat(PreDilution.of(even, 0.0158)).isNull();
    }

    @Test
    void whatCannotBeAskedIsRefused() {
        assertThatThrownBy(() -> new OilDrop("lemon", 0.0, 0.02)).hasMessageContaining("lemon");
        assertThatThrownBy(() -> new OilDrop("lemon", 0.5, 20)).hasMessageContaining("below 1 g");
        assertThatThrownBy(() -> new Essence(List.of(new OilDrop("a", 0.5, 0.02)), 1, 1, 1, 0.1, 1))
                .hasMessageContaining("not to 0.5");
    }
}
