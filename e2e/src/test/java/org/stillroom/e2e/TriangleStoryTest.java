package org.stillroom.e2e;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Mouse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a recipe file to a saved revision by the triangle alone: what the point says is what is planned, drafted and saved. */
class TriangleStoryTest {
    private static final String MEDLAR = """
            stillroom: 1
            title: Medlar and hyssop
            target: {volume: 1 L, strength: 28 %, sugar: 180 g/L}
            ingredients:
              - {name: grain spirit, kind: spirit, strength: 70 %}
            lines:
              - {use: grain spirit, amount: free}
              - {use: white sugar, amount: free}
              - {use: honey, amount: 60 g}
              - {use: water, amount: free}
            """;

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
        assertThat(browser.problems()).isEmpty();
        browser.close();
        studio.close();
    }

    /** Brings the recipe in and leaves its page open. */
    private Page compose(RealBrowser.Device device, String language) throws IOException {
        Path file = Files.writeString(dir.resolve("medlar.yaml"), MEDLAR);
        Page page = browser.open(studio.page("/compose/new"), device, options -> options.setLocale(language));
        page.setInputFiles("#file", file);
        page.locator("form[action='/compose/import'] button").click();
        page.waitForURL(Pattern.compile(".*/compose/[a-z0-9]{6,}$"));
        return page;
    }

    private static Locator target(Page page, String what) {
        return page.locator("input[data-target=" + what + "]");
    }

    private static List<String> grams(Page page) {
        return page.locator("[data-line][data-unit=g]").allTextContents();
    }

    private static String said(Page page) {
        return page.locator("#point").getAttribute("aria-valuetext");
    }

    /** Saves, loads the page anew, and compares it with what the point said. */
    private static void assertSavedAsShown(Page page) {
        String strength = target(page, "strength").inputValue();
        String sugar = target(page, "sugar").inputValue();
        List<String> grams = grams(page);
        String said = said(page);
        page.locator("button[value=save]").click();
        assertThat(page.locator("#draft")).containsText("2");
        page.reload();
        assertThat(target(page, "strength")).hasValue(strength);
        assertThat(target(page, "sugar")).hasValue(sugar);
        assertThat(grams(page)).isEqualTo(grams);
        assertThat(said(page)).isEqualTo(said);
    }

    @Test
    void byMouseAtADesk() throws IOException {
        Page page = compose(RealBrowser.Device.DESK, "en");
        page.locator("#point").scrollIntoViewIfNeeded();
        BoundingBox from = page.locator("#point .ring").boundingBox();
        double x = from.x + from.width / 2;
        double y = from.y + from.height / 2;
        page.mouse().move(x, y);
        page.mouse().down();
        page.mouse().move(x + 10, y - 30, new Mouse.MoveOptions().setSteps(10));
        List<String> underTheHand = grams(page);
        assertThat(page.locator("#draft")).containsText("This is revision 1");
        page.mouse().up();
        assertThat(page.locator("#draft")).containsText("kept as a draft");
        assertThat(grams(page)).as("the server's amounts are the browser's").isEqualTo(underTheHand);
        assertThat(page.locator("#point .ring").boundingBox().y + from.height / 2)
                .isCloseTo(y - 30, within(3.0));
        assertSavedAsShown(page);
    }

    @Test
    void byFingerOnAPhone() throws IOException {
        Page page = compose(RealBrowser.Device.PHONE, "en");
        page.locator("#point").scrollIntoViewIfNeeded();
        Object scrolled = page.evaluate("scrollY");
        BoundingBox box = page.locator("#point .ring").boundingBox();
        double x = box.x + box.width / 2;
        double y = box.y + box.height / 2;
        new Finger(page).draw(x, y, x, y - 40);
        assertThat(page.locator("#draft")).containsText("kept as a draft");
        assertThat(page.evaluate("scrollY")).isEqualTo(scrolled);
        assertThat(page.locator(".reading")).containsText(said(page).substring(0, 4));
        assertSavedAsShown(page);
    }

    @Test
    void byKeysInGerman() throws IOException {
        Page page = compose(RealBrowser.Device.DESK, "de");
        page.locator("#point").focus();
        page.keyboard().press("ArrowUp");
        page.keyboard().press("ArrowRight");
        assertThat(target(page, "strength")).hasValue("28,5\u00a0%");
        assertThat(said(page)).isEqualTo("28,5\u00a0%\u00a0vol, 185\u00a0g/L");
        assertThat(page.locator("#draft")).containsText("Entwurf");
        assertThat(page.evaluate("document.activeElement.id")).isEqualTo("point");
        assertSavedAsShown(page);
    }

    @Test
    void whatWasTypedMovesThePoint() throws IOException {
        Page page = compose(RealBrowser.Device.DESK, "en");
        target(page, "strength").fill("31 %");
        assertThat(page.locator("#point")).hasAttribute("aria-valuetext", "31.0\u00a0%\u00a0vol, 180\u00a0g/L");
        page.getByLabel("Half a per cent weaker").click();
        assertThat(target(page, "strength")).hasValue("30.5\u00a0%");
        assertThat(page.locator("#said")).containsText("30.5");
    }
}
