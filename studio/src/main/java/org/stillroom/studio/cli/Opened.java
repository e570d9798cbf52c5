package org.stillroom.studio.cli;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.web.frame.StudioServer;

/** An open studio: says where it is, and stays until the process is told to end. */
record Opened(StudioServer server, DataFolder folder, boolean noBrowser) implements Answer {
    @Override
    public Fields fields() {
        return new Fields()
                .put("url", server.url())
                .putTexts("urls_for_others", server.urlsForOthers())
                .put("data", folder.path().toString());
    }

    @Override
    public void print(Page page) {
        page.paragraph("The studio is open at");
        page.verbatim("  " + server.url());
        page.paragraph("Everything is kept in " + folder.path() + ". Close it with Ctrl-C; nothing is lost.");
        List<String> others = server.urlsForOthers();
        if (!others.isEmpty()) {
            page.paragraph("Others of the network reach it with the passphrase, at");
            others.forEach(url -> page.verbatim("  " + url));
            page.paragraph("What they send travels readable for everybody on that network; use it only on one that you"
                    + " trust. Browsers keep the screen awake, and install the page, only on this machine.");
        }
    }

    @Override
    public void stay() {
        Runtime.getRuntime().addShutdownHook(new Thread(server::close, "closing"));
        if (!noBrowser) {
            startBrowser(server.url());
        }
        try {
            new CountDownLatch(1).await();
        } catch (InterruptedException told) {
            Thread.currentThread().interrupt();
        }
    }

    /** Asks the desktop for a browser; where there is none, the address on the screen has to do. */
    private static void startBrowser(String url) {
        boolean desktop = System.getenv("DISPLAY") != null || System.getenv("WAYLAND_DISPLAY") != null;
        if (desktop) {
            try {
                new ProcessBuilder("xdg-open", url)
                        .redirectErrorStream(true)
                        .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                        .start();
            } catch (IOException none) {
                System.err.println("No browser could be started; open the address above in one.");
            }
        }
    }
}
