package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.ingredient.Kind;

/** Standard drinks by country. */
class StandardDrinksTest {
    private static double drinks(String country, double millilitres, double percent) {
        return Knowledge.SHIPPED.standardDrinks().stream()
                .filter(drink -> drink.country().equals(country))
                .findFirst()
                .orElseThrow()
                .in(millilitres * percent / 100.0 * 0.78924);
    }

    /** 700 mL at 40 % vol are 28.0 UK units of 10 mL; 30 mL at 40 % vol are 0.95 Australian drinks of 10 g. */
    @Test
    @Tag("published")
    void unitsAndDrinksAgreeWithPublishedOnes() {
        assertThat(drinks("UK", 700, 40)).isCloseTo(28.0, within(0.01));
        assertThat(drinks("Australia", 30, 40)).isCloseTo(0.95, within(0.005));
        assertThat(drinks("USA", 17.7, 100)).isCloseTo(1.0, within(0.01));
    }

    private static List<String> beside(Bench drink, double perDay, Place... places) {
        Serving serving = new Serving(30.0, perDay, 70.0, Set.of(places));
        return Safety.of(drink.plan(), serving, Grounds.SHIPPED).findings().stream()
                .filter(finding -> finding.rule().equals(AlcoholItself.GUIDANCE))
                .map(finding -> finding.severity() + " " + finding.verdict() + ": " + finding.message())
                .toList();
    }

    private static Bench spirit() {
        return new Bench().strong("neutral spirit", Kind.SPIRIT, 40.0, 1000.0);
    }

    /**
     * 30 mL at 40 % vol are 9.47 g; two a day 18.9 g, 133 g a week. UK 14 units of 8 g = 112 g a week (UK CMOs 2016), Australia 10 of 10 g and
     * 4 on a day (NHMRC 2020), Canada 2 of 13.6 g = 27.2 g (CCSA 2023), USA 2 or 1 of 14 g a day, France 10 of 10 g (2017).
     */
    @Test
    @Tag("published")
    void eachBodyIsToldWithItsYear() {
        assertThat(beside(spirit(), 2.0, Place.US))
                .contains(
                        "NOTE above low-risk guidance: Low risk in UK is up to 112 g a week (UK CMOs, 2016; read in part, the"
                                + " rest from memory); this comes to 18.9 g a day, 133 g a week.",
                        "NOTE above low-risk guidance: Low risk in Canada is up to 27.2 g a week (CCSA, 2023; read in part, the"
                                + " rest from memory); this comes to 18.9 g a day, 133 g a week.",
                        "CAUTION above low-risk guidance: Low risk in USA is up to 28 g a day for men, 14 g for women (US Dietary"
                                + " Guidelines, 2020; read in part, the rest from memory); this comes to 18.9 g a day, 133 g a week.")
                .anyMatch(told ->
                        told.contains("Low risk in Australia is up to 100 g a week and 40 g a day (NHMRC, 2020; read"))
                .anyMatch(told -> told.contains("Low risk in France is up to 100 g a week and 20 g a day"))
                .anyMatch(told -> told.contains("Low risk in Denmark is up to 120 g a week and 48 g a day"));
    }

    /** Of the EU's it is the German one that is strictest, 12 g a day for women; of half a glass a day none is passed. */
    @Test
    void theStrictestOfThePlaceAsksForSomething() {
        assertThat(beside(spirit(), 2.0, Place.EU))
                .filteredOn(told -> told.startsWith("CAUTION"))
                .singleElement()
                .asString()
                .contains("Germany");
        assertThat(beside(spirit(), 0.25, Place.EU, Place.US))
                .noneMatch(told -> told.startsWith("CAUTION"))
                .anyMatch(told -> told.startsWith("NOTE beside low-risk guidance: Low risk in Germany"));
    }

    /** Each comparison says in its own sentence how its row came to us, and none says that anything lies within. */
    @Test
    @Tag("property")
    void guidanceThatWasNotReadSaysSoInTheSentenceAndNeverClears() {
        for (double perDay : new double[] {0.01, 0.5, 2.0, 20.0}) {
            for (Knowledge.StandardDrink row : Knowledge.SHIPPED.standardDrinks()) {
                if (row.isGuided()) {
                    assertThat(beside(spirit(), perDay, Place.EU, Place.US))
                            .filteredOn(told -> told.contains("Low risk in " + row.country() + " is up to"))
                            .singleElement()
                            .asString()
                            .matches(told -> row.status().mayClear() != told.contains("from memory);"))
                            .doesNotContain("within")
                            .doesNotContain(" low risk:");
                }
            }
        }
    }

    @Test
    void whatIsNotOnTheTableIsNotMadeUp() {
        assertThat(Knowledge.SHIPPED.standardDrinks())
                .filteredOn(drink -> drink.country().equals("Italy"))
                .noneMatch(Knowledge.StandardDrink::isGuided);
    }
}
