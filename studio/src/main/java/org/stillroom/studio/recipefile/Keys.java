package org.stillroom.studio.recipefile;

import java.util.Arrays;
import java.util.List;
import org.stillroom.core.liquid.Substance;

/** The keys of each group of a recipe file, in the order in which they are written; the published schema has the same. */
final class Keys {
    static final List<String> RECIPE = List.of(
            "stillroom",
            "title",
            "makes",
            "target",
            "ounce",
            "room",
            "vessel",
            "measures",
            "aim",
            "ingredients",
            "lines",
            "rest",
            "loss",
            "ph",
            "pasteurised",
            "steps",
            "notes");

    static final List<String> TARGET = List.of("volume", "bottles", "strength", "sugar", "acidity");

    static final List<String> MEASURE = List.of("name", "kind", "marks", "tolerance", "holds", "sizes", "drop");

    static final List<String> INGREDIENT = List.of(
            "name",
            "kind",
            "strength",
            "tolerance",
            "sugar",
            "acidity",
            "density",
            "drop",
            "price",
            "at hand",
            "pack",
            "contains",
            "aroma",
            "plant",
            "ratio",
            "from",
            "note");

    static final List<String> LINE = List.of("use", "amount", "dose", "with", "meant", "note");

    static final List<String> CONTAINS =
            Arrays.stream(Substance.values()).map(Substance::label).toList();

    private Keys() {}
}
