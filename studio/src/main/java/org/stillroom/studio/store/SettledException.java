package org.stillroom.studio.store;

/** A change comes too late: what it would change is finished, or was undone before. */
public final class SettledException extends IllegalStateException {
    private static final long serialVersionUID = 1L;

    SettledException(String what) {
        super(what);
    }
}
