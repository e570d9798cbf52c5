package org.stillroom.studio.recipefile;

import org.stillroom.core.quantity.OunceMeaning;

/** What a file can say an ounce is. */
enum Ounce {
    US("US", OunceMeaning.US_FLUID),
    THIRTY("30 ml", OunceMeaning.THIRTY_MILLILITRES);

    private final String label;
    private final OunceMeaning meaning;

    Ounce(String label, OunceMeaning meaning) {
        this.label = label;
        this.meaning = meaning;
    }

    String label() {
        return label;
    }

    OunceMeaning meaning() {
        return meaning;
    }
}
