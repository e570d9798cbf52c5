package org.stillroom.core.triangle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import org.stillroom.core.recipe.SugarBasis;

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

    /** Whether a spot lies inside outlines: by how often a ray to the right crosses them. */
    private static boolean holds(List<List<Spot>> outlines, Spot spot) {
        boolean inside = false;
        for (List<Spot> outline : outlines) {
            for (int i = 0; i < outline.size(); i++) {
                Spot from = outline.get(i);
                Spot to = outline.get((i + 1) % outline.size());
                if (from.ethanol() > spot.ethanol() != to.ethanol() > spot.ethanol()) {
                    double part = (spot.ethanol() - from.ethanol()) / (to.ethanol() - from.ethanol());
                    inside ^= from.sugar() + part * (to.sugar() - from.sugar()) > spot.sugar();
                }
            }
        }
        return inside;
    }

    private static double area(List<Spot> outline) {
        double twice = 0.0;
        for (int i = 0; i < outline.size(); i++) {
            Spot from = outline.get(i);
            Spot to = outline.get((i + 1) % outline.size());
            twice += from.sugar() * to.ethanol() - to.sugar() * from.ethanol();
        }
        return Math.abs(0.5 * twice);
    }

    private static HazeAreas areas(Oils oils) {
        return new HazeAreas(new Shading(oils, TWENTY), Company.PLAIN, Plate.PART);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.05, 0.5, 2.0, 10.0})
    @Tag("property")
    void anAreaHoldsTheLiquidsThatLookSo(double gramsPerLitre) {
        Oils oils = limonene(gramsPerLitre);
        HazeAreas areas = areas(oils);
        Random random = new Random(11);
        int told = 0;
        int right = 0;
        for (int i = 0; i < 4000; i++) {
            double ethanol = 0.6 * random.nextDouble();
            Spot spot = new Spot(ethanol, (0.6 - ethanol) * random.nextDouble() * 0.999);
            Verdict verdict = itself(oils, spot);
            told++;
            right += holds(areas.of(verdict), spot) ? 1 : 0;
        }
        // what lies within a thousandth of the plate of a border may fall on its other side
        assertThat((double) right / told).isGreaterThan(0.997);
    }

    @Test
    @Tag("property")
    void whatIsNotWorkedOutAtEachPlaceLooksAsThoughItWere() {
        Random random = new Random(29);
        for (int i = 0; i < 150; i++) {
            double grams = Math.pow(10.0, 2.5 * random.nextDouble() - 1.5);
            String constituent =
                    List.of("5989-27-5", "4180-23-8", "80-56-8", "99-49-0").get(i % 4);
            Contents beside = Contents.of(Substance.WATER, 500)
                    .with(Substance.ETHANOL, 200)
                    .with(Substance.SUCROSE, 200 * random.nextDouble())
                    .with(Substance.FRUCTOSE, 100 * random.nextDouble())
                    .with(Substance.GLYCEROL, 60 * random.nextDouble());
            Shading shading = new Shading(Oils.of(Map.of(constituent, grams)), TWENTY);
            Company company = Company.of(beside, SugarBasis.AS_DISSOLVED);
            Plate plate = i % 3 == 0 ? Plate.WHOLE : Plate.PART;
            HazeAreas quick = new HazeAreas(shading, company, plate);
            HazeAreas each = new HazeAreas(shading, company, plate, 1);
            for (Verdict verdict : Verdict.values()) {
                assertThat(quick.of(verdict))
                        .as("%s g/L of %s", grams, constituent)
                        .isEqualTo(each.of(verdict));
            }
        }
    }

    @Test
    void moreOilIsCloudyInMoreOfTheTriangle() {
        double before = 0.0;
        for (double grams : new double[] {0.2, 1.0, 5.0}) {
            double area = 0.0;
            for (List<Spot> each : areas(limonene(grams)).of(Verdict.CLOUDY)) {
                area += area(each);
            }
            assertThat(area).isGreaterThan(before);
            before = area;
        }
    }

    @Test
    void theThreeAreasCoverThePlateOnce() {
        HazeAreas areas = areas(limonene(0.8));
        double together = 0.0;
        for (Verdict verdict : Verdict.values()) {
            together +=
                    areas.of(verdict).stream().mapToDouble(HazeAreasTest::area).sum();
        }
        assertThat(together).isCloseTo(0.5 * 0.6 * 0.6, within(1e-4));
    }

    @Test
    void theLiquidItselfLiesInTheAreaOfItsOwnVerdictWhateverIsBesideTheThree() {
        for (double ethanol = 100; ethanol <= 420; ethanol += 20) {
            Contents liquid = Contents.of(Substance.ETHANOL, ethanol)
                    .with(Substance.FRUCTOSE, 60)
                    .with(Substance.SUCROSE, 90)
                    .with(Substance.GLYCEROL, 60)
                    .with(Substance.CITRIC, 8)
                    .with(Substance.WATER, 900 - ethanol)
                    .plusConstituent("5989-27-5", 0.6);
            Oils oils = Oils.of(liquid);
            Company company = Company.of(liquid, SugarBasis.AS_DISSOLVED);
            HazeAreas areas = new HazeAreas(new Shading(oils, TWENTY), company, Plate.PART);
            Verdict verdict = Verdict.of(oils, Medium.of(liquid, TWENTY));
            assertThat(holds(areas.of(verdict), Company.spot(liquid)))
                    .as("%s g of ethanol", ethanol)
                    .isTrue();
        }
    }

    @Test
    void anOutlineHasFewCornersThatAreNotNeeded() {
        int corners = areas(limonene(0.8)).of(Verdict.HAZY).stream()
                .mapToInt(List::size)
                .sum();
        assertThat(corners).isBetween(6, 60);
    }

    @Test
    void aLiquidWithoutOilHasNoShade() {
        assertThat(HazeShade.of(Contents.of(Substance.ETHANOL, 300).with(Substance.WATER, 700), Plate.PART))
                .isNull();
        assertThat(HazeShade.of(Contents.NONE.plusConstituent("5989-27-5", 1.0), Plate.PART))
                .isNull();
    }
}
