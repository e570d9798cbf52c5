package org.stillroom.core.recipe;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.quantity.Dose;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Typed;

class OtherDropperTest {
    private static final Ingredient OIL = Ingredient.named("lemon oil", Kind.ESSENTIAL_OIL);

    private static Measure dropper(String name, @Nullable Double milligrams) {
        return new Measure(
                name,
                MeasureKind.DROPPER,
                null,
                null,
                null,
                List.of(),
                milligrams == null ? null : new Typed<>(milligrams + " mg", new Mass(milligrams / 1000.0)));
    }

    private static Recipe recipe(Ingredient oil, LineAmount amount, Measure... measures) {
        return Recipe.plain("test", Target.OPEN, List.of(oil), List.of(new Line("lemon oil", amount, null, "stir")))
                .measuredWith(List.of(measures));
    }

    private static LineAmount perLitre(double drops) {
        return new LineAmount.PerLitre(new Typed<>(drops + " drops/L", new Dose(new Drops(drops))));
    }

    private static Line in(Recipe recipe, Measure dropper) {
        Recipe other = OtherDropper.in(recipe, 0, dropper);
        assertThat(other.measures()).contains(dropper);
        assertThat(other.dropper(other.lines().get(0))).isEqualTo(dropper);
        return other.lines().get(0);
    }

    /** 24 drops from a dropper whose drop of water weighs 46 mg are as much as 27.6 from one of 40 mg. */
    @Test
    @Tag("property")
    void dropsAreCountedAnewWhereItIsKnownWithWhatTheyWereCounted() {
        Line line = in(recipe(OIL, perLitre(24), dropper("theirs", 46.0)), dropper("mine", 40.0));

        assertThat(line.amount())
                .isEqualTo(new LineAmount.PerLitre(new Typed<>("27.6 drops/L", new Dose(new Drops(46.0 / 40.0 * 24)))));
        assertThat(line.with()).isEqualTo("mine");
        assertThat(line.note()).isEqualTo("stir");
        LineAmount whole = new LineAmount.Fixed(new Typed<>("24 drops", new Drops(24)));
        assertThat(in(recipe(OIL, whole, dropper("theirs", 46.0)), dropper("mine", 40.0))
                        .amount())
                .isEqualTo(new LineAmount.Fixed(new Typed<>("28 drops", new Drops(28))));
    }

    @Test
    void theCountStaysWhereTheRecipeSaysNothingOrHasWeighedTheLiquidItself() {
        assertThat(in(recipe(OIL, perLitre(24)), dropper("mine", 40.0)).amount())
                .isEqualTo(perLitre(24));
        assertThat(in(recipe(OIL, perLitre(24), dropper("theirs", null)), dropper("mine", 40.0))
                        .amount())
                .isEqualTo(perLitre(24));
        Ingredient weighed = OIL.ofDrop(new Typed<>("20 mg", new Mass(0.020)));
        assertThat(in(recipe(weighed, perLitre(24), dropper("theirs", 46.0)), dropper("mine", 40.0))
                        .amount())
                .isEqualTo(perLitre(24));
    }

    @Test
    void aDropperTakesThePlaceOfOneOfItsName() {
        Recipe other = OtherDropper.in(recipe(OIL, perLitre(24), dropper("mine", 50.0)), 0, dropper("mine", 40.0));

        assertThat(other.measures()).containsExactly(dropper("mine", 40.0));
        assertThat(((LineAmount.PerLitre) other.lines().get(0).amount()).dose().text())
                .isEqualTo("30.0 drops/L");
    }
}
