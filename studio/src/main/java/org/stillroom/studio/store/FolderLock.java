package org.stillroom.studio.store;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.jspecify.annotations.Nullable;

/**
 * Keeps two studios from opening one folder at once, and a studio from being exchanged under a command that works beside it. The system
 * lets go of it when the process ends, however it ends.
 *
 * <p>The file of an open studio also says where it can be reached, for whoever finds the folder taken. Commands have a file of their own,
 * which they share: closing one file lets go of all locks that a process has on it.
 */
final class FolderLock implements AutoCloseable {
    /** Far behind what is written, so that others may read it on systems whose locks keep readers out. */
    private static final long LOCKED_BYTE = Long.MAX_VALUE - 1;

    private static final long PATIENCE_MILLISECONDS = 3000;
    private static final long PAUSE_MILLISECONDS = 20;

    private final FileChannel channel;
    private final @Nullable FolderLock besides;

    private FolderLock(FileChannel channel, @Nullable FolderLock besides) {
        this.channel = channel;
        this.besides = besides;
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
            if (taken(channel, Sharing.ALONE)) {
                channel.truncate(0);
                return new FolderLock(channel, null);
            }
            channel.close();
            String address = Files.readString(file).strip();
            throw new StoreTrouble(
                    "The studio in " + folder.path() + " is open already.",
                    "Go to " + (address.isEmpty() ? "its page" : address)
                            + " or close it first; another folder can be chosen with --data.",
                    null);
        } catch (IOException e) {
            throw unusable(folder, e);
        }
    }

    /**
     * Lets a command work in a folder, whether or not a studio is open there.
     *
     * @throws StoreTrouble when the studio in it is being exchanged
     */
    static FolderLock beside(DataFolder folder) {
        return ofCommands(folder, Sharing.WITH_OTHERS, null, "is being exchanged for a backup of it.");
    }

    /**
     * Keeps everybody out of a folder while the studio in it is exchanged.
     *
     * @throws StoreTrouble when it is open, or a command works in it and does not end
     */
    static FolderLock toExchange(DataFolder folder) {
        FolderLock alone = of(folder);
        try {
            return ofCommands(folder, Sharing.ALONE, alone, "is being used by another command.");
        } catch (RuntimeException | Error taken) {
            alone.close();
            throw taken;
        }
    }

    private enum Sharing {
        WITH_OTHERS,
        ALONE
    }

    private static FolderLock ofCommands(
            DataFolder folder, Sharing sharing, @Nullable FolderLock besides, String whyNot) {
        Path file = folder.path().resolve("commands.lock");
        try {
            FileChannel channel = FileChannel.open(
                    file, StandardOpenOption.CREATE, StandardOpenOption.READ, StandardOpenOption.WRITE);
            long until = System.nanoTime() + PATIENCE_MILLISECONDS * 1_000_000;
            while (!taken(channel, sharing)) {
                if (System.nanoTime() > until) {
                    channel.close();
                    throw new StoreTrouble(
                            "The studio in " + folder.path() + " " + whyNot, "Try again in a moment.", null);
                }
                Thread.sleep(PAUSE_MILLISECONDS);
            }
            return new FolderLock(channel, besides);
        } catch (IOException e) {
            throw unusable(folder, e);
        } catch (InterruptedException told) {
            Thread.currentThread().interrupt();
            throw unusable(folder, told);
        }
    }

    private static StoreTrouble unusable(DataFolder folder, Exception cause) {
        return new StoreTrouble(
                "The folder " + folder.path() + " cannot be used ("
                        + cause.getClass().getSimpleName() + ").",
                "Check that you may write there, or choose another folder with --data.",
                cause);
    }

    private static boolean taken(FileChannel channel, Sharing sharing) throws IOException {
        try {
            return channel.tryLock(LOCKED_BYTE, 1, sharing == Sharing.WITH_OTHERS) != null;
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
        } finally {
            if (besides != null) {
                besides.close();
            }
        }
    }
}
