package org.stillroom.studio.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.jspecify.annotations.Nullable;

/**
 * The folder that holds one studio.
 *
 * @param path the folder; it need not be there yet
 */
public record DataFolder(Path path) {
    private static final String FILE = "studio.db";

    /**
     * Returns the folder that was chosen, else the person's own by the XDG Base Directory Specification 0.8: {@code
     * $XDG_DATA_HOME/stillroom}, else {@code ~/.local/share/stillroom}.
     */
    public static DataFolder chosenOr(@Nullable Path chosen) {
        return chosen == null ? ofPerson(System.getenv("XDG_DATA_HOME")) : new DataFolder(chosen.toAbsolutePath());
    }

    private static DataFolder ofPerson(@Nullable String dataHome) {
        boolean usable = dataHome != null && dataHome.startsWith("/"); // the specification ignores relative ones
        Path base = usable ? Path.of(dataHome) : Path.of(System.getProperty("user.home"), ".local", "share");
        return new DataFolder(base.resolve("stillroom"));
    }

    /** Returns the file of the database. */
    public Path database() {
        return path.resolve(FILE);
    }

    public boolean holdsAStudio() {
        return Files.isRegularFile(database());
    }

    /** Makes the folder, readable for its owner alone, where it is not there yet. */
    void make() {
        try {
            if (!Files.isDirectory(path)) {
                Files.createDirectories(path);
                if (Files.getFileStore(path).supportsFileAttributeView("posix")) {
                    Files.setPosixFilePermissions(path, PosixFilePermissions.fromString("rwx------"));
                }
            }
        } catch (IOException e) {
            throw new StoreTrouble(
                    "The folder " + path + " cannot be made (" + e.getClass().getSimpleName() + ").",
                    "Choose another one with --data.",
                    e);
        }
    }
}
