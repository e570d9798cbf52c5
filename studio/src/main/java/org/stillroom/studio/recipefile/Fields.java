package org.stillroom.studio.recipefile;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;

/**
 * A group of keys while it is read: hands out their values and notes whatever is wrong with them.
 *
 * <p>A value that cannot be used is noted once and then handed out as null, so that reading goes on to the next problem.
 */
final class Fields {
    /** No quantity that a person writes is longer. */
    private static final int LONGEST_QUANTITY = 200;

    /** Nor so long a row of them. */
    private static final int LONGEST_ROW = 4000;

    private final Map<String, Node> values = new LinkedHashMap<>();
    private final Map<String, Place> places = new LinkedHashMap<>();
    private final Set<String> spoilt = new HashSet<>();
    private final Place place;
    private final String called;
    private final Problems problems;

    private Fields(Node.Mapping mapping, String called, List<String> known, Problems problems) {
        this.place = mapping.place();
        this.called = called;
        this.problems = problems;
        Node.@Nullable Entry before = null;
        for (Node.Entry entry : mapping.entries()) {
            String key = entry.key().text();
            if (known.contains(key)) {
                values.put(key, entry.value());
                places.put(key, entry.key().place());
            } else if (mapping.braced() && before != null && continues(before, entry)) {
                tellComma(before, key);
            } else {
                tellUnknown(entry.key(), known);
            }
            before = entry;
        }
    }

    /**
     * Returns the keys of a group, or null, noted, when the node is no group.
     *
     * @param called what the group describes, such as "neutral spirit"; empty for the whole recipe
     */
    static @Nullable Fields of(Node node, String called, List<String> known, Problems problems) {
        if (node instanceof Node.Mapping mapping) {
            return new Fields(mapping, called, known, problems);
        }
        problems.add(
                "file-shape",
                node.place(),
                called,
                "not a group of keys",
                "Here stands " + node.inWords() + " where a group of keys is wanted.",
                "Write it as {" + known.get(0) + ": …, " + known.get(1) + ": …}.");
        return null;
    }

    /** Returns the text of a key in a node that may be a group, without noting anything; null when there is none or it is blank. */
    static @Nullable String peek(Node node, String key) {
        if (node instanceof Node.Mapping mapping) {
            for (Node.Entry entry : mapping.entries()) {
                if (entry.key().text().equals(key) && entry.value() instanceof Node.Scalar scalar) {
                    return scalar.isNothing() || scalar.text().isBlank() ? null : scalar.text();
                }
            }
        }
        return null;
    }

    /** Returns the known keys that are there, in the order of the file. */
    Set<String> keys() {
        return values.keySet();
    }

    Place placeOf(String key) {
        return places.getOrDefault(key, place);
    }

    boolean has(String key) {
        return values.containsKey(key);
    }

    @Nullable
    Node node(String key) {
        return spoilt.contains(key) ? null : values.get(key);
    }

    /** Returns the text of a key; null when it is absent or, noted, no text. */
    @Nullable
    String text(String key) {
        Node node = node(key);
        return node == null ? null : text(node, key);
    }

    /** Returns the text of a key that must be there; null, noted, when it is not. */
    @Nullable
    String required(String key, String remedy) {
        if (!has(key)) {
            problems.add("field-missing", place, called, "missing", "“" + key + "” is missing.", remedy);
        }
        return text(key);
    }

    /** Returns the text of a key by which other things call this; null or blank, noted, when there is none. */
    @Nullable
    String requiredName(String key, String remedy) {
        @Nullable String name = required(key, remedy);
        if (name != null && name.isBlank()) {
            problems.add("field-missing", placeOf(key), called, "missing", "“" + key + "” is empty.", remedy);
        }
        return name;
    }

    /** Returns the quantity of a key; null when it is absent or, noted, was not understood. */
    <Q> @Nullable Typed<Q> quantity(String key, Function<String, Understanding<Q>> reader, String example) {
        String text = text(key);
        return text == null ? null : understood(text, placeOf(key), key, reader, example);
    }

    /** Returns what several quantities in one text mean; null when it is absent or, noted, was not understood. */
    <Q> @Nullable Typed<Q> several(String key, Function<String, Understanding<Q>> reader, String example) {
        String text = text(key);
        return text == null ? null : understood(text, placeOf(key), key, reader, example, LONGEST_ROW);
    }

    /** Returns the quantity that a text means; null, noted, when it was not understood. */
    <Q> @Nullable Typed<Q> understood(
            String text, Place where, String key, Function<String, Understanding<Q>> reader, String example) {
        return understood(text, where, key, reader, example, LONGEST_QUANTITY);
    }

