package org.stillroom.core.ingredient;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.acid.Acid;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Density;
import org.stillroom.core.quantity.MassFraction;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.reference.Source;

/**
 * The ingredients that a recipe may use by name without listing them; a listed ingredient of the same name comes first.
 *
 * <p>Names are compared without regard to capitals, decimal comma or point, or the blank before a per-cent sign. No
 * brand is among them.
 */
public final class Generics {
    /** Strengths at which plain spirit is sold, % vol at 20 °C. Common practice, no source. */
    private static final List<String> SPIRITS =
            List.of("37.5", "40", "43", "45", "50", "60", "63", "70", "75", "80", "90", "95", "96");

    /** Strengths that are sold as vodka, % vol at 20 °C. Common practice, no source. */
    private static final List<String> VODKAS = List.of("37.5", "40", "43", "45", "50");

    /** Names of plain spirit that leave its strength to be said beside them. */
    private static final List<String> PLAIN_SPIRIT =
            List.of("spirit", "neutral spirit", "neutral alcohol", "rectified spirit");

    /** Molar mass of glucose, g/mol. Source: standard atomic weights. */
    private static final double GLUCOSE_GRAMS_PER_MOLE = 180.156;

    /** Molar mass of glucose with one water, g/mol. Source: standard atomic weights. */
    private static final double GLUCOSE_MONOHYDRATE_GRAMS_PER_MOLE = 198.171;

    /** Weight of a measure of granulated sugar, kg/m³: a US cup of it is about 200 g. Common practice, no source. */
    private static final Typed<Density> SUGAR_AS_POURED = new Typed<>("0.845 g/ml", new Density(845));

    /** Kinds that say by themselves what the ingredient is. */
    private static final Map<Kind, String> IMPLIED = Map.of(
            Kind.SUGAR, "white sugar",
            Kind.HONEY, "honey",
            Kind.WATER, "water",
            Kind.GLYCEROL, "glycerol",
            Kind.SALT, "salt");

    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final Pattern DECIMAL_COMMA = Pattern.compile("(\\d),(\\d)");
    private static final Pattern TIGHT_PERCENT = Pattern.compile("(\\d)%");
    private static final Pattern BY_VOLUME = Pattern.compile("% vol\\.?$");

    private static final List<Generic> ALL = all();
    private static final Map<String, Generic> BY_NAME = byName();

    private Generics() {}

    /** Returns every generic in the order of the documentation. */
    public static List<Generic> list() {
        return ALL;
    }

    /** Returns the generic that a name means, or null when it means none. */
    public static @Nullable Generic find(String name) {
        return BY_NAME.get(plain(name));
    }

    /** Returns whether two names mean the same: alike but for how they are written, or names of one generic. */
    public static boolean same(String one, String other) {
        Generic generic = find(one);
        return plain(one).equals(plain(other)) || (generic != null && generic.equals(find(other)));
    }

    /** Returns whether two ingredients are the same by their names, or are plain spirit of one strength, whichever says it. */
    public static boolean same(Ingredient one, Ingredient other) {
        return same(one.name(), other.name()) || same(withStrength(one), withStrength(other));
    }

    private static String withStrength(Ingredient ingredient) {
        Typed<Strength> strength = ingredient.strength();
        return ingredient.kind() == Kind.SPIRIT && PLAIN_SPIRIT.contains(plain(ingredient.name())) && strength != null
                ? "spirit " + strength.text()
                : ingredient.name();
    }

    /**
     * Returns a listed ingredient with what the maker left out taken from the generic of its name, else from the one
     * that its kind alone implies (sugar is sucrose, water is water); what the maker wrote always stands.
     */
    public static Ingredient completed(Ingredient listed) {
        Generic named = find(listed.name());
        String implied = IMPLIED.get(listed.kind());
        Generic generic = named != null && named.ingredient().kind() == listed.kind()
                ? named
                : implied == null ? null : find(implied);
        if (generic == null || listed.from() != null) {
            return listed;
        }
        Ingredient known = generic.ingredient();
        boolean composed = !listed.contains().isEmpty() || listed.sugar() != null || listed.acidity() != null;
        return new Ingredient(
                listed.name(),
                listed.kind(),
                listed.strength() == null ? known.strength() : listed.strength(),
                listed.tolerance(),
                listed.sugar(),
                listed.acidity(),
                listed.density() == null ? known.density() : listed.density(),
                listed.drop(),
                listed.price(),
                listed.atHand(),
                listed.pack(),
                composed ? listed.contains() : known.contains(),
                listed.aroma(),
                listed.plant(),
                listed.ratio(),
                null,
                listed.note());
    }

