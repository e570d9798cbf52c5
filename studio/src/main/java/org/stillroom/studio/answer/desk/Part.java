package org.stillroom.studio.answer.desk;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One thing that a question at the desk takes, as text.
 *
 * @param name in small letters with hyphens, such as "make-up-to"
 * @param description what it is and how it is written
 * @param usual the text that stands for it when it is left out, or null
 * @param form how often and how it is given
 * @param choices the texts that it can be, in words for a form; empty where it is free
 * @param group under which a form shows it, when asked for; empty for what is always shown
 */
public record Part(
        String name, String description, @Nullable String usual, Form form, List<Choice> choices, String group) {
    public Part {
        choices = List.copyOf(choices);
    }

    public Part(String name, String description, @Nullable String usual, Form form) {
        this(name, description, usual, form, List.of(), "");
    }

    /**
     * One of the texts that a part can be.
     *
     * @param text as it is typed
     * @param words for a form
     */
    public record Choice(String text, String words) {}

    /** How a part is given. */
    public enum Form {
        /** One text, which must not be left out. */
        REQUIRED,
        /** One text. */
        TEXT,
        /** Any number of texts, one at least. */
        REQUIRED_TEXTS,
        /** Any number of texts. */
        TEXTS,
        /** Any number of texts, commas within them left alone. */
        TEXTS_AS_TYPED,
        /** Any number of texts of the form NAME=AMOUNT. */
        NAMED_TEXTS,
        /** Said or not said. */
        FLAG
    }

    static Part required(String name, String description) {
        return new Part(name, description, null, Form.REQUIRED);
    }

    static Part text(String name, String description) {
        return new Part(name, description, null, Form.TEXT);
    }

    static Part usual(String name, String usual, String description) {
        return new Part(name, description, usual, Form.TEXT);
    }

    /** Returns the same part that is one of these texts. */
    Part oneOf(Choice... texts) {
        return new Part(name, description, usual, form, List.of(texts), group);
    }

    /** Returns the same part, which a form shows under a heading when asked for. */
    Part in(String heading) {
        return new Part(name, description, usual, form, choices, heading);
    }

    /** Returns whether the question cannot be answered without it. */
    public boolean isRequired() {
        return form == Form.REQUIRED || form == Form.REQUIRED_TEXTS;
    }

    /** Returns whether it may be given more than once. */
    public boolean isRepeated() {
        return form == Form.REQUIRED_TEXTS
                || form == Form.TEXTS
                || form == Form.TEXTS_AS_TYPED
                || form == Form.NAMED_TEXTS;
    }
}
