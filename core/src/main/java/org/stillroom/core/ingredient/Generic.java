package org.stillroom.core.ingredient;

import java.util.List;
import org.stillroom.core.reference.Source;

/**
 * An ingredient that needs no listing since its name says what it is.
 *
 * @param ingredient what it is, complete enough to plan with
 * @param otherNames names that mean the same
 * @param typical true when lots differ, so that a listed ingredient with its own figures does better
 * @param remark what the figures hold for, one sentence
 * @param source where the figures come from
 */
public record Generic(Ingredient ingredient, List<String> otherNames, boolean typical, String remark, Source source) {
    public Generic {
        otherNames = List.copyOf(otherNames);
    }
}
