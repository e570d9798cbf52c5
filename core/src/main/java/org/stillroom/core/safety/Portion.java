package org.stillroom.core.safety;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Kind;

/**
 * Something in the recipe that can carry watched substances, with what it is taken for.
 *
 * @param where the place, such as "line 3, orange tincture"
 * @param name as the maker wrote it
 * @param words by which it may be recognised: its name, and the plant that its maker says
 * @param kind of the ingredient
 * @param form how it counts
 * @param grams of oil, of dried plant or of the substance in the whole batch; nothing when the amount is not known
 * @param plants that its name means; empty when it means none that is known
 * @param unread words of its name that mean nothing here, so that it may be another plant
 * @param substance that it is itself, or null
 * @param stated parts of the grams that the maker states, 0 to 1, by CAS number
 * @param bottle which of several of its line this is of, or null where there is one
 * @param settled watched substances of which an analysis of the whole ingredient tells, so that this brings no more of them
 */
public record Portion(
        String where,
        String name,
        String words,
        Kind kind,
        Form form,
        Range grams,
        List<Plant> plants,
        List<String> unread,
        @Nullable Watched substance,
        Map<String, Double> stated,
        Drawn.@Nullable Bottle bottle,
        Set<Watched> settled) {
    /** Parts that come to so much leave nothing that is not known. */
    private static final double WHOLE = 0.998;

    /** How a portion counts. */
    public enum Form {
        /** Essential oil by the gram. */
        OIL,
        /** Plant by the gram, dried. */
        PLANT,
        /** A substance by itself. */
        SUBSTANCE,
        /** Something of a plant, and nobody said how much. */
        AMOUNT_NOT_KNOWN
    }

    public Portion {
        plants = List.copyOf(plants);
        unread = List.copyOf(unread);
        stated = Map.copyOf(stated);
        settled = Set.copyOf(settled);
    }

    /** Returns whether nothing at all is known of it. */
    boolean isNotRecognised() {
        return plants.isEmpty() && substance == null && !isStatedWhole();
    }

    private boolean isStatedWhole() {
        double together =
                stated.values().stream().mapToDouble(Double::doubleValue).sum();
        return form == Form.OIL && together > WHOLE;
    }

    /** Returns what it is made of by its maker's words: the plant that is said, else its name. */
    String made() {
        return words.equals(name) ? name : words.substring(name.length() + 2);
    }

    /** Returns whether it is taken for plants though its name says more than theirs. */
    boolean isTaken() {
        return !plants.isEmpty() && !unread.isEmpty();
    }

    /** Returns whether an analysis tells how much of a watched substance it brings. */
    boolean isSettled(String watched) {
        return settled.stream().anyMatch(each -> each.name().equals(watched));
    }

    boolean is(String plant) {
        return plants.stream().anyMatch(each -> each.name().equals(plant));
    }
}
