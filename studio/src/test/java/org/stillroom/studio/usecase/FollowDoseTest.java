package org.stillroom.studio.usecase;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.extraction.ExtractStrength;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.PlantRatio;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.studio.usecase.shelf.Bottles;
import org.stillroom.studio.usecase.shelf.LotOnShelf;

class FollowDoseTest {
    private static final FollowDose FOLLOW = new FollowDose(new QuantityText(OunceMeaning.US_FLUID));
    private static final LotOnShelf FIVE = lot("1", "ratio", "1:5");
    private static final LotOnShelf EIGHT = lot("2", "ratio", "1:8");

    private static LotOnShelf lot(String id, String key, String text) {
        return Bottles.onShelf(
                id, "name", "bay tincture", "kind", "tincture", "strength", "60 %", "left", "100 ml", key, text);
    }

    private static FollowDose.Extract extract(LotOnShelf lot) {
        return Objects.requireNonNull(FollowDose.Extract.of(lot));
    }

    private static FollowDose.@Nullable Offer offer(LotOnShelf recipes, LotOnShelf other, String amount) {
        return FOLLOW.answer(extract(recipes), extract(other), amount, Map.of()).stream()
                .filter(offer -> !offer.isSame())
                .findFirst()
                .orElse(null);
    }

    /** 1:8 is 5/8 as strong as 1:5, so that 8/5 of the dose do the same. */
    @ParameterizedTest
    @Tag("property")
    @CsvSource({"12 ml/L, 19.2 ml/L", "40 ml, 64.0 ml", "24 drops/L, 38.4 drops/L", "0.05 g/L, 80.0 mg/L"})
    void theDoseFollowsThePlantInTheExtract(String before, String after) {
        FollowDose.Offer offer = Objects.requireNonNull(offer(FIVE, EIGHT, before));

        assertThat(offer.basis()).isEqualTo(FollowDose.Basis.RATIO);
        assertThat(offer.found().times().value()).isCloseTo(0.625, within(1e-12));
        assertThat(offer.after()).isEqualTo(after);
    }

    @Test
    void theDoseFollowsTheOilWhereNothingElseIsKnown() {
        FollowDose.Offer offer =
                Objects.requireNonNull(offer(lot("3", "oil", "20 g/L"), lot("4", "aroma", "laurel 25 g/L"), "10 ml/L"));

        assertThat(offer.basis()).isEqualTo(FollowDose.Basis.OIL);
        assertThat(offer.after()).isEqualTo("8.00 ml/L");
    }

    @Test
    void whatWasTastedGoesBeforeWhatIsReckonedAndIsInDoubt() {
        List<FollowDose.Offer> offers = FOLLOW.answer(
                extract(FIVE),
                extract(EIGHT),
                "12 ml/L",
                Map.of(
                        FollowDose.Basis.TASTE,
                        ExtractStrength.byComparison(List.of(new ExtractStrength.Comparison(10, 12)))));

        assertThat(offers)
                .extracting(FollowDose.Offer::basis)
                .containsExactly(FollowDose.Basis.TASTE, FollowDose.Basis.RATIO);
        FollowDose.Offer offer = offers.get(0);
        assertThat(offer.after()).isEqualTo("14.4 ml/L");
        assertThat(offer.found().findings())
                .extracting(finding -> finding.rule())
                .contains("by-comparison");
    }

    /** 12 % of carvone in the old lot and 17 % in the new: 24 drops become 24 · 12/17; nothing need be known of either otherwise. */
    @Test
    @Tag("property")
    void theDoseFollowsAConstituent() {
        List<FollowDose.Offer> offers = FOLLOW.answer(
                null, null, "24 drops/L", Map.of(FollowDose.Basis.CONSTITUENT, ExtractStrength.byContent(12, 17)));

        assertThat(offers).hasSize(1);
        assertThat(offers.get(0).after()).isEqualTo("16.9 drops/L");
        assertThat(offers.get(0).found().alcohol()).isNull();
        FollowDose.Offer same = FOLLOW.answer(
                        null,
                        null,
                        "24 drops/L",
                        Map.of(FollowDose.Basis.CONSTITUENT, ExtractStrength.byContent(12, 12.1)))
                .get(0);
        assertThat(same.isSame()).isTrue();
        assertThat(same.after()).isEqualTo("24 drops/L");
    }

    @Test
    void nothingIsOfferedWhereNothingFollows() {
        LotOnShelf plain = Bottles.onShelf("5", "name", "bay", "kind", "tincture", "strength", "60 %", "left", "10 ml");

        assertThat(offer(FIVE, plain, "12 ml/L")).isNull();
        assertThat(offer(FIVE, EIGHT, "free")).isNull();
        assertThat(offer(FIVE, lot("6", "ratio", "1:5"), "12 ml/L")).isNull();
    }

    /** What a recipe lists may say no ratio; then another lot of its name tells it. */
    @Test
    void aRecipeCountsOnItsOwnRatioElseOnThatOfTheOtherLots() {
        Ingredient silent = Objects.requireNonNull(lot("7", "drop", "0.02 g").ingredient());
        Ingredient says = Objects.requireNonNull(lot("8", "ratio", "100 g/L").ingredient());

        assertThat(ratio(silent)).isEqualTo(new PlantRatio(0.2));
        assertThat(ratio(says)).isEqualTo(new PlantRatio(0.1));
    }

    private static @Nullable PlantRatio ratio(Ingredient listed) {
        return Objects.requireNonNull(FollowDose.Extract.of(listed, List.of(FIVE, EIGHT), "2"))
                .ratio();
    }
}
