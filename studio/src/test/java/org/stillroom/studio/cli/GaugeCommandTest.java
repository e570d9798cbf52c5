package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** Gauging, the residue, correcting and the advice on readings as they are typed. */
class GaugeCommandTest {
    @TempDir
    private Path folder;

    private Path recipe() throws IOException {
        Path file = folder.resolve("recipe.yaml");
        Files.writeString(file, """
                stillroom: 1
                title: Rowan and oat straw
                target: {volume: 2 L, strength: 28 %, sugar: 180 g/L}
                ingredients:
                  - {name: neutral spirit, kind: spirit, strength: 96 %, tolerance: 0.3 %}
                lines:
                  - {use: neutral spirit, amount: free}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: make up}
                """);
        return file;
    }

    private static void assertSpan(JsonNode span) {
        assertThat(span.get("low").doubleValue()).isLessThan(span.get("value").doubleValue());
        assertThat(span.get("high").doubleValue())
                .isGreaterThan(span.get("value").doubleValue());
    }

    @Test
    void aDensityAndARefractometerTellStrengthAndSugar() {
        JsonNode json = Desk.ask("gauge --density 1.0423g/ml --temperature 22C --refractometer 31.5Bx")
                .json();
        assertSpan(json.get("strength_vol_percent"));
        assertSpan(json.get("sugar_g_per_l"));
        assertThat(json.get("readings").size()).isEqualTo(2);
        assertThat(json.get("readings").get(0).get("pull_sigma").isNull()).isTrue();
    }

    @Test
    void volumeMassAndWhatWasPouredMakeItSurer() throws IOException {
        String readings =
                "gauge --density 1.0295g/ml --temperature 20C --refractometer 25.9Bx --compensated --volume 1.99L"
                        + " --mass 2.05kg";
        JsonNode alone = Desk.ask(readings).json();
        JsonNode poured = Desk.ask(readings + " --poured " + recipe()).json();
        assertSpan(poured.get("volume_20c_ml"));
        assertThat(poured.get("readings").size()).isEqualTo(5);
        assertThat(poured.get("readings").get(4).get("reading").asString()).isEqualTo("what was poured");
        assertThat(poured.get("readings").get(0).get("pull_sigma").isNumber()).isTrue();
        assertThat(poured.get("doubt").get("strength_vol_percent").doubleValue())
                .isLessThan(0.5 * alone.get("doubt").get("strength_vol_percent").doubleValue());
        assertThat(poured.get("strength_vol_percent").get("value").doubleValue())
                .isCloseTo(28, within(0.5));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "SG~1.0316",
                "7.9Bx",
                "7.9~Plato",
                "4.4~Baumé",
            })
    void hydrometersOfEveryScaleAreRead(String shown) {
        JsonNode json =
                Desk.ask("gauge --refractometer 25.9Bx --hydrometer " + shown).json();
        assertThat(json.get("strength_vol_percent").get("value").doubleValue()).isBetween(25.0, 31.0);
    }

    @Test
    void aReadingMayHaveATemperatureAndAnErrorOfItsOwn() {
        String line = "gauge --density 1.0295g/ml --refractometer 25.9Bx";
        JsonNode usual = Desk.ask(line).json();
        JsonNode warm = Desk.ask(line + "@30C").json();
        JsonNode finer = Desk.ask(line + " --within refractometer=0.05 --within density=0.1")
                .json();
        assertThat(warm.get("strength_vol_percent").get("value").doubleValue())
                .isNotCloseTo(usual.get("strength_vol_percent").get("value").doubleValue(), within(0.3));
        assertThat(finer.get("doubt").get("sugar_g_per_l").doubleValue())
                .isLessThan(usual.get("doubt").get("sugar_g_per_l").doubleValue());
    }

    @Test
    void aWeighedFlaskIsADensityPutRightForTheAir() {
        JsonNode json = Desk.ask("gauge --flask 50ml --flask-weight 51.42g --sugar 180g/L")
                .json();
        assertThat(json.get("readings").get(0).get("value").doubleValue()).isCloseTo(1029.4, within(0.1));
    }

    @Test
    void oneReadingAloneIsRefusedWithWhatToAdd() {
        Desk.Run run = Desk.type("gauge --density 1.0423g/ml");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("how strong and how sweet").contains("refractometer");
    }

    @Test
    void everythingWrongComesBackTogether() {
        Desk.Run run = Desk.type("gauge --density heavy --hydrometer 1.045parsec --flask 50ml --within density=0");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("--density", "--hydrometer", "--flask-weight");
    }

    @Test
    void theResidueTellsSugarAndStrength() {
        JsonNode json = Desk.ask("residue --density-before 1.0423g/ml --density-residue 1.0671g/ml")
                .json();
        assertThat(json.get("sugar_g_per_l").doubleValue()).isCloseTo(179, within(2.0));
        assertThat(json.get("strength_vol_percent").doubleValue()).isBetween(15.0, 25.0);
    }

    @Test
    void aCorrectionNamesWhatToAddAndWhatComesOfIt() {
        JsonNode json = Desk.ask(
                        "correct --volume 1.9L --strength 27.1% --sugar 165g/L --to-strength 28% --to-sugar 180g/L"
                                + " --with 96%")
                .json();
        assertThat(json.get("add").size()).isEqualTo(2);
        assertThat(json.get("result").get("strength_vol_percent").doubleValue()).isCloseTo(28, within(1e-9));
        assertThat(json.get("result").get("sugar_g_per_l").doubleValue()).isCloseTo(180, within(1e-8));
        assertThat(json.get("ways").size()).isEqualTo(3);
        assertThat(json.get("good_enough").booleanValue()).isFalse();
    }

    @Test
    void whatLiesWithinItsDoubtIsLeftAlone() {
        JsonNode json = Desk.ask("correct --volume 1.9L --strength 27.8% --sugar 178g/L --strength-within 0.4%"
                        + " --sugar-within 5g/L --to-strength 28% --to-sugar 180g/L")
                .json();
        assertThat(json.get("good_enough").booleanValue()).isTrue();
    }

    @Test
    void whatCannotBeReachedEndsSo() {
        Desk.Run run = Desk.type("correct --volume 1.9L --strength 27.1% --to-strength 28% --with 20%=100ml");
        assertThat(run.exit()).isEqualTo(1);
        assertThat(run.out()).contains("nearest");
    }

    @Test
    void adviceIsGivenBeforeAnythingIsMeasured() {
        JsonNode json = Desk.ask("readings --strength 27% --sugar 165g/L --volume 700ml")
                .json();
        assertThat(json.get("choices").get(0).get("sample_ml").doubleValue()).isLessThanOrEqualTo(70);
        assertThat(json.get("hidden_vol_percent").doubleValue()).isGreaterThan(20);
        assertThat(Desk.type("readings --strength 27% --sugar 165g/L --have hydrometer")
                        .out())
                .contains("Nothing of this tells strength from sugar");
    }
}
