package org.stillroom.bench;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.clarity.Chances;
import org.stillroom.core.clarity.Doubts;
import org.stillroom.core.clarity.Medium;
import org.stillroom.core.clarity.Oils;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.triangle.HazeShade;
import org.stillroom.core.triangle.Plate;

/** The oil load of forty constituents, beside forty bare exponentials, its chances, and the triangle shaded for them. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class ClarityBenchmark {
    private static final int CONSTITUENTS = 40;

    private final Oils oils = oils();
    private final Medium medium =
            Medium.of(AlcoholByVolume.at20(30), new MassConcentration(180), Temperature.TWENTY_CELSIUS);
    private final Doubts doubts = new Doubts(0.3, 0.05, Map.of());
    private final double[] slopes = new double[CONSTITUENTS];
    private final Contents liquid = liquid();
    private double cosolvent = 0.3;

    public ClarityBenchmark() {
        for (int i = 0; i < slopes.length; i++) {
            slopes[i] = oils.parts().get(i).logP();
        }
    }

    private static Oils oils() {
        List<Constituent> all = Constituents.list();
        Map<String, Double> grams = new HashMap<>();
        for (Constituent constituent : all.subList(0, CONSTITUENTS)) {
            grams.put(constituent.cas(), 0.02);
        }
        return Oils.of(grams);
    }

    private static Contents liquid() {
        Contents liquid = MadeUp.sweetened(AlcoholByVolume.at20(30), new MassConcentration(180));
        for (Constituent constituent : Constituents.list().subList(0, CONSTITUENTS)) {
            liquid = liquid.plusConstituent(constituent.cas(), 0.02);
        }
        return liquid;
    }

    @Benchmark
    public double oilLoad() {
        return oils.load(medium);
    }

    /** The yardstick: what forty exponentials and their sum take by themselves. */
    @Benchmark
    public double bareOilLoad() {
        double sum = 0.0;
        for (double slope : slopes) {
            sum += 0.02 * Math.exp(-slope * cosolvent);
        }
        return sum;
    }

    /** 201 × 201 places of the triangle, and the outlines around what is hazy and what is cloudy. */
    @Benchmark
    public @Nullable HazeShade shading() {
        return HazeShade.of(liquid, Plate.PART);
    }

    /** 2,000 batches drawn. */
    @Benchmark
    public Chances chances() {
        return Chances.of(oils, medium, doubts);
    }
}
