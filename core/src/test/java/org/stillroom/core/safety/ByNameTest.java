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
                "window cleaner"
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
                "Branntwein"
            })
    void alcoholForDrinkingIsNotTakenForIt(String name) {
        for (Kind kind : Set.of(Kind.SPIRIT, Kind.OTHER, Kind.GLYCEROL)) {
            assertThat(ByName.stops(of(name, kind), Grounds.SHIPPED))
                    .as("%s as %s", name, kind)
                    .isEmpty();
        }
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
