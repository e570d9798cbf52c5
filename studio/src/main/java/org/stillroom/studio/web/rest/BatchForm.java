package org.stillroom.studio.web.rest;

import java.util.List;
import java.util.Map;
import org.stillroom.core.reference.Finding;

/**
 * A form by which something is written of a batch.
 *
 * @param act last part of its address
 * @param fields in order
 * @param typed what was typed, by field, when it was refused
 * @param problems why it was refused
 */
public record BatchForm(String act, List<Field> fields, Map<String, String> typed, List<Finding> problems) {
    public BatchForm {
        fields = List.copyOf(fields);
        typed = Map.copyOf(typed);
        problems = List.copyOf(problems);
    }

    /** The kinds of field. */
    public enum Kind {
        TEXT,
        LONG,
        DAY,
        CHOICE,
        PHOTO,
        /** Not shown, since there is nothing to choose. */
        FIXED
    }

    /**
     * A field.
     *
     * @param choices values to choose from, with what they are called
     * @param example what could be typed, or the value that is fixed
     */
    public record Field(String name, Kind kind, List<Choice> choices, String example) {
        public Field {
            choices = List.copyOf(choices);
        }

        static Field text(String name, String example) {
            return new Field(name, Kind.TEXT, List.of(), example);
        }

        static Field of(String name, Kind kind) {
            return new Field(name, kind, List.of(), "");
        }

        static Field choice(String name, List<Choice> choices) {
            return choices.size() == 1
                    ? new Field(name, Kind.FIXED, choices, choices.get(0).value())
                    : new Field(name, Kind.CHOICE, choices, "");
        }
    }

    /** Something to choose. */
    public record Choice(String value, String name) {}

    /** Returns whether a file goes along. */
    public boolean hasPhoto() {
        return fields.stream().anyMatch(field -> field.kind() == Kind.PHOTO);
    }

    /** Returns whether it was sent and refused, so that it stands open. */
    public boolean isOpen() {
        return !problems.isEmpty();
    }

    public String value(Field field) {
        return typed.getOrDefault(field.name(), field.kind() == Kind.FIXED ? field.example() : "");
    }

    public List<Finding> at(Field field) {
        return problems.stream()
                .filter(problem -> problem.where().equals(field.name()))
                .toList();
    }

    /** Returns what is wrong with no single field. */
    public List<Finding> elsewhere() {
        return problems.stream()
                .filter(problem ->
                        fields.stream().noneMatch(field -> field.name().equals(problem.where())))
                .toList();
    }
}