    private static Map<String, Generic> byName() {
        Map<String, Generic> names = new LinkedHashMap<>();
        for (Generic generic : ALL) {
            names.put(plain(generic.ingredient().name()), generic);
            for (String other : generic.otherNames()) {
                names.put(plain(other), generic);
            }
        }
        return names;
    }

    private static String plain(String name) {
        String text = BLANKS.matcher(name.strip().toLowerCase(Locale.ROOT)).replaceAll(" ");
        text = DECIMAL_COMMA.matcher(text).replaceAll("$1.$2");
        text = TIGHT_PERCENT.matcher(text).replaceAll("$1 %");
        return BY_VOLUME.matcher(text).replaceAll("%");
    }

    private static List<Generic> all() {
        List<Generic> generics = new ArrayList<>();
        generics.add(pure("water", Kind.WATER, Substance.WATER, "drinking water"));
        SPIRITS.forEach(strength -> generics.add(spirit(strength)));
        generics.addAll(sugars());
        generics.addAll(acids());
        generics.add(pure("glycerol", Kind.GLYCEROL, Substance.GLYCEROL, "glycerine"));
        generics.add(pure("salt", Kind.SALT, Substance.SALT, "table salt"));
        return List.copyOf(generics);
    }

    private static Generic spirit(String percent) {
        String name = "spirit " + percent + " %";
        List<String> others = new ArrayList<>(
                List.of("spirit " + percent, "neutral spirit " + percent + " %", "neutral spirit " + percent));
        if (VODKAS.contains(percent)) {
            others.add("vodka " + percent + " %");
            others.add("vodka " + percent);
        }
        Typed<Strength> strength = new Typed<>(percent + " %", AlcoholByVolume.at20(Double.parseDouble(percent)));
        Ingredient spirit = Ingredient.named(name, Kind.SPIRIT).ofStrength(strength);
        return new Generic(spirit, others, false, "Ethanol and water at the strength in its name.", Source.TRADE);
    }

    private static List<Generic> sugars() {
        Ingredient white = Ingredient.named("white sugar", Kind.SUGAR)
                .ofDensity(SUGAR_AS_POURED)
                .containing(Map.of(Substance.SUCROSE, percent("100")));
        return List.of(
                new Generic(
                        white,
                        List.of("sugar", "sucrose", "granulated sugar", "caster sugar", "cane sugar", "beet sugar"),
                        false,
                        "Taken as pure sucrose; a US cup of crystals is about 200 g.",
                        Source.TRADE),
                pure("glucose", Kind.SUGAR, Substance.GLUCOSE, "anhydrous glucose", "anhydrous dextrose"),
                hydrate(
                        Kind.SUGAR,
                        "glucose monohydrate",
                        Substance.GLUCOSE,
                        GLUCOSE_GRAMS_PER_MOLE / GLUCOSE_MONOHYDRATE_GRAMS_PER_MOLE,
                        "90.91 %",
                        "9.09 %",
                        "dextrose monohydrate"),
                pure("fructose", Kind.SUGAR, Substance.FRUCTOSE, "fruit sugar"),
                generic(
                        Kind.SUGAR,
                        "invert sugar",
                        shares(Substance.GLUCOSE, percent("50"), Substance.FRUCTOSE, percent("50")),
                        false,
                        "Taken as free of water; what shops sell under this name is a syrup: list it with its figures.",
                        Source.TRADE),
                syrup("simple syrup 1:1", "50 %", 0.5, "simple syrup", "sugar syrup 1:1", "syrup 1:1"),
                syrup(
                        "simple syrup 2:1",
                        "66.67 %",
                        2.0 / 3.0,
                        "rich syrup",
                        "rich simple syrup",
                        "sugar syrup 2:1",
                        "syrup 2:1"),
                honey());
    }

