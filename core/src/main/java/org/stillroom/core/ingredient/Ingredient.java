package org.stillroom.core.ingredient;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Density;
import org.stillroom.core.quantity.Price;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.quantity.Typed;

/**
 * Anything that can go in, as a maker describes it; what is left out is null and takes the default of its kind, or is
 * asked for.
 *
 * @param name what the maker calls it; unique within a recipe
 * @param kind what it is
 * @param strength alcohol, for whatever holds any
 * @param tolerance half-width within which the label's figure lies: % vol points where there is a strength, else per
 *     cent of the leading content
 * @param sugar sugar of the whole (as sucrose unless {@code contains} tells them apart)
 * @param acidity acid of the whole, as citric unless {@code contains} tells them apart
 * @param density mass per volume at 20 °C where it was measured
 * @param drop mass or volume of one drop from the maker's own dropper
 * @param price what it costs
 * @param atHand how much there is
 * @param pack how much one saleable pack holds
 * @param contains further substances, each by mass of the whole or per litre
 * @param aroma which oils and constituents it carries, as far as the maker knows them
 * @param plant what stood in it, where its name does not say that
 * @param ratio how much of that it carries, for what plants stood in
 * @param from file name of the recipe whose result this is, or null when it is bought
 * @param note anything else the maker wrote
 */
public record Ingredient(
        String name,
        Kind kind,
        @Nullable Typed<Strength> strength,
        @Nullable Typed<Double> tolerance,
        @Nullable Typed<Share> sugar,
        @Nullable Typed<Share> acidity,
        @Nullable Typed<Density> density,
        @Nullable Typed<Amount> drop,
        @Nullable Typed<Price> price,
        @Nullable Typed<Amount> atHand,
        @Nullable Typed<Amount> pack,
        Map<Substance, Typed<Share>> contains,
        @Nullable Typed<Aroma> aroma,
        @Nullable String plant,
        @Nullable Typed<PlantRatio> ratio,
        @Nullable String from,
        @Nullable String note) {
    public Ingredient {
        contains = Collections.unmodifiableMap(new LinkedHashMap<>(contains));
    }

    /** Returns the result of a recipe. */
    public static Ingredient ofRecipe(String recipe, Kind kind) {
        return new Ingredient(
                recipe, kind, null, null, null, null, null, null, null, null, null, Map.of(), null, null, null, recipe,
                null);
    }

    /** Returns an ingredient of which only name and kind are known. */
    public static Ingredient named(String name, Kind kind) {
        return new Ingredient(
                name, kind, null, null, null, null, null, null, null, null, null, Map.of(), null, null, null, null,
                null);
    }

    /** Returns what stood in it, by its maker's words: the plant that is named, else the ingredient's own name. */
    public String plants() {
        return plant == null ? name : plant;
    }

    /** Returns every word by which what is in it may be recognised: its name, and the plant that is named. */
    public String words() {
        return plant == null ? name : name + "; " + plant;
    }

    /** Returns the same ingredient at another strength; a density measured at the old one is dropped. */
    public Ingredient ofStrength(Typed<Strength> other) {
        return new Ingredient(
                name, kind, other, null, sugar, acidity, null, drop, price, atHand, pack, contains, aroma, plant, ratio,
                from, note);
    }

    /** Returns the same ingredient with another tolerance of its label. */
    public Ingredient ofTolerance(Typed<Double> other) {
        return new Ingredient(
                name, kind, strength, other, sugar, acidity, density, drop, price, atHand, pack, contains, aroma, plant,
                ratio, from, note);
    }

    /** Returns the same ingredient that is known to hold these substances. */
    public Ingredient containing(Map<Substance, Typed<Share>> parts) {
        return new Ingredient(
                name, kind, strength, tolerance, sugar, acidity, density, drop, price, atHand, pack, parts, aroma,
                plant, ratio, from, note);
    }

    /** Returns the same ingredient with so much sugar of the whole. */
    public Ingredient ofSugar(Typed<Share> known) {
        return new Ingredient(
                name, kind, strength, tolerance, known, acidity, density, drop, price, atHand, pack, contains, aroma,
                plant, ratio, from, note);
    }

    /** Returns the same ingredient of a density that is known. */
    public Ingredient ofDensity(Typed<Density> known) {
        return new Ingredient(
                name, kind, strength, tolerance, sugar, acidity, known, drop, price, atHand, pack, contains, aroma,
                plant, ratio, from, note);
    }

    /** Returns the same ingredient of which a drop is known. */
    public Ingredient ofDrop(Typed<Amount> known) {
        return new Ingredient(
                name, kind, strength, tolerance, sugar, acidity, density, known, price, atHand, pack, contains, aroma,
                plant, ratio, from, note);
    }

    /** Returns the same ingredient with so much of it at hand; null where that is not said. */
    public Ingredient withAtHand(@Nullable Typed<Amount> amount) {
        return new Ingredient(
                name, kind, strength, tolerance, sugar, acidity, density, drop, price, amount, pack, contains, aroma,
                plant, ratio, from, note);
    }

    /** Returns the same ingredient that is known to carry so much plant. */
    public Ingredient carrying(@Nullable String plants, Typed<PlantRatio> much) {
        return new Ingredient(
                name, kind, strength, tolerance, sugar, acidity, density, drop, price, atHand, pack, contains, aroma,
                plants, much, from, note);
    }

    /** Returns the same ingredient with these words for what stood in it and what else there is to know. */
    public Ingredient described(@Nullable String plants, @Nullable String otherNote) {
        return new Ingredient(
                name, kind, strength, tolerance, sugar, acidity, density, drop, price, atHand, pack, contains, aroma,
                plants, ratio, from, otherNote);
    }

    /** Returns the same ingredient with what it leaves out as another says it; how much stood in it is of what is said to have stood in it. */
    public Ingredient completedBy(Ingredient other) {
        return new Ingredient(
                name,
                kind,
                strength == null ? other.strength : strength,
                tolerance,
                sugar == null ? other.sugar : sugar,
                acidity == null ? other.acidity : acidity,
                density == null ? other.density : density,
                drop == null ? other.drop : drop,
                price,
                atHand,
                pack,
                contains.isEmpty() ? other.contains : contains,
                aroma == null ? other.aroma : aroma,
                plant == null ? other.plant : plant,
                ratio == null && plant == null ? other.ratio : ratio,
                from,
                note);
    }

    /** Returns the same ingredient under another name. */
    public Ingredient called(String other) {
        return new Ingredient(
                other, kind, strength, tolerance, sugar, acidity, density, drop, price, atHand, pack, contains, aroma,
                plant, ratio, from, note);
    }
}
