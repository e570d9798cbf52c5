package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Temperature;
import tools.jackson.databind.JsonNode;

/** The plan command as it is typed, on files as makers write them. */
class PlanCommandTest {
    private static final String ROOT = "../examples/";

    @TempDir
    private Path folder;

    private String recipe(String... lines) throws IOException {
        Path file = folder.resolve("recipe.yaml");
        Files.writeString(file, "stillroom: 1\ntitle: Test\n" + String.join("\n", lines) + "\n");
        return file.toString();
    }

    private static JsonNode line(JsonNode plan, String name) {
        for (JsonNode line : plan.get("lines")) {
            if (line.get("name").stringValue().equals(name)) {
                return line;
            }
        }
        throw new AssertionError("no line " + name);
    }

    private static double figure(JsonNode plan, String key) {
        return plan.get("result").get(key).doubleValue();
    }

    /** Own arithmetic of the task with the same formulas, not a published value; each amount within 0.3 %. */
    @Test
    void theHoneyLiqueurOfTheWorkedStory() throws IOException {
        JsonNode plan = Desk.ask("plan "
                        + recipe(
                                "target: {volume: 1.5 L, strength: 32 %, sugar: 180 g/L}",
                                "ingredients:",
                                "  - {name: strong spirit, kind: spirit, strength: 70 %}",
                                "lines:",
                                "  - {use: honey, amount: free}",
                                "  - {use: strong spirit, amount: free}",
                                "  - {use: glycerol, dose: 8 g/L}",
                                "  - {use: water, amount: free}"))
                .json();
        Percentage story = Percentage.withPercentage(0.3);
        assertThat(line(plan, "honey").get("mass_g").doubleValue()).isCloseTo(360, story);
        assertThat(line(plan, "strong spirit").get("volume_ml").doubleValue()).isCloseTo(686, story);
        assertThat(line(plan, "strong spirit").get("mass_g").doubleValue()).isCloseTo(607, story);
        assertThat(line(plan, "glycerol").get("mass_g").doubleValue()).isCloseTo(12, story);
        assertThat(line(plan, "glycerol").get("dose").get("mg_per_l").doubleValue())
                .isCloseTo(8000, within(1e-6));
        assertThat(line(plan, "honey").get("dose").isNull()).isTrue();
        assertThat(line(plan, "water").get("mass_g").doubleValue()).isCloseTo(576, story);
        assertThat(figure(plan, "density_kg_m3")).isCloseTo(1037, within(0.6));
        assertThat(figure(plan, "strength_vol_percent")).isCloseTo(32, within(1e-7));
        assertThat(figure(plan, "sugar_g_per_l")).isCloseTo(180, within(1e-6));
    }

    /** 1.17 drops of juniper and 1.75 of coriander are wanted in 700 mL; whole ones are 1 and 2. */
    @Test
    void aDoseIsToldAsItIsMeasuredBesideWhatWasAskedFor() throws IOException {
        String file = recipe(
                "target: {volume: 700 ml, strength: 40 %}",
                "measures:",
                "  - {name: dropper, kind: dropper}",
                "ingredients:",
                "  - {name: juniper oil, kind: essential oil, drop: 0.025 ml}",
                "lines:",
                "  - {use: spirit 96 %, amount: free}",
                "  - {use: juniper oil, dose: 1.67 drops/L, with: dropper}",
                "  - {use: water, amount: free}");
        JsonNode juniper = line(Desk.ask("plan " + file).json(), "juniper oil");
        assertThat(juniper.get("dose").get("drops_per_l").doubleValue()).isCloseTo(1.67, within(1e-9));
        assertThat(juniper.get("measured").get("dose").get("drops_per_l").doubleValue())
                .isCloseTo(1.0 / 0.7, within(1e-9));
        assertThat(Desk.type("plan " + file).out())
                .containsPattern("juniper oil, as measured +1\\.43")
                .containsPattern("juniper oil, asked for +1\\.67");
    }

