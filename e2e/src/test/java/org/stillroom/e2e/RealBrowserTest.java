package org.stillroom.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The browser's own watchfulness: without it a test of a page would pass on a broken one. */
class RealBrowserTest {
    @TempDir
    static Path dir;

    private static RealBrowser browser;

    @BeforeAll
    static void launch() {
        browser = new RealBrowser();
    }

    @AfterAll
    static void close() {
        browser.close();
    }

    private static Page open(String body) throws IOException {
        Path file = Files.createTempFile(dir, "page", ".html");
        Files.writeString(
                file,
                "<!doctype html><html lang='en'><head><meta charset='utf-8'><title>Sheet</title></head><body><main><h1>Sheet</h1>"
                        + body + "</main></body></html>");
        return browser.open(file, RealBrowser.Device.PHONE);
    }

    @Test
    void aSoundPageHasNeitherProblemsNorBarriers() throws IOException {
        int before = browser.problems().size();
        Page page = open("<p>sugar 180 g/L at 20 °C</p>");
        assertThat(page.locator("p").textContent()).isEqualTo("sugar 180 g/L at 20 °C");
        assertThat(RealBrowser.barriers(page)).isEmpty();
        assertThat(browser.problems()).hasSize(before);
    }

    @Test
    void aPageThatReachesForTheNetworkIsNoticed() throws IOException {
        open("<img alt='a still' src='http://example.org/still.png'>");
        assertThat(browser.problems()).contains("asked the network for http://example.org/still.png");
    }

    @Test
    void aScriptThatFailsIsNoticed() throws IOException {
        open("<script>throw new Error('the script fell over')</script>");
        assertThat(browser.problems()).anyMatch(problem -> problem.contains("the script fell over"));
    }

    @Test
    void aBarrierIsNoticed() throws IOException {
        Page page = open("<img src='data:image/gif;base64,R0lGODlhAQABAAAAACw='>");
        assertThat(RealBrowser.barriers(page)).anyMatch(barrier -> barrier.startsWith("image-alt"));
    }
}
