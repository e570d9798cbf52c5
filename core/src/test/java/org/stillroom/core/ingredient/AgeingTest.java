package org.stillroom.core.ingredient;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Typed;

/** How long opened bottles keep. */
class AgeingTest {
    private static String key(Ingredient ingredient) {
        return Objects.requireNonNull(Ageing.of(ingredient)).key();
    }

    @ParameterizedTest
    @CsvSource({
        "lemon oil, expressed_oil",
        "bergamot, expressed_oil",
        "lime, distilled_oil",
        "laurel oil, distilled_oil",
        "an oil of my own, distilled_oil"
    })
    void citrusFromThePressKeepsHalfAsLongAsWhatWasDistilled(String name, String expected) {
        assertThat(key(Ingredient.named(name, Kind.ESSENTIAL_OIL))).isEqualTo(expected);
    }

    @ParameterizedTest
    @CsvSource({"40, strong_extract", "39.9, weak_extract", "25, weak_extract", "24.9, very_weak_extract"})
    void anExtractKeepsByItsStrength(double strength, String expected) {
        Typed<Strength> typed = new Typed<>(strength + " %", AlcoholByVolume.at20(strength));
        assertThat(key(Ingredient.named("quince macerate", Kind.MACERATE).ofStrength(typed)))
                .isEqualTo(expected);
    }

    @Test
    void anExtractOfUnknownStrengthIsTakenForTheWeakest() {
        assertThat(key(Ingredient.named("fennel tincture", Kind.TINCTURE))).isEqualTo("very_weak_extract");
    }

    @ParameterizedTest
    @CsvSource({"0.66, rich_syrup", "0.50, thin_syrup"})
    void aSyrupKeepsByItsSugar(double sugar, String expected) {
        Typed<Share> typed = new Typed<>("as typed", new MassFraction(sugar));
        Ingredient syrup = new Ingredient(
                "bay syrup",
                Kind.SYRUP,
                null,
                null,
                typed,
                null,
                null,
                null,
                null,
                null,
                null,
                Map.of(),
                null,
                null,
                null,
                null,
                null);
        assertThat(key(syrup)).isEqualTo(expected);
    }

    @Test
    void whatDoesNotFlavourHasNoNote() {
        assertThat(Ageing.of(Ingredient.named("white sugar", Kind.SUGAR))).isNull();
    }

    @Test
    void whatKeepsForYearsHasNoMonths() {
        assertThat(Objects.requireNonNull(Ageing.of(Ingredient.named("caraway distillate", Kind.DISTILLATE)))
                        .months())
                .isEmpty();
    }
}
