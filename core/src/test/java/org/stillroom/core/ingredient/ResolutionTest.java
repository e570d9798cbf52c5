package org.stillroom.core.ingredient;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

class ResolutionTest {
    /** 99.8 % vol and 1 g/L of oil leave no room for 0.3 % vol more, so that the label is mirrored about what it says. */
    @Test
    @Tag("property")
    void aLabelAtTheEndOfItsScaleKeepsTheConstituentsOfItsOil() {
        Resolved essence = resolved(99.8);
        Contents mirrored = essence.perGramAtUpperLabel();

        assertThat(mirrored.grams(Substance.ETHANOL))
                .isGreaterThan(essence.perGram().grams(Substance.ETHANOL));
        assertThat(mirrored.grams(Substance.WATER)).isLessThan(essence.perGram().grams(Substance.WATER));
        assertThat(mirrored.aroma().keySet())
                .isEqualTo(essence.perGram().aroma().keySet())
                .isNotEmpty();
        double more = mirrored.grams(Substance.OIL) / essence.perGram().grams(Substance.OIL);
        essence.perGram()
                .aroma()
                .forEach((cas, grams) ->
                        assertThat(mirrored.aroma().get(cas)).as(cas).isCloseTo(more * grams, within(1e-12)));
    }

    /** Within the scale nothing is mirrored: the upper label is what an essence of that strength would be. */
    @Test
    @Tag("property")
    void aLabelWithinItsScaleErrsToTheStrengthThatItSays() {
        assertThat(resolved(80.0).perGramAtUpperLabel())
                .isEqualTo(resolved(80.3).perGram());
    }

    /** USDA SR 09063: sour cherries hold 86.13 % water and 8.49 % sugars. */
    @Test
    @Tag("published")
    void aPlantOfTheTableBringsItsWaterAndSugarAndTheirDoubt() {
        Resolution resolution = Resolution.of(Ingredient.named("sour cherries", Kind.FRESH_PLANT));
        Resolved cherries = Objects.requireNonNull(resolution.resolved());
        assertThat(cherries.perGram().grams(Substance.WATER)).isCloseTo(0.8613, within(1e-4));
        assertThat(cherries.perGram().sugars()).isCloseTo(0.0849, within(1e-4));
        assertThat(cherries.perGramAtUpperLabel().grams(Substance.WATER)).isCloseTo(0.8913, within(1e-4));
        assertThat(cherries.perGramAtUpperLabel().sugars()).isCloseTo(0.75 * 0.0849, within(1e-4));
        assertThat(resolution.findings()).extracting(Finding::rule).containsExactly("ingredient-assumed");
    }

    @Test
    void whatTheMakerKnowsOfAPlantStandsAndAPlantOfNoTableIsAsked() {
        Ingredient own = Ingredient.named("sour cherries", Kind.FRESH_PLANT)
                .containing(Map.of(Substance.WATER, new Typed<>("82 %", new MassFraction(0.82))));
        Resolution resolution = Resolution.of(own);
        assertThat(Objects.requireNonNull(resolution.resolved()).perGram().grams(Substance.WATER))
                .isEqualTo(0.82);
        assertThat(resolution.findings()).isEmpty();
        assertThat(Resolution.of(Ingredient.named("feijoa", Kind.FRESH_PLANT)).findings())
                .extracting(Finding::rule)
                .containsExactly("ingredient-incomplete");
        assertThat(Resolution.of(Ingredient.named("plum", Kind.DRIED_PLANT)).findings())
                .extracting(Finding::message)
                .containsExactly("It is counted as a plant with 10 % water.");
        assertThat(Resolution.of(Ingredient.named("tartrazine", Kind.OTHER)).findings())
                .singleElement()
                .extracting(Finding::remedy)
                .asString()
                .contains("contains: {water: 90 %, sucrose: 10 %}", "for a dry powder contains: {other solids: 100 %}");
    }

    /** Regulation (EU) No 1169/2011, Annex I 8: sugars are monosaccharides and disaccharides, without polyols. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "erythritol",
                "Erythrit, bio",
                "Puderxylit",
                "Birkenzucker",
                "maltitol",
                "Isomalt",
                "stevia",
                "Allulose",
                "inulin",
                "Streusüße",
                "sugar with stevia"
            })
    void whatSweetensAndIsNoSugarIsAskedAndNeverCountedAsSucrose(String name) {
        Ingredient bare = Ingredient.named(name, Kind.SUGAR);
        Resolution asked = Resolution.of(bare);
        assertThat(asked.resolved()).isNull();
        assertThat(asked.findings()).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.STOP);
            assertThat(finding.remedy()).contains("contains: {other solids: 100 %}");
        });
        Ingredient said = bare.containing(Map.of(Substance.OTHER_SOLIDS, new Typed<>("100 %", new MassFraction(1.0))));
        Resolved counted = Objects.requireNonNull(Resolution.of(said).resolved());
        assertThat(counted.perGram().sugars()).isZero();
    }

    @ParameterizedTest
    @ValueSource(strings = {"white sugar", "rock candy", "isomaltulose", "vanilla sugar", "Kandis", "Gelierzucker"})
    void sugarStaysSucrose(String name) {
        Resolution sugar = Resolution.of(Ingredient.named(name, Kind.SUGAR));
        assertThat(Objects.requireNonNull(sugar.resolved()).perGram().grams(Substance.SUCROSE))
                .isEqualTo(1.0);
    }

    private static Resolved resolved(double strength) {
        Ingredient essence = new Ingredient(
                "lemon essence",
                Kind.ESSENCE,
                new Typed<>(strength + " %", AlcoholByVolume.at20(strength)),
                new Typed<>("0.3 %", 0.3),
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                Map.of(Substance.OIL, new Typed<>("1 g/L", new MassConcentration(1.0))),
                null,
                null,
                null,
                null,
                null);
        return Objects.requireNonNull(Resolution.of(essence).resolved());
    }
}
