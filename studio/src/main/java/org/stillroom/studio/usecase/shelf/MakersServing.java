package org.stillroom.studio.usecase.shelf;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.core.safety.Place;
import org.stillroom.core.safety.Serving;
import org.stillroom.studio.store.Settings;

/** Who drinks how much of what is made here, and whose law is asked, as it was settled. */
public final class MakersServing {
    /** What is settled as it was typed. */
    public static final List<String> TYPED = List.of("serving", "servings", "body", "place");

    private static final String MILLILITRES = "serving_ml";
    private static final String PER_DAY = "servings_per_day";
    private static final String KILOGRAMS = "body_kg";
    private static final String PLACES = "places";

    private MakersServing() {}

    /** Returns what was settled; what was not is as usual. */
    public static Serving of(Settings settings) {
        Map<String, String> all = settings.all();
        return new Serving(
                number(all, MILLILITRES, Serving.USUAL.millilitres()),
                number(all, PER_DAY, Serving.USUAL.perDay()),
                number(all, KILOGRAMS, Serving.USUAL.bodyKilograms()),
                all.containsKey(PLACES) ? Set.of(Place.valueOf(all.get(PLACES))) : EnumSet.allOf(Place.class));
    }

    private static double number(Map<String, String> all, String key, double usual) {
        return all.containsKey(key) ? Double.parseDouble(all.get(key)) : usual;
    }

    /** Returns what was typed, by the names of {@link #TYPED}. */
    public static Map<String, String> typed(Settings settings) {
        Map<String, String> all = settings.all();
        Map<String, String> typed = new LinkedHashMap<>();
        TYPED.stream().filter(all::containsKey).forEach(name -> typed.put(name, all.get(name)));
        return typed;
    }

    /**
     * Settles it.
     *
     * @param typed by the names of {@link #TYPED}; what is not there is as usual again
     * @param meant what it was understood as
     */
    public static void settle(Settings settings, Map<String, String> typed, Serving meant) {
        for (String name : TYPED) {
            keep(settings, name, typed.getOrDefault(name, ""));
        }
        keep(settings, MILLILITRES, typed.containsKey("serving") ? "" + meant.millilitres() : "");
        keep(settings, PER_DAY, typed.containsKey("servings") ? "" + meant.perDay() : "");
        keep(settings, KILOGRAMS, typed.containsKey("body") ? "" + meant.bodyKilograms() : "");
        boolean one = typed.containsKey("place") && meant.places().size() == 1;
        keep(settings, PLACES, one ? meant.places().iterator().next().name() : "");
    }

    private static void keep(Settings settings, String name, String value) {
        if (value.isEmpty()) {
            settings.remove(name);
        } else {
            settings.put(name, value);
        }
    }
}
