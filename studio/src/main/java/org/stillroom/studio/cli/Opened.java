package org.stillroom.studio.cli;

import java.io.IOException;
import java.util.concurrent.CountDownLatch;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.web.frame.StudioServer;

/** An open studio: says where it is, and stays until the process is told to end. */
record Opened(StudioServer server, DataFolder folder, String listen, boolean noBrowser) implements Answer {
    @Override
    public Fields fields() {
        return new Fields().put("url", server.url()).put("data", folder.path().toString());
    }

    @Override
    public void print(Page page) {
        page.paragraph("The studio is open at");
        page.verbatim("  " + server.url());
        page.paragraph("Everything is kept in " + folder.path() + ". Close it with Ctrl-C; nothing is lost.");
        if (!listen.equals("127.0.0.1")) {
            page.paragraph("Others of the network can reach it with the passphrase. What they send travels readable for"
                    + " everybody on that network; use it only on one that you trust. The screen stays awake, and the page"
                    + " can be installed, only on this machine.");
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
