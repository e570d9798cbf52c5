package org.stillroom.studio.recipefile;

import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlVersionException;

/** Says in plain words what the YAML parser stumbled over, and what to do about it. */
final class YamlTrouble {
    /** What the parser's own words contain, what is meant, and the way out. */
    private enum Kind {
        TAB(
                "(TAB)",
                "There is a tab character; YAML is indented with spaces only.",
                "Replace the tab with two spaces."),
        COLON(
                "mapping values are not allowed",
                "There is a colon where none can stand: inside a text, or on a line indented otherwise than the one above it.",
                "Put the text in quotes, or line the keys up under each other."),
        NO_COLON(
                "could not find expected ':'",
                "A key has no colon after it, or a line belongs to nothing above it.",
                "Write “key: value”, or indent the line under the key that it belongs to."),
        QUOTE(
                "unexpected end of stream",
                "A quotation mark is opened and not closed.",
                "Close the quotation mark that was opened last."),
        BRACKET(
                "expected ',' or",
                "Braces or brackets are not closed, or a comma is missing between two entries.",
                "Close with } or ], put a comma between entries, and put texts with commas or brackets in quotes."),
        ESCAPE(
                "unknown escape character",
                "A backslash stands in a text in double quotes.",
                "Write the backslash twice, or use single quotes."),
        START(
                "cannot start any token",
                "A text cannot start with this character without quotes.",
                "Put the text in quotes."),
        INDENT(
                "expected <block end>",
                "This line is indented otherwise than the lines that it belongs with.",
                "Line up keys of one group, and the dashes of one list, under each other."),
        SEQUENCE(
                "sequence entries are not allowed",
                "A list item (“-”) cannot stand here.",
                "Start the list on a new line under its key.");

        private final String sign;
        private final String message;
        private final String remedy;

        Kind(String sign, String message, String remedy) {
            this.sign = sign;
            this.message = message;
            this.remedy = remedy;
        }
    }

    private YamlTrouble() {}

    /** Returns what the parser found, for the person who wrote the text. */
    static Unreadable inWords(YamlEngineException trouble, String text) {
        if (trouble instanceof YamlVersionException) {
            return new Unreadable(
                    "file-broken",
                    new Place(1, 1),
                    "The file says that it is of a version of YAML that is not read.",
                    "Take the line “%YAML …” out.");
        }
        if (!(trouble instanceof MarkedYamlEngineException marked)) {
            return new Unreadable("file-broken", Place.WHOLE_FILE, "The file is not in order as YAML.", OTHERWISE);
        }
        Place place = TreeBuilder.place(
                marked.getProblemMark().isPresent() ? marked.getProblemMark() : marked.getContextMark());
        String said = String.valueOf(marked.getProblem());
        if (indentedWithTab(text, place.line())) {
            return broken(place, Kind.TAB.message, Kind.TAB.remedy);
        }
        for (Kind kind : Kind.values()) {
            if (said.contains(kind.sign)) {
                Place from = TreeBuilder.place(marked.getContextMark());
                return switch (kind) {
                    case QUOTE -> broken(from, kind.message, kind.remedy);
                    case BRACKET -> broken(place, kind.message + opened(from, place), kind.remedy);
                    case TAB, COLON, NO_COLON, ESCAPE, START, INDENT, SEQUENCE ->
                        broken(place, kind.message, kind.remedy);
                };
            }
        }
        return broken(place, "The file is not in order as YAML here (the parser says: " + said + ").", OTHERWISE);
    }

    private static final String OTHERWISE =
            "Compare the line and the one above it with the examples in docs/recipe-file.md; texts with : # , { } [ ] need quotes.";

    private static String opened(Place from, Place noticed) {
        return from.line() < noticed.line() ? " They were opened on " + from.inWords() + "." : "";
    }

    private static Unreadable broken(Place place, String message, String remedy) {
        return new Unreadable("file-broken", place, "Column " + place.column() + ": " + message, remedy);
    }

    private static boolean indentedWithTab(String text, int line) {
        String written = text.lines().skip(Math.max(0, line - 1)).findFirst().orElse("");
        return written.substring(0, written.length() - written.stripLeading().length())
                .contains("\t");
    }
}
