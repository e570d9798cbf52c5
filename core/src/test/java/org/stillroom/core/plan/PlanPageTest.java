package org.stillroom.core.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.reference.Finding;

/** The worked examples of docs/how-it-works/plan.md, digit for digit as they stand there. */
class PlanPageTest {
    private static final Offset<Double> TWO_DIGITS = within(0.005);
    private static final Offset<Double> ONE_DIGIT = within(0.05);

    private static Essentials result(Plan plan) {
        return Essentials.of(plan.liquid().toGrams());
    }

    private static double grams(Plan plan, int line) {
        return plan.lines().get(line).grams();
    }

    private static Plan bottle(String sugar) {
        return new Kitchen()
                .volume("1 L")
                .amount("vodka 40 %", "750 ml")
                .amount("sugar", sugar)
                .makeUp("water")
                .plan();
    }

    private static Plan stronger(String sweetener) {
        return new Kitchen()
                .volume("1 L")
                .strength("38 %")
                .sugar("200 g/L")
                .free("vodka 40 %", sweetener, "water")
                .plan();
    }

    @Test
    void theHoneyLiqueur() {
        Plan plan = new Kitchen()
                .volume("1.5 L")
                .strength("32 %")
                .sugar("180 g/L")
                .free("honey", "spirit 70 %")
                .dose("glycerol", "8 g/L")
                .free("water")
                .plan();
        assertThat(grams(plan, 0)).isCloseTo(360.00, TWO_DIGITS);
        assertThat(grams(plan, 1)).isCloseTo(607.24, TWO_DIGITS);
        assertThat(plan.lines().get(1).millilitres().orElseThrow()).isCloseTo(685.71, TWO_DIGITS);
        assertThat(grams(plan, 2)).isCloseTo(12.00, TWO_DIGITS);
        assertThat(grams(plan, 3)).isCloseTo(575.65, TWO_DIGITS);
        assertThat(result(plan).density()).isCloseTo(1036.6, ONE_DIGIT);
        assertThat(result(plan).millilitres()).isCloseTo(1500, within(1.5e-9));
        assertThat(result(plan).strength()).isCloseTo(32, within(3.2e-11));
        assertThat(result(plan).sugar()).isCloseTo(180, within(1.8e-10));
    }

    @Test
    void oneBottleAndACup() {
        Plan cup = bottle("1 cup");
        assertThat(result(cup).strength()).isCloseTo(30.00, TWO_DIGITS);
        assertThat(result(cup).sugar()).isCloseTo(199.9, ONE_DIGIT);
        assertThat(grams(cup, 1)).isCloseTo(199.9, ONE_DIGIT);
        assertThat(grams(cup, 2)).isCloseTo(127.2, ONE_DIGIT);
        for (double sugar : new double[] {190, 210}) {
            Plan other = bottle(sugar + " g");
            assertThat(result(other).strength()).isCloseTo(30.00, TWO_DIGITS);
            assertThat(result(other).sugar()).isCloseTo(sugar, ONE_DIGIT);
            assertThat(Math.abs(grams(other, 2) - grams(cup, 2))).isCloseTo(6, within(0.5));
        }
    }

    @Test
    void itsCeiling() throws IOException {
        assertThat(result(stronger("sugar")).strength()).isCloseTo(35.04, TWO_DIGITS);
        assertThat(result(stronger("simple syrup 2:1")).strength()).isCloseTo(31.08, TWO_DIGITS);
        Finding why = stronger("sugar").findings().get(0);
        String page = Files.readString(Path.of("..", "docs", "how-it-works", "plan.md"));
        assertThat(page.replace("\n> ", " ")).contains(why.message() + " " + why.remedy());
    }

    @Test
    void boundsAreRoundedPastTheEdge() {
        assertThat(stronger("simple syrup 2:1").findings().get(0).message())
                .contains("the most you reach is 31.0 % vol");
        assertThat(stronger("sugar").findings().get(0).remedy()).contains("of at least 43.4 % vol");
    }
}