    /** Own arithmetic of the task with the same formulas, not a published value. */
    @Test
    void aFollowerWithOneBottleAndCups() throws IOException {
        JsonNode plan = Desk.ask("plan "
                        + recipe(
                                "target: {volume: 1 L}",
                                "lines:",
                                "  - {use: vodka 40 %, amount: 750 ml}",
                                "  - {use: sugar, amount: 1 cup}",
                                "  - {use: water, amount: make up}"))
                .json();
        assertThat(figure(plan, "strength_vol_percent")).isCloseTo(30, within(1e-7));
        assertThat(figure(plan, "sugar_g_per_l")).isCloseTo(200, Percentage.withPercentage(0.3));
        assertThat(line(plan, "sugar").get("volume_ml").isNull()).isTrue();
        JsonNode sugar = plan.get("spread").get("sugar_g_per_l");
        assertThat(sugar.get("low").doubleValue()).isLessThan(192);
        assertThat(sugar.get("high").doubleValue()).isGreaterThan(208);
    }

    @Test
    void whatCannotBeReachedEndsWithOneAndSaysWhatWould() throws IOException {
        Desk.Run run = Desk.type("plan "
                + recipe(
                        "target: {volume: 1 L, strength: 37 %, sugar: 210 g/L}",
                        "lines:",
                        "  - {use: vodka 40 %, amount: free}",
                        "  - {use: sugar, amount: free}",
                        "  - {use: water, amount: free}")
                + " --json");
        assertThat(run.exit()).isEqualTo(1);
        JsonNode plan = run.json();
        assertThat(plan.get("reached").booleanValue()).isFalse();
        JsonNode finding = plan.get("findings").get(0);
        assertThat(finding.get("severity").stringValue()).isEqualTo("stop");
        assertThat(finding.get("verdict").stringValue()).isEqualTo("cannot be reached");
        assertThat(finding.get("message").stringValue()).contains("the most you reach is 34.7 % vol");
        assertThat(finding.get("remedy").stringValue()).contains("use vodka 40 % of at least 42.6 % vol");
        assertThat(figure(plan, "sugar_g_per_l")).isCloseTo(210, within(1e-6));
    }

    @Test
    void anotherSizeScalesEverythingButWhatIsPerLitre() throws IOException {
        String recipe = recipe(
                "target: {volume: 2 L, strength: 26 %, sugar: 170 g/L, acidity: 5 g/L}",
                "lines:",
                "  - {use: honey, amount: 120 g}",
                "  - {use: glycerol, dose: 4 g/L}",
                "  - {use: spirit 96 %, amount: free}",
                "  - {use: sugar, amount: free}",
                "  - {use: malic acid, amount: free}",
                "  - {use: water, amount: free}");
        JsonNode asWritten = Desk.ask("plan " + recipe).json();
        JsonNode thrice = Desk.ask("plan " + recipe + " --makes 6L").json();
        assertThat(figure(thrice, "volume_20c_ml")).isCloseTo(6000, within(1e-6));
        for (String key : new String[] {"strength_vol_percent", "sugar_g_per_l", "acidity_as_citric_g_per_l"}) {
            assertThat(figure(thrice, key)).as(key).isCloseTo(figure(asWritten, key), within(1e-6));
        }
        for (JsonNode line : asWritten.get("lines")) {
            String name = line.get("name").stringValue();
            assertThat(line(thrice, name).get("mass_g").doubleValue())
                    .as(name)
                    .isCloseTo(3 * line.get("mass_g").doubleValue(), within(1e-5));
        }
    }

    @Test
    void stepsAndStagesAndShoppingAreToldBothWays() {
        Desk.Run run = Desk.type("plan " + ROOT
                + "sea-buckthorn-by-the-dozen.yaml --shopping --what-if-spirit 50%,96% --units us --explain");
        assertThat(run.exit()).isZero();
        assertThat(run.out())
                .contains("fl oz at 20 °C", "Shopping list", "What if the spirit is another", "How this was computed")
                .contains("OIML R 22");
        JsonNode staged = Desk.ask("plan " + ROOT + "quince-and-bay.yaml").json();
        assertThat(staged.get("stages").size()).isEqualTo(2);
        assertThat(staged.get("stages").get(0).get("yield_ml").doubleValue()).isCloseTo(100, within(0.01));
    }

