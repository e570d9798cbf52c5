package org.stillroom.e2e;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * Chromium without a window. It keeps the page off the network and notes whatever goes wrong in it.
 *
 * <p>The browser is the one that {@code -Dchromium=PATH} names, else the first that the machine's path has.
 */
final class RealBrowser implements AutoCloseable {
    private static final List<String> FLAGS = List.of(
            "--no-sandbox", // the tests also run as root
            "--disable-gpu",
            "--disable-quic",
            "--no-first-run",
            "--disable-background-networking",
            "--disable-component-update",
            "--disable-sync");

    private final Playwright playwright;
    private final Browser browser;
    private final List<String> problems = new ArrayList<>();

    /** A screen that pages are looked at on. */
    enum Device {
        /** What WCAG 2.2, 1.4.10, asks a page to fit without scrolling sideways; also a desk at four times its size. */
        NARROW(320, 640),
        PHONE(390, 844),
        TABLET(1024, 768),
        DESK(1280, 900),
        WIDE(1440, 900);

        private final int width;
        private final int height;

        Device(int width, int height) {
            this.width = width;
            this.height = height;
        }
    }

    RealBrowser() {
        playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(chromium())
                        .setArgs(FLAGS));
    }

    /** Opens a file as a page. */
    Page open(Path file, Device device) {
        return open(file.toUri(), device);
    }

    /** Opens a page; it may load from its own server or file and from nowhere else. */
    Page open(URI address, Device device) {
        return open(address, device, options -> {});
    }

    /** Opens a page in a browser that is more than usual, such as dark, without scripts, or of another language. */
    Page open(URI address, Device device, Consumer<Browser.NewContextOptions> more) {
        boolean held = device == Device.PHONE || device == Device.NARROW;
        Browser.NewContextOptions options = new Browser.NewContextOptions()
                .setViewportSize(device.width, device.height)
                .setHasTouch(held || device == Device.TABLET)
                .setIsMobile(held);
        more.accept(options);
        Page page = browser.newContext(options).newPage();
        page.onConsoleMessage(message -> {
            if (message.type().equals("error")) {
                problems.add(message.text());
            }
        });
        page.onPageError(problems::add);
        page.route(url -> !isAtHome(url, address), route -> {
            problems.add("asked the network for " + route.request().url());
            route.abort();
        });
        page.navigate(address.toString());
        return page;
    }

    private static boolean isAtHome(String url, URI address) {
        return url.startsWith("file:")
                || url.startsWith("data:")
                || (address.getAuthority() != null && url.startsWith("http://" + address.getAuthority() + "/"));
    }

    /** Returns errors and requests to the network so far; a page that stands alone has none. */
    List<String> problems() {
        return List.copyOf(problems);
    }

    /** Returns the rules of accessibility that the page breaks, by name. */
    static List<String> barriers(Page page) {
        return new AxeBuilder(page)
                .analyze().getViolations().stream()
                        .map(rule -> rule.getId() + ": " + rule.getHelp())
                        .toList();
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }

    private static Path chromium() {
        String named = System.getProperty("chromium");
        if (named != null) {
            return Path.of(named);
        }
        return Stream.of(System.getenv("PATH").split(":", -1))
                .flatMap(directory -> Stream.of("chromium", "chromium-browser", "google-chrome")
                        .map(name -> Path.of(directory, name)))
                .filter(Files::isExecutable)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(
                        "no Chromium on this machine: install the package chromium, or name one with -Dchromium=PATH"));
    }
}
