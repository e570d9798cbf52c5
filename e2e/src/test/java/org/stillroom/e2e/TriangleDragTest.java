package org.stillroom.e2e;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Mouse;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.stillroom.core.mixing.PlanClarity;
import org.stillroom.core.plan.Plan;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.triangle.HazeShade;
import org.stillroom.core.triangle.Plate;

/** The point of the triangle under mouse, finger and keys: amounts follow, and the target is written as the point says. */
class TriangleDragTest {
    private static final String RECIPE = """
            stillroom: 1
            title: Medlar and hyssop
            target: {volume: 1 L, strength: %s, sugar: %s}
            ingredients:
              - {name: grain spirit, kind: spirit, strength: 70 %%}
            lines:
              - {use: grain spirit, amount: free}
              - {use: white sugar, amount: free}
              - {use: honey, amount: 60 g}
              - {use: water, amount: free}
            """;

    private static RealBrowser browser;
    private static TrianglePage site;
    private Page page;

    @BeforeAll
    static void launch() {
        browser = new RealBrowser();
        site = new TrianglePage(recipe("28 %", "180 g/L"));
    }

    @AfterAll
    static void close() {
        site.close();
        browser.close();
    }

    @BeforeEach
    void openAtTheDesk() {
        open(RealBrowser.Device.DESK);
    }

    @AfterEach
    void nothingWentWrong() {
        assertThat(browser.problems()).isEmpty();
        page.context().close();
    }

    private static String recipe(String strength, String sugar) {
        return RECIPE.formatted(strength, sugar);
    }

    private void open(RealBrowser.Device device) {
        page = browser.open(site.address(), device);
        page.evaluate("window.told = []; for (const kind of ['input', 'change']) document.addEventListener(kind,"
                + " event => told.push(kind + ' ' + event.target.dataset.target + ' ' + event.target.value))");
    }

    private String field(String target) {
        return page.locator("input[data-target=" + target + "]").inputValue();
    }

    private String grams(int line) {
        return cell(line, "g");
    }

    private String cell(int line, String unit) {
        return page.locator("[data-line='" + line + "'][data-unit=" + unit + "]")
                .textContent();
    }

    private Locator point() {
        return page.locator("#point");
    }

    private record Place(double x, double y) {}

    private Place place() {
        BoundingBox box = page.locator("#point .ring").boundingBox();
        return new Place(box.x + box.width / 2, box.y + box.height / 2);
    }

    /** What is written as the target must plan to what the cells show. */
    private void assertThatTheTargetGivesTheAmountsShown() {
        Plan plan = TrianglePage.plan(recipe(field("strength"), field("sugar")));
        assertThat(plan.reached()).isTrue();
        for (int i = 0; i < plan.lines().size(); i++) {
            assertThat(grams(i))
                    .isEqualTo(QuantityWords.fixed(plan.lines().get(i).grams(), 1));
        }
    }

    @Test
    void theMouseTakesItAlongAndTheAmountsFollow() {
        Place from = place();
        page.mouse().move(from.x, from.y);
        page.mouse().down();
        page.mouse().move(from.x + 15, from.y - 40, new Mouse.MoveOptions().setSteps(8));
        assertThat(page.evaluate("told.length")).as("told while moving").isEqualTo(0);
        String whileMoving = grams(0);
        assertThat(whileMoving)
                .isNotEqualTo(QuantityWords.fixed(site.plan().lines().get(0).grams(), 1));
        page.mouse().up();
        assertThat(grams(0)).isEqualTo(whileMoving);
        assertThat(page.evaluate("told.map(each => each.split(' ').slice(0, 2).join(' '))"))
                .isEqualTo(List.of("input strength", "input sugar", "change strength", "change sugar"));
        assertThat(place().y).isCloseTo(from.y - 40, within(3.0));
        assertThatTheTargetGivesTheAmountsShown();
    }

    @Test
    void theKeysMoveItByStepsAndWithShiftFinely() {
        point().focus();
        page.keyboard().press("ArrowUp");
        assertThat(field("strength")).isEqualTo("28.5\u00a0%");
        assertThat(field("sugar")).as("as it was typed").isEqualTo("180 g/L");
        page.keyboard().press("Shift+ArrowUp");
        assertThat(field("strength")).isEqualTo("28.6\u00a0%");
        page.keyboard().press("ArrowRight");
        page.keyboard().press("Shift+ArrowRight");
        assertThat(field("sugar")).isEqualTo("186\u00a0g/L");
        page.keyboard().press("PageDown");
        assertThat(field("strength")).isEqualTo("23.6\u00a0%");
        assertThat(point().getAttribute("aria-valuetext")).isEqualTo("23.6\u00a0%\u00a0vol, 186\u00a0g/L");
        page.waitForCondition(() -> ((Number) page.evaluate("told.length")).intValue() >= 4);
        assertThatTheTargetGivesTheAmountsShown();
    }

    @Test
    void aFingerTakesItAlongAndThePageDoesNotScroll() {
        page.context().close();
        open(RealBrowser.Device.PHONE);
        point().scrollIntoViewIfNeeded();
        Object scrolled = page.evaluate("scrollY");
        Place from = place();
        new Finger(page).draw(from.x, from.y, from.x, from.y - 60);
        assertThat(page.evaluate("scrollY")).isEqualTo(scrolled);
        assertThat(field("strength")).isNotEqualTo("28 %");
        assertThat(page.locator("#said").textContent()).isNotEqualTo("28 %");
        assertThatTheTargetGivesTheAmountsShown();
    }

