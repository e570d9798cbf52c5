package org.stillroom.core.triangle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.plan.Reach;
import org.stillroom.core.plan.Sketch;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.recipe.SugarBasis;

/** The worked examples of docs/how-it-works/triangle.md. */
class TriangleExampleTest {
    private static final double UNLIMITED = Double.POSITIVE_INFINITY;
    private static final Contents SPIRIT =
            Contents.of(Substance.ETHANOL, 0.62392).with(Substance.WATER, 0.37608);
    private static final Contents HONEY = Contents.of(Substance.WATER, 0.175)
            .with(Substance.GLUCOSE, 0.338)
            .with(Substance.FRUCTOSE, 0.412)
            .with(Substance.OTHER_SOLIDS, 0.075);

    private static Sketch recipe() {
        Map<Asked, Span> asked = new EnumMap<>(Asked.class);
        asked.put(Asked.VOLUME, Span.exactly(1000));
        return new Sketch(
                List.of(
                        free(SPIRIT, 1),
                        free(Contents.of(Substance.SUCROSE, 1), 1),
                        free(Contents.of(Substance.WATER, 1), 0),
                        new Sketch.Line(HONEY, 100, 0, 0, 1, OptionalDouble.empty())),
                asked,
                SugarBasis.AS_DISSOLVED,
                true);
    }

    private static Sketch.Line free(Contents perGram, double cost) {
        return new Sketch.Line(perGram, 0, 0, UNLIMITED, cost, OptionalDouble.empty());
    }

    @Test
    void aLiquidHasItsPlace() {
        Contents liquid =
                Contents.of(Substance.ETHANOL, 220).with(Substance.SUCROSE, 180).with(Substance.WATER, 620);
        Spot spot = Company.spot(liquid);
        assertThat(spot.ethanol()).isCloseTo(0.2157, within(5e-5));
        assertThat(spot.sugar()).isCloseTo(0.1765, within(5e-5));
        Reading reading = Company.of(liquid, SugarBasis.AS_DISSOLVED).reading(spot);
        assertThat(reading.strength()).isCloseTo(28.26, within(0.005));
        assertThat(reading.sugar()).isCloseTo(182.5, within(0.05));
        assertThat(Plate.PART.place(spot)).hasToString("353.8 407.0");
    }

    @Test
    void aRecipeIsTakenToAnotherStrengthOrHeldAtTheBorder() {
        assertMove(28, false, 28, 354.2, 105.0, 477.4);
        assertMove(30, false, 30, 379.5, 105.0, 449.4);
        assertMove(66, true, 60.7, 767.8, 105.0, 0.5);
    }

    private static void assertMove(double to, boolean held, double asked, double spirit, double sugar, double water) {
        Drag.Moved moved = Drag.to(recipe(), new Reading(to, 180));
        assertThat(moved.held()).isEqualTo(held);
        assertThat(moved.asked()).isEqualTo(new Reading(asked, 180));
        assertThat(moved.answer().reached()).isTrue();
        List<Double> grams = moved.answer().grams();
        assertThat(grams.get(0)).isCloseTo(spirit, within(0.05));
        assertThat(grams.get(1)).isCloseTo(sugar, within(0.05));
        assertThat(grams.get(2)).isCloseTo(water, within(0.05));
        assertThat(grams.get(3)).isEqualTo(100);
    }

    @Test
    void itsReachHasThreeCorners() {
        List<Reading> corners =
                Outline.around(Reach.border(recipe()).stream()
                                .map(Company::spot)
                                .toList())
                        .spots()
                        .stream()
                        .map(TriangleExampleTest::readingWithHoney)
                        .toList();
        assertThat(corners).hasSize(3);
        assertThat(corners).anySatisfy(corner -> assertReading(corner, 0, 75));
        assertThat(corners).anySatisfy(corner -> assertReading(corner, 65.28, 75));
        assertThat(corners).anySatisfy(corner -> assertReading(corner, 0, 1520.7));
    }

    private static Reading readingWithHoney(Spot spot) {
        return Reach.border(recipe()).stream()
                .filter(liquid -> Company.spot(liquid).equals(spot))
                .map(liquid -> Company.of(liquid, SugarBasis.AS_DISSOLVED).reading(spot))
                .findFirst()
                .orElseThrow();
    }

    private static void assertReading(Reading reading, double strength, double sugar) {
        assertThat(reading.strength()).isCloseTo(strength, within(0.005));
        assertThat(reading.sugar()).isCloseTo(sugar, within(0.05));
    }

    @Test
    void aTargetAtTheBorderIsOneThatThePlannerReaches() {
        for (double strength : new double[] {62, 70, 95}) {
            for (double sugar : new double[] {20, 300, 700}) {
                Drag.Moved moved = Drag.to(recipe(), new Reading(strength, sugar));
                assertThat(moved.held()).isTrue();
                Sketch again = recipe().asking(
                                Asked.STRENGTH, Span.exactly(moved.asked().strength()))
                        .asking(Asked.SUGAR, Span.exactly(moved.asked().sugar()));
                assertThat(again.answer().reached()).as("%s", moved.asked()).isTrue();
            }
        }
    }
}
