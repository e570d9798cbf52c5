package org.stillroom.core.triangle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.recipe.SugarBasis;

class PlateTest {
    private static final Spot SPOT = new Spot(0.2, 0.15);

    @Test
    void waterLiesLeftSugarRightAndSpiritUp() {
        assertThat(Plate.PART.line(Plate.PART.frame())).isEqualTo("M60.0 600.0L370.0 63.0L680.0 600.0");
        Plate.Place here = Plate.PART.place(SPOT);
        assertThat(Plate.PART.place(new Spot(0.25, 0.15)).y()).isLessThan(here.y());
        assertThat(Plate.PART.place(new Spot(0.2, 0.2)).x()).isGreaterThan(here.x());
    }

    @Test
    void aPlaceLeadsBackToItsSpot() {
        for (Plate plate : List.of(Plate.PART, Plate.WHOLE)) {
            Spot back = plate.spot(plate.place(SPOT));
            assertThat(back.ethanol()).isCloseTo(SPOT.ethanol(), within(1e-15));
            assertThat(back.sugar()).isCloseTo(SPOT.sugar(), within(1e-15));
        }
    }

    @Test
    void aHandBesideThePlateIsTakenToItsEdge() {
        assertThat(Plate.PART.spot(new Plate.Place(0, 700))).isEqualTo(new Spot(0, 0));
        assertThat(Plate.PART.spot(new Plate.Place(740, 600)).sugar()).isCloseTo(0.6, within(1e-15));
        assertThat(Plate.PART.spot(new Plate.Place(370, 0)).ethanol()).isCloseTo(0.6, within(1e-15));
    }

    @Test
    void allIsShownWhereThePartDoesNotHoldTheLiquid() {
        assertThat(Plate.showing(SPOT)).isEqualTo(Plate.PART);
        assertThat(Plate.showing(new Spot(0.7, 0.1))).isEqualTo(Plate.WHOLE);
    }

    @Test
    void linesRunFromTheirEdgeToTheEndOfWhatIsShown() {
        Contours contours = new Contours(Company.PLAIN, Plate.PART);
        assertThat(contours.strengths())
                .extracting(Contours.Contour::value)
                .containsExactly(10.0, 20.0, 30.0, 40.0, 50.0, 60.0);
        assertThat(contours.sugars()).extracting(Contours.Contour::value).startsWith(100.0, 200.0);
        for (Contours.Contour line : contours.strengths()) {
            assertThat(line.foot().sugar()).isZero();
            Spot end = line.spots().get(line.spots().size() - 1);
            assertThat(end.ethanol() + end.sugar()).isCloseTo(0.6, within(2e-3)).isLessThanOrEqualTo(0.6);
            for (Spot spot : line.spots()) {
                assertThat(Company.PLAIN.reading(spot).strength()).isCloseTo(line.value(), within(1e-9));
            }
        }
    }

    @Test
    void linesOfSightEndAtTheLiquid() {
        Contents liquid =
                Contents.of(Substance.ETHANOL, 220).with(Substance.SUCROSE, 180).with(Substance.WATER, 620);
        Company company = Company.of(liquid, SugarBasis.AS_DISSOLVED);
        Reading reading = company.reading(Company.spot(liquid));
        Contours contours = new Contours(company, Plate.PART);
        for (Contours.Contour sight : List.of(contours.sightOfStrength(reading), contours.sightOfSugar(reading))) {
            Spot end = sight.spots().get(sight.spots().size() - 1);
            assertThat(end.ethanol()).isCloseTo(Company.spot(liquid).ethanol(), within(1e-12));
            assertThat(end.sugar()).isCloseTo(Company.spot(liquid).sugar(), within(1e-12));
        }
        assertThat(contours.sightOfStrength(reading).foot().sugar()).isZero();
        assertThat(contours.sightOfSugar(reading).foot().ethanol()).isZero();
    }

    @Test
    void anOutlineIsTheHullOfItsPlacesAndIsCutAtThePlate() {
        Spot inside = new Spot(0.3, 0.2);
        Outline outline = Outline.around(
                List.of(new Spot(0, 0), inside, new Spot(0.9, 0), new Spot(0.3, 0), new Spot(0, 1), new Spot(0, 0)));
        assertThat(outline.spots()).containsExactlyInAnyOrder(new Spot(0, 0), new Spot(0.9, 0), new Spot(0, 1));
        Outline cut = outline.within(Plate.PART);
        assertThat(cut.spots()).hasSize(3).allMatch(spot -> spot.ethanol() + spot.sugar() <= 0.6 + 1e-12);
        assertThat(Outline.around(List.of(inside, inside)).spots()).containsExactly(inside);
        assertThat(Outline.around(List.of()).within(Plate.PART).spots()).isEmpty();
    }
}
