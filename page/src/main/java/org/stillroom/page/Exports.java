package org.stillroom.page;

import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.clarity.OilPart;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.plan.Sketch;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.triangle.Company;
import org.stillroom.core.triangle.Drag;
import org.stillroom.core.triangle.HazeShade;
import org.stillroom.core.triangle.Plate;
import org.stillroom.core.triangle.Reading;
import org.teavm.jso.JSExport;

/** What a page may ask of the core. */
public final class Exports {
    private Exports() {}

    /**
     * Takes a recipe's point to a strength and a sugar.
     *
     * @param shown the part of the triangle that is drawn
     * @return null when the arithmetic does not settle
     */
    @JSExport
    public static @Nullable MovedPoint moveTo(RecipeNumbers numbers, double shown, double strength, double sugar) {
        return move(RecipeNumbers.sketch(numbers), new Plate(shown), new Reading(strength, sugar));
    }

    /**
     * Takes a recipe's point under a hand.
     *
     * @param liquid the liquid of the last move, grams of each substance; it tells what stands beside the three
     * @return null when the arithmetic does not settle
     */
    @JSExport
    public static @Nullable MovedPoint moveUnder(
            RecipeNumbers numbers, double shown, double x, double y, double[] liquid) {
        Sketch sketch = RecipeNumbers.sketch(numbers);
        Plate plate = new Plate(shown);
        Company company = Company.of(Contents.ofGrams(liquid), sketch.sugarBasis());
        return move(sketch, plate, company.reading(plate.spot(new Plate.Place(x, y))));
    }

    private static @Nullable MovedPoint move(Sketch sketch, Plate plate, Reading reading) {
        try {
            return MovedPoint.of(sketch, plate, Drag.to(sketch, reading));
        } catch (ArithmeticException doesNotSettle) {
            return null;
        }
    }

    /**
     * Shades the triangle for what so many grams of each line make.
     *
     * @param shown the part of the triangle that is drawn
     * @param grams of each line, as the last move gave them
     * @return null where there is no oil in it
     */
    @JSExport
    public static @Nullable Shade shade(RecipeNumbers numbers, double shown, double[] grams) {
        Map<String, OilPart> known = RecipeNumbers.known(numbers);
        HazeShade shade = HazeShade.of(RecipeNumbers.liquid(numbers, grams), new Plate(shown), key -> part(known, key));
        return shade == null ? null : Shade.of(shade);
    }

    private static OilPart part(Map<String, OilPart> known, String key) {
        return Objects.requireNonNull(known.get(key), key);
    }

    /** Returns grams in avoirdupois ounces. */
    @JSExport
    public static double ounces(double grams) {
        return grams / Mass.GRAMS_PER_OUNCE;
    }

    /** Returns millilitres in US fluid ounces. */
    @JSExport
    public static double fluidOunces(double millilitres) {
        return millilitres / Volume.MILLILITRES_PER_US_OUNCE;
    }

    /** Returns a dose per litre of what is made, in units of so many grams each, as every page of Stillroom writes it. */
    @JSExport
    public static String perLitre(double grams, double millilitres, double gramsPerUnit) {
        return QuantityWords.figures(1000.0 * grams / millilitres / gramsPerUnit);
    }

    /** Returns a number with just so many places, as every page of Stillroom writes it. */
    @JSExport
    public static String fixed(double value, int places) {
        return QuantityWords.fixed(value, places);
    }

    /** The module has no program of its own; the compiler wants a place to begin. */
    public static void main(String[] args) {}
}
