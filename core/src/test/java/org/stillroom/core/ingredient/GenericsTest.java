package org.stillroom.core.ingredient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collection;
import java.util.HashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Typed;

class GenericsTest {
    @Test
    void namesAreFoundHoweverTheyAreSpelt() {
        assertThat(name("Sugar")).isEqualTo("white sugar");
        assertThat(name("vodka 40%")).isEqualTo("spirit 40 %");
        assertThat(name("spirit 37,5 % vol")).isEqualTo("spirit 37.5 %");
        assertThat(name("neutral  spirit 96")).isEqualTo("spirit 96 %");
        assertThat(name("rich syrup")).isEqualTo("simple syrup 2:1");
    }

    @Test
    void plainSpiritIsTheSameWhereverItsStrengthIsSaid() {
        Ingredient listed = spirit("neutral spirit", 96.0);
        assertThat(Generics.same(listed, spirit("spirit 96 %", 96.0))).isTrue();
        assertThat(Generics.same(spirit("Spirit", 96.0), listed)).isTrue();
        assertThat(Generics.same(listed, spirit("spirit 95 %", 95.0))).isFalse();
        assertThat(Generics.same(listed, spirit("plum spirit", 96.0))).isFalse();
        assertThat(Generics.same(listed, Ingredient.named("neutral spirit", Kind.SPIRIT)))
                .isTrue();
    }

    private static Ingredient spirit(String name, double percent) {
        return Ingredient.named(name, Kind.SPIRIT)
                .ofStrength(new Typed<>(QuantityWords.plain(percent) + " % vol", AlcoholByVolume.at20(percent)));
    }

    @Test
    void aNameThatLeavesTheStrengthOpenIsNotGuessed() {
        assertThat(Generics.find("vodka")).isNull();
        assertThat(Generics.find("spirit")).isNull();
        assertThat(Generics.find("citric")).isNull();
    }

    @Test
    void noNameMeansTwoThings() {
        Set<String> seen = new HashSet<>();
        for (Generic generic : Generics.list()) {
            assertThat(seen.add(generic.ingredient().name())).isTrue();
            generic.otherNames()
                    .forEach(other -> assertThat(seen.add(other)).as(other).isTrue());
        }
    }

    @Test
    @Tag("property")
    void theSharesOfEachGenericMakeTheWhole() {
        for (Generic generic : Generics.list()) {
            Ingredient ingredient = generic.ingredient();
            if (ingredient.strength() == null) {
                assertThat(together(ingredient.contains().values()))
                        .as(ingredient.name())
                        .isCloseTo(1.0, within(1e-12));
            }
        }
    }

    /** Certificates of citric acid monohydrate give 8.6 % water of crystallisation (from memory). */
    @Test
    @Tag("published")
    void citricAcidMonohydrateHoldsItsWaterOfCrystallisation() {
        Map<Substance, Typed<Share>> contains = find("citric acid monohydrate").contains();
        assertThat(fraction(contains.get(Substance.WATER))).isCloseTo(0.086, within(0.0005));
        assertThat(fraction(contains.get(Substance.CITRIC))).isCloseTo(0.9143, within(0.00005));
    }

    @Test
    void spiritsHaveTheStrengthOfTheirName() {
        assertThat(Objects.requireNonNull(find("spirit 37.5 %").strength()).value())
                .isEqualTo(AlcoholByVolume.at20(37.5));
    }

    @Test
    void whatTheMakerWroteStandsAndTheRestIsCompleted() {
        Ingredient bare = Generics.completed(Ingredient.named("raw cane crystals", Kind.SUGAR));
        assertThat(bare.name()).isEqualTo("raw cane crystals");
        assertThat(bare.contains()).containsOnlyKeys(Substance.SUCROSE);
        Ingredient acid = Generics.completed(Ingredient.named("malic acid", Kind.ACID));
        assertThat(acid.contains()).containsOnlyKeys(Substance.MALIC);
        assertThat(Generics.completed(Ingredient.named("some acid", Kind.ACID)).contains())
                .isEmpty();
    }

    @Test
    void anIngredientOfAnotherKindIsNotTakenForTheGenericOfItsName() {
        assertThat(Generics.completed(Ingredient.named("honey", Kind.LIQUEUR)).contains())
                .isEmpty();
    }

    private static String name(String typed) {
        return find(typed).name();
    }

    private static Ingredient find(String typed) {
        return Objects.requireNonNull(Generics.find(typed)).ingredient();
    }

    private static double together(Collection<Typed<Share>> shares) {
        return shares.stream().mapToDouble(GenericsTest::fraction).sum();
    }

    private static double fraction(@org.jspecify.annotations.Nullable Typed<Share> share) {
        return ((MassFraction) Objects.requireNonNull(share).value()).fraction();
    }
}
