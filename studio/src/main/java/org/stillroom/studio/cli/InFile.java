package org.stillroom.studio.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A file that a command reads. */
final class InFile {
    private static final String LOOK = "Check the name and the folder.";

    private InFile() {}

    /** Refuses what is not there, and a folder in place of a file. */
    static void requireFile(String part, Path path) {
        refuseFolder(part, path);
        if (!Files.isRegularFile(path)) {
            throw Refusal.notFound(part, "there is no file " + path + ".", LOOK);
        }
    }

    private static void refuseFolder(String part, Path path) {
        if (Files.isDirectory(path)) {
            throw Refusal.wrongInput(part, path + " is a folder; a file is wanted.", "Name a file in it.");
        }
    }

    /** Returns the text of a file that is there and may be read. */
    static String text(String part, Path path) {
        refuseFolder(part, path);
        try {
            return Files.readString(path);
        } catch (IOException unreadable) {
            throw Refusal.notFound(part, "there is no readable file " + path + ".", LOOK);
        }
    }
}
