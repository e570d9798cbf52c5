package org.stillroom.core.quantity;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.TypedNumber.Scale;

/**
 * The units that are read, by the words that people use for them; spaces, points and case do not matter.
 *
 * <p>United States and imperial measures are exact by definition. Source: NIST Handbook 44, appendix C (2023 edition,
 * from memory), and the Unified Code for Units of Measure.
 */
final class Units {
    private static final double GALLON_US = 128 * Volume.MILLILITRES_PER_US_OUNCE;
    /** In millilitres; exact by the Weights and Measures Act 1985 of the United Kingdom. */
    private static final double GALLON_IMPERIAL = 4546.09;

    /** One imperial fluid ounce is 1/160 of the gallon, which is 625e-5 of it. */
    private static final Scale OUNCE_OF_IMPERIAL_GALLON = new Scale(-5, 625);

    private static final Map<OunceMeaning, Units> BY_OUNCE = new EnumMap<>(OunceMeaning.class);

    static {
        for (OunceMeaning ounce : OunceMeaning.values()) {
            BY_OUNCE.put(ounce, new Units(ounce));
        }
    }

    private final Map<String, Unit> byWord = new HashMap<>();

    private Units(OunceMeaning ounce) {
        masses();
        metricVolumes();
        spoonsAndCups();
        pintsAndGallons();
        fluidOunces(ounce);
        put(Unit.Kind.DROPS, Scale.UNIT, null, "drop", "drops", "gtt", "gtts", "tropfen");
    }

    /** Returns the units where an ounce of volume means this. */
    static Units of(OunceMeaning ounce) {
        return Objects.requireNonNull(BY_OUNCE.get(ounce));
    }

    /** Returns the unit of these words, or null where there is none. */
    @Nullable
    Unit named(String words) {
        return byWord.get(key(words));
    }

    static String key(String words) {
        return words.replace(" ", "").replace(".", "").replace("^", "").toLowerCase(Locale.ROOT);
    }

    private void masses() {
        mass(
                Scale.tenTo(3),
                "kg",
                "kgs",
                "kilo",
                "kilos",
                "kilogram",
                "kilograms",
                "kilogramme",
                "kilogrammes",
                "kilogramm");
        mass(Scale.UNIT, "g", "gm", "gms", "gram", "grams", "gramme", "grammes", "gramm");
        mass(Scale.tenTo(-3), "mg", "milligram", "milligrams", "milligramme", "milligrammes", "milligramm");
        mass(Scale.tenTo(-6), "µg", "ug", "mcg", "microgram", "micrograms", "microgramme", "microgrammes");
        mass(Scale.of(16 * Mass.GRAMS_PER_OUNCE), "lb", "lbs", "pound", "pounds");
        mass(Scale.of(Mass.GRAMS_PER_OUNCE), ouncesByWeight());
        mass(Scale.of(16 * Mass.GRAMS_PER_OUNCE / 7000), "grain", "grains");
    }

    private static String[] ouncesByWeight() {
        return new String[] {
            "ozbyweight",
            "ozwt",
            "ozweight",
            "ozav",
            "ozavdp",
            "wtoz",
            "ouncebyweight",
            "ouncesbyweight",
            "ounceavoirdupois",
            "ouncesavoirdupois",
            "avoirdupoisounce",
            "avoirdupoisounces"
        };
    }

    private void metricVolumes() {
        volume(Scale.tenTo(6), "m3", "cubicmetre", "cubicmetres", "cubicmeter", "cubicmeters");
        volume(Scale.tenTo(5), "hl", "hectolitre", "hectolitres", "hectoliter", "hectoliters");
        volume(Scale.tenTo(3), "l", "litre", "litres", "liter", "liters", "dm3");
        volume(Scale.tenTo(2), "dl", "decilitre", "decilitres", "deciliter", "deciliters");
        volume(Scale.tenTo(1), "cl", "centilitre", "centilitres", "centiliter", "centiliters");
        volume(Scale.UNIT, "ml", "mls", "millilitre", "millilitres", "milliliter", "milliliters", "cc", "cm3");
        volume(Scale.tenTo(-3), "µl", "ul", "mcl", "microlitre", "microlitres", "microliter", "microliters", "mm3");
    }

    private void spoonsAndCups() {
        customary("a cup is taken as the US cup, 236.588 mL", GALLON_US / 16, "cup", "cups");
        customary(
                "a tablespoon is taken as the US one, 14.787 mL",
                GALLON_US / 256,
                "tbsp",
                "tbsps",
                "tbs",
                "tablespoon",
                "tablespoons");
        customary(
                "a teaspoon is taken as the US one, 4.929 mL", GALLON_US / 768, "tsp", "tsps", "teaspoon", "teaspoons");
    }

    private void pintsAndGallons() {
        britishToo("a pint is taken as the US one, 473.176 mL", 8, "pint", "pints", "pt", "pts");
        britishToo("a quart is taken as the US one, 946.353 mL", 4, "quart", "quarts", "qt", "qts");
        britishToo("a gallon is taken as the US one, 3785.41 mL", 1, "gallon", "gallons", "gal", "gals");
    }

    private void fluidOunces(OunceMeaning ounce) {
        String[] words = {"floz", "flozs", "fluidounce", "fluidounces", "flounce", "flounces"};
        for (String word : words) {
            imperial(Scale.of(GALLON_IMPERIAL).times(OUNCE_OF_IMPERIAL_GALLON), word);
            put(Unit.Kind.VOLUME, Scale.of(Volume.MILLILITRES_PER_US_OUNCE), null, "us" + word);
        }
        Scale scale = Scale.of(ounce.millilitres());
        put(Unit.Kind.VOLUME, scale, ounce.assumption(), words);
        put(Unit.Kind.VOLUME, scale, ounce.assumption(), "oz", "ozs", "ounce", "ounces");
    }

    /** A part of the gallon that both countries have; without a country's name it is the American one. */
    private void britishToo(String assumed, int inGallon, String... words) {
        customary(assumed, GALLON_US / inGallon, words);
        for (String word : words) {
            imperial(Scale.of(GALLON_IMPERIAL / inGallon), word);
        }
    }

    private void customary(String assumed, double millilitres, String... words) {
        put(Unit.Kind.VOLUME, Scale.of(millilitres), assumed, words);
        for (String word : words) {
            put(Unit.Kind.VOLUME, Scale.of(millilitres), null, "us" + word);
        }
    }

    private void imperial(Scale scale, String word) {
        put(Unit.Kind.VOLUME, scale, null, "imp" + word, "imperial" + word, "uk" + word);
    }

    private void mass(Scale scale, String... words) {
        put(Unit.Kind.MASS, scale, null, words);
    }

    private void volume(Scale scale, String... words) {
        put(Unit.Kind.VOLUME, scale, null, words);
    }

    private void put(Unit.Kind kind, Scale scale, @Nullable String assumed, String... words) {
        for (String word : words) {
            byWord.put(word, new Unit(kind, scale, assumed));
        }
    }
}
