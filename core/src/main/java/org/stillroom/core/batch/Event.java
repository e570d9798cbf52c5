package org.stillroom.core.batch;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.safety.Assay;

/** One thing that happened to a batch. */
public sealed interface Event {
    /** Returns the vessels that it touches, the one that it is about first. */
    List<Place> places();

    /**
     * A make was finished; its result stands in a vessel.
     *
     * @param contents grams that the make left
     * @param outlay what they cost
     * @param slips how far the contents may be off
     */
    record Begun(Place place, Contents contents, Outlay outlay, Slips slips) implements Event {
        public Begun(Place place, Contents contents, Outlay outlay) {
            this(place, contents, outlay, Slips.UNKNOWN);
        }

        @Override
        public List<Place> places() {
            return List.of(place);
        }
    }

    /**
     * What is in a vessel was measured; it counts from then on in place of what was reckoned.
     *
     * @param figures volume (mL), strength (% vol), sugar and acidity (g/L), all at 20 °C; what is absent stays as reckoned
     * @param doubt half-widths of the central 90 % of the figures, where they are known; else that of such a reading as a rule
     */
    record Measured(Place place, Map<Asked, Double> figures, Map<Asked, Double> doubt) implements Event {
        public Measured {
            figures = Map.copyOf(figures);
            doubt = Map.copyOf(doubt);
        }

        @Override
        public List<Place> places() {
            return List.of(place);
        }
    }

    /**
     * Something was added that belonged to no batch.
     *
     * @param name what the maker calls it
     * @param contents grams
     * @param outlay what it cost
     * @param slips how far the contents may be off
     */
    record Added(Place place, String name, Contents contents, Outlay outlay, Slips slips) implements Event {
        public Added(Place place, String name, Contents contents, Outlay outlay) {
            this(place, name, contents, outlay, Slips.UNKNOWN);
        }

        @Override
        public List<Place> places() {
            return List.of(place);
        }
    }

    /**
     * Liquid was moved into another vessel, of the same batch or of another, which it is blended with then.
     *
     * @param taken out of the first, losses on the way included
     * @param losses on the way
     */
    record Moved(Place from, Place to, Portion taken, List<Wastage> losses) implements Event {
        public Moved {
            losses = List.copyOf(losses);
        }

        @Override
        public List<Place> places() {
            return List.of(from, to);
        }

        /** Returns whether two batches meet. */
        public boolean isBlend() {
            return !from.batch().equals(to.batch());
        }
    }

    /** Liquid was lost. */
    record Wasted(Place place, Wastage loss) implements Event {
        @Override
        public List<Place> places() {
            return List.of(place);
        }
    }

    /**
     * Some of it evaporated: the angels' share. Ethanol and water go; sugar and all else stays.
     *
     * @param lost by weight of the vessel
     * @param strengthAfter measured then, % vol at 20 °C, or null: what went is then taken to be as the liquid, for which way the
     *     strength goes hangs on the dryness of the room
     */
    record Evaporated(Place place, Mass lost, @Nullable Double strengthAfter) implements Event {
        @Override
        public List<Place> places() {
            return List.of(place);
        }
    }

    /**
     * Bottles were filled.
     *
     * @param fills in the order in which the bottles are numbered
     * @param first number of the first bottle
     * @param losses besides
     */
    record Bottled(Place place, List<Fill> fills, int first, List<Wastage> losses) implements Event {
        public Bottled {
            fills = List.copyOf(fills);
            losses = List.copyOf(losses);
        }

        @Override
        public List<Place> places() {
            return List.of(place);
        }

        /** Returns how many bottles were filled. */
        public int count() {
            return fills.stream().mapToInt(Fill::count).sum();
        }

        /** Returns what all of them hold, mL at 20 °C. */
        public double millilitres() {
            return fills.stream()
                    .mapToDouble(fill -> fill.count() * fill.millilitres())
                    .sum();
        }
    }

    /**
     * So many bottles filled alike.
     *
     * @param count at least 1
     * @param millilitres in each at 20 °C, above 0
     * @param bottle what one empty bottle has cost, with its stopper and label; null where that is not counted
     */
    record Fill(int count, double millilitres, @Nullable Outlay bottle) {
        public Fill(int count, double millilitres) {
            this(count, millilitres, null);
        }

        public Fill {
            if (!(count >= 1 && count <= 100_000)) {
                throw new IllegalArgumentException("1 to 100000 bottles are filled at once, not " + count);
            }
            if (!(millilitres > 0.0 && millilitres <= 100_000.0)) {
                throw new IllegalArgumentException("a bottle holds above 0 to 100000 mL, not " + millilitres);
            }
        }
    }

    /** Of what something was found out. */
    enum Of {
        VESSEL,
        BOTTLES
    }

    /**
     * The pH was measured, of a vessel or of bottles; of a vessel it holds until something comes to it or evaporates.
     *
     * @param place of bottles the batch alone counts
     * @param of whether a vessel's or bottles'
     * @param bottles numbers of the bottles, or null for all that are filled; null too of a vessel
     * @param ph 0 to 14
     */
    record PhMeasured(Place place, Of of, @Nullable BottleNumbers bottles, double ph) implements Event {
        public PhMeasured {
            if (!(ph >= 0.0 && ph <= 14.0)) {
                throw new IllegalArgumentException("pH lies from 0 to 14, not " + ph);
            }
        }

        @Override
        public List<Place> places() {
            return List.of(place);
        }
    }

    /**
     * A laboratory looked for watched substances, in a vessel or in bottles; of a vessel it holds until something comes to it or
     * evaporates.
     *
     * @param place of bottles the batch alone counts
     * @param of whether a vessel or bottles
     * @param bottles numbers of the bottles, or null for all that are filled; null too of a vessel
     */
    record Analysed(Place place, Of of, @Nullable BottleNumbers bottles, Assay found) implements Event {
        @Override
        public List<Place> places() {
            return List.of(place);
        }
    }

    /**
     * Bottles were heated closed, or had been filled hot.
     *
     * @param place of which the batch alone counts
     * @param bottles numbers of the bottles, or null for all that are filled
     */
    record Pasteurised(Place place, @Nullable BottleNumbers bottles) implements Event {
        @Override
        public List<Place> places() {
            return List.of(place);
        }
    }

    /**
     * An earlier entry does not count; the log keeps both.
     *
     * @param place of the entry that is taken back
     * @param entry number of it
     */
    record Undone(Place place, long entry) implements Event {
        @Override
        public List<Place> places() {
            return List.of(place);
        }
    }
}
