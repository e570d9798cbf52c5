package org.stillroom.studio.web.tables;

import java.util.Locale;
import org.stillroom.studio.answer.desk.Part;

/**
 * One field of a question.
 *
 * @param typed what stands in it, a line for each text
 * @param example what could stand in it, or empty
 */
public record AskedField(Part part, String typed, String example) {
    public String label() {
        return label(part.name());
    }

    /** A name is said with a capital and spaces, but for pH, which is written so everywhere. */
    static String label(String name) {
        return name.equals("ph")
                ? "pH"
                : name.substring(0, 1).toUpperCase(Locale.ROOT)
                        + name.substring(1).replace('-', ' ');
    }

    public boolean isFlag() {
        return part.form() == Part.Form.FLAG;
    }

    /** Returns whether a text of the choices is the one that stands for it. */
    public boolean isChosen(Part.Choice choice) {
        return choice.text().equals(typed.isEmpty() ? part.usual() : typed);
    }

    /** Returns what shows in the empty field: an example, else what stands for it when it is left out. */
    public String hint() {
        String usual = part.usual();
        return !example.isEmpty() ? example : usual == null ? "" : usual;
    }
}