    /** 40 mL of a macerate of 1:8 in a litre carry 5 g of plant. */
    @Test
    void thePlantThatAMacerateCarriesIsToldPerLitre() throws IOException {
        String file = recipe(
                "target: {volume: 2 L, strength: 30 %}",
                "ingredients:",
                "  - {name: garden bitter, kind: macerate, strength: 58 %, plant: dried yarrow, ratio: 1:8}",
                "lines:",
                "  - {use: garden bitter, dose: 40 ml/L}",
                "  - {use: spirit 96 %, amount: free}",
                "  - {use: water, amount: free}");
        JsonNode plan = Desk.ask("plan " + file).json();
        JsonNode plant = line(plan, "garden bitter").get("plant");
        assertThat(plant.get("name").stringValue()).isEqualTo("dried yarrow");
        assertThat(plant.get("ratio").stringValue()).isEqualTo("1:8");
        assertThat(plant.get("g_per_l").doubleValue()).isCloseTo(5.0, within(1e-9));
        assertThat(line(plan, "water").get("plant").isNull()).isTrue();
        assertThat(Desk.type("plan " + file).out()).containsPattern("garden bitter +dried yarrow +1:8 +5\\.00\n");
    }

    @Test
    void aDoseThatIsHardlyMeantIsAskedBeforeAllFiguresAndOnceOnly() throws IOException {
        String[] lines = {
            "target: {volume: 1 L, strength: 60 %}",
            "ingredients:",
            "  - {name: neroli oil, kind: essential oil}",
            "lines:",
            "  - {use: neroli oil, dose: 0.4 g/L}",
            "  - {use: spirit 96 %, amount: free}",
            "  - {use: water, amount: free}"
        };
        String out = Desk.type("plan " + recipe(lines)).out();
        assertThat(out).startsWith("Is this meant?").containsOnlyOnce("write “meant:");
        assertThat(out.indexOf("linalool")).isBetween(0, out.indexOf("in order of mixing"));
        lines[4] = "  - {use: neroli oil, dose: 0.4 g/L, meant: 0.40 g/L of neroli oil}";
        assertThat(Desk.type("plan " + recipe(lines)).out()).doesNotContain("Is this meant?");
    }

    @Test
    void aFileThatIsNotThereAndOneThatIsNoRecipeAreToldApart() throws IOException {
        assertThat(Desk.type("plan nowhere.yaml").exit()).isEqualTo(3);
        Desk.Run run =
                Desk.type("plan " + recipe("target: {volume: 1 L}", "lines:", "  - {use: moonlight, amount: 3}"));
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("line 5").contains("moonlight");
        Desk.Run size = Desk.type("plan " + ROOT + "quince-and-bay.yaml --makes 3 --units royal");
        assertThat(size.exit()).isEqualTo(2);
        assertThat(size.err()).contains("--makes").contains("--units").contains("Write metric or us.");
        assertThat(Desk.type("plan " + ROOT + "rhubarb-as-it-came.yaml --makes 3L")
                        .err())
                .contains("takes all of what there is");
    }

    @Test
    void fourSolutesWithoutSucroseAgreeInTheCoreAtTheDeskAndInThePlan() throws IOException {
        JsonNode desk = Desk.ask(
                        "liquid --ethanol 300g --water 500g --glucose 60g --fructose 90g --glycerol 20g --citric 5g"
                                + " --temperature 5C")
                .json();
        JsonNode plan = Desk.ask("plan "
                        + recipe(
                                "room: 5 C",
                                "ingredients:",
                                "  - {name: strong spirit, kind: spirit, strength: 60 % mass}",
                                "lines:",
                                "  - {use: strong spirit, amount: 500 g}",
                                "  - {use: water, amount: 300 g}",
                                "  - {use: glucose, amount: 60 g}",
                                "  - {use: fructose, amount: 90 g}",
                                "  - {use: glycerol, amount: 20 g}",
                                "  - {use: citric acid, amount: 5 g}"))
                .json();
        for (String key : new String[] {
            "volume_20c_ml", "strength_vol_percent", "sugar_g_per_l", "acidity_as_citric_g_per_l", "refractive_index"
        }) {
            assertThat(figure(plan, key)).as(key).isCloseTo(desk.get(key).doubleValue(), within(1e-7));
        }
        double[] grams = Contents.of(Substance.ETHANOL, 300)
                .with(Substance.WATER, 500)
                .with(Substance.GLUCOSE, 60)
                .with(Substance.FRUCTOSE, 90)
                .with(Substance.GLYCEROL, 20)
                .with(Substance.CITRIC, 5)
                .toGrams();
        double core = VolumeModel.at(new Temperature(5)).millilitres(grams);
        assertThat(desk.get("volume_ml").doubleValue()).isCloseTo(core, within(1e-9));
        assertThat(core).isLessThan(desk.get("volume_20c_ml").doubleValue());
    }
}
