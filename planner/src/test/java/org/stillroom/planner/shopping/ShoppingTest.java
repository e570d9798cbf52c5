package org.stillroom.planner.shopping;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Typed;
import org.stillroom.planner.marks.Kitchen;

class ShoppingTest {
    private static Ingredient sold(
            String name, Kind kind, @Nullable String price, @Nullable String atHand, @Nullable String pack) {
        Typed<Strength> strength = kind == Kind.SPIRIT ? Kitchen.typed(Kitchen.TEXT.strength("96 %")) : null;
        return new Ingredient(
                name,
                kind,
                strength,
                null,
                null,
                null,
                null,
                null,
                price == null ? null : Kitchen.typed(Kitchen.TEXT.price(price)),
                atHand == null ? null : Kitchen.typed(Kitchen.TEXT.amount(atHand)),
                pack == null ? null : Kitchen.typed(Kitchen.TEXT.amount(pack)),
                Map.of(),
                null,
                null,
                null,
                null,
                null);
    }

    private static ShoppingList.Item item(ShoppingList list, String name) {
        return list.items().stream()
                .filter(item -> item.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static double amount(@Nullable Money money) {
        if (money == null) {
            throw new AssertionError("no cost");
        }
        return money.amount();
    }

    /** 1.2 L and 0.7 kg: sums by hand. */
    @Test
    void wholePacksAreBoughtAndTheCostOfWhatIsUsedIsToldApart() {
        Plan plan = new Kitchen()
                .ingredient(sold("grain spirit", Kind.SPIRIT, "28 EUR/L", null, "500 ml"))
                .ingredient(sold("white sugar", Kind.SUGAR, "1.30 EUR/kg", "300 g", "1 kg"))
                .amount("grain spirit", "1.2 L")
                .amount("white sugar", "250 g")
                .amount("white sugar", "450 g")
                .amount("water", "1 L")
                .plan();
        ShoppingList list = Shopping.of(plan);
        assertThat(item(list, "grain spirit").packs()).isEqualTo(3);
        assertThat(amount(item(list, "grain spirit").used())).isCloseTo(33.60, within(1e-9));
        assertThat(amount(item(list, "grain spirit").atTheTill())).isCloseTo(42.00, within(1e-9));
        assertThat(item(list, "grain spirit").neededMillilitres().orElseThrow()).isCloseTo(1200, within(1e-9));
        assertThat(item(list, "white sugar").packs()).isEqualTo(1);
        assertThat(item(list, "white sugar").neededGrams()).isCloseTo(700, within(1e-9));
        assertThat(item(list, "white sugar").leftGrams()).isCloseTo(600, within(1e-9));
        assertThat(list.used()).hasSize(1);
        assertThat(list.used().get(0).amount()).isCloseTo(33.60 + 0.91, within(1e-9));
        assertThat(list.atTheTill().get(0).amount()).isCloseTo(42.00 + 1.30, within(1e-9));
        assertThat(list.unpriced()).isEmpty();
    }

    @Test
    void currenciesStayApartAndUnknownPricesAreNamed() {
        Plan plan = new Kitchen()
                .ingredient(sold("grain spirit", Kind.SPIRIT, "28 EUR/L", null, null))
                .ingredient(sold("white sugar", Kind.SUGAR, "2 USD/kg", null, null))
                .amount("grain spirit", "1 L")
                .amount("white sugar", "500 g")
                .amount("citric acid", "5 g")
                .plan();
        ShoppingList list = Shopping.of(plan);
        assertThat(list.used()).extracting(Money::currency).containsExactly("EUR", "USD");
        assertThat(list.used().get(1).amount()).isCloseTo(1.0, within(1e-9));
        assertThat(list.unpriced()).containsExactly("citric acid");
    }

    @Test
    void whatIsAtHandIsNotBoughtAndAFullPackIsNotExceededByRounding() {
        Plan plan = new Kitchen()
                .ingredient(sold("grain spirit", Kind.SPIRIT, "14 EUR", "1 L", "500 ml"))
                .ingredient(sold("white sugar", Kind.SUGAR, "1 EUR", null, "100 g"))
                .amount("grain spirit", "1 L")
                .amount("white sugar", "300 g")
                .plan();
        ShoppingList list = Shopping.of(plan);
        assertThat(item(list, "grain spirit").packs()).isZero();
        assertThat(amount(item(list, "grain spirit").atTheTill())).isZero();
        assertThat(amount(item(list, "grain spirit").used())).isCloseTo(28.0, within(1e-9));
        assertThat(item(list, "white sugar").packs()).isEqualTo(3);
    }
}
