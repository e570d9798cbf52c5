package org.stillroom.core.extraction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.Random;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.extraction.Maceration.Charge;
import org.stillroom.core.extraction.Maceration.Pressing;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.SugarLimit;
import org.stillroom.core.quantity.AlcoholByVolume;

/** Sugar draws the juice of fruit: one liquid, and nothing of it is lost. */
class FruitInSugarTest {
    private static final double NOTHING = 1e-9;

    private static Contents spirit(double litres, double strength) {
        return MadeUp.spirit(AlcoholByVolume.at20(strength)).times(litres);
    }

    private static List<Charge> fruit(String name, double grams) {
        return List.of(new Charge(Objects.requireNonNull(Plants.find(name), name), grams));
    }

    /** A kilogram of sour cherries (86.13 % water, 8.49 % sugar) in a litre of 70 % vol. */
    private static Maceration cherries(Pressing pressing) {
        return Maceration.of(spirit(1.0, 70), fruit("sour cherry", 1000), pressing);
    }

    private static Maceration pouredOff(Contents spirit, List<Charge> fruit) {
        double plump = Essentials.of(Maceration.juice(fruit).toGrams()).millilitres();
        return Maceration.holding(spirit, fruit, plump);
    }

    /**
     * Own arithmetic outside this program, from the printed coefficients of OIML R 22 and of the sucrose formula: 400 g of sugar on the
     * cherries. All digits shown agree.
     */
    @Test
    void cherriesAndSugarComeOutAsTheirStoryIsTold() {
        Maceration sweet = cherries(Pressing.BY_HAND).sugared(400);
        Essentials comes = Essentials.of(sweet.drained().toGrams());
        assertThat(sweet.volume()).isCloseTo(1737.42, within(0.005));
        assertThat(comes.strength()).isCloseTo(32.7498, within(0.00005));
        assertThat(comes.sugar()).isCloseTo(226.862, within(0.0005));
        assertThat(sweet.undissolved()).isZero();
        assertThat(sweet.held()).isEqualTo(400.0);
        assertThat(cherries(Pressing.PRESSED).sugared(400).volume()).isCloseTo(1987.42, within(0.005));
        Contents juice = Maceration.holding(Contents.NONE, fruit("sour cherry", 1000), 0.0)
                .sugared(400)
                .liquid();
        assertThat(Essentials.of(juice.toGrams()).sugar()).isCloseTo(416.5, within(0.05));
        Finishing liqueur = Finishing.of(sweet.drained(), new Finishing.Wanted(2400, 25, 220), spirit(1, 96));
        assertThat(liqueur.spirit()).isCloseTo(32.29, within(0.005));
        assertThat(liqueur.sugar()).isCloseTo(133.84, within(0.005));
        assertThat(liqueur.water()).isCloseTo(551.35, within(0.005));
    }

    /** As above: poured off first, the cherries hold 915 mL at 37.05 % vol; the sugar draws 765 mL of them. */
    @Test
    void sugarOnFruitThatWasInSpiritBringsBackWhatItHeld() {
        Maceration poured = pouredOff(spirit(1.0, 70), fruit("sour cherry", 1000));
        assertThat(poured.held()).isCloseTo(915.19, within(0.005));
        assertThat(poured.volume()).isCloseTo(973.97, within(0.005));
        assertThat(poured.strength()).isCloseTo(37.05, within(0.005));
        Maceration back = poured.marcSugared(400, 400);
        assertThat(back.volume()).isCloseTo(764.7, within(0.05));
        assertThat(back.strength()).isCloseTo(29.12, within(0.005));
        Essentials all = Essentials.of(poured.drained().plus(back.drained()).toGrams());
        assertThat(all.millilitres()).isCloseTo(1737.7, within(0.05));
        assertThat(all.strength()).isCloseTo(33.58, within(0.005));
        assertThat(all.sugar()).isCloseTo(191.9, within(0.05));
    }

    @Test
    @Tag("property")
    void withoutSugarNothingChanges() {
        Maceration plain = cherries(Pressing.BY_HAND);
        assertThat(plain.sugared(0)).isEqualTo(plain);
        Maceration trace = plain.sugared(1e-9);
        assertThat(trace.volume()).isCloseTo(plain.volume(), within(NOTHING));
        assertThat(trace.strength()).isCloseTo(plain.strength(), within(NOTHING));
    }

    @Test
    @Tag("property")
    void ethanolWaterAndSugarAreKept() {
        Random random = new Random(41);
        List<String> names = List.of("raspberry", "sour cherry", "sloe", "plum", "raisins", "green walnut");
        for (int i = 0; i < 200; i++) {
            String seed = "seed 41, " + i;
            String name = names.get(random.nextInt(names.size()));
            List<Charge> fruit = fruit(name, 200 + 800 * random.nextDouble());
            double least = name.equals("raisins") ? 1.1 : 0.3; // dried fruit holds as much as it weighs
            Contents spirit = spirit(least + random.nextDouble(), 30 + 50 * random.nextDouble());
            double sugar = 1200 * random.nextDouble();
            Contents all = spirit.plus(Maceration.juice(fruit)).plus(Contents.of(Substance.SUCROSE, sugar));
            Maceration jar = Maceration.of(spirit, fruit, Pressing.BY_HAND).sugared(sugar);
            Contents inFruit = jar.liquid().times(1.0 - jar.partThatComes());
            kept(seed, all, jar.drained().plus(inFruit), jar.undissolved());
            double plump = Essentials.of(Maceration.juice(fruit).toGrams()).millilitres();
            if (name.equals("raisins")) {
                continue; // what they hold is not their own juice, so that sugar draws nothing out of them
            }
            Maceration poured = Maceration.holding(spirit, fruit, Math.max(plump, jar.held()));
            Maceration back = poured.marcSugared(sugar, jar.held());
            Contents staysIn = back.liquid().times(1.0 - back.partThatComes());
            kept(seed, all, poured.drained().plus(back.drained()).plus(staysIn), back.undissolved());
        }
    }

