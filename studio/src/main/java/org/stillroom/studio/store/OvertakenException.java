package org.stillroom.studio.store;

/** Rolls a change back that began from a state that is no longer the latest. */
final class OvertakenException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    OvertakenException() {
        super("somebody else has changed it since", null, false, false);
    }
}
