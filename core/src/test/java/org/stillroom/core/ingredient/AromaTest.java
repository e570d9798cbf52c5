package org.stillroom.core.ingredient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.aroma.EssentialOils;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Liquid;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;

class AromaTest {
    private static final QuantityText TEXT = new QuantityText(OunceMeaning.US_FLUID);
    private static final String LIMONENE = "5989-27-5";

    @Test
    void oilsAndConstituentsAreReadWithTheirContents() {
        Aroma aroma = read("lemon oil 10.7 g/L, 1,8-cineole = 120 mg/L; 76-22-2: 0,5 g/L")
                .value();

        assertThat(aroma.parts()).extracting(Aroma.Part::name).containsExactly("lemon oil", "1,8-cineole", "76-22-2");
        assertThat(aroma.together()).isCloseTo(10.7 + 0.12 + 0.5, within(1e-12));
        assertThat(aroma.isByMass()).isFalse();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lemon | “lemon” names no oil with its content",
                "; | nothing is named",
                "lemon 3 drops | “lemon 3 drops” names no oil",
                "lemon 3 g/L, lemon 2 g/L | named twice",
                "lemon 3 g/L, bay leaf 2 % | some are by mass"
            })
    void whatSaysNoContentIsRefusedWithItsReason(String text, String reason) {
        assertThat(Aroma.read(text, TEXT))
                .isInstanceOfSatisfying(
                        Understanding.Refused.class,
                        refused -> assertThat(refused.reason()).contains(reason));
    }

    @Test
    void aNameMayHoldANumber() {
        assertThat(read("oil no 2 5.00 g/L, anise 3 g/100 ml").value().parts())
                .containsExactly(
                        new Aroma.Part("oil no 2", new MassConcentration(5.0)),
                        new Aroma.Part("anise", new MassConcentration(30.0)));
    }

    /** Of 1 g/L each constituent is what its oil brings, and what is named by itself is all of itself. */
    @Test
    @Tag("property")
    void anEssenceHoldsTheConstituentsOfEachOfItsOils() {
        Resolved essence = resolved(Kind.ESSENCE, 90.0, "lemon 10 g/L, linalool 2 g/L", null);
        Contents litre = litre(essence);

        assertThat(litre.grams(Substance.OIL)).isCloseTo(12.0, within(1e-9));
        Map<String, Double> lemon =
                Objects.requireNonNull(EssentialOils.find("lemon")).shares();
        assertThat(litre.aroma().get(LIMONENE))
                .isCloseTo(10.0 * Objects.requireNonNull(lemon.get(LIMONENE)), within(1e-9));
        assertThat(litre.aroma().get("78-70-6"))
                .isCloseTo(2.0 + 10.0 * lemon.getOrDefault("78-70-6", 0.0), within(1e-9));
    }

    @Test
    void whatIsNotNamedOfTheOilCountsUnderTheNameOfTheIngredient() {
        Resolved distillate = resolved(Kind.DISTILLATE, 72.0, "limonene 50 mg/L", 0.25);

        assertThat(distillate.oilParts())
                .containsExactly(new OilPart("limonene", 0.2), new OilPart("juniper distillate", 0.8));
        assertThat(litre(distillate).grams(Substance.OIL)).isCloseTo(0.25, within(1e-12));
    }

    @Test
    void moreThanTheOilAsAWholeCannotBeNamed() {
        Resolution resolution = Resolution.of(ingredient(Kind.DISTILLATE, 72.0, "limonene 300 mg/L", 0.25));

        assertThat(resolution.resolved()).isNull();
        assertThat(resolution.findings().get(0).message()).contains("more than its oil as a whole");
    }

    @Test
    void whatNoTableKnowsIsSaidAndCountsAsOil() {
        Resolution resolution = Resolution.of(ingredient(Kind.ESSENCE, 90.0, "lemon 1 g/L, old attic oil 2 g/L", null));

        assertThat(resolution.findings())
                .extracting(finding -> finding.rule() + ": " + finding.message())
                .anyMatch(text -> text.startsWith("aroma-not-known") && text.contains("old attic oil"));
        assertThat(litre(Objects.requireNonNull(resolution.resolved())).grams(Substance.OIL))
                .isCloseTo(3.0, within(1e-9));
    }

    private static Contents litre(Resolved resolved) {
        double volume =
                Liquid.figures(resolved.perGram(), Temperature.TWENTY_CELSIUS).value(Figure.VOLUME_20C);
        return resolved.perGram().times(1000.0 / volume);
    }

    private static Resolved resolved(Kind kind, double strength, String aroma, @Nullable Double oil) {
        return Objects.requireNonNull(
                Resolution.of(ingredient(kind, strength, aroma, oil)).resolved());
    }

    private static Ingredient ingredient(Kind kind, double strength, String aroma, @Nullable Double oil) {
        Map<Substance, Typed<Share>> contains = new LinkedHashMap<>();
        if (oil != null) {
            contains.put(Substance.OIL, new Typed<>(oil + " g/L", new MassConcentration(oil)));
        }
        return new Ingredient(
                kind == Kind.DISTILLATE ? "juniper distillate" : "attic essence",
                kind,
                new Typed<>(strength + " %", AlcoholByVolume.at20(strength)),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                contains,
                read(aroma),
                null,
                null,
                null,
                null);
    }

    private static Typed<Aroma> read(String text) {
        Understanding<Aroma> understanding = Aroma.read(text, TEXT);
        assertThat(understanding).isInstanceOf(Understanding.Understood.class);
        return ((Understanding.Understood<Aroma>) understanding).typed();
    }
}
