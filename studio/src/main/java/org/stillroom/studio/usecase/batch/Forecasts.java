package org.stillroom.studio.usecase.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.stillroom.core.batch.Held;
import org.stillroom.core.batch.Place;
import org.stillroom.core.clarity.Clarity;
import org.stillroom.core.clarity.Clearing;
import org.stillroom.core.clarity.Doubts;
import org.stillroom.core.extraction.Plant;
import org.stillroom.core.extraction.Plants;
import org.stillroom.core.extraction.Steeping;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.Macerate;
import org.stillroom.studio.usecase.TellClarity;

/** Offers waits by what is forecast: how soon a haze can clear, when it is time to taste plants in spirit. */
public final class Forecasts {
    /** Where a jar stands as a rule, °C. */
    private static final double ROOM = 20.0;

    private Forecasts() {}

    /**
     * A wait that could be written down.
     *
     * @param what waits
     * @param days from now; of a haze at the earliest
     * @param of vessel or plant that it is about
     * @param kind of forecast
     */
    public record Offer(Waiting.What what, double days, String of, Kind kind) {}

    /** The kinds of forecast. */
    public enum Kind {
        /** A haze of oil can have risen or sunk. */
        CLEAR,
        /** Most of what the plant gives has come. */
        TASTE
    }

    /** Returns what is forecast for a batch; nothing where it is clear and no plants are in it. */
    public static List<Offer> of(Book book, Batch batch, Store store) {
        List<Offer> offers = new ArrayList<>();
        for (Map.Entry<Place, Held> vessel : book.cellar().vessels(batch.id()).entrySet()) {
            Held held = vessel.getValue();
            if (held.contents().grams(Substance.OIL) > 0.0) {
                Clarity clarity = Clarity.of(held.contents(), Temperature.TWENTY_CELSIUS, Doubts.NONE);
                if (clarity.separated() > 0.0) {
                    double days = Clearing.of(held.contents(), clarity, TellClarity.BOTTLE_MILLIMETRES)
                            .days();
                    offers.add(new Offer(
                            Waiting.What.CLEARING, days, vessel.getKey().vessel(), Kind.CLEAR));
                }
            }
        }
        Recipe recipe = Waits.recipe(batch, store);
        for (Line line : recipe == null ? List.<Line>of() : recipe.lines()) {
            Plant plant = Plants.find(line.use());
            if (plant != null) {
                double days = Steeping.of(plant.sort(), ROOM)
                        .daysTo(Macerate.TASTE_FROM)
                        .value();
                offers.add(new Offer(Waiting.What.MACERATING, days, line.use(), Kind.TASTE));
            }
        }
        return offers;
    }
}
