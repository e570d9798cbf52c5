package org.stillroom.core.triangle;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.clarity.Shading;
import org.stillroom.core.clarity.Verdict;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;

/**
 * Where on a plate a liquid that holds so much oil per litre would be hazy or cloudy by the forecast.
 *
 * <p>The plate is cut into strips of equal share of ethanol; along each the verdict is followed and its borders are found by halving, so
 * that they lie within a thousandth of the plate's width. What stands beside ethanol, sugar and water is left out.
 */
public final class HazeAreas {
    private static final int STRIPS = 60;
    private static final int STEPS = 48;
    private static final int HALVINGS = 5;
    private static final double GRAMS = 1000.0;

    private final Shading shading;
    private final Plate plate;
    private final List<List<Run>> strips = new ArrayList<>();

    /** A stretch of one verdict along a strip, by share of sugar. */
    private record Run(Verdict verdict, double from, double to) {}

    public HazeAreas(Shading shading, Plate plate) {
        this.shading = shading;
        this.plate = plate;
        for (int i = 0; i < STRIPS; i++) {
            strips.add(runs(middle(i)));
        }
    }

    private double low(int strip) {
        return plate.shown() * strip / STRIPS;
    }

    private double middle(int strip) {
        return 0.5 * (low(strip) + low(strip + 1));
    }

    private List<Run> runs(double ethanol) {
        List<Run> runs = new ArrayList<>();
        double most = plate.shown() - ethanol;
        double from = 0.0;
        double before = 0.0;
        Verdict verdict = verdict(ethanol, 0.0);
        for (int i = 1; i <= STEPS; i++) {
            double sugar = most * i / STEPS;
            Verdict next = verdict(ethanol, sugar);
            if (next != verdict) {
                double border = border(ethanol, before, sugar, verdict);
                runs.add(new Run(verdict, from, border));
                from = border;
                verdict = next;
            }
            before = sugar;
        }
        runs.add(new Run(verdict, from, most));
        return runs;
    }

    private double border(double ethanol, double inside, double outside, Verdict verdict) {
        double low = inside;
        double high = outside;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (verdict(ethanol, middle) == verdict) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    private Verdict verdict(double ethanol, double sugar) {
        Contents liquid = Contents.of(Substance.ETHANOL, GRAMS * ethanol)
                .plus(Contents.of(Substance.SUCROSE, GRAMS * sugar))
                .plus(Contents.of(Substance.WATER, GRAMS * (1.0 - ethanol - sugar)));
        return shading.verdict(liquid);
    }

    /** Returns the area of a verdict as outlines side by side, from the least ethanol up; none where it is nowhere seen. */
    public List<List<Spot>> of(Verdict verdict) {
        List<List<Spot>> outlines = new ArrayList<>();
        for (int i = 0; i < STRIPS; i++) {
            for (Run run : strips.get(i)) {
                if (run.verdict == verdict) {
                    outlines.add(outline(i, run));
                }
            }
        }
        return outlines;
    }

    /** Returns a stretch as tall as its strip; where it ends at the plate's edge it follows that. */
    private List<Spot> outline(int strip, Run run) {
        double low = low(strip);
        double high = low(strip + 1);
        boolean atEdge = run.to >= plate.shown() - middle(strip);
        double below = atEdge ? plate.shown() - low : run.to;
        double above = Math.max(run.from, atEdge ? plate.shown() - high : run.to);
        return List.of(new Spot(low, run.from), new Spot(low, below), new Spot(high, above), new Spot(high, run.from));
    }
}
