package org.stillroom.core.liquid;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Brix;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.sugar.SucroseSolubility;

/**
 * A syrup of one sugar and water at 20 °C, made any of the ways that makers make one.
 *
 * @param contents sugar and water, g
 * @param brix sugar per mass of syrup, % (°Bx where the sugar is sucrose)
 * @param density kg/m³
 * @param sugar g/L
 * @param millilitres volume of it all
 */
public record Syrup(Contents contents, double brix, double density, double sugar, double millilitres) {
    /** Loose density of granulated sugar, g/mL: from memory, by the cup and by the brand. */
    private static final Span LOOSE_SUGAR = new Span(0.80, 0.90);

    /** What is dissolved. */
    public enum Of {
        SUCROSE,
        /** Half glucose, half fructose by mass. */
        INVERT,
        GLUCOSE;

        private Contents grams(double grams) {
            return switch (this) {
                case SUCROSE -> Contents.of(Substance.SUCROSE, grams);
                case INVERT -> Contents.of(Substance.GLUCOSE, grams / 2).with(Substance.FRUCTOSE, grams / 2);
                case GLUCOSE -> Contents.of(Substance.GLUCOSE, grams);
            };
        }
    }

    /** Sugar and water as they are weighed. */
    public record Weighed(Mass sugar, Mass water) {}

    /** Returns the syrup of weighed sugar and water. */
    public static Syrup ofWeighed(Of sugar, Weighed weighed) {
        return of(sugar.grams(weighed.sugar().grams())
                .with(Substance.WATER, weighed.water().grams()));
    }

    /** Returns so much syrup of a given Brix. */
    public static Syrup ofBrix(Of sugar, Brix brix, Mass syrup) {
        double dissolved = syrup.grams() * brix.degrees() / 100.0;
        return of(sugar.grams(dissolved).with(Substance.WATER, syrup.grams() - dissolved));
    }

    /**
     * Returns the syrup of sugar made up with water to a volume at 20 °C ("850 g made up to a litre").
     *
     * @throws IllegalArgumentException when the sugar alone takes that room, with a text for people
     */
    public static Syrup madeUpTo(Of sugar, Mass grams, Volume mark) {
        return of(MadeUp.withWater(sugar.grams(grams.grams()), mark));
    }

    /**
     * Returns the thinnest and the thickest syrup that parts by volume of loose granulated sugar and water may give: loose
     * sugar weighs 0.80 to 0.90 g/mL (from memory).
     *
     * @param looseSugar volume of the dry sugar
     * @param water volume of the water, at 20 °C
     */
    public static List<Syrup> ofVolumes(Of sugar, Volume looseSugar, Volume water) {
        double grams = water.millilitres() / VolumeModel.atTwenty().millilitres(one(Substance.WATER));
        List<Syrup> syrups = new ArrayList<>();
        for (double loose : new double[] {LOOSE_SUGAR.low(), LOOSE_SUGAR.high()}) {
            syrups.add(of(sugar.grams(loose * looseSugar.millilitres()).with(Substance.WATER, grams)));
        }
        return syrups;
    }

    private static double[] one(Substance substance) {
        return Contents.of(substance, 1.0).toGrams();
    }

    private static Syrup of(Contents contents) {
        Essentials essentials = Essentials.of(contents.toGrams());
        double brix = 100.0 * contents.sugars() / contents.total();
        return new Syrup(contents, brix, essentials.density(), essentials.sugar(), essentials.millilitres());
    }

    /** Returns what to say of it at a temperature: at or past saturation. Other sugars than sucrose are not judged. */
    public List<Finding> findings(Temperature temperature) {
        if (contents.grams(Substance.SUCROSE) == 0.0) {
            return List.of();
        }
        @Nullable Finding warning = SucroseSolubility.warning(new Brix(brix), temperature);
        return warning == null ? List.of() : List.of(warning);
    }
}
