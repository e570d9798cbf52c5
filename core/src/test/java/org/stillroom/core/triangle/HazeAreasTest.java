package org.stillroom.core.triangle;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.clarity.Medium;
import org.stillroom.core.clarity.Oils;
import org.stillroom.core.clarity.Shading;
import org.stillroom.core.clarity.Verdict;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Temperature;

/** Where on the triangle it would be hazy, held against the verdict on each liquid itself. */
class HazeAreasTest {
    private static final Temperature TWENTY = Temperature.TWENTY_CELSIUS;

    private static Oils limonene(double gramsPerLitre) {
        return Oils.of(Map.of("5989-27-5", gramsPerLitre));
    }

    private static Verdict itself(Oils oils, Spot spot) {
        Contents liquid = Contents.of(Substance.ETHANOL, 1000 * spot.ethanol())
                .plus(Contents.of(Substance.SUCROSE, 1000 * spot.sugar()))
                .plus(Contents.of(Substance.WATER, 1000 * spot.water()));
        return Verdict.of(oils, Medium.of(liquid, TWENTY));
    }

    private static boolean holds(List<Spot> outline, Spot spot) {
        Spot start = outline.get(0);
        Spot end = outline.get(2);
        if (spot.ethanol() < start.ethanol() || spot.ethanol() >= end.ethanol()) {
            return false;
        }
        double up = (spot.ethanol() - start.ethanol()) / (end.ethanol() - start.ethanol());
        double to = outline.get(1).sugar() + up * (end.sugar() - outline.get(1).sugar());
        return spot.sugar() >= start.sugar() && spot.sugar() < to;
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.5, 2.0, 10.0})
    @Tag("property")
    void anAreaHoldsTheLiquidsThatLookSo(double gramsPerLitre) {
        Oils oils = limonene(gramsPerLitre);
        HazeAreas areas = new HazeAreas(new Shading(oils, TWENTY), Plate.PART);
        Random random = new Random(11);
        int told = 0;
        int right = 0;
        for (int i = 0; i < 4000; i++) {
            double ethanol = 0.6 * random.nextDouble();
            Spot spot = new Spot(ethanol, (0.6 - ethanol) * random.nextDouble() * 0.999);
            Verdict verdict = itself(oils, spot);
            told++;
            right += areas.of(verdict).stream().anyMatch(each -> holds(each, spot)) ? 1 : 0;
        }
        // what lies within half a strip of a border may fall on its other side
        assertThat((double) right / told).isGreaterThan(0.97);
    }

    @Test
    void moreOilIsCloudyInMoreOfTheTriangle() {
        double before = 0.0;
        for (double grams : new double[] {0.2, 1.0, 5.0}) {
            double area = 0.0;
            for (List<Spot> each : new HazeAreas(new Shading(limonene(grams), TWENTY), Plate.PART).of(Verdict.CLOUDY)) {
                area += (each.get(1).sugar() - each.get(0).sugar())
                        * (each.get(2).ethanol() - each.get(0).ethanol());
            }
            assertThat(area).isGreaterThan(before);
            before = area;
        }
    }
}
