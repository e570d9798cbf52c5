package org.stillroom.core.label;

import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import org.stillroom.core.ingredient.Kind;

/**
 * Something that went into a drink, by itself or in a stage, as far as its words and its kind tell what it is.
 *
 * @param name as its maker wrote it
 * @param alcohol how much of the alcohol of the drink it can have brought, parts of one
 * @param volume how much of its volume at 20 °C it takes, parts of one
 * @param tells what its words tell for certain
 * @param named whether one of some words is in what it is called, in English, in German or by its botanical name
 * @param plantsBeside the plants that are recognised in it, but for those that some words name
 */
public record GoneIn(
        String name,
        Kind kind,
        Contained.Part alcohol,
        Contained.Part volume,
        Set<Tells> tells,
        Predicate<List<String>> named,
        Function<List<String>, List<String>> plantsBeside) {
    /** Of what nobody knows anything. */
    static final GoneIn ANYTHING = new GoneIn(
            "",
            Kind.OTHER,
            new Contained.Part(0.0, 1.0),
            new Contained.Part(0.0, 1.0),
            Set.of(),
            words -> false,
            words -> List.of());

    /** What words can tell for certain. */
    public enum Tells {
        /** Of which plants it is, all of them, or that it is of none. */
        PLANTS,
        /** Which spirit or wine its alcohol is, or that it has none. */
        ALCOHOL,
        /** That it flavours nothing: neutral spirit, plain sugar, water. */
        NO_FLAVOUR
    }

    public GoneIn {
        tells = Set.copyOf(tells);
    }
}
