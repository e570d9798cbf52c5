package org.stillroom.studio.faults;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Where the details of Stillroom's own failures go, each under the id that the person was shown.
 *
 * @param file the log, made when first needed
 */
public record FaultLog(Path file) {
    /** Returns the log in the person's state directory as the XDG base directories specification places it. */
    public static FaultLog ofPerson() {
        return in(System.getenv("XDG_STATE_HOME"), Path.of(System.getProperty("user.home")));
    }

    /** Returns the log under a state directory, or under the usual one of a home where none is named. */
    public static FaultLog in(@Nullable String stateHome, Path home) {
        boolean named = stateHome != null && Path.of(stateHome).isAbsolute();
        Path state = named ? Path.of(stateHome) : home.resolve(".local").resolve("state");
        return new FaultLog(state.resolve("stillroom").resolve("stillroom.log"));
    }

    /**
     * Writes down one fault.
     *
     * @throws IOException when the log cannot be written
     */
    public void write(String id, String version, List<String> typed, Throwable fault) throws IOException {
        Files.createDirectories(file.toAbsolutePath().getParent());
        String head = Instant.now() + " fault " + id + ", stillroom " + version + ", Java "
                + System.getProperty("java.version") + ", typed: " + String.join(" ", typed) + "\n";
        Files.writeString(file, head + details(fault) + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    /** Returns the trace of a fault as text. */
    public static String details(Throwable fault) {
        StringWriter text = new StringWriter();
        fault.printStackTrace(new PrintWriter(text, true));
        return text.toString();
    }
}
