package org.stillroom.bench;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Bands;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.plan.Spread;
import org.stillroom.core.plan.Taken;
import org.stillroom.core.recipe.Making;

/** A recipe of twelve lines: its figures, its exact plan beside general-purpose libraries, and its doubt. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class RecipeBenchmark {
    private static final long SEED = 20;
    /** The libraries stop at their own tolerances; farther apart than this it would be another answer. */
    private static final double SAME = 1e-6;

    private final Making making = TwelveLines.making();
    private final Plan plan = TwelveLines.plan(making);
    private final double[][] perGram = TwelveLines.perGram(plan);
    private final double[] grams = TwelveLines.grams(plan);
    private final List<Taken> taken = TwelveLines.taken(plan);
    private final GeneralPlan general = new GeneralPlan(perGram, grams);

    /** The yardsticks must find the same amounts, or they would not be doing the same. */
    @Setup
    public void findTheSame() {
        checkSame(general.solve(GeneralPlan::byHipparchus));
        checkSame(general.solve(GeneralPlan::byOjAlgo));
    }

    private void checkSame(double[] free) {
        for (int i = 0; i < free.length; i++) {
            if (!(Math.abs(free[i] - grams[i]) <= SAME * grams[i])) {
                throw new IllegalStateException(
                        "line " + (i + 1) + " takes " + grams[i] + " g, by the library " + free[i]);
            }
        }
    }

    /** Volume, density, strength, sugar and acidity at 20 °C from the amounts of the lines. */
    @Benchmark
    public Essentials forward() {
        double[] total = new double[Substance.COUNT];
        for (int i = 0; i < perGram.length; i++) {
            for (int s = 0; s < total.length; s++) {
                total[s] += grams[i] * perGram[i][s];
            }
        }
        return Essentials.of(total);
    }

    /** From the recipe as written, its texts already read, to amounts and findings. */
    @Benchmark
    public Plan exactPlan() {
        return TwelveLines.plan(making);
    }

    @Benchmark
    public double[] planByHipparchus() {
        return general.solve(GeneralPlan::byHipparchus);
    }

    @Benchmark
    public double[] planByOjAlgo() {
        return general.solve(GeneralPlan::byOjAlgo);
    }

    /** 10,000 batches drawn. */
    @Benchmark
    public Bands spread() {
        return Spread.of(plan, taken, SEED, Spread.DRAWS);
    }
}
