package org.stillroom.core.triangle;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import org.stillroom.core.clarity.Shading;
import org.stillroom.core.clarity.Verdict;
import org.stillroom.core.liquid.Substance;

/**
 * Where on a plate a liquid that holds so much oil per litre would be hazy or cloudy by the forecast, with the company of one liquid.
 *
 * <p>Along 201 lines of equal share of ethanol how it looks is known at 201 places each; where it changes between two of them is
 * taken as straight. Areas go around the stretches of neighbouring lines. Not each place is worked out: where every eighth lies
 * farther from a change than the curve through them bends, those between look as they do.
 */
public final class HazeAreas {
    private static final int LINES = 200;
    private static final int STEPS = 200;
    private static final int STRIDE = 8;
    /** How far a corner that is left out of an outline may lie off it, as a part of what is shown. */
    private static final double OFF = 0.0003;

    private static final double LITRE = 1000.0;

    private final Shading shading;
    private final Company company;
    private final double solids;
    private final Plate plate;
    private final int stride;
    private final List<Line> lines = new ArrayList<>();

    /** One line from no sugar to the edge of the plate: how it looks from each place on to the next. */
    private record Line(double ethanol, List<Verdict> looks, List<Double> from) {
        void turn(Verdict look, double at) {
            looks.add(look);
            from.add(at);
        }
    }

    public HazeAreas(Shading shading, Company company, Plate plate) {
        this(shading, company, plate, STRIDE);
    }

    /** @param stride how many places apart it is first worked out, a divisor of 200; with 1, each place is */
    HazeAreas(Shading shading, Company company, Plate plate, int stride) {
        this.shading = shading;
        this.company = company;
        this.solids = company.solids();
        this.plate = plate;
        this.stride = stride;
        double[] grams = new double[Substance.COUNT];
        for (int i = 0; i <= LINES; i++) {
            lines.add(line(plate.shown() * i / LINES, grams));
        }
    }

    private Line line(double ethanol, double[] grams) {
        double[] murks = new double[STEPS / stride + 1];
        for (int i = 0; i < murks.length; i++) {
            murks[i] = murk(grams, ethanol, sugar(ethanol, i * stride));
        }
        Line line = new Line(ethanol, new ArrayList<>(), new ArrayList<>());
        line.turn(Shading.look(murks[0]), 0.0);
        for (int i = 1; i < murks.length; i++) {
            if (mayTurn(murks, i)) {
                followed(line, (i - 1) * stride, murks[i - 1], grams);
            }
        }
        return line;
    }

    private double sugar(double ethanol, int step) {
        return (plate.shown() - ethanol) * step / STEPS;
    }

    /** Returns whether it may come to look otherwise between two places, or there and back. */
    private static boolean mayTurn(double[] murks, int second) {
        double bend = Math.max(bend(murks, second - 1), bend(murks, second));
        double low = Math.min(murks[second - 1], murks[second]) - bend;
        double high = Math.max(murks[second - 1], murks[second]) + bend;
        return (low < 0.0 && high >= 0.0) || (low < 1.0 && high >= 1.0);
    }

    /** Returns how far a place lies off the straight line between its neighbours; at an end, how far its neighbour does. */
    private static double bend(double[] murks, int at) {
        int middle = Math.max(1, Math.min(murks.length - 2, at));
        return Math.abs(murks[middle - 1] - 2.0 * murks[middle] + murks[middle + 1]);
    }

    private void followed(Line line, int start, double first, double[] grams) {
        double before = first;
        for (int i = start + 1; i <= start + stride; i++) {
            double next = murk(grams, line.ethanol, sugar(line.ethanol, i));
            turn(line, sugar(line.ethanol, i - 1), sugar(line.ethanol, 1), before, next);
            before = next;
        }
    }

