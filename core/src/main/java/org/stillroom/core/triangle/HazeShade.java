package org.stillroom.core.triangle;

import java.util.OptionalDouble;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.clarity.Medium;
import org.stillroom.core.clarity.OilPart;
import org.stillroom.core.clarity.OilParts;
import org.stillroom.core.clarity.Oils;
import org.stillroom.core.clarity.Remedies;
import org.stillroom.core.clarity.Shading;
import org.stillroom.core.clarity.Verdict;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.recipe.SugarBasis;

/**
 * What the triangle says of the oils of a liquid at 20 °C: where it would be hazy or cloudy with as much oil per litre, and the
 * liquid's own verdict.
 *
 * @param hazy data of an SVG path about that part of the plate, or empty
 * @param cloudy the same of the cloudy part
 * @param gramsPerLitre of oil in the liquid
 * @param verdict on the liquid itself by the typical figures
 * @param clearFrom least strength at this sugar that is clear, % vol; empty where none is
 */
public record HazeShade(String hazy, String cloudy, double gramsPerLitre, Verdict verdict, OptionalDouble clearFrom) {
    /** Returns the shade of a liquid, or null where it holds no oil, or nothing to dissolve it in. */
    public static @Nullable HazeShade of(Contents liquid, Plate plate) {
        return of(liquid, plate, OilParts::of);
    }

    /**
     * Returns the same where the tables are not at hand, as in a browser.
     *
     * @param known what is known of a constituent, by the key that the liquid has it under
     */
    public static @Nullable HazeShade of(Contents liquid, Plate plate, Function<String, OilPart> known) {
        boolean wet = liquid.grams(Substance.ETHANOL) + liquid.grams(Substance.WATER) > 0.0;
        if (!wet || !(liquid.grams(Substance.OIL) > 0.0)) {
            return null;
        }
        Temperature temperature = Temperature.TWENTY_CELSIUS;
        Oils oils = Oils.of(liquid, known);
        Medium medium = Medium.of(liquid, temperature);
        HazeAreas areas =
                new HazeAreas(new Shading(oils, temperature), Company.of(liquid, SugarBasis.AS_DISSOLVED), plate);
        return new HazeShade(
                areas.path(Verdict.HAZY),
                areas.path(Verdict.CLOUDY),
                oils.gramsPerLitre(),
                Verdict.of(oils, medium),
                Remedies.clearFrom(oils, medium));
    }
}
