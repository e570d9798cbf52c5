package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.stillroom.core.plan.Kitchen.finding;

import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.plan.Replanning.Poured;
import org.stillroom.core.reference.Severity;

class ReplanningTest {
    private static final int SPIRIT = 0;
    private static final int SUGAR = 1;
    private static final int ESSENCE = 2;
    private static final int WATER = 3;

    private static Kitchen bay() {
        return new Kitchen()
                .volume("1 L")
                .strength("28 %")
                .sugar("180 g/L")
                .bought("bay oil", Kind.ESSENTIAL_OIL, null, null, null, null)
                .free("spirit 96 %", "sugar")
                .dose("bay oil", "0.1 g/L")
                .free("water");
    }

    private static Poured done(double grams) {
        return new Poured(grams, true);
    }

    private static Essentials result(Way way) {
        return Essentials.of(way.plan().liquid().toGrams());
    }

    private static double grams(Way way, int line) {
        double grams = 0.0;
        for (int i = 0; i < way.parts().size(); i++) {
            grams += way.parts().get(i).line() == line
                    ? way.plan().lines().get(i).grams()
                    : 0.0;
        }
        return grams;
    }

    private static double planned(Plan plan, int line) {
        return plan.lines().get(line).grams();
    }

    private static Way more(Replanned replanned) {
        return Objects.requireNonNull(replanned.more());
    }

    @Test
    @Tag("property")
    void whatIsPouredJustAsAskedChangesNothing() {
        for (long seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            Plan plan = anyRecipe(random).plan();
            Map<Integer, Poured> poured = new HashMap<>();
            for (int i = 0; i < plan.lines().size(); i++) {
                if (random.nextBoolean()) {
                    poured.put(i, done(planned(plan, i)));
                }
            }
            Replanned replanned = Replanning.of(plan, null, poured);
            assertThat(replanned.ways()).as("seed %d", seed).hasSize(1);
            for (int i = 0; i < plan.lines().size(); i++) {
                assertThat(grams(replanned.keeping(), i))
                        .as("seed %d, line %d", seed, i)
                        .isCloseTo(planned(plan, i), within(1e-6));
            }
        }
    }

    private static Kitchen anyRecipe(Random random) {
        return new Kitchen()
                .volume(300 + random.nextInt(3000) + " ml")
                .strength(16 + random.nextInt(20) + " %")
                .sugar(20 + random.nextInt(180) + " g/L")
                .bought("bay oil", Kind.ESSENTIAL_OIL, null, null, null, null)
                .free("spirit 96 %")
                .dose("bay oil", 1 + random.nextInt(300) + " mg/L")
                .amount("honey", 1 + random.nextInt(30) + " g")
                .free(random.nextBoolean() ? "sugar" : "simple syrup 1:1")
                .free("water");
    }

    @Test
    @Tag("property")
    void withTooMuchSpiritMoreOfEverythingHoldsStrengthSugarAndDoses() {
        for (long seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            Plan plan = anyRecipe(random).plan();
            if (!plan.reached()) {
                continue;
            }
            double over = 1.01 + 0.3 * random.nextDouble();
            Map<Integer, Poured> poured = Map.of(0, done(over * planned(plan, 0)), 1, done(planned(plan, 1)));
            Replanned replanned = Replanning.of(plan, null, poured);
            Way more = more(replanned);
            Essentials before = Essentials.of(plan.liquid().toGrams());
            assertThat(result(more).strength()).as("seed %d", seed).isCloseTo(before.strength(), within(1e-9));
            assertThat(result(more).sugar()).as("seed %d", seed).isCloseTo(before.sugar(), within(1e-9 * 200));
            assertThat(more.plan().millilitres()).as("seed %d", seed).isGreaterThan(plan.millilitres());
            assertThat(more.shares()).as("seed %d", seed).isEmpty();
            assertThat(grams(more, 0)).as("seed %d", seed).isCloseTo(over * planned(plan, 0), within(1e-6));
        }
    }

