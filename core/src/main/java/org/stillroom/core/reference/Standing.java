package org.stillroom.core.reference;

/** How a figure came to us; shown wherever the figure is shown. */
public enum Standing {
    /** Read in the primary document or a copy of it. */
    READ("read"),
    /** Read in another work that quotes it. */
    SECONDARY("secondary"),
    /** Recalled, not confirmed: never a legal statement, never clears anything. */
    FROM_MEMORY("from memory"),
    /** What the trade does; nobody published it. */
    COMMON_PRACTICE("common practice, no source"),
    /** Our own fit, estimate or judgement; the page named with it says from what. */
    OWN("own estimate");

    private final String label;

    Standing(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
