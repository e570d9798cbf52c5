package org.stillroom.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The strict policy of the pages, seen from the browser: what it blocks is noticed by the tests of every page. */
class StudioPolicyTest {
    @TempDir
    Path dir;

    @Test
    void aScriptInThePageIsBlockedAndNoticed() {
        try (OpenStudio studio = OpenStudio.on(dir);
                RealBrowser browser = new RealBrowser()) {
            Page page = browser.open(studio.page("/settings"), RealBrowser.Device.PHONE);
            assertThat(browser.problems()).isEmpty();

            page.evaluate("() => { const s = document.createElement('script'); s.textContent = 'window.came = 1';"
                    + " document.body.append(s); document.body.setAttribute('style', 'color: red'); }");

            assertThat(page.evaluate("() => window.came === undefined")).isEqualTo(true);
            assertThat(browser.problems())
                    .anyMatch(problem -> problem.contains("Content Security Policy"))
                    .anyMatch(problem -> problem.contains("style"));
        }
    }
}
