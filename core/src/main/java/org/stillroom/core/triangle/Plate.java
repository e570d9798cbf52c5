package org.stillroom.core.triangle;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.quantity.QuantityWords;

/**
 * The sheet on which the triangle is drawn: water left, sugar right, spirit up, in units of a drawing of 740 by 664.
 *
 * @param shown the greatest share of ethanol and sugar together that is shown, 0 to 1
 */
public record Plate(double shown) {
    /** The part with at least 40 % water, in which liqueurs lie. */
    public static final Plate PART = new Plate(0.6);
    /** All of it. */
    public static final Plate WHOLE = new Plate(1.0);

    private static final double LEFT = 60.0;
    private static final double WIDTH = 620.0;
    private static final double BASE = 600.0;
    private static final double HEIGHT = 537.0;

    /** A place on the drawing, to the right and down. */
    public record Place(double x, double y) {
        @Override
        public String toString() {
            return QuantityWords.fixed(x, 1) + " " + QuantityWords.fixed(y, 1);
        }
    }

    /** Returns the sheet for a liquid: the usual part, or all where it lies outside that. */
    public static Plate showing(Spot spot) {
        return PART.shows(spot) ? PART : WHOLE;
    }

    public boolean shows(Spot spot) {
        return spot.ethanol() + spot.sugar() <= shown;
    }

    public Place place(Spot spot) {
        double up = spot.ethanol() / shown;
        return new Place(LEFT + WIDTH * spot.sugar() / shown + 0.5 * WIDTH * up, BASE - HEIGHT * up);
    }

    /** Returns the spot that is drawn nearest to a place, within what is shown. */
    public Spot spot(Place place) {
        double ethanol = Math.max(0.0, Math.min(shown, shown * (BASE - place.y) / HEIGHT));
        double sugar = shown * (place.x - LEFT) / WIDTH - 0.5 * ethanol;
        return new Spot(ethanol, Math.max(0.0, Math.min(shown - ethanol, sugar)));
    }

    /** Returns the frame of what is shown. */
    public List<Spot> frame() {
        return List.of(new Spot(0.0, 0.0), new Spot(shown, 0.0), new Spot(0.0, shown));
    }

    /** Returns a line through spots as the data of an SVG path. */
    public String line(List<Spot> spots) {
        List<String> places = new ArrayList<>();
        spots.forEach(spot -> places.add(place(spot).toString()));
        return places.isEmpty() ? "" : "M" + String.join("L", places);
    }

    /** Returns a closed outline as the data of an SVG path. */
    public String outline(List<Spot> spots) {
        return spots.isEmpty() ? "" : line(spots) + "z";
    }
}
