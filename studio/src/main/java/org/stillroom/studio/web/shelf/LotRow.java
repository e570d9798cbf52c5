package org.stillroom.studio.web.shelf;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.safety.ByName;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.LotState;
import org.stillroom.studio.usecase.shelf.Mistakable;
import org.stillroom.studio.usecase.shelf.Stock;
import org.stillroom.studio.usecase.shelf.TakenBy;

/**
 * A bottle or jar as it stands in the list.
 *
 * @param level how the vessel is drawn
 * @param left null when it is not known
 * @param state null when there is nothing to say
 * @param stops why it must not go into a drink at all
 * @param alike names of other dropper bottles that are easily mistaken for it, with commas between; empty where there are none
 * @param search what it is found by besides what is shown
 */
public record LotRow(
        String id,
        String name,
        String what,
        Level level,
        Shown.@Nullable Figure left,
        Shown.@Nullable State state,
        List<Finding> stops,
        String alike,
        String search) {
    public LotRow {
        stops = List.copyOf(stops);
    }

    /**
     * A vessel drawn to its level.
     *
     * @param jar whether it is a jar rather than a bottle
     * @param top of what is in it, in the drawing's units
     * @param height of what is in it
     */
    public record Level(boolean jar, String top, String height) {
        private static final double FLOOR = 46;
        private static final double OF_BOTTLE = 33;
        private static final double OF_JAR = 37;

        static Level of(Lot lot) {
            boolean jar = !lot.sheet().unit().equals(Stock.MILLILITRES);
            double full = Math.max(lot.sheet().full(), lot.left());
            double part = full > 0 ? Math.max(0, Math.min(1, lot.left() / full)) : 0;
            double height = part * (jar ? OF_JAR : OF_BOTTLE);
            return new Level(jar, tenths(FLOOR - height), tenths(height));
        }

        private static String tenths(double length) {
            return String.valueOf(Math.round(10 * length) / 10.0);
        }
    }

    static LotRow of(LotOnShelf lot, List<LotOnShelf> lots, List<TakenBy> taken, Grounds grounds, Shown shown) {
        Optional<LotState> state = LotState.of(lot, lots, taken);
        Lot it = lot.lot();
        Ingredient ingredient = lot.ingredient();
        String search = String.join(
                " ",
                it.sheet().kind(),
                Shown.blank(it.sheet().supplier()),
                Shown.blank(it.sheet().note()));
        return new LotRow(
                it.id(),
                lot.name(),
                shown.what(lot),
                Level.of(it),
                Stock.isKnown(it) ? shown.stock(Stock.left(it)) : null,
                shown.state(state).orElse(null),
                ingredient == null ? List.of() : ByName.stops(ingredient, grounds),
                String.join(", ", Mistakable.with(lot, lots)),
                search);
    }

    /** Returns whether it answers to the words somebody looks for. */
    boolean answers(String words) {
        String all = (name + " " + what + " " + search).toLowerCase(Locale.ROOT);
        return List.of(words.toLowerCase(Locale.ROOT).strip().split("\\s+")).stream()
                .allMatch(all::contains);
    }
}
