package org.stillroom.core.clarity;

/** What an oil load is in doubt from. */
public enum DoubtFrom {
    SOLUBILITY("solubility of the oils"),
    ESTIMATE("constituents that are estimated or not known"),
    COMPOSITION("composition of the oils"),
    DOSE("dose of oil"),
    STRENGTH("strength");

    private final String label;

    DoubtFrom(String label) {
        this.label = label;
    }

    /** Returns the words for people and scripts. */
    public String label() {
        return label;
    }
}
