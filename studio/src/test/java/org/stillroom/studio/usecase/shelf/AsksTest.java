package org.stillroom.studio.usecase.shelf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.studio.recipefile.SheetProblem;

class AsksTest {
    /** Names that say which acid it is; other kinds need no such name. */
    private static String name(String kind) {
        return kind.equals(Kind.ACID.label()) ? "citric acid of my shelf" : "mine";
    }

    private static List<String> kinds() {
        return ShelfLots.kinds();
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void everyExampleIsUnderstoodOnItsOwnBesideWhatIsNeeded(String kind) {
        for (Asked asked : Asks.of(kind)) {
            List<String> pairs = new ArrayList<>(List.of("name", name(kind), "kind", kind));
            needed(kind).stream()
                    .filter(each -> !each.key().equals(asked.key()))
                    .forEach(each -> {
                        pairs.add(each.key());
                        pairs.add(each.example());
                    });
            pairs.add(asked.key());
            pairs.add(asked.example());
            if (kind.equals(Kind.OTHER.label()) && !asked.key().equals("water")) {
                pairs.add("water"); // any content will do, and one is needed
                pairs.add("50 %");
            }
            assertThat(Bottles.problems(pairs.toArray(String[]::new)))
                    .as(kind + ", " + asked.key())
                    .isEmpty();
        }
    }

    @ParameterizedTest
    @MethodSource("kinds")
    void whatIsCalledNeededIsMissedAtItsOwnField(String kind) {
        List<String> missed = Bottles.problems("name", name(kind), "kind", kind).stream()
                .map(SheetProblem::key)
                .toList();
        List<String> needed = needed(kind).stream().map(Asked::key).toList();
        assertThat(missed).isEqualTo(kind.equals(Kind.OTHER.label()) ? List.of("content") : needed);
    }

    @Test
    void aLotsIngredientHasWhatIsLeftAsTheAmountAtHandAndWhatWasPaidAsItsPrice() {
        LotOnShelf lot = Bottles.onShelf(
                "a",
                "name",
                "Plum brandy",
                "kind",
                "spirit",
                "strength",
                "42 %",
                "left",
                "430 ml",
                "full",
                "0.7 L",
                "paid",
                "21 EUR");
        assertThat(Objects.requireNonNull(lot.ingredient()).atHand())
                .extracting(typed -> Objects.requireNonNull(typed).text())
                .isEqualTo("430 ml");
        assertThat(Objects.requireNonNull(lot.ingredient().price()).value().amount())
                .isEqualTo(21.0, within(1e-12));
        assertThat(Objects.requireNonNull(lot.ingredient().pack()).text()).isEqualTo("700 ml");
    }

    private static List<Asked> needed(String kind) {
        return Asks.of(kind).stream()
                .filter(asked -> asked.need() == Asked.Need.NEEDED)
                .toList();
    }
}
