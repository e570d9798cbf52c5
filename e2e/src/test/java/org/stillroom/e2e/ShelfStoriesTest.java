package org.stillroom.e2e;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Base64;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a maker does at the shelf, in a real browser on a phone and at a desk. */
class ShelfStoriesTest {
    /** A picture of one pixel. */
    private static final byte[] PIXEL = Base64.getDecoder()
            .decode("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");

    @TempDir
    private Path dir;

    private OpenStudio studio;
    private RealBrowser browser;

    @BeforeEach
    void open() {
        studio = OpenStudio.on(dir.resolve("data"));
        browser = new RealBrowser();
    }

    @AfterEach
    void close() {
        browser.close();
        studio.close();
    }

    private Page shelf(RealBrowser.Device device) {
        return browser.open(studio.page("/shelf"), device);
    }

    private Page go(Page page, String path) {
        page.navigate(studio.page(path).toString());
        return page;
    }

    private void put(Page page, String kind, String... fields) {
        go(page, "/shelf/put/" + kind);
        for (int i = 0; i < fields.length; i += 2) {
            page.locator("[name='" + fields[i] + "']").fill(fields[i + 1]);
        }
        page.locator("main form .press").last().click();
        page.waitForURL(url -> url.contains("/shelf/lots/"));
    }

