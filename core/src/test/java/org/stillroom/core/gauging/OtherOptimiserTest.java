package org.stillroom.core.gauging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresProblem;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.util.Pair;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.liquid.Substance;

/** The estimate against that of a general library, Hipparchus 4.0.2 (Levenberg and Marquardt), on the same squares. */
@Tag("property")
class OtherOptimiserTest {
    private static final int BATCHES = 40;
    /** Labels and measures of ethanol, water and sugar, the errors of the two models and of the thermometer. */
    private static final int UNKNOWNS = 6;

    /** So bad that it moves the answer. */
    private static final Thermometer THERMOMETER = new Thermometer(3.0);

    @Test
    void anotherOptimiserFindsTheSame() {
        for (int seed = 0; seed < BATCHES; seed++) {
            SimulatedBatch batch = new SimulatedBatch(seed, THERMOMETER);
            List<Reading> readings = batch.readings(Shown.DENSITY, Shown.REFRACTOMETER, Shown.VOLUME);
            Gauged ours = Gauging.of(readings, batch.poured(), THERMOMETER).orElseThrow();
            double[] theirs = solved(batch.poured(), readings).getPoint().toArray();
            Mixture mixture = mixture(batch.poured(), theirs);
            // What no label accounts for, 0.1 g per kg, is in ours alone.
            assertThat(ours.strength().value()).as("seed %d", seed).isCloseTo(mixture.strength(), within(2e-3));
            assertThat(ours.sugar().value()).as("seed %d", seed).isCloseTo(mixture.sugar(), within(2e-2));
            assertThat(ours.warmth().tooMuch().value())
                    .as("seed %d", seed)
                    .isCloseTo(theirs[5] * THERMOMETER.sigma(), within(1e-2));
        }
    }

    /** The unknowns are here how far each label is off, in standard deviations, and not grams. */
    private static Mixture mixture(Poured poured, double[] x) {
        double[] grams = poured.contents().toGrams();
        for (int slip = 0; slip < poured.slips().size(); slip++) {
            double[] end = poured.slips().get(slip).atItsEnd();
            for (int i = 0; i < Substance.COUNT; i++) {
                grams[i] += x[slip] / Math.sqrt(3) * end[i];
            }
        }
        return new Mixture(grams, x[3], x[4], x[5] * THERMOMETER.sigma());
    }

    private static Optimum solved(Poured poured, List<Reading> readings) {
        LeastSquaresProblem problem = new LeastSquaresBuilder()
                .start(new double[UNKNOWNS])
                .model(point -> new Pair<>(
                        residuals(poured, readings, point.toArray()), slopes(poured, readings, point.toArray())))
                .target(new double[UNKNOWNS + readings.size()])
                .maxEvaluations(1000)
                .maxIterations(1000)
                .build();
        return new LevenbergMarquardtOptimizer()
                .withCostRelativeTolerance(1e-14)
                .withParameterRelativeTolerance(1e-12)
                .optimize(problem);
    }

    private static RealVector residuals(Poured poured, List<Reading> readings, double[] x) {
        Mixture mixture = mixture(poured, x);
        List<Double> residuals = new ArrayList<>();
        for (double each : x) {
            residuals.add(each);
        }
        for (Reading reading : readings) {
            double away = reading.of(mixture) - reading.value();
            residuals.add(away * Math.sqrt(3) / reading.halfWidth());
        }
        return new ArrayRealVector(residuals.toArray(new Double[0]));
    }

    private static Array2DRowRealMatrix slopes(Poured poured, List<Reading> readings, double[] x) {
        Array2DRowRealMatrix slopes = new Array2DRowRealMatrix(UNKNOWNS + readings.size(), UNKNOWNS);
        for (int k = 0; k < UNKNOWNS; k++) {
            double[] up = x.clone();
            double[] down = x.clone();
            up[k] += 1e-4;
            down[k] -= 1e-4;
            RealVector difference = residuals(poured, readings, up).subtract(residuals(poured, readings, down));
            slopes.setColumnVector(k, difference.mapDivide(2e-4));
        }
        return slopes;
    }
}
