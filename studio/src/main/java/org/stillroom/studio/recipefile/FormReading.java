package org.stillroom.studio.recipefile;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;

/**
 * What was understood of a form.
 *
 * @param recipe or null as long as a problem stands against it
 * @param problems by the field that they stand at
 * @param notes what was taken for granted, by field
 */
public record FormReading(@Nullable Recipe recipe, List<At> problems, List<At> notes) {
    public FormReading {
        problems = List.copyOf(problems);
        notes = List.copyOf(notes);
    }

    /**
     * A finding at a field.
     *
     * @param field name of the field, such as "lines.0.amount"; empty for the whole
     * @param choices texts to choose from that would each be understood; mostly empty
     */
    public record At(String field, Finding finding, List<String> choices) {
        public At {
            choices = List.copyOf(choices);
        }
    }

    /** Returns the problems at a field. */
    public List<At> problemsAt(String field) {
        return problems.stream().filter(at -> at.field().equals(field)).toList();
    }
}
