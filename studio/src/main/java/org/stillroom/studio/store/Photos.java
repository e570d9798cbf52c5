package org.stillroom.studio.store;

import java.time.Instant;
import java.util.Optional;
import org.jdbi.v3.core.Jdbi;

/** Photos of bottles and batches, as they were taken. */
public final class Photos {
    /** The largest photo that is kept, bytes. */
    public static final int MOST_BYTES = 8 * 1024 * 1024;

    private final Jdbi jdbi;

    Photos(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    /**
     * A photo.
     *
     * @param type media type: image/jpeg, image/png or image/webp
     */
    @SuppressWarnings("ArrayRecordComponent") // bytes of a file, never compared
    public record Photo(String id, String type, byte[] bytes) {}

    /** The photo is of no type that is kept, or too large. */
    public static final class NoPhoto extends RuntimeException {
        private static final long serialVersionUID = 1L;

        NoPhoto(String message) {
            super(message);
        }
    }

    /**
     * Keeps a photo; its type is read from its first bytes, whatever it is called.
     *
     * @return its id
     * @throws NoPhoto when it is none, or larger than {@link #MOST_BYTES}
     */
    public String keep(byte[] bytes, String request) {
        if (bytes.length > MOST_BYTES) {
            throw new NoPhoto("The photo has " + bytes.length / 1_048_576 + " MB; at most 8 MB are kept.");
        }
        String type = type(bytes);
        HistoryEntry entry = Ledger.once(jdbi, request, handle -> {
            String id = Ids.next();
            handle.createUpdate("INSERT INTO photo (id, at, type, bytes) VALUES (:id, :now, :type, :bytes)")
                    .bind("id", id)
                    .bind("now", Instant.now().toString())
                    .bind("type", type)
                    .bind("bytes", bytes)
                    .execute();
            return Ledger.write(handle, "photo:" + id, "photo.kept", "{}", null, request);
        });
        return entry.subject().substring("photo:".length());
    }

    public Optional<Photo> photo(String id) {
        return jdbi.withHandle(handle -> handle.createQuery("SELECT * FROM photo WHERE id = :id")
                .bind("id", id)
                .map((row, context) -> new Photo(row.getString("id"), row.getString("type"), row.getBytes("bytes")))
                .findOne());
    }

    private static String type(byte[] bytes) {
        if (begins(bytes, 0, 0xFF, 0xD8, 0xFF)) {
            return "image/jpeg";
        }
        if (begins(bytes, 0, 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n')) {
            return "image/png";
        }
        if (begins(bytes, 0, 'R', 'I', 'F', 'F') && begins(bytes, 8, 'W', 'E', 'B', 'P')) {
            return "image/webp";
        }
        throw new NoPhoto("This file is no photo of a type that is kept: JPEG, PNG or WebP.");
    }

    private static boolean begins(byte[] bytes, int at, int... wanted) {
        if (bytes.length < at + wanted.length) {
            return false;
        }
        for (int i = 0; i < wanted.length; i++) {
            if ((bytes[at + i] & 0xFF) != wanted[i]) {
                return false;
            }
        }
        return true;
    }
}
