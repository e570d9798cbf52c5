package org.stillroom.studio.usecase.shelf;

import java.util.List;
import java.util.Locale;
import org.stillroom.core.ingredient.Kind;

/** A board of the shelf: kinds that stand together. */
public enum ShelfBoard {
    SPIRITS,
    OILS,
    EXTRACTS,
    DRINKS,
    SWEET,
    FRESH,
    PACKING;

    /** Returns where a kind of lot stands. */
    public static ShelfBoard of(String kind) {
        return Packing.of(kind) == null ? of(ShelfLots.kind(kind)) : PACKING;
    }

    private static ShelfBoard of(Kind kind) {
        return switch (kind) {
            case SPIRIT, DISTILLATE -> SPIRITS;
            case ESSENTIAL_OIL, ESSENCE, HYDROSOL -> OILS;
            case TINCTURE, MACERATE -> EXTRACTS;
            case WINE, LIQUEUR -> DRINKS;
            case SUGAR, SYRUP, HONEY, GLYCEROL, ACID, SALT -> SWEET;
            case JUICE, FRESH_PLANT, DRIED_PLANT, DAIRY, EGG, WATER, OTHER -> FRESH;
        };
    }

    /** Returns the kinds that stand on it. */
    public List<String> kinds() {
        return ShelfLots.kinds().stream().filter(kind -> of(kind) == this).toList();
    }

    /** Returns the name under which pages and addresses know it. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }
}
