package org.stillroom.core.safety;

/** Whose law is asked. */
public enum Place {
    EU("EU"),
    US("US");

    private final String label;

    Place(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
