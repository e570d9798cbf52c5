package org.stillroom.studio;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.stillroom.studio.cli.Cli;
import org.stillroom.studio.cli.Commands;
import org.stillroom.studio.cli.Entry;
import org.stillroom.studio.cli.Exit;
import org.stillroom.studio.cli.Page;
import org.stillroom.studio.cli.Screen;
import org.stillroom.studio.faults.FaultLog;
import org.stillroom.studio.faults.LibraryLogs;

/**
 * Runs the example of every command once, for people and for scripts, and throws the answers away.
 *
 * <p>The build does so while it writes the archive of loaded classes, from which later starts are quick. Examples name
 * files from the root of the source tree, so it runs there.
 */
public final class Rehearsal {
    private Rehearsal() {}

    public static void main(String[] args) {
        LibraryLogs.quiet();
        PrintStream nowhere = new PrintStream(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(System.err, true, StandardCharsets.UTF_8);
        Screen screen = new Screen(nowhere, err, Page.Colour.NOT_SEEN);
        Cli cli = new Cli(Commands.all(), screen, FaultLog.ofPerson());
        boolean done = cli.run("--help") == Exit.DONE;
        for (Entry entry : Commands.all()) {
            for (String option : List.of("--explain", "--json")) {
                List<String> typed = new ArrayList<>(entry.typed());
                typed.add(option);
                done &= cli.run(typed.toArray(String[]::new)) == Exit.DONE;
            }
        }
        System.exit(done ? Exit.DONE.code() : Exit.FAULT.code());
    }
}