    @Test
    void aFingerBesideThePointScrollsThePage() {
        page.context().close();
        open(RealBrowser.Device.PHONE);
        page.locator("#tri").scrollIntoViewIfNeeded();
        page.evaluate("scrollTo(0, 0)");
        BoundingBox plate = page.locator("#tri").boundingBox();
        Place beside = new Place(plate.x + plate.width - 20, plate.y + 40);
        new Finger(page).draw(beside.x, beside.y, beside.x, Math.max(10, beside.y - 200));
        page.waitForCondition(() -> ((Number) page.evaluate("scrollY")).doubleValue() > 20);
        assertThat(field("strength")).isEqualTo("28 %");
    }

    @Test
    void theShadingAndItsWordsFollowTheOilsOfTheMixture() {
        page.context().close();
        String macerate = """
                stillroom: 1
                title: Medlar and juniper
                target: {volume: 1 L, strength: 25 %, sugar: 180 g/L}
                ingredients:
                  - {name: juniper essence, kind: essence, strength: 90 %, contains: {oil: 4 g/L}}
                lines:
                  - {use: juniper essence, amount: free}
                  - {use: white sugar, amount: free}
                  - {use: water, amount: free}
                """;
        try (TrianglePage oily = new TrianglePage(macerate)) {
            page = browser.open(oily.address(), RealBrowser.Device.DESK);
            String before = page.locator("#area-cloudy").getAttribute("d");
            String words = page.locator("#haze").textContent();
            point().focus();
            for (int i = 0; i < 6; i++) {
                page.keyboard().press("PageUp");
            }
            page.waitForCondition(() -> !words.equals(page.locator("#haze").textContent()));
            HazeShade expected = Objects.requireNonNull(
                    HazeShade.of(PlanClarity.liquid(TrianglePage.plan(macerate.replace("25 %", "55 %"))), Plate.PART));
            page.waitForCondition(() ->
                    page.locator("#haze").textContent().contains(QuantityWords.fixed(expected.gramsPerLitre(), 2)));
            assertThat(page.locator("#area-cloudy").getAttribute("d"))
                    .isEqualTo(expected.cloudy())
                    .isNotEqualTo(before);
            assertThat(page.locator("#haze [data-verdict]").textContent())
                    .isEqualTo(expected.verdict().label());
        }
    }

    @Test
    void beyondReachItIsHeldAtTheBorderAndSaysSo() {
        Place from = place();
        page.mouse().move(from.x, from.y);
        page.mouse().down();
        page.mouse().move(from.x, 0);
        assertThat(page.locator("#at-the-border").isVisible()).isTrue();
        page.mouse().up();
        assertThat(page.locator("#point").getAttribute("aria-valuetext")).contains("As far as these lines reach");
        assertThatTheTargetGivesTheAmountsShown();
    }

    @Test
    void buttonsDoTheSame() {
        page.getByLabel("Half a per cent weaker").click();
        assertThat(field("strength")).isEqualTo("27.5\u00a0%");
        assertThatTheTargetGivesTheAmountsShown();
        page.waitForCondition(() -> ((Number) page.evaluate("told.length")).intValue() >= 4);
        assertThat(page.locator("#said").textContent()).startsWith("27.5");
    }

    @Test
    void backWhereItWasTheTargetReadsAsItWasTyped() {
        point().focus();
        page.keyboard().press("ArrowUp");
        page.keyboard().press("ArrowDown");
        assertThat(field("strength")).isEqualTo("28 %");
    }

    @Test
    void solidsHaveNoVolumeAndTotalsFollow() {
        point().focus();
        page.keyboard().press("ArrowUp");
        assertThat(page.locator("[data-line='1'][data-unit=ml]").textContent()).isEqualTo("–");
        assertThat(page.locator("[data-line=total][data-unit=ml]").textContent())
                .isEqualTo("1000");
        assertThat(Double.parseDouble(
                        page.locator("[data-line='0'][data-unit=ml]").textContent()))
                .isCloseTo(285.0 * 1000 / 700, within(0.06));
    }

    @Test
    void amountsInOuncesFollowInOunces() {
        point().focus();
        page.keyboard().press("ArrowUp");
        double grams = Double.parseDouble(grams(0));
        double millilitres = Double.parseDouble(cell(0, "ml"));
        assertThat(Double.parseDouble(cell(0, "oz"))).isCloseTo(grams / 28.3495, within(0.01));
        assertThat(Double.parseDouble(cell(0, "floz"))).isCloseTo(millilitres / 29.5735, within(0.01));
        assertThat(cell(1, "floz")).isEqualTo("–");
    }

    @Test
    void dosesPerLitreFollow() {
        point().focus();
        page.keyboard().press("ArrowUp");
        Plan plan = TrianglePage.plan(recipe(field("strength"), field("sugar")));
        for (int i = 0; i < plan.lines().size(); i++) {
            double drops = 1000.0 * plan.lines().get(i).grams() / plan.millilitres() / 0.05;
            assertThat(page.locator("[data-dose='" + i + "']").textContent()).isEqualTo(QuantityWords.figures(drops));
        }
    }

    @Test
    void theRowOfTheTableFollows() {
        point().focus();
        page.keyboard().press("ArrowUp");
        assertThat(page.locator("#triangle tbody tr")
                        .first()
                        .locator("td")
                        .first()
                        .textContent())
                .isEqualTo("28.5");
    }

    @Test
    void withoutScriptItIsAPictureWithWords() throws IOException {
        try (InputStream in = site.address().toURL().openStream()) {
            String html = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertThat(html)
                    .contains("parts ethanol", "strongest within reach", "class=\"contour\"", "class=\"reach\"");
        }
        assertThat(page.locator("#triangle table tbody tr").count()).isEqualTo(5);
    }

    @Test
    void itHasNoBarriers() {
        page.context().close();
        open(RealBrowser.Device.PHONE);
        assertThat(RealBrowser.barriers(page)).isEmpty();
    }
}
