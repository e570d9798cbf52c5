package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.reference.Finding;

/** A drink is judged by the bottles that it is poured from, not by what its recipe says of them. */
@Tag("property")
class DrawnTest {
    private static final String LINE = "herb tincture";

    private static Ingredient tincture(String plant, String ratio) {
        return Bench.extract(LINE, Kind.TINCTURE, 60.0, plant, ratio);
    }

    private static Bench recipe() {
        return recipe(tincture("lemon balm", "1:10"));
    }

    private static Bench recipe(Ingredient tincture) {
        return new Bench().grams(tincture, 50.0).strong("neutral spirit", Kind.SPIRIT, 40.0, 950.0);
    }

    private static double thujone(Bench bench) {
        return bench.amount("thujone").perKilogram().most();
    }

    private static List<String> verdicts(Bench bench) {
        return bench.safety().findings().stream().map(Finding::verdict).toList();
    }

    @Test
    void aBottleSpeaksByItsPlantAndRatio() {
        Ingredient wormwood = tincture("dried wormwood", "1:5");
        assertThat(recipe().safety().drink().amount("thujone")).isNull();
        assertThat(thujone(recipe().poured(LINE, wormwood))).isCloseTo(thujone(recipe(wormwood)), within(1e-9));
    }

    /** Five times as much plant stands in the second. */
    @Test
    void ofSeveralTheMostAdverseCountsAndNotTheirSum() {
        Ingredient weak = tincture("dried wormwood", "1:10");
        Ingredient strong = tincture("dried wormwood", "1:2");
        double both = thujone(recipe().poured(LINE, weak, strong));
        assertThat(both).isCloseTo(thujone(recipe().poured(LINE, strong)), within(1e-9));
        assertThat(both).isCloseTo(5.0 * thujone(recipe().poured(LINE, weak)), within(1e-6 * both));
        assertThat(thujone(recipe().poured(LINE, strong, weak))).isCloseTo(both, within(1e-9));
    }

    /** Where one of them brings none, there may be none. */
    @Test
    void aBottleThatBringsNoneTakesNothingFromTheOthers() {
        Bench oils = new Bench()
                .grams("sage oil", Kind.ESSENTIAL_OIL, 0.1)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
        double most = thujone(oils);
        assertThat(oils.amount("thujone").perKilogram().least()).isPositive();
        Ingredient lemon = Ingredient.named("lemon oil", Kind.ESSENTIAL_OIL).described("lemon", null);
        Ingredient sage = Ingredient.named("sage oil", Kind.ESSENTIAL_OIL);
        Amount either = oils.poured("sage oil", sage, lemon).amount("thujone");
        assertThat(either.perKilogram().most()).isCloseTo(most, within(1e-9));
        assertThat(either.perKilogram().least()).isZero();
    }

    @Test
    void whatTheNoteOfAnyOfThemSaysIsTold() {
        Ingredient plain = tincture("lemon balm", "1:10");
        Ingredient nuts = plain.described("lemon balm", "contains hazelnuts");
        assertThat(verdicts(recipe().poured(LINE, plain))).noneMatch(verdict -> verdict.contains("nuts"));
        assertThat(verdicts(recipe().poured(LINE, plain, nuts))).anyMatch(verdict -> verdict.contains("nuts"));
    }

    @Test
    void ofAPoisonousPlantInOneOfThemItIsStopped() {
        assertThat(recipe().safety().isStopped()).isFalse();
        Bench either = recipe().poured(LINE, tincture("lemon balm", "1:10"), tincture("oleander", "1:10"));
        assertThat(either.safety().isStopped()).isTrue();
    }

    @Test
    void whatIsAddedUpIsAddedUpOnce() {
        Bench egg = new Bench().grams("egg yolk", Kind.EGG, 140.0).strong("neutral spirit", Kind.SPIRIT, 40.0, 860.0);
        double once = Held.yolk(egg.safety().drink()).gramsPerLitre().most();
        Ingredient yolk = Ingredient.named("egg yolk", Kind.EGG);
        Bench either = egg.poured("egg yolk", yolk, yolk.described(null, "of our own hens"));
        assertThat(Held.yolk(either.safety().drink()).gramsPerLitre().most()).isCloseTo(once, within(1e-9));
    }

    /** 200 g of a macerate of 40 % vol (0.948 g/mL, OIML R 22) are 211 mL; at 1:5 they hold 42.2 g of sloes, at 1:10 half of it. */
    @Test
    void ofWhatIsAddedUpEachBottleMayBeAllOfTheLine() {
        Bench one = new Bench()
                .grams(Bench.extract("sloe macerate", Kind.MACERATE, 40.0, "sloe", "1:5"), 200.0)
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 800.0);
        Bench either = one.poured(
                "sloe macerate",
                Bench.extract("sloe macerate", Kind.MACERATE, 40.0, "sloe", "1:5"),
                Bench.extract("sloe macerate", Kind.MACERATE, 40.0, "sloe", "1:10"));
        Drink drink = either.safety().drink();
        assertThat(Held.sloes(drink).gramsPerLitre().least() * drink.litres()).isCloseTo(21.1, within(0.01));
        assertThat(Held.sloes(drink).gramsPerLitre().most() * drink.litres()).isCloseTo(42.2, within(0.02));
    }
}
