package org.stillroom.core.liquid;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.acid.Acid;
import org.stillroom.core.sugar.Sugar;

/** What a liquid is made of; grams of each are conserved when liquids are added. Acids are anhydrous. */
public enum Substance {
    ETHANOL("ethanol"),
    WATER("water"),
    SUCROSE("sucrose", Sugar.SUCROSE),
    GLUCOSE("glucose", Sugar.GLUCOSE),
    FRUCTOSE("fructose", Sugar.FRUCTOSE),
    MALTOSE("maltose", Sugar.MALTOSE),
    LACTOSE("lactose", Sugar.LACTOSE),
    GLYCEROL("glycerol"),
    CITRIC("citric", Acid.CITRIC),
    MALIC("malic", Acid.MALIC),
    TARTARIC("tartaric", Acid.TARTARIC),
    LACTIC("lactic", Acid.LACTIC),
    ACETIC("acetic", Acid.ACETIC),
    PHOSPHORIC("phosphoric", Acid.PHOSPHORIC),
    ASCORBIC("ascorbic", Acid.ASCORBIC),
    SALT("salt"),
    OTHER_SOLIDS("other solids"),
    FAT("fat"),
    PROTEIN("protein"),
    /** Aroma oil as a whole; its constituents are kept beside it where they are known. */
    OIL("oil");

    /** How many substances there are: the length of an array of grams. */
    public static final int COUNT = values().length;

    private final String label;
    private final @Nullable Sugar sugar;
    private final @Nullable Acid acid;

    Substance(String label) {
        this(label, null, null);
    }

    Substance(String label, Sugar sugar) {
        this(label, sugar, null);
    }

    Substance(String label, Acid acid) {
        this(label, null, acid);
    }

    Substance(String label, @Nullable Sugar sugar, @Nullable Acid acid) {
        this.label = label;
        this.sugar = sugar;
        this.acid = acid;
    }

    /** Returns the name as people write it in a recipe file. */
    public String label() {
        return label;
    }

    /** Returns the sugar that this is, or null. */
    public @Nullable Sugar sugar() {
        return sugar;
    }

    /** Returns the acid that this is, or null. */
    public @Nullable Acid acid() {
        return acid;
    }
}
