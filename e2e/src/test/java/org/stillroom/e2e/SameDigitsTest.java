package org.stillroom.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.triangle.Company;
import org.stillroom.core.triangle.Contours;
import org.stillroom.core.triangle.Drag;
import org.stillroom.core.triangle.HazeShade;
import org.stillroom.core.triangle.Plate;
import org.stillroom.core.triangle.Reading;
import org.stillroom.studio.answer.Json;
import org.stillroom.studio.answer.SketchFields;

/** One engine, compiled twice: the browser's amounts and figures against those of the JVM, in every digit that is shown. */
@Tag("property")
class SameDigitsTest {
    private static final int RECIPES = 400;
    private static final double RELATIVE = 1e-12;
    private static final String MOVE = "([numbers, strength, sugar]) => {"
            + " const moved = core.moveTo(JSON.parse(numbers), 0.6, strength, sugar);"
            + " const shown = value => [0, 1, 2, 3].map(places => core.fixed(value, places));"
            + " return {...moved, grams: [...moved.grams], volumes: [...moved.volumes], liquid: [...moved.liquid],"
            + " shown: [moved.strength, moved.sugar, moved.millilitres, moved.mass, ...moved.grams].flatMap(shown)}; }";

    @TempDir
    static Path folder;

    private static RealBrowser browser;
    private static Page page;

    @BeforeAll
    static void launch() {
        browser = new RealBrowser();
        page = BrowserCore.open(browser, folder);
    }

    @AfterAll
    static void close() {
        browser.close();
    }

    @Test
    void aMovedPointHasTheSameDigitsInTheBrowserAsOnTheJvm() {
        int held = 0;
        for (SeededMoves.Move move : SeededMoves.list(RECIPES)) {
            Drag.Moved here = Drag.to(move.sketch(), move.to());
            Map<?, ?> there = inBrowser(move);
            String which = "seed " + move.seed();
            assertThat(there.get("held")).as(which).isEqualTo(here.held());
            assertThat(there.get("reached")).as(which).isEqualTo(here.answer().reached());
            assertSameNumbers(which, numbers(there), numbers(here));
            assertThat(there.get("shown")).as(which).isEqualTo(shown(here));
            assertSameDrawing(which, there, here, move);
            held += here.held() ? 1 : 0;
        }
        assertThat(held).as("moves beyond reach").isBetween(RECIPES / 10, RECIPES * 9 / 10);
    }

    @Test
    void aPlaceUnderAHandReadsTheSame() {
        for (SeededMoves.Move move : SeededMoves.list(40)) {
            Drag.Moved before = Drag.to(move.sketch(), move.to());
            Plate.Place hand = new Plate.Place(100 + 13 * move.seed(), 590 - 9 * move.seed());
            Company company = Company.of(before.answer().liquid(), move.sketch().sugarBasis());
            Drag.Moved here = Drag.to(move.sketch(), company.reading(Plate.PART.spot(hand)));
            Map<?, ?> there = (Map<?, ?>) page.evaluate(
                    "([numbers, x, y, liquid]) => { const moved = core.moveUnder(JSON.parse(numbers), 0.6, x, y, liquid);"
                            + " return {...moved, grams: [...moved.grams], volumes: [], liquid: [...moved.liquid]}; }",
                    List.of(
                            numbersOf(move),
                            hand.x(),
                            hand.y(),
                            boxed(before.answer().liquid().toGrams())));
            assertSameNumbers("seed " + move.seed(), numbers(there), numbers(here));
        }
    }

    @Test
    void theShadingIsTheSameInTheBrowserAsOnTheJvm() {
        int oily = 0;
        int areas = 0;
        for (SeededMoves.Move move : SeededMoves.list(RECIPES / 4)) {
            Drag.Moved moved = Drag.to(move.sketch(), move.to());
            HazeShade here = HazeShade.of(moved.answer().liquid(), Plate.PART);
            Map<?, ?> there = (Map<?, ?>) page.evaluate(
                    "([numbers, grams]) => { const shade = core.shade(JSON.parse(numbers), 0.6, grams); return shade && {...shade}; }",
                    List.of(numbersOf(move), moved.answer().grams()));
            String which = "seed " + move.seed();
            if (here == null) {
                assertThat(there).as(which).isNull();
                continue;
            }
            assertThat(field(there, "hazy")).as(which).isEqualTo(here.hazy());
            assertThat(field(there, "cloudy")).as(which).isEqualTo(here.cloudy());
            assertThat(field(there, "verdict"))
                    .as(which)
                    .isEqualTo(here.verdict().label());
            assertThat(Double.isNaN(((Number) field(there, "clearFrom")).doubleValue()))
                    .as(which)
                    .isEqualTo(here.clearFrom().isEmpty());
            assertSameNumbers(
                    which, List.of(((Number) field(there, "oil")).doubleValue()), List.of(here.gramsPerLitre()));
            if (here.clearFrom().isPresent()) {
                double percent = ((Number) field(there, "clearFrom")).doubleValue();
                assertThat(QuantityWords.fixed(percent, 3))
                        .as(which)
                        .isEqualTo(QuantityWords.fixed(here.clearFrom().getAsDouble(), 3));
            }
            oily++;
            areas += here.hazy().isEmpty() ? 0 : 1;
        }
        assertThat(oily).as("recipes with oil").isGreaterThan(RECIPES / 20);
        assertThat(areas).as("of them with a hazy area").isGreaterThan(oily / 4);
    }

