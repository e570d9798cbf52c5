package org.stillroom.studio.usecase.learn;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.usecase.batch.LogBatch;
import org.stillroom.studio.usecase.batch.RecordBatch;
import org.stillroom.studio.usecase.learn.LearntLabel.Standing;
import org.stillroom.studio.usecase.make.BatchSheet;
import org.stillroom.studio.usecase.make.FinishMake;

/** A kitchen whose spirit is weaker than its label and whose drops are heavier than reckoned: its batches tell, and nothing is used unasked. */
@Tag("property")
class LearnOffsetsTest {
    private static final double TRUTH = 90.0;

    @TempDir
    private Path dir;

    private MislabelledKitchen kitchen;

    @BeforeEach
    void open() {
        kitchen = new MislabelledKitchen(dir);
    }

    @AfterEach
    void close() {
        kitchen.close();
    }

    private LearntLabel ofBottle() {
        return kitchen.learnt().labelsOf(kitchen.spirit.id()).get(0);
    }

    private TakeOffset.Outcome taken(String lot, String field) {
        return new TakeOffset(kitchen.store(), LearnOffsets.of(kitchen.store())).answer(lot, field, "take");
    }

    private Map<String, String> fields(String lot) {
        return kitchen.store().lots().lot(lot).orElseThrow().sheet().fields();
    }

    @Test
    void aSpiritThatIsWeakerThanItsLabelIsFoundAndTakenOnlyWhenAsked() {
        kitchen.fourBatches(TRUTH);
        LearntLabel label = ofBottle();
        assertThat(label.standing()).as("%s", kitchen.learnt()).isEqualTo(Standing.CLEAR);
        assertThat(label.batches()).isEqualTo(4);
        assertThat(label.found().low()).isLessThan(TRUTH);
        assertThat(label.found().high()).isGreaterThan(TRUTH).isLessThan(96.0);
        assertThat(label.beyondTolerance()).isTrue();
        assertThat(fields(kitchen.spirit.id())).containsEntry("strength", "96 %");

        assertThat(taken(kitchen.spirit.id(), "strength")).isInstanceOf(TakeOffset.Outcome.Taken.class);
        assertThat(fields(kitchen.spirit.id()))
                .containsEntry("strength", label.typed())
                .containsEntry("tolerance", label.tolerance());
        assertThat(kitchen.learnt().offered(kitchen.spirit.id())).isEmpty();
        assertThat(kitchen.learnt().offered(ofRecipe("96 %", 96.0)).map(LearntLabel::typed))
                .contains(ofBottle().typed());
        assertThat(kitchen.learnt().offered(ofRecipe("40 %", 40.0))).isEmpty();
    }

    private static Ingredient ofRecipe(String text, double percent) {
        return Ingredient.named("grain spirit", Kind.SPIRIT)
                .ofStrength(new Typed<>(text, new AlcoholByVolume(percent, VolumeBasis.AT_20C)));
    }

    @Test
    void aSpiritThatIsAsLabelledIsNotOffered() {
        kitchen.fourBatches(96.0);
        assertThat(ofBottle().found().value()).isCloseTo(96.0, within(0.2));
        assertThat(ofBottle().standing()).isNotEqualTo(Standing.CLEAR);
        assertThat(kitchen.learnt().offered(kitchen.spirit.id())).isEmpty();
        assertThat(taken(kitchen.spirit.id(), "")).isInstanceOf(TakeOffset.Outcome.Nothing.class);
    }

    @Test
    void aStrengthByAMethodOfItsOwnTellsItToo() {
        for (int turn = 0; turn < 3; turn++) {
            Batch batch = kitchen.made(30 + 5 * turn, 60);
            double strength = Essentials.of(
                            MislabelledKitchen.real(batch, TRUTH).toGrams())
                    .strength();
            kitchen.measured(
                    batch, Map.of("vessel", "1", "strength", (strength - 0.2) + ".." + (strength + 0.2) + " %"));
        }
        assertThat(ofBottle().found().value()).isCloseTo(TRUTH, within(1.0));
        assertThat(ofBottle().standing()).isEqualTo(Standing.CLEAR);
    }

    @Test
    void oneBatchIsNotEnoughAndOneThatWasWateredTellsNothing() {
        kitchen.gauged(kitchen.made(28, 100), TRUTH);
        assertThat(ofBottle().standing()).isNotEqualTo(Standing.CLEAR);
        Batch watered = kitchen.made(32, 100);
        kitchen.logged(watered, LogBatch.Act.ADDED, Map.of("vessel", "1", "what", "water", "amount", "500 ml"));
        kitchen.measured(watered, Map.of("vessel", "1", "strength", "20 %"));
        assertThat(kitchen.learnt().batches()).isEqualTo(1);
    }

    @Test
    void readingsThatContradictEachOtherTellNothing() {
        for (int turn = 0; turn < 3; turn++) {
            kitchen.measured(
                    kitchen.made(28 + turn, 100), Map.of("vessel", "1", "strength", "20 %", "readings", "none"));
        }
        assertThat(kitchen.learnt().batches()).isZero();
    }

    @Test
    void readingsThatAreNoneAreRefused() {
        RecordBatch.Outcome outcome = kitchen.logged(
                kitchen.made(28, 100),
                LogBatch.Act.MEASURED,
                Map.of("vessel", "1", "strength", "28 %", "readings", "DENSITY heavy"));
        assertThat(outcome).isInstanceOf(RecordBatch.Outcome.NotKept.class);
    }

    @Test
    void dropsThatAreHeavierThanReckonedAreFoundByWeighingTheBottle() {
        double reckoned = 0.0;
        double left = 200.0;
        kitchen.weighedEssence(left);
        for (int turn = 0; turn < 3; turn++) {
            double drawn = FinishMake.sheet(kitchen.made(28, 100)).lines().stream()
                    .filter(line -> line.name().equals("juniper essence"))
                    .mapToDouble(BatchSheet.LineSheet::grams)
                    .sum();
            reckoned = drawn / 300.0;
            left -= 1.4 * drawn;
            kitchen.weighedEssence(left);
        }
        String lot = kitchen.essence.id();
        LearntDrop drop = kitchen.learnt().dropsOf(lot).get(0);
        assertThat(drop.weighings()).isEqualTo(3);
        assertThat(drop.reckoned()).isCloseTo(reckoned, within(1e-9));
        assertThat(drop.isClear()).isTrue();
        assertThat(drop.found().low()).isLessThan(1.4 * reckoned);
        assertThat(drop.found().high()).isGreaterThan(1.4 * reckoned);
        LearntDrop dropper = kitchen.learnt().drops().get(0);
        assertThat(dropper.liquid()).isNull();
        assertThat(dropper.dropper()).isEqualTo("glass dropper");
        assertThat(dropper.found().value()).isBetween(1.2, 1.45);

        taken(lot, "drop");
        assertThat(fields(lot)).containsEntry("drop", drop.typed());
        assertThat(kitchen.learnt().offeredDrop(lot)).isEmpty();
    }
}
