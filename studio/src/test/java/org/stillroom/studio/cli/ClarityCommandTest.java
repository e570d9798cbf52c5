package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;

/** The clarity command as it is typed. */
class ClarityCommandTest {
    @TempDir
    private Path folder;

    private String recipe(String dose) throws IOException {
        Path file = folder.resolve("recipe.yaml");
        Files.writeString(file, """
                stillroom: 1
                title: Juniper and mountain pine
                target: {volume: 1 L, strength: 30 %, sugar: 180 g/L}
                ingredients:
                  - {name: juniper oil, kind: essential oil}
                  - {name: pine needle tincture, kind: tincture, strength: 60 %}
                lines:
                  - {use: juniper oil, dose: DOSE}
                  - {use: pine needle tincture, dose: 20 ml/L}
                  - {use: spirit 96 %, amount: free}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: make up}
                """.replace("DOSE", dose));
        return file.toString();
    }

    private static double sum(JsonNode probability) {
        return probability.get("clear").doubleValue()
                + probability.get("hazy").doubleValue()
                + probability.get("cloudy").doubleValue();
    }

    @Test
    void aConstituentGetsTheFiguresOfTheModel() {
        Desk.Run run = Desk.ask("clarity --strength 40% --temperature 25C --constituent limonene=1g/L");
        assertThat(run.number("oil_load")).isCloseTo(1.136, within(0.005));
        assertThat(run.number("separated_g_per_l")).isCloseTo(0.1195, within(0.001));
        assertThat(run.json().get("verdict").stringValue()).isEqualTo("hazy");
        assertThat(sum(run.json().get("probability"))).isCloseTo(1.0, within(1e-9));
        assertThat(run.number("clear_from_vol_percent")).isBetween(40.0, 50.0);
        assertThat(run.number("most_oil_g_per_l")).isBetween(0.5, 0.7);
        assertThat(run.json().get("steps").isEmpty()).isTrue();
    }

    @Test
    void anUnknownOilIsCountedAndNamed() {
        JsonNode json =
                Desk.ask("clarity --strength 30% --oil moon~dust=0.5g/L").json();
        assertThat(json.get("estimated_constituents").get(0).stringValue()).isEqualTo("rest that is not known");
        assertThat(json.get("oil_g_per_l").doubleValue()).isCloseTo(0.5, within(1e-12));
        assertThat(json.get("findings").get(0).get("rule").stringValue()).isEqualTo("oil-not-known");
    }

    @Test
    void theExplanationStandsBesideTheStepsOfMixing() {
        JsonNode json =
                Desk.ask("clarity --strength 30% --oil lemon=0.5g/L --explain").json();
        assertThat(json.get("steps").isEmpty()).isTrue();
        assertThat(json.get("steps_of_computation").get(0).get("what").stringValue())
                .isEqualTo("oil load");
    }

    @Test
    void aRecipeIsFollowedStepByStep() throws IOException {
        JsonNode json = Desk.ask("clarity --recipe " + recipe("1 g/L")).json();
        assertThat(json.get("steps").size()).isGreaterThanOrEqualTo(2);
        JsonNode last = json.get("steps").get(json.get("steps").size() - 1);
        assertThat(last.get("oil_load").doubleValue())
                .isCloseTo(json.get("oil_load").doubleValue(), within(1e-9));
        assertThat(json.get("steps").get(0).get("verdict").stringValue()).isEqualTo("clear");
        assertThat(json.get("verdict").stringValue()).isEqualTo("cloudy");
    }

    @Test
    void aPlanSaysHowItsOilsWillLookAndIsQuietWhereTheyAreClear() throws IOException {
        String cloudy = Desk.type("plan " + recipe("1 g/L")).out();
        assertThat(cloudy).contains("it will be cloudy", "other sesquiterpenes", "pine needle tincture");
        assertThat(Desk.ask("plan " + recipe("1 g/L")).out())
                .contains("\"oil-clouding\"", "most in doubt from the solubility of the oils", "\"oil-not-counted\"");
        assertThat(Desk.ask("plan " + recipe("1 mg/L")).out()).doesNotContain("\"oil-clouding\"");
    }

