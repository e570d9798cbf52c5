package org.stillroom.studio.web.triangle;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.triangle.Plate;
import org.stillroom.core.triangle.Reading;
import org.stillroom.core.triangle.Spot;

/**
 * The mixing triangle of one recipe as {@code compose/triangle.jte} draws it.
 *
 * @param plate what is shown
 * @param frame path of the frame
 * @param strengths lines of equal strength
 * @param sugars lines of equal sugar
 * @param reach path about what the lines can reach, or empty when that is a single place
 * @param reachIsArea whether it has an inside, so that the rest is veiled
 * @param here the recipe's own place
 * @param sightOfStrength path from the edge to the point along its strength
 * @param sightOfSugar path from the edge to the point along its sugar
 * @param tagOfStrength where the strength is written at the edge
 * @param tagOfSugar where the sugar is written at the edge
 * @param range least and greatest strength and sugar within reach, or null when nothing may vary
 * @param rows the same as a table
 * @param numbers the recipe in bare numbers, as JSON, for the browser
 */
public record TriangleView(
        Plate plate,
        String frame,
        List<Line> strengths,
        List<Line> sugars,
        String reach,
        boolean reachIsArea,
        Here here,
        String sightOfStrength,
        String sightOfSugar,
        Plate.Place tagOfStrength,
        Plate.Place tagOfSugar,
        @Nullable Range range,
        List<Row> rows,
        String numbers) {

    /** A line of equal strength or sugar: its value, its path, and where it meets its edge. */
    public record Line(double value, String path, Plate.Place foot) {}

    /** The recipe's point: where it is drawn, what it says, its shares of the three, and what else it holds, g/g. */
    public record Here(Plate.Place place, Reading reading, Spot spot, double rest) {}

    /** What can be reached at most and at least of each figure. */
    public record Range(double leastStrength, double mostStrength, double leastSugar, double mostSugar) {}

    /** One row of the table. */
    public record Row(Which which, Reading reading, Spot spot) {}

    /** What a row of the table tells of. */
    public enum Which {
        HERE("this recipe"),
        STRONGEST("strongest within reach"),
        WEAKEST("weakest within reach"),
        SWEETEST("sweetest within reach"),
        LEAST_SWEET("least sweet within reach");

        private final String label;

        Which(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }
    }

    /** How near to the point's own figure a label steps aside, % vol and g/L. */
    private static final double NEAR_STRENGTH = 4.0;

    private static final double NEAR_SUGAR = 60.0;

    /** Returns whether the point's own strength is written where this line's would be. */
    public boolean coversStrength(Line line) {
        return Math.abs(line.value - here.reading.strength()) < NEAR_STRENGTH;
    }

    /** Returns whether the point's own sugar is written where this line's would be. */
    public boolean coversSugar(Line line) {
        return Math.abs(line.value - here.reading.sugar()) < NEAR_SUGAR;
    }

    /** Returns the triangle of a plan. */
    public static TriangleView of(Plan plan) {
        return new TriangleDrawing(plan).view();
    }
}
