package org.stillroom.studio.cli;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Where a run writes: answers to one stream, complaints to the other, always in UTF-8.
 *
 * @param out answers; flushed when the run ends
 * @param err complaints
 * @param colour whether whoever reads the answers sees colours
 */
public record Screen(PrintStream out, PrintStream err, Page.Colour colour) {
    /** Set by the start script when standard output is a terminal. */
    private static final String TERMINAL = "stillroom.terminal";

    /** Returns the process's own streams; colour only on a terminal, and never where NO_COLOR is set. */
    public static Screen ofProcess() {
        PrintStream out = new PrintStream(
                new BufferedOutputStream(new FileOutputStream(FileDescriptor.out)), false, StandardCharsets.UTF_8);
        PrintStream err = new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8);
        String noColour = System.getenv("NO_COLOR");
        boolean seen = Boolean.getBoolean(TERMINAL) && (noColour == null || noColour.isEmpty());
        return new Screen(out, err, seen ? Page.Colour.SEEN : Page.Colour.NOT_SEEN);
    }

    /** Returns a page of answers. */
    Page page() {
        return new Page(out, colour);
    }

    /** Returns a page of complaints, without colour: it is often kept in a file. */
    Page complaints() {
        return new Page(err, Page.Colour.NOT_SEEN);
    }
}