    /** The certificate of a lot says what a recipe can say too; and what was analysed is not in doubt any more. */
    @Test
    void theAnalysisOfTheLotTakesThePlaceOfTheUsualRange() throws IOException {
        Path certificate = folder.resolve("juniper.csv");
        Files.writeString(certificate, "constituent,percent\nalpha-pinene,42\nlimonene,29\nterpinen-4-ol,29\n");
        String recipe = recipe("1 g/L");
        JsonNode usual = Desk.ask("clarity --recipe " + recipe).json();
        JsonNode analysed = Desk.ask("clarity --recipe " + recipe + " --analysis juniper~oil=" + certificate)
                .json();
        Files.writeString(
                Path.of(recipe),
                Files.readString(Path.of(recipe))
                        .replace(
                                "kind: essential oil}",
                                "kind: essential oil, aroma: \"alpha-pinene 42 %; limonene 29 %; terpinen-4-ol 29 %\"}"));
        JsonNode stated = Desk.ask("clarity --recipe " + recipe).json();

        assertThat(analysed.get("oil_load").doubleValue())
                .isCloseTo(stated.get("oil_load").doubleValue(), within(1e-9))
                .isLessThan(0.8 * usual.get("oil_load").doubleValue());
        assertThat(factor(usual, "composition of the oils")).isGreaterThan(1.02);
        assertThat(factor(analysed, "composition of the oils")).isCloseTo(1.0, within(1e-12));
        assertThat(analysed.get("composition_from").get(0).stringValue()).isEqualTo("juniper oil: analysis of the lot");
    }

    /** Less than 84 % counts as its middle and leaves in doubt all from none to the bound. */
    @Test
    void whatAnAnalysisOnlyBoundsIsInDoubtFromNoneToTheBound() throws IOException {
        Path certificate = folder.resolve("juniper.csv");
        String asked = "clarity --recipe " + recipe("1 g/L") + " --analysis juniper~oil=" + certificate;
        Files.writeString(certificate, "alpha-pinene,42\nlimonene,29\nterpinen-4-ol,29\n");
        JsonNode known = Desk.ask(asked).json();
        Files.writeString(certificate, "alpha-pinene,<84\nlimonene,29\nterpinen-4-ol,29\n");
        JsonNode bounded = Desk.ask(asked).json();

        assertThat(bounded.get("oil_load").doubleValue())
                .isCloseTo(known.get("oil_load").doubleValue(), within(1e-9));
        assertThat(factor(known, "composition of the oils")).isCloseTo(1.0, within(1e-12));
        assertThat(factor(bounded, "composition of the oils")).isGreaterThan(1.2);
    }

    /** Ten grams of an oil in a hundred of essence, ten grams of that in a litre: as one gram of the oil. */
    @Test
    void theAnalysisReachesThroughAnEssence() throws IOException {
        Path certificate = folder.resolve("juniper.csv");
        Files.writeString(certificate, "alpha-pinene,42\nlimonene,29\nterpinen-4-ol,29\n");
        Files.writeString(folder.resolve("essence.yaml"), """
                stillroom: 1
                title: Juniper essence
                ingredients:
                  - {name: juniper oil, kind: essential oil}
                lines:
                  - {use: juniper oil, amount: 10 g}
                  - {use: spirit 96 %, amount: 90 g}
                """);
        String recipe = recipe("1 g/L");
        Path through = folder.resolve("through.yaml");
        Files.writeString(
                through,
                Files.readString(Path.of(recipe))
                        .replace(
                                "juniper oil, kind: essential oil",
                                "juniper essence, kind: essence, from: essence.yaml")
                        .replace("use: juniper oil, dose: 1 g/L", "use: juniper essence, dose: 10 g/L"));
        String analysis = " --analysis juniper~oil=" + certificate;
        JsonNode neat = Desk.ask("clarity --recipe " + recipe + analysis).json();
        JsonNode essence = Desk.ask("clarity --recipe " + through + analysis).json();

        assertThat(essence.get("oil_load").doubleValue())
                .isCloseTo(neat.get("oil_load").doubleValue(), within(1e-3));
        assertThat(factor(essence, "composition of the oils")).isCloseTo(1.0, within(1e-12));
    }

