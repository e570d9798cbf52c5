package org.stillroom.e2e;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Store;

/** Whole makes in a real browser: a wrong pour, a studio that is away, two people at one make, no script. */
class MakeStoryTest {
    private static final int MOST_STEPS = 40;
    private static final LocatorAssertions.ContainsTextOptions PATIENTLY =
            new LocatorAssertions.ContainsTextOptions().setTimeout(20_000);

    @TempDir
    Path dir;

    private RealBrowser browser;
    private OpenStudio studio;

    @BeforeEach
    void open() {
        MakingStudio.stock(dir.resolve("data"));
        browser = new RealBrowser();
        studio = OpenStudio.on(dir.resolve("data"));
    }

    @AfterEach
    void close() {
        browser.close();
        studio.close();
    }

    private Page begin(String recipe, RealBrowser.Device device) {
        Page page = browser.open(studio.page("/make"), device);
        page.locator("main a[href*='begin']", new Page.LocatorOptions().setHasText(recipe))
                .click();
        page.locator("form.begin button").click();
        page.waitForURL(Pattern.compile(".*/make/[a-z0-9]{6,}$"));
        return page;
    }

    private static Locator heading(Page page) {
        return page.locator("#h-now");
    }

    /** Does something and waits until another step is at hand. */
    private static void goOn(Page page, Locator press) {
        String before = heading(page).innerText();
        press.click();
        assertThat(heading(page)).not().hasText(before.split("\n", -1)[0] + before.substring(before.indexOf('\n') + 1));
        page.waitForFunction("before => document.getElementById('h-now').innerText !== before", before);
    }

    private static void doStep(Page page) {
        Locator asAsked = page.locator(".now form.log button[value=done]:visible");
        Locator drops = page.locator(".drops .tap:visible");
        if (drops.count() > 0) {
            int asked = Integer.parseInt(page.locator(".drops").getAttribute("data-asked"));
            for (int i = 0; i < asked; i++) {
                drops.click();
            }
            goOn(page, page.locator(".drops .next"));
        } else {
            goOn(page, asAsked.count() > 0 ? asAsked.first() : page.locator(".now button[value=typed]"));
        }
    }

    private static void doTheRest(Page page, boolean reloading) {
        for (int i = 0;
                i < MOST_STEPS && page.locator("#now a[href$='/finish']").count() == 0;
                i++) {
            if (reloading) {
                String before = heading(page).innerText();
                page.reload();
                assertThat(heading(page).innerText()).isEqualTo(before);
            }
            doStep(page);
        }
    }

    private static void pour(Page page, String typed) {
        page.locator("#typed").fill(typed);
        goOn(page, page.locator(".now form.differs button[value=poured]"));
    }

    private double left(String label) {
        studio.close();
        try (Store store = Store.open(new DataFolder(dir.resolve("data")))) {
            return store.lots().all().stream()
                    .filter(lot -> label.equals(lot.sheet().label()))
                    .mapToDouble(Lot::left)
                    .sum();
        }
    }

    @Test
    void aWrongPourOnAPhoneIsPlannedAgainAndTheBatchLandsOnTheTarget() {
        Page page = begin("Bay leaf and juniper", RealBrowser.Device.PHONE);
        doStep(page);
        pour(page, "250,0 g");
        assertThat(page.locator(".slip")).containsText("The strength comes to 29.8");
        assertThat(RealBrowser.barriers(page)).isEmpty();
        page.locator(".way button", new Page.LocatorOptions().setHasText("more of everything"))
                .click();
        assertThat(page.locator(".slip")).containsText("stays at");
        doTheRest(page, true);
        page.locator("#now a[href$='/finish']").click();
        assertThat(RealBrowser.barriers(page)).isEmpty();
        page.locator("form .press.tall").click();
        page.waitForURL(Pattern.compile(".*/make/batch/.*"));
        assertThat(page.locator(".becomes")).containsText("28.0 % vol, 180 g/L");
        assertThat(RealBrowser.barriers(page)).isEmpty();
        assertThat(browser.problems()).isEmpty();
        // 250 g of spirit of 96 % vol, 0.8075 g/mL (OIML R 22 at 20 °C), are 309.6 mL
        assertThat(left("lot 7")).isCloseTo(1000 - 309.6, within(0.5));
    }

    @Test
    void anUndoBringsTheStepBackWithWhatWasAsked() {
        Page page = begin("Bay leaf and juniper", RealBrowser.Device.PHONE);
        doStep(page);
        String asked = page.locator(".arm").innerText();
        pour(page, "260");
        page.locator(".steps li:nth-child(2) .undo button").click();
        assertThat(heading(page)).containsText("neutral spirit");
        assertThat(page.locator(".arm")).hasText(asked);
        page.locator(".further summary").click();
        page.locator(".further a[href$='/history']").click();
        assertThat(page.locator(".log-rows")).containsText("taken back");
    }

