package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.ingredient.Kind;

/** Whether a plant that a lawful name asks for can be in a drink. */
class PresenceTest {
    private static final List<String> JUNIPER = List.of("juniper", "gin");

    private static boolean mayHoldJuniper(Bench drink) {
        return drink.safety().mayHoldOneOf(JUNIPER);
    }

    private static Bench in(String spirit) {
        return new Bench().strong(spirit, Kind.SPIRIT, 40.0, 900.0).grams("white sugar", Kind.SUGAR, 90.0);
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
        "neutral spirit, false", "spirit 96 %, false", "vodka 40 %, false", "white rum, false", "Weingeist, false",
        "gin, true", "gin 40 %, true", "house spirit, true", "bitters, true", "pear brandy, false"
    })
    void aSpiritIsOfGrainOrGrapesOnlyWhereItSaysSo(String spirit, boolean may) {
        assertThat(mayHoldJuniper(in(spirit))).isEqualTo(may);
    }
}
