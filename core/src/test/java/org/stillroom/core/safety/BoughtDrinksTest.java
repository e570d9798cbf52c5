package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** What a label has to say of bought drinks, and substances that no food may hold as such. */
class BoughtDrinksTest {
    private static Bench with(String name, Kind kind) {
        Bench drink = new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 500.0);
        return kind == Kind.SYRUP
                ? drink.holding(name, kind, Substance.SUCROSE, 50.0, 100.0)
                : drink.strong(name, kind, 20.0, 100.0);
    }

    @ParameterizedTest
    @CsvSource({
        "pastis, LIQUEUR, glycyrrhizic acid",
        "pastis, SPIRIT, glycyrrhizic acid",
        "cola, OTHER, caffeine",
        "energy drink, OTHER, caffeine",
        "Energy-Drink, OTHER, caffeine",
        "mate tea, OTHER, caffeine",
        "Matetee, OTHER, caffeine",
        "coffee liqueur, LIQUEUR, caffeine",
        "Kaffeelikör, LIQUEUR, caffeine",
        "matcha syrup, SYRUP, caffeine",
        "guarana extract, TINCTURE, caffeine",
        "Grüntee-Likör, LIQUEUR, caffeine",
        "tonic, OTHER, quinine",
        "bitter lemon, OTHER, quinine",
        "Lakritzlikör, LIQUEUR, glycyrrhizic acid",
    })
    void whatABoughtDrinkIsKnownToHoldIsToBeSaidThoughNobodyKnowsHowMuch(String name, Kind kind, String watched) {
        Bench drink = with(name, kind);
        assertThat(drink.amount(watched).isKnown()).isFalse();
        assertThat(drink.findings("eu-statement"))
                .anyMatch(finding -> finding.verdict().equals("to be said unless shown otherwise")
                        && finding.where().contains(name));
    }

    @ParameterizedTest
    @CsvSource({
        "amaro, LIQUEUR, liquorice",
        "Kräuterlikör, LIQUEUR, liquorice",
        "sambuca, LIQUEUR, liquorice",
        "amaro, LIQUEUR, quinine",
        "vermouth, WINE, quinine",
        "Irish cream, LIQUEUR, caffeine",
        "monastery secret, LIQUEUR, liquorice",
        "house cordial, SYRUP, caffeine",
    })
    void whatItMayHoldIsAsked(String name, Kind kind, String of) {
        assertThat(with(name, kind).findings("eu-statement"))
                .anyMatch(finding -> finding.verdict().equals("not known: ask")
                        && finding.where().contains(name)
                        && finding.message().contains(of)
                        && finding.remedy().contains(of));
    }

    @Test
    void aSpiritThatIsNamedAsNothingElseIsNotAsked() {
        assertThat(new Bench()
                        .strong("neutral spirit", Kind.SPIRIT, 96.0, 500.0)
                        .strong("rosemary tincture", Kind.TINCTURE, 60.0, 10.0)
                        .findings("eu-statement"))
                .isEmpty();
    }

    private static Bench carrying(String name, String aroma) {
        return new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 900.0)
                .carrying(name, Kind.ESSENCE, 60.0, aroma, 10.0);
    }

    @ParameterizedTest
    @CsvSource({
        "coumarin in alcohol, coumarin 20 g/L",
        "coumarin solution, coumarin 20 g/L",
        "Cumarin Tinktur, Cumarin 20 g/L",
        "root extract, safrole 5 g/L",
        "my essence, beta-Thujon 1 g/L",
    })
    void whatCarriesOneForbiddenSubstanceAndNoPlantIsThatSubstance(String name, String aroma) {
        assertThat(carrying(name, aroma).findings("eu-not-as-such"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.severity()).isEqualTo(Severity.STOP));
    }

    @Test
    void whatComesWithANamedPlantIsNotAddedAsSuch() {
        assertThat(carrying("woodruff essence", "coumarin 2 g/L").findings("eu-not-as-such"))
                .isEmpty();
        assertThat(carrying("my essence", "linalool 5 g/L, estragole 1 g/L").findings("eu-not-as-such"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.severity()).isEqualTo(Severity.CAUTION));
    }

    @Test
    void aSolutionOfAnythingWatchedIsKnownForItThoughNobodySaysHowStrongItIs() {
        Bench drink = new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 900.0)
                .strong("menthol solution", Kind.TINCTURE, 60.0, 10.0);
        assertThat(drink.amount("menthol").isKnown()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "not denatured ethanol",
        "ethanol non-denatured",
        "Alkohol nicht vergällt",
        "nicht denaturierter Alkohol",
        "unvergällter Alkohol",
    })
    void whatIsSaidNotToBeDenaturedAsksAndDoesNotStop(String name) {
        assertThat(with(name, Kind.SPIRIT).findings("wrong-alcohol"))
                .extracting(Finding::severity, Finding::verdict)
                .containsExactly(tuple(Severity.CAUTION, "said not to be denatured"));
    }

    @ParameterizedTest
    @CsvSource({
        "not fully denatured alcohol",
        "nicht nur vergällter Alkohol",
        "not for drinking denatured",
        "not denatured methanol"
    })
    void anythingLessThanAClearNoStops(String name) {
        assertThat(with(name, Kind.SPIRIT).findings("wrong-alcohol"))
                .anyMatch(finding -> finding.severity() == Severity.STOP);
    }

    @ParameterizedTest
    @CsvSource({"house cordial, SYRUP, true", "dried hibiscus, DRIED_PLANT, true", "strong macerate, MACERATE, false"})
    void whatMayBringYeastIntoAWeakSweetDrinkIsSaid(String name, Kind kind, boolean said) {
        Bench drink = new Bench()
                .strong("neutral spirit", Kind.SPIRIT, 40.0, 250.0)
                .holding("simple syrup", Kind.SYRUP, Substance.SUCROSE, 50.0, 200.0)
                .strong("water", Kind.WATER, 0.0, 400.0);
        drink = switch (kind) {
            case DRIED_PLANT -> drink.grams(name, kind, 5.0);
            case MACERATE -> drink.strong(name, kind, 60.0, 20.0);
            default -> drink.holding(name, kind, Substance.SUCROSE, 40.0, 50.0);
        };
        assertThat(drink.findings("growth").stream()
                        .anyMatch(finding -> finding.verdict().equals("not known if it can ferment")
                                && finding.where().contains(name)))
                .isEqualTo(said);
    }

    @ParameterizedTest
    @CsvSource({
        "Maniok, STOP",
        "cassava root, STOP",
        "Vogelbeeren, CAUTION",
        "grüne Mandeln, CAUTION",
        "Arnika, STOP",
        "ma huang, STOP",
        "fu zi, STOP",
        "realgar, STOP",
    })
    void plantsThatPoisonRawAreKnown(String name, Severity severity) {
        assertThat(with(name, Kind.OTHER).findings("plant"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.severity()).isEqualTo(severity));
    }
}
