package org.stillroom.core.label;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.liquid.Figures;
import org.stillroom.core.liquid.Liquid;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.plan.Correction;
import org.stillroom.core.plan.Correction.Added;
import org.stillroom.core.plan.Correction.Addition;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.recipe.SugarBasis;

/**
 * What, added to a whole drink, brings its strength and sugar to where a class wants them, with the least room.
 *
 * @param added spirit, sugar and water; empty where it is something else that is missed
 * @param from volume of the drink before, mL at 20 °C
 * @param then figures of the drink with it
 * @param open what the drink then holds too little or too much of, or is not shown to hold; empty where this alone leads there
 */
public record WayThere(List<Added> added, double from, Figures then, List<String> open) {
    /** What raises strength here: neutral alcohol as it is sold, at the least strength of agricultural alcohol. Source: Regulation (EU) 2019/787, article 5. */
    private static final Addition SPIRIT = new Addition(
            "spirit 96 %", MadeUp.spirit(AlcoholByVolume.at20(96.0)).perGram(), Double.POSITIVE_INFINITY);

    private static final List<Addition> ADDITIONS = List.of(SPIRIT, Addition.WHITE_SUGAR, Addition.WATER);

    /** More rounds than a density needs to settle. */
    private static final int ROUNDS = 30;

    private static final double CLOSE = 1e-9;

    /** From here on what is added is another drink with this one in it, times the volume before. Own judgement. */
    private static final double MOST_TIMES = 2.0;

    public WayThere {
        added = List.copyOf(added);
        open = List.copyOf(open);
    }

    /** Returns the same with what it leaves open. */
    WayThere leaving(List<String> open) {
        return new WayThere(added, from, then, open);
    }

    /** Returns what part of its contents per litre is left in the drink with it. */
    double thinning() {
        return from / millilitres();
    }

    /** Returns the way to bounds of strength and of sugar as invert in g/L, or null where adding does not lead there. */
    static @Nullable WayThere asInvert(Figures drink, Bounds strength, Bounds sugar) {
        return least(drink, strength, sugar, Figure.SUGAR_AS_INVERT, WayThere::toInvert);
    }

    /** Returns the way to bounds of strength and of sugar in % by weight, or null where adding does not lead there. */
    static @Nullable WayThere byWeight(Figures drink, Bounds strength, Bounds sugar) {
        return least(drink, strength, sugar, Figure.SUGAR_BY_MASS, WayThere::toWeight);
    }

    /** Brings a drink to a strength and a sugar exactly; what is null is open. */
    private interface Aiming {
        @Nullable
        WayThere at(Figures drink, @Nullable Double strength, @Nullable Double sugar);
    }

    /** What takes least room lies on an end of what is missed, or leaves a figure open; so each of these is tried. */
    private static @Nullable WayThere least(Figures drink, Bounds strength, Bounds sugar, Figure sweet, Aiming aiming) {
        @Nullable WayThere least = null;
        for (@Nullable Double strong : orOpen(strength)) {
            for (@Nullable Double sweetened : orOpen(sugar)) {
                @Nullable WayThere way = aiming.at(drink, strong, sweetened);
                if (way != null
                        && strength.misses(way.then().value(Figure.STRENGTH)).isEmpty()
                        && sugar.misses(way.then().value(sweet)).isEmpty()
                        && (least == null || way.millilitres() < least.millilitres())) {
                    least = way;
                }
            }
        }
        return least;
    }

    private static List<@Nullable Double> orOpen(Bounds bounds) {
        List<@Nullable Double> ends = new ArrayList<>(bounds.ends());
        ends.add(null);
        return ends;
    }

    /** Returns whether it leaves the drink what it is: what more than doubles it does not. */
    public boolean isSensible() {
        return millilitres() <= MOST_TIMES * from;
    }

    /** Returns the volume of the drink with it, mL at 20 °C. */
    public double millilitres() {
        return then.value(Figure.VOLUME_20C);
    }

    private static @Nullable WayThere toInvert(Figures drink, @Nullable Double strength, @Nullable Double sugar) {
        return to(drink, strength, sugar, SugarBasis.AS_INVERT);
    }

    /** Parts of the weight are grams per litre by the density, which moves a little with what is added. */
    private static @Nullable WayThere toWeight(Figures drink, @Nullable Double strength, @Nullable Double percent) {
        double density = density(drink);
        @Nullable WayThere way = null;
        for (int i = 0; i < ROUNDS; i++) {
            way = to(drink, strength, percent == null ? null : percent / 100.0 * density, SugarBasis.AS_DISSOLVED);
            if (way == null || Math.abs(density(way.then()) - density) < CLOSE * density) {
                break;
            }
            density = density(way.then());
        }
        return way;
    }

    /** Returns g/L at 20 °C. */
    private static double density(Figures liquid) {
        return 1000.0 * liquid.value(Figure.MASS) / liquid.value(Figure.VOLUME_20C);
    }

    private static @Nullable WayThere to(
            Figures drink, @Nullable Double strength, @Nullable Double sugar, SugarBasis basis) {
        Map<Asked, Double> target = new EnumMap<>(Asked.class);
        if (strength != null) {
            target.put(Asked.STRENGTH, strength);
        }
        if (sugar != null) {
            target.put(Asked.SUGAR, sugar);
        }
        Correction.Way way = Correction.with(ADDITIONS, drink.contents(), target, basis);
        return way.reached()
                ? new WayThere(
                        way.added(),
                        drink.value(Figure.VOLUME_20C),
                        Liquid.figures(way.result(), Temperature.TWENTY_CELSIUS),
                        List.of())
                : null;
    }
}
