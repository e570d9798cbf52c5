package org.stillroom.core.liquid;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;

class CautionsTest {
    private static final Contents SPIRIT = Contents.of(Substance.ETHANOL, 333).with(Substance.WATER, 667);

    private static List<Finding> of(Contents contents) {
        return Liquid.figures(contents, Temperature.TWENTY_CELSIUS).findings();
    }

    private static Finding only(Contents contents) {
        assertThat(of(contents)).hasSize(1);
        return of(contents).get(0);
    }

    @Test
    void aPlainSpiritAndAPlainSyrupNeedNoCaution() {
        assertThat(of(SPIRIT)).isEmpty();
        assertThat(of(Contents.of(Substance.ETHANOL, 100))).isEmpty();
        assertThat(of(Contents.of(Substance.SUCROSE, 30).with(Substance.WATER, 70)))
                .isEmpty();
        assertThat(Liquid.figures(SPIRIT, new Temperature(-18)).findings()).isEmpty();
        assertThat(Liquid.figures(SPIRIT.with(Substance.SUCROSE, 50), new Temperature(0))
                        .findings())
                .isEmpty();
    }

    @Test
    void crystalsWithoutWaterDissolveInNothing() {
        assertThat(only(Contents.of(Substance.SUCROSE, 100)).rule()).isEqualTo("no-water");
        assertThat(of(Contents.of(Substance.SUCROSE, 10).with(Substance.ETHANOL, 100)).stream()
                        .map(Finding::rule))
                .contains("no-water");
    }

    @Test
    void theColdIsSaidWithItsDegrees() {
        Finding cold = Liquid.figures(SPIRIT.with(Substance.SUCROSE, 50), new Temperature(-12.5))
                .findings()
                .get(0);
        assertThat(cold.rule()).isEqualTo("cold-volume");
        assertThat(cold.message()).contains("at −12.5 °C");
        assertThat(cold.limit()).isEqualTo("0 to 40 °C");
    }

    @Test
    void aRuleOfThumbSaysHowMuchItLeavesOpen() {
        Finding thumb = only(SPIRIT.with(Substance.OTHER_SOLIDS, 100));
        assertThat(thumb.rule()).isEqualTo("density-rule-of-thumb");
        assertThat(thumb.where()).isEqualTo("other solids");
        // 62 mL ± 10 % of 1116 mL.
        assertThat(thumb.message()).contains("leaves 0.555 % of the whole volume open");
        assertThat(thumb.howSure()).isEqualTo("its volume is good to about 10 %");
        assertThat(thumb.source()).isEqualTo(Source.RULE_OF_THUMB);
        assertThat(of(SPIRIT.with(Substance.OIL, 0.5))).isEmpty();
        assertThat(of(SPIRIT.with(Substance.MALIC, 20))).isEmpty();
    }

    @Test
    void sugarNearItsLimitMayCrystalliseAndPastItWill() {
        // 33.3 % mass is 40 % vol: 580 g/L, less a fifth 464.
        assertThat(of(SPIRIT.with(Substance.SUCROSE, 500)))
                .noneMatch(f -> f.rule().equals("sugar-crash"));
        Finding may = crash(SPIRIT.with(Substance.SUCROSE, 900));
        assertThat(may.verdict()).isEqualTo("may crystallise");
        assertThat(may.severity()).isEqualTo(Severity.CAUTION);
        assertThat(may.limit()).isEqualTo("580 g/L");
        assertThat(crash(SPIRIT.with(Substance.SUCROSE, 1200)).verdict()).isEqualTo("will likely crystallise");
    }

    private static Finding crash(Contents contents) {
        return of(contents).stream()
                .filter(finding -> finding.rule().equals("sugar-crash"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aFitThatEndedNamesItsEndAndItsSource() {
        Finding ended =
                of(Contents.of(Substance.WATER, 50).with(Substance.MALIC, 50)).get(0);
        assertThat(ended.rule()).isEqualTo("density-fit-ended");
        assertThat(ended.limit()).isEqualTo("40 % mass");
        assertThat(ended.message()).contains("here it is 50 %");
        assertThat(ended.source()).isEqualTo(Source.MALIC_MAKER);
        assertThat(of(Contents.of(Substance.WATER, 50).with(Substance.GLUCOSE, 90))
                        .get(0)
                        .source())
                .isEqualTo(Source.CRC_SOLUTIONS);
    }

    @Test
    void whatFreezesBeyondATableFreezesAtTheFigureOrColder() {
        Finding ended = only(Contents.of(Substance.ETHANOL, 80).with(Substance.WATER, 20));
        assertThat(ended.rule()).isEqualTo("freezing-table-ended");
        assertThat(ended.where()).isEqualTo("ethanol");
        assertThat(ended.message()).contains("freezes at the figure shown or colder");
    }
}
