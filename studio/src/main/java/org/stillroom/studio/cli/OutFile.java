package org.stillroom.studio.cli;

import java.nio.file.Files;
import java.nio.file.Path;

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
}
