package org.stillroom.e2e;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Random;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.plan.Sketch;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.recipe.SugarBasis;
import org.stillroom.core.triangle.Reading;

/**
 * Random recipes in numbers, each with a place to take its point to: spirits, crystals or honey, juice, cream, acids, doses, what is
 * fixed and what is scarce, some targets within reach and some beyond.
 */
final class SeededMoves {
    private static final double UNLIMITED = Double.POSITIVE_INFINITY;

    private SeededMoves() {}

    /** One recipe and the strength and sugar to take it to. */
    record Move(long seed, Sketch sketch, Reading to) {}

    static List<Move> list(int count) {
        List<Move> moves = new ArrayList<>();
        for (long seed = 0; seed < count; seed++) {
            Random random = new Random(seed);
            Sketch sketch = new Sketch(lines(random), asked(random), basis(random), random.nextBoolean());
            moves.add(new Move(seed, sketch, new Reading(60 * random.nextDouble(), 450 * random.nextDouble())));
        }
        return moves;
    }

    private static SugarBasis basis(Random random) {
        return SugarBasis.values()[random.nextInt(SugarBasis.values().length)];
    }

    private static Map<Asked, Span> asked(Random random) {
        Map<Asked, Span> asked = new EnumMap<>(Asked.class);
        double volume = 100 + 4000 * random.nextDouble();
        asked.put(Asked.VOLUME, random.nextInt(4) == 0 ? new Span(volume, 1.1 * volume) : Span.exactly(volume));
        if (random.nextInt(3) == 0) {
            asked.put(Asked.ACIDITY, Span.exactly(6 * random.nextDouble()));
        }
        return asked;
    }

    private static List<Sketch.Line> lines(Random random) {
        List<Sketch.Line> lines = new ArrayList<>();
        double scarce = random.nextInt(3) == 0 ? 100 + 600 * random.nextDouble() : UNLIMITED;
        lines.add(free(spirit(0.3 + 0.65 * random.nextDouble()), scarce, random.nextDouble()));
        if (random.nextBoolean()) {
            lines.add(free(spirit(0.3 + 0.3 * random.nextDouble()), UNLIMITED, random.nextDouble()));
        }
        lines.add(free(random.nextBoolean() ? Contents.of(Substance.SUCROSE, 1) : honey(), UNLIMITED, 1));
        lines.add(free(Contents.of(Substance.WATER, 1), UNLIMITED, 0));
        if (random.nextBoolean()) {
            lines.add(free(Contents.of(Substance.CITRIC, 1), UNLIMITED, 1));
        }
        if (random.nextInt(3) == 0) {
            lines.add(line(juice(), 300 * random.nextDouble(), 0, 0, 1, 1.04));
        }
        if (random.nextInt(4) == 0) {
            lines.add(line(cream(), 0, 0.2 * random.nextDouble(), 0, 1, 1.0));
        }
        if (random.nextInt(3) == 0) {
            Contents essence = Contents.of(Substance.ETHANOL, 0.9)
                    .with(Substance.WATER, 0.06)
                    .with(Substance.OIL, 0.04)
                    .knowingOil(Map.of(
                            "5989-27-5", 0.6 * random.nextDouble(),
                            "78-70-6", 0.2 * random.nextDouble(),
                            "other sesquiterpenes", 0.1 * random.nextDouble()));
            lines.add(line(essence, 0, 0.01 * random.nextDouble(), 0, 1, 0.81));
        }
        return lines;
    }

    private static Sketch.Line free(Contents perGram, double room, double cost) {
        boolean solid = perGram.grams(Substance.WATER) == 0.0;
        return new Sketch.Line(perGram, 0, 0, room, cost, solid ? OptionalDouble.empty() : OptionalDouble.of(0.9));
    }

    private static Sketch.Line line(
            Contents perGram, double fixed, double dose, double room, double cost, double gramsPerMillilitre) {
        return new Sketch.Line(perGram, fixed, dose, room, cost, OptionalDouble.of(gramsPerMillilitre));
    }

    private static Contents spirit(double ethanolByMass) {
        return Contents.of(Substance.ETHANOL, ethanolByMass).with(Substance.WATER, 1 - ethanolByMass);
    }

    private static Contents honey() {
        return Contents.of(Substance.WATER, 0.18)
                .with(Substance.GLUCOSE, 0.34)
                .with(Substance.FRUCTOSE, 0.41)
                .with(Substance.OTHER_SOLIDS, 0.07);
    }

    private static Contents juice() {
        return Contents.of(Substance.WATER, 0.88).with(Substance.FRUCTOSE, 0.1).with(Substance.MALIC, 0.02);
    }

    private static Contents cream() {
        return Contents.of(Substance.WATER, 0.64)
                .with(Substance.FAT, 0.3)
                .with(Substance.LACTOSE, 0.035)
                .with(Substance.PROTEIN, 0.025);
    }
}
