package org.stillroom.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.core.triangle.Drag;
import org.stillroom.core.triangle.Reading;
import org.stillroom.studio.answer.Json;
import org.stillroom.studio.answer.SketchFields;

/** The pace of a hand: what a move costs in the browser, beside the same on the JVM in the same run. */
class DragPaceTest {
    private static final int ROUNDS = 9;
    private static final int MOVES = 100;
    /** A frame of a screen at 60 Hz has 16.7 ms; the browser may take so many times what the JVM takes before it is noticed. */
    private static final double MOST_TIMES_THE_JVM = 100;

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
        double here = median(() -> onTheJvm(move));
        Page page = BrowserCore.open(browser, folder);
        String numbers = Json.of(SketchFields.of(move.sketch()));
        double there = median(() -> inTheBrowser(page, numbers));
        System.out.printf(
                "a move of %d lines: %.3f ms in the browser, %.3f ms on the JVM, %.1f times%n",
                move.sketch().lines().size(), there, here, there / here);
        assertThat(there / here).isLessThan(MOST_TIMES_THE_JVM);
    }

    private static double onTheJvm(SeededMoves.Move move) {
        long start = System.nanoTime();
        for (int i = 0; i < MOVES; i++) {
            Drag.to(move.sketch(), new Reading(15 + 0.1 * i, 150));
        }
        return (System.nanoTime() - start) / 1e6 / MOVES;
    }

    private static double inTheBrowser(Page page, String numbers) {
        return ((Number) page.evaluate(
                        "([numbers, moves]) => { const recipe = JSON.parse(numbers); const start = performance.now();"
                                + " for (let i = 0; i < moves; i++) core.moveTo(recipe, 0.6, 15 + 0.1 * i, 150);"
                                + " return (performance.now() - start) / moves; }",
                        List.of(numbers, MOVES)))
                .doubleValue();
    }

    private static double median(DoubleSupplier once) {
        double[] times = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            times[i] = once.getAsDouble();
        }
        Arrays.sort(times);
        return times[ROUNDS / 2];
    }
}
