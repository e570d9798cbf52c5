package org.stillroom.studio.store;

import java.util.NoSuchElementException;

/** What is asked for is not kept here, or not any more. */
public final class MissingException extends NoSuchElementException {
    private static final long serialVersionUID = 1L;

    /** Takes what is missing, as it is told to whoever asked for it. */
    public MissingException(String what) {
        super(what);
    }
}
