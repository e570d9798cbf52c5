package org.stillroom.studio.recipefile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.DocumentStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/**
 * Builds the tree of a YAML text from the parser's events.
 *
 * <p>The tree is built here and not by the library, so that every node keeps its place, text stays text, and a hostile
 * file is turned away at its first wrong step: an alias is refused where it stands instead of being counted, and depth
 * and size are checked before anything is built on them.
 */
final class TreeBuilder {
    /** The deepest that a recipe file nests; the format needs five. */
    static final int DEEPEST = 12;

    /** The most keys, values and list items of a file; a long recipe has a thousand. */
    static final int MOST_NODES = 20_000;

    private final Problems problems;
    private final Iterator<Event> events;
    private int nodes;

    private TreeBuilder(String text, Problems problems) {
        this.problems = problems;
        this.events = new Parse(LoadSettings.builder()
                        .setCodePointLimit(FileText.MOST_BYTES)
                        .build())
                .parseString(text)
                .iterator();
    }

    /**
     * Returns the root of the text. Keys written twice are noted in the problems, the first one counts.
     *
     * @throws Unreadable where the text is no YAML, or uses of YAML what a recipe file does not
     */
    static Node build(String text, Problems problems) throws Unreadable {
        try {
            return new TreeBuilder(text, problems).document();
        } catch (YamlEngineException e) {
            throw YamlTrouble.inWords(e, text);
        }
    }

    private Node document() throws Unreadable {
        events.next();
        Event first = events.next();
        if (!(first instanceof DocumentStartEvent)) {
            throw new Unreadable(
                    "file-empty",
                    Place.WHOLE_FILE,
                    "The file holds no recipe.",
                    "Start it with “stillroom: 1”, a title and the lines; docs/recipe-file.md shows how, docs/essence-file.md of an"
                            + " essence.");
        }
        Node root = node(events.next(), 1);
        events.next();
        Event after = events.next();
        if (after instanceof DocumentStartEvent) {
            throw new Unreadable(
                    "file-two-documents",
                    place(after),
                    "A second document starts here (“---”); a file holds one recipe.",
                    "Put the second recipe into a file of its own.");
        }
        return root;
    }

    private Node node(Event event, int depth) throws Unreadable {
        refuseWhatIsNotUsed(event);
        nodes++;
        if (nodes > MOST_NODES) {
            throw new Unreadable(
                    "file-too-long",
                    place(event),
                    "The file has more than 20 000 keys, values and list items.",
                    "Check that this is a recipe; split it into stages that name each other with “from”.");
        }
        if (depth > DEEPEST) {
            throw new Unreadable(
                    "file-too-deep",
                    place(event),
                    "Lists and groups are nested more than " + DEEPEST + " deep here; a recipe needs five.",
                    "Look for brackets or indents that were not closed.");
        }
        if (event instanceof ScalarEvent scalar) {
            return new Node.Scalar(scalar.getValue(), scalar.isPlain(), place(scalar));
        }
        return event instanceof SequenceStartEvent sequence
                ? sequence(sequence, depth)
                : mapping((MappingStartEvent) event, depth);
    }

    private Node sequence(SequenceStartEvent start, int depth) throws Unreadable {
        List<Node> items = new ArrayList<>();
        for (Event event = events.next(); event.getEventId() != Event.ID.SequenceEnd; event = events.next()) {
            items.add(node(event, depth + 1));
        }
        return new Node.Sequence(List.copyOf(items), place(start));
    }

    private Node mapping(MappingStartEvent start, int depth) throws Unreadable {
        List<Node.Entry> entries = new ArrayList<>();
        Map<String, Integer> lines = new HashMap<>();
        for (Event event = events.next(); event.getEventId() != Event.ID.MappingEnd; event = events.next()) {
            Node key = node(event, depth + 1);
            Node value = node(events.next(), depth + 1);
            if (!(key instanceof Node.Scalar name)) {
                throw new Unreadable(
                        "file-key",
                        key.place(),
                        "A key must be a word, not " + key.inWords() + ".",
                        "Write the key as plain text before the colon.");
            }
            Integer before = lines.putIfAbsent(name.text(), name.place().line());
            if (before == null) {
                entries.add(new Node.Entry(name, value));
            } else {
                tellTwice(name, before);
            }
        }
        return new Node.Mapping(List.copyOf(entries), start.isFlow(), place(start));
    }

    private void tellTwice(Node.Scalar name, int before) {
        String message = before == name.place().line()
                ? Shown.quoted(name.text()) + " is written twice on this line."
                : Shown.quoted(name.text()) + " is written here and already on line " + before + ".";
        problems.add("file-key-twice", name.place(), name.text(), "written twice", message, "Keep one of the two.");
    }

    private static void refuseWhatIsNotUsed(Event event) throws Unreadable {
        if (event instanceof AliasEvent alias) {
            throw shorthand(event, "an alias (*" + alias.getAlias() + ")");
        }
        if (event instanceof NodeEvent node && node.getAnchor().isPresent()) {
            throw shorthand(event, "an anchor (&" + node.getAnchor().get() + ")");
        }
        Optional<String> tag = event instanceof ScalarEvent scalar
                ? scalar.getTag()
                : event instanceof SequenceStartEvent sequence
                        ? sequence.getTag()
                        : event instanceof MappingStartEvent mapping ? mapping.getTag() : Optional.empty();
        if (tag.isPresent()) {
            throw shorthand(event, "a tag (" + Shown.quoted(tag.get()) + ")");
        }
    }

    private static Unreadable shorthand(Event event, String what) {
        return new Unreadable(
                "file-shorthand",
                place(event),
                "There is " + what + " here; recipe files use none, so that what is written stands where it is used.",
                "Write the value out; if the text itself starts with *, & or !, put it in quotes.");
    }

    static Place place(Event event) {
        return place(event.getStartMark());
    }

    static Place place(Optional<Mark> mark) {
        return mark.map(m -> new Place(m.getLine() + 1, m.getColumn() + 1)).orElse(Place.WHOLE_FILE);
    }
}
