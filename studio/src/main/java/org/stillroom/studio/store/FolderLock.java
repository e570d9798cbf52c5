package org.stillroom.studio.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Keeps two Stillrooms from opening one folder at once. The system lets go of it when the process ends, however it ends.
 *
 * <p>The file also says where the studio can be reached, for whoever finds the folder taken.
 */
final class FolderLock implements AutoCloseable {
    /** Far behind what is written, so that others may read it on systems whose locks keep readers out. */
    private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

    private final FileChannel channel;

    private FolderLock(FileChannel channel) {
        this.channel = channel;
    }

    /**
     * Takes the lock.
     *
     * @throws StoreTrouble when another process has it
     */
    static FolderLock of(DataFolder folder) {
        Path file = folder.path().resolve("studio.lock");
        try {
            FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            if (taken(channel)) {
                channel.truncate(0);
                return new FolderLock(channel);
            }
            channel.close();
            String address = Files.readString(file).strip();
            throw new StoreTrouble(
                    "The studio in " + folder.path() + " is open already.",
                    "Go to " + (address.isEmpty() ? "its page" : address)
                            + " or close it first; another folder can be chosen with --data.",
                    null);
        } catch (IOException e) {
            throw new StoreTrouble(
                    "The folder " + folder.path() + " cannot be used ("
                            + e.getClass().getSimpleName() + ").",
                    "Check that you may write there, or choose another folder with --data.",
                    e);
        }
    }

    private static boolean taken(FileChannel channel) throws IOException {
        try {
            return channel.tryLock(LOCKED_BYTE, 1, false) != null;
        } catch (OverlappingFileLockException hereAlready) {
            return false; // this process has it
        }
    }

    /** Writes down where the studio can be reached. */
    void note(String address) {
        try {
            channel.truncate(0);
            channel.write(StandardCharsets.UTF_8.encode(address), 0);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
