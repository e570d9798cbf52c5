package org.stillroom.studio.web.triangle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.triangle.HazeShade;
import org.stillroom.planner.marks.Measured;
import org.stillroom.planner.marks.Measuring;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.wording.Language;
import org.stillroom.studio.wording.UnitSystem;
import org.stillroom.studio.wording.Words;

/** The triangle in words, moved by a hand in Compose and standing still in Make. */
class TriangleViewTest {
    private static final Words ENGLISH = new Words(Language.ENGLISH, UnitSystem.METRIC);
    private static final Words GERMAN = new Words(Language.GERMAN, UnitSystem.METRIC);

    private static Planning.Planned planned(String strength) {
        RecipeReading reading = new RecipeReader(OunceMeaning.US_FLUID).read("""
                stillroom: 1
                title: Quince and juniper
                target: {volume: 1 L, strength: STRENGTH, sugar: 180 g/L}
                ingredients: [{name: juniper oil, kind: essential oil}]
                lines:
                  - {use: juniper oil, dose: 1 g/L}
                  - {use: spirit 96 %, amount: free}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: make up}
                """.replace("STRENGTH", strength));
        RecipeReading.Understood understood = (RecipeReading.Understood) reading;
        return (Planning.Planned) Planner.plan(Making.alone(understood.recipe()));
    }

    private static HazeShade haze(TriangleView view) {
        return Objects.requireNonNull(view.haze());
    }

    @Test
    void inComposeAHandMovesItAndFindsItsFigures() {
        TriangleView view = TriangleView.of(planned("30 %").plan(), ENGLISH);
        assertThat(view.isStill()).isFalse();
        assertThat(view.numbers()).contains("oil_parts", "oil_shares", "80-56-8");
        assertThat(view.hazeInWords(haze(view)))
                .isEqualTo(
                        "With its <span data-said=\"oil\" data-places=\"2\">1.00</span> g/L of oil the forecast at 20 °C is:"
                                + " <b data-verdict>cloudy</b>.");
        assertThat(view.tellsClearFrom(haze(view))).isTrue();
        assertThat(view.clearFromInWords(haze(view))).contains("data-said=\"clear-from\"");
    }

    @Test
    void inMakeItStandsStillAndSaysTheSame() {
        Planning.Planned planned = planned("30 %");
        Measured measured = Measuring.of(planned.plan());
        TriangleView still = TriangleView.still(measured, SugarBasis.AS_DISSOLVED, GERMAN);
        assertThat(still.isStill()).isTrue();
        assertThat(still.range()).isNull();
        assertThat(still.rows()).isEmpty();
        assertThat(haze(still).verdict())
                .isEqualTo(haze(TriangleView.of(planned.plan(), GERMAN)).verdict());
        assertThat(still.looks(haze(still).verdict())).isEqualTo("milchig");
    }

    @Test
    void whatIsClearTellsNoStrength() {
        TriangleView view = TriangleView.of(planned("70 %").plan(), ENGLISH);
        assertThat(view.tellsClearFrom(haze(view))).isFalse();
    }
}
