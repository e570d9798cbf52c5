package org.stillroom.studio.recipefile;

/**
 * Where something stands in a file.
 *
 * @param line from 1
 * @param column from 1, in characters
 */
record Place(int line, int column) {
    /** The place of what concerns the whole file. */
    static final Place WHOLE_FILE = new Place(0, 0);

    /** Returns the place in words, or nothing for the whole file. */
    String inWords() {
        return line == 0 ? "" : "line " + line;
    }
}
