package org.stillroom.core.gauging;

import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Source;
import org.stillroom.core.sugar.SucroseWater;

/**
 * What an instrument can show of a liquid, and what it would show of a given one.
 *
 * <p>Glass floats in a liquid that has not the temperature of its scale: its volume has grown by 25e-6 per °C. The usual errors
 * are those of instruments that a kitchen has (from memory); one's own instrument's leaflet or calibration replaces them.
 */
public enum Shown {
    /** Mass per volume, as a weighed flask or a density meter gives it, kg/m³ in vacuum. */
    DENSITY("density", "kg/m³", 0.5) {
        @Override
        double of(Mixture mixture, Temperature at) {
            return mixture.density(at);
        }
    },
    /** A hydrometer on the scale of specific gravity 20/20 °C. */
    GRAVITY("hydrometer", "SG 20/20", 0.001) {
        @Override
        double of(Mixture mixture, Temperature at) {
            return onStem(floating(mixture, at, Temperature.TWENTY_CELSIUS));
        }

        @Override
        double onStem(double density) {
            return density / WATER_20C;
        }
    },
    /** A hydrometer on the scale of sucrose in water at 20 °C; degrees Plato are the same to 0.0005. */
    SACCHAROMETER("saccharometer", "°Bx", 0.25) {
        @Override
        double of(Mixture mixture, Temperature at) {
            return onStem(floating(mixture, at, Temperature.TWENTY_CELSIUS));
        }

        @Override
        double onStem(double density) {
            double excess = density - WATER_20C;
            // Below water the scale ends; it is drawn on as a straight line, so that a reading of zero still pulls.
            return excess >= 0.0 ? 100.0 * SYRUP.fractionOfExcess(excess) : 100.0 * excess / SYRUP.slope(0.0);
        }
    },
    /** A hydrometer of the heavy Baumé scale, modulus 145 at 60/60 °F (from memory). */
    BAUME("Baumé hydrometer", "°Bé", 0.25) {
        @Override
        double of(Mixture mixture, Temperature at) {
            return onStem(floating(mixture, at, VolumeBasis.AT_60F.temperature()));
        }

        @Override
        double onStem(double density) {
            return BAUME_MODULUS - BAUME_MODULUS / (density / WATER_60F);
        }
    },
    /** A spirit hydrometer on the scale of % vol at 20 °C; sugar hides strength from it. */
    SPIRIT_20C("spirit hydrometer", "% vol on its stem, 20 °C", 0.5) {
        @Override
        double of(Mixture mixture, Temperature at) {
            return onStem(floating(mixture, at, Temperature.TWENTY_CELSIUS));
        }

        @Override
        double onStem(double density) {
            return strength(density, VolumeBasis.AT_20C);
        }
    },
    /** The same on the scale of % vol at 15 °C. */
    SPIRIT_15C("spirit hydrometer", "% vol on its stem, 15 °C", 0.5) {
        @Override
        double of(Mixture mixture, Temperature at) {
            return onStem(floating(mixture, at, VolumeBasis.AT_15C.temperature()));
        }

        @Override
        double onStem(double density) {
            return strength(density, VolumeBasis.AT_15C);
        }
    },
    /** The same on the scale of United States proof, 60 °F. */
    PROOF("proof hydrometer", "US proof on its stem, 60 °F", 1.0) {
        @Override
        double of(Mixture mixture, Temperature at) {
            return onStem(floating(mixture, at, VolumeBasis.AT_60F.temperature()));
        }

        @Override
        double onStem(double density) {
            return 2.0 * strength(density, VolumeBasis.AT_60F);
        }
    },
    /** A refractometer without temperature compensation, on the scale of sucrose in water at 20 °C. */
    REFRACTOMETER("refractometer", "°Bx", 0.2) {
        @Override
        double of(Mixture mixture, Temperature at) {
            return RefractometerScale.degrees(mixture.refractiveIndex(at));
        }
    },
    /** A refractometer that takes the liquid for sucrose in water and corrects its reading to 20 °C. */
    COMPENSATED_REFRACTOMETER("refractometer with compensation", "°Bx", 0.2) {
        @Override
        double of(Mixture mixture, Temperature at) {
            return RefractometerScale.compensated(RefractometerScale.degrees(mixture.refractiveIndex(at)), at);
        }
    },
    /** The refractive index at 589.3 nm, not compensated. */
    REFRACTIVE_INDEX("refractive index", "n", 0.0003) {
        @Override
        double of(Mixture mixture, Temperature at) {
            return mixture.refractiveIndex(at);
        }
    },
    /** What the vessel holds, mL at the temperature of the reading. */
    VOLUME("volume", "mL", Double.NaN) {
        @Override
        double of(Mixture mixture, Temperature at) {
            return mixture.millilitres(at);
        }
    },
    /** What it weighs without the vessel, g. */
    MASS("mass", "g", Double.NaN) {
        @Override
        double of(Mixture mixture, Temperature at) {
            return mixture.mass();
        }
    },
    /** Density at 20 °C of the residue after the alcohol was boiled off, made up with water to the volume before, kg/m³. */
    RESIDUE_DENSITY("residue made up again", "kg/m³", 1.0) {
        @Override
        double of(Mixture mixture, Temperature at) {
            return mixture.residueDensity(at);
        }
    },
    /** What is left of a dried sample, g per litre at 20 °C: sugar, acid and whatever else does not fly off. */
    DRY_RESIDUE("dry residue", "g/L at 20 °C", 3.0) {
        @Override
        double of(Mixture mixture, Temperature at) {
            return mixture.dryResidue();
        }
    },
    /** Strength of a distilled sample made up to its volume, or of the label, % vol at 20 °C. */
    TRUE_STRENGTH("strength distilled or labelled", "% vol at 20 °C", 0.3) {
        @Override
        double of(Mixture mixture, Temperature at) {
            return mixture.strength();
        }
    },
    /** Sugar by a method of its own or by the label, g/L at 20 °C. */
    TRUE_SUGAR("sugar by its own method or label", "g/L at 20 °C", 5.0) {
        @Override
        double of(Mixture mixture, Temperature at) {
            return mixture.sugar();
        }
    },
    /** Titrated acidity, g/L at 20 °C as anhydrous citric acid. */
    ACIDITY("titrated acidity", "g/L as citric at 20 °C", 0.3) {
        @Override
        double of(Mixture mixture, Temperature at) {
            return mixture.acidity();
        }
    };

