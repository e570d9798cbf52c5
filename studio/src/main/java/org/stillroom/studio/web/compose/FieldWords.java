package org.stillroom.studio.web.compose;

import java.util.List;
import java.util.Map;
import java.util.MissingResourceException;
import org.stillroom.studio.wording.Words;

/** What the fields of a recipe are called, where they are told of beside each other. */
public final class FieldWords {
    private static final Map<String, String> LISTS = Map.of(
            "lines", "compose.inLine",
            "ingredients", "compose.inIngredient",
            "measures", "compose.inMeasure",
            "steps", "compose.step");

    private FieldWords() {}

    /**
     * Returns what a field is called, such as "Line 2: ingredient" for "lines.1.use".
     *
     * @param field name of a field, of an item such as "lines.2", or of a list
     */
    public static String of(String field, Words words) {
        List<String> names = List.of(field.split("\\.", -1));
        String list = LISTS.get(names.get(0));
        if (list == null) {
            return one(names.get(names.size() - 1), words);
        }
        String item = names.size() < 2 ? "" : words.say(list, "" + (Integer.parseInt(names.get(1)) + 1));
        if (names.size() < 3) {
            return item.isEmpty() ? one(names.get(0), words) : item;
        }
        return item + ": " + one(String.join(" ", names.subList(2, names.size())), words);
    }

    private static String one(String name, Words words) {
        String key = "compose.field." + name.replace(" ", "");
        try {
            return words.say(key);
        } catch (MissingResourceException ownName) {
            return name; // such as a constituent
        }
    }
}
