package org.stillroom.e2e;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a maker does in Compose, from the one bottle they own to a saved revision, in a real browser. */
class ComposeStoryTest {
    private static final Pattern RECIPE = Pattern.compile(".*/compose/[a-z0-9]{6,}(\\?saved=yes)?$");

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

    /** Starts from a bottle of spirit, and leaves its recipe open. */
    private Page started(RealBrowser.Device device) {
        Page page = browser.open(studio.page("/compose/new"), device);
        page.locator("#generic").selectOption("spirit 40 %");
        page.locator("#title").fill("Quince cordial");
        page.locator("form[action='/compose/new'] button").click();
        page.waitForURL(RECIPE);
        return page;
    }

    private static Locator field(Page page, String name) {
        return page.locator("#compose [name='" + name + "']");
    }

    private static void save(Page page) {
        page.locator("button[value=save]").click();
        page.waitForURL(RECIPE);
        assertThat(page.locator(".remark.is-within")).containsText("Saved as revision");
    }

    private static void assertNothingWrong(RealBrowser browser) {
        assertThat(browser.problems()).isEmpty();
    }

    @ParameterizedTest
    @EnumSource(
            value = RealBrowser.Device.class,
            names = {"PHONE", "DESK"})
    void fromOneBottleToASavedRevision(RealBrowser.Device device) {
        Page page = started(device);
        assertThat(page.locator("#reading")).containsText("%\u00a0vol");
        field(page, "target.strength").fill("24 %");
        field(page, "target.sugar").fill("200 g/L");
        assertThat(page.locator("#reading")).containsText("24.0\u00a0%\u00a0vol");
        assertThat(page.locator("#reading")).containsText("200\u00a0g/L");
        assertThat(RealBrowser.barriers(page)).isEmpty();
        save(page);
        assertThat(field(page, "target.strength")).hasValue("24 %");
        assertThat(page.locator("#go-make")).isVisible();
        assertNothingWrong(browser);
    }

    @Test
    void theCaretStaysWhereItIsWhileTheFiguresFollow() {
        Page page = started(RealBrowser.Device.DESK);
        Locator strength = field(page, "target.strength");
        strength.fill("2 %");
        strength.evaluate("field => field.setSelectionRange(1, 1)");
        strength.focus();
        page.keyboard().type("6");
        assertThat(page.locator("#reading")).containsText("26.0\u00a0%\u00a0vol");
        assertThat(strength.evaluate("field => [field.value, field.selectionStart, document.activeElement === field]")
                        .toString())
                .isEqualTo("[26 %, 2, true]");
        page.keyboard().type(".5");
        assertThat(page.locator("#reading")).containsText("26.5\u00a0%\u00a0vol");
        assertThat(strength).hasValue("26.5 %");
        assertNothingWrong(browser);
    }

    @Test
    void whatIsNotUnderstoodIsToldAtItsFieldAndTheLastFiguresStayInSight() {
        Page page = started(RealBrowser.Device.DESK);
        field(page, "target.strength").fill("24 %");
        assertThat(page.locator("#reading")).containsText("24.0");
        field(page, "target.strength").fill("rather strong");
        Locator refusal = page.locator("[id='b-target.strength'] .refusal");
        assertThat(refusal).isVisible();
        assertThat(field(page, "target.strength")).hasAttribute("aria-invalid", "true");
        assertThat(page.locator("#reading")).containsText("24.0");
        assertThat(page.locator("#unsettled")).isVisible();
        page.locator("button[value=save]").click();
        assertThat(page.locator(".remark.is-near")).containsText("Not saved as a revision yet");
        assertThat(field(page, "target.strength")).hasValue("rather strong");
    }

    @Test
    void ofTwoMeaningsOneIsTapped() {
        Page page = started(RealBrowser.Device.PHONE);
        field(page, "target.volume").fill("20 oz");
        field(page, "target.volume").fill("1,500 ml");
        Locator choices = page.locator("[id='b-target.volume'] .choices button");
        assertThat(choices.first()).isVisible();
        assertThat(choices.count()).isGreaterThan(1);
        String chosen = choices.first().textContent();
        choices.first().tap();
        assertThat(field(page, "target.volume")).hasValue(chosen);
        assertThat(page.locator("[id='b-target.volume'] .choices")).hasCount(0);
        assertNothingWrong(browser);
    }