    /** Cubic expansion of soda-lime glass, per °C; see {@link Source#GLASS_EXPANSION}. */
    static final double GLASS = 25e-6;

    /** Modulus of the heavy Baumé scale, from memory. */
    static final double BAUME_MODULUS = 145.0;

    private static final double WATER_20C =
            EthanolWater.at(Temperature.TWENTY_CELSIUS).water();
    private static final double WATER_60F =
            EthanolWater.at(VolumeBasis.AT_60F.temperature()).water();
    private static final SucroseWater.Isotherm SYRUP = SucroseWater.at(Temperature.TWENTY_CELSIUS);

    private final String label;
    private final String unit;
    private final double usualHalfWidth;

    Shown(String label, String unit, double usualHalfWidth) {
        this.label = label;
        this.unit = unit;
        this.usualHalfWidth = usualHalfWidth;
    }

    /** Returns what the instrument would show of a liquid at a temperature, in {@link #unit}. */
    abstract double of(Mixture mixture, Temperature at);

    /** Returns what a hydrometer shows that floats at a density, kg/m³ at the temperature of its scale. */
    double onStem(double density) {
        throw new IllegalArgumentException("a " + label + " is no hydrometer");
    }

    public String label() {
        return label;
    }

    public String unit() {
        return unit;
    }

    /** Returns the half-width within which such an instrument mostly is right; of volume and mass a part of the reading. */
    public double usualHalfWidth(double reading) {
        return switch (this) {
            case VOLUME -> 0.01 * reading;
            case MASS -> 0.002 * reading;
            default -> usualHalfWidth;
        };
    }

    /** Returns how many decimals of a reading mean something. */
    public int decimals() {
        return switch (this) {
            case GRAVITY, REFRACTIVE_INDEX -> 4;
            case DENSITY, SACCHAROMETER, BAUME, SPIRIT_20C, SPIRIT_15C, PROOF, RESIDUE_DENSITY -> 1;
            case REFRACTOMETER, COMPENSATED_REFRACTOMETER, TRUE_STRENGTH, DRY_RESIDUE, ACIDITY -> 1;
            case VOLUME, MASS, TRUE_SUGAR -> 0;
        };
    }

    /** Returns what to ask when this is what does not fit; common practice, no source. */
    String suspicion() {
        return switch (this) {
            case DENSITY -> "Was the flask dry and full to its mark, without bubbles, and the scale at zero?";
            case GRAVITY, SACCHAROMETER, BAUME, SPIRIT_20C, SPIRIT_15C, PROOF ->
                "Did it float freely, without bubbles, read where the surface lies flat, and was the temperature that of the liquid?";
            case REFRACTOMETER, COMPENSATED_REFRACTOMETER, REFRACTIVE_INDEX ->
                "Was it cleaned and set to zero with water, is there acid or glycerol, and does it compensate for temperature as was"
                        + " said?";
            case VOLUME -> "Was it read at eye level, and was the temperature that of the liquid?";
            case MASS -> "Was the empty vessel taken off?";
            case RESIDUE_DENSITY ->
                "Was all alcohol boiled off, nothing burnt or spilt, and the rest made up to the very volume before at 20 °C?";
            case DRY_RESIDUE -> "Was it dried until its weight no longer fell, and not browned?";
            case TRUE_STRENGTH -> "Did the distillate come over whole, or is the label true?";
            case TRUE_SUGAR -> "Is the label true, and on the same basis?";
            case ACIDITY -> "Was it titrated to the end, and counted as citric acid?";
        };
    }

    /** Returns the density at which the glass floats, restated to the temperature of its scale, kg/m³. */
    private static double floating(Mixture mixture, Temperature at, Temperature ofScale) {
        return mixture.density(at) / (1.0 - GLASS * (at.celsius() - ofScale.celsius()));
    }

    private static double strength(double density, VolumeBasis basis) {
        EthanolWater.Isotherm scale = EthanolWater.at(basis.temperature());
        if (density >= scale.water()) {
            // Heavier than water: the stem ends at zero and is drawn on as a straight line.
            return (scale.water() - density) / -scale.slope(0.0) * 100.0 * scale.water() / scale.ethanol();
        }
        return density <= scale.ethanol() ? 100.0 : scale.percentByVolume(scale.fractionOfDensity(density));
    }
}
