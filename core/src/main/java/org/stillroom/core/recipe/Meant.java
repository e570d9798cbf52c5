package org.stillroom.core.recipe;

import org.stillroom.core.quantity.MassConcentration;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;

/**
 * The answer to whether a dose of oil is meant: so much oil per litre, of this ingredient and of no other.
 *
 * <p>It answers for as much and for less, so that it holds when the recipe is scaled with its doses, and not when it is scaled without
 * them, nor when another bottle takes the place of this one.
 *
 * @param gramsPerLitre oil per litre of what is made, g/L
 * @param use name of the ingredient
 */
public record Meant(double gramsPerLitre, String use) {
    private static final String OF = " of ";
    /** What rounding the answer to three figures may hide. */
    private static final double ROUNDING = 1.005;

    public Meant {
        if (!(gramsPerLitre > 0.0)) {
            throw new IllegalArgumentException("a dose is above 0 g/L, not " + gramsPerLitre);
        }
    }

    /** Returns the answer for a dose, as a recipe file says it. */
    public static Typed<Meant> of(double gramsPerLitre, String use) {
        return new Typed<>(QuantityWords.figures(gramsPerLitre) + " g/L" + OF + use, new Meant(gramsPerLitre, use));
    }

    /** Reads a text such as "4.2 g/L of clove oil". */
    public static Understanding<Meant> read(String text, QuantityText quantities) {
        int of = text.indexOf(OF);
        String use = of < 0 ? "" : text.substring(of + OF.length()).strip();
        return !use.isEmpty()
                        && quantities.share(text.substring(0, of)) instanceof Understanding.Understood<Share> share
                        && share.typed().value() instanceof MassConcentration oil
                        && oil.gramsPerLitre() > 0.0
                ? new Understanding.Understood<>(new Typed<>(text, new Meant(oil.gramsPerLitre(), use)))
                : new Understanding.Refused<>(
                        text,
                        "grams of oil per litre and the name of the line are wanted, such as 4.2 g/L of clove oil");
    }

    /** Returns whether it answers for a dose, g/L of oil. */
    boolean answers(String ingredient, double dose) {
        return use.equals(ingredient) && dose <= ROUNDING * gramsPerLitre;
    }
}
