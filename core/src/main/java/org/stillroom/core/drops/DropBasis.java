package org.stillroom.core.drops;

/** What says how much a drop of a liquid weighs, the surest first. */
public enum DropBasis {
    /** Drops of this very liquid were weighed. */
    WEIGHED("weighed"),
    /** The maker's own dropper, by its drop of water and the ratio of the surface tensions. */
    OWN_DROPPER("own dropper"),
    /** The official dropper, by the surface tension. */
    OFFICIAL("official dropper");

    private final String label;

    DropBasis(String label) {
        this.label = label;
    }

    /** Returns it in words, as answers for other programs have them. */
    public String label() {
        return label;
    }
}
