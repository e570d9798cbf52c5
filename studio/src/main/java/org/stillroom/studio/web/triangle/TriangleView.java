package org.stillroom.studio.web.triangle;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.clarity.Verdict;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.triangle.HazeShade;
import org.stillroom.core.triangle.Plate;
import org.stillroom.core.triangle.Reading;
import org.stillroom.core.triangle.Spot;
import org.stillroom.planner.marks.Measured;
import org.stillroom.studio.wording.Words;

/**
 * The mixing triangle of one recipe as {@code compose/triangle.jte} draws it.
 *
 * @param words of the reader
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
 * @param haze where the liquid would not stay clear with the oils that it holds, or null where it holds none
 * @param rows the border of what can be reached, for the table
 * @param numbers the recipe in bare numbers, as JSON, for the browser; empty where no hand moves it
 */
public record TriangleView(
        Words words,
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
        @Nullable HazeShade haze,
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
        STRONGEST("triangle.strongest"),
        WEAKEST("triangle.weakest"),
        SWEETEST("triangle.sweetest"),
        LEAST_SWEET("triangle.leastSweet");

        private final String key;

        Which(String key) {
            this.key = key;
        }

        /** Returns the key of its name in the texts. */
        public String key() {
            return key;
        }
    }

    /** How near to the point's own figure a label steps aside, % vol and g/L. */
    public static final double NEAR_STRENGTH = 4.0;

    public static final double NEAR_SUGAR = 60.0;

    /** Returns whether the point's own strength is written where this line's would be. */
    public boolean coversStrength(Line line) {
        return Math.abs(line.value - here.reading.strength()) < NEAR_STRENGTH;
    }

    /** Returns whether the point's own sugar is written where this line's would be. */
    public boolean coversSugar(Line line) {
        return Math.abs(line.value - here.reading.sugar()) < NEAR_SUGAR;
    }

    /** Returns the decimal mark that the reader's numbers take. */
    public String decimal() {
        return words.number(0.5, 1).substring(1, 2);
    }

    /** Returns the recipe's strength as it is shown. */
    public String strength() {
        return words.number(here.reading.strength(), 1);
    }

    /** Returns the recipe's sugar as it is shown. */
    public String sugar() {
        return words.number(here.reading.sugar(), 0);
    }

    /** Returns a share as a percentage, without its sign. */
    public String percent(double part) {
        return words.number(100.0 * part, 1);
    }

    /** Returns what the triangle says in words, as markup in which a moving point finds its figures. */
    public String sentence() {
        return words.say(
                "triangle.sentence",
                "<b>" + words.say("triangle.strength", said("strength", 1, here.reading.strength())) + "</b>",
                "<b>" + words.say("triangle.sugar", said("sugar", 0, here.reading.sugar())) + "</b>",
                said("ethanol", 0, 100.0 * here.spot.ethanol()),
                said("sweet", 0, 100.0 * here.spot.sugar()),
                said("water", 0, 100.0 * here.spot.water()));
    }

    /** Returns what the shading says of the liquid, as markup in which a moving point finds its figures. */
    public String hazeInWords(HazeShade shade) {
        return words.say(
                "triangle.haze",
                said("oil", shade.gramsPerLitre() < 0.1 ? 3 : 2, shade.gramsPerLitre()),
                "<b data-verdict>" + looks(shade.verdict()) + "</b>");
    }

    /** Returns from which strength on it would be clear, as markup; it tells of nothing where there is none. */
    public String clearFromInWords(HazeShade shade) {
        return words.say(
                "triangle.clearFrom", said("clear-from", 1, shade.clearFrom().orElse(0.0)));
    }

    /** Returns whether it is worth telling from which strength on it would be clear. */
    public boolean tellsClearFrom(HazeShade shade) {
        return shade.verdict() != Verdict.CLEAR && shade.clearFrom().isPresent();
    }

    /** Returns a verdict in the reader's words. */
    public String looks(Verdict verdict) {
        return words.say("triangle.is." + verdict.name());
    }

    private String said(String what, int places, double value) {
        return "<span data-said=\"" + what + "\" data-places=\"" + places + "\">" + words.number(value, places)
                + "</span>";
    }

    /** Returns the triangle of a liquid that is in the making, which no hand moves. */
    public static TriangleView still(Measured measured, SugarBasis basis, Words words) {
        return new TriangleDrawing(measured.liquid(), basis).view(words);
    }

    /** Returns whether a hand may ever move it. */
    public boolean isStill() {
        return numbers.isEmpty();
    }

    /** Returns the triangle of a plan in a reader's words. */
    public static TriangleView of(Plan plan, Words words) {
        return new TriangleDrawing(plan).view(words);
    }
}
