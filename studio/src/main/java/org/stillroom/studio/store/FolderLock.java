package org.stillroom.studio.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** Keeps two Stillrooms from opening one folder at once. The system lets go of it when the process ends, however it ends. */
final class FolderLock implements AutoCloseable {
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
                return new FolderLock(channel);
            }
            channel.close();
        } catch (IOException e) {
            throw new StoreTrouble(
                    "The folder " + folder.path() + " cannot be used ("
                            + e.getClass().getSimpleName() + ").",
                    "Check that you may write there, or choose another folder with --data.",
                    e);
        }
        throw new StoreTrouble(
                "The studio in " + folder.path() + " is open already.",
                "Go to its page, or close it first; another folder can be chosen with --data.",
                null);
    }

    private static boolean taken(FileChannel channel) throws IOException {
        try {
            return channel.tryLock() != null;
        } catch (OverlappingFileLockException hereAlready) {
            return false; // this process has it
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
