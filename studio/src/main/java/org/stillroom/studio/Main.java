package org.stillroom.studio;

import org.stillroom.studio.cli.Cli;
import org.stillroom.studio.cli.Commands;
import org.stillroom.studio.cli.Exit;
import org.stillroom.studio.cli.Screen;
import org.stillroom.studio.faults.FaultLog;
import org.stillroom.studio.faults.LibraryLogs;

/** Starts Stillroom. */
public final class Main {
    private Main() {}

    public static void main(String[] args) {
        LibraryLogs.quiet();
        Exit exit = new Cli(Commands.all(), Screen.ofProcess(), FaultLog.ofPerson()).run(args);
        System.exit(exit.code());
    }
}
