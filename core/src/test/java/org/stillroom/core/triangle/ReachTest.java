package org.stillroom.core.triangle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.plan.Reach;
import org.stillroom.core.plan.Sketch;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.recipe.SugarBasis;

/** The outline on the plate against the planner: inside it a target is reached, outside it is not. */
@Tag("property")
class ReachTest {
    /** One unit of the drawing, a third of the width of its ink: edges between corners are drawn straight and bend by less. */
    private static final double INK = 0.001;

    private static final double UNLIMITED = Double.POSITIVE_INFINITY;

    private static Contents spirit(double ethanolByMass) {
        return Contents.of(Substance.ETHANOL, ethanolByMass).with(Substance.WATER, 1 - ethanolByMass);
    }

    private static Sketch.Line line(Contents perGram, double fixed, double dose, double room, double cost) {
        return new Sketch.Line(perGram, fixed, dose, room, cost, OptionalDouble.empty());
    }

    private static Sketch sketch(Random random) {
        List<Sketch.Line> lines = new ArrayList<>();
        boolean scarce = random.nextInt(3) == 0;
        lines.add(line(
                spirit(0.3 + 0.6 * random.nextDouble()),
                0,
                0,
                scarce ? 150 + 300 * random.nextDouble() : UNLIMITED,
                1));
        lines.add(line(spirit(0.3 + 0.3 * random.nextDouble()), 0, 0, UNLIMITED, 1));
        lines.add(line(Contents.of(Substance.SUCROSE, 1), 0, 0, UNLIMITED, 1));
        lines.add(line(Contents.of(Substance.WATER, 1), 0, 0, UNLIMITED, 0));
        if (random.nextBoolean()) {
            Contents juice = Contents.of(Substance.WATER, 0.86)
                    .with(Substance.FRUCTOSE, 0.12)
                    .with(Substance.CITRIC, 0.02);
            lines.add(line(juice, 200 * random.nextDouble(), 0, 0, 1));
        }
        if (random.nextBoolean()) {
            lines.add(line(spirit(0.9), 0, 0.05 * random.nextDouble(), 0, 1));
        }
        Map<Asked, Span> asked = new EnumMap<>(Asked.class);
        asked.put(Asked.VOLUME, Span.exactly(1000));
        return new Sketch(lines, asked, SugarBasis.AS_DISSOLVED, true);
    }

    @Test
    void insideATargetIsReachedAndOutsideItIsNot() {
        int inside = 0;
        int outside = 0;
        for (long seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            Sketch sketch = sketch(random);
            Outline reach = Outline.around(
                    Reach.border(sketch).stream().map(Company::spot).toList());
            for (int i = 0; i < 40; i++) {
                Reading target = new Reading(60 * random.nextDouble(), 500 * random.nextDouble());
                Sketch.Answer answer = sketch.asking(Asked.STRENGTH, Span.exactly(target.strength()))
                        .asking(Asked.SUGAR, Span.exactly(target.sugar()))
                        .answer();
                Spot spot = Company.of(answer.liquid(), SugarBasis.AS_DISSOLVED).spot(target);
                double depth = spot == null ? -1 : depth(reach, spot);
                if (Math.abs(depth) > INK) {
                    assertThat(answer.reached())
                            .as("seed %d: %s lies %s deep in %s", seed, target, depth, reach)
                            .isEqualTo(depth > 0);
                    inside += depth > 0 ? 1 : 0;
                    outside += depth > 0 ? 0 : 1;
                }
            }
        }
        assertThat(inside).isGreaterThan(300);
        assertThat(outside).isGreaterThan(300);
    }

    @Test
    void aHandNeverLeavesATargetThatThePlanMisses() {
        int held = 0;
        for (long seed = 0; seed < 60; seed++) {
            Random random = new Random(seed);
            Sketch sketch = sketch(random);
            for (int i = 0; i < 20; i++) {
                Drag.Moved moved = Drag.to(sketch, new Reading(90 * random.nextDouble(), 700 * random.nextDouble()));
                assertThat(moved.answer().reached())
                        .as("seed %d: %s", seed, moved.asked())
                        .isTrue();
                assertThat(moved.reading().strength()).isCloseTo(moved.asked().strength(), within(0.05));
                assertThat(moved.reading().sugar()).isCloseTo(moved.asked().sugar(), within(0.5));
                held += moved.held() ? 1 : 0;
            }
        }
        assertThat(held).isBetween(200, 1000);
    }

    /** How deep a place lies inside an outline that runs counterclockwise; negative outside. */
    private static double depth(Outline outline, Spot spot) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < outline.spots().size(); i++) {
            Spot from = outline.spots().get(i);
            Spot to = outline.spots().get((i + 1) % outline.spots().size());
            double sugar = to.sugar() - from.sugar();
            double ethanol = to.ethanol() - from.ethanol();
            double left = sugar * (spot.ethanol() - from.ethanol()) - ethanol * (spot.sugar() - from.sugar());
            least = Math.min(least, left / Math.hypot(sugar, ethanol));
        }
        return least;
    }
}
