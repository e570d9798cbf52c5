package org.stillroom.core.liquid;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.acid.Acid;
import org.stillroom.core.reference.Curve;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/**
 * Where the first ice forms: each substance lowers the freezing point of the water by what it does alone in that water, added.
 *
 * <p>Depressions are the CRC Handbook's, straight between its rows; acids that it does not list go by 1.86 °C per mole in a
 * kilogram of water, unlisted solids by sucrose. Fat, oil and protein lower nothing worth telling. Where a table ends, its last
 * depression is held: the liquid freezes at the figure or below it. Adding was never measured for sweetened spirits. Source
 * and checks: docs/how-it-works/cold-and-heat.md.
 */
public final class FreezingPoint {
    /** Cryoscopic constant of water, °C·kg/mol. */
    private static final double PER_MOLAL = 1.86;

    private static final double ONE_SUBSTANCE = 0.5;
    private static final double SEVERAL = 2.0;
    private static final double HELD = 5.0;

    private static final @Nullable Curve[] CURVES = curves();

    private FreezingPoint() {}

    private static @Nullable Curve[] curves() {
        List<Table.Row> rows = Tables.open("liquid/freezing_depression.csv").rows();
        @Nullable Curve[] curves = new Curve[Substance.COUNT];
        for (Substance substance : Substance.values()) {
            List<Table.Row> own = new ArrayList<>();
            for (Table.Row row : rows) {
                if (row.text("substance").equals(substance.label())) {
                    own.add(row);
                }
            }
            if (!own.isEmpty()) {
                curves[substance.ordinal()] = Curve.of(own, "mass_percent", "depression_celsius");
            }
        }
        return curves;
    }

    /**
     * Returns the freezing point with its doubt, °C, or null where there is no water to freeze.
     *
     * @param grams in the order of {@link Substance}
     */
    public static @Nullable Estimate of(double[] grams) {
        double water = grams[Substance.WATER.ordinal()];
        if (!(water > 0.0)) {
            return null;
        }
        double depression = 0.0;
        int substances = 0;
        for (Substance substance : Substance.values()) {
            double amount = grams[substance.ordinal()];
            double each = substance == Substance.WATER ? 0.0 : depression(substance, amount, water);
            depression += each;
            substances += each > 0.0 ? 1 : 0;
        }
        double doubt = substances == 0 ? 0.0 : substances == 1 ? ONE_SUBSTANCE : SEVERAL;
        return new Estimate(0.0 - depression, beyondTables(grams).isEmpty() ? doubt : HELD);
    }

    /** Returns the substances whose table ends before the liquid's share of them. */
    static List<Substance> beyondTables(double[] grams) {
        List<Substance> beyond = new ArrayList<>();
        double water = grams[Substance.WATER.ordinal()];
        for (Substance substance : Substance.values()) {
            @Nullable Curve curve = curve(substance);
            double amount = grams[substance.ordinal()];
            if (curve != null && amount > 0.0 && 100.0 * amount / (amount + water) > curve.last()) {
                beyond.add(substance);
            }
        }
        return beyond;
    }

    private static @Nullable Curve curve(Substance substance) {
        return CURVES[(substance == Substance.OTHER_SOLIDS ? Substance.SUCROSE : substance).ordinal()];
    }

    private static double depression(Substance substance, double grams, double water) {
        if (grams == 0.0) {
            return 0.0;
        }
        return switch (substance) {
            case WATER, FAT, OIL, PROTEIN -> 0.0;
            case MALIC, TARTARIC, ASCORBIC -> {
                Acid acid = Objects.requireNonNull(substance.acid());
                yield PER_MOLAL * 1000.0 * grams / acid.gramsPerMole() / water;
            }
            case ETHANOL,
                    SUCROSE,
                    GLUCOSE,
                    FRUCTOSE,
                    MALTOSE,
                    LACTOSE,
                    GLYCEROL,
                    CITRIC,
                    LACTIC,
                    ACETIC,
                    PHOSPHORIC,
                    SALT,
                    OTHER_SOLIDS ->
                tabulated(Objects.requireNonNull(curve(substance)), 100.0 * grams / (grams + water));
        };
    }

    /** Below the first row the depression falls in proportion to nothing. */
    private static double tabulated(Curve curve, double massPercent) {
        if (massPercent < curve.first()) {
            return curve.at(curve.first()) * massPercent / curve.first();
        }
        return curve.at(Math.min(massPercent, curve.last()));
    }
}
