package org.stillroom.planner.leftovers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.stillroom.planner.marks.Kitchen.TEXT;
import static org.stillroom.planner.marks.Kitchen.typed;

import java.util.List;
import java.util.Objects;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Typed;
import org.stillroom.planner.leftovers.UseUp.Asked;
import org.stillroom.planner.leftovers.UseUp.Extract;

/** Using up several extracts together. */
class UseUpTest {
    private static Extract extract(String name, Kind kind, double strength, double grams, double mostPerLitre) {
        Ingredient ingredient =
                Ingredient.named(name, kind).ofStrength(new Typed<>(strength + " %", AlcoholByVolume.at20(strength)));
        return new Extract(ingredient, grams, mostPerLitre);
    }

    private static Asked asked(double most, Extract... extracts) {
        return new Asked(List.of(extracts), typed(TEXT.strengthSpan("28 %")), typed(TEXT.sugarSpan("200 g/L")), most);
    }

    private static UseUp found(Asked asked) {
        return Objects.requireNonNull(UseUp.of(asked).found());
    }

    private static final double NO_BOUND = Double.POSITIVE_INFINITY;

    @Test
    void theSmallestLiqueurThatTakesAllIsFound() {
        Extract quince = extract("quince macerate", Kind.MACERATE, 40, 300, NO_BOUND);
        Extract bay = extract("bay tincture", Kind.TINCTURE, 70, 60, NO_BOUND);
        UseUp all = found(asked(5000, quince, bay));
        assertThat(all.isAll()).isTrue();
        assertThat(all.emptied()).isCloseTo(2.0, within(1e-6));
        Essentials made = Essentials.of(all.plan().liquid().toGrams());
        assertThat(made.strength()).isCloseTo(28, within(1e-6));
        assertThat(made.sugar()).isCloseTo(200, within(1e-6));
        double less = all.plan().millilitres() - 10;
        assertThat(found(asked(less, quince, bay)).isAll()).isFalse();
    }

    @Test
    void aBoundOnTheDoseMakesTheLiqueurLarger() {
        Extract bounded = extract("bay tincture", Kind.TINCTURE, 70, 60, 20);
        UseUp all = found(asked(5000, bounded));
        assertThat(all.isAll()).isTrue();
        assertThat(all.plan().millilitres()).isCloseTo(3000, within(1e-6)); // 60 g at 20 g/L
        assertThat(all.used().get(0).perLitre()).isCloseTo(20, within(1e-6));
    }

    @Test
    void whereTheMostThatIsWantedIsTooLittleTheRestStaysAndTheBoundIsNamed() {
        Extract bounded = extract("bay tincture", Kind.TINCTURE, 70, 60, 20);
        Extract other = extract("fennel tincture", Kind.TINCTURE, 70, 5, 20);
        UseUp part = found(asked(1000, bounded, other));
        assertThat(part.isAll()).isFalse();
        assertThat(part.used().get(0).grams()).isCloseTo(20, within(1e-6));
        assertThat(part.used().get(0).atItsMost()).isTrue();
        assertThat(part.used().get(1).isAll()).isTrue();
    }

    /** The alcohol of 1 L at 28 % vol has room for 280 mL of ethanol: the two small bottles go first, each counted by its part. */
    @Test
    void whereNotAllFitsTheMostBottlesAreEmptied() {
        Extract large = extract("pear distillate", Kind.DISTILLATE, 60, 3000, NO_BOUND);
        Extract one = extract("bay tincture", Kind.TINCTURE, 70, 50, NO_BOUND);
        Extract two = extract("fennel tincture", Kind.TINCTURE, 70, 40, NO_BOUND);
        UseUp most = found(asked(1000, large, one, two));
        assertThat(most.used().get(1).isAll()).isTrue();
        assertThat(most.used().get(2).isAll()).isTrue();
        assertThat(most.used().get(0).part()).isGreaterThan(0.05).isLessThan(0.2);
    }

    @Test
    @Tag("property")
    void nothingTakesMoreThanIsLeftNorMoreThanItsBoundAndTheTargetIsMet() {
        SplittableRandom random = new SplittableRandom(4);
        for (int i = 0; i < 100; i++) {
            Extract[] extracts = new Extract[1 + random.nextInt(3)];
            for (int k = 0; k < extracts.length; k++) {
                double most = random.nextBoolean() ? NO_BOUND : 1 + 100 * random.nextDouble();
                extracts[k] = extract(
                        "extract " + k,
                        Kind.TINCTURE,
                        30 + 60 * random.nextDouble(),
                        1 + 500 * random.nextDouble(),
                        most);
            }
            Asked asked = asked(200 + 3000 * random.nextDouble(), extracts);
            UseUp found = found(asked);
            assertThat(found.plan().reached()).as("case %d", i).isTrue();
            assertThat(found.plan().millilitres()).as("case %d", i).isLessThanOrEqualTo(asked.mostMillilitres() + 1e-6);
            for (UseUp.Used used : found.used()) {
                assertThat(used.grams())
                        .as("case %d", i)
                        .isLessThanOrEqualTo(used.extract().grams() * (1 + 1e-9));
                assertThat(used.perLitre())
                        .as("case %d", i)
                        .isLessThanOrEqualTo(used.extract().mostPerLitre() * (1 + 1e-9));
            }
        }
    }
}
