package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.Correction.Addition;
import org.stillroom.core.plan.Correction.Batch;
import org.stillroom.core.plan.Correction.Way;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;

/** What to add to a batch so that it comes to its target. */
class CorrectionTest {
    private static final Addition SPIRIT = new Addition(
            "spirit of 96 % vol", MadeUp.spirit(AlcoholByVolume.at20(96)).perGram(), Double.POSITIVE_INFINITY);
    private static final Addition SUGAR =
            new Addition("sugar", Contents.of(Substance.SUCROSE, 1), Double.POSITIVE_INFINITY);
    private static final Addition WATER =
            new Addition("water", Contents.of(Substance.WATER, 1), Double.POSITIVE_INFINITY);
    private static final List<Addition> ALL = List.of(SPIRIT, SUGAR, WATER);
    private static final Map<Asked, Double> TARGET = Map.of(Asked.STRENGTH, 28.0, Asked.SUGAR, 180.0);

    private static Batch batch(double strength, double sugar) {
        Contents litre = MadeUp.sweetened(AlcoholByVolume.at20(strength), new MassConcentration(sugar));
        return new Batch(litre.times(1.9), Map.of(Asked.STRENGTH, 0.4, Asked.SUGAR, 4.0));
    }

    @Test
    void spiritAndSugarLandOnTheTargetAndEveryGramIsCounted() {
        Batch batch = batch(27.1, 165);
        Way way = Correction.with(ALL, batch, TARGET, null);
        assertThat(way.reached()).isTrue();
        assertThat(way.essentials().strength()).isCloseTo(28, within(1e-9));
        assertThat(way.essentials().sugar()).isCloseTo(180, within(1e-8));
        assertThat(way.added().get(0).grams()).isCloseTo(27.5, within(0.05));
        assertThat(way.added().get(1).grams()).isCloseTo(38.5, within(0.05));
        double added = way.added().stream().mapToDouble(Correction.Added::grams).sum();
        assertThat(way.result().total()).isCloseTo(batch.contents().total() + added, within(1e-9));
    }

    @Test
    @Tag("property")
    void noOtherAdditionsThatLandThereTakeLessRoom() {
        Batch batch = batch(30, 160);
        Map<Asked, Double> target = Map.of(Asked.STRENGTH, 28.0);
        double least = room(Correction.with(ALL, batch, target, null));
        for (Addition each : List.of(SUGAR, WATER)) {
            assertThat(room(Correction.with(List.of(each), batch, target, null)))
                    .isGreaterThan(least * (1 - 1e-9));
        }
    }

    private static double room(Way way) {
        return way.added().stream().mapToDouble(Correction.Added::millilitres).sum();
    }

    @Test
    void waterAloneComesAsNearAsItCan() {
        Way way = Correction.with(List.of(WATER), batch(30, 190), TARGET, null);
        assertThat(way.reached()).isFalse();
        Essentials result = way.essentials();
        assertThat(result.sugar()).isBetween(177.0, 181.0);
        assertThat(result.strength()).isBetween(27.5, 28.5);
    }

    /** 60 mL of a tincture of 60 % vol in 1.9 L; after correcting there is as much of it in a litre as before. */
    @Test
    void moreOfAnExtractKeepsItsFlavourWithItsOwnStrengthCounted() {
        Batch batch = batch(30, 190);
        Addition tincture =
                new Addition("tincture", MadeUp.spirit(AlcoholByVolume.at20(60)).perGram(), Double.POSITIVE_INFINITY);
        Correction.Added went = new Correction.Added(tincture, 60.0 / tincture.millilitresPerGram());
        Way way = Correction.restoring(List.of(went), ALL, batch, TARGET, null);
        assertThat(way.reached()).isTrue();
        assertThat(way.essentials().strength()).isCloseTo(28, within(1e-6));
        assertThat(way.essentials().sugar()).isCloseTo(180, within(1e-6));
        Correction.Added more = way.added().get(0);
        assertThat(more.addition()).isEqualTo(tincture);
        double before = Essentials.of(batch.contents().toGrams()).millilitres();
        assertThat((went.grams() + more.grams()) / way.essentials().millilitres())
                .isCloseTo(went.grams() / before, within(1e-9));
        double added = way.added().stream().mapToDouble(Correction.Added::grams).sum();
        assertThat(way.result().total()).isCloseTo(batch.contents().total() + added, within(1e-6));
        Way without = Correction.with(ALL, batch, TARGET, null);
        assertThat(way.added().get(way.added().size() - 1).grams())
                .isGreaterThan(without.added().get(without.added().size() - 1).grams()); // the tincture is strong
    }

    @Test
    void inAFullVesselTheExtractIsDrawnOffToo() {
        Addition tincture =
                new Addition("tincture", MadeUp.spirit(AlcoholByVolume.at20(60)).perGram(), Double.POSITIVE_INFINITY);
        Correction.Added went = new Correction.Added(tincture, 50);
        Way free = Correction.restoring(List.of(went), ALL, batch(30, 190), TARGET, null);
        Way full = Correction.restoring(List.of(went), ALL, batch(30, 190), TARGET, 1900.0);
        assertThat(full.essentials().millilitres()).isCloseTo(1900.0, within(1e-3));
        assertThat(full.drawnOff()).isGreaterThan(0.0);
        double part = 1900.0 / free.essentials().millilitres();
        assertThat(full.added().get(0).grams())
                .isCloseTo(part * free.added().get(0).grams(), within(1e-6));
    }

    @Test
    void whatIsNotAtHandIsNotTaken() {
        Addition little = new Addition(SUGAR.name(), SUGAR.perGram(), 10);
        Way way = Correction.with(List.of(SPIRIT, little, WATER), batch(27.1, 165), TARGET, null);
        assertThat(way.reached()).isFalse();
        assertThat(way.added()).allMatch(each -> !each.addition().equals(little) || each.grams() <= 10 + 1e-9);
    }

    @Test
    void aFullVesselIsDrawnFromAndTheCompositionStays() {
        Way way = Correction.with(ALL, batch(27.1, 165), TARGET, 1900.0);
        assertThat(way.drawnOff()).isGreaterThan(0);
        assertThat(way.essentials().millilitres()).isCloseTo(1900, within(1e-6));
        assertThat(way.essentials().strength()).isCloseTo(28, within(1e-9));
        assertThat(way.essentials().sugar()).isCloseTo(180, within(1e-8));
    }

    @Test
    void aromaAndDoubtThinAsTheBatchDoes() {
        Batch batch = batch(30, 200);
        Way way = Correction.with(ALL, batch, Map.of(Asked.STRENGTH, 25.0, Asked.SUGAR, 180.0), null);
        double thinned = 1900 / way.essentials().millilitres();
        assertThat(way.flavour()).isCloseTo(thinned, within(1e-6)).isLessThan(0.9);
        assertThat(way.doubt()).containsEntry(Asked.STRENGTH, 0.4 * way.flavour());
    }

    @Test
    void whatLiesWithinItsDoubtIsGoodEnough() {
        assertThat(Correction.isGoodEnough(batch(27.8, 178), TARGET)).isTrue();
        assertThat(Correction.isGoodEnough(batch(27.1, 178), TARGET)).isFalse();
        assertThat(Correction.isGoodEnough(batch(27.8, 165), TARGET)).isFalse();
        Batch exact = new Batch(batch(27.8, 178).contents(), Map.of());
        assertThat(Correction.isGoodEnough(exact, TARGET)).isFalse();
    }
}
