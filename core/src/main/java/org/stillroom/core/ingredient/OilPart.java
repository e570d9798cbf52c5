package org.stillroom.core.ingredient;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.aroma.Constituent;
import org.stillroom.core.aroma.Constituents;
import org.stillroom.core.aroma.EssentialOil;
import org.stillroom.core.aroma.EssentialOils;
import org.stillroom.core.aroma.OilDensity;
import org.stillroom.core.liquid.Substance;
import org.stillroom.core.quantity.Share;
import org.stillroom.core.quantity.Typed;

/**
 * Part of the oil that an ingredient brings: an oil or constituent that its maker named in it, or what is left of the oil under the
 * name of the ingredient itself.
 *
 * @param name as the maker wrote it
 * @param part of the oil as a whole, 0 to 1
 */
public record OilPart(String name, double part) {
    /** Labels round: parts that come to 100.2 % of the oil are let pass. */
    private static final double ROUNDED = 0.002;

    /** A rest below this part is rounding. */
    private static final double NOTHING = 1e-9;

    /**
     * Returns what the oil of an ingredient is made of, whether or not it brings any.
     *
     * @throws IllegalArgumentException when more is named in it than there is oil
     */
    public static List<OilPart> of(Ingredient ingredient) {
        Typed<Aroma> typed = ingredient.aroma();
        if (typed == null) {
            return List.of(new OilPart(ingredient.name(), 1.0));
        }
        Aroma aroma = typed.value();
        double all = all(ingredient, aroma);
        double over = Math.max(1.0, aroma.together() / all);
        if (over > 1.0 + ROUNDED) {
            throw new IllegalArgumentException("the oils that are named in it are more than its oil as a whole");
        }
        List<OilPart> parts = new ArrayList<>();
        aroma.parts().forEach(each -> parts.add(new OilPart(each.name(), each.amount() / all / over)));
        double rest = 1.0 - aroma.together() / all;
        if (rest > NOTHING) {
            parts.add(new OilPart(ingredient.name(), rest));
        }
        return parts;
    }

    /** Returns the density of an oil by its name, else by the oils that are named in it. */
    static OilDensity density(Ingredient oil) {
        @Nullable OilDensity named = OilDensity.known(oil.name());
        if (named != null || oil.aroma() == null) {
            return named == null ? OilDensity.of(oil.name()) : named;
        }
        Map<String, Double> parts = new TreeMap<>();
        of(oil).forEach(each -> parts.merge(each.name(), each.part(), Double::sum));
        return OilDensity.ofParts(parts);
    }

    private static double all(Ingredient ingredient, Aroma aroma) {
        boolean byMass = aroma.isByMass();
        Typed<Share> oil = ingredient.contains().get(Substance.OIL);
        if (oil == null) {
            if (ingredient.kind() == Kind.ESSENTIAL_OIL && !byMass) {
                throw new IllegalArgumentException("what an oil is made of is wanted by mass, such as limonene 62 %");
            }
            return ingredient.kind() == Kind.ESSENTIAL_OIL ? 1.0 : aroma.together();
        }
        if (Aroma.isByMass(oil.value()) != byMass) {
            throw new IllegalArgumentException(
                    "its oil and the oils named in it are wanted both by mass or both per litre");
        }
        return Aroma.amountOf(oil.value());
    }

    /** Returns the oil that the name means, or null when it means a constituent or none that is known. */
    public @Nullable EssentialOil oil() {
        return constituent() == null ? EssentialOils.find(name) : null;
    }

    /** Returns the constituent that the name means, or null when it means none: "Limonen" is limonene before it is limes. */
    public @Nullable Constituent constituent() {
        return Constituents.find(name);
    }

    /** Returns the parts that are known of it by CAS number, or by the name of a group; together at most 1. */
    public Map<String, Double> composition() {
        EssentialOil oil = oil();
        Constituent constituent = constituent();
        if (oil != null) {
            return oil.shares();
        }
        return constituent == null ? Map.of() : Map.of(constituent.cas(), 1.0);
    }
}
