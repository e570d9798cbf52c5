package org.stillroom.studio.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** The file that {@code --out} names. */
final class OutFile {
    private OutFile() {}

    /** Refuses a file in a folder that is not there, and one that is there already unless it may be written over. */
    static void requireFree(Path path, boolean force) {
        Path folder = path.toAbsolutePath().getParent();
        if (folder != null && !Files.isDirectory(folder)) {
            throw Refusal.notFound("--out", "There is no folder " + folder + ".", "Make it first, or name another.");
        }
        if (!force && Files.exists(path)) {
            throw Refusal.wrongInput(
                    "--out",
                    "There is a file " + path + " already; it was left as it is.",
                    "Name another, or add --force.");
        }
    }

    /** Writes a file that {@link #requireFree} lets be written. */
    static void write(Path path, byte[] content, boolean force) {
        requireFree(path, force);
        try {
            if (force) {
                Files.write(path, content);
            } else {
                Files.write(path, content, StandardOpenOption.CREATE_NEW);
            }
        } catch (IOException e) {
            throw Refusal.wrongInput(
                    "--out",
                    path + " cannot be written (" + e.getClass().getSimpleName() + ").",
                    "Name a file in a folder that you may write to.");
        }
    }
}
