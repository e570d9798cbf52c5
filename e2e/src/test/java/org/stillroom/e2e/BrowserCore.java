package org.stillroom.e2e;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Objects;
import org.stillroom.page.Exports;

/** The core as compiled for browsers, loaded into a page of a real one as {@code window.core}. */
final class BrowserCore {
    private BrowserCore() {}

    static byte[] module() {
        try (InputStream in = Exports.class.getResourceAsStream("module/core.js")) {
            return Objects.requireNonNull(in, "the module for browsers has not been built")
                    .readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Page open(RealBrowser browser, Path folder) {
        try {
            Path blank = Files.writeString(folder.resolve("blank.html"), "<!doctype html><title>Core</title>");
            Page page = browser.open(blank, RealBrowser.Device.DESK);
            String url = "data:text/javascript;base64," + Base64.getEncoder().encodeToString(module());
            page.evaluate("async url => { window.core = await import(url); }", url);
            return page;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
