package org.stillroom.core.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.liquid.Liquid;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.TableSet;
import org.stillroom.core.reference.Tables;

/** Lawful names and labels at their bounds: Regulation (EU) 2019/787 Annex I, 1169/2011, 27 CFR 5.150 and 19.356. */
class LegalClassesTest {
    private static Figures liqueur(double percent, double sucrose) {
        return Liquid.figures(
                MadeUp.sweetened(AlcoholByVolume.at20(percent), new MassConcentration(sucrose)),
                Temperature.TWENTY_CELSIUS);
    }

    private static LegalClass named(Figures figures, String name) {
        return named(figures, Contained.NOT_KNOWN, name);
    }

    private static LegalClass named(Figures figures, Contained contained, String name) {
        return LegalClasses.of(figures, contained).stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static boolean isMet(double percent, double sucrose, String name) {
        return named(liqueur(percent, sucrose), name).isMet();
    }

    /** 95.0 g/L of sucrose are 100.0 g/L as invert sugar and count as such; 94.8 do not. */
    @Test
    @Tag("published")
    void ninetyFiveGramsOfSucroseCountAsAHundredOfInvert() {
        assertThat(isMet(25, 95.0, "liqueur (general)")).isTrue();
        assertThat(isMet(25, 95.2, "liqueur (general)")).isTrue();
        LegalClass missed = named(liqueur(25, 94.8), "liqueur (general)");
        assertThat(missed.misses()).singleElement().satisfies(miss -> {
            assertThat(miss.what()).isEqualTo("sugar");
            assertThat(miss.by()).isCloseTo(100.0 - 94.8 * 360.312 / 342.297, within(0.001));
        });
    }

    /** A liqueur has 15 % vol at least. */
    @Test
    @Tag("published")
    void aLiqueurHasFifteenPercent() {
        assertThat(isMet(15.0, 150, "liqueur (general)")).isTrue();
        assertThat(isMet(15.1, 150, "liqueur (general)")).isTrue();
        assertThat(isMet(14.9, 150, "liqueur (general)")).isFalse();
    }

    /** 250 g/L as invert: 237.5 g/L of sucrose. Cassis more than 400: 380.0 are just 400. */
    @Test
    @Tag("published")
    void aCremeHasTwoHundredAndFifty() {
        String creme = "creme de (fruit or other, not milk)";
        assertThat(isMet(18, 237.5, creme)).isTrue();
        assertThat(isMet(18, 237.3, creme)).isFalse();
        assertThat(isMet(18, 380.0, "creme de cassis")).isFalse();
        assertThat(isMet(18, 380.3, "creme de cassis")).isTrue();
    }

    /** Gentian and cherry liqueurs need less; sambuca 38 % vol and 350 g/L; maraschino 24 and 250; nocino 30 and 100. */
    @Test
    @Tag("published")
    void exceptionsAndNamedLiqueursHaveTheirOwnBounds() {
        assertThat(isMet(20, 76.0, "liqueur flavoured exclusively with gentian or a similar plant or wormwood"))
                .isTrue();
        assertThat(isMet(20, 66.6, "cherry or sour cherry liqueur, alcohol solely cherry or sour cherry spirit"))
                .isTrue();
        assertThat(isMet(38, 332.5, "sambuca")).isTrue();
        assertThat(isMet(37.8, 332.5, "sambuca")).isFalse();
        assertThat(isMet(24, 237.5, "maraschino / marrasquino / maraskino")).isTrue();
        assertThat(isMet(30, 95.0, "nocino / orehovec")).isTrue();
        assertThat(isMet(40, 94.9, "pastis")).isTrue();
        assertThat(isMet(40, 95.0, "pastis")).isFalse();
        assertThat(isMet(40, 0, "mistra")).isTrue();
        assertThat(isMet(47.2, 0, "mistra")).isFalse();
    }

    /** 27 CFR 5.150(a): 2.5 % sugar by weight is a liqueur, below 10 % it may be called dry. */
    @Test
    @Tag("published")
    void theUsaCountsSugarByWeight() {
        Figures faint = liqueur(40, 23.5);
        assertThat(faint.value(Figure.SUGAR_BY_MASS)).isBetween(2.4, 2.6);
        assertThat(isMet(40, 24.5, "liqueur or cordial")).isTrue();
        assertThat(isMet(40, 20, "liqueur or cordial")).isFalse();
        assertThat(isMet(40, 60, "liqueur or cordial, dry")).isTrue();
        assertThat(isMet(40, 120, "liqueur or cordial, dry")).isFalse();
    }

    /** 27 CFR 19.356(d): a label of 40 % accepts 39.7 to 40.3; with fruit in the bottle the EU allows 1.5 % vol. */
    @Test
    @Tag("published")
    void theStatedStrengthHasItsTolerance() {
        StatedStrength plain = StatedStrength.of(40.04, StatedStrength.LeftIn.NOTHING);
        assertThat(plain.percent()).isEqualTo(40.0);
        assertThat(List.of(39.7, 40.3, 40.0)).allMatch(plain::accepts);
        assertThat(List.of(39.69, 40.31)).noneMatch(plain::accepts);
        StatedStrength fruit = StatedStrength.of(40.0, StatedStrength.LeftIn.FRUIT_OR_PLANTS);
        assertThat(List.of(38.5, 41.5)).allMatch(fruit::accepts);
        assertThat(fruit.accepts(41.51)).isFalse();
    }

    /** Directive 2007/45/EC; 27 CFR 5.203. */
    @Test
    @Tag("published")
    void bottlesHaveLawfulSizes() {
        assertThat(BottleSizes.of(Market.EU))
                .containsExactly(100.0, 200.0, 350.0, 500.0, 700.0, 1000.0, 1500.0, 1750.0, 2000.0);
        assertThat(BottleSizes.isLawful(Market.EU, 750)).isFalse();
        assertThat(BottleSizes.isLawful(Market.EU, 350)).isTrue();
        assertThat(BottleSizes.isLawful(Market.EU, 50)).isTrue();
        assertThat(BottleSizes.isLawful(Market.US, 750)).isTrue();
        assertThat(BottleSizes.isLawful(Market.US, 355)).isTrue();
        assertThat(BottleSizes.isLawful(Market.US, 360)).isFalse();
    }

    /** A published label of 45 % vol with 100 g/L of sugar: 289 kcal, 1200 kJ; 15 % and 100 g/L: 123 and 513; 28 % and 250 g/L: 255 and 1066. */
    @Test
    @Tag("published")
    void energyAgreesWithPublishedLabels() {
        assertThat(liqueur(45, 100).value(Figure.ENERGY_KCAL)).isCloseTo(289, within(0.5));
        assertThat(liqueur(45, 100).value(Figure.ENERGY_KJ)).isCloseTo(1200, within(0.5));
        assertThat(liqueur(15, 100).value(Figure.ENERGY_KCAL)).isCloseTo(122.8, within(0.1));
        assertThat(liqueur(15, 100).value(Figure.ENERGY_KJ)).isCloseTo(513.2, within(0.2));
        assertThat(liqueur(28, 250).value(Figure.ENERGY_KCAL)).isCloseTo(254.6, within(0.1));
        assertThat(liqueur(28, 250).value(Figure.ENERGY_KJ)).isCloseTo(1065.7, within(0.3));
    }

    /** A label above 1.2 % vol states its strength; from 10 % vol on no date is asked for. */
    @Test
    @Tag("published")
    void statementsFollowTheStrength() {
        assertThat(said(28.0))
                .anyMatch(words -> words.contains("28.0 % vol"))
                .anyMatch(words -> words.startsWith("No date"));
        assertThat(said(9.9)).anyMatch(words -> words.startsWith("A best-before date"));
        assertThat(said(1.2)).noneMatch(words -> words.startsWith("Strength"));
    }

    private static List<String> said(double percent) {
        return Statements.of(StatedStrength.of(percent, StatedStrength.LeftIn.NOTHING)).stream()
                .map(Statements.Statement::words)
                .toList();
    }

    /** 550 EUR per hectolitre of pure alcohol, from memory: a bottle of 0.7 L at 40 % vol bears 1.54 EUR. */
    @Test
    void dutyIsByThePureAlcohol() {
        assertThat(Duty.of(TableSet.SHIPPED, 40, 700)).anySatisfy(duty -> {
            assertThat(duty.country()).isEqualTo("EU minimum");
            assertThat(duty.perBottle()).isCloseTo(1.54, within(0.001));
        });
        assertThat(Duty.of(TableSet.SHIPPED, 40, 700)).extracting(Duty::country).doesNotHaveDuplicates();
    }

    private static Contained holding(String what, double least, double most) {
        return new Contained(Map.of(what, new Contained.Part(least, most)));
    }

    /** Annex I 36: sambuca holds 1 to 2 g/L of natural anethole, 38 % vol and 350 g/L of sugar. */
    @Test
    @Tag("published")
    void sambucaIsHeldToItsAnethole() {
        Figures sweet = liqueur(38.0, 340.0);
        assertThat(named(sweet, holding("anethole", 1.0, 2.0), "sambuca")).satisfies(found -> {
            assertThat(found.isMet()).isTrue();
            assertThat(found.notShown()).isEmpty();
        });
        assertThat(named(sweet, holding("anethole", 0.5, 0.9), "sambuca").misses())
                .containsExactly(new Miss("anethole", 0.9, 1.0, "g/L", "at least"));
        assertThat(named(sweet, holding("anethole", 2.1, 2.5), "sambuca").misses())
                .containsExactly(new Miss("anethole", 2.1, 2.0, "g/L", "at most"));
        assertThat(named(sweet, holding("anethole", 0.9, 1.4), "sambuca").notShown())
                .containsExactly("anethole 0.9 to 1.4, wanted 1 to 2 g/L");
        assertThat(named(sweet, Contained.NOT_KNOWN, "sambuca").notShown())
                .containsExactly("anethole not known, wanted 1 to 2 g/L");
    }

    /** Annex I 39 and 40: pure egg yolk 140 g/L at least, or 70. */
    @Test
    @Tag("published")
    void eggLiqueurIsHeldToItsYolk() {
        Figures sweet = liqueur(15.0, 200.0);
        Contained some = holding("egg yolk", 100.0, 100.0);
        assertThat(named(sweet, some, "egg liqueur / advocaat").isMet()).isFalse();
        assertThat(named(sweet, some, "liqueur with egg").isMet()).isTrue();
        assertThat(named(sweet, some, "liqueur with egg").notShown()).isEmpty();
        assertThat(named(sweet, holding("egg yolk", 0.0, 0.0), "liqueur with egg")
                        .isMet())
                .isFalse();
    }

    /** Annex I 26: anethole 1.5 to 2 g/L and glycyrrhizic acid 0.05 to 0.5; one that is not known leaves the name open. */
    @Test
    @Tag("published")
    void pastisAsksForBoth() {
        Figures dry = liqueur(45.0, 10.0);
        LegalClass open = named(dry, holding("anethole", 1.6, 1.9), "pastis");
        assertThat(open.isMet()).isTrue();
        assertThat(open.notShown()).containsExactly("glycyrrhizic acid not known, wanted 0.05 to 0.5 g/L");
    }

    @Test
    void everyContentIsOfACategoryThatIsThere() {
        assertThat(Tables.open("label/eu_category_contents.csv").rows())
                .allSatisfy(row -> assertThat(Tables.open("label/eu_spirit_categories.csv").rows().stream()
                                .map(each -> each.text("name")))
                        .contains(row.text("name")));
    }
}
