package org.stillroom.studio.usecase.shelf;

import java.util.List;
import org.stillroom.core.ingredient.Generic;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Kind;

/** The ready-made ingredients to put on an empty shelf. */
public final class StarterBottles {
    /** Strengths that people buy, % vol at 20 °C. Common practice, no source. */
    public static final List<String> STRENGTHS = List.of("37.5", "40", "43", "50", "63", "75", "96");

    private StarterBottles() {}

    /** Returns the spirits at the strengths that people buy. */
    public static List<Generic> spirits() {
        return STRENGTHS.stream()
                .map(strength -> Generics.find("spirit " + strength + " %"))
                .filter(generic -> generic != null)
                .toList();
    }

    /** Returns everything else that needs no description. */
    public static List<Generic> others() {
        return Generics.list().stream()
                .filter(generic -> generic.ingredient().kind() != Kind.SPIRIT)
                .filter(generic -> generic.ingredient().kind() != Kind.WATER)
                .toList();
    }
}
