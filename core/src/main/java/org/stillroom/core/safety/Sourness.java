package org.stillroom.core.safety;

import java.util.EnumMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.acid.Acid;
import org.stillroom.core.acid.Ph;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.plan.PlannedLine;
import org.stillroom.core.quantity.QuantityWords;

/**
 * How sour a drink is, on the cautious side: the highest that its pH can be, or nothing.
 *
 * <p>It is worked out only where all that could hold acids back is known: acids by themselves in sugar, water and plain spirit. The
 * water is taken for hard, the acids for as weak as the alcohol makes them. Juice, wine, honey, plants, milk and whatever is bought
 * ready bring salts that nobody told: then the pH is not known until it is measured.
 *
 * @param ph the highest that it can be, or null where it is not known
 * @param told in words
 */
public record Sourness(@Nullable Double ph, String told) {
    /** Hydrogencarbonate of hard drinking water, mol/L. From memory: 360 mg/L and more are called hard. */
    private static final double HARD_WATER = 0.006;
    /** By how much each % of ethanol by mass raises a pK of an acid. From memory: acetic acid 4.76 in water, 5.12 in 20 %. */
    private static final double WEAKENED = 0.02;
    /** A syrup of sugar and water alone, by its name. */
    private static final Pattern PLAIN_SYRUP =
            Pattern.compile("( (sugar|simple|rich|plain|white|invert|inverted|gomme|syrup|\\d+))+");

    static Sourness of(Drink drink) {
        @Nullable Double measured = drink.condition().ph();
        if (measured != null) {
            return new Sourness(measured, "pH " + QuantityWords.fixed(measured, 1) + " as measured");
        }
        Map<Acid, Double> acids = acids(drink);
        if (acids.isEmpty() || !drink.lines().stream().allMatch(Sourness::bringsNoSalts)) {
            return new Sourness(null, "pH not known");
        }
        Contents liquid = drink.plan().liquid();
        double litresOfWater = liquid.grams(Substance.WATER) / 1000.0;
        double ethanolPercent = 100.0 * liquid.grams(Substance.ETHANOL) / liquid.total();
        double ph = Ph.of(acids, HARD_WATER * litresOfWater / drink.litres(), WEAKENED * ethanolPercent);
        return new Sourness(ph, "pH at most " + QuantityWords.fixed(ph, 1) + " by its acids, in hard water");
    }

    private static Map<Acid, Double> acids(Drink drink) {
        Map<Acid, Double> acids = new EnumMap<>(Acid.class);
        for (Substance substance : Substance.values()) {
            @Nullable Acid acid = substance.acid();
            double grams = drink.gramsPerLitre(substance);
            if (acid != null && grams > 0.0) {
                acids.put(acid, grams / acid.gramsPerMole());
            }
        }
        return acids;
    }

    private static boolean bringsNoSalts(PlannedLine line) {
        Kind kind = line.ingredient().kind();
        return switch (kind) {
            case SPIRIT, DISTILLATE, ESSENTIAL_OIL, SUGAR, ACID, GLYCEROL, WATER -> true;
            case SYRUP -> isPlainSyrup(line);
            case ESSENCE, WINE, LIQUEUR, TINCTURE, MACERATE, HYDROSOL, HONEY, JUICE -> false;
            case FRESH_PLANT, DRIED_PLANT, SALT, DAIRY, EGG, OTHER -> false;
        };
    }

    /** Returns whether a syrup is of sugar and water alone, by its name. */
    static boolean isPlainSyrup(PlannedLine line) {
        return PLAIN_SYRUP.matcher(Words.plain(line.name())).matches();
    }

    /** Returns whether it is shown to be no higher than a bound; what is not known never is. */
    boolean isAtMost(double bound) {
        return ph != null && ph <= bound;
    }
}
