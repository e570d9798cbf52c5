package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;

/** What words and kinds tell of what went into a drink. */
class WentInTest {
    private static final long SEED = 1128;
    private static final List<String> JUNIPER = List.of("juniper", "gin");

    private static boolean mayHoldJuniper(Bench drink) {
        return drink.safety().wentIn().stream().anyMatch(went -> went.isNamed(JUNIPER) || !went.tellsPlants());
    }

    private static Bench in(String spirit) {
        return new Bench().strong(spirit, Kind.SPIRIT, 40.0, 900.0).grams("white sugar", Kind.SUGAR, 90.0);
    }

    /** Returns what went in last. */
    private static WentIn last(Bench drink) {
        List<WentIn> all = drink.safety().wentIn();
        return all.get(all.size() - 1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"fennel", "dried pear", "lemon peel", "Bitterorangenschale", "quince", "sloe", "vanilla pods"})
    void aDrinkOfKnownPlantsHasNoOther(String plant) {
        assertThat(mayHoldJuniper(in("neutral spirit").grams(plant, Kind.DRIED_PLANT, 10.0)))
                .isFalse();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "juniper berries",
                "Wacholderbeeren",
                "Juniperus communis",
                "house herbs",
                "fennel mix",
                "bark of grandmother"
            })
    void aPlantThatIsNamedOrUnknownMayBeIt(String plant) {
        assertThat(mayHoldJuniper(in("neutral spirit").grams(plant, Kind.DRIED_PLANT, 10.0)))
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "neutral spirit, false",
        "spirit 96 %, false",
        "vodka 40 %, false",
        "white rum, false",
        "Weingeist, false",
        "rye whiskey, false",
        "gin, true",
        "gin 40 %, true",
        "house spirit, true",
        "bitters, true",
        "pear brandy, false"
    })
    void aSpiritIsOfGrainOrGrapesOnlyWhereItSaysSo(String spirit, boolean may) {
        assertThat(mayHoldJuniper(in(spirit))).isEqualTo(may);
    }

    @ParameterizedTest
    @CsvSource({
        "neutral spirit, true, true",
        "spirit 96 %, true, true",
        "Wodka, true, true",
        "gin, true, false",
        "bourbon whiskey, true, false",
        "pear brandy, true, false",
        "Kirschwasser 45 %, true, false",
        "house spirit, false, false",
        "herb spirit, false, false",
        "spirit of my uncle, false, false"
    })
    void aSpiritTellsWhichItIs(String spirit, boolean tells, boolean flavourless) {
        WentIn went = in(spirit).safety().wentIn().get(0);
        assertThat(went.tellsAlcohol()).isEqualTo(tells);
        assertThat(went.isWithoutFlavour()).isEqualTo(flavourless);
    }

    @ParameterizedTest
    @CsvSource({
        "white sugar, SUGAR, true",
        "Kristallzucker, SUGAR, true",
        "vanilla sugar, SUGAR, false",
        "muscovado, SUGAR, false",
        "water, WATER, true",
        "rose water, WATER, false",
        "honey, HONEY, false",
        "milk, DAIRY, false"
    })
    void onlyPlainThingsFlavourNothing(String name, Kind kind, boolean flavourless) {
        assertThat(last(in("neutral spirit").grams(name, kind, 50.0)).isWithoutFlavour())
                .isEqualTo(flavourless);
    }

    @Test
    void plantsBesideAreThoseThatNoWordNames() {
        List<String> gentian = List.of("gentian", "wormwood");
        assertThat(beside("gentian root", gentian)).isEmpty();
        assertThat(beside("Enzianwurzel", gentian)).isEmpty();
        assertThat(beside("Gentiana lutea", gentian)).isEmpty();
        assertThat(beside("orange peel", gentian)).containsExactly("sweet orange");
        assertThat(beside("gentian and orange peel", gentian)).containsExactly("sweet orange");
        assertThat(beside("Schlehen", gentian)).hasSize(1);
        assertThat(beside("house herbs", gentian)).isEmpty();
    }

    private static List<String> beside(String plant, List<String> words) {
        return last(in("neutral spirit").grams(plant, Kind.DRIED_PLANT, 5.0)).plantsBeside(words);
    }

    /** By hand: 100 g of 40 % vol and 300 g of the same bring a quarter and three quarters, of the alcohol and of the volume. */
    @Test
    void partsAreOfTheWholeDrink() {
        List<WentIn> all = new Bench()
                .strong("rum", Kind.SPIRIT, 40.0, 100.0)
                .strong("vodka", Kind.SPIRIT, 40.0, 300.0)
                .safety()
                .wentIn();
        assertThat(all.get(0).alcohol().least()).isCloseTo(0.25, within(1e-9));
        assertThat(all.get(1).alcohol().most()).isCloseTo(0.75, within(1e-9));
        assertThat(all.get(0).volume().least()).isCloseTo(0.25, within(1e-9));
        assertThat(last(in("rum").grams("sloe", Kind.DRIED_PLANT, 10.0)).volume())
                .isEqualTo(Range.NOTHING);
    }

    /** Annex I 32 asks for 125 g of sloes a litre: fresh ones count as they are, of dried ones nobody knows what they weighed. */
    @Test
    void sloesCountFresh() {
        Held fresh = sloes(in("neutral spirit").fresh("Schlehen", 80.0, 100.0));
        assertThat(fresh.isKnown()).isTrue();
        assertThat(fresh.gramsPerLitre().least()).isBetween(80.0, 100.0);
        Held dried = sloes(in("neutral spirit").grams("sloes", Kind.DRIED_PLANT, 100.0));
        assertThat(dried.isKnown()).isFalse();
        assertThat(sloes(in("neutral spirit"))).isEqualTo(new Held(Range.NOTHING, true));
    }

    private static Held sloes(Bench drink) {
        return Objects.requireNonNull(drink.safety().held().get("sloe"));
    }

    /** Words of no language tell nothing, whatever kind they are given. */
    @Test
    @Tag("property")
    void wordsThatNobodyKnowsTellNothing() {
        Random random = new Random(SEED);
        for (int i = 0; i < 200; i++) {
            StringBuilder name = new StringBuilder("q");
            for (int letter = 0; letter < 7; letter++) {
                name.append("bcdfghjkqvwxz".charAt(random.nextInt(13)));
            }
            for (Kind kind : List.of(Kind.DRIED_PLANT, Kind.ESSENTIAL_OIL, Kind.SUGAR)) {
                WentIn went = last(in("neutral spirit").grams(Ingredient.named(name.toString(), kind), 5.0));
                assertThat(went.isWithoutFlavour())
                        .as("seed %s: %s, a %s", SEED, name, kind)
                        .isFalse();
                assertThat(went.plantsBeside(List.of()))
                        .as("seed %s: %s", SEED, name)
                        .isEmpty();
                assertThat(went.tellsPlants())
                        .as("seed %s: %s, a %s", SEED, name, kind)
                        .isEqualTo(kind == Kind.SUGAR);
            }
            for (Kind kind : List.of(Kind.SPIRIT, Kind.WINE, Kind.LIQUEUR, Kind.TINCTURE, Kind.DISTILLATE)) {
                WentIn went = last(new Bench()
                        .strong("neutral spirit", Kind.SPIRIT, 40.0, 500.0)
                        .strong(name.toString(), kind, 30.0, 100.0));
                assertThat(went.tellsPlants())
                        .as("seed %s: %s, a %s", SEED, name, kind)
                        .isFalse();
                assertThat(went.tellsAlcohol())
                        .as("seed %s: %s, a %s", SEED, name, kind)
                        .isFalse();
            }
        }
    }
}
