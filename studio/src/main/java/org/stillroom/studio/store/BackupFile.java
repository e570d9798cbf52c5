package org.stillroom.studio.store;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;

/**
 * A backup on the disk: a ZIP of two entries, {@code manifest.json} and {@code studio.db}.
 *
 * @param path where it lies
 */
record BackupFile(Path path) {
    private static final String MANIFEST = "manifest.json";
    private static final String DATABASE = "studio.db";
    /** Version of the layout described above. */
    private static final int LAYOUT = 1;

    /** Writes a snapshot of a database; the file appears whole or not at all, and is on the disk when this returns. */
    Backup.Manifest write(Path snapshot, int schema, String at) throws IOException {
        Backup.Manifest manifest = new Backup.Manifest(LAYOUT, schema, at, sha256(snapshot));
        Path unfinished = Files.createTempFile(path.toAbsolutePath().getParent(), "unfinished-", ".zip");
        try {
            try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(unfinished))) {
                zip.putNextEntry(new ZipEntry(MANIFEST));
                zip.write(Bodies.write(manifest).getBytes(StandardCharsets.UTF_8));
                zip.putNextEntry(new ZipEntry(DATABASE));
                Files.copy(snapshot, zip);
            }
            keep(unfinished);
            Files.move(unfinished, path, StandardCopyOption.REPLACE_EXISTING);
            return manifest;
        } finally {
            Files.deleteIfExists(unfinished);
        }
    }

    /**
     * Takes the database out, on the disk when this returns.
     *
     * @throws StoreTrouble when this is no backup, or not whole, or of a newer layout
     */
    void unpack(Path into) throws IOException {
        try (ZipFile zip = new ZipFile(path.toFile())) {
            Backup.Manifest manifest = manifest(zip);
            if (manifest.layout() > LAYOUT) {
                throw refused("a newer Stillroom wrote it", null);
            }
            try (InputStream in = entry(zip, DATABASE)) {
                Files.copy(in, into, StandardCopyOption.REPLACE_EXISTING);
            }
            if (!sha256(into).equals(manifest.sha256())) {
                throw refused("its content is not what its manifest says", null);
            }
            keep(into);
        } catch (ZipException | EOFException | JacksonException broken) {
            throw refused("it is damaged, or no backup", broken);
        }
    }

    private Backup.Manifest manifest(ZipFile zip) throws IOException {
        try (InputStream in = entry(zip, MANIFEST)) {
            return Bodies.read(new String(in.readAllBytes(), StandardCharsets.UTF_8), Backup.Manifest.class);
        }
    }

    private InputStream entry(ZipFile zip, String name) throws IOException {
        ZipEntry entry = zip.getEntry(name);
        if (entry == null) {
            throw refused("it has no " + name + " in it", null);
        }
        return zip.getInputStream(entry);
    }

    StoreTrouble refused(String why, @Nullable Throwable cause) {
        return new StoreTrouble(
                path + " cannot be restored: " + why + ".",
                "Take another backup, or one that was copied whole. Nothing was changed.",
                cause);
    }

    /** Waits until a file is on the disk. */
    private static void keep(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
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
