package org.stillroom.core.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.liquid.Liquid;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.plan.Correction;
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
        return LegalClasses.of(TableSet.SHIPPED, figures, contained).stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static boolean isMet(double percent, double sucrose, String name) {
        return !named(liqueur(percent, sucrose), name).isMissed();
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
        String creme = "crème de (fruit or other, not milk)";
        assertThat(isMet(18, 237.5, creme)).isTrue();
        assertThat(isMet(18, 237.3, creme)).isFalse();
        assertThat(isMet(18, 380.0, "crème de cassis")).isFalse();
        assertThat(isMet(18, 380.3, "crème de cassis")).isTrue();
    }

    /** Gentian and cherry liqueurs need less; sambuca 38 % vol and 350 g/L; maraschino 24 and 250; nocino 30 and 100. */
    @Test
    @Tag("published")
    void exceptionsAndNamedLiqueursHaveTheirOwnBounds() {
        assertThat(isMet(20, 76.0, "liqueur of gentian or wormwood alone")).isTrue();
        assertThat(isMet(20, 66.6, "liqueur of cherry or sour cherry spirit")).isTrue();
        assertThat(isMet(38, 332.5, "sambuca")).isTrue();
        assertThat(isMet(37.8, 332.5, "sambuca")).isFalse();
        assertThat(isMet(24, 237.5, "maraschino / marrasquino / maraskino")).isTrue();
        assertThat(isMet(30, 95.0, "nocino / orehovec")).isTrue();
        assertThat(isMet(40, 94.9, "pastis")).isTrue();
        assertThat(isMet(40, 95.0, "pastis")).isFalse();
        assertThat(isMet(40, 0, "mistrà")).isTrue();
        assertThat(isMet(47.2, 0, "mistrà")).isFalse();
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
        assertThat(StatedStrength.of(TableSet.SHIPPED, 0.2, StatedStrength.LeftIn.NOTHING, Market.EU)
                        .low())
                .isZero();
        StatedStrength plain = StatedStrength.of(TableSet.SHIPPED, 40.04, StatedStrength.LeftIn.NOTHING, Market.EU);
        assertThat(plain.percent()).isEqualTo(40.0);
        assertThat(List.of(39.7, 40.3, 40.0)).allMatch(plain::accepts);
        assertThat(List.of(39.69, 40.31)).noneMatch(plain::accepts);
        StatedStrength fruit =
                StatedStrength.of(TableSet.SHIPPED, 40.0, StatedStrength.LeftIn.FRUIT_OR_PLANTS, Market.EU);
        assertThat(List.of(38.5, 41.5)).allMatch(fruit::accepts);
        assertThat(fruit.accepts(41.51)).isFalse();
        StatedStrength american =
                StatedStrength.of(TableSet.SHIPPED, 15.0, StatedStrength.LeftIn.FRUIT_OR_PLANTS, Market.US);
        assertThat(List.of(14.7, 15.3)).allMatch(american::accepts);
        assertThat(List.of(14.69, 15.31)).noneMatch(american::accepts);
    }

    /** A half is rounded upwards, and binary fractions decide nothing: 14.95 divided by 0.1 is below 149.5. */
    @ParameterizedTest
    @CsvSource({
        "14.95, 15.0",
        "14.9499999999999, 15.0",
        "14.9500000000001, 15.0",
        "14.949, 14.9",
        "14.9, 14.9",
        "14.94, 14.9",
        "15.04, 15.0"
    })
    void aHalfIsRoundedUpwards(double found, double stated) {
        assertThat(StatedStrength.of(TableSet.SHIPPED, found, StatedStrength.LeftIn.NOTHING, Market.EU)
                        .percent())
                .isEqualTo(stated);
    }

    @Test
    void aClassThatIsMetByRoundingAloneSaysSo() {
        LegalClass rounded = named(liqueur(14.96, 150), "liqueur (general)");
        assertThat(rounded.misses()).isEmpty();
        assertThat(rounded.byRounding())
                .containsExactly(
                        "By the rounding of the label strength meets at least 15 % vol; the exact figure is 14.96,"
                                + " below it.");
        assertThat(named(liqueur(15.0, 150), "liqueur (general)").byRounding()).isEmpty();
        assertThat(named(liqueur(15.3, 150), "liqueur (general)").byRounding()).isEmpty();
        LegalClass below = named(liqueur(14.9, 150), "liqueur (general)");
        assertThat(below.misses()).isNotEmpty();
        assertThat(below.byRounding()).isEmpty();
    }

    /** Directive 2007/45/EC; 27 CFR 5.203. */
    @Test
    @Tag("published")
    void bottlesHaveLawfulSizes() {
        assertThat(BottleSizes.of(TableSet.SHIPPED, Market.EU))
                .containsExactly(100.0, 200.0, 350.0, 500.0, 700.0, 1000.0, 1500.0, 1750.0, 2000.0);
        assertThat(BottleSizes.isLawful(TableSet.SHIPPED, Market.EU, 750)).isFalse();
        assertThat(BottleSizes.isLawful(TableSet.SHIPPED, Market.EU, 350)).isTrue();
        assertThat(BottleSizes.isLawful(TableSet.SHIPPED, Market.EU, 50)).isTrue();
        assertThat(BottleSizes.isLawful(TableSet.SHIPPED, Market.US, 750)).isTrue();
        assertThat(BottleSizes.isLawful(TableSet.SHIPPED, Market.US, 355)).isTrue();
        assertThat(BottleSizes.isLawful(TableSet.SHIPPED, Market.US, 360)).isFalse();
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
        return Statements.of(StatedStrength.of(TableSet.SHIPPED, percent, StatedStrength.LeftIn.NOTHING, Market.EU))
                .stream()
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

    /** Annex I 20, 35 and 43: gin is of juniper, sloe gin of sloes in gin, Berenburg of gentian, juniper and laurel, each of them. */
    @Test
    @Tag("published")
    void aNameIsMissedWithoutAPlantThatItAsksFor() {
        Contained ofPear = new Contained(Map.of(), List.of(of("pear")));
        Contained ofJuniper = new Contained(Map.of(), List.of(of("juniper")));
        Figures strong = liqueur(40.0, 100.0);
        assertThat(named(strong, ofPear, "gin").standing()).isEqualTo(LegalClass.Standing.MISSED);
        assertThat(named(strong, ofPear, "gin").isMissedNearly()).isFalse();
        assertThat(named(strong, ofJuniper, "gin").standing()).isEqualTo(LegalClass.Standing.ASKS_BESIDES);
        assertThat(ruledOut(strong, ofJuniper, "sloe gin")).containsExactly("sloe");
        assertThat(ruledOut(strong, ofJuniper, "Berenburg / Beerenburg")).containsExactly("gentian", "laurel");
        assertThat(ruledOut(strong, ofPear, "liqueur (general)")).isEmpty();
        assertThat(ruledOut(strong, Contained.NOT_KNOWN, "gin")).isEmpty();
    }

    /** A spirit of one plant, all of which its name tells. */
    private static GoneIn of(String plant) {
        return new GoneIn(
                plant,
                Kind.DISTILLATE,
                new Contained.Part(1.0, 1.0),
                new Contained.Part(1.0, 1.0),
                Set.of(GoneIn.Tells.PLANTS),
                words -> words.contains(plant),
                words -> words.contains(plant) ? List.of() : List.of(plant));
    }

    private static List<String> ruledOut(Figures figures, Contained contained, String name) {
        return named(figures, contained, name).ruledOut().stream()
                .map(Shown::what)
                .toList();
    }

    /** What is asked of a name that no table has would be asked of nothing. */
    @Test
    void conditionsAreOfNamesThatThereAre() {
        List<String> names = LegalClasses.of(TableSet.SHIPPED, liqueur(40.0, 100.0), Contained.NOT_KNOWN).stream()
                .map(each -> each.market() + " " + each.name())
                .toList();
        assertThat(Tables.open("label/category_conditions.csv").rows())
                .isNotEmpty()
                .allSatisfy(row -> assertThat(names).contains(row.text("market") + " " + row.text("name")));
    }

    /** Below 0.5 % vol nothing is an alcoholic beverage (27 CFR 16.10, from memory); half of 15 % vol is far from a liqueur. */
    @Test
    void whatIsFarTooWeakIsNoNearMiss() {
        List<LegalClass> faint = LegalClasses.of(TableSet.SHIPPED, liqueur(0.3, 100.0), Contained.NOT_KNOWN);
        assertThat(faint).isNotEmpty().allMatch(LegalClass::isMissed).noneMatch(LegalClass::isMissedNearly);
        assertThat(named(liqueur(7.0, 100.0), "liqueur (general)").isMissedNearly())
                .isFalse();
        assertThat(named(liqueur(12.0, 100.0), "liqueur (general)").isMissedNearly())
                .isTrue();
    }

    private static Contained holding(String what, double least, double most) {
        return new Contained(Map.of(what, new Contained.Part(least, most)), Contained.NOT_KNOWN.goneIn());
    }

    /** Annex I 36: sambuca holds 1 to 2 g/L of natural anethole, 38 % vol and 350 g/L of sugar. */
    @Test
    @Tag("published")
    void sambucaIsHeldToItsAnethole() {
        Figures sweet = liqueur(38.0, 340.0);
        assertThat(named(sweet, holding("anethole", 1.0, 2.0), "sambuca")).satisfies(found -> {
            assertThat(found.standing()).isEqualTo(LegalClass.Standing.ASKS_BESIDES);
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
        assertThat(named(sweet, some, "egg liqueur / advocaat").isMissed()).isTrue();
        assertThat(named(sweet, some, "liqueur with egg").isMissed()).isFalse();
        assertThat(named(sweet, some, "liqueur with egg").notShown()).isEmpty();
        assertThat(named(sweet, holding("egg yolk", 0.0, 0.0), "liqueur with egg")
                        .isMissed())
                .isTrue();
    }

    /** Annex I 39: 14 % vol at least; a drink of a category of Annex I is a spirit drink (Article 2(d)). */
    @Test
    @Tag("published")
    void anEggLiqueurOfFourteenPercentIsASpiritDrink() {
        Figures sweet = liqueur(14.0, 150.0);
        Contained yolk = holding("egg yolk", 141.0, 141.0);
        assertThat(named(sweet, yolk, "egg liqueur / advocaat").isMissed()).isFalse();
        assertThat(named(sweet, yolk, "spirit drink (general)").misses()).isEmpty();
        assertThat(named(sweet, yolk, "spirit drink (general)").wayThere()).isNull();
        assertThat(named(liqueur(13.9, 150.0), yolk, "spirit drink (general)").isMissed())
                .isTrue();
        assertThat(named(sweet, holding("egg yolk", 139.0, 139.0), "spirit drink (general)")
                        .isMissed())
                .isTrue();
    }

    @Test
    void whatADrinkHoldsNothingOfIsOutOfReachAndWhatItHoldsLittleOfIsNear() {
        Figures weak = liqueur(14.0, 100.0);
        assertThat(named(weak, holding("egg yolk", 0.0, 0.0), "liqueur with egg")
                        .isMissedNearly())
                .isFalse();
        assertThat(named(weak, holding("egg yolk", 60.0, 60.0), "liqueur with egg")
                        .isMissedNearly())
                .isTrue();
    }

    /** 125 g of sloes in a litre of 22 % vol are fewer in each litre once spirit has gone in. */
    @Test
    void whatAnAdditionThinsIsTold() {
        String pacharan = "sloe-aromatised spirit drink / pacharán";
        WayThere way = Objects.requireNonNull(named(liqueur(22.0, 100.0), holding("sloe", 125.0, 125.0), pacharan)
                .wayThere());
        long left = Math.round(12500.0 * way.from() / way.millilitres());
        assertThat(way.added()).isNotEmpty();
        assertThat(way.open()).containsExactly("sloe " + left / 100.0 + ", wanted at least 125 g/L");
        assertThat(named(liqueur(22.0, 100.0), holding("sloe", 200.0, 200.0), pacharan)
                        .wayThere())
                .satisfies(plenty -> assertThat(plenty.open()).isEmpty());
        assertThat(named(liqueur(25.0, 100.0), holding("sloe", 120.0, 120.0), pacharan)
                        .wayThere())
                .satisfies(other -> {
                    assertThat(other.added()).isEmpty();
                    assertThat(other.open()).containsExactly("sloe 120, wanted at least 125 g/L");
                });
    }

    /** Names of makers in both languages, and each of several that stand in one row of the law. */
    @ParameterizedTest
    @CsvSource({
        "Eierlikör, egg liqueur / advocaat",
        "cherry liqueur, liqueur of cherry or sour cherry spirit",
        "Kirschlikör, liqueur of cherry or sour cherry spirit",
        "Likör, liqueur (general)",
        "Likör mit Eizusatz, liqueur with egg",
        "amaretto, 'amaretto, anise, anisette, crème de, curaçao, goldwasser, kümmel, ouzo, peppermint schnapps, sambuca or triple sec'",
        "rock and rye, 'rock and rye, bourbon, brandy or rum'"
    })
    void namesAreUnderstoodAsMakersSayThem(String typed, String name) {
        assertThat(named(liqueur(20.0, 200.0), name).isCalled(typed)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "UK, United Kingdom",
        "GB, United Kingdom",
        "Vereinigtes Königreich, United Kingdom",
        "usa, United States",
        "Kanada, Canada",
        "EU-Mindestsatz, EU minimum",
        "australia, Australia"
    })
    void countriesAreUnderstoodInGermanAndForShort(String typed, String country) {
        assertThat(Duty.country(TableSet.SHIPPED, typed)).hasValue(country);
        assertThat(Duty.country(TableSet.SHIPPED, "Atlantis")).isEmpty();
    }

    /** Annex I 26: anethole 1.5 to 2 g/L and glycyrrhizic acid 0.05 to 0.5; one that is not known leaves the name open. */
    @Test
    @Tag("published")
    void pastisAsksForBoth() {
        Figures dry = liqueur(45.0, 10.0);
        LegalClass open = named(dry, holding("anethole", 1.6, 1.9), "pastis");
        assertThat(open.standing()).isEqualTo(LegalClass.Standing.NOT_SHOWN);
        assertThat(open.notShown()).containsExactly("glycyrrhizic acid not known, wanted 0.05 to 0.5 g/L");
    }

    @Test
    void everyContentIsOfACategoryThatIsThere() {
        assertThat(Tables.open("label/eu_category_contents.csv").rows())
                .allSatisfy(row -> assertThat(Tables.open("label/eu_spirit_categories.csv").rows().stream()
                                .map(each -> each.text("name")))
                        .contains(row.text("name")));
    }

    /** Annex I 25 to 29: what holds no anethole at all is no aniseed drink; what nobody knows is not shown. */
    @Test
    @Tag("published")
    void aDrinkWithoutAnetholeIsNoAniseedDrink() {
        Figures plain = liqueur(40.0, 20.0);
        for (String aniseed : List.of("aniseed-flavoured spirit drink", "anis / janeževec", "distilled anis")) {
            assertThat(named(plain, holding("anethole", 0.0, 0.0), aniseed).misses())
                    .as(aniseed)
                    .containsExactly(new Miss("anethole", 0.0, 0.0, "g/L", "more than"));
            assertThat(named(plain, Contained.NOT_KNOWN, aniseed).standing())
                    .as(aniseed)
                    .isEqualTo(LegalClass.Standing.NOT_SHOWN);
            assertThat(named(plain, holding("anethole", 0.1, 0.3), aniseed).standing())
                    .as(aniseed)
                    .isEqualTo(LegalClass.Standing.ASKS_BESIDES);
        }
    }

    /** No figure shows that a taste is bitter or that alcohol is of agricultural origin. */
    @Test
    void whatNoFigureShowsIsNeverMet() {
        for (double strength : List.of(15.0, 25.0, 40.0)) {
            assertThat(LegalClasses.of(TableSet.SHIPPED, liqueur(strength, 120.0), Contained.NOT_KNOWN))
                    .allSatisfy(each -> {
                        assertThat(each.standing()).as(each.name()).isNotEqualTo(LegalClass.Standing.MET);
                        assertThat(each.asksBesides()).as(each.name()).matches("[A-Z].*\\.");
                    })
                    .anySatisfy(each -> assertThat(each.name()).isEqualTo("bitter-tasting spirit drink / bitter"));
        }
    }

    /** Names stand in the letters of the law, and are understood as they are typed. */
    @Test
    void namesAreUnderstoodWithoutTheirAccents() {
        Figures sweet = liqueur(20.0, 200.0);
        Map<String, String> typed = Map.of(
                "creme de cassis", "crème de cassis",
                "Creme de", "crème de (fruit or other, not milk)",
                "Kuemmel", "caraway-flavoured spirit drink / Kümmel",
                "pacharan", "sloe-aromatised spirit drink / pacharán",
                "janezevec", "anis / janeževec",
                "MISTRA", "mistrà",
                "vakeva glogi", "väkevä glögi / spritglögg",
                "vaekevae gloegi", "väkevä glögi / spritglögg",
                "liqueur", "liqueur (general)",
                "advocaat", "egg liqueur / advocaat");
        typed.forEach((text, name) -> assertThat(LegalClasses.of(TableSet.SHIPPED, sweet, Contained.NOT_KNOWN).stream()
                        .filter(each -> each.isCalled(text))
                        .map(LegalClass::name))
                .as(text)
                .contains(name));
    }

    /** What is said to be added is added, by scales that show a tenth of a gram, and the class is missed no more. */
    @Test
    @Tag("property")
    void whatIsAddedLeadsThere() {
        for (double strength : List.of(4.0, 18.0, 41.0)) {
            for (double sugar : List.of(0.0, 90.0, 330.0)) {
                Figures drink = liqueur(strength, sugar);
                for (LegalClass each : LegalClasses.of(TableSet.SHIPPED, drink, Contained.NOT_KNOWN)) {
                    WayThere way = each.wayThere();
                    if (way == null) {
                        continue;
                    }
                    Contents mixed = drink.contents();
                    for (Correction.Added added : way.added()) {
                        double weighed = Math.rint(10.0 * added.grams()) / 10.0;
                        mixed = mixed.plus(added.addition().perGram().times(weighed));
                    }
                    LegalClass then = LegalClasses.of(
                                    TableSet.SHIPPED,
                                    Liquid.figures(mixed, Temperature.TWENTY_CELSIUS),
                                    Contained.NOT_KNOWN)
                            .stream()
                            .filter(again -> again.name().equals(each.name()) && again.market() == each.market())
                            .findFirst()
                            .orElseThrow();
                    assertThat(then.misses())
                            .as("%s at %s %% vol and %s g/L", each.name(), strength, sugar)
                            .isEmpty();
                }
            }
        }
    }

    /**
     * By hand: a litre of 12 % vol with 60 g/L of sucrose to 15 % vol and 100 g/L as invert. A grams of spirit of 96 % vol (0.80742 g/mL,
     * OIML R 22: 757.66 g of ethanol in a litre) and S of sugar make V: 0.12·1000 + 0.96·A/0.80742 = 0.15·V and 60 + S = 95.0·V.
     */
    @Test
    @Tag("published")
    void aWeakDrinkIsRaisedAndSweetenedTogether() {
        WayThere way = Objects.requireNonNull(
                named(liqueur(12.0, 60.0), "liqueur (general)").wayThere());
        double volume = way.then().value(Figure.VOLUME_20C);
        double spirit = grams(way, "spirit 96 %");
        double sugar = grams(way, "white sugar");
        assertThat(0.12 * 1000.0 + 0.96 * spirit / 0.80742).isCloseTo(0.15 * volume, within(0.05));
        assertThat((60.0 + sugar) * 360.312 / 342.297).isCloseTo(0.1 * volume, within(0.01));
        assertThat(volume).isBetween(1050.0, 1080.0);
        assertThat(named(liqueur(40.0, 20.0), "mistrà").wayThere())
                .as("nothing that is added takes sugar out")
                .isNull();
    }

    /** A litre of 4 % vol to 37.5 takes A litres of 96 % vol by 0.04 + 0.96·A = 0.375·(1 + A) or so: 0.57, less than there is. */
    @Test
    void aWayThatMoreThanDoublesTheDrinkIsNotSensible() {
        WayThere gin = Objects.requireNonNull(named(liqueur(4.0, 0.0), "gin").wayThere());
        assertThat(gin.isSensible()).isTrue();
        WayThere twice = new WayThere(List.of(), 500.0, liqueur(20.0, 0.0), List.of());
        assertThat(twice.millilitres()).isCloseTo(1000.0, within(1e-6));
        assertThat(new WayThere(List.of(), twice.millilitres() / 2.0, twice.then(), List.of()).isSensible())
                .isTrue();
        assertThat(new WayThere(List.of(), twice.millilitres() / 2.001, twice.then(), List.of()).isSensible())
                .isFalse();
        WayThere dry = Objects.requireNonNull(
                named(liqueur(40.0, 300.0), "liqueur or cordial, dry").wayThere());
        assertThat(dry.isSensible())
                .as("of 28 % sugar by weight less than 10 % takes nearly three times as much")
                .isFalse();
    }

    private static double grams(WayThere way, String name) {
        return way.added().stream()
                .filter(each -> each.addition().name().equals(name))
                .mapToDouble(Correction.Added::grams)
                .sum();
    }

    /** A litre of 25 % vol without sugar to 2.5 % by weight: S / (M + S) = 0.025, so S = M·0.025/0.975. */
    @Test
    @Tag("published")
    void theUsaIsReachedByWeight() {
        Figures bare = liqueur(25.0, 0.0);
        WayThere way = Objects.requireNonNull(named(bare, "liqueur or cordial").wayThere());
        assertThat(grams(way, "white sugar")).isCloseTo(bare.value(Figure.MASS) * 0.025 / 0.975, within(1e-3));
        assertThat(way.added()).hasSize(1);
    }

    /**
     * The worked drinks of docs/how-it-works/label.md by their names: a bitter of 40 % vol without sugar, an aniseed drink of 40 % vol with
     * 1.9 g/L of anethole and no liquorice, a mint liqueur of 28 % vol with 200 g/L of sucrose (210.5 g/L as invert).
     */
    @Test
    @Tag("published")
    void threeDrinksByTheirNames() {
        Figures bitter = liqueur(40.0, 0.0);
        assertThat(named(bitter, "bitter-tasting spirit drink / bitter").standing())
                .isEqualTo(LegalClass.Standing.ASKS_BESIDES);
        WayThere toLiqueur =
                Objects.requireNonNull(named(bitter, "liqueur (general)").wayThere());
        // S grams in V millilitres: S·360.312/342.297 = 0.1·V, so 95.0 g in each litre of it.
        assertThat(grams(toLiqueur, "white sugar")).isCloseTo(0.095 * toLiqueur.millilitres(), within(0.01));
        // A gram of sugar takes about 0.62 mL in solution (from memory): S·(1.05263 − 0.1·0.62) = 100.
        assertThat(grams(toLiqueur, "white sugar")).isCloseTo(100.0 / (1.05263 - 0.1 * 0.62), within(0.3));

        Contained aniseed = new Contained(
                Map.of("anethole", new Contained.Part(1.9, 1.9), "glycyrrhizic acid", new Contained.Part(0.0, 0.0)),
                Contained.NOT_KNOWN.goneIn());
        assertThat(named(bitter, aniseed, "aniseed-flavoured spirit drink").standing())
                .isEqualTo(LegalClass.Standing.ASKS_BESIDES);
        assertThat(named(bitter, aniseed, "pastis").misses())
                .containsExactly(new Miss("glycyrrhizic acid", 0.0, 0.05, "g/L", "at least"));

        Figures mint = liqueur(28.0, 200.0);
        assertThat(named(mint, "liqueur (general)").standing()).isEqualTo(LegalClass.Standing.ASKS_BESIDES);
        WayThere toCreme = Objects.requireNonNull(
                named(mint, "crème de (fruit or other, not milk)").wayThere());
        assertThat((200.0 + grams(toCreme, "white sugar")) * 360.312 / 342.297)
                .isCloseTo(0.25 * toCreme.millilitres(), within(0.01));
        assertThat(grams(toCreme, "white sugar")).isCloseTo((250.0 - 210.53) / (1.05263 - 0.25 * 0.62), within(0.3));
    }
}
