package org.stillroom.core.safety;

import java.util.EnumSet;
import java.util.Set;

/**
 * Who drinks how much, and where.
 *
 * @param millilitres of one serving
 * @param perDay servings on one day
 * @param bodyKilograms what the drinker weighs
 * @param places whose law is asked
 */
public record Serving(double millilitres, double perDay, double bodyKilograms, Set<Place> places) {
    /** A cordial glass twice a day, an adult as EFSA takes one, both laws. The glass is common practice, no source. */
    public static final Serving USUAL = new Serving(30.0, 2.0, 70.0, EnumSet.allOf(Place.class));

    public Serving {
        if (!(millilitres > 0.0 && perDay > 0.0 && bodyKilograms > 0.0)) {
            throw new IllegalArgumentException("serving, servings and body lie above zero");
        }
        places = Set.copyOf(places);
    }

    /** Returns litres drunk on one day. */
    double litresPerDay() {
        return millilitres * perDay / 1000.0;
    }
}
