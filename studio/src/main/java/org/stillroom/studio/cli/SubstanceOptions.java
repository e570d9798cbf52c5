package org.stillroom.studio.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.liquid.Substance;
import picocli.CommandLine.Option;

/** The options that say how much of each substance there is, as typed. */
final class SubstanceOptions {
    private static final String MASS = "AMOUNT";

    @Option(names = "--ethanol", paramLabel = MASS, description = "pure ethanol, such as 300g; or by volume at 20 °C")
    private @Nullable String ethanol;

    @Option(names = "--water", paramLabel = MASS, description = "water, such as 600g; or by volume at 20 °C")
    private @Nullable String water;

    @Option(names = "--sucrose", paramLabel = MASS, description = "white sugar; this and all that follow by mass")
    private @Nullable String sucrose;

    @Option(names = "--glucose", paramLabel = MASS, description = "glucose, anhydrous")
    private @Nullable String glucose;

    @Option(names = "--fructose", paramLabel = MASS, description = "fructose")
    private @Nullable String fructose;

    @Option(names = "--maltose", paramLabel = MASS, description = "maltose")
    private @Nullable String maltose;

    @Option(names = "--lactose", paramLabel = MASS, description = "lactose")
    private @Nullable String lactose;

    @Option(names = "--glycerol", paramLabel = MASS, description = "glycerol")
    private @Nullable String glycerol;

    @Option(names = "--citric", paramLabel = MASS, description = "citric acid, anhydrous; as are all the acids")
    private @Nullable String citric;

    @Option(names = "--malic", paramLabel = MASS, description = "malic acid")
    private @Nullable String malic;

    @Option(names = "--tartaric", paramLabel = MASS, description = "tartaric acid")
    private @Nullable String tartaric;

    @Option(names = "--lactic", paramLabel = MASS, description = "lactic acid")
    private @Nullable String lactic;

    @Option(names = "--acetic", paramLabel = MASS, description = "acetic acid")
    private @Nullable String acetic;

    @Option(names = "--phosphoric", paramLabel = MASS, description = "phosphoric acid")
    private @Nullable String phosphoric;

    @Option(names = "--ascorbic", paramLabel = MASS, description = "ascorbic acid")
    private @Nullable String ascorbic;

    @Option(names = "--salt", paramLabel = MASS, description = "table salt")
    private @Nullable String salt;

    @Option(names = "--solids", paramLabel = MASS, description = "other dissolved solids")
    private @Nullable String solids;

    @Option(names = "--fat", paramLabel = MASS, description = "fat")
    private @Nullable String fat;

    @Option(names = "--protein", paramLabel = MASS, description = "protein")
    private @Nullable String protein;

    @Option(names = "--invert", paramLabel = MASS, description = "invert sugar: half glucose, half fructose")
    @Nullable
    String invert;

    @Option(
            names = "--oil",
            paramLabel = "NAME=AMOUNT",
            description = "aroma oil by the name of its constituent, such as limonene=0.4g; may be repeated")
    List<String> oils = List.of();

    /** How much was typed of a substance, and under which option. */
    record Amount(String option, String text) {}

    /** Returns what was typed, by substance. */
    Map<Substance, Amount> typed() {
        Map<Substance, Amount> typed = new LinkedHashMap<>();
        for (Substance substance : Substance.values()) {
            @Nullable String text = text(substance);
            if (text != null) {
                typed.put(substance, new Amount(option(substance), text));
            }
        }
        return typed;
    }

    static String option(Substance substance) {
        return substance == Substance.OTHER_SOLIDS ? "--solids" : "--" + substance.label();
    }

    private @Nullable String text(Substance substance) {
        return switch (substance) {
            case ETHANOL -> ethanol;
            case WATER -> water;
            case SUCROSE -> sucrose;
            case GLUCOSE -> glucose;
            case FRUCTOSE -> fructose;
            case MALTOSE -> maltose;
            case LACTOSE -> lactose;
            case GLYCEROL -> glycerol;
            case CITRIC -> citric;
            case MALIC -> malic;
            case TARTARIC -> tartaric;
            case LACTIC -> lactic;
            case ACETIC -> acetic;
            case PHOSPHORIC -> phosphoric;
            case ASCORBIC -> ascorbic;
            case SALT -> salt;
            case OTHER_SOLIDS -> solids;
            case FAT -> fat;
            case PROTEIN -> protein;
            case OIL -> null; // given by constituent
        };
    }
}
