package org.stillroom.studio.usecase.shelf;

import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.store.Lot;

/** What stands on the shelf for what is finished: counted in pieces, drawn down at bottling, and never poured. */
public enum Packing {
    /** Empty bottles of one size. */
    BOTTLES("empty bottles"),
    /** What each bottle gets besides: a label, a stopper, a box. */
    TRIM("labels and stoppers");

    private final String label;

    Packing(String label) {
        this.label = label;
    }

    /** Returns the name of the kind, where a lot has that of an ingredient. */
    public String label() {
        return label;
    }

    /** Returns what a kind of lot is, or null where it is one of an ingredient. */
    public static @Nullable Packing of(String kind) {
        return Arrays.stream(values())
                .filter(packing -> packing.label.equalsIgnoreCase(kind.strip()))
                .findFirst()
                .orElse(null);
    }

    /** Returns those lots of a shelf that can be used. */
    public List<Lot> among(List<Lot> lots) {
        return lots.stream()
                .filter(lot -> of(lot.sheet().kind()) == this)
                .filter(lot -> !lot.sheet().setAside() && lot.left() >= 1.0)
                .toList();
    }
}
