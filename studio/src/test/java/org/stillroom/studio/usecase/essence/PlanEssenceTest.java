package org.stillroom.studio.usecase.essence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.planner.drops.PreDilution;
import org.stillroom.studio.recipefile.EssenceReader;
import org.stillroom.studio.recipefile.EssenceReading;
import org.stillroom.studio.recipefile.EssenceSheet;
import org.stillroom.studio.usecase.Impossible;

class PlanEssenceTest {
    private static String example() {
        try {
            return Files.readString(Path.of("..", "examples", "essences", "bay-pepper-lemon.yml"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static PlanEssence.Found planned(String text) {
        EssenceReading reading = EssenceReader.read(text);
        if (reading instanceof EssenceReading.Refused refused) {
            throw new AssertionError(refused.problems().toString());
        }
        EssenceSheet sheet = ((EssenceReading.Understood) reading).sheet();
        return PlanEssence.answer(sheet, Grounds.SHIPPED, Workings.NONE);
    }

    @Test
    void theCarrierFillsTheEssenceSoThatADoseCarriesWhatABatchTakes() {
        PlanEssence.Made best = planned(example()).choices().get(0);
        assertThat(best.choice().drops()).containsExactly(26, 7, 5);
        assertThat(best.essence()).isCloseTo(801.5 / 400.0 * 5.0, within(1e-9)); // 801.5 mg at 400 mg in each 5 mL
        double oils = best.oils().stream().mapToDouble(each -> each).sum();
        assertThat(oils).isCloseTo(80.0, within(1e-9)); // 400 mg in 5 mL
        assertThat(best.carrier()).isBetween(best.essence() - 0.95, best.essence() - 0.85); // 0.8 g of oil takes 0.9 mL
        assertThat(best.strength()).isBetween(86.0, 88.0); // 96 % vol in nine tenths of the volume
        double known =
                best.constituents().values().stream().mapToDouble(each -> each).sum();
        assertThat(known).isBetween(50.0, 80.0);
    }

    @Test
    void dropsThatCannotBeSplitAreToldWithWhatToDo() {
        PlanEssence.Found found = planned(example());
        assertThat(found.findings())
                .extracting(Finding::rule)
                .containsExactly("concentrate", "drops-not-whole", "dilution-by-rule");
        assertThat(found.findings().get(1).message()).contains("13.01, 3.48, 2.48");
        assertThat(Objects.requireNonNull(found.preDilution()).how().choice().batches())
                .isEqualTo(1);
        assertThat(Objects.requireNonNull(found.manifold()).drops()).containsExactly(26, 7, 5);
    }

    /** Of the choices that keep the tolerance the first serves nine batches; two are enough. */
    @Test
    void theNoteTellsTheFewestBatchesThatComeOutWhole() {
        PlanEssence.Found found = planned(example());
        assertThat(found.findings())
                .filteredOn(finding -> finding.rule().equals("drops-not-whole"))
                .extracting(Finding::remedy)
                .containsExactly("Make the essence for 2 batches at once and dose it by the measure.");
        assertThat(planned(example().replace("batch: 1 L", "batch: 2 L")).findings())
                .extracting(Finding::rule)
                .doesNotContain("drops-not-whole");
    }

    /** 50 mL want 0.65, 0.17 and 0.12 drops: no whole drops come near, and a dilution of each does. */
    @Test
    void whereNoWholeDropsComeNearADilutionIsTold() {
        String little = example().replace("batch: 1 L", "batch: 50 ml").replace("tolerance:", "batches: 1\ntolerance:");
        PlanEssence.Found found = planned(little);
        assertThat(found.choices()).isEmpty();
        PreDilution diluted = Objects.requireNonNull(found.preDilution()).how();
        assertThat(diluted.choice().toleranceKept()).isTrue();
        assertThat(found.findings())
                .filteredOn(finding -> finding.rule().equals("drops-not-whole"))
                .extracting(Finding::verdict)
                .containsExactly("with a dilution alone");
    }

    @Test
    void partsByVolumeAndByDropsAreTurnedIntoMass() {
        String byDrops = example()
                .replace("by: mass", "by: drops")
                .replace("parts: 10", "parts: 26")
                .replace("parts: 3", "parts: 7")
                .replace("parts: 2,", "parts: 5,");
        assertThat(planned(byDrops).choices().get(0).choice().worstError()).isLessThan(1e-9);
        String byVolume = example().replace("by: mass", "by: volume");
        double lemon = planned(byVolume).asked().oils().get(0).part();
        assertThat(lemon).isLessThan(10.0 / 15.0); // lighter than pepper and laurel
        String unknown = byVolume.replace("oil: laurel", "oil: moon dust");
        assertThat(planned(unknown).findings())
                .filteredOn(finding -> finding.rule().equals("oil-density"))
                .extracting(Finding::severity)
                .containsExactly(Severity.CAUTION, Severity.NOTE, Severity.NOTE);
    }

    @Test
    void aDropThatNobodyWeighedIsEstimatedAndSaysSo() {
        PlanEssence.Found found = planned(example().replace(", drop: 21.5 mg", ""));
        assertThat(found.findings().get(0).rule()).isEqualTo("drop-by-rule");
        assertThat(found.findings().get(0).where()).isEqualTo("laurel");
    }

    /** Poisons by any name, and in German: toxic plants and oils of the tables of what is not for drinking. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "oleander",
                "monkshood",
                "aconite",
                "Eisenhut",
                "lily of the valley",
                "tea tree",
                "wintergreen",
                "lemon fragrance oil"
            })
    void anEssenceThatNobodyIsToDrinkSaysSoFirst(String oil) {
        PlanEssence.Found found = planned(example().replace("oil: laurel", "oil: " + oil));
        assertThat(found.isStopped()).isTrue();
        assertThat(found.findings().get(0).severity()).isEqualTo(Severity.STOP);
        assertThat(found.findings().get(0).where()).isEqualTo(oil);
        assertThat(planned(example()).isStopped()).isFalse();
    }

    @Test
    void anEssenceOfExpressedCitrusTellsOfLightAndMedicines() {
        assertThat(planned(example().replace("oil: lemon", "oil: expressed lime"))
                        .findings())
                .extracting(Finding::rule)
                .contains("light-on-skin", "medicines");
    }

    @Test
    void aDoseThatNoMarkShowsOrNobodyCanRepeatIsTold() {
        PlanEssence.Found found =
                planned(example().replace("dose: 5 ml/L", "dose: 1.3 ml/L").replace("0.1 ml", "1 ml"));
        assertThat(found.findings()).extracting(Finding::rule).contains("dose-on-mark", "dose-too-small");
        assertThat(found.asked().dose()).isEqualTo(1.0);
    }

    @Test
    void aWeakCarrierThatCannotHoldTheOilsIsTold() {
        assertThat(planned(example().replace("carrier: 96 %", "carrier: 50 %")).findings())
                .extracting(Finding::rule)
                .contains("essence-not-clear");
        assertThatThrownBy(() -> planned(example().replace("carrier: 96 %", "carrier: 0 %")))
                .isInstanceOf(Impossible.class);
        assertThatThrownBy(() -> planned(example().replace("dose: 5 ml/L", "dose: 0.2 ml/L")))
                .hasMessageContaining("more than half oil");
    }
}
