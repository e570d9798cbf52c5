package org.stillroom.bench;

import java.util.Random;
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
import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.quantity.Temperature;

/**
 * Density of ethanol with water by the full polynomial, beside the bare arithmetic of the same shape.
 *
 * <p>The yardstick has as many coefficients in as many terms and no types, no ranges, no objects. Its coefficients are
 * seeded numbers, since the time of a multiplication does not depend on them and the real ones stand in one place only.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class DensityBenchmark {
    /** Coefficients of pᵏ alone, and of (t − 20)ⁱ·pᵏ for each i, as many as OIML R 22 prints. */
    private static final int OF_FRACTION = 12;

    private static final int[] OF_BOTH = {12, 11, 10, 5, 3, 1};

    private final double[] a = new double[OF_FRACTION];
    private final double[][] c = new double[OF_BOTH.length][];
    private double fraction;
    private double celsius;

    @Setup
    public void fill() {
        Random random = new Random(22);
        fill(a, random);
        for (int i = 0; i < c.length; i++) {
            c[i] = new double[OF_BOTH[i]];
            fill(c[i], random);
        }
        fraction = 0.3 + 0.1 * random.nextDouble();
        celsius = 24 + random.nextDouble();
    }

    private static void fill(double[] coefficients, Random random) {
        for (int k = 0; k < coefficients.length; k++) {
            coefficients[k] = random.nextGaussian();
        }
    }

    @Benchmark
    public double polynomialAt20() {
        return EthanolWater.at(new Temperature(20.0)).density(fraction);
    }

    @Benchmark
    public double bareAt20() {
        return horner(a);
    }

    @Benchmark
    public double polynomialAtAnyTemperature() {
        return EthanolWater.at(new Temperature(celsius)).density(fraction);
    }

    @Benchmark
    public double bareAtAnyTemperature() {
        double sum = 0;
        for (int i = c.length - 1; i >= 0; i--) {
            sum = (sum + horner(c[i])) * (celsius - 20);
        }
        return sum + horner(a);
    }

    private double horner(double[] coefficients) {
        double sum = 0;
        for (int k = coefficients.length - 1; k >= 0; k--) {
            sum = sum * fraction + coefficients[k];
        }
        return sum;
    }
}
