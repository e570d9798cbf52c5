package org.stillroom.page;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.clarity.OilPart;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.plan.Sketch;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.recipe.SugarBasis;
import org.teavm.jso.JSObject;
import org.teavm.jso.JSProperty;
import org.teavm.jso.core.JSArrayReader;
import org.teavm.jso.core.JSMapLike;
import org.teavm.jso.core.JSNumber;
import org.teavm.jso.core.JSObjects;

/** A recipe in bare numbers as a page gives it: a {@link Sketch} as JSON, its keys ending in their unit. */
interface RecipeNumbers extends JSObject {
    @JSProperty("lines")
    JSArrayReader<Line> lines();

    @JSProperty("oil_parts")
    JSArrayReader<Part> oilParts();

    @JSProperty("asked")
    JSMapLike<Range> asked();

    @JSProperty("sugar_basis")
    String sugarBasis();

    @JSProperty("without_aim")
    boolean withoutAim();

    /** One line; no room means that there is no limit, no density that it is weighed as a solid. */
    interface Line extends JSObject {
        @JSProperty("per_gram")
        JSMapLike<JSNumber> perGram();

        @JSProperty("oil_shares")
        JSArrayReader<OilShare> oilShares();

        @JSProperty("fixed_g")
        double fixed();

        @JSProperty("dose_g_per_ml")
        double dose();

        @JSProperty("room_g")
        @Nullable
        JSNumber room();

        @JSProperty("cost_per_g")
        double cost();

        @JSProperty("density_g_per_ml")
        @Nullable
        JSNumber density();
    }

    /** One constituent's part of the mass of a line's oil. */
    interface OilShare extends JSObject {
        @JSProperty("key")
        String key();

        @JSProperty("share")
        double share();
    }

    /** What is known of one constituent of the oils. */
    interface Part extends JSObject {
        @JSProperty("key")
        String key();

        @JSProperty("g_per_mol")
        double gramsPerMole();

        @JSProperty("g_per_l_in_water")
        double gramsPerLitreInWater();

        @JSProperty("log_p")
        double logP();

        @JSProperty("g_per_ml")
        double gramsPerMillilitre();
    }

    /** What is asked of one figure, from low to high. */
    interface Range extends JSObject {
        @JSProperty("low")
        double low();

        @JSProperty("high")
        double high();
    }

    /** Returns the recipe that the numbers stand for. */
    static Sketch sketch(RecipeNumbers numbers) {
        List<Sketch.Line> lines = new ArrayList<>();
        for (int i = 0; i < numbers.lines().getLength(); i++) {
            lines.add(line(numbers.lines().get(i)));
        }
        Map<Asked, Span> asked = new EnumMap<>(Asked.class);
        for (Asked each : Asked.values()) {
            if (JSObjects.hasProperty(numbers.asked(), each.label())) {
                Range range = numbers.asked().get(each.label());
                asked.put(each, new Span(range.low(), range.high()));
            }
        }
        return new Sketch(lines, asked, basis(numbers.sugarBasis()), numbers.withoutAim());
    }

    private static Sketch.Line line(Line line) {
        JSNumber room = line.room();
        JSNumber density = line.density();
        return new Sketch.Line(
                contents(line.perGram()).knowingOil(shares(line.oilShares())),
                line.fixed(),
                line.dose(),
                room == null ? Double.POSITIVE_INFINITY : room.doubleValue(),
                line.cost(),
                density == null ? OptionalDouble.empty() : OptionalDouble.of(density.doubleValue()));
    }

    private static Contents contents(JSMapLike<JSNumber> perGram) {
        double[] grams = new double[Substance.COUNT];
        for (Substance substance : Substance.values()) {
            String key = substance.label().replace(' ', '_');
            if (JSObjects.hasProperty(perGram, key)) {
                grams[substance.ordinal()] = perGram.get(key).doubleValue();
            }
        }
        return Contents.ofGrams(grams);
    }

    private static Map<String, Double> shares(JSArrayReader<OilShare> oilShares) {
        Map<String, Double> shares = new TreeMap<>();
        for (int i = 0; i < oilShares.getLength(); i++) {
            shares.put(oilShares.get(i).key(), oilShares.get(i).share());
        }
        return shares;
    }

    /** Returns what is known of each constituent, by its key. */
    static Map<String, OilPart> known(RecipeNumbers numbers) {
        Map<String, OilPart> known = new TreeMap<>();
        for (int i = 0; i < numbers.oilParts().getLength(); i++) {
            Part part = numbers.oilParts().get(i);
            known.put(
                    part.key(),
                    new OilPart(
                            part.key(),
                            part.key(),
                            "",
                            part.gramsPerMole(),
                            part.gramsPerLitreInWater(),
                            part.logP(),
                            part.gramsPerMillilitre(),
                            1.0));
        }
        return known;
    }

    /** Returns what so many grams of each line make together. */
    static Contents liquid(RecipeNumbers numbers, double[] grams) {
        Contents liquid = Contents.NONE;
        for (int i = 0; i < grams.length; i++) {
            liquid = liquid.plus(line(numbers.lines().get(i)).perGram().times(grams[i]));
        }
        return liquid;
    }

    private static SugarBasis basis(String label) {
        for (SugarBasis basis : SugarBasis.values()) {
            if (basis.label().equals(label)) {
                return basis;
            }
        }
        throw new IllegalArgumentException("there is no sugar basis " + label);
    }
}
