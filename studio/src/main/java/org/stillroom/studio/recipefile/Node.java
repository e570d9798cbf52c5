package org.stillroom.studio.recipefile;

import java.util.List;

/** A piece of a recipe file that knows its place. */
sealed interface Node {
    Place place();

    /**
     * Text; whatever stands in the file is taken as text, so that nothing typed is reformatted.
     *
     * @param bare true when it was written without quotes
     */
    record Scalar(String text, boolean bare, Place place) implements Node {
        /** Returns whether nothing was written, or what YAML writes for nothing. */
        boolean isNothing() {
            return bare && (text.isEmpty() || text.equals("~") || text.equals("null"));
        }
    }

    /** A list. */
    record Sequence(List<Node> items, Place place) implements Node {}

    /**
     * Keys with their values.
     *
     * @param braced true when it was written in braces, where a comma ends an entry
     */
    record Mapping(List<Entry> entries, boolean braced, Place place) implements Node {}

    /** One key with its value. */
    record Entry(Scalar key, Node value) {}

    /** Returns what this is, for a person. */
    default String inWords() {
        if (this instanceof Scalar scalar) {
            return scalar.isNothing() ? "nothing" : "a text";
        }
        return this instanceof Sequence ? "a list" : "a group of keys";
    }
}
