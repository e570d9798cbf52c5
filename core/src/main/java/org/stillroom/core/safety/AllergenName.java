package org.stillroom.core.safety;

import java.util.List;
import org.stillroom.core.ingredient.Kind;

/**
 * What a name says of allergens: a row of the table of allergens.
 *
 * @param allergen "milk", "nuts", "sulphites"; {@link #ANY} where nothing is known of what is in it
 * @param what as a label names it, a nut and a cereal by its kind
 * @param says what the name tells
 * @param names in which it stands
 * @param kinds of ingredient that it holds of, or empty for any
 * @param inUs whether the USA counts it among its nine
 * @param sulphurDioxide of its mass, 0 to 1; 0 where it is not known
 * @param status how the row came to us
 */
public record AllergenName(
        String allergen,
        String what,
        Says says,
        List<TextWords.Phrase> names,
        List<String> kinds,
        InUs inUs,
        double sulphurDioxide,
        RowStatus status) {
    static final String SULPHITES = "sulphites";
    static final String ANY = "any";

    /** What a name tells of an allergen. */
    public enum Says {
        /** It is in it. */
        CONTAINS,
        /** It may be in it. */
        MAY,
        /** It was distilled from it, which the law of the EU exempts. */
        EXEMPT,
        /** It is refined, for which the law of the EU exempts it: from memory, so that it clears nothing. */
        REFINED,
        /** It is another thing of a like name. */
        NONE
    }

    /** Whether it is one of the nine of the USA, from memory. */
    public enum InUs {
        YES,
        NO,
        /** It is none of the fourteen of the EU. */
        ONLY
    }

    public AllergenName {
        names = List.copyOf(names);
        kinds = List.copyOf(kinds);
        if (!(sulphurDioxide >= 0.0 && sulphurDioxide <= 1.0)) {
            throw new IllegalArgumentException("a part of the mass lies between 0 and 1, not at " + sulphurDioxide);
        }
    }

    /** Returns the name of the rule of its findings. */
    String rule() {
        if (allergen.equals(SULPHITES)) {
            return SULPHITES;
        }
        return allergen.equals(ANY) ? "allergens" : "allergen-" + allergen;
    }

    boolean isAbout(String other) {
        return allergen.equals(other);
    }

    boolean holdsOf(Kind kind) {
        return kinds.isEmpty() || kinds.contains(kind.label());
    }
}
