package org.stillroom.core.ingredient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;

class PlantRatioTest {
    private static final QuantityText TEXT = new QuantityText(OunceMeaning.US_FLUID);

    @ParameterizedTest
    @CsvSource({
        "1:5, 200",
        "'1:2,5', 400",
        "1 : 10, 100",
        "200 g/L, 200",
        "20 g/100 ml, 200",
        "2:1, 2000",
        "85 mg/ml, 85"
    })
    void aRatioIsGramsOfPlantToMillilitresOfExtract(String text, double gramsPerLitre) {
        assertThat(PlantRatio.read(text, TEXT))
                .isInstanceOfSatisfying(
                        Understanding.Understood.class,
                        understood -> assertThat(
                                        ((PlantRatio) understood.typed().value()).gramsPerLitre())
                                .isCloseTo(gramsPerLitre, within(1e-9)));
    }

    @ParameterizedTest
    @CsvSource({
        "5, such as 1:5",
        "20 %, such as 1:5",
        "1:0, such as 1:5",
        "1:x, such as 1:5",
        "500:1, not 500 g",
        "0 g/L, not 0 g"
    })
    void whatIsNoneIsRefusedWithItsBasis(String text, String reason) {
        assertThat(PlantRatio.read(text, TEXT))
                .isInstanceOfSatisfying(
                        Understanding.Refused.class,
                        refused -> assertThat(refused.reason()).contains(reason));
    }

    /** 12 g of a macerate of 0.9 g/mL or so in a litre: at 1:10 a tenth of its millilitres in grams. */
    @Test
    void aDoseBringsThePlantOfItsMillilitres() {
        Ingredient bare = Ingredient.named("wormwood macerate", Kind.MACERATE)
                .ofStrength(new Typed<>("60 %", AlcoholByVolume.at20(60)));
        Resolved carries = resolved(bare.carrying(null, new Typed<>("1:10", new PlantRatio(0.1))));
        CarriedPlant plant = Objects.requireNonNull(CarriedPlant.of(carries, 12.0));

        assertThat(plant.gramsPerLitre())
                .isCloseTo(1.2 / carries.gramsPerMillilitre().orElseThrow(), within(1e-12));
        assertThat(plant.plant()).isEqualTo("wormwood macerate");
        assertThat(CarriedPlant.of(resolved(bare), 12.0)).isNull();
        assertThat(CarriedPlant.of(carries, 0.0)).isNull();
    }

    private static Resolved resolved(Ingredient ingredient) {
        return Objects.requireNonNull(Resolution.of(ingredient).resolved());
    }
}
