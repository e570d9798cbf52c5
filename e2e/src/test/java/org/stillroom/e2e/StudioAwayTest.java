package org.stillroom.e2e;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A studio that is killed while somebody types: the page says so, keeps what is typed, and catches up. */
class StudioAwayTest {
    @TempDir
    Path dir;

    private RealBrowser browser;
    private OpenStudio studio;

    @BeforeEach
    void open() {
        browser = new RealBrowser();
        studio = OpenStudio.on(dir.resolve("data"));
    }

    @AfterEach
    void close() {
        browser.close();
        studio.close();
    }

    @Test
    void aFormWaitsUntilTheStudioAnswersAgainAndIsThenSent() {
        Page page = browser.open(studio.page("/settings"), RealBrowser.Device.PHONE);
        studio.kill();
        page.locator("#units").selectOption("us");
        page.locator("main button").tap();

        assertThat(page.locator("#watch")).containsText("The studio does not answer.");
        assertThat(page.locator("#units").inputValue()).isEqualTo("us");

        studio = OpenStudio.at(studio.port(), dir.resolve("data"));

        page.waitForURL(Pattern.compile(".*kept=yes"), new Page.WaitForURLOptions().setTimeout(20_000));
        assertThat(page.locator("#units").inputValue()).isEqualTo("us");
    }

    @Test
    void whatWasTypedOutlivesAReload() {
        Page page = browser.open(studio.page("/settings"), RealBrowser.Device.PHONE);
        page.locator("#ounce").selectOption("bar");
        page.reload();

        assertThat(page.locator("#watch")).containsText("What you had typed here is back");
        assertThat(page.locator("#ounce").inputValue()).isEqualTo("bar");

        page.locator("main button").tap();
        page.waitForURL(Pattern.compile(".*kept=yes"));
        page.navigate(studio.page("/settings").toString());
        assertThat(page.locator("#ounce")).hasValue("bar");
        assertThat(page.locator("#watch")).hasText("");
    }
}
