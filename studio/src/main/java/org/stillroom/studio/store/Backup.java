package org.stillroom.studio.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.jspecify.annotations.Nullable;

/**
 * The whole studio in one file: a ZIP with a snapshot of the database, in which photos and history lie too, and a manifest.
 *
 * <p>The snapshot is taken while the studio works; it holds all that was acknowledged before it began.
 */
public final class Backup {
    private final Jdbi jdbi;

    Backup(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    /**
     * What a backup says of itself.
     *
     * @param layout version of the layout of the file
     * @param schema version of the tables in it
     * @param at when it was taken, ISO 8601
     * @param sha256 of the snapshot, hexadecimal
     */
    public record Manifest(int layout, int schema, String at, String sha256) {}

    /** Returns the usual name of a backup of a day. */
    public static String fileName(LocalDate day) {
        return "stillroom-" + day + ".backup.zip";
    }

    /** Writes the backup; the file appears whole or not at all. */
    public Manifest write(Path file) throws IOException {
        Path snapshot = Files.createTempFile(file.toAbsolutePath().getParent(), "unfinished-", ".db");
        try {
            String at = Instant.now().toString();
            jdbi.useHandle(handle -> handle.createUpdate("VACUUM INTO :file") // into a file that is there and empty
                    .bind("file", snapshot.toString())
                    .execute());
            return new BackupFile(file).write(snapshot, Schema.version(at(snapshot)), at);
        } finally {
            Files.deleteIfExists(snapshot);
        }
    }

    /**
     * Writes the backup of a folder's studio, whether or not another process has it open: the snapshot is the database's own,
     * and is whole at any moment.
     *
     * @throws StoreTrouble when what lies in the folder is no studio, or damaged
     */
    public static Manifest ofOpenOrClosed(DataFolder folder, Path file) throws IOException {
        try {
            return new Backup(at(folder.database())).write(file);
        } catch (JdbiException unreadable) {
            throw new StoreTrouble(
                    folder.database() + " cannot be read as a studio.",
                    "Keep it as it is, and restore an earlier backup into another folder.",
                    unreadable);
        }
    }

    private static Jdbi at(Path database) {
        return Jdbi.create("jdbc:sqlite:" + database + "?busy_timeout=5000");
    }

    /** Whether a studio that is there may be put aside. */
    public enum Replacing {
        YES,
        NO
    }

    /**
     * Brings a studio back into a folder. One that is there already is kept beside it under another name, and only where that
     * was asked for.
     *
     * @param replace whether a studio that is there may be put aside
     * @return where the studio that was there lies now, or null when there was none
     * @throws StoreTrouble when the file is no whole backup that this Stillroom can read, or the folder is taken
     */
    public static @Nullable Path restore(Path file, DataFolder folder, Replacing replace) throws IOException {
        folder.make();
        FolderLock lock = FolderLock.toExchange(folder);
        try {
            if (folder.holdsAStudio() && replace == Replacing.NO) {
                throw new StoreTrouble(
                        "There is a studio in " + folder.path() + " already.",
                        "Choose another folder with --data, or put it aside with --replace; it is kept under another name.",
                        null);
            }
            Path unpacked = Files.createTempFile(folder.path(), "unfinished-", ".db");
            try {
                BackupFile backup = new BackupFile(file);
                backup.unpack(unpacked);
                requireStudio(unpacked, backup);
                Path aside = folder.holdsAStudio() ? putAside(folder) : null;
                Files.move(unpacked, folder.database());
                return aside;
            } finally {
                Files.deleteIfExists(unpacked);
            }
        } finally {
            lock.close();
        }
    }

    /** What was unpacked has to be a studio, whole, and of a version that this program can read. */
    private static void requireStudio(Path database, BackupFile backup) {
        int version;
        try {
            Jdbi jdbi = at(database);
            String whole = jdbi.withHandle(handle -> handle.createQuery("PRAGMA integrity_check(1)")
                    .mapTo(String.class)
                    .one());
            if (!whole.equals("ok")) {
                throw backup.refused("its database is damaged", null);
            }
            version = Schema.version(jdbi);
        } catch (JdbiException other) {
            throw backup.refused("its database is damaged, or not that of a studio", other);
        }
        if (version == 0) {
            throw backup.refused("its database is not that of a studio", null);
        }
        Schema.requireNotNewer(version, backup.path().toString());
    }

    private static Path putAside(DataFolder folder) throws IOException {
        gather(folder.database());
        Path aside =
                folder.path().resolve("studio-until-" + Instant.now().toString().replace(':', '-') + ".db");
        for (String part : List.of("-wal", "-shm")) {
            Path beside = Path.of(folder.database() + part);
            if (Files.exists(beside)) {
                Files.move(beside, Path.of(aside + part));
            }
        }
        return Files.move(folder.database(), aside);
    }

    /** Writes what lies in the journal beside a database into it: whoever closes it last does that, and nobody has it open. */
    private static void gather(Path database) {
        try {
            at(database).useHandle(handle -> handle.execute("PRAGMA wal_checkpoint(TRUNCATE)"));
        } catch (JdbiException damaged) {
            // A database that cannot be read is put aside as it is, journal and all.
        }
    }
}