    private static Map<?, ?> inBrowser(SeededMoves.Move move) {
        return (Map<?, ?>) page.evaluate(
                MOVE, List.of(numbersOf(move), move.to().strength(), move.to().sugar()));
    }

    private static String numbersOf(SeededMoves.Move move) {
        return Json.of(SketchFields.of(move.sketch()));
    }

    private static List<Double> boxed(double[] values) {
        List<Double> boxed = new ArrayList<>();
        for (double value : values) {
            boxed.add(value);
        }
        return boxed;
    }

    private static List<Double> numbers(Drag.Moved moved) {
        List<Double> numbers = new ArrayList<>(List.of(
                moved.asked().strength(),
                moved.asked().sugar(),
                moved.reading().strength(),
                moved.reading().sugar(),
                moved.answer().millilitres(),
                moved.answer().liquid().total(),
                moved.spot().ethanol(),
                moved.spot().sugar(),
                moved.spot().water()));
        numbers.addAll(moved.answer().grams());
        numbers.addAll(boxed(moved.answer().liquid().toGrams()));
        return numbers;
    }

    private static List<Double> numbers(Map<?, ?> moved) {
        List<Double> numbers = new ArrayList<>();
        for (String key : List.of(
                "askedStrength",
                "askedSugar",
                "strength",
                "sugar",
                "millilitres",
                "mass",
                "ethanolShare",
                "sugarShare",
                "waterShare")) {
            numbers.add(((Number) field(moved, key)).doubleValue());
        }
        for (String key : List.of("grams", "liquid")) {
            ((List<?>) field(moved, key)).forEach(each -> numbers.add(((Number) each).doubleValue()));
        }
        return numbers;
    }

    private static Object field(Map<?, ?> moved, String key) {
        return Objects.requireNonNull(moved.get(key), key);
    }

    private static void assertSameNumbers(String which, List<Double> there, List<Double> here) {
        assertThat(there).as(which).hasSameSizeAs(here);
        for (int i = 0; i < here.size(); i++) {
            double off = Math.abs(there.get(i) - here.get(i));
            assertThat(off)
                    .as("%s, number %d: %s in the browser, %s on the JVM", which, i, there.get(i), here.get(i))
                    .isLessThanOrEqualTo(RELATIVE * Math.abs(here.get(i)));
        }
    }

    private static List<String> shown(Drag.Moved moved) {
        Reading reading = moved.reading();
        List<Double> values = new ArrayList<>(List.of(
                reading.strength(),
                reading.sugar(),
                moved.answer().millilitres(),
                moved.answer().liquid().total()));
        values.addAll(moved.answer().grams());
        List<String> shown = new ArrayList<>();
        for (double value : values) {
            for (int places = 0; places <= 3; places++) {
                shown.add(QuantityWords.fixed(value, places));
            }
        }
        return shown;
    }

    private static void assertSameDrawing(String which, Map<?, ?> there, Drag.Moved here, SeededMoves.Move move) {
        Plate plate = Plate.PART;
        Company company = Company.of(here.answer().liquid(), move.sketch().sugarBasis());
        Contours contours = new Contours(company, plate);
        assertThat(there.get("place"))
                .as(which)
                .isEqualTo(plate.place(here.spot()).toString());
        assertThat(there.get("sightOfStrength"))
                .as(which)
                .isEqualTo(plate.line(contours.sightOfStrength(here.reading()).spots()));
        assertThat(there.get("sightOfSugar"))
                .as(which)
                .isEqualTo(plate.line(contours.sightOfSugar(here.reading()).spots()));
    }
}
