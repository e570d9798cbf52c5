package org.stillroom.core.reference;

/** How much a finding asks of the maker. */
public enum Severity {
    /** Good to know. */
    NOTE,
    /** Think before going on. */
    CAUTION,
    /** Cannot be, or must not be. */
    STOP
}
