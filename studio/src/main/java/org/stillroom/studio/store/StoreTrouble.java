package org.stillroom.studio.store;

import org.jspecify.annotations.Nullable;

/** The store cannot do what it is asked for a reason that the maker can mend. */
public final class StoreTrouble extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String remedy;

    public StoreTrouble(String message, String remedy, @Nullable Throwable cause) {
        super(message, cause);
        this.remedy = remedy;
    }

    /** Returns what is. */
    public String message() {
        return String.valueOf(getMessage());
    }

    /** Returns what to do. */
    public String remedy() {
        return remedy;
    }
}
