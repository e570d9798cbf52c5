package org.stillroom.e2e;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The packaged studio, open in a process of its own on the folder it is given. */
final class OpenStudio implements AutoCloseable {
    private static final Pattern URL = Pattern.compile("\"url\"\\s*:\\s*\"([^\"]+)\"");
    private static final long SECONDS_TO_CLOSE = 20;

    private final Process process;
    private final Path said;
    private final URI address;

    private OpenStudio(Process process, Path said, URI address) {
        this.process = process;
        this.said = said;
        this.address = address;
    }

    /** Opens a studio at any free port; what it keeps lies in a folder that may be there from before. */
    static OpenStudio on(Path data, String... more) {
        return at(0, data, more);
    }

    /** Opens a studio at a port, as after a restart of one whose pages are still looked at. */
    static OpenStudio at(int port, Path data, String... more) {
        List<String> packaged = List.of(
                Program.java().toString(),
                "-XX:+UseSerialGC",
                "-XX:TieredStopAtLevel=1",
                "-Xmx256m",
                "-jar",
                Program.jar().toString());
        return opened(packaged, port, data, more);
    }

    /** Opens a studio as a person does, by the script of a tree that is built. */
    static OpenStudio byScript(Path data) {
        return opened(List.of(Program.root().resolve("stillroom").toString()), 0, data);
    }

    private static OpenStudio opened(List<String> program, int port, Path data, String... more) {
        try {
            Path said = Files.createTempFile("studio", ".txt");
            Process process = started(program, port, data, said, more);
            BufferedReader lines = process.inputReader(StandardCharsets.UTF_8);
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                Matcher found = URL.matcher(line);
                if (found.find()) {
                    return new OpenStudio(process, said, URI.create(found.group(1)));
                }
            }
            throw new IllegalStateException("the studio did not open: " + Files.readString(said));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Process started(List<String> program, int port, Path data, Path said, String... more)
            throws IOException {
        List<String> command = new ArrayList<>(program);
        command.addAll(List.of("open", "--no-browser", "--json"));
        command.addAll(List.of("--port", "" + port, "--data", data.toString()));
        command.addAll(List.of(more));
        ProcessBuilder builder = new ProcessBuilder(command).redirectError(said.toFile());
        builder.environment().put("XDG_STATE_HOME", said + "-state");
        return builder.start();
    }

    /** Returns the address of a page, by its path such as "/settings". */
    URI page(String path) {
        return address.resolve(path);
    }

    int port() {
        return address.getPort();
    }

    long pid() {
        return process.pid();
    }

    /** Returns what it complained of since it opened. */
    String complaints() throws IOException {
        return Files.readString(said);
    }

    /** Ends it as a power cut would: nothing is written any more. */
    void kill() {
        process.destroyForcibly();
        ended();
    }

    /** Asks it to close, as Ctrl-C does, and waits until it has. */
    @Override
    public void close() {
        process.destroy();
        ended();
    }

    private void ended() {
        try {
            if (!process.waitFor(SECONDS_TO_CLOSE, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new IllegalStateException("the studio does not close");
            }
        } catch (InterruptedException told) {
            process.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }
}
