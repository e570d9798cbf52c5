package org.stillroom.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.triangle.Company;
import org.stillroom.core.triangle.Contours;
import org.stillroom.core.triangle.Drag;
import org.stillroom.core.triangle.HazeShade;
import org.stillroom.core.triangle.Plate;
import org.stillroom.core.triangle.Reading;
import org.stillroom.studio.answer.Json;
import org.stillroom.studio.answer.SketchFields;

/** The pace of a hand: what a move costs in the browser, beside the same on the JVM in the same run. */
class DragPaceTest {
    /** Enough for both machines to have compiled what they run; the best round is the one that nothing else disturbed. */
    private static final int ROUNDS = 40;

    private static final int MOVES = 100;
    private static final int SHADES = 5;
    private static final String SHADE = "([numbers, grams]) => { const recipe = JSON.parse(numbers);"
            + " const start = performance.now(); for (let i = 0; i < " + SHADES
            + "; i++) core.shade(recipe, 0.6, grams);"
            + " return (performance.now() - start) / " + SHADES + "; }";
    /** A frame of a screen at 60 Hz has 16.7 ms; the browser may take so many times what the JVM takes before it is noticed. */
    private static final double MOST_TIMES_THE_JVM = 50;

    @TempDir
    static Path folder;

    private static RealBrowser browser;

    @BeforeAll
    static void launch() {
        browser = new RealBrowser();
    }

    @AfterAll
    static void close() {
        browser.close();
    }

    @Test
    void aMoveIsDoneWithinThePaceOfAHand() {
        SeededMoves.Move move = SeededMoves.list(400).stream()
                .max(Comparator.comparingInt(each -> each.sketch().lines().size()))
                .orElseThrow();
        double here = best(() -> onTheJvm(move));
        Page page = BrowserCore.open(browser, folder);
        String numbers = Json.of(SketchFields.of(move.sketch()));
        double there = best(() -> inTheBrowser(page, numbers));
        System.out.printf(
                "a move of %d lines: %.3f ms in the browser, %.3f ms on the JVM, %.1f times%n",
                move.sketch().lines().size(), there, here, there / here);
        assertThat(there / here).isLessThan(MOST_TIMES_THE_JVM);
    }

    @Test
    void shadingKeepsUpWithTheHand() {
        SeededMoves.Move move = SeededMoves.list(400).stream()
                .filter(each -> HazeShade.of(shaded(each), Plate.PART) != null)
                .max(Comparator.comparingInt(each -> each.sketch().lines().size()))
                .orElseThrow();
        double here = best(() -> shadingOnTheJvm(shaded(move)));
        Page page = BrowserCore.open(browser, folder);
        List<Object> given = List.of(
                Json.of(SketchFields.of(move.sketch())),
                Drag.to(move.sketch(), move.to()).answer().grams());
        double there = best(() -> ((Number) page.evaluate(SHADE, given)).doubleValue());
        System.out.printf(
                "shading of 201 x 201 places: %.2f ms in the browser, %.2f ms on the JVM, %.1f times%n",
                there, here, there / here);
        assertThat(there / here).isLessThan(MOST_TIMES_THE_JVM);
    }

    private static Contents shaded(SeededMoves.Move move) {
        return Drag.to(move.sketch(), move.to()).answer().liquid();
    }

    private static double shadingOnTheJvm(Contents liquid) {
        long start = System.nanoTime();
        for (int i = 0; i < SHADES; i++) {
            assertThat(HazeShade.of(liquid, Plate.PART)).isNotNull();
        }
        return (System.nanoTime() - start) / 1e6 / SHADES;
    }

    private static double onTheJvm(SeededMoves.Move move) {
        long start = System.nanoTime();
        int drawn = 0;
        for (int i = 0; i < MOVES; i++) {
            Drag.Moved moved = Drag.to(move.sketch(), new Reading(15 + 0.1 * i, 150));
            drawn += drawing(move, moved).length();
        }
        assertThat(drawn).isPositive();
        return (System.nanoTime() - start) / 1e6 / MOVES;
    }

    private static String drawing(SeededMoves.Move move, Drag.Moved moved) {
        Company company = Company.of(moved.answer().liquid(), move.sketch().sugarBasis());
        Contours contours = new Contours(company, Plate.PART);
        return Plate.PART.place(moved.spot())
                + Plate.PART.line(contours.sightOfStrength(moved.reading()).spots())
                + Plate.PART.line(contours.sightOfSugar(moved.reading()).spots());
    }

    private static double inTheBrowser(Page page, String numbers) {
        return ((Number) page.evaluate(
                        "([numbers, moves]) => { const recipe = JSON.parse(numbers); const start = performance.now();"
                                + " for (let i = 0; i < moves; i++) core.moveTo(recipe, 0.6, 15 + 0.1 * i, 150);"
                                + " return (performance.now() - start) / moves; }",
                        List.of(numbers, MOVES)))
                .doubleValue();
    }

    private static double best(DoubleSupplier once) {
        double best = Double.POSITIVE_INFINITY;
        for (int i = 0; i < ROUNDS; i++) {
            best = Math.min(best, once.getAsDouble());
        }
        return best;
    }
}
