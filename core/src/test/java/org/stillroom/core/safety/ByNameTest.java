package org.stillroom.core.safety;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.reference.Finding;

class ByNameTest {
    /** One that says enough to be counted: plants and syrups what water and sugar is in them, the rest how strong it is. */
    private static Ingredient of(String name, Kind kind) {
        boolean bySolids = Set.of(Kind.FRESH_PLANT, Kind.SYRUP, Kind.WATER).contains(kind);
        boolean plain = bySolids || kind == Kind.ESSENTIAL_OIL || kind == Kind.DRIED_PLANT;
        Typed<Strength> strength = new Typed<>("50 %", AlcoholByVolume.at20(50.0));
        Map<Substance, Typed<Share>> contents = new EnumMap<>(Substance.class);
        if (bySolids) {
            contents.put(Substance.WATER, new Typed<>("50 %", new MassFraction(0.5)));
            contents.put(Substance.SUCROSE, new Typed<>("10 %", new MassFraction(0.1)));
        }
        return new Ingredient(
                name,
                kind,
                plain ? null : strength,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                null,
                contents,
                null,
                null,
                null,
                null,
                null);
    }

    @ParameterizedTest
    @CsvSource({
        "oleander oil, ESSENTIAL_OIL, plant",
        "Eisenhut, DRIED_PLANT, plant",
        "monkshood, TINCTURE, plant",
        "methylated spirits, SPIRIT, wrong-alcohol",
        "lemon fragrance oil, ESSENCE, not-food-grade",
        "wintergreen, ESSENTIAL_OIL, not-for-drinking",
        "calamus root, DRIED_PLANT, us-prohibited"
    })
    void whatMustNotBeDrunkIsSaidSoOfAnyKind(String name, Kind kind, String rule) {
        assertThat(ByName.stops(of(name, kind), Grounds.SHIPPED))
                .allMatch(finding -> finding.where().equals(name))
                .extracting(Finding::rule)
                .contains(rule);
    }

