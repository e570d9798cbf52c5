package org.stillroom.studio.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.stillroom.studio.store.Calibration;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.InstrumentSheet;
import org.stillroom.studio.store.Store;
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
        assertThat(json.has("acidity_as_citric_g_per_l")).isFalse(); // nothing tells of it
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

    private static double read(String line, int which) {
        return Desk.ask(line).json().get("readings").get(which).get("value").doubleValue();
    }

    /** 145 / (145 − 6.24) is 1.04497: what Baumé, always of 60 °F, and SG 60/60 say of one liquid comes to the same. */
    @Test
    void theTemperatureThatAHydrometerIsMarkedForCountsOnEveryScale() {
        String line = "gauge --refractometer 25.9Bx --temperature 25C --hydrometer ";
        double usual = read(line + "SG~1.0316", 0);
        double pair = read(line + "SG~1.0316~60/60", 0);
        assertThat(pair).isGreaterThan(usual + 0.0007).isLessThan(usual + 0.001);
        assertThat(read(line + "SG~1.0316 --reference 60F", 0)).isEqualTo(pair);
        assertThat(read(line + "SG~1.0316 --reference 15C", 0)).isGreaterThan(pair);
        assertThat(read(line + "7.9Bx --reference 60F", 0)).isGreaterThan(read(line + "7.9Bx", 0) + 0.1);
        assertThat(read(line + "SG~1.0316 --glass borosilicate", 0)).isBetween(usual + 5e-5, usual + 1e-4);
        Desk.Run told = Desk.type(line + "SG~1.0316~60/60");
        assertThat(told.out()).contains("marked for 15.6", "1.0316", "SG 20/20");
    }

    @Test
    void whatIsSaidOfAHydrometerThatIsNotSoOrNotThereIsRefused() {
        String line = "gauge --density 1.0295g/ml --refractometer 25.9Bx";
        assertThat(Desk.type(line + " --reference 60F").err()).contains("--reference", "only a hydrometer");
        assertThat(Desk.type(line + " --glass borosilicate").err()).contains("--glass", "only a hydrometer");
        assertThat(Desk.type(line + " --hydrometer 4.4~Baumé --reference 20C").err())
                .contains("60 °F");
        assertThat(Desk.type(line + " --hydrometer SG~1.03~60/60 --reference 20C")
                        .err())
                .contains("marked for 60 °F");
        assertThat(Desk.type(line + " --hydrometer SG~1.03 --glass lead").err()).contains("lead", "borosilicate");
    }

    @Test
    void aRefractometerThatShowsANumberNearOneIsAskedForItsScale() {
        String line = "gauge --density 1.0423g/ml --refractometer ";
        Desk.Run bare = Desk.type(line + "1.3812");
        assertThat(bare.exit()).isEqualTo(2);
        assertThat(bare.err()).contains("refractive index or °Brix", "n 1.3812", "1.3812Bx");
        assertThat(read(line + "n~1.3812", 1)).isEqualTo(1.3812);
        assertThat(read(line + "31.5", 1)).isEqualTo(31.5);
    }

    @Test
    void theAcidityThatItComesToIsSaid() {
        Desk.Run run = Desk.type("correct --volume 1.9L --strength 27.1% --sugar 165g/L --to-acidity 5g/L");
        assertThat(run.out())
                .contains("164.5 g/L of sugar and 5.00 g/L of acid.", "The batch is taken to hold no acid at all.");
        assertThat(Desk.type("correct --volume 1.9L --strength 27.1% --acidity 2g/L --to-acidity 5g/L")
                        .out())
                .doesNotContain("no acid at all");
    }

    @Test
    void everyReadingMayBeTakenAgain() {
        JsonNode json = Desk.ask("gauge --flask 50ml --flask-weight 51.42g --flask-weight 51.44g@21C --sugar 180g/L"
                        + " --volume 1.9L --volume 1.91L --mass 1.96kg --mass 1.97kg")
                .json();
        assertThat(json.get("readings")).hasSize(7);
    }

    @Test
    void whatWasPouredMayHaveBeenOfAnotherSize() throws IOException {
        String line = "gauge --poured " + recipe() + " --density 1.0295g/ml --volume 1L";
        JsonNode asWritten = Desk.ask(line).json();
        assertThat(Math.abs(asWritten.at("/readings/1/pull_sigma").doubleValue()))
                .isGreaterThan(10.0);
        JsonNode made = Desk.ask(line + " --makes 1L").json();
        assertThat(Math.abs(made.at("/readings/1/pull_sigma").doubleValue())).isLessThan(2.0);
        assertThat(made.at("/volume_20c_ml/value").doubleValue()).isCloseTo(1000.0, within(10.0));
        assertThat(Desk.type("gauge --density 1.0295g/ml --makes 1L").err()).contains("--makes", "--poured");
    }

    @Test
    void aWeighedFlaskIsADensityPutRightForTheAir() {
        JsonNode json = Desk.ask("gauge --flask 50ml --flask-weight 51.42g --sugar 180g/L")
                .json();
        assertThat(json.get("readings").get(0).get("value").doubleValue()).isCloseTo(1029.4, within(0.1));
    }

    @Test
    void aFlaskMayBeOffInMillilitresAndTheScaleInGrams() {
        String line = "gauge --flask 50ml --flask-weight 51.42g --sugar 180g/L";
        double usual = doubtOfStrength(line);
        assertThat(doubtOfStrength(line + " --within flask=0.5")).isGreaterThan(2.0 * usual);
        assertThat(doubtOfStrength(line + " --within flask=0.01 --within flask-weight=0.005"))
                .isLessThan(usual);
        JsonNode smaller = Desk.ask(line + " --offset flask=0.1").json();
        assertThat(smaller.get("readings").get(0).get("value").doubleValue()).isCloseTo(1031.5, within(0.1));
    }

    private static double doubtOfStrength(String line) {
        return Desk.ask(line).json().get("doubt").get("strength_vol_percent").doubleValue();
    }

    @Test
    void whatAnInstrumentShowsTooMuchIsTakenOffOnItsOwnScaleAlone() {
        String line = "gauge --hydrometer SG~1.0316 --refractometer 25.9Bx";
        JsonNode off = Desk.ask(line + " --offset hydrometer=0.002").json();
        assertThat(off.get("readings").get(0).get("value").doubleValue()).isCloseTo(1.0296, within(1e-9));
        assertThat(off.get("findings").toString()).contains("0.002", "too much, which is put right");
        JsonNode other = Desk.ask(line + " --offset hydrometer=0.5~Bx").json();
        assertThat(other.get("readings").get(0).get("value").doubleValue()).isCloseTo(1.0316, within(1e-9));
        assertThat(other.get("findings").toString()).doesNotContain("put right");
    }

    @Test
    void aThermometersOffsetMovesOnlyTemperaturesThatWereTyped() {
        String line = "gauge --density 1.0295g/ml --refractometer 25.9Bx";
        double untyped = strength(line);
        assertThat(strength(line + " --offset temperature=4")).isEqualTo(untyped);
        assertThat(strength(line + " --temperature 24C --offset temperature=4")).isCloseTo(untyped, within(1e-9));
        assertThat(strength("gauge --density 1.0295g/ml@24C --refractometer 25.9Bx@24C --offset temperature=4"))
                .isCloseTo(untyped, within(1e-9));
        assertThat(strength(line + " --temperature 24C")).isNotCloseTo(untyped, within(0.05));
    }

    private static double strength(String line) {
        return Desk.ask(line).json().get("strength_vol_percent").get("value").doubleValue();
    }

    @Test
    void aThermometerHasADoubtThatAllReadingsShare() {
        String line = "gauge --density 1.0295g/ml --refractometer 25.9Bx --residue 1.0671g/ml --temperature 24C";
        JsonNode usual = Desk.ask(line).json();
        assertThat(usual.at("/thermometer/within_c").doubleValue()).isEqualTo(0.5);
        assertThat(usual.at("/thermometer/sugar_doubt_g_per_l").doubleValue()).isPositive();
        JsonNode bad = Desk.ask(line + " --within temperature=±3C").json();
        assertThat(bad.at("/doubt/sugar_g_per_l").doubleValue())
                .isGreaterThan(usual.at("/doubt/sugar_g_per_l").doubleValue());
        JsonNode american = Desk.ask(line + " --within temperature=5.4F").json();
        assertThat(american.at("/thermometer/within_c").doubleValue()).isCloseTo(3.0, within(1e-12));
        assertThat(Desk.type(line).out())
                .contains("How sure the thermometer is")
                .containsPattern("right\\s+within\\s+±\\s+0\\.5\\s+°C");
        assertThat(Desk.type(line + " --within temperature=0").err()).contains("no instrument is exact");
        assertThat(Desk.type(line + " --within temperature=30C").err()).contains("--within", "tells nothing");
        assertThat(Desk.type(line + " --within temperature=1Bx").err()).contains("--within", "no unit of temperature");
    }

    @Test
    void aCalibratedThermometerOfTheShelfBringsItsOwnDoubt() {
        Path data = folder.resolve("warm");
        try (Store store = Store.open(new DataFolder(data))) {
            store.instruments().add(new InstrumentSheet("Probe", "thermometer", Map.of("marks", "0.1"), null), "a");
            store.instruments().add(new InstrumentSheet("Wall", "thermometer", Map.of("tolerance", "1.5"), null), "c");
        }
        Desk.ask("calibrate --data " + data + " --keep probe --thermometer 0.3C --thermometer 0.3C");
        String line = "gauge --density 1.0295g/ml --refractometer 25.9Bx --temperature 24C --data " + data;
        JsonNode probe = Desk.ask(line + " --instrument probe").json();
        assertThat(probe.at("/thermometer/within_c").doubleValue()).isBetween(0.1, 0.2);
        assertThat(probe.get("findings").toString()).contains("0.3", "too much, which is put right");
        assertThat(Desk.ask(line + " --instrument wall")
                        .json()
                        .at("/thermometer/within_c")
                        .doubleValue())
                .isEqualTo(1.5);
    }

    @Test
    void anErrorOfNoReadingIsAsked() {
        Desk.Run run = Desk.type("gauge --density 1.0295g/ml --refractometer 25.9Bx --within hydrometr=0.1");
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.err()).contains("--within", "hydrometr=0.1", "names no reading");
    }

    @Test
    void instrumentsAreCalibratedByWater() {
        Desk.Run flask = Desk.ask("calibrate --flask 50ml --empty 31.2g --full 81.0g --full 80.9g --temperature 21C");
        assertThat(flask.number("flask_ml")).isCloseTo(49.90, within(0.02)); // 49.75 g · 1.0031 mL/g
        assertThat(flask.number("offset")).isCloseTo(50.0 - flask.number("flask_ml"), within(1e-9));
        Desk.Run hydrometer = Desk.ask("calibrate --hydrometer SG~1.002 --temperature 20C --marks 0.002");
        assertThat(hydrometer.number("offset")).isCloseTo(0.002, within(1e-9));
        assertThat(hydrometer.number("within")).isCloseTo(0.001 * Math.sqrt(2), within(1e-4));
        assertThat(Desk.ask("calibrate --refractometer 10.4Bx --in 10Bx").number("offset"))
                .isCloseTo(0.4, within(0.05));
        assertThat(Desk.ask("calibrate --thermometer 0.6C --thermometer 0.8C").number("offset"))
                .isCloseTo(0.7, within(1e-9));
        assertThat(Desk.ask("calibrate --drops 50 --weighed 2.30g --weighed 2.32g --weighed 2.31g")
                        .number("drop_mass_mg"))
                .isCloseTo(46.2, within(1e-9));
    }

    @Test
    void whatCannotBeCalibratedIsSaidWithItsPart() {
        assertThat(Desk.type("calibrate").err()).contains("nothing was read");
        assertThat(Desk.type("calibrate --hydrometer SG~1.002 --thermometer 1C").err())
                .contains("one instrument is calibrated at a time");
        assertThat(Desk.type("calibrate --flask 50ml --full 81g").err()).contains("--empty");
        assertThat(Desk.type("calibrate --flask 50ml --empty 81g --full 31g").err())
                .contains("--full", "no more than empty");
        assertThat(Desk.type("calibrate --hydrometer 1.002parsec").err()).contains("--hydrometer", "which scale");
        assertThat(Desk.type("calibrate --hydrometer SG~1.002 --hydrometer 0.5Bx")
                        .err())
                .contains("several scales");
        assertThat(Desk.type("calibrate --refractometer 0.3Bx --in 80Bx").err()).contains("--in", "0 to 65");
        assertThat(Desk.type("calibrate --drops some --weighed 2g").err()).contains("--drops", "no count");
        assertThat(Desk.type("calibrate --drops 20").err()).contains("--weighed");
        assertThat(Desk.ask("calibrate --hydrometer SG~1.03")
                        .json()
                        .get("findings")
                        .toString())
                .contains("off by much more");
    }

    @Test
    void ownDropOfWaterTellsTheDropsOfOtherLiquids() {
        double official = Desk.ask("drops --liquid lemon").number("drop_mass_mg");
        Desk.Run own = Desk.ask("drops --liquid lemon --water-drop 46mg");
        assertThat(own.number("drop_mass_mg")).isCloseTo(official * 46.0 / 50.0, within(1e-9));
        assertThat(own.number("spread_percent")).isEqualTo(10.0);
        assertThat(Desk.type("drops --liquid lemon --water-drop 0mg").exit()).isEqualTo(2);
    }

    @Test
    void anInstrumentOfTheShelfPutsItsReadingRight() {
        Path data = folder.resolve("studio");
        String id;
        try (Store store = Store.open(new DataFolder(data))) {
            Instrument spindle = store.instruments()
                    .add(
                            new InstrumentSheet("Spindle", "hydrometer", Map.of("scale", "SG", "marks", "0.002"), null),
                            "a");
            id = spindle.id();
            store.instruments().calibrate(id, 1, new Calibration("2026-11-26", 0.002, 0.001, Map.of()), "b");
        }
        String line = "gauge --hydrometer SG~1.0316 --refractometer 25.9Bx --data " + data;
        double byHand = strength("gauge --hydrometer SG~1.0316 --refractometer 25.9Bx --offset hydrometer=0.002"
                + " --within hydrometer=0.00141421");
        assertThat(strength(line + " --instrument spindle")).isCloseTo(byHand, within(1e-6));
        assertThat(strength(line + " --instrument " + id)).isCloseTo(byHand, within(1e-6));
        Desk.Run missing = Desk.type(line + " --instrument float");
        assertThat(missing.exit()).isEqualTo(2);
        assertThat(missing.err()).contains("--instrument", "float", "Spindle");
    }

    @Test
    void aCalibrationIsKeptWithItsInstrument() {
        Path data = folder.resolve("kept");
        try (Store store = Store.open(new DataFolder(data))) {
            store.instruments().add(new InstrumentSheet("Kolben", "flask", Map.of("holds", "50 ml"), null), "a");
        }
        String line = "calibrate --data " + data + " --keep kolben --empty 31.2g --full 81.0g";
        double volume = Desk.ask(line).number("flask_ml");
        try (Store store = Store.open(new DataFolder(data))) {
            Calibration kept = store.instruments().all().get(0).sheet().calibration();
            assertThat(Objects.requireNonNull(kept).value()).isEqualTo(volume);
            assertThat(kept.typed()).containsOnlyKeys("empty", "full");
        }
        assertThat(Desk.type(line.replace("kolben", "jug")).err()).contains("--keep", "jug", "Kolben");
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
    void whatStandsOnTheShelfIsAWayOfItsOwn() throws IOException {
        Path shelf = folder.resolve("shelf.csv");
        Files.writeString(shelf, """
                name;kind;strength;left
                neutral spirit;spirit;96 %;20 ml
                neutral spirit;spirit;96 %;30 ml
                white sugar;sugar;;800 g
                bay tincture;tincture;60 %;100 ml
                """);
        String line = "correct --volume 1.9L --strength 27.1% --sugar 165g/L --to-strength 28% --to-sugar 180g/L";
        assertThat(Desk.type(line).out()).contains("Least added: the nearest").doesNotContain("on the shelf");

        JsonNode ways = Desk.ask(line + " --shelf " + shelf).json().get("ways");
        JsonNode ofShelf = null;
        for (JsonNode way : ways) {
            ofShelf = way.get("way").asString().equals("only what is on the shelf") ? way : ofShelf;
        }
        assertThat(Objects.requireNonNull(ofShelf).get("reached").booleanValue())
                .isTrue();
        assertThat(ofShelf.get("add").get(0).get("what").asString()).isEqualTo("neutral spirit");
        assertThat(ofShelf.toString()).doesNotContain("tincture");

        Desk.Run little = Desk.type(line.replace("28%", "32%") + " --shelf " + shelf);
        assertThat(little.out()).contains("Only what is on the shelf: the nearest that it reaches");
    }

    @Test
    void moreOfAnExtractKeepsItsFlavour() throws IOException {
        String line = "correct --volume 1.9L --strength 30% --sugar 190g/L --to-strength 28% --to-sugar 180g/L";
        JsonNode kept = Desk.ask(line + " --restore bay~tincture=60ml@60%").json();
        assertThat(kept.get("add").get(0).get("what").asString()).isEqualTo("bay tincture");
        double part = kept.get("result").get("volume_20c_ml").doubleValue() / 1900.0 - 1.0;
        assertThat(kept.get("add").get(0).get("volume_20c_ml").doubleValue()).isCloseTo(60.0 * part, within(1e-3));
        assertThat(kept.get("result").get("strength_vol_percent").doubleValue()).isCloseTo(28.0, within(1e-6));

        Path shelf = folder.resolve("shelf.csv");
        Files.writeString(shelf, "name;kind;strength;left\nbay tincture;tincture;60 %;2 ml\n");
        JsonNode scarce =
                Desk.ask(line + " --restore bay~tincture=60ml --shelf " + shelf).json();
        assertThat(scarce.get("findings").toString()).contains("extract-short");
        assertThat(Desk.type(line + " --restore bay~tincture=60ml").err()).contains("--restore", "tincture=40ml@60%");
        assertThat(Desk.type(line + " --restore bay~tincture").err()).contains("how much of");
        assertThat(Desk.type(line + " --restore bay~tincture=6~drops@60%").err())
                .contains("drop");
    }

    @Test
    void whatAllOfAKitTellsTogetherIsToldBeforeItIsMeasured() {
        String line = "readings --strength 27% --sugar 165g/L --volume 700ml ";
        JsonNode kit = Desk.ask(line + "--kit hydrometer~and~refractometer").json();
        double pair =
                kit.get("choices").get(0).get("strength_doubt_vol_percent").doubleValue();
        assertThat(kit.get("strength_doubt_vol_percent").doubleValue()).isEqualTo(pair);
        assertThat(kit.get("traps").get(0).get("conditions").asString()).contains("bubbles");
        assertThat(Desk.type(line + "--kit hydrometer~and~refractometer").out())
                .containsPattern("much\\s+of\\s+so\\s+small");
        JsonNode more =
                Desk.ask(line + "--have refractometer --kit scale~and~flask").json();
        assertThat(more.get("choices").size()).isGreaterThan(2);
        assertThat(more.get("strength_doubt_vol_percent").doubleValue())
                .isLessThanOrEqualTo(more.get("choices")
                        .get(0)
                        .get("strength_doubt_vol_percent")
                        .doubleValue());
        assertThat(Desk.ask(line + "--have hydrometer")
                        .json()
                        .get("strength_doubt_vol_percent")
                        .isNull())
                .isTrue();
        assertThat(Desk.type(line + "--kit laboratory").err()).contains("--kit", "scale and flask");
    }

    @Test
    void whatWasPouredCountsBeforeItIsMeasured() throws IOException {
        String line = "readings --have hydrometer --have refractometer --poured " + recipe();
        JsonNode poured = Desk.ask(line).json();
        JsonNode nothing = Desk.ask("readings --strength 28% --sugar 180g/L --have hydrometer --have refractometer")
                .json();
        double before = poured.get("poured_strength_doubt_vol_percent").doubleValue();
        double after = poured.get("strength_doubt_vol_percent").doubleValue();
        assertThat(after).isLessThan(before);
        assertThat(before)
                .isLessThan(0.5 * nothing.get("strength_doubt_vol_percent").doubleValue());
        assertThat(nothing.get("poured_strength_doubt_vol_percent")).isNull();
        JsonNode gauged = Desk.ask("gauge --hydrometer SG~1.0316 --refractometer 25.9Bx --compensated --within"
                        + " hydrometer=0.001 --within refractometer=0.2 --poured " + recipe())
                .json();
        assertThat(gauged.get("doubt").get("strength_vol_percent").doubleValue())
                .isCloseTo(after, withinPercentage(5));
        assertThat(Desk.type(line).out()).containsPattern("what was poured leaves strength open by +0\\.");
    }

    @Test
    void whatThePouredTellsIsNotTypedBesideIt() throws IOException {
        Desk.Run both = Desk.type("readings --strength 28% --volume 2L --poured " + recipe());
        assertThat(both.exit()).isEqualTo(2);
        assertThat(both.err()).contains("--strength", "--volume", "what was poured tells it already");
        assertThat(Desk.type("readings").err()).contains("--strength", "the recipe that was poured");
        assertThat(Desk.type("readings --poured nowhere.yaml").exit()).isEqualTo(3);
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
