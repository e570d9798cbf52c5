package org.stillroom.studio.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.stillroom.studio.faults.FaultLog;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** Runs the commands in force as they are typed. */
final class Desk {
    private static final JsonMapper JSON = new JsonMapper();

    private Desk() {}

    /** What a run left: exit code and both streams. */
    record Run(int exit, String out, String err) {
        JsonNode json() {
            return JSON.readTree(out);
        }

        double number(String key) {
            return json().get(key).doubleValue();
        }
    }

    /** Runs a line; a tilde stands for a space within an argument. */
    static Run type(String line) {
        List<String> words = new ArrayList<>();
        for (String word : line.strip().split(" +", -1)) {
            words.add(word.replace('~', ' '));
        }
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Screen screen = new Screen(
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                Page.Colour.NOT_SEEN);
        FaultLog log = new FaultLog(Path.of("target", "test-desk", "stillroom.log"));
        Exit exit = new Cli(Commands.all(), screen, log).run(words.toArray(String[]::new));
        return new Run(exit.code(), out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    /** Runs a line that must be answered, as a script would. */
    static Run ask(String line) {
        Run run = type(line + " --json");
        if (run.exit() != 0) {
            throw new AssertionError("exit " + run.exit() + " of " + line + ": " + run.err());
        }
        return run;
    }
}