    /** Alcohol and liquids that are none for drinking, as bottles and shops call them; common usage, from memory. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Isopropylalkohol",
                "isopropylalcohol",
                "isopropanol",
                "2-propanol",
                "propan-2-ol",
                "Methylalkohol",
                "methyl alcohol",
                "vergällter Alkohol",
                "Ethanol 96 %, vergällt",
                "Ethanol denaturiert",
                "Desinfektionsmittel",
                "Wundalkohol",
                "Reinigungsalkohol",
                "Bioethanol",
                "Kaminethanol",
                "fuel ethanol",
                "technical ethanol",
                "technischer Alkohol",
                "reagent alcohol",
                "Parfümalkohol",
                "perfumer's alcohol",
                "perfumers alcohol",
                "SD Alcohol 40-B",
                "IMS 99",
                "industrial methylated spirit",
                "ethanol with Bitrex",
                "Franzbranntwein",
                "butanol",
                "ethylene glycol",
                "Ethylenglykol",
                "diethylene glycol",
                "Diethylenglykol",
                "antifreeze",
                "Frostschutz",
                "Frostschutzmittel",
                "Scheibenreiniger",
                "windscreen washer",
                "hand sanitiser",
                "window cleaner",
                "Spiritus 94 %",
                "Spiritus",
                "Lampenspiritus",
                "Putz-Spiritus",
                "Spiritus vini gallici",
                "Holzgeist",
                "Ethanol technisch",
                "Alkohol, technisch",
                "Alkohol technische Qualität",
                "alcool à brûler",
                "alcool a bruler",
                "alcool denaturato",
                "alcohol desnaturalizado",
                "alcohol de farmacia",
                "E85",
                "hand gel",
                "Handgel",
                "Nagellackentferner",
                "acetone",
                "Waschbenzin",
                "mineral spirits",
                "white spirit",
                "alcohol (cosmetic)",
                "Vorlauf",
                "foreshots of my still"
            })
    void alcoholThatIsNoneForDrinkingIsKnownByItsNames(String name) {
        for (Kind kind : Set.of(Kind.SPIRIT, Kind.OTHER, Kind.GLYCEROL)) {
            assertThat(ByName.stops(of(name, kind), Grounds.SHIPPED))
                    .as("%s as %s", name, kind)
                    .extracting(Finding::rule)
                    .contains("wrong-alcohol");
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "propylene glycol",
                "Propylenglykol",
                "spirit",
                "neutral alcohol",
                "ethanol",
                "Weingeist",
                "Trinkalkohol",
                "Primasprit",
                "unvergällter Alkohol",
                "glycerol",
                "vodka",
                "Branntwein",
                "spiritus vini",
                "Spiritus rektyfikowany",
                "spirytus rektyfikowany 95 %",
                "Mittellauf",
                "white rum"
            })
    void alcoholForDrinkingIsNotTakenForIt(String name) {
        for (Kind kind : Set.of(Kind.SPIRIT, Kind.OTHER, Kind.GLYCEROL)) {
            assertThat(ByName.stops(of(name, kind), Grounds.SHIPPED))
                    .as("%s as %s", name, kind)
                    .isEmpty();
        }
    }

    /** Words that stand for another thing in another kind: an ale, a flower. */
    @ParameterizedTest
    @CsvSource({
        "IPA 99, SPIRIT, true",
        "IPA, WINE, false",
        "heads from my still, DISTILLATE, true",
        "clover heads, DRIED_PLANT, false",
        "white spirit vinegar, WATER, false"
    })
    void aWordOfTwoMeaningsStopsWhereItIsTheSpirit(String name, Kind kind, boolean stops) {
        assertThat(ByName.stops(of(name, kind), Grounds.SHIPPED).stream()
                        .anyMatch(finding -> finding.rule().equals("wrong-alcohol")))
                .isEqualTo(stops);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Ethanol p.a.",
                "ethanol absolute, lab grade",
                "absoluter Alkohol",
                "Alkohol 70 % Apotheke",
                "Spiritus rektyfikowany",
                "Nachlauf"
            })
    void alcoholThatMayBeNoneForDrinkingIsAskedAbout(String name) {
        assertThat(new Bench().strong(name, Kind.SPIRIT, 70.0, 500.0).verdicts("wrong-alcohol"))
                .containsExactly("CAUTION for drinking?");
    }

    /** Names of poisonous plants, with a hyphen or none, in German and in the Latin of pharmacies; common usage, from memory. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "thornapple",
                "fox-glove",
                "fox glove",
                "monk's-hood",
                "monks hood",
                "deadly night-shade",
                "bella donna",
                "poison parsley",
                "cowbane",
                "devil's trumpet",
                "lilly of the valley",
                "jequirity",
                "Sturmhut",
                "Herbst-Zeitlose",
                "Maiglockchen",
                "Sevenbaum",
                "Stinkwacholder",
                "Paternostererbse",
                "Wunderbaum",
                "Herkulesstaude",
                "Brechnuss",
                "Brechnuß",
                "Krähenauge",
                "Safranrebendolde",
                "Poley",
                "Flohkraut",
                "Kawa-Kawa",
                "Rauschpfeffer",
                "Indianertabak",
                "Buschwindröschen",
                "Zwerg-Holunder",
                "Belladonnae folium",
                "Radix Aconiti",
                "Semen Strychni",
                "Herba Conii",
                "Flos Convallariae",
                "Radix Veratri",
                "Semen Colchici",
                "Folia Stramonii",
                "Pausinystalia",
                "Caltha",
                "bastard star anise",
                "Japan-Sternanis",
                "japanischer Sternanis",
                "Pfeifenblume",
                "Pfeifenwindenwurzel",
                "Blauer Lotus",
                "blaue Seerose",
                "Nymphaea caerulea",
                "celandine",
                "Meerzwiebel",
                "squill",
                "Urginea maritima",
                "snowdrop",
                "Schneeglöckchen",
                "Märzenbecher",
                "Galanthus nivalis",
                "Besenginster",
                "Natternkopf"
            })
    void aPoisonousPlantIsKnownByEachOfItsNames(String name) {
        assertThat(ByName.stops(of(name, Kind.DRIED_PLANT), Grounds.SHIPPED))
                .extracting(Finding::rule)
                .contains("plant");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Kalmuswurzelstock", "Deutscher Ingwer", "Magenwurz", "Rhizoma Calami", "calamus-root"})
    void calamusIsKnownByEachOfItsNames(String name) {
        assertThat(ByName.stops(of(name, Kind.DRIED_PLANT), Grounds.SHIPPED))
                .extracting(Finding::rule)
                .contains("us-prohibited");
    }

    /** Common usage, from memory. */
    @ParameterizedTest
    @CsvSource({
        "Boldoöl, ESSENTIAL_OIL, not-for-drinking",
        "Duftöl Lavendel, ESSENTIAL_OIL, not-food-grade",
        "Duftlampenöl Orange, ESSENTIAL_OIL, not-food-grade",
        "massage oil lemon, ESSENTIAL_OIL, not-food-grade",
        "birch tar oil, ESSENTIAL_OIL, not-for-drinking",
        "Birkenteeröl, OTHER, not-for-drinking",
        "Wacholderteeröl, ESSENTIAL_OIL, not-for-drinking",
        "cade oil, ESSENTIAL_OIL, not-for-drinking",
        "turpentine, OTHER, not-for-drinking",
        "Terpentinöl, ESSENTIAL_OIL, not-for-drinking",
        "Campher, OTHER, not-for-drinking",
        "Oleum Sabinae, OTHER, not-for-drinking"
    })
    void anOilThatIsNotForDrinkingIsKnownByEachOfItsNames(String name, Kind kind, String rule) {
        assertThat(ByName.stops(of(name, kind), Grounds.SHIPPED))
                .extracting(Finding::rule)
                .contains(rule);
    }

    @ParameterizedTest
    @CsvSource({"wintergreen leaves, DRIED_PLANT", "Wintergrünblätter, DRIED_PLANT", "wintergreen, MACERATE"})
    void wintergreenCallsForCareByItsSalicylate(String name, Kind kind) {
        assertThat(new Bench()
                        .grams(of(name, kind), 50.0)
                        .strong("spirit", Kind.SPIRIT, 96.0, 500.0)
                        .findings("medicines"))
                .anyMatch(finding -> finding.message().contains("methyl salicylate"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"Edelgamander", "Salbei-Gamander", "Waldgamander", "Katzengamander"})
    void germanderIsKnownByEachOfItsNamesAndIsNoSage(String name) {
        Bench bench = new Bench().grams(name, Kind.DRIED_PLANT, 5.0).strong("spirit", Kind.SPIRIT, 96.0, 500.0);
        assertThat(bench.verdicts("plant")).containsExactly("CAUTION with care");
        assertThat(bench.safety().drink().portions().get(0).plants())
                .extracting(Plant::name)
                .containsExactly("germander");
    }

    /** Clary sage is no sage; oil of bitter almonds is blocked until it is said to be freed, and not when that is denied. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "clary sage oil | ",
                "Muskatellersalbeiöl | ",
                "Salbeiöl (Salvia sclarea) | ",
                "Salbeiöl | CAUTION check",
                "lemon eucalyptus oil | CAUTION check",
                "bitter almond oil FFPA | ",
                "Bittermandelöl blausäurefrei | ",
                "Bittermandelöl | STOP not for drinking",
                "Bittermandelöl, nicht blausäurefrei | STOP not for drinking",
                "bitter almond oil, not FFPA | STOP not for drinking"
            })
    void anOilIsBlockedByItsOwnPlant(String name, String verdict) {
        Bench bench = new Bench().grams(name, Kind.ESSENTIAL_OIL, 0.01).strong("spirit", Kind.SPIRIT, 40.0, 999.0);
        assertThat(bench.verdicts("not-for-drinking"))
                .isEqualTo(verdict == null ? java.util.List.of() : java.util.List.of(verdict));
    }

    /** What law forbids by its amount is not there at zero. */
    @Test
    void whatIsForbiddenByLawAloneDoesNotStopAtNothing() {
        Bench bench = new Bench()
                .grams(of("calamus root", Kind.DRIED_PLANT), 0.0)
                .strong("spirit", Kind.SPIRIT, 40.0, 1000.0);
        assertThat(bench.safety().isStopped()).isFalse();
    }

    @ParameterizedTest
    @CsvSource({
        "mead, WINE",
        "Met, WINE",
        "Bärenfang, LIQUEUR",
        "Honigwein, WINE",
        "honeycomb, OTHER",
        "Bienenwabe, OTHER"
    })
    void honeyThatIsInADrinkByItsNameIsNotForInfants(String name, Kind kind) {
        assertThat(new Bench().grams(of(name, kind), 500.0).verdicts("honey")).containsExactly("NOTE not for infants");
    }

    /** Substances that EU law forbids to add as such, by their German names. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "Cumarin",
                "Thujon",
                "alpha-Thujon",
                "beta-Thujon",
                "Safrol",
                "Pulegon",
                "Menthofuran",
                "Blausäure"
            })
    void aSubstanceIsKnownByItsGermanName(String name) {
        Bench bench = new Bench().grams(of(name, Kind.OTHER), 1.0).strong("spirit", Kind.SPIRIT, 96.0, 500.0);
        assertThat(bench.verdicts("eu-not-as-such")).containsExactly("STOP EU must not be added");
    }

    @ParameterizedTest
    @ValueSource(strings = {"Campher", "Kampfer", "Anethol", "Methylsalicylat", "Koffein", "Chinin"})
    void aSubstanceThatIsCountedIsKnownByItsGermanName(String name) {
        Bench bench = new Bench().grams(of(name, Kind.OTHER), 1.0).strong("spirit", Kind.SPIRIT, 96.0, 500.0);
        assertThat(bench.safety().drink().portions()).anyMatch(portion -> portion.substance() != null);
    }

    /** An acid is one of those that are known by their names, or none. */
    @ParameterizedTest
    @EnumSource(mode = EnumSource.Mode.EXCLUDE, names = "ACID")
    void ofWhatNothingSaysSoNothingIsSaid(Kind kind) {
        assertThat(ByName.stops(of("oleander", kind), Grounds.SHIPPED)).isNotEmpty();
        assertThat(ByName.stops(of("lemon", kind), Grounds.SHIPPED)).isEmpty();
        assertThat(ByName.stops(of("moon dust", kind), Grounds.SHIPPED)).isEmpty();
    }

    @Test
    void theHouseHasItsSay() {
        HouseRules house = HouseRules.read("no sage", Knowledge.SHIPPED).rules();
        assertThat(ByName.stops(Ingredient.named("sage", Kind.DRIED_PLANT), Grounds.SHIPPED.with(house)))
                .extracting(Finding::jurisdiction)
                .contains(HouseRule.JURISDICTION);
    }
}
