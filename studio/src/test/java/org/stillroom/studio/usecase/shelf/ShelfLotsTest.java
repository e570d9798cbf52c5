package org.stillroom.studio.usecase.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.recipefile.SheetReading;

class ShelfLotsTest {
    private static final String[] NEW = {"name", "Spirit 96%", "kind", "spirit", "strength", "96 %", "left", "1 L"};
    private static final String[] OLDER = {
        "name", "neutral spirit 96 %", "kind", "spirit", "strength", "96 %", "left", "430 ml", "opened", "2026-10-02"
    };

    @Test
    void aLineTakesTheBottleThatWasOpenedFirstAndKnowsOtherNamesOfTheSameThing() {
        LotOnShelf fresh = Bottles.onShelf("a", NEW);
        LotOnShelf opened = Bottles.onShelf("b", OLDER);
        assertThat(ShelfLots.named("spirit 96 %", List.of(fresh, opened))).containsExactly(opened, fresh);
    }

    @Test
    void aBottleSetAsideOrEmptyIsNotOfferedToARecipe() {
        LotOnShelf aside = Bottles.onShelf("a", "name", "Tonka", "kind", "sugar", "set aside", "yes", "left", "1 g");
        LotOnShelf empty = Bottles.onShelf("b", "name", "Tonka", "kind", "sugar", "left", "0 g", "full", "10 g");
        LotOnShelf unknown = Bottles.onShelf("c", "name", "Tonka", "kind", "sugar");
        assertThat(ShelfLots.named("tonka", List.of(aside, empty, unknown))).containsExactly(unknown);
    }

    @Test
    void everyLineOfARecipeIsToldItsChoices() {
        RecipeReading reading = new RecipeReader(OunceMeaning.US_FLUID).read("""
                        stillroom: 1
                        title: Caraway
                        target: {volume: 700 ml, strength: 38 %}
                        lines:
                          - {use: spirit 96 %, amount: free}
                          - {use: water, amount: free}
                        """);
        LotOnShelf lot = Bottles.onShelf("a", NEW);
        Map<String, List<LotOnShelf>> choices =
                ShelfLots.forRecipe(((RecipeReading.Understood) reading).recipe(), List.of(lot));
        assertThat(choices).containsEntry("spirit 96 %", List.of(lot)).containsEntry("water", List.of());
    }

    /** The density of 40 % vol at 20 °C is 948.05 kg/m³. Source: OIML R 22, table of densities (from memory). */
    @Test
    void aHalfFullJarIsWeighedAndNeverDecanted() {
        LotOnShelf lot = Bottles.onShelf("a", "name", "Vodka", "kind", "spirit", "strength", "40 %", "left", "1 L");
        WeighLot.Weighed weighed = weighed(lot, "312 g", "786.0 g");
        assertThat(weighed.grams()).isEqualTo(474.0, within(1e-9));
        assertThat(Objects.requireNonNull(weighed.millilitres()).value()).isEqualTo(500.0, within(0.1));
        assertThat(weighed.left().unit()).isEqualTo("ml");
    }

    /** 10 mL of clove bud oil at 1.049 g/mL, the middle of 1.038 to 1.060 (USP, as quoted): the sheet says where from. */
    @Test
    void anOilIsWeighedAndToldAtTheDensityOfItsTable() {
        LotOnShelf clove = Bottles.onShelf(
                "a", "name", "Clove bud oil", "kind", "essential oil", "left", "10 ml", "full", "10 ml");
        assertThat(Objects.requireNonNull(weighed(clove, "20 g", "30.49 g").millilitres())
                        .value())
                .isEqualTo(10.0, within(1e-9));
        LotFacts facts = LotFacts.of(clove).orElseThrow();
        assertThat(facts.facts()).singleElement().satisfies(fact -> {
            assertThat(fact.takenFrom()).isEqualTo(LotFacts.TakenFrom.TABLE);
            assertThat(fact.estimate().value()).isEqualTo(1.049, within(1e-12));
            assertThat(fact.estimate().doubt()).isEqualTo(0.011, within(1e-12));
        });
        assertThat(facts.findings()).extracting(Finding::rule).containsExactly("oil-density");
        LotFacts own = LotFacts.of(
                        Bottles.onShelf("b", "name", "Clove bud oil", "kind", "essential oil", "density", "1.05 g/ml"))
                .orElseThrow();
        assertThat(own.facts().get(0).takenFrom()).isEqualTo(LotFacts.TakenFrom.SHEET);
        assertThat(own.findings()).isEmpty();
    }

    @Test
    void aJarLighterThanItselfIsRefusedAtTheReading() {
        LotOnShelf lot = Bottles.onShelf("a", "name", "Sugar", "kind", "sugar", "left", "1 kg");
        SheetReading<WeighLot.Weighed> reading = WeighLot.answer(lot, "312 g", "300 g", OunceMeaning.US_FLUID);
        assertThat(((SheetReading.Refused<WeighLot.Weighed>) reading).problems())
                .singleElement()
                .satisfies(problem -> {
                    assertThat(problem.key()).isEqualTo("reading");
                    assertThat(problem.finding().message()).contains("300 g against 312 g");
                });
    }

    @Test
    void grainsAreKeptByWeightAndNeedNoDensity() {
        LotOnShelf lot = Bottles.onShelf("a", "name", "Sugar", "kind", "sugar", "left", "1 kg");
        WeighLot.Weighed weighed = weighed(lot, "0.5 kg", "1.35 kg");
        assertThat(weighed.left().text()).isEqualTo("850 g");
        assertThat(weighed.millilitres()).isNull();
    }

    private static WeighLot.Weighed weighed(LotOnShelf lot, String tare, String reading) {
        return ((SheetReading.Understood<WeighLot.Weighed>) WeighLot.answer(lot, tare, reading, OunceMeaning.US_FLUID))
                .value();
    }
}
