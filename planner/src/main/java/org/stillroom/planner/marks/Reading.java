package org.stillroom.planner.marks;

import java.util.List;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;

/**
 * An amount as an instrument shows it; where it is shown in other units, the amount stays and only its words change.
 *
 * @param amount what is taken: mass by a scale, volume at the room's temperature by all that is filled, or drops
 * @param value the number to read, in {@code unit}
 * @param unit "g", "mL", "drops", "cup", "tbsp" or "tsp"
 * @param instrument what the maker calls it
 * @param fillings how often it is filled to what; empty when nothing is taken or the mark of a vessel is read
 * @param words what to do, such as "712 g", "2 × 45 mL + 22.5 mL" or "1 1/2 cups"
 */
public record Reading(
        Amount amount, double value, String unit, String instrument, List<Filling> fillings, String words) {
    public Reading {
        fillings = List.copyOf(fillings);
    }

    /**
     * A measure filled to the same size several times.
     *
     * @param times how often, 1 or more
     * @param size to what, as the maker wrote it or as the marks read
     */
    public record Filling(int times, String size) {}

    /** Returns how many times the instrument is filled in all. */
    public int timesFilled() {
        return fillings.stream().mapToInt(Filling::times).sum();
    }

    /** Returns whether a volume is read, so that the density of the ingredient matters. */
    public boolean isByVolume() {
        return amount instanceof Volume;
    }

    /** Returns the words in United States units; cups, spoons and drops are what they are. */
    public String us() {
        boolean metric = unit.equals("g") || unit.equals("mL");
        if (!metric) {
            return words;
        }
        String us = QuantityWords.us(amount);
        return timesFilled() > 1 ? us + " (" + words + ")" : us;
    }
}
