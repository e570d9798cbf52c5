package org.stillroom.core.clarity;

import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Temperature;

/**
 * What oils are to dissolve in: ethanol, water and sugar at a temperature, per litre of the liquid at 20 °C.
 *
 * <p>Whatever else is dissolved takes the room of as much sugar, but only sugars salt out. Formulas and their sources:
 * docs/how-it-works/clarity.md.
 */
public final class Medium {
    /** Apparent volume of dissolved sugar, mL/g (from memory). */
    private static final double SUGAR_MILLILITRES_PER_GRAM = 0.62;

    /** Salting-out by sucrose, L/mol; own estimate from 0.05 to 0.30. */
    static final double SALTING_OUT = 0.15;

    /** One standard deviation of it; own estimate. */
    static final double SALTING_OUT_DOUBT = 0.06;

    /** Molar mass of sucrose, g/mol. Source: standard atomic weights. */
    private static final double SUCROSE_GRAMS_PER_MOLE = 342.297;

    /** Heat of solution of the oils, J/mol; own estimate from 5 000 to 25 000. */
    static final double HEAT_OF_SOLUTION = 12_000.0;

    /** One standard deviation of it; own estimate. */
    static final double HEAT_OF_SOLUTION_DOUBT = 5_000.0;

    /** Molar gas constant, J/(mol K). Source: SI. */
    private static final double GAS = 8.314462618;

    /** At which the solubilities in water are tabulated. */
    private static final double TABLE_KELVIN = 298.15;

    private static final double LN_10 = Math.log(10.0);
    private static final double ETHANOL_GRAMS_PER_LITRE =
            EthanolWater.at(Temperature.TWENTY_CELSIUS).ethanol();

    private final double ethanol;
    private final double sugar;
    private final double otherSolids;
    private final Temperature temperature;

    private Medium(double ethanol, double sugar, double otherSolids, Temperature temperature) {
        if (!(ethanol >= 0.0 && sugar >= 0.0 && otherSolids >= 0.0)) {
            throw new IllegalArgumentException("ethanol, sugar and solids are zero or more");
        }
        this.ethanol = ethanol;
        this.sugar = sugar;
        this.otherSolids = otherSolids;
        this.temperature = temperature;
        if (!(waterless() >= ethanol - 1e-9)) {
            throw new IllegalArgumentException(QuantityWords.fixed(100.0 * ethanol, 1) + " % vol and "
                    + QuantityWords.fixed(sugar + otherSolids, 0) + " g/L of sugar do not fit into a litre");
        }
    }

    /** Returns a liquid of a strength by volume at 20 °C and a content of sugar. */
    public static Medium of(AlcoholByVolume strength, MassConcentration sugar, Temperature temperature) {
        return new Medium(strength.percent() / 100.0, sugar.gramsPerLitre(), 0.0, temperature);
    }

    /** Returns the part of a liquid that is not oil. */
    public static Medium of(Contents contents, Temperature temperature) {
        double litres = VolumeModel.atTwenty().millilitres(contents.toGrams()) / 1000.0;
        if (!(litres > 0.0)) {
            throw new IllegalArgumentException("there is nothing in this liquid");
        }
        double ethanol = contents.grams(Substance.ETHANOL);
        double wet = ethanol + contents.grams(Substance.WATER) + contents.grams(Substance.OIL);
        double sugars = contents.sugars();
        double others = Math.max(0.0, contents.total() - wet - sugars);
        double share = ethanol / ETHANOL_GRAMS_PER_LITRE / litres;
        double most = 1.0 - (sugars + others) / litres * SUGAR_MILLILITRES_PER_GRAM / 1000.0;
        return new Medium(Math.min(share, Math.max(0.0, most)), sugars / litres, others / litres, temperature);
    }

    /** Returns the same at another strength by volume at 20 °C, the sugar per litre unchanged. */
    public Medium ofStrength(AlcoholByVolume strength) {
        return new Medium(strength.percent() / 100.0, sugar, otherSolids, temperature);
    }

    /** Returns the same with another content of sugar. */
    public Medium ofSugar(MassConcentration other) {
        return new Medium(ethanol, other.gramsPerLitre(), otherSolids, temperature);
    }

    /** Returns the same at another temperature. */
    public Medium at(Temperature other) {
        return new Medium(ethanol, sugar, otherSolids, other);
    }

    /** Returns the strength in % vol at 20 °C. */
    public double strength() {
        return 100.0 * ethanol;
    }

    /** Returns the sugar in g/L. */
    public double sugar() {
        return sugar;
    }

    /** Returns what else is dissolved, g/L. */
    double otherSolids() {
        return otherSolids;
    }

    public Temperature temperature() {
        return temperature;
    }

    /** Returns the greatest strength that leaves no room for water, % vol. */
    public double mostStrength() {
        return 100.0 * waterless();
    }

    /** Returns the litres of a litre that sugar and solids leave. */
    private double waterless() {
        return waterless(sugar + otherSolids);
    }

    static double waterless(double solidsGramsPerLitre) {
        return 1.0 - solidsGramsPerLitre * SUGAR_MILLILITRES_PER_GRAM / 1000.0;
    }

    /**
     * Returns the part of the sugar-free liquid that is ethanol or oil, by volume.
     *
     * @param oilLitres oil in a litre, L
     */
    double cosolvent(double oilLitres) {
        return Math.min(1.0, (ethanol + oilLitres) / waterless());
    }

    /** Returns by how much the cosolvent's part grows with one per cent by volume of strength. */
    double cosolventPerPercent() {
        return 0.01 / waterless();
    }

    /** Returns the natural logarithm of the factor on every solubility: room, salting-out, temperature. */
    double logFactor() {
        return logFactor(waterless(), sugar) - logColdness(temperature);
    }

    /** Returns the part of {@link #logFactor} that room and salting-out have in it. */
    static double logFactor(double waterless, double sugarGramsPerLitre) {
        return Math.log(waterless) - SALTING_OUT * LN_10 * sugarGramsPerLitre / SUCROSE_GRAMS_PER_MOLE;
    }

    /** Returns by how much the temperature lowers the logarithm of every solubility below that at 25 °C. */
    static double logColdness(Temperature temperature) {
        return HEAT_OF_SOLUTION * inverseTemperature(temperature);
    }

    /** Returns one standard deviation of {@link #logFactor} together with the doubt of every solubility, one for all of them. */
    double logFactorDoubt() {
        double warmth = HEAT_OF_SOLUTION_DOUBT * inverseTemperature(temperature);
        double salting = SALTING_OUT_DOUBT * LN_10 * sugar / SUCROSE_GRAMS_PER_MOLE;
        return Math.hypot(Math.log(Clarity.SOLUBILITY_FACTOR), Math.hypot(warmth, salting));
    }

    /** (1/T − 1/T₀) / R, mol/J. */
    private static double inverseTemperature(Temperature temperature) {
        return (1.0 / temperature.kelvin() - 1.0 / TABLE_KELVIN) / GAS;
    }
}
