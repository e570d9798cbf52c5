package org.stillroom.studio.usecase.shelf;

import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.studio.store.Settings;

/** What "oz" means to the maker, as it was settled. */
public final class MakersOunce {
    private MakersOunce() {}

    /** Returns what was settled, else the US fluid ounce. */
    public static OunceMeaning of(Settings settings) {
        return settings.value("ounce").filter("bar"::equals).isPresent()
                ? OunceMeaning.THIRTY_MILLILITRES
                : OunceMeaning.US_FLUID;
    }
}