    @Test
    @Tag("property")
    void massIsConservedAndNothingIsTakenOutOfTheVessel() {
        for (long seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            Plan plan = anyRecipe(random).plan();
            Map<Integer, Poured> poured = new HashMap<>();
            for (int i = 0; i < plan.lines().size(); i++) {
                if (random.nextInt(3) > 0) {
                    poured.put(i, new Poured(planned(plan, i) * (0.6 + random.nextDouble()), random.nextBoolean()));
                }
            }
            for (Way way : Replanning.of(plan, null, poured).ways()) {
                double total = 0.0;
                for (int i = 0; i < plan.lines().size(); i++) {
                    double least = poured.containsKey(i)
                            ? Objects.requireNonNull(poured.get(i)).grams()
                            : 0.0;
                    assertThat(grams(way, i))
                            .as("seed %d, %s", seed, way.kind())
                            .isGreaterThanOrEqualTo(least - 1e-6);
                    total += grams(way, i)
                            * plan.lines().get(i).ingredient().perGram().total();
                }
                assertThat(way.plan().liquid().total()).as("seed %d", seed).isCloseTo(total, within(1e-9 * total));
                assertThat(way.plan().millilitres())
                        .as("seed %d", seed)
                        .isCloseTo(
                                VolumeModel.atTwenty()
                                        .millilitres(way.plan().liquid().toGrams()),
                                within(1e-9));
            }
        }
    }

    /** Worked by hand: 1 L at 28 % vol holds 280 mL of ethanol; 10 % more of the spirit fills 1.1 L at the same strength. */
    @Test
    void atTenPerCentTooMuchSpiritEverythingGrowsByTenPerCent() {
        Plan plan = bay().plan();
        Map<Integer, Poured> poured =
                Map.of(SPIRIT, done(1.1 * planned(plan, SPIRIT)), ESSENCE, done(planned(plan, ESSENCE)));
        assertThat(plan.lines().get(SPIRIT).millilitres().orElseThrow()).isCloseTo(291.7, within(0.05));
        Replanned replanned = Replanning.of(plan, null, poured);
        Way more = more(replanned);
        assertThat(more.plan().millilitres()).isCloseTo(1100.0, within(1e-6));
        assertThat(grams(more, SUGAR)).isCloseTo(198.0, within(1e-6));
        assertThat(grams(more, ESSENCE)).isCloseTo(0.11, within(1e-9));
        assertThat(more.parts())
                .as("the essence is in, and gets a little more as a step of its own")
                .contains(new Way.Part(ESSENCE, true), new Way.Part(ESSENCE, false));
        Way keeping = replanned.keeping();
        assertThat(result(keeping).strength()).isCloseTo(30.8, within(1e-9));
        assertThat(keeping.plan().millilitres()).isCloseTo(1000.0, within(1e-6));
        assertThat(keeping.reached()).isFalse();
    }

    @Test
    void itIsSaidWhatIsNoLongerReachedAndHowToGoOn() {
        Plan plan = bay().plan();
        Map<Integer, Poured> poured = Map.of(SPIRIT, done(1.1 * planned(plan, SPIRIT)));
        var strength = finding(Replanning.of(plan, null, poured).findings(), "strength-no-longer-reached");
        assertThat(strength.severity()).isEqualTo(Severity.CAUTION);
        assertThat(strength.message()).isEqualTo("The strength comes to 30.8 % vol; 28.0 % vol was planned.");
        assertThat(strength.remedy()).isEqualTo("Go on or make 100 mL more of everything.");
    }

