package org.stillroom.e2e;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.APIResponse;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.net.URI;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;

/** The life of a batch in a real browser: finished, racked, topped up, bottled, in the calendar. */
class BatchStoryTest {
    @TempDir
    Path dir;

    private RealBrowser browser;
    private OpenStudio studio;
    private String make;

    @BeforeEach
    void open() {
        Path data = dir.resolve("data");
        MakingStudio.stock(data);
        String recipe;
        try (Store store = Store.open(new DataFolder(data))) {
            recipe = store.recipes().heads(false).stream()
                    .filter(head -> head.title().equals("Bay leaf and juniper"))
                    .findFirst()
                    .orElseThrow()
                    .id();
        }
        Finished.batch(data, recipe);
        make = Finished.make(data, recipe);
        browser = new RealBrowser();
        studio = OpenStudio.on(data);
    }

    @AfterEach
    void close() {
        browser.close();
        studio.close();
    }

    private static Locator form(Page page, String act) {
        Locator form = page.locator("form[action$='/" + act + "']").first();
        page.locator("details", new Page.LocatorOptions().setHas(form))
                .locator("summary")
                .click();
        return form;
    }

    private static void fill(Locator form, String field, String text) {
        form.locator("[name='" + field + "']").fill(text);
    }

    private static void send(Locator form) {
        form.locator("button").click();
    }

    /** Every form of a batch does its work by submit alone, in German too; a gauge estimate is handed over by its button. */
    @Test
    void aBatchIsGaugedRackedAndLeftToRestWithoutAScript() {
        Page page = browser.open(studio.page("/make/" + make + "/finish"), RealBrowser.Device.PHONE, options -> {
            options.setJavaScriptEnabled(false);
            options.setLocale("de-DE");
        });
        page.locator("main form button").click();
        page.locator("main a[href^='/rest/batch/']").click();
        String batch = page.url();

        page.locator("a[href^='/make/gauge?batch=']").click();
        page.locator("#density").fill("0.9815 g/ml");
        page.locator("#refractometer").fill("14 Bx");
        page.locator("form.sheet[action='/make/gauge'] button").last().click();
        assertThat(page.locator("h2#h-found")).hasText("Was darin ist");
        page.locator("form[action$='/measured'] button").click();
        page.waitForURL(batch);
        assertThat(page.locator(".log-rows li").first()).containsText("±");
        assertThat(page.locator(".log-rows li").first()).containsText("vermessen");

        Locator moved = form(page, "moved");
        fill(moved, "to", "Ballon");
        fill(moved, "sediment", "60 ml");
        send(moved);
        assertThat(page.locator(".cellar h3").first()).hasText("Ballon");

        Locator waits = form(page, "waits");
        fill(waits, "days", "2 Wochen");
        send(waits);
        assertThat(page.locator(".waits-for")).isVisible();

        Locator lost = form(page, "lost");
        fill(lost, "amount", "99 L");
        send(lost);
        assertThat(page.locator("form[action$='/lost'] .remark.is-over").first())
                .isVisible();
        assertThat(page.locator("form[action$='/lost'] [name=amount]")).hasValue("99 L");
    }

    @ParameterizedTest
    @EnumSource(
            value = RealBrowser.Device.class,
            names = {"PHONE", "DESK"})
    void aBatchIsFinishedRackedToppedUpBottledAndInTheCalendar(RealBrowser.Device device) {
        Page page = browser.open(studio.page("/make/" + make + "/finish"), device);
        page.locator("main form button").click();
        page.waitForURL(Pattern.compile(".*/make/batch/[a-z0-9]+$"));
        page.locator("main a[href^='/rest/batch/']").click();
        assertThat(page.locator(".cellar .arm")).containsText("1000");

        Locator moved = form(page, "moved");
        fill(moved, "to", "cask");
        fill(moved, "amount", "2 L");
        send(moved);
        assertThat(page.locator(".remark.is-over").first()).containsText("cannot come out of it");
        moved = page.locator("form[action$='/moved']");
        fill(moved, "amount", "");
        fill(moved, "sediment", "60 ml");
        send(moved);
        assertThat(page.locator(".cellar .arm")).containsText("940");
        assertThat(page.locator(".log-rows li").first()).containsText("60.0");

        String batch = page.url();
        topUp(page);
        page.navigate(batch);
        assertThat(page.locator(".cellar .arm")).containsText("1040");
        assertThat(RealBrowser.barriers(page)).isEmpty();

        page.locator("a[href$='/bottle']").click();
        page.locator("#size1").fill("350 ml");
        page.locator("#brim1").fill("356 ml");
        page.locator("form.asksizes button").click();
        assertThat(page.locator(".big")).containsText("2 × 350");
        page.locator("form[action$='/bottled'] button").click();
        page.waitForURL(batch);
        assertThat(page.locator("section[aria-labelledby=h-filled]")).containsText("1 to 2");
        String pdf = page.locator("a[href$='.pdf']").first().getAttribute("href");
        APIResponse labels =
                page.request().get(URI.create(page.url()).resolve(pdf).toString());
        assertThat(labels.headers().get("content-type")).isEqualTo("application/pdf");

        page.locator("form[action$='/undo'] button").first().click();
        assertThat(page.locator("section[aria-labelledby=h-filled]")).hasCount(0);
        Locator waits = form(page, "waits");
        fill(waits, "days", "21");
        send(waits);
        assertThat(page.locator(".log-rows li").first()).containsText("Let it wait");
        page.navigate(studio.page("/rest").toString());
        assertThat(page.locator(".waits li", new Page.LocatorOptions().setHasText("In 21 days")))
                .hasCount(1);
        page.locator("form[action$='/rest/calendar'] button").click();
        String feed = page.locator("#feed").inputValue();
        APIResponse calendar = page.request().get(feed);
        assertThat(calendar.text()).contains("BEGIN:VCALENDAR", "SUMMARY:Macerating: Batch 2");
        assertThat(RealBrowser.barriers(page)).isEmpty();
    }

    /** Pours 100 mL of the other batch to it. */
    private static void topUp(Page page) {
        String other = page.url().replaceAll("/rest/batch/.*", "/rest");
        String own = page.url().replaceAll(".*/", "");
        page.navigate(other);
        page.locator("main a[href^='/rest/batch/']", new Page.LocatorOptions().setHasText("Batch 1"))
                .last()
                .click();
        Locator moved = form(page, "moved");
        fill(moved, "to", "cask");
        moved.locator("[name='batch']").selectOption(own);
        fill(moved, "amount", "100 ml");
        send(moved);
        assertThat(page.locator(".log-rows li").first()).containsText("Blended");
    }
}
