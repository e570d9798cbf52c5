package org.stillroom.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import com.microsoft.playwright.options.ReducedMotion;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every page of the studio, in a real browser. */
class StudioPagesTest {
    /** What sticks out to the right, by name. */
    private static final String STICKING_OUT = """
        () => document.documentElement.scrollWidth <= screen.width ? [] :
          [...document.querySelectorAll('body *')].filter(e => e.getBoundingClientRect().right > screen.width + 1)
            .map(e => e.tagName + '.' + e.className)
        """;

    /** What a finger is to hit and is lower than 48 px, but for links within a sentence. */
    private static final String TOO_SMALL = """
        () => [...document.querySelectorAll('button, select, input:not([type=hidden]), textarea, summary, .press, nav a')]
          .filter(e => e.checkVisibility() && !e.closest('.skip'))
          .map(e => ({ e, box: (['checkbox', 'radio'].includes(e.type) ? e.closest('label') ?? e : e).getBoundingClientRect() }))
          .filter(({ box }) => box.height > 1 && box.height < 47.5)
          .map(({ e, box }) => e.tagName + ' ' + (e.textContent.trim() || e.name) + ' ' + box.height)
        """;

    /** Texts that are set smaller than 14 px. */
    private static final String TOO_FINE = """
        () => [...document.querySelectorAll('body *:not(svg *)')]
          .filter(e => e.checkVisibility() && [...e.childNodes].some(n => n.nodeType === 3 && n.data.trim()))
          .filter(e => parseFloat(getComputedStyle(e).fontSize) < 13.99)
          .map(e => e.tagName + ' ' + e.textContent.trim())
        """;

    @TempDir
    static Path dir;

    private static String recipe;
    private static String batch;
    private static String hydrometer;
    private static OpenStudio studio;
    private static RealBrowser browser;

    @BeforeAll
    static void open() {
        recipe = DemoStudio.stock(dir.resolve("data"));
        batch = Finished.batch(dir.resolve("data"), recipe);
        hydrometer = DemoStudio.hydrometer(dir.resolve("data"));
        studio = OpenStudio.on(dir.resolve("data"));
        browser = new RealBrowser();
    }

    @AfterAll
    static void close() {
        browser.close();
        studio.close();
    }

    static List<String> pages() {
        return StudioPages.all(recipe, batch, hydrometer);
    }

    @AfterEach
    void nothingWasComplainedOf() {
        assertThat(browser.problems().stream().filter(problem -> !problem.contains("404 (Not Found)")))
                .isEmpty();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void noPageHasBarriersByDayOnADesk(String path) {
        Page page = browser.open(studio.page(path), RealBrowser.Device.WIDE);

        assertThat(RealBrowser.barriers(page)).isEmpty();
        assertThat(page.locator("h1").count()).isEqualTo(1);
        page.context().close();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void noPageHasBarriersByNightOnAPhone(String path) {
        Page page = browser.open(
                studio.page(path),
                RealBrowser.Device.PHONE,
                options -> options.setColorScheme(ColorScheme.DARK).setReducedMotion(ReducedMotion.REDUCE));

        assertThat(RealBrowser.barriers(page)).isEmpty();
        assertThat(found(page, TOO_SMALL)).isEmpty();
        assertThat(found(page, TOO_FINE)).isEmpty();
        page.context().close();
    }

    @ParameterizedTest
    @MethodSource("pages")
    void everyPageFitsANarrowScreen(String path) {
        Page page = browser.open(studio.page(path), RealBrowser.Device.NARROW);

        assertThat(found(page, STICKING_OUT)).isEmpty();
        page.context().close();
    }

    private static List<?> found(Page page, String what) {
        return (List<?>) page.evaluate(what);
    }

    @Test
    void whatIsTooSmallOrSticksOutIsNoticed() {
        Page page = browser.open(studio.page("/settings"), RealBrowser.Device.NARROW);
        page.evaluate("() => { const b = document.createElement('button'); b.textContent = 'a very little button';"
                + " b.className = 'canary'; document.querySelector('main').append(b); const r ="
                + " document.styleSheets[0]; r.insertRule('.canary { font-size: 9px; margin-left: 400px }'); }");

        assertThat(found(page, TOO_SMALL)).hasSize(1);
        assertThat(found(page, TOO_FINE)).hasSize(1);
        assertThat(found(page, STICKING_OUT)).isNotEmpty();
        page.context().close();
    }

    @Test
    void theRoomsAreReachedByTheKeyboardAlone() {
        Page page = browser.open(studio.page("/history"), RealBrowser.Device.WIDE);
        page.keyboard().press("Tab");
        assertThat(focused(page)).isEqualTo("Skip to the page");
        page.keyboard().press("Enter");
        page.waitForURL(Pattern.compile("#main$")); // the page goes there a moment after the key

        page.reload();
        int rooms = page.locator(".rooms a").count();
        page.evaluate("() => document.activeElement.blur()");
        page.keyboard().press("Tab");
        for (int i = 0; i < rooms; i++) {
            page.keyboard().press("Tab");
            assertThat(focused(page))
                    .isEqualTo(page.locator(".rooms a").nth(i).textContent().strip());
        }
        page.keyboard().press("Enter");
        page.waitForURL("**/settings");
        assertThat(page.locator("h1").textContent()).isEqualTo("Settings");
        page.context().close();
    }

    private static String focused(Page page) {
        return ((String) page.evaluate("() => document.activeElement.textContent")).strip();
    }

    @Test
    void onAPhoneTheStripUnderTheThumbOpensAllRooms() {
        Page page = browser.open(studio.page("/settings"), RealBrowser.Device.PHONE);
        assertThat(page.locator(".rooms").isVisible()).isFalse();

        page.locator(".strip button").tap();

        assertThat(page.locator(".rooms a[aria-current=page]").isVisible()).isTrue();
        assertThat(page.locator(".rooms a[aria-current=page]").textContent()).startsWith("Settings");
        page.context().close();
    }

    @Test
    void whoReadsGermanIsSpokenToInGerman() {
        Page page =
                browser.open(studio.page("/settings"), RealBrowser.Device.PHONE, options -> options.setLocale("de-DE"));

        assertThat(page.locator("html").getAttribute("lang")).isEqualTo("de");
        assertThat(page.locator("h1").textContent()).isEqualTo("Einstellungen");
        page.context().close();
    }

    @Test
    void aFormWorksWithoutScripts() {
        Page page = browser.open(
                studio.page("/settings"), RealBrowser.Device.PHONE, options -> options.setJavaScriptEnabled(false));

        page.locator("#units").selectOption("us");
        page.locator("main button").tap();
        assertThat(page.locator("#units").inputValue()).isEqualTo("us");

        page.locator("#units").selectOption("metric");
        page.locator("main button").tap();
        assertThat(page.locator("#units").inputValue()).isEqualTo("metric");
        page.context().close();
    }
}