    /** Notes where it comes to look otherwise between two places, in the order in which that happens. */
    private static void turn(Line line, double start, double step, double before, double next) {
        boolean rises = next > before;
        for (double level : rises ? new double[] {0.0, 1.0} : new double[] {1.0, 0.0}) {
            if (before < level != next < level) {
                double at = start + step * (level - before) / (next - before);
                Verdict above = level == 0.0 ? Verdict.HAZY : Verdict.CLOUDY;
                Verdict below = level == 0.0 ? Verdict.CLEAR : Verdict.HAZY;
                line.turn(rises ? above : below, at);
            }
        }
    }

    private double murk(double[] grams, double ethanol, double sugar) {
        double volume = company.volume(grams, ethanol, sugar, Math.max(0.0, 1.0 - ethanol - sugar));
        return shading.murk(
                ethanol / (Company.ETHANOL_DENSITY * volume), LITRE * sugar / volume, LITRE * solids / volume);
    }

    /** Returns the area of a verdict as outlines that do not overlap; none where it is nowhere seen. */
    public List<List<Spot>> of(Verdict verdict) {
        List<List<Spot>> outlines = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= lines.size(); i++) {
            if (i == lines.size() || !lines.get(i).looks.equals(lines.get(first).looks)) {
                List<Verdict> looks = lines.get(first).looks;
                for (int stretch = 0; stretch < looks.size(); stretch++) {
                    if (looks.get(stretch) == verdict) {
                        outlines.add(outline(first, i - 1, stretch));
                    }
                }
                first = i;
            }
        }
        return outlines;
    }

    /** Returns the same as the data of an SVG path. */
    public String path(Verdict verdict) {
        return of(verdict).stream().map(plate::outline).collect(Collectors.joining());
    }

    private List<Spot> outline(int first, int last, int stretch) {
        List<Spot> outline = side(first, last, stretch);
        List<Spot> back = side(first, last, stretch + 1);
        Collections.reverse(back);
        outline.addAll(back);
        return outline;
    }

    /** Returns where a stretch begins, from the line below the first, half way, to the line above the last. */
    private List<Spot> side(int first, int last, int stretch) {
        List<Spot> side = new ArrayList<>();
        side.add(spot(first, stretch, halfWay(first, first - 1)));
        for (int i = first; i <= last; i++) {
            side.add(spot(i, stretch, lines.get(i).ethanol));
        }
        side.add(spot(last, stretch, halfWay(last, last + 1)));
        return fewer(side);
    }

    private double halfWay(int line, int next) {
        double ethanol = lines.get(line).ethanol;
        return next < 0 || next >= lines.size() ? ethanol : 0.5 * (ethanol + lines.get(next).ethanol);
    }

    /** Returns where a stretch of a line begins, drawn at another share of ethanol; past the last is the plate's edge. */
    private Spot spot(int line, int stretch, double ethanol) {
        List<Double> from = lines.get(line).from;
        double edge = plate.shown() - ethanol;
        return new Spot(ethanol, stretch < from.size() ? Math.min(edge, from.get(stretch)) : edge);
    }

    /** Leaves out corners that hardly show (Ramer 1972; Douglas, Peucker 1973). */
    private List<Spot> fewer(List<Spot> side) {
        Spot start = side.get(0);
        Spot end = side.get(side.size() - 1);
        int farthest = 0;
        double most = OFF * plate.shown();
        for (int i = 1; i < side.size() - 1; i++) {
            double off = off(start, end, side.get(i));
            if (off > most) {
                farthest = i;
                most = off;
            }
        }
        List<Spot> kept = new ArrayList<>();
        if (farthest == 0) {
            kept.add(start);
        } else {
            kept.addAll(fewer(side.subList(0, farthest + 1)));
            kept.remove(kept.size() - 1);
            kept.addAll(fewer(side.subList(farthest, side.size())));
            return kept;
        }
        kept.add(end);
        return kept;
    }

    /** Returns how far a corner lies beside the straight line between two, by share of sugar; they differ in ethanol. */
    private static double off(Spot start, Spot end, Spot corner) {
        double height = end.ethanol() - start.ethanol();
        double part = height > 0.0 ? (corner.ethanol() - start.ethanol()) / height : 0.0;
        return Math.abs(corner.sugar() - start.sugar() - part * (end.sugar() - start.sugar()));
    }
}