    private static void kept(String seed, Contents all, Contents found, double undissolved) {
        for (Substance substance : List.of(Substance.ETHANOL, Substance.WATER)) {
            assertThat(found.grams(substance)).as(seed).isCloseTo(all.grams(substance), within(NOTHING));
        }
        assertThat(found.grams(Substance.SUCROSE) + undissolved)
                .as(seed)
                .isCloseTo(all.grams(Substance.SUCROSE), within(NOTHING));
    }

    /**
     * USDA: raspberries hold 85.75 % water and 4.42 % sugar. Handbooks other than the one computed with: 203.9 g of sucrose dissolve in
     * 100 g of water at 20 °C (Mohos, Confectionery and Chocolate Engineering, appendix 2) or 200.7 g (66.74 % by mass, as in
     * SugarTablesTest); they differ by 1.6 %, so 2 %.
     */
    @ParameterizedTest
    @ValueSource(doubles = {203.9, 200.7})
    @Tag("published")
    void juiceOfRaspberriesTakesTheSugarThatItsWaterDissolves(double perHundredOfWater) {
        Maceration juice =
                Maceration.holding(Contents.NONE, fruit("raspberry", 1000), 0.0).sugared(2500);
        double dissolves = 857.5 * perHundredOfWater / 100.0 - 44.2;
        assertThat(2500 - juice.undissolved()).isCloseTo(dissolves, Percentage.withPercentage(2.0));
        assertThat(juice.undissolvedInDoubt().doubt()).isCloseTo(0.023 * (dissolves + 44.2), within(5.0));
    }

    /** Old figures as tabulated by Seidell, from memory: 580 g/L in the saturated solution of a spirit of 40 % vol at 14 °C, 875 g/L in water. */
    @Test
    void spiritTakesLessThanWaterInTheProportionOfTheTable() {
        Contents spirit = spirit(1.0, 40);
        double grams = SugarLimit.dissolved(spirit).value();
        Essentials saturated =
                Essentials.of(spirit.with(Substance.SUCROSE, grams).toGrams());
        double water = 1000.0 * 2.039 / (3.039 / 1.3327); // saturated solution, Mohos: 203.9 g in 100 g, 1.3327 kg/L
        assertThat(saturated.sugar() / water).isCloseTo(580.0 / 875.0, within(0.005));
        assertThat(SugarLimit.knows(spirit(1.0, 90.1))).isFalse();
    }

    @Test
    @Tag("property")
    void moreSugarSweetensUntilNoMoreDissolves() {
        double strength = 100.0;
        double sugar = 0.0;
        double volume = 0.0;
        for (int grams = 0; grams <= 3000; grams += 100) {
            Maceration sweet = cherries(Pressing.BY_HAND).sugared(grams);
            Essentials comes = Essentials.of(sweet.drained().toGrams());
            boolean full = sweet.undissolved() > 0.0;
            if (full && sweet.undissolved() > 100.0) {
                assertThat(comes.strength()).isCloseTo(strength, within(1e-6));
                assertThat(comes.sugar()).isCloseTo(sugar, within(1e-6));
            } else {
                assertThat(comes.strength()).isLessThan(strength);
                assertThat(comes.sugar()).isGreaterThan(sugar);
                assertThat(comes.millilitres()).isGreaterThan(volume);
            }
            strength = comes.strength();
            sugar = comes.sugar();
            volume = comes.millilitres();
        }
        assertThat(cherries(Pressing.BY_HAND).sugared(3000).undissolved()).isPositive();
    }

    @Test
    void whatDidNotDissolveDissolvesInTheNextSpirit() {
        Maceration full = Maceration.of(spirit(0.2, 50), fruit("raspberry", 500), Pressing.BY_HAND)
                .sugared(1200);
        assertThat(full.undissolved()).isPositive();
        Contents all = full.withOthers(List.of(spirit(0.5, 20)));
        double once = full.drained().grams(Substance.SUCROSE);
        double held = full.liquid().grams(Substance.SUCROSE) - once;
        assertThat(all.grams(Substance.SUCROSE)).isGreaterThan(once + held);
    }

    @Test
    void aLiqueurWithoutAWishForSugarTakesWhatTheFruitBrings() {
        Contents sweet = cherries(Pressing.BY_HAND).sugared(400).drained();
        Finishing.Wanted open = new Finishing.Wanted(2100, 28, OptionalDouble.empty());
        assertThat(Finishing.of(sweet, open, spirit(1, 96)).sugar()).isZero();
        assertThatThrownBy(() -> Finishing.of(sweet, new Finishing.Wanted(2400, 25, 100), spirit(1, 96)))
                .hasMessageContaining("brings 394 g of sugar, enough for 3.94 L");
    }

    @Test
    void aboveNinetyPerCentNobodyTellsWhatDissolves() {
        Maceration raisins = Maceration.of(spirit(1.0, 96), fruit("raisins", 50), Pressing.BY_HAND);
        assertThatThrownBy(() -> raisins.sugared(100)).hasMessageContaining("90 % vol");
    }
}
