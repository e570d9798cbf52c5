package org.stillroom.e2e;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Tells how long a person waits: for the first page after {@code ./stillroom}, and for what comes of each key that is pressed in
 * Compose. No test by its name, since nothing is asked of it: {@code bench/run waits}.
 */
class Pace {
    private static final int STARTS = 7;
    private static final int ROUNDS = Integer.getInteger("rounds", 40);
    private static final int BETWEEN_KEYS = 180;
    /** From the key to the answer laid into the page, and to the frame that shows it. */
    private static final String WATCH = """
        () => {
            window.waits = { laid: [], shown: [] };
            performance.setResourceTimingBufferSize(5000);
            performance.clearResourceTimings();
            let pressed = 0;
            document.addEventListener('input', () => { pressed = performance.now(); }, true);
            addEventListener('stillroom:laid', () => {
                const since = pressed;
                waits.laid.push(performance.now() - since);
                requestAnimationFrame(() => {
                    const painted = new MessageChannel();
                    painted.port1.onmessage = () => waits.shown.push(performance.now() - since);
                    painted.port2.postMessage('');
                });
            });
        }
        """;

    private static final String ASKED = """
        performance.getEntriesByType('resource').filter(each => each.name.endsWith('/live'))
            .map(each => each.responseEnd - each.startTime)
        """;

    private final HttpClient client =
            HttpClient.newBuilder().followRedirects(HttpClient.Redirect.NORMAL).build();

    @TempDir
    Path dir;

    @Test
    void firstPage() throws IOException, InterruptedException {
        double[] waits = new double[STARTS];
        for (int i = 0; i < STARTS; i++) {
            long before = System.nanoTime();
            try (OpenStudio studio = OpenStudio.byScript(dir.resolve("new-" + i))) {
                ask(studio.page("/"));
                waits[i] = (System.nanoTime() - before) / 1e6;
            }
        }
        tell("first page after ./stillroom, on a data folder that is new", waits);
    }

    @Test
    void everyPageInMemory() throws IOException, InterruptedException {
        String recipe = DemoStudio.stock(dir.resolve("data"));
        String batch = Finished.batch(dir.resolve("data"), recipe);
        String hydrometer = DemoStudio.hydrometer(dir.resolve("data"));
        try (OpenStudio studio = OpenStudio.byScript(dir.resolve("data"))) {
            List<String> paths = StudioPages.all(recipe, batch, hydrometer);
            for (String path : paths) {
                ask(studio.page(path));
            }
            String resident = Files.readAllLines(Path.of("/proc/" + studio.pid() + "/status")).stream()
                    .filter(line -> line.startsWith("VmRSS:"))
                    .findFirst()
                    .orElseThrow();
            System.out.printf(
                    Locale.ROOT,
                    "after %d pages the studio holds %d MiB%n",
                    paths.size(),
                    Long.parseLong(resident.replaceAll("\\D", "")) / 1024);
        }
    }

    @Test
    void typing() {
        String recipe = DemoStudio.stock(dir.resolve("data"));
        try (OpenStudio studio = OpenStudio.byScript(dir.resolve("data"));
                RealBrowser browser = new RealBrowser()) {
            Page page = browser.open(studio.page("/compose/" + recipe), RealBrowser.Device.DESK);
            page.unrouteAll(); // every request would first be asked of this program
            Locator strength = page.locator("input[name='target.strength']");
            type(page, strength, ROUNDS / 5); // warms the studio up; not told
            page.evaluate(WATCH);
            type(page, strength, ROUNDS);
            tell("a key pressed in Compose, until its answer is in the page", waits(page, "waits.laid"));
            tell("of it, from asking the studio to its whole answer", waits(page, ASKED));
            tell("the same, until the screen shows it", waits(page, "waits.shown"));
        }
    }

    /** Types strengths as a person does, key by key, with what a strength passes on its way. */
    private static void type(Page page, Locator strength, int rounds) {
        for (int i = 0; i < rounds; i++) {
            strength.fill("");
            strength.pressSequentially(
                    (24 + i % 7) + "." + i % 10 + " %", new Locator.PressSequentiallyOptions().setDelay(BETWEEN_KEYS));
            page.waitForTimeout(BETWEEN_KEYS);
        }
    }

    private static double[] waits(Page page, String script) {
        List<?> waits = (List<?>) page.evaluate(script);
        return waits.stream().mapToDouble(each -> ((Number) each).doubleValue()).toArray();
    }

    private void ask(URI address) throws IOException, InterruptedException {
        HttpResponse<String> answer =
                client.send(HttpRequest.newBuilder(address).build(), HttpResponse.BodyHandlers.ofString());
        if (answer.statusCode() >= 500) {
            throw new IOException(address + " answered " + answer.statusCode());
        }
    }

    private static void tell(String what, double[] milliseconds) {
        double[] ordered = IntStream.range(0, milliseconds.length)
                .mapToDouble(i -> milliseconds[i])
                .sorted()
                .toArray();
        System.out.printf(
                Locale.ROOT,
                "%s: %d times; half within %.0f ms, 95 %% within %.0f ms, slowest %.0f ms%n",
                what,
                ordered.length,
                part(ordered, 0.50),
                part(ordered, 0.95),
                part(ordered, 1.00));
    }

    private static double part(double[] ordered, double part) {
        return ordered[(int) Math.ceil(part * ordered.length) - 1];
    }
}
