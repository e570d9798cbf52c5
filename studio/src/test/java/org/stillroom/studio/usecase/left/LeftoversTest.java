package org.stillroom.studio.usecase.left;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.safety.Grounds;
import org.stillroom.planner.leftovers.UseUp;
import org.stillroom.planner.shopping.ShoppingList;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.usecase.AmountLimits;
import org.stillroom.studio.usecase.shelf.Bottles;
import org.stillroom.studio.usecase.shelf.LotOnShelf;

/** What is left, what could be made of it, and using it up. */
class LeftoversTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 26);

    private static final LotOnShelf BAY = Bottles.onShelf(
            "1", "name", "bay tincture", "kind", "tincture", "strength", "70 %", "left", "40 ml", "full", "100 ml");
    private static final LotOnShelf QUINCE = Bottles.onShelf(
            "2",
            "name",
            "quince macerate",
            "kind",
            "macerate",
            "strength",
            "45 %",
            "left",
            "300 ml",
            "opened",
            "2025-01-10");
    private static final LotOnShelf SUGAR =
            Bottles.onShelf("3", "name", "white sugar", "kind", "sugar", "left", "150 g", "full", "1 kg");
    private static final List<LotOnShelf> SHELF = List.of(BAY, QUINCE, SUGAR);

    private static Candidate recipe(String title, String... lines) {
        String text = "stillroom: 1\ntitle: " + title + "\ntarget: {volume: 1 L, strength: 28 %, sugar: 200 g/L}\n"
                + "ingredients:\n  - {name: bay tincture, kind: tincture, strength: 60 %}\n"
                + "  - {name: quince macerate, kind: macerate, strength: 40 %}\nlines:\n"
                + String.join("\n", lines) + "\n  - {use: spirit 96 %, amount: free}\n"
                + "  - {use: white sugar, amount: free}\n  - {use: water, amount: make up}\n";
        RecipeReading reading = new RecipeReader(OunceMeaning.US_FLUID).read(text);
        return Candidate.of(title, Making.alone(((RecipeReading.Understood) reading).recipe()));
    }

    private static CouldMake.Ranking ranked(double most, Candidate... recipes) {
        return CouldMake.ranked(List.of(recipes), LeftOver.of(SHELF, TODAY), SHELF, most, Grounds.SHIPPED);
    }

    private static Candidate oiled(String oil, String dose) {
        String text = "stillroom: 1\ntitle: " + oil
                + "\ntarget: {volume: 1 L, strength: 40 %}\ningredients:\n  - {name: " + oil
                + ", kind: essential oil}\nlines:\n  - {use: " + oil + ", dose: " + dose
                + "}\n  - {use: spirit 96 %, amount: free}\n  - {use: water, amount: free}\n";
        RecipeReading reading = new RecipeReader(OunceMeaning.US_FLUID).read(text);
        return Candidate.of(oil, Making.alone(((RecipeReading.Understood) reading).recipe()));
    }

    /** What a recipe calls neutral spirit of 96 % stands on the shelf as spirit 96 %. */
    @Test
    void plainSpiritOfTheSameStrengthNeedNotBeBought() {
        String text = """
                stillroom: 1
                title: Bay
                target: {volume: 1 L, strength: 28 %}
                ingredients:
                  - {name: bay tincture, kind: tincture, strength: 60 %}
                  - {name: neutral spirit, kind: spirit, strength: STRENGTH}
                lines:
                  - {use: bay tincture, dose: 20 ml/L}
                  - {use: neutral spirit, amount: free}
                  - {use: water, amount: make up}
                """;
        List<LotOnShelf> shelf = List.of(
                BAY, Bottles.onShelf("4", "name", "spirit 96 %", "kind", "spirit", "strength", "96 %", "left", "5 L"));
        assertThat(bought(text.replace("STRENGTH", "96 %"), shelf)).isEmpty();
        assertThat(bought(text.replace("STRENGTH", "70 %"), shelf)).containsExactly("neutral spirit");
    }

    private static List<String> bought(String text, List<LotOnShelf> shelf) {
        RecipeReading reading = new RecipeReader(OunceMeaning.US_FLUID).read(text);
        Candidate recipe = Candidate.of("Bay", Making.alone(((RecipeReading.Understood) reading).recipe()));
        return CouldMake.ranked(List.of(recipe), LeftOver.of(shelf, TODAY), shelf, 5000, Grounds.SHIPPED)
                .could()
                .get(0)
                .buy()
                .stream()
                .map(ShoppingList.Item::name)
                .toList();
    }

    /** 21 CFR 189.180, sassafras; and 10 g/L of an oil of which 2 are plausible. */
    @Test
    void whatARuleStopsOrADoseIsAskedAboutIsNotOffered() {
        List<LotOnShelf> shelf = List.of(
                Bottles.onShelf("1", "name", "sassafras oil", "kind", "essential oil", "left", "5 ml"),
                Bottles.onShelf("2", "name", "lemon oil", "kind", "essential oil", "left", "5 ml"));
        CouldMake.Ranking ranking = CouldMake.ranked(
                List.of(oiled("sassafras oil", "0.3 g/L"), oiled("lemon oil", "10 g/L"), oiled("lemon oil", "0.3 g/L")),
                LeftOver.of(shelf, TODAY),
                shelf,
                2000,
                Grounds.SHIPPED);
        assertThat(ranking.could()).hasSize(1);
        assertThat(ranking.not()).extracting(Candidate::title).containsExactly("sassafras oil", "lemon oil");
        assertThat(ranking.not()).allMatch(not -> !not.problems().isEmpty());
    }

    /** Oleander is poisonous (general knowledge, from memory); bay is not. */
    @Test
    void bottlesThatNobodyIsToDrinkOfAreSaidAmongWhatIsLeft() {
        List<LotOnShelf> shelf = List.of(
                BAY,
                Bottles.onShelf(
                        "2", "name", "oleander tincture", "kind", "tincture", "strength", "70 %", "left", "40 ml"));
        List<Finding> told = LeftOver.told(shelf, LeftOver.of(shelf, TODAY), Grounds.SHIPPED);
        assertThat(told).singleElement().satisfies(finding -> {
            assertThat(finding.severity()).isEqualTo(Severity.STOP);
            assertThat(finding.where()).isEqualTo("oleander tincture");
        });
    }

    @Test
    void whatFlavoursIsLeftWithHowLongItHasBeenOpen() {
        List<LeftOver> left = LeftOver.of(SHELF, TODAY);
        assertThat(left).extracting(LeftOver::name).containsExactly("bay tincture", "quince macerate");
        assertThat(left.get(0).millilitres().orElseThrow()).isCloseTo(40, within(1e-9));
        assertThat(left.get(0).monthsOpen()).isEmpty();
        assertThat(left.get(0).isPast()).isFalse();
        assertThat(left.get(1).monthsOpen().orElseThrow()).isCloseTo(22.5, within(0.1)); // 685 days
        assertThat(left.get(1).isPast()).isTrue();
    }

    @Test
    void twoLotsOfOneNameAreLeftTogetherAndOneSetAsideIsNot() {
        LotOnShelf other = Bottles.onShelf(
                "4", "name", "Bay tincture", "kind", "tincture", "strength", "70 %", "left", "10 ml", "label", "lot 2");
        LotOnShelf aside = Bottles.onShelf(
                "5",
                "name",
                "fennel tincture",
                "kind",
                "tincture",
                "strength",
                "70 %",
                "left",
                "10 ml",
                "set aside",
                "yes");
        List<LeftOver> left = LeftOver.of(List.of(BAY, other, aside), TODAY);
        assertThat(left).hasSize(1);
        assertThat(left.get(0).millilitres().orElseThrow()).isCloseTo(50, within(1e-9));
    }

    /** 20 mL/L of 40 mL is enough for 2 L; 400 mL/L of 300 mL for 750 mL. */
    @Test
    void recipesAreRankedByHowManyBottlesTheyEmptyInTheSizeThatTheShelfIsEnoughFor() {
        Candidate weak = recipe("Weak", "  - {use: bay tincture, dose: 2 ml/L}");
        Candidate bay = recipe("Bay", "  - {use: bay tincture, dose: 20 ml/L}");
        Candidate both =
                recipe("Both", "  - {use: bay tincture, dose: 20 ml/L}", "  - {use: quince macerate, dose: 400 ml/L}");
        Candidate none = recipe("None", "  - {use: honey, amount: 10 g}");
        CouldMake.Ranking ranking = ranked(5000, weak, bay, both, none);
        assertThat(ranking.could()).extracting(each -> each.recipe().title()).containsExactly("Both", "Bay", "Weak");
        CouldMake first = ranking.could().get(0);
        assertThat(first.plan().millilitres()).isCloseTo(750, within(0.01));
        assertThat(first.emptied()).isCloseTo(1.375, within(1e-4)); // all of the macerate, 15 of 40 mL
        assertThat(first.whole()).isEqualTo(1);
        assertThat(first.inPart()).isEqualTo(1);
        assertThat(first.uses().get(0).of().name()).isEqualTo("quince macerate");
        assertThat(ranking.could().get(1).plan().millilitres()).isCloseTo(2000, within(0.01));
        assertThat(ranking.could().get(2).plan().millilitres()).isCloseTo(5000, within(0.01));
        assertThat(ranking.could().get(2).emptied()).isCloseTo(0.25, within(1e-6));
    }

    /** The lot is of 45 % vol and the recipe says 40: what the shelf holds counts. */
    @Test
    void theShelfsOwnStrengthIsPlannedWithAndWhatIsWantingIsBought() {
        CouldMake could = ranked(750, recipe("Quince", "  - {use: quince macerate, dose: 400 ml/L}"))
                .could()
                .get(0);
        assertThat(could.plan().lines().get(0).ingredient().ingredient().strength())
                .isNotNull()
                .extracting(strength -> strength.text())
                .isEqualTo("45 %");
        assertThat(Essentials.of(could.plan().liquid().toGrams()).strength()).isCloseTo(28, within(1e-6));
        assertThat(could.buy())
                .extracting(ShoppingList.Item::name)
                .containsExactly("spirit 96 %"); // 150 g of sugar are there
        CouldMake larger = ranked(5000, recipe("Bay", "  - {use: bay tincture, dose: 20 ml/L}"))
                .could()
                .get(0);
        assertThat(larger.buy()).extracting(ShoppingList.Item::name).containsExactly("spirit 96 %", "white sugar");
        assertThat(larger.buy().get(1).boughtGrams()).isCloseTo(400 - 150, within(0.1));
    }

    @Test
    void amongAlikeOnesTheOneForWhichLeastIsBoughtComesFirst() {
        Candidate costly =
                recipe("A costly one", "  - {use: bay tincture, dose: 20 ml/L}", "  - {use: honey, amount: 10 g}");
        Candidate plain = recipe("Plain", "  - {use: bay tincture, dose: 20 ml/L}");
        assertThat(ranked(2000, costly, plain).could())
                .extracting(each -> each.recipe().title())
                .containsExactly("Plain", "A costly one");
    }

    private static PlanUseUp.Outcome useUp(String most, String... extracts) {
        return PlanUseUp.answer(
                new PlanUseUp.Wish(List.of(extracts), "28 %", "200 g/L", most),
                LeftOver.of(SHELF, TODAY),
                List.of(recipe("Bay", "  - {use: bay tincture, dose: 20 ml/L}")),
                OunceMeaning.US_FLUID,
                Grounds.SHIPPED);
    }

    @Test
    void twoExtractsAreUsedUpTogetherByTheStrongestDoseOfTheMakersRecipes() {
        PlanUseUp.Outcome.Found found = (PlanUseUp.Outcome.Found) useUp("3 L", "bay tincture", "quince macerate");
        assertThat(found.useUp().isAll()).isTrue();
        assertThat(found.useUp().plan().millilitres()).isCloseTo(2000, within(10.0)); // 40 mL at 20 mL/L
        assertThat(found.findings())
                .extracting(Finding::rule)
                .contains("use-up-no-bound", "use-up-past")
                .doesNotContain("use-up-at-its-most");
        RecipeReading again = new RecipeReader(OunceMeaning.US_FLUID).read(found.text());
        assertThat(again).isInstanceOf(RecipeReading.Understood.class);
        assertThat(Essentials.of(found.worked().plan().liquid().toGrams()).strength())
                .isCloseTo(28, within(1e-6));
    }

    @Test
    void aBoundOfOnesOwnHoldsAndWhatStaysIsTold() {
        PlanUseUp.Outcome.Found found =
                (PlanUseUp.Outcome.Found) useUp("1 L", "bay tincture=10 ml/L", "quince macerate=1 L/L");
        UseUp.Used bay = found.useUp().used().get(0);
        assertThat(bay.part()).isCloseTo(0.25, within(1e-6));
        assertThat(found.findings())
                .filteredOn(finding -> finding.rule().equals("use-up-at-its-most"))
                .singleElement()
                .extracting(Finding::message)
                .asString()
                .contains("30.0 mL stay");
    }

    private static PlanUseUp.Outcome.Found oils(String strength, String most, String... extracts) {
        List<LotOnShelf> shelf = List.of(
                Bottles.onShelf("1", "name", "sage oil", "kind", "essential oil", "left", "5 ml"),
                Bottles.onShelf("2", "name", "lemon oil", "kind", "essential oil", "left", "5 ml"));
        return (PlanUseUp.Outcome.Found) PlanUseUp.answer(
                new PlanUseUp.Wish(List.of(extracts), strength, "100 g/L", most),
                LeftOver.of(shelf, TODAY),
                List.of(),
                OunceMeaning.US_FLUID,
                Grounds.SHIPPED);
    }

    private static List<Finding> stops(PlanUseUp.Outcome.Found found) {
        return found.findings().stream()
                .filter(finding -> finding.severity() == Severity.STOP)
                .toList();
    }

    private static double perLitre(PlanUseUp.Outcome.Found found, int place) {
        return found.useUp().used().get(place).perLitre();
    }

    /** 21 CFR 172.510 with TTB Industry Circular 2007-5: thujone below 10 mg/kg; the most of what is plausible of sage oil holds a hundred times that. */
    @Test
    void ofWhatTheLawLimitsNoMoreGoesInThanItAllowsAtWorst() {
        PlanUseUp.Outcome.Found found = oils("60 %", "2 L", "sage oil");
        assertThat(stops(found)).noneMatch(finding -> finding.message().startsWith("Thujone"));
        assertThat(found.findings())
                .filteredOn(finding -> finding.rule().equals("use-up-at-its-most"))
                .singleElement()
                .extracting(Finding::message)
                .asString()
                .contains("as law and your house allow");
        assertThat(AmountLimits.of(Map.of("sage oil", 1.1 * perLitre(found, 0)), Grounds.SHIPPED))
                .as("a tenth more is too much")
                .anyMatch(finding -> finding.severity() == Severity.STOP);
    }

    /** What is handed on is the file: its amounts, as they are written, keep the limits too. */
    @Test
    void theFileKeepsTheLimitsAsItIsWritten() {
        for (String most : List.of("50 ml", "500 ml", "2 L")) {
            PlanUseUp.Outcome.Found found = oils("60 %", most, "sage oil");
            Recipe recipe =
                    ((RecipeReading.Understood) new RecipeReader(OunceMeaning.US_FLUID).read(found.text())).recipe();
            Planning.Planned planned = (Planning.Planned) Planner.plan(Making.alone(recipe));
            assertThat(AmountLimits.of(planned.plan(), Grounds.SHIPPED))
                    .as(most)
                    .noneMatch(finding -> finding.severity() == Severity.STOP);
            assertThat(planned.plan().lines().get(0).grams())
                    .isCloseTo(found.worked().plan().lines().get(0).grams(), withinPercentage(0.51));
        }
    }

    @Test
    void ofAnOilNoMoreGoesInThanStaysClearUnlessItsMakerSaysHowMuch() {
        PlanUseUp.Outcome.Found found = oils("28 %", "2 L", "lemon oil");
        assertThat(found.findings()).noneMatch(finding -> finding.message().contains("will be cloudy"));
        assertThat(found.findings()).anyMatch(finding -> finding.message().contains("as stays clear by the forecast"));
        assertThat(perLitre(oils("28 %", "2 L", "lemon oil=0.4 g/L"), 0)).isCloseTo(0.4, within(1e-6));
        assertThat(perLitre(found, 0)).isBetween(0.01, 0.2);
        assertThat(oils("28 %", "2 L", "lemon oil=" + 1.3 * perLitre(found, 0) + " g/L")
                        .findings())
                .anyMatch(finding -> finding.message().contains("will be hazy")
                        || finding.message().contains("will be cloudy"));
    }

    @Test
    void eachIsHeldBackByWhatItBrings() {
        PlanUseUp.Outcome.Found found = oils("28 %", "2 L", "sage oil", "lemon oil");
        assertThat(stops(found)).noneMatch(finding -> finding.message().startsWith("Thujone"));
        assertThat(found.findings()).noneMatch(finding -> finding.message().contains("will be cloudy"));
        assertThat(perLitre(found, 0))
                .as("the little sage that law allows hardly clouds")
                .isGreaterThan(0.5 * perLitre(oils("28 %", "2 L", "sage oil"), 0));
        assertThat(perLitre(found, 1)).isGreaterThan(0.5 * perLitre(oils("28 %", "2 L", "lemon oil"), 0));
    }

    @Test
    void whatCannotBeIsTold() {
        assertThat(wrong(useUp("2 L", "moon dust"))).contains("Of “moon dust” nothing is left");
        assertThat(wrong(useUp("2 L"))).contains("No extract is named");
        assertThat(wrong(useUp("2 L", "bay tincture", "Bay tincture"))).contains("named twice");
        assertThat(wrong(useUp("2 L", "bay tincture=much"))).contains("much");
        assertThat(wrong(useUp("0 L", "bay tincture"))).contains("Nothing at all");
        assertThat(wrong(useUp("soon", "bay tincture"))).contains("soon");
    }

    private static String wrong(PlanUseUp.Outcome outcome) {
        return ((PlanUseUp.Outcome.Refused) outcome).problems().get(0).message();
    }
}