    @Test
    void whoSavesSecondSeesBothAndChooses() {
        Page one = started(RealBrowser.Device.DESK);
        save(one);
        Page other = browser.open(
                studio.page(one.url().replaceFirst("https?://[^/]+", "").replaceFirst("\\?.*", "")),
                RealBrowser.Device.DESK);
        field(one, "target.strength").fill("24 %");
        field(other, "target.sugar").fill("250 g/L");
        assertThat(other.locator("#reading")).containsText("250");
        save(one);

        other.locator("button[value=save]").click();
        assertThat(other.locator("h1")).hasText("Somebody saved this recipe meanwhile");
        assertThat(other.locator("main")).containsText("24 %");
        assertThat(other.locator("main")).containsText("250 g/L");
        assertThat(RealBrowser.barriers(other)).isEmpty();
        other.locator("button[value=merge]").click();
        other.waitForURL(RECIPE);
        assertThat(field(other, "target.strength")).hasValue("24 %");
        assertThat(field(other, "target.sugar")).hasValue("250 g/L");
        other.navigate(other.url().replaceFirst("\\?.*", "") + "/versions");
        assertThat(other.locator("main")).containsText("Revision 3");
    }

    @Test
    void whatIsTypedWhileTheStudioIsKilledCatchesUp() {
        Page page = started(RealBrowser.Device.PHONE);
        save(page);
        field(page, "target.strength").fill("24 %");
        assertThat(page.locator("#reading")).containsText("24.0");
        studio.kill();
        field(page, "target.strength").fill("27 %");
        field(page, "title").fill("Quince, late");
        assertThat(page.locator("#watch")).containsText("The studio does not answer.");
        studio = OpenStudio.at(studio.port(), dir.resolve("data"));
        page.locator("#reading")
                .filter(new Locator.FilterOptions().setHasText("27.0"))
                .waitFor(new Locator.WaitForOptions().setTimeout(20_000));
        page.reload();
        assertThat(field(page, "target.strength")).hasValue("27 %");
        assertThat(field(page, "title")).hasValue("Quince, late");
    }

    @Test
    void whatIsTypedOutlivesATabThatIsClosedWhileTheStudioIsAway() {
        Page page = started(RealBrowser.Device.PHONE);
        String address = page.url();
        studio.kill();
        field(page, "target.strength").fill("29 %");
        assertThat(page.locator("#watch")).containsText("The studio does not answer.");
        studio = OpenStudio.at(studio.port(), dir.resolve("data"));
        Page again = page.context().newPage();
        page.close();
        again.navigate(address);
        assertThat(field(again, "target.strength")).hasValue("29 %");
        assertThat(again.locator("#reading")).containsText("29.0");
    }

    @Test
    void aRecipeFileThatIsWrongComesBackWithEverySlipAndItsText() {
        Page page = browser.open(studio.page("/compose/new"), RealBrowser.Device.DESK);
        page.locator("#text").fill("stillroom: 1\ntitle: Wrong\ntarget: {volume: much, strenght: 30 %}\n");
        page.locator("form[action='/compose/import'] button").last().click();
        assertThat(page.locator(".told li")).hasCount(3);
        assertThat(page.locator("main")).containsText("line 3");
        assertThat(page.locator("#text-0")).hasValue(Pattern.compile(".*title: Wrong.*", Pattern.DOTALL));
        page.locator("#text-0").fill("""
                        stillroom: 1
                        title: Right
                        target: {volume: 1 L, strength: 30 %}
                        lines: [{use: spirit 96 %, amount: free}, {use: water, amount: free}]
                        """);
        page.locator("form[action='/compose/import'] button").first().click();
        page.waitForURL(RECIPE);
        assertThat(page.locator("#reading")).containsText("30.0");
    }

