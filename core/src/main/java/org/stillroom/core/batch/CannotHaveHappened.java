package org.stillroom.core.batch;

import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Says that an entry does not fit what was there. */
final class CannotHaveHappened extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient Finding finding;

    CannotHaveHappened(String rule, String where, String message, String remedy) {
        super(message);
        this.finding = Finding.of(rule, Severity.STOP, where, "cannot be", message, remedy);
    }

    Finding finding() {
        return finding;
    }
}