    @ParameterizedTest
    @EnumSource(
            value = RealBrowser.Device.class,
            names = {"PHONE", "DESK"})
    void whoStartsPutsTheBottleTheyOwnOnTheShelf(RealBrowser.Device device) {
        Page page = shelf(device);
        assertThat(page.locator("h1").textContent()).isEqualTo("Which bottle do you own?");
        page.getByText("37.5").click();
        page.locator("#left").fill("0.5 L");
        page.getByText("Put it on the shelf", new Page.GetByTextOptions().setExact(true))
                .click();
        page.waitForURL(url -> url.contains("/shelf/lots/"));
        assertThat(page.locator("h1").textContent()).isEqualTo("spirit 37.5 %");
        assertThat(page.locator(".big").textContent()).startsWith("500");
        assertThat(page.locator(".facts").textContent()).contains("37.5", "%\u00a0vol at 20\u00a0°C");
        assertThat(RealBrowser.barriers(page)).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(
            value = RealBrowser.Device.class,
            names = {"PHONE", "DESK"})
    void severalKindsAreEachAskedWhatTheyNeedAndFoundAgain(RealBrowser.Device device) {
        Page page = shelf(device);
        put(page, "syrup", "name", "Rose syrup", "sugar", "65 °Bx", "left", "640 ml");
        put(page, "fresh-plant", "name", "Lemon verbena", "water", "82 %", "left", "40 g");
        put(page, "tincture", "name", "Bay leaf tincture", "strength", "60 %", "ratio", "1:5", "left", "138 ml");
        go(page, "/shelf");
        assertThat(page.locator(".lot").count()).isEqualTo(3);
        assertThat(RealBrowser.barriers(page)).isEmpty();

        page.locator("#seek").pressSequentially("bay");
        assertThat(page.locator(".lot:visible .name").allTextContents()).containsExactly("Bay leaf tincture");
        assertThat(page.url()).endsWith("/shelf");
        page.locator("#seek").fill("absinthe");
        assertThat(page.locator("#none").isVisible()).isTrue();
        page.locator("#seek").fill("");
        page.locator(".sorts label", new Page.LocatorOptions().setHasText("Sugars"))
                .click();
        assertThat(page.locator(".lot:visible .name").allTextContents()).containsExactly("Rose syrup");
    }

    @Test
    void whatIsMissingIsToldAtItsFieldAndWhatWasTypedStays() {
        Page page = go(shelf(RealBrowser.Device.PHONE), "/shelf/put/liqueur");
        page.locator("[name=name]").fill("Walnut");
        page.locator("[name=strength]").fill("strong");
        page.locator("main form .press").last().click();
        page.locator(".remark[role=alert]").waitFor();
        Locator strength = page.locator("[name=strength]");
        assertThat(strength.getAttribute("aria-invalid")).isEqualTo("true");
        assertThat(strength.inputValue()).isEqualTo("strong");
        assertThat(page.locator("#f-strength-not").textContent()).contains("“strong”");
        assertThat(RealBrowser.barriers(page)).isEmpty();
        strength.fill("28 %");
        page.locator("main form .press").last().click();
        page.waitForURL(url -> url.contains("/shelf/lots/"));
    }

    @ParameterizedTest
    @EnumSource(
            value = RealBrowser.Device.class,
            names = {"PHONE", "DESK"})
    void aHalfFullJarIsWeighedAgainstOneThatWasWeighedEmpty(RealBrowser.Device device) {
        Page page = go(shelf(device), "/shelf/instruments/put/jar");
        page.locator("[name=name]").fill("Half-litre jar");
        page.locator("[name=tare]").fill("312 g");
        page.locator("main form .press").first().click();
        page.waitForURL(url -> url.endsWith("/shelf/instruments"));
        put(page, "honey", "name", "Lime honey", "left", "500 g");
        page.locator("#w-jar").selectOption("312 g");
        page.locator("#w-reading").fill("562 g");
        page.getByText("Take what the scale says").click();
        page.waitForURL(url -> url.endsWith("?measured=yes"));
        assertThat(page.locator(".big").textContent()).startsWith("250");
        page.locator("[aria-labelledby=h-history] .lines button").first().click();
        page.waitForURL(url -> url.contains("/shelf/lots/") && !url.contains("?"));
        assertThat(page.locator(".big").textContent()).startsWith("500");
    }

    @Test
    void aTableWithSlipsIsCorrectedThenTaken() {
        Page page = go(shelf(RealBrowser.Device.DESK), "/shelf/table");
        page.locator("#table")
                .fill("Name;Art;Stärke;Bestand\nPflaumenbrand;Destillat;52,5 %;745 ml\nRum;Spirituose;;1 L\n");
        page.getByText("See what it would change").click();
        assertThat(page.locator(".wrongs").textContent()).contains("line 3", "strength");
        assertThat(RealBrowser.barriers(page)).isEmpty();
        page.locator("#table").fill(page.locator("#table").inputValue().replace(";;", ";54 %;"));
        page.getByText("See what it would change").click();
        assertThat(page.locator("#h-added").textContent()).contains("2");
        page.getByText("Accept", new Page.GetByTextOptions().setExact(true)).click();
        page.waitForURL(url -> url.endsWith("/shelf"));
        assertThat(page.locator(".lot .name").allTextContents()).contains("Pflaumenbrand", "Rum");
    }

    @Test
    void aTableIsTakenFromAFileToo() {
        Page page = go(shelf(RealBrowser.Device.DESK), "/shelf/table");
        page.locator("#file")
                .setInputFiles(new FilePayload(
                        "shelf.csv",
                        "text/csv",
                        "\uFEFFname,kind,left\r\nSalt,salt,\"1,5 kg\"\r\n".getBytes(StandardCharsets.UTF_8)));
        page.getByText("See what it would change").click();
        assertThat(page.locator("#h-added").textContent()).contains("1");
    }

    @ParameterizedTest
    @EnumSource(
            value = RealBrowser.Device.class,
            names = {"PHONE", "DESK"})
    void whatIsRemovedIsPutBack(RealBrowser.Device device) {
        Page page = shelf(device);
        put(page, "salt", "name", "Sea salt", "left", "1 kg");
        page.getByText("Remove it from the shelf").click();
        page.waitForURL(url -> url.contains("?removed="));
        page.locator(".undobar button").click();
        page.waitForURL(url -> url.contains("/shelf/lots/"));
        assertThat(page.locator("h1").textContent()).isEqualTo("Sea salt");
    }

    @Test
    void aPhotoOfTheBottleIsKeptAndShown() {
        Page page = shelf(RealBrowser.Device.PHONE);
        put(page, "salt", "name", "Sea salt", "left", "1 kg");
        page.locator("#photo").setInputFiles(new FilePayload("bottle.png", "image/png", PIXEL));
        page.getByText("Keep the photo").click();
        page.waitForURL(url -> url.endsWith("?photo=yes"));
        page.locator("img.photo").scrollIntoViewIfNeeded();
        page.waitForFunction("() => document.querySelector('img.photo').naturalWidth === 1");
        assertThat(RealBrowser.barriers(page)).isEmpty();
    }

    @Test
    void aBottleIsPutThereByTheKeyboardAlone() {
        Page page = go(shelf(RealBrowser.Device.DESK), "/shelf/put/spirit");
        page.locator("[name=name]").focus();
        page.keyboard().type("Rye spirit");
        page.keyboard().press("Tab");
        page.keyboard().type("43 %");
        page.keyboard().press("Enter");
        page.waitForURL(url -> url.contains("/shelf/lots/"));
        assertThat(page.locator("h1").textContent()).isEqualTo("Rye spirit");
    }
}
