package org.stillroom.studio.usecase.shelf;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;

class LotStateTest {
    private static final String RECIPE = """
            stillroom: 1
            title: Bay and pear
            target: {volume: 1 L, strength: 28 %}
            ingredients:
              - {name: pear spirit, kind: spirit, strength: 42 %}
            lines:
              - {use: pear spirit, amount: free}
              - {use: water, amount: free}
            """;

    @TempDir
    private Path folder;

    private static LotOnShelf pear(String id, String left) {
        return Bottles.onShelf(
                id, "name", "Pear spirit", "kind", "spirit", "strength", "42 %", "left", left, "full", "700 ml");
    }

    private List<TakenBy> taken() {
        try (Store store = Store.open(new DataFolder(folder))) {
            String recipe = store.recipes().create("Bay and pear", "r1");
            store.recipes().save(recipe, 0, "Bay and pear", RECIPE, null, "r2");
            return new RecipesTaking(store.recipes()).all(OunceMeaning.US_FLUID);
        }
    }

    /** A litre at 28 % vol takes two thirds of a litre at 42 % vol, a little less for contraction. */
    @Test
    void aBottleIsLowWhenItHoldsLessThanARecipeTakes() {
        List<TakenBy> taken = taken();
        LotOnShelf half = pear("a", "330 ml");
        assertThat(LotState.of(half, List.of(half), taken))
                .get()
                .isInstanceOfSatisfying(LotState.ShortFor.class, state -> {
                    assertThat(state.title()).isEqualTo("Bay and pear");
                    assertThat(state.enoughForMillilitres()).isBetween(490.0, 500.0);
                });
        LotOnShelf other = pear("b", "400 ml");
        assertThat(LotState.of(half, List.of(half, other), taken))
                .as("two bottles together")
                .isEmpty();
    }

    @Test
    void littleOfWhatItHeldIsLowAndNothingIsEmptyWithTheRecipesThatMissIt() {
        LotOnShelf little = pear("a", "70 ml");
        assertThat(LotState.of(little, List.of(little), List.of())).get().isInstanceOf(LotState.Little.class);
        LotOnShelf empty = pear("a", "0 ml");
        assertThat(LotState.of(empty, List.of(empty), taken())).contains(new LotState.Empty(1));
    }

    @Test
    void anAmountThatWasNeverSaidIsNotCalledLow() {
        LotOnShelf unsaid = Bottles.onShelf("a", "name", "Pear spirit", "kind", "spirit", "strength", "42 %");
        assertThat(LotState.of(unsaid, List.of(unsaid), taken())).isEqualTo(Optional.empty());
    }
}
