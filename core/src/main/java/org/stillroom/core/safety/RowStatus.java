package org.stillroom.core.safety;

import org.stillroom.core.reference.Standing;
import org.stillroom.core.reference.Table;

/** How a row of a safety table came to us, in the words of its status column. */
public enum RowStatus {
    /** The figure stood in the text, or in a copy of it. */
    READ,
    /** Part of it was read, the rest is from memory. */
    MIXED,
    /** Recalled; may warn and block, never clears. */
    MEMORY,
    /** Arithmetic on other rows. */
    DERIVED;

    static RowStatus of(Table.Row row) {
        for (RowStatus status : values()) {
            if (status.name().equalsIgnoreCase(row.text("status"))) {
                return status;
            }
        }
        throw row.fault("status", "is no status: " + row.text("status"));
    }

    /** Returns what a standing is here: what nobody published cannot clear. */
    static RowStatus of(Standing standing) {
        return switch (standing) {
            case READ, SECONDARY -> READ;
            case FROM_MEMORY, COMMON_PRACTICE, OWN -> MEMORY;
        };
    }

    /** Returns whether a limit may be told as met on the strength of such a row. */
    public boolean mayClear() {
        return this == READ || this == DERIVED;
    }

    /** Returns the one of both that may say less. */
    RowStatus and(RowStatus other) {
        return mayClear() ? other : this;
    }
}
