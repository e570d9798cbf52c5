package org.stillroom.studio.web.frame;

import org.jspecify.annotations.Nullable;
import org.stillroom.studio.store.Photos;

/** Serves a photo as what its bytes are, to be shown and nothing else: no script in it can run. */
public final class PhotoAnswer {
    private PhotoAnswer() {}

    /** Answers with a photo; with "not found" where there is none. */
    public static void of(Visit visit, Photos.@Nullable Photo photo) {
        if (photo == null) {
            visit.notFound();
            return;
        }
        visit.context()
                .contentType(photo.type())
                .header("Content-Security-Policy", "default-src 'none'; sandbox")
                .header("Content-Disposition", "inline")
                .header("Cache-Control", "private, max-age=31536000, immutable")
                .result(photo.bytes());
    }
}
