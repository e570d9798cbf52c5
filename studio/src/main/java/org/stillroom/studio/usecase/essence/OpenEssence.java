package org.stillroom.studio.usecase.essence;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.stillroom.studio.recipefile.EssenceReader;
import org.stillroom.studio.recipefile.EssenceReading;

/** Opens an essence file. */
public final class OpenEssence {
    private OpenEssence() {}

    /** Returns what is in a file that is there. */
    public static EssenceReading at(Path file) {
        try {
            return EssenceReader.read(Files.readAllBytes(file));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(file + " cannot be read", unreadable);
        }
    }
}
