package org.stillroom.studio.usecase.make;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What is kept of a finished make.
 *
 * @param title of what was made
 * @param revision number of it
 * @param millilitres volume at 20 °C as reckoned from what went in
 * @param strength % vol at 20 °C
 * @param sugar g/L, sugars by mass as dissolved
 * @param density kg/m³ at 20 °C
 * @param lines what went in
 * @param notes what the maker noted
 * @param liquid grams of each substance; null in batches of before it was kept
 * @param cost what went in cost, by currency, by the prices of its lots or of the recipe
 * @param costKnown whether every price was known
 * @param left what its stages left over and the shelf took; null in batches of before it did
 * @param slips how far labels and measures may have been off; null in batches of before it was kept
 */
public record BatchSheet(
        String title,
        int revision,
        double millilitres,
        double strength,
        double sugar,
        double density,
        List<LineSheet> lines,
        List<String> notes,
        @Nullable LiquidSheet liquid,
        @Nullable Map<String, Double> cost,
        boolean costKnown,
        @Nullable List<LeftSheet> left,
        @Nullable List<SlipSheet> slips) {
    public BatchSheet {
        left = left == null ? List.of() : List.copyOf(left);
        lines = List.copyOf(lines);
        notes = List.copyOf(notes);
        cost = cost == null ? Map.of() : Map.copyOf(cost);
        slips = slips == null ? null : List.copyOf(slips);
    }

    /**
     * What went in of one line.
     *
     * @param part title of the stage or recipe that it belongs to
     * @param name of the ingredient
     * @param grams that went in
     * @param asked grams that were planned before anything was poured
     * @param taken from which lots
     * @param wanting g more than the lots held, by what the shelf knew; 0 as a rule
     * @param fromShelf whether lots were named for it
     */
    public record LineSheet(
            String part,
            String name,
            double grams,
            double asked,
            List<Taken> taken,
            double wanting,
            boolean fromShelf) {
        public LineSheet {
            taken = List.copyOf(taken);
        }
    }

    /**
     * What a stage left over.
     *
     * @param name under which the shelf has it
     * @param millilitres of it, at 20 °C
     * @param came of it, mL at 20 °C
     */
    public record LeftSheet(String name, double millilitres, double came) {}

    /**
     * So much of a lot.
     *
     * @param lot id
     * @param label what tells it from others, or null
     * @param amount in the unit
     * @param unit of the lot
     */
    public record Taken(String lot, @Nullable String label, double amount, String unit) {}
}
