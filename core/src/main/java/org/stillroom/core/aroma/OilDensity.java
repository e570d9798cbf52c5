package org.stillroom.core.aroma;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Material.Range;
import org.stillroom.core.quantity.Percentile;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Standing;

/**
 * The density of an oil by its name: that of its table where one states it, else the range in which most oils lie.
 *
 * @param range least and greatest, g/mL near 20 °C; relative densities to water of 20 °C, which are 0.2 % greater, stand as printed
 * @param standing how it came to us; {@link Standing#OWN} where a name is known to no table
 * @param by what states it, as it is said in a sentence
 */
public record OilDensity(Range range, Standing standing, String by) {
    /** How far one figure without a range may be off, part of it: ranges of standards reach 0.3 to 4 % either way. Own estimate. */
    private static final double ONE_FIGURE = 0.02;

    /** How far a pure substance may be off, part of its density. Own estimate. */
    private static final double PURE = 0.005;

    private static final String TRADE = "trade";

    private static final OilDensity BROAD = new OilDensity(nineOfTen(), Standing.OWN, "");

    /** Returns the density of the oil or constituent that a name means; the broad range where no table knows it. */
    public static OilDensity of(String name) {
        @Nullable OilDensity known = known(name);
        return known == null ? BROAD : known;
    }

    /** Returns the density of the oil or constituent that a name means, or null where no table states one. */
    public static @Nullable OilDensity known(String name) {
        @Nullable Material material = Materials.find(name);
        @Nullable Range range = material == null ? null : material.density();
        @Nullable Standing standing = material == null ? null : material.densityStanding();
        if (material != null && range != null && standing != null) {
            return new OilDensity(range, standing, by(material.standard()));
        }
        @Nullable EssentialOil oil = EssentialOils.find(name);
        @Nullable Double usual = oil == null ? null : oil.gramsPerMillilitre();
        if (usual != null) {
            return new OilDensity(around(usual, ONE_FIGURE), Standing.FROM_MEMORY, by(TRADE));
        }
        @Nullable Constituent constituent = oil == null ? Constituents.find(name) : null;
        Constituent.@Nullable Property pure = constituent == null ? null : constituent.density();
        return pure == null
                ? null
                : new OilDensity(around(pure.value(), PURE), pure.standing(), "as the pure substance");
    }

    /**
     * Returns the density of oils put together.
     *
     * @param parts of the mass by the name of the oil or constituent, together 1
     */
    public static OilDensity ofParts(Map<String, Double> parts) {
        double atLeast = 0.0;
        double atMost = 0.0;
        Standing weakest = Standing.READ;
        for (Map.Entry<String, Double> part : parts.entrySet()) {
            OilDensity each = of(part.getKey());
            atLeast += part.getValue() / each.range.low();
            atMost += part.getValue() / each.range.high();
            weakest = each.standing.compareTo(weakest) > 0 ? each.standing : weakest;
        }
        return new OilDensity(new Range(1.0 / atLeast, 1.0 / atMost), weakest, "by the oils in it");
    }

    /** Returns the middle of the range, g/mL. */
    public double gramsPerMillilitre() {
        return range.middle();
    }

    /** Returns half of the range, part of its middle. */
    public double relativeDoubt() {
        return 0.5 * (range.high() - range.low()) / range.middle();
    }

    /** Returns what is to be said where a volume of the oil is taken for a mass. */
    public Finding told(String name) {
        boolean known = standing != Standing.OWN;
        String middle = QuantityWords.fixed(gramsPerMillilitre(), 3) + " g, the middle of "
                + QuantityWords.fixed(range.low(), 3) + " to " + QuantityWords.fixed(range.high(), 3);
        return new Finding(
                "oil-density",
                known ? Severity.NOTE : Severity.CAUTION,
                name,
                "",
                known ? "from a table" : "not known",
                by.isEmpty()
                        ? "No table states its density: a millilitre of it is taken as " + middle
                                + ", in which nine of ten oils lie."
                        : "A millilitre of it is taken as " + middle + " " + by + ".",
                "Within " + QuantityWords.fixed(100.0 * relativeDoubt(), 1) + " % either way.",
                known ? "" : "Weigh a millilitre of it and write its density, or dose it by mass.",
                null,
                source());
    }

    private Source source() {
        return switch (standing) {
            case READ, SECONDARY -> Source.OIL_DENSITIES;
            case FROM_MEMORY, COMMON_PRACTICE -> Source.OIL_DENSITIES_RECALLED;
            case OWN -> Source.RULE_OF_THUMB;
        };
    }

    private static String by(String standard) {
        return standard.isEmpty() || standard.equals(TRADE) ? "by usual figures of the trade" : "by " + standard;
    }

    private static Range around(double value, double part) {
        return new Range(value * (1.0 - part), value * (1.0 + part));
    }

    private static Range nineOfTen() {
        double[] middles = Materials.list().stream()
                .filter(each -> each.kind() == Material.Kind.OIL && each.density() != null)
                .mapToDouble(each -> of(each.name()).gramsPerMillilitre())
                .toArray();
        return new Range(Percentile.of(middles, 0.05), Percentile.of(middles, 0.95));
    }
}
