package org.stillroom.e2e;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Takes pictures of the studio. No test by its name, so that it runs only when it is asked for: {@code scripts/pictures}.
 *
 * <p>{@code -Dpictures=FOLDER} says where to; {@code -Dpictures.every=true} takes every page, on three screens, by day and night.
 */
class Pictures {
    private static final Path FOLDER = Path.of(System.getProperty("pictures", "docs/pictures"));

    @TempDir
    Path dir;

    private String recipe;

    private String batch;
    private String hydrometer;
    private RealBrowser browser;
    private OpenStudio studio;

    @BeforeEach
    void open() {
        recipe = DemoStudio.stock(dir.resolve("data"));
        batch = Finished.batch(dir.resolve("data"), recipe);
        hydrometer = DemoStudio.hydrometer(dir.resolve("data"));
        browser = new RealBrowser();
        studio = OpenStudio.on(dir.resolve("data"));
    }

    @AfterEach
    void close() {
        browser.close();
        studio.close();
    }

    @Test
    void take() {
        if (Boolean.getBoolean("pictures.every")) {
            everyPage();
        } else {
            Page page = browser.open(studio.page("/compose/" + recipe), RealBrowser.Device.WIDE);
            shoot(page, "compose.png", false);
            page.context().close();
            page = browser.open(studio.page("/shelf"), RealBrowser.Device.PHONE);
            shoot(page, "shelf-phone.png", false);
        }
    }

    private void everyPage() {
        for (String path : paths()) {
            for (RealBrowser.Device device :
                    List.of(RealBrowser.Device.PHONE, RealBrowser.Device.TABLET, RealBrowser.Device.WIDE)) {
                for (ColorScheme scheme : List.of(ColorScheme.LIGHT, ColorScheme.DARK)) {
                    Page page = browser.open(studio.page(path), device, options -> options.setColorScheme(scheme));
                    String name = path.replaceAll("[^a-z0-9-]+", "_") + "." + device + "." + scheme + ".png";
                    shoot(page, name.toLowerCase(Locale.ROOT), true);
                    page.context().close();
                }
            }
        }
    }

    private List<String> paths() {
        List<String> all = new ArrayList<>(StudioPages.all(recipe, batch, hydrometer));
        all.add(begunMake());
        return all;
    }

    private String begunMake() {
        Page page = browser.open(studio.page("/make/begin?recipe=" + recipe), RealBrowser.Device.DESK);
        page.locator("form.begin button").click();
        page.waitForURL(Pattern.compile(".*/make/[a-z0-9]{6,}$"));
        String path = page.url().substring(page.url().indexOf("/make/"));
        page.context().close();
        return path;
    }

    private static void shoot(Page page, String name, boolean whole) {
        page.screenshot(
                new Page.ScreenshotOptions().setPath(FOLDER.resolve(name)).setFullPage(whole));
    }
}