    private static Generic syrup(String name, String text, double sugar, String... others) {
        Share dissolved = new MassFraction(sugar);
        Share water = new MassFraction(1 - sugar);
        return generic(
                Kind.SYRUP,
                name,
                shares(
                        Substance.SUCROSE, new Typed<>(text, dissolved),
                        Substance.WATER, new Typed<>(sugar == 0.5 ? "50 %" : "33.33 %", water)),
                false,
                "White sugar and water by weight.",
                Source.TRADE,
                others);
    }

    /** The split of the sugars follows the usual surplus of fructose, about 1.22 to 1 (from memory). */
    private static Generic honey() {
        Map<Substance, Typed<Share>> shares = new LinkedHashMap<>();
        shares.put(Substance.FRUCTOSE, percent("41.2"));
        shares.put(Substance.GLUCOSE, percent("33.8"));
        shares.put(Substance.WATER, percent("17.5"));
        shares.put(Substance.OTHER_SOLIDS, percent("7.5"));
        return generic(
                Kind.HONEY,
                "honey",
                shares,
                true,
                "A typical honey: 17.5 % water, 75 % fructose and glucose, the rest other solids, acids among them.",
                Source.TRADE);
    }

    private static List<Generic> acids() {
        return List.of(
                pure("citric acid", Kind.ACID, Substance.CITRIC, "anhydrous citric acid", "citric acid anhydrous"),
                hydrate(
                        Kind.ACID,
                        "citric acid monohydrate",
                        Substance.CITRIC,
                        Acid.CITRIC.gramsPerMole() / Acid.CITRIC_MONOHYDRATE_GRAMS_PER_MOLE,
                        "91.43 %",
                        "8.57 %"),
                pure("malic acid", Kind.ACID, Substance.MALIC),
                pure("tartaric acid", Kind.ACID, Substance.TARTARIC),
                pure("ascorbic acid", Kind.ACID, Substance.ASCORBIC, "vitamin c"),
                lactic("80", "20"),
                lactic("88", "12"));
    }

    private static Generic lactic(String acid, String water) {
        return generic(
                Kind.ACID,
                "lactic acid " + acid + " %",
                shares(Substance.LACTIC, percent(acid), Substance.WATER, percent(water)),
                true,
                "By mass, as the label says; part of it is bound as lactoyllactic acid and comes free only in time.",
                Source.TRADE,
                "lactic acid " + acid);
    }

    private static Generic pure(String name, Kind kind, Substance substance, String... others) {
        return generic(kind, name, Map.of(substance, percent("100")), false, "Taken as pure.", Source.TRADE, others);
    }

    private static Generic generic(
            Kind kind,
            String name,
            Map<Substance, Typed<Share>> contains,
            boolean typical,
            String remark,
            Source source,
            String... others) {
        Ingredient ingredient = Ingredient.named(name, kind).containing(contains);
        return new Generic(ingredient, List.of(others), typical, remark, source);
    }

    private static Map<Substance, Typed<Share>> shares(
            Substance first, Typed<Share> much, Substance second, Typed<Share> rest) {
        Map<Substance, Typed<Share>> shares = new LinkedHashMap<>();
        shares.put(first, much);
        shares.put(second, rest);
        return shares;
    }

    private static Typed<Share> percent(String figure) {
        return new Typed<>(figure + " %", new MassFraction(Double.parseDouble(figure) / 100.0));
    }

    private static Generic hydrate(
            Kind kind, String name, Substance substance, double share, String text, String water, String... others) {
        Map<Substance, Typed<Share>> contains = shares(
                substance,
                new Typed<>(text, new MassFraction(share)),
                Substance.WATER,
                new Typed<>(water, new MassFraction(1 - share)));
        return generic(kind, name, contains, false, "By molar masses.", Source.ATOMIC_WEIGHTS, others);
    }
}