    @Test
    void whatIsTappedWhileTheStudioIsAwayIsKeptOverAReloadOfTheStudioAndCountsOnce() {
        Page page = begin("Bay leaf and juniper", RealBrowser.Device.TABLET);
        doStep(page);
        studio.kill();
        page.locator("#typed").fill("240");
        page.locator(".now form.differs button[value=poured]").click();
        assertThat(page.locator("#watch")).containsText("The studio does not answer.");
        assertThat(page.locator(".steps li.waits")).hasCount(1);
        page.locator(".steps li:nth-child(4) button.tick-box").click();
        assertThat(page.locator(".steps li.waits")).hasCount(2);
        studio = OpenStudio.at(studio.port(), dir.resolve("data"));
        assertThat(heading(page)).containsText("juniper essence", PATIENTLY);
        assertThat(page.locator(".steps li.waits")).hasCount(0);
        assertThat(page.locator(".steps li:nth-child(2) .much")).containsText("240.0");
        page.locator(".further summary").click();
        page.locator(".further a[href$='/history']").click();
        assertThat(page.locator(".log-rows li")).hasCount(3);
    }

    @Test
    void twoPeopleAtOneMakeSeeEachOther() {
        Page one = begin("Bay leaf and juniper", RealBrowser.Device.PHONE);
        Page other = browser.open(java.net.URI.create(one.url()), RealBrowser.Device.TABLET);
        doStep(one);
        assertThat(heading(other)).containsText("neutral spirit", PATIENTLY);
        pour(other, "235");
        assertThat(heading(one)).containsText("juniper essence", PATIENTLY);
        assertThat(one.locator(".steps li:nth-child(2) .much")).containsText("235.0");
    }

    @Test
    void aStageWithItsWaitAndItsLiqueurAreOneMake() {
        Page page = begin("Bay liqueur", RealBrowser.Device.DESK);
        assertThat(page.locator(".partof")).containsText("Part 1 of 2: Bay tincture");
        String sugar = page.locator("ol.steps >> nth=1")
                .locator("li", new Locator.LocatorOptions().setHasText("white sugar"))
                .locator(".much")
                .innerText();
        for (int i = 0; i < MOST_STEPS && !heading(page).innerText().startsWith("Strain"); i++) {
            doStep(page);
        }
        page.locator("#typed").fill("180 ml");
        goOn(page, page.locator(".now button[value=typed]"));
        assertThat(page.locator(".partof")).containsText("Part 2 of 2: Bay liqueur");
        assertThat(page.locator("ol.steps >> nth=1")
                        .locator("li", new Locator.LocatorOptions().setHasText("white sugar"))
                        .locator(".much"))
                .not()
                .hasText(sugar);
        doTheRest(page, false);
        assertThat(page.locator(".becomes")).containsText("30.0 % vol, 150 g/L");
    }

    @Test
    void withoutScriptEveryStepGoesByItsForm() {
        Page page = browser.open(
                studio.page("/make"), RealBrowser.Device.PHONE, options -> options.setJavaScriptEnabled(false));
        page.locator("main a[href*='begin']", new Page.LocatorOptions().setHasText("Bay leaf and juniper"))
                .click();
        page.locator("form.begin button").click();
        page.locator(".now button[value=typed]").click();
        assertThat(page.locator("#h-now")).containsText("neutral spirit");
        page.locator("#typed").fill("a handful");
        page.locator(".now form.differs button[value=poured]").click();
        assertThat(page.locator("#said")).containsText("a handful");
        assertThat(page.locator("#typed")).hasValue("a handful");
        page.locator("#typed").fill("231 g");
        page.locator(".now form.differs button[value=poured]").click();
        assertThat(page.locator("#h-now")).containsText("juniper essence");
        assertThat(page.locator(".now button[value=done]")).isVisible();
    }

    @Test
    void aTimerOutlivesAReloadAndSaysWhenTheTimeIsUp() {
        Page page = begin("Bay leaf and juniper", RealBrowser.Device.PHONE);
        for (int i = 0; i < MOST_STEPS && page.locator("#minutes").count() == 0; i++) {
            doStep(page);
        }
        page.locator("#minutes").fill("0.1");
        page.locator("button.sounds").click();
        assertThat(page.locator(".timer time")).containsText("0:0");
        page.reload();
        assertThat(page.locator(".timer time")).containsText("Time is up", PATIENTLY);
        page.locator(".timer button").click();
        assertThat(page.locator(".timer")).hasCount(0);
    }

    @Test
    void onATabletTheStepAtHandNeedsNoScrolling() {
        Page page = begin("Bay leaf and juniper", RealBrowser.Device.TABLET);
        doStep(page);
        double bottom = page.locator(".now form.differs .pair").boundingBox().y
                + page.locator(".now form.differs .pair").boundingBox().height;
        assertThat(bottom).isLessThanOrEqualTo(page.viewportSize().height);
    }
}
