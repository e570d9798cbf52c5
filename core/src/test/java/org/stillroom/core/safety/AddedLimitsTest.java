package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.ingredient.Kind;

/** Sources: Regulation (EU) 872/2012, FL-no 16.060, 16.061, 16.113; 21 CFR 172.780, 184.1021, 184.1009, 184.1007. */
class AddedLimitsTest {
    private static final double KILOGRAM = 1000.0;

    private static Bench drink(String name, Kind kind, double grams) {
        return new Bench().grams(name, kind, grams).strong("neutral spirit", Kind.SPIRIT, 40.0, KILOGRAM - grams);
    }

    @ParameterizedTest
    @CsvSource({
        "ammoniated glycyrrhizic acid, 0.2, EU, 0.2001, STOP EU above the limit",
        "Ammoniumglycyrrhizinat, 0.2, EU, 0.2001, STOP EU above the limit",
        "neohesperidin DC, 0.003, EU, 0.00301, CAUTION EU above the limit of a flavouring",
        "rebaudioside A, 0.01, EU, 0.01001, CAUTION EU above the limit of a flavouring",
        "Stevia, 0.01, EU, 0.01001, CAUTION EU above the limit of a flavouring",
        "gum arabic, 200, US, 200.1, STOP US above the limit",
        "Benzoesäure, 1, US, 1.001, STOP US above the limit",
        "adipic acid, 0.2, US, 0.2001, STOP US above the limit",
        "aconitic acid, 0.02, US, 0.02001, STOP US above the limit",
    })
    void atTheLimitItPassesAndAboveItIsTold(String name, double at, String place, double above, String verdict) {
        assertThat(drink(name, Kind.SALT, at).verdicts("added-limit"))
                .containsExactly("NOTE " + place + " within the limit");
        assertThat(drink(name, Kind.SALT, above).verdicts("added-limit")).containsExactly(verdict);
    }

    /** What stands in a syrup nobody can weigh here. */
    @Test
    void whatIsDissolvedIsNotKnown() {
        assertThat(drink("gum arabic solution", Kind.SALT, 10.0).verdicts("added-limit"))
                .isEqualTo(List.of("CAUTION US not known"));
    }

    @Test
    void whatIsCalledOtherwiseIsNotAsked() {
        assertThat(drink("table salt", Kind.SALT, 1.0).findings("added-limit")).isEmpty();
    }
}
