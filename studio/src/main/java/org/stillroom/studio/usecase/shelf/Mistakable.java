package org.stillroom.studio.usecase.shelf;

import java.util.List;
import org.stillroom.core.plan.LookAlikes;

/** Dropper bottles of a shelf that are easily mistaken for each other by their names. */
public final class Mistakable {
    private Mistakable() {}

    /** Returns the names of other dropper bottles that are easily mistaken for a lot; none where it is no such bottle or cannot be taken. */
    public static List<String> with(LotOnShelf lot, List<LotOnShelf> shelf) {
        return shelf.stream()
                .filter(other -> isDropperBottle(lot) && isDropperBottle(other))
                .map(LotOnShelf::name)
                .filter(other -> LookAlikes.areAlike(lot.name(), other))
                .distinct()
                .toList();
    }

    private static boolean isDropperBottle(LotOnShelf lot) {
        return lot.packing() == null && lot.isAvailable() && LookAlikes.isDropperBottle(lot.kind());
    }
}
