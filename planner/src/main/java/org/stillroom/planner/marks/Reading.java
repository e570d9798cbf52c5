package org.stillroom.planner.marks;

import java.util.List;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Volume;

/**
 * An amount as an instrument shows it; where it is shown in other units, the amount stays and only its words change.
 *
 * @param amount what is taken: mass by a scale, volume at the room's temperature by all that is filled, or drops
 * @param value the number to read, in {@code unit}
 * @param unit "g", "mL", "drops", "cup", "tbsp" or "tsp"
 * @param instrument what the maker calls it; empty when nothing is taken
 * @param fillings how often it is filled to what; empty for drops, for a vessel's mark, and for an amount as typed that is not
 *     on the instrument's marks
 * @param shown the amount in words, such as "712 g", "2 × 45 mL + 22.5 mL", "1 1/2 cups", or as the maker typed it
 * @param manner how the amount came about
 */
public record Reading(
        Amount amount,
        double value,
        String unit,
        String instrument,
        List<Filling> fillings,
        String shown,
        Manner manner) {
    private static final List<String> UNITED_STATES =
            List.of("cup", "tbsp", "tsp", "spoon", "oz", "ounce", "lb", "pound", "drop", "pint", "quart", "gallon");

    public Reading {
        fillings = List.copyOf(fillings);
    }

    /** How an amount came about. */
    public enum Manner {
        /** Rounded to a mark together with the other lines. */
        ROUNDED,
        /** As the maker wrote it. */
        AS_TYPED,
        /** Whatever there is of it. */
        ALL,
        /** A vessel is made up to its mark; the amount is what the vessel then holds. */
        TO_THE_MARK,
        /** Nothing is taken. */
        NOTHING
    }

    /**
     * A measure filled to the same size several times.
     *
     * @param times how often, 1 or more
     * @param size to what, as the maker wrote it or as the marks read
     */
    public record Filling(int times, String size) {}

    static Reading rounded(
            Amount amount, double value, String unit, String instrument, List<Filling> fillings, String shown) {
        return new Reading(amount, value, unit, instrument, fillings, shown, Manner.ROUNDED);
    }

    /** Returns a reading of an amount that no mark shows. */
    static Reading offTheMarks(Amount amount, String instrument, String shown, Manner manner) {
        if (amount instanceof Mass mass) {
            return new Reading(amount, mass.grams(), "g", instrument, List.of(), shown, manner);
        }
        return amount instanceof Volume volume
                ? new Reading(amount, volume.millilitres(), "mL", instrument, List.of(), shown, manner)
                : new Reading(amount, ((Drops) amount).count(), "drops", instrument, List.of(), shown, manner);
    }

    /** Returns how many times the instrument is filled in all. */
    public int timesFilled() {
        return fillings.stream().mapToInt(Filling::times).sum();
    }

    /** Returns whether a volume is read, so that the density of the ingredient matters. */
    public boolean isByVolume() {
        return amount instanceof Volume;
    }

    /** Returns what to do in words. */
    public String words() {
        return inManner(shown);
    }

    /** Returns what to do in United States units; cups, spoons, ounces and drops are what they are, and so is a first mark. */
    public String us() {
        if (value == 0.0 || UNITED_STATES.stream().anyMatch(shown::contains)) {
            return words();
        }
        String us = QuantityWords.us(amount);
        return inManner(timesFilled() > 1 ? us + " (" + shown + ")" : us);
    }

    private String inManner(String text) {
        return switch (manner) {
            case ROUNDED, AS_TYPED -> text;
            case ALL -> "all of it (" + text + ")";
            case TO_THE_MARK -> "to the mark, " + text;
            case NOTHING -> "none";
        };
    }
}