    @Test
    void whatGoesOutAsAFileComesInTheSame() throws IOException {
        Page page = started(RealBrowser.Device.DESK);
        save(page);
        Path file = dir.resolve("out.yaml");
        page.waitForDownload(() -> page.locator("a[download]").first().click()).saveAs(file);
        String text = Files.readString(file);
        assertThat(text).startsWith("stillroom: 1").contains("Quince cordial");
        page.navigate(studio.page("/compose/new").toString());
        page.setInputFiles("#file", file);
        page.locator("form[action='/compose/import'] button").last().click();
        page.waitForURL(RECIPE);
        Path again = dir.resolve("again.yaml");
        page.waitForDownload(() -> page.locator("a[download]").first().click()).saveAs(again);
        assertThat(again).hasContent(text);
    }

    @Test
    void aLineIsHeldFreedTakenOutAndPutBack() {
        Page page = started(RealBrowser.Device.PHONE);
        String before = field(page, "lines.0.amount").inputValue();
        assertThat(before).isEqualTo("free");
        page.locator("#line-0 button[value='hold:0']").tap();
        assertThat(field(page, "lines.0.amount")).hasValue(Pattern.compile("[0-9.]+ g"));
        page.locator("#line-0 button[value='free:0']").tap();
        assertThat(field(page, "lines.0.amount")).hasValue("free");
        int lines = page.locator(".lines > li").count();
        String use = field(page, "lines.1.use").inputValue();
        page.locator("#line-1 button[value='remove:lines.1']").tap();
        assertThat(page.locator(".lines > li")).hasCount(lines - 1);
        page.locator("button[value=put-back]").tap();
        assertThat(page.locator(".lines > li")).hasCount(lines);
        assertThat(field(page, "lines.1.use")).hasValue(use);
        assertNothingWrong(browser);
    }

    @Test
    void whatIfAndSwapShowTheDifferenceBeforeAnythingChanges() {
        Page page = started(RealBrowser.Device.DESK);
        field(page, "target.strength").fill("24 %");
        assertThat(page.locator("#reading")).containsText("24.0");
        String recipe = page.url().replaceFirst("\\?.*", "");
        page.navigate(recipe + "/what-if");
        assertThat(page.locator("table tbody tr")).hasCount(5);
        assertThat(page.locator("table tbody tr").last()).containsText("96");
        page.navigate(recipe + "/swap?line=0");
        page.locator("#with").selectOption("spirit 63 %");
        page.locator("form[method=get] button").click();
        assertThat(page.locator("main")).containsText("spirit 63 %");
        page.locator("button[value=work]").click();
        page.waitForURL(RECIPE);
        assertThat(field(page, "lines.0.use")).hasValue("spirit 63 %");
        assertThat(page.locator("#reading")).containsText("24.0");
        assertNothingWrong(browser);
    }

    @Test
    void withoutScriptsTheFormStillWorksBySubmit() {
        Page page = browser.open(
                studio.page("/compose/new"), RealBrowser.Device.PHONE, options -> options.setJavaScriptEnabled(false));
        page.locator("#title").fill("Plain");
        page.locator("form[action='/compose/new'] button").tap();
        page.waitForURL(RECIPE);
        page.locator("[name='target.strength']").fill("22 %");
        page.locator("button[value='add:lines']").tap();
        assertThat(page.locator("#reading")).containsText("22.0");
        page.locator("button[value=save]").tap();
        page.waitForURL(RECIPE);
        assertThat(page.locator("main")).containsText("Saved as revision 1");
    }

    @Test
    void byKeysAloneFromTheListToASavedRecipe() {
        Page page = started(RealBrowser.Device.DESK);
        field(page, "target.strength").focus();
        page.keyboard().press("Control+A");
        page.keyboard().type("23 %");
        page.keyboard().press("Tab");
        assertThat(page.evaluate("document.activeElement.name")).isEqualTo("target.sugar");
        page.keyboard().press("Enter");
        assertThat(page.locator("#reading")).containsText("23.0");
        assertThat(page.evaluate("document.activeElement.name")).isEqualTo("target.sugar");
        page.locator("button[value=save]").focus();
        page.keyboard().press("Enter");
        page.waitForURL(RECIPE);
        assertThat(page.locator("main")).containsText("Saved as revision 1");
    }
}
