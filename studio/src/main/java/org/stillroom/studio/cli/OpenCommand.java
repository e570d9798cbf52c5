package org.stillroom.studio.cli;

import java.io.Console;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.HttpURLConnection;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.faults.FaultLog;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.store.StoreTrouble;
import org.stillroom.studio.web.Rooms;
import org.stillroom.studio.web.frame.Passphrase;
import org.stillroom.studio.web.frame.StudioServer;
import picocli.CommandLine.Option;

/** Opens the studio in the browser and stays until it is told to close. */
final class OpenCommand extends Subcommand {
    private static final int USUAL_PORT = 7820;
    private static final int SHORTEST_PASSPHRASE = 10;

    @Option(
            names = "--port",
            defaultValue = "" + USUAL_PORT,
            description = "where to listen; 0 takes any that is free (default: ${DEFAULT-VALUE})")
    private int port;

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "folder of the studio (default: your own, in $XDG_DATA_HOME or ~/.local/share)")
    private @Nullable Path data;

    @Option(names = "--no-browser", description = "do not start a browser")
    private boolean noBrowser;

    @Option(
            names = "--listen",
            paramLabel = "ADDRESS",
            defaultValue = "127.0.0.1",
            description =
                    "let the house's network in, such as 0.0.0.0; needs a passphrase (default: this machine only)")
    private String listen = "";

    @Option(
            names = "--set-passphrase",
            description = "set the passphrase, typed or from STILLROOM_PASSPHRASE, and close again")
    private boolean setPassphrase;

    @Option(names = "--try", description = "open it on a folder of its own, ask for the first page, and close again")
    private boolean attempt;

    @Override
    protected Answer answer(Workings workings) {
        if (port < 0 || port > 65_535) {
            throw Refusal.wrongInput("--port", "there is no port " + port + ".", "Write one from 0 to 65535.");
        }
        try {
            if (attempt) {
                return attempted();
            }
            DataFolder folder = DataFolder.chosenOr(data);
            if (setPassphrase) {
                return passphraseSet(folder);
            }
            return opened(folder, port);
        } catch (StoreTrouble trouble) {
            throw Refusal.wrongInput("open", trouble.message(), trouble.remedy());
        }
    }

    private Opened opened(DataFolder folder, int wanted) {
        Store store = Store.open(folder);
        try {
            StudioServer server = StudioServer.start(
                    new StudioServer.Settings(wanted, listen), store, Rooms.of(store, folder), FaultLog.ofPerson());
            return new Opened(server, folder, noBrowser);
        } catch (RuntimeException | Error failed) {
            store.close();
            throw failed;
        }
    }

    /** Opens a studio that nobody has used and asks for its pages: what a packager wants to know. */
    private Answer attempted() {
        try {
            Path folder = Files.createTempDirectory("stillroom-try-");
            Opened opened = opened(new DataFolder(folder), 0);
            try (StudioServer server = opened.server()) {
                for (String path : server.paths()) {
                    ask(server.url() + path.substring(1));
                }
            } finally {
                remove(folder);
            }
            return new Tried();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void ask(String url) throws IOException {
        HttpURLConnection connection =
                (HttpURLConnection) URI.create(url).toURL().openConnection();
        if (connection.getResponseCode() != 200) {
            throw new IOException(url + " answered " + connection.getResponseCode());
        }
        connection.getInputStream().readAllBytes();
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    private static Answer passphraseSet(DataFolder folder) {
        String typed = System.getenv("STILLROOM_PASSPHRASE");
        if (typed == null) {
            typed = askedFor();
        }
        if (typed.length() < SHORTEST_PASSPHRASE) {
            throw Refusal.wrongInput(
                    "--set-passphrase",
                    "a passphrase has at least " + SHORTEST_PASSPHRASE + " characters.",
                    "Type one at the terminal, or hand it over in STILLROOM_PASSPHRASE.");
        }
        try (Store store = Store.open(folder)) {
            Passphrase.set(store, typed);
        }
        return new PassphraseSet();
    }

    @SuppressWarnings("SystemConsoleNull") // from Java 22 on there always is one, and it answers as well
    private static String askedFor() {
        Console console = System.console();
        char[] asked = console == null ? null : console.readPassword("New passphrase: ");
        return asked == null ? "" : new String(asked);
    }

    private record Tried() implements Answer {
        @Override
        public Fields fields() {
            return new Fields().put("answers", true);
        }

        @Override
        public void print(Page page) {
            page.paragraph("The studio opens and its pages answer.");
        }
    }

    private record PassphraseSet() implements Answer {
        @Override
        public Fields fields() {
            return new Fields().put("passphrase_set", true);
        }

        @Override
        public void print(Page page) {
            page.paragraph("The passphrase is set. Whoever was signed in has to sign in again.");
        }
    }
}