    @Test
    void tooMuchOfWhatTheRestCanMakeUpForStaysOnTarget() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .strength("30 %")
                .sugar("150 g/L")
                .free("vodka 40 %", "spirit 96 %", "sugar", "water")
                .plan();
        int first = planned(plan, 0) > 0.0 ? 0 : 1;
        Map<Integer, Poured> poured = Map.of(first, done(0.9 * planned(plan, first)));
        Replanned replanned = Replanning.of(plan, null, poured);
        assertThat(replanned.ways()).hasSize(1);
        assertThat(result(replanned.keeping()).strength()).isCloseTo(30.0, within(1e-9));
        assertThat(finding(replanned.findings(), "still-on-target").message())
                .isEqualTo("The volume stays at 1000 mL, the strength at 30.0 % vol and sugar at 150 g/L.");
    }

    /** Worked by hand: 0.106 g of oil where 0.1 g/L is the dose belong into 1.06 L. */
    @Test
    void anEssenceOverItsDoseTurnsNoStrengthButItsOwnShare() {
        Plan plan = bay().plan();
        Map<Integer, Poured> poured = Map.of(SPIRIT, done(planned(plan, SPIRIT)), ESSENCE, done(0.106));
        Replanned replanned = Replanning.of(plan, null, poured);
        assertThat(replanned.keeping().reached()).isTrue();
        assertThat(finding(replanned.findings(), "dose-differs").message())
                .isEqualTo("A litre then holds 106 mg of bay oil in place of 100 mg: 6 % more.");
        assertThat(finding(replanned.findings(), "dose-differs").remedy())
                .isEqualTo("Go on or make 60 mL more of everything.");
        Way more = more(replanned);
        assertThat(more.plan().millilitres()).isCloseTo(1060.0, within(1e-6));
        assertThat(grams(more, SPIRIT)).isCloseTo(1.06 * planned(plan, SPIRIT), within(1e-6));
    }

    @Test
    void tooLittleMayBeToppedUpOrLessIsMade() {
        Plan plan = bay().plan();
        Map<Integer, Poured> poured = Map.of(SPIRIT, done(0.95 * planned(plan, SPIRIT)));
        Replanned replanned = Replanning.of(plan, null, poured);
        Way more = more(replanned);
        assertThat(more.plan().millilitres()).isCloseTo(1000.0, within(1e-6));
        assertThat(more.parts().get(4)).isEqualTo(new Way.Part(SPIRIT, false));
        assertThat(more.plan().lines().get(4).grams()).isCloseTo(0.05 * planned(plan, SPIRIT), within(1e-6));
        assertThat(result(replanned.keeping()).strength()).isCloseTo(26.6, within(1e-9));
        Way less = Objects.requireNonNull(replanned.less());
        assertThat(less.plan().millilitres()).isCloseTo(950.0, within(1e-6));
        assertThat(result(less).strength()).isCloseTo(28.0, within(1e-9));
        assertThat(finding(replanned.findings(), "strength-no-longer-reached").remedy())
                .startsWith("Go on, add what is wanting: 11.")
                .endsWith(" g of spirit 96 % or make 50 mL less, with everything else as planned.");
    }

    @Test
    void moreIsNotOfferedBeyondWhatIsAtHandAndThatIsSaid() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .strength("28 %")
                .sugar("180 g/L")
                .bought("sugar", Kind.SUGAR, null, null, "185 g", null)
                .free("spirit 96 %", "sugar", "water")
                .plan();
        Replanned replanned = Replanning.of(plan, null, Map.of(0, done(1.1 * planned(plan, 0))));
        assertThat(replanned.more()).isNull();
        assertThat(finding(replanned.findings(), "more-takes-more-than-there-is")
                        .message())
                .isEqualTo("More of everything would take 198 g of sugar, and 185 g are at hand.");
    }

    @Test
    void aVesselThatIsTooSmallForMoreIsSaid() {
        Plan plan = bay().vessel("1.2 L").plan();
        Replanned replanned = Replanning.of(plan, null, Map.of(SPIRIT, done(1.1 * planned(plan, SPIRIT))));
        assertThat(finding(more(replanned).plan().findings(), "vessel-too-small")
                        .message())
                .isEqualTo("1100 mL do not fit a vessel of 1.2 L with a tenth of it left free for stirring.");
    }

    @Test
    void theVolumeChosenSinceIsTheOneToLandOn() {
        Plan plan = bay().plan();
        Map<Integer, Poured> poured =
                Map.of(SPIRIT, done(1.1 * planned(plan, SPIRIT)), ESSENCE, new Poured(planned(plan, ESSENCE), false));
        Replanned replanned = Replanning.of(plan, 1100.0, poured);
        assertThat(replanned.keeping().isOnTarget()).isTrue();
        assertThat(replanned.keeping().plan().millilitres()).isCloseTo(1100.0, within(1e-6));
        assertThat(grams(replanned.keeping(), ESSENCE)).isCloseTo(0.11, within(1e-9));
        assertThat(grams(replanned.keeping(), WATER)).isCloseTo(1.1 * planned(plan, WATER), within(1e-6));
    }

    @Test
    void withoutATargetTheProportionsAreWhatIsHeld() {
        Plan plan = new Kitchen()
                .volume("1 L")
                .amount("vodka 40 %", "750 ml")
                .amount("sugar", "200 g")
                .makeUp("water")
                .plan();
        Replanned replanned = Replanning.of(plan, null, Map.of(0, done(1.04 * planned(plan, 0))));
        assertThat(replanned.keeping().plan().millilitres()).isCloseTo(1000.0, within(1e-6));
        assertThat(result(replanned.keeping()).strength()).isCloseTo(31.2, within(1e-9));
        Way more = more(replanned);
        assertThat(more.plan().millilitres()).isCloseTo(1040.0, within(1e-6));
        assertThat(grams(more, 1)).isCloseTo(208.0, within(1e-6));
    }
}
