package org.stillroom.core.gauging;

import org.stillroom.core.alcohol.EthanolWater;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.quantity.VolumeBasis;
import org.stillroom.core.reference.Source;
import org.stillroom.core.sugar.SucroseWater;

/**
 * A hydrometer as it was made: the temperature that its scale is marked for, and its glass.
 *
 * <p>A hydrometer shows the density of the liquid at the temperature of the reading, and nothing else. So what any of them shows is as much
 * as what the usual one of {@link Shown} would show beside it, of soda-lime glass and marked for 20 °C (Baumé and proof for 60 °F).
 *
 * @param markedFor temperature of its scale; specific gravity is against water of the same
 * @param glass that swells as it warms
 */
public record Stem(Temperature markedFor, Glass glass) {
    /** What hydrometers are blown of. */
    public enum Glass {
        SODA_LIME("soda-lime", Shown.GLASS, Source.GLASS_EXPANSION),
        BOROSILICATE("borosilicate", 9.9e-6, Source.BOROSILICATE_EXPANSION);

        private final String label;
        private final double expansion;
        private final Source source;

        Glass(String label, double expansion, Source source) {
            this.label = label;
            this.expansion = expansion;
            this.source = source;
        }

        public String label() {
            return label;
        }

        /** Returns its cubic expansion, per °C. */
        public double expansion() {
            return expansion;
        }

        public Source source() {
            return source;
        }
    }

    /** Returns the stem that a scale usually has. */
    public static Stem usual(Shown scale) {
        return new Stem(ofUsual(scale), Glass.SODA_LIME);
    }

    private static Temperature ofUsual(Shown scale) {
        return switch (scale) {
            case BAUME, PROOF -> VolumeBasis.AT_60F.temperature();
            case SPIRIT_15C -> VolumeBasis.AT_15C.temperature();
            default -> Temperature.TWENTY_CELSIUS;
        };
    }

    /** Returns whether a scale is also made for the temperature that this is marked for. */
    public boolean carries(Shown scale) {
        boolean onlyAtSixtyFahrenheit = scale == Shown.BAUME || scale == Shown.PROOF;
        return !onlyAtSixtyFahrenheit || markedFor.equals(VolumeBasis.AT_60F.temperature());
    }

    /**
     * Returns what the usual hydrometer would show where this one shows a value.
     *
     * @param scale of a hydrometer, which it {@link #carries}
     * @param value that it shows, in the unit of the scale
     * @param at temperature of the liquid
     */
    public double restated(Shown scale, double value, Temperature at) {
        Stem usual = usual(scale);
        if (equals(usual)) {
            return value;
        }
        double density = density(scale, value) * grown(at);
        return scale.onStem(density / usual.grown(at));
    }

    /** Returns the volume of the glass at the temperature of its scale against that at another. */
    private double grown(Temperature at) {
        return 1.0 - glass.expansion() * (at.celsius() - markedFor.celsius());
    }

    /** Returns the density that a value stands for at the temperature of the scale, kg/m³. */
    private double density(Shown scale, double value) {
        EthanolWater.Isotherm water = EthanolWater.at(markedFor);
        return switch (scale) {
            case GRAVITY -> value * water.water();
            case SACCHAROMETER -> {
                SucroseWater.Isotherm syrup = SucroseWater.at(markedFor);
                yield water.water() + (value >= 0.0 ? syrup.excess(value / 100.0) : value / 100.0 * syrup.slope(0.0));
            }
            case BAUME -> Shown.BAUME_MODULUS / (Shown.BAUME_MODULUS - value) * water.water();
            case SPIRIT_20C, SPIRIT_15C -> water.density(water.fractionOfPercentByVolume(value));
            case PROOF -> water.density(water.fractionOfPercentByVolume(0.5 * value));
            default -> throw new IllegalArgumentException("a " + scale.label() + " is no hydrometer");
        };
    }
}
