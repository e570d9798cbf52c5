package org.stillroom.studio.store;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.jdbi.v3.core.Jdbi;
import org.jspecify.annotations.Nullable;

/**
 * The whole studio in one file: a ZIP with a snapshot of the database, in which photos and history lie too, and a manifest.
 *
 * <p>The snapshot is taken while the studio works; it holds what was acknowledged when it began.
 */
public final class Backup {
    private static final String DATABASE = "studio.db";
    private static final String MANIFEST = "manifest.json";
    /** Version of the layout of the file. */
    private static final int LAYOUT = 1;

    private final Jdbi jdbi;
    private final DataFolder folder;

    Backup(Jdbi jdbi, DataFolder folder) {
        this.jdbi = jdbi;
        this.folder = folder;
    }

    /**
     * What a backup says of itself.
     *
     * @param layout version of the layout
     * @param at when it was taken, ISO 8601
     * @param sha256 of the snapshot, hexadecimal
     */
    public record Manifest(int layout, String at, String sha256) {}

    /** Returns the usual name of a backup of a day. */
    public static String fileName(LocalDate day) {
        return "stillroom-" + day + ".backup.zip";
    }

    /** Writes the backup; the file appears whole or not at all. */
    public Manifest write(Path file) throws IOException {
        Path snapshot = Files.createTempFile(folder.path(), "snapshot-", ".db");
        Path unfinished = Files.createTempFile(file.toAbsolutePath().getParent(), "unfinished-", ".zip");
        try {
            Files.delete(snapshot);
            jdbi.useHandle(handle -> handle.createUpdate("VACUUM INTO :file")
                    .bind("file", snapshot.toString())
                    .execute());
            Manifest manifest = new Manifest(LAYOUT, Instant.now().toString(), sha256(snapshot));
            try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(unfinished))) {
                zip.putNextEntry(new ZipEntry(MANIFEST));
                zip.write(Bodies.write(manifest).getBytes(StandardCharsets.UTF_8));
                zip.putNextEntry(new ZipEntry(DATABASE));
                Files.copy(snapshot, zip);
            }
            Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
            return manifest;
        } finally {
            Files.deleteIfExists(snapshot);
            Files.deleteIfExists(unfinished);
        }
    }

    /**
     * Writes the backup of a folder's studio, whether or not another process has it open: the snapshot is the database's own,
     * and is whole at any moment.
     */
    public static Manifest ofOpenOrClosed(DataFolder folder, Path file) throws IOException {
        return new Backup(Jdbi.create("jdbc:sqlite:" + folder.database() + "?busy_timeout=5000"), folder).write(file);
    }

    /**
     * Brings a studio back into a folder. One that is there already is kept beside it under another name, and only where that
     * was asked for.
     *
     * @param replace whether a studio that is there may be put aside
     * @return where the studio that was there lies now, or null when there was none
     * @throws StoreTrouble when the file is no whole backup, or the folder is taken
     */
    public static @Nullable Path restore(Path file, DataFolder folder, Replacing replace) throws IOException {
        folder.make();
        FolderLock lock = FolderLock.of(folder);
        try {
            if (folder.holdsAStudio() && replace == Replacing.NO) {
                throw new StoreTrouble(
                        "There is a studio in " + folder.path() + " already.",
                        "Choose another folder with --data, or put it aside with --replace; it is kept under another name.",
                        null);
            }
            Path unpacked = Files.createTempFile(folder.path(), "restored-", ".db");
            try {
                unpack(file, unpacked);
                requireStudio(unpacked);
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

    /** Whether a studio that is there may be put aside. */
    public enum Replacing {
        YES,
        NO
    }

    private static void unpack(Path file, Path into) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            ZipEntry says = zip.getEntry(MANIFEST);
            ZipEntry database = zip.getEntry(DATABASE);
            if (says == null || database == null) {
                throw noBackup(file, "it lacks its manifest or its database", null);
            }
            Manifest manifest;
            try (InputStream in = zip.getInputStream(says)) {
                manifest = Bodies.read(new String(in.readAllBytes(), StandardCharsets.UTF_8), Manifest.class);
            }
            if (manifest.layout() > LAYOUT) {
                throw noBackup(file, "a newer Stillroom wrote it", null);
            }
            try (InputStream in = zip.getInputStream(database)) {
                Files.copy(in, into, StandardCopyOption.REPLACE_EXISTING);
            }
            if (!sha256(into).equals(manifest.sha256())) {
                throw noBackup(file, "its content is not what its manifest says", null);
            }
        } catch (ZipException | tools.jackson.core.JacksonException broken) {
            throw noBackup(file, "it is damaged or of another kind", broken);
        } catch (NoSuchFileException none) {
            throw new StoreTrouble("There is no file " + file + ".", "Check the name and the folder.", none);
        }
    }

    private static StoreTrouble noBackup(Path file, String why, @Nullable Throwable cause) {
        return new StoreTrouble(
                file + " cannot be restored: " + why + ".",
                "Take another backup, or one that was copied whole. Nothing was changed.",
                cause);
    }

    /** Opens the snapshot once: it has to be a studio that this program can read. */
    private static void requireStudio(Path database) {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + database);
                Statement statement = connection.createStatement();
                ResultSet whole = statement.executeQuery("PRAGMA integrity_check")) {
            if (!"ok".equals(whole.getString(1))) {
                throw noBackup(database, "its database is damaged", null);
            }
        } catch (SQLException damaged) {
            throw noBackup(database, "its database is damaged", damaged);
        }
    }

    private static Path putAside(DataFolder folder) throws IOException {
        String name = "studio-until-" + Instant.now().toString().replace(':', '-') + ".db";
        Path aside = folder.path().resolve(name);
        for (String part : new String[] {"-wal", "-shm"}) {
            Path beside = Path.of(folder.database() + part);
            if (Files.exists(beside)) {
                Files.move(beside, Path.of(aside + part));
            }
        }
        return Files.move(folder.database(), aside);
    }

    private static String sha256(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] part = new byte[65_536];
            for (int read = in.read(part); read >= 0; read = in.read(part)) {
                digest.update(part, 0, read);
            }
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java knows SHA-256", e);
        }
    }
}