    private static double factor(JsonNode json, String from) {
        for (JsonNode each : json.get("doubt_from")) {
            if (each.get("what").stringValue().equals(from)) {
                return each.get("factor").doubleValue();
            }
        }
        throw new AssertionError("no doubt from " + from + " in " + json.get("doubt_from"));
    }

    @Test
    void whatCannotBeForecastIsRefusedWithWhatToDo() {
        assertThat(Desk.type("clarity --strength 30%").err()).contains("there is no oil in it");
        assertThat(Desk.type("clarity --oil lemon=1g/L").err()).contains("how strong");
        assertThat(Desk.type("clarity --strength 90% --sugar 400g/L --oil lemon=1g/L")
                        .err())
                .contains("do not fit into a litre");
        assertThat(Desk.type("clarity --strength 30% --oil lemon=1g/L --recipe x.yaml")
                        .exit())
                .isEqualTo(2);
    }

    @Test
    void theMapIsADrawingThatSaysTheSameInWords() throws IOException {
        String map = Desk.type("clarity --map --recipe " + recipe("1 g/L")).out();
        assertThat(map.strip()).startsWith("<svg ").endsWith("</svg>");
        assertThat(map).contains("it is cloudy; clear from", "stroke-dasharray").doesNotContain("NaN");
    }

    @Test
    void inTheGlassItMayBeIceOrADrink() {
        JsonNode ice = Desk.ask("clarity --strength 40% --sugar 100g/L --oil lemon=0.3g/L --with ice")
                .json()
                .get("glass");
        assertThat(ice.get("with").stringValue()).isEqualTo("ice");
        assertThat(ice.get("coldest").get("temperature_c").doubleValue()).isBetween(-20.0, -5.0);
        JsonNode wine = Desk.ask("clarity --strength 40% --oil lemon=0.3g/L --with 12%,~5g/L --glass 8C")
                .json()
                .get("glass");
        assertThat(wine.get("with_strength_vol_percent").doubleValue()).isCloseTo(12, within(1e-12));
        assertThat(wine.get("with_sugar_g_per_l").doubleValue()).isCloseTo(5, within(1e-12));
        assertThat(wine.get("temperature_c").doubleValue()).isCloseTo(8, within(1e-12));
        assertThat(wine.get("coldest").isNull()).isTrue();
        assertThat(Desk.type("clarity --strength 40% --oil lemon=0.3g/L --with ice")
                        .out())
                .contains("In the glass with ice", "as cold as ice makes it", "parts to one (melted)");
        assertThat(Desk.type("clarity --strength 40% --oil lemon=0.3g/L --with moonshine")
                        .err())
                .contains("no drink that is known here", "tonic water");
        assertThat(Desk.type("clarity --strength 40% --oil lemon=0.3g/L --with 90%,~700g/L")
                        .err())
                .contains("does not fit into a litre");
        assertThat(Desk.type("clarity --strength 40% --oil lemon=0.3g/L --glass -40C")
                        .exit())
                .isEqualTo(2);
    }

    @Test
    void theRemediesAreInWords() {
        String page = Desk.type("clarity --strength 45% --oil anise=2g/L").out();
        assertThat(page).contains("will be clear", "louche from", "Anethole melts near 21 °C");
        String haze = Desk.type("clarity --strength 30% --sugar 180g/L --oil orange=0.6g/L")
                .out();
        assertThat(haze).contains("clear from a strength of", "without terpene hydrocarbons", "days at the earliest");
    }
}
