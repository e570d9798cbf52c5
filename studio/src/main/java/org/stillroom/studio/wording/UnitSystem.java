package org.stillroom.studio.wording;

/** The units in which amounts are shown; what is computed does not depend on them. */
public enum UnitSystem {
    METRIC("metric"),
    US("us");

    private final String label;

    UnitSystem(String label) {
        this.label = label;
    }

    /** Returns the name under which it is settled. */
    public String label() {
        return label;
    }

    /** Returns the system of that name; metric where there is none such. */
    public static UnitSystem named(String label) {
        return label.equals(US.label) ? US : METRIC;
    }
}
