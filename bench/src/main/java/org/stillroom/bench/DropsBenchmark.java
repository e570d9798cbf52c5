package org.stillroom.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.stillroom.planner.drops.Choice;
import org.stillroom.planner.drops.Essence;
import org.stillroom.planner.drops.OilDrop;
import org.stillroom.planner.drops.WholeDrops;

/** Six oils in whole drops, beside trying every number of drops of three oils in bare arithmetic. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class DropsBenchmark {
    private static final double TOLERANCE = 0.02;
    private static final int BATCHES = 10;

    private final Essence six =
            essence(new double[] {12, 7, 5, 3, 2, 1.3}, new double[] {0.0189, 0.021, 0.025, 0.02, 0.0247, 0.0275}, 0.8);
    private final Essence three = essence(new double[] {10, 3, 2}, new double[] {0.0205, 0.023, 0.0215}, 0.4);

    private static Essence essence(double[] parts, double[] gramsPerDrop, double gramsPerBatch) {
        double sum = 0.0;
        for (double part : parts) {
            sum += part;
        }
        List<OilDrop> oils = new ArrayList<>();
        for (int i = 0; i < parts.length; i++) {
            oils.add(new OilDrop("oil " + i, parts[i] / sum, gramsPerDrop[i]));
        }
        return new Essence(oils, gramsPerBatch, 5.0, 0.1, TOLERANCE, BATCHES);
    }

    @Benchmark
    public List<Choice> sixOils() {
        return WholeDrops.choices(six, 5);
    }

    @Benchmark
    public List<Choice> threeOils() {
        return WholeDrops.choices(three, 5);
    }

    /** The yardstick: the worst error of every number of drops of three oils that up to ten batches hold; the least of them. */
    @Benchmark
    public double threeOilsOneByOne() {
        double[] drop = three.oils().stream().mapToDouble(OilDrop::gramsPerDrop).toArray();
        double[] part = three.oils().stream().mapToDouble(OilDrop::part).toArray();
        double most = (BATCHES + 1) * three.gramsPerBatch();
        double least = Double.MAX_VALUE;
        for (int a = 1; a * drop[0] <= most; a++) {
            for (int b = 1; a * drop[0] + b * drop[1] <= most; b++) {
                for (int c = 1; a * drop[0] + b * drop[1] + c * drop[2] <= most; c++) {
                    double all = a * drop[0] + b * drop[1] + c * drop[2];
                    double first = Math.abs(a * drop[0] / (all * part[0]) - 1.0);
                    double second = Math.abs(b * drop[1] / (all * part[1]) - 1.0);
                    double third = Math.abs(c * drop[2] / (all * part[2]) - 1.0);
                    least = Math.min(least, Math.max(first, Math.max(second, third)));
                }
            }
        }
        return least;
    }
}
