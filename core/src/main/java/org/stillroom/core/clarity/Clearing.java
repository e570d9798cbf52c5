package org.stillroom.core.clarity;

import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Curve;
import org.stillroom.core.reference.Tables;

/**
 * How soon at the earliest a haze of oil can clear by standing: drops grow at each other's cost and rise.
 *
 * <p>Growth r³ = ω t with ω = 8 γ D φ V / (9 R T) (Lifshitz, Slyozov, Wagner), rise v = 2 r² Δρ g / (9 η) (Stokes). Both are upper
 * speeds: waxes, peel colloids and nearly insoluble constituents arrest the growth, and some drinks stay cloudy for months. Viscosity
 * and tension: docs/how-it-works/clarity.md.
 *
 * @param ripening ω, m³/s
 * @param micrometresAfterDay radius of the drops after a day, µm
 * @param days until the last drops have risen through the bottle, at the earliest
 * @param sinks whether the oil is heavier than the liquid and settles at the bottom
 */
public record Clearing(double ripening, double micrometresAfterDay, double days, boolean sinks) {
    /** Molar gas constant, J/(mol K), and Boltzmann's and Avogadro's constants. Source: SI. */
    private static final double GAS = 8.314462618;

    private static final double BOLTZMANN = 1.380649e-23;
    private static final double AVOGADRO = 6.02214076e23;
    private static final double GRAVITY = 9.81;
    private static final double SECONDS_PER_DAY = 86_400.0;

    /** Tension of anethole against ethanol in water: 11 mN/m at 30 % mass, 1.4 at 70 % (Scholten, van der Linden, This, 2008). */
    private static final double TENSION_AT_30 = 0.011;

    private static final double TENSION_SLOPE = Math.log(0.011 / 0.0014) / 0.40;

    /** Tension of vegetable oils against water, N/m; more is not assumed. */
    private static final double MOST_TENSION = 0.025;

    /** Viscosity falls by about so much a degree; own estimate. */
    private static final double THINNER_PER_DEGREE = 0.025;

    /** Densities closer than this part cannot be told apart: the drops may rise or sink or stay. */
    private static final double LEAST_DIFFERENCE = 0.003;

    private static final Curve SPIRIT = viscosities("clarity/viscosity_ethanol.csv");
    private static final Curve SYRUP = viscosities("clarity/viscosity_sucrose.csv");

    private static Curve viscosities(String table) {
        return Curve.of(Tables.open(table).rows(), "percent_by_mass", "mpa_s");
    }

    /** The oil that separates from a litre. */
    private record Phase(double grams, double millilitres, double moles) {
        static Phase of(Clarity clarity) {
            double[] separated = clarity.oils().separatedParts(clarity.medium());
            double grams = 0.0;
            double millilitres = 0.0;
            double moles = 0.0;
            for (int i = 0; i < separated.length; i++) {
                OilPart part = clarity.oils().parts().get(i);
                grams += separated[i];
                millilitres += separated[i] / part.gramsPerMillilitre();
                moles += separated[i] / part.gramsPerMole();
            }
            return new Phase(grams, millilitres, moles);
        }

        /** m³/mol. */
        double molarVolume() {
            return 1e-6 * millilitres / moles;
        }
    }

    /**
     * Returns how a separated haze clears.
     *
     * @param liquid all of it
     * @param clarity its forecast, with oil that separates
     * @param millimetres height of the liquid in the bottle
     */
    public static Clearing of(Contents liquid, Clarity clarity, double millimetres) {
        Phase phase = Phase.of(clarity);
        if (!(phase.grams() > 0.0)) {
            throw new IllegalArgumentException("no oil separates here");
        }
        double viscosity = viscosity(liquid, clarity.medium().temperature());
        double ripening = ripening(liquid, clarity, phase, viscosity);
        double density = liquid.total() / VolumeModel.atTwenty().millilitres(liquid.toGrams());
        double lighter = density - phase.grams() / phase.millilitres();
        double rise = 2.0 * 1000.0 * Math.max(LEAST_DIFFERENCE, Math.abs(lighter)) * GRAVITY / (9.0 * viscosity);
        // Height risen by a drop that grows from nothing: rise · ω^⅔ · ⅗ t^(5/3).
        double seconds = Math.pow(millimetres / 600.0 / (rise * Math.cbrt(ripening * ripening)), 0.6);
        double radius = Math.cbrt(ripening * SECONDS_PER_DAY);
        return new Clearing(ripening, 1e6 * radius, seconds / SECONDS_PER_DAY, lighter < 0.0);
    }

    private static double ripening(Contents liquid, Clarity clarity, Phase phase, double viscosity) {
        double kelvin = clarity.medium().temperature().kelvin();
        double molecule = Math.cbrt(3.0 * phase.molarVolume() / (4.0 * Math.PI * AVOGADRO));
        double diffusion = BOLTZMANN * kelvin / (6.0 * Math.PI * viscosity * molecule);
        double dissolved = Math.max(0.0, clarity.oils().gramsPerLitre() - phase.grams());
        double share = 1e-3 * dissolved * phase.millilitres() / phase.grams();
        return 8.0 * tension(liquid) * diffusion * share * phase.molarVolume() / (9.0 * GAS * kelvin);
    }

    /** N/m, straight on a logarithmic scale through the two published points. */
    private static double tension(Contents liquid) {
        return Math.min(MOST_TENSION, TENSION_AT_30 * Math.exp(-TENSION_SLOPE * (ethanolByMass(liquid) - 0.30)));
    }

    /** Pa s: that of the spirit, as many times thicker as sugar makes water. */
    private static double viscosity(Contents liquid, Temperature temperature) {
        double sugar = Math.min(SYRUP.last(), 100.0 * liquid.sugars() / liquid.total());
        double thicker = SYRUP.at(sugar) / SYRUP.at(0.0);
        double colder = Math.exp(-THINNER_PER_DEGREE * (temperature.celsius() - 20.0));
        return 1e-3 * SPIRIT.at(100.0 * ethanolByMass(liquid)) * thicker * colder;
    }

    private static double ethanolByMass(Contents liquid) {
        double ethanol = liquid.grams(Substance.ETHANOL);
        double wet = ethanol + liquid.grams(Substance.WATER);
        return wet > 0.0 ? ethanol / wet : 0.0;
    }
}
