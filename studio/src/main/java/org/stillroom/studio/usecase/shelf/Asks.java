package org.stillroom.studio.usecase.shelf;

import static org.stillroom.studio.usecase.shelf.Asked.further;
import static org.stillroom.studio.usecase.shelf.Asked.needed;
import static org.stillroom.studio.usecase.shelf.Asked.usual;

import java.util.List;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.studio.shelffile.LotKeys;

/** What is asked about each kind of ingredient: what it needs to be counted, and what makes the count closer. */
public final class Asks {
    private static final Asked TOLERANCE = usual("tolerance", "0.3 %");
    private static final Asked LIQUID_DENSITY = further("density", "0.952 g/ml");
    private static final Asked DROP = further("drop", "0.021 g");

    private static final Asked PLANT = usual("plant", "dried wormwood");
    private static final Asked RATIO = usual("ratio", "1:5");

    private static final List<Asked> SPIRIT =
            List.of(needed("strength", "40 %"), TOLERANCE, further("sugar", "4 g/L"), LIQUID_DENSITY);
    private static final List<Asked> DISTILLATE = List.of(
            needed("strength", "72 %"),
            usual("oil", "250 mg/L"),
            usual("aroma", "juniper 180 mg/L, limonene 12 mg/L"),
            TOLERANCE,
            PLANT,
            RATIO,
            LIQUID_DENSITY,
            DROP);
    private static final List<Asked> WINE = List.of(
            needed("strength", "12.5 %"),
            usual("sugar", "6 g/L"),
            usual("acidity", "6 g/L"),
            further("density", "0.994 g/ml"));
    private static final List<Asked> LIQUEUR = List.of(
            needed("strength", "25 %"),
            usual("sugar", "250 g/L"),
            TOLERANCE,
            further("acidity", "4 g/L"),
            further("glycerol", "10 g/L"),
            further("density", "1.062 g/ml"));
    private static final List<Asked> ESSENTIAL_OIL = List.of(usual("density", "0.854 g/ml"), usual("drop", "0.018 g"));
    private static final List<Asked> ESSENCE = List.of(
            needed("strength", "85 %"),
            usual("oil", "100 g/L"),
            usual("aroma", "lemon 70 g/L, bay 30 g/L"),
            usual("drop", "0.016 g"),
            LIQUID_DENSITY);
    private static final List<Asked> EXTRACT = List.of(
            needed("strength", "60 %"),
            PLANT,
            RATIO,
            usual("drop", "0.024 g"),
            further("sugar", "10 g/L"),
            further("other solids", "15 g/L"),
            LIQUID_DENSITY);
    private static final List<Asked> HYDROSOL = List.of(
            usual("strength", "2 %"), usual("oil", "0.3 g/L"), usual("aroma", "neroli 0.3 g/L"), LIQUID_DENSITY, DROP);
    private static final List<Asked> SUGAR = List.of(
            usual("density", "0.845 g/ml"),
            further("sucrose", "99 %"),
            further("glucose", "90.91 %"),
            further("fructose", "50 %"),
            further("water", "9.09 %"));
    private static final List<Asked> SYRUP = List.of(
            needed("sugar", "66 °Bx"),
            usual("density", "1.326 g/ml"),
            further("acidity", "2 g/L"),
            further("glucose", "18 %"),
            further("fructose", "56 %"),
            further("water", "24 %"));
    private static final List<Asked> HONEY = List.of(
            usual("water", "17.5 %"),
            usual("sugar", "78 %"),
            further("glucose", "33.8 %"),
            further("fructose", "41.2 %"),
            further("density", "1.42 g/ml"));
    private static final List<Asked> JUICE = List.of(
            usual("sugar", "95 g/L"),
            usual("acidity", "45 g/L"),
            usual("water", "88 %"),
            further("malic", "8 g/L"),
            further("citric", "45 g/L"),
            further("density", "1.042 g/ml"));
    private static final List<Asked> FRESH_PLANT =
            List.of(needed("water", "82 %"), usual("sugar", "9 %"), usual("acidity", "1 %"), further("oil", "0.4 %"));
    private static final List<Asked> DRIED_PLANT =
            List.of(usual("water", "10 %"), further("sugar", "5 %"), further("oil", "2 %"));
    private static final List<Asked> ACID = List.of(
            usual("water", "8.57 %"),
            further("citric", "91.43 %"),
            further("malic", "100 %"),
            further("tartaric", "100 %"),
            further("lactic", "80 %"),
            further("acetic", "5 %"));
    private static final List<Asked> SALT = List.of(further("water", "0.5 %"));
    private static final List<Asked> GLYCEROL =
            List.of(usual("glycerol", "86 %"), usual("water", "14 %"), further("density", "1.23 g/ml"));
    private static final List<Asked> DAIRY = List.of(
            usual("water", "63 %"),
            usual("fat", "30 %"),
            usual("protein", "2.4 %"),
            usual("lactose", "3.2 %"),
            further("sugar", "10 %"),
            further("density", "1.01 g/ml"));
    private static final List<Asked> EGG =
            List.of(usual("water", "76 %"), usual("fat", "10 %"), usual("protein", "12.6 %"));
    private static final List<Asked> WATER = List.of(further("density", "0.998 g/ml"));
    private static final List<Asked> OTHER = List.of(
            usual("strength", "20 %"),
            usual("sugar", "120 g/L"),
            usual("water", "70 %"),
            further("acidity", "3 g/L"),
            further("glycerol", "5 %"),
            further("other solids", "2 %"),
            further("fat", "3 %"),
            further("protein", "1 %"),
            further("density", "1.05 g/ml"));

    private static final List<Asked> BOTTLES = List.of(needed(LotKeys.HOLDS, "350 ml"), usual(LotKeys.BRIM, "365 ml"));

    private Asks() {}

    /** Returns what is asked about a kind of lot, what is needed first. */
    public static List<Asked> of(String kind) {
        Packing packing = Packing.of(kind);
        return packing == null ? of(ShelfLots.kind(kind)) : packing == Packing.BOTTLES ? BOTTLES : List.of();
    }

    private static List<Asked> of(Kind kind) {
        return switch (kind) {
            case SPIRIT -> SPIRIT;
            case WINE -> WINE;
            case LIQUEUR -> LIQUEUR;
            case ESSENTIAL_OIL -> ESSENTIAL_OIL;
            case ESSENCE -> ESSENCE;
            case TINCTURE, MACERATE -> EXTRACT;
            case DISTILLATE -> DISTILLATE;
            case HYDROSOL -> HYDROSOL;
            case SUGAR -> SUGAR;
            case SYRUP -> SYRUP;
            case HONEY -> HONEY;
            case JUICE -> JUICE;
            case FRESH_PLANT -> FRESH_PLANT;
            case DRIED_PLANT -> DRIED_PLANT;
            case ACID -> ACID;
            case SALT -> SALT;
            case GLYCEROL -> GLYCEROL;
            case DAIRY -> DAIRY;
            case EGG -> EGG;
            case WATER -> WATER;
            case OTHER -> OTHER;
        };
    }
}
