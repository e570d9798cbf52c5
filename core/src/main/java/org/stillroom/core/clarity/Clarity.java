package org.stillroom.core.clarity;

import java.util.List;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.quantity.Temperature;

/**
 * Whether the oils of a liquid stay dissolved.
 *
 * @param oils what is to dissolve
 * @param medium what it is to dissolve in
 * @param load Σ cᵢ/Sᵢ: how many times what the liquid can hold; above 1 an oil phase can exist
 * @param separated oil that would separate if it stood long enough, g/L
 * @param verdict clear, hazy or cloudy by the typical figures
 * @param chances how likely each is
 */
public record Clarity(
        Oils oils, Medium medium, double load, double separated, Verdict verdict, Chances chances) {
    /**
     * Factor by which every solubility may be off together, one standard deviation; our own estimate from pharmacopoeial limits, not a
     * published error.
     */
    public static final double SOLUBILITY_FACTOR = 1.6;

    /** Returns the forecast for oils in a medium. */
    public static Clarity of(Oils oils, Medium medium, Doubts doubts) {
        double load = oils.load(medium);
        double separated = load > 1.0 ? oils.separated(medium) : 0.0;
        return new Clarity(
                oils,
                medium,
                load,
                separated,
                Verdict.of(load, separated, oils.gramsPerLitre()),
                Chances.of(oils, medium, doubts));
    }

    /** Returns the forecast for a liquid; one without oils is clear as far as oils go. */
    public static Clarity of(Contents liquid, Temperature temperature, Doubts doubts) {
        return of(Oils.of(liquid), Medium.of(liquid, temperature), doubts);
    }

    /** Returns the constituents whose solubility is estimated from their family, because the table does not hold them. */
    public List<String> estimated() {
        return oils.parts().stream()
                .filter(OilPart::estimated)
                .map(OilPart::name)
                .toList();
    }

    /** Returns the name of the constituent that puts most into the load, empty where there is no oil. */
    public String leading() {
        double[] loads = oils.loads(medium);
        int most = 0;
        for (int i = 1; i < loads.length; i++) {
            most = loads[i] > loads[most] ? i : most;
        }
        return loads.length == 0 ? "" : oils.parts().get(most).name();
    }
}