    private <Q> @Nullable Typed<Q> understood(
            String text,
            Place where,
            String key,
            Function<String, Understanding<Q>> reader,
            String example,
            int longest) {
        String such = "Write it such as " + example + ".";
        if (text.length() > longest) {
            problems.add("quantity", where, named(key), "cannot be used", Shown.quoted(text) + " is too long.", such);
            return null;
        }
        Understanding<Q> understanding = reader.apply(text);
        if (understanding instanceof Understanding.Understood<Q> understood) {
            understood.assumed().forEach(assumption -> problems.assume(where, named(key), assumption));
            return understood.typed();
        }
        if (understanding instanceof Understanding.Ambiguous<Q> ambiguous) {
            String remedy = ambiguous.choices().isEmpty()
                    ? such
                    : "Write "
                            + Shown.either(ambiguous.choices().stream()
                                    .map(c -> "“" + c + "”")
                                    .toList()) + ".";
            String question = Shown.quoted(text) + ": " + sentence(ambiguous.question());
            problems.ask(where, named(key), question, remedy, ambiguous.choices());
        } else if (understanding instanceof Understanding.Refused<Q> refused) {
            String reason = Shown.quoted(text) + ": " + sentence(refused.reason());
            problems.add("quantity", where, named(key), "cannot be used", reason, such);
        }
        return null;
    }

    /** Returns the one of the choices that a key names; null when it is absent or, noted, names none. */
    <C> @Nullable C choice(String key, List<C> choices, Function<C, String> label) {
        String text = text(key);
        if (text == null) {
            return null;
        }
        for (C choice : choices) {
            if (label.apply(choice).equals(text)) {
                return choice;
            }
        }
        List<String> labels = choices.stream().map(label).toList();
        String near = Nearest.of(text, labels);
        problem(
                key,
                "field-choice",
                "not known",
                Shown.quoted(text) + " is no " + key + " that is known.",
                near == null
                        ? "Write " + Shown.either(labels) + "."
                        : "Write “" + near + "”? Known are " + Shown.either(labels) + ".");
        return null;
    }

    /** Returns the items of a list; empty when it is absent or, noted, no list. */
    List<Node> items(String key) {
        Node node = node(key);
        if (node == null) {
            return List.of();
        }
        if (node instanceof Node.Sequence sequence) {
            return sequence.items();
        }
        problem(
                key,
                "file-shape",
                "not a list",
                "Here stands " + node.inWords() + " where a list is wanted.",
                "Write its entries below “" + key + ":”, each on a line of its own that starts with “- ”.");
        return List.of();
    }

    /** Returns the text of a node that belongs to a key; null, noted, when it is none. */
    @Nullable
    String text(Node node, String key) {
        if (node instanceof Node.Scalar scalar && !scalar.isNothing()) {
            return scalar.text();
        }
        problems.add(
                node instanceof Node.Scalar ? "field-empty" : "file-shape",
                node.place(),
                named(key),
                "no text",
                "“" + key + "” has " + node.inWords() + " where a text is wanted.",
                "Write a text after “" + key + ":”, or leave the key out.");
        return null;
    }

    void problem(String key, String rule, String verdict, String message, String remedy) {
        problems.add(rule, placeOf(key), named(key), verdict, message, remedy);
    }

    /** Notes a problem of the group as a whole. */
    void problem(String rule, String verdict, String message, String remedy) {
        problems.add(rule, place, called, verdict, message, remedy);
    }

    private String named(String key) {
        if (called.isEmpty() || called.startsWith(key + " of ")) {
            return called.isEmpty() ? key : called;
        }
        return called + ", " + key;
    }

    private static String sentence(String text) {
        return text.endsWith(".") || text.endsWith("?") ? text : text + ".";
    }

    /** A decimal comma in braces splits "1,5 L" into a key with the value 1 and a key "5 L" with none. */
    private static boolean continues(Node.Entry before, Node.Entry entry) {
        return entry.value() instanceof Node.Scalar nothing
                && nothing.isNothing()
                && before.value() instanceof Node.Scalar first
                && first.bare()
                && !entry.key().text().isEmpty()
                && Character.isDigit(entry.key().text().charAt(0));
    }

    private void tellComma(Node.Entry before, String rest) {
        String key = before.key().text();
        String whole = ((Node.Scalar) before.value()).text() + "," + rest;
        spoilt.add(key);
        problem(
                key,
                "file-comma",
                "cut in two",
                "A comma in braces ends an entry, so " + Shown.quoted(whole) + " was cut in two.",
                "Put it in quotes: " + key + ": \"" + whole + "\".");
    }

    private void tellUnknown(Node.Scalar key, List<String> known) {
        String near = problems.full() ? null : Nearest.of(key.text(), known);
        problems.add(
                "field-unknown",
                key.place(),
                called,
                "unknown field",
                "There is no field " + Shown.quoted(key.text()) + " here.",
                near == null ? "Known fields are " + Shown.either(known) + "." : "Write “" + near + "”?");
    }
}
