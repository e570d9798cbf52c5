package org.stillroom.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The day sheet as the packaged program writes it, in a real browser. */
class DaySheetPageTest {
    @TempDir
    static Path dir;

    private static RealBrowser browser;
    private static Path sheet;

    @BeforeAll
    static void write() throws Exception {
        browser = new RealBrowser();
        sheet = dir.resolve("sheet.html");
        Path recipe = Program.root().resolve("examples/quince-and-bay.yaml");
        Program.Run run = Program.stillroom(dir, "sheet", recipe.toString(), "--out", sheet.toString());
        assertThat(run.exit()).as(run.err()).isZero();
    }

    @AfterAll
    static void close() {
        browser.close();
    }

    @Test
    void itHasNoBarriersOnPhoneOrDesk() {
        for (RealBrowser.Device device : RealBrowser.Device.values()) {
            assertThat(RealBrowser.barriers(browser.open(sheet, device))).isEmpty();
        }
        assertThat(browser.problems()).isEmpty();
    }

    @Test
    void onlyTheAmountsScrollSidewaysOnTheNarrowestPhone() {
        Page page = browser.open(sheet, RealBrowser.Device.PHONE);
        page.setViewportSize(320, 640);
        assertThat(page.evaluate("document.documentElement.scrollWidth")).isEqualTo(320);
        assertThat(page.evaluate("document.querySelector('.scroll').scrollWidth > 320"))
                .isEqualTo(true);
    }

    @Test
    void whatToTakeIsSeenOnAPhoneWithoutScrolling() throws Exception {
        Page page = browser.open(sheet, RealBrowser.Device.PHONE);
        page.screenshot(new Page.ScreenshotOptions().setFullPage(true).setPath(dir.resolve("phone.png")));
        assertThat(Files.size(dir.resolve("phone.png"))).isPositive();
        assertThat(page.evaluate("Math.max(...Array.from(document.querySelectorAll('td.take'),"
                        + " cell => cell.getBoundingClientRect().right)) <= 390"))
                .isEqualTo(true);
    }
}
