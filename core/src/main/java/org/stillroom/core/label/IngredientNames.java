package org.stillroom.core.label;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.reference.PlainLetters;
import org.stillroom.core.reference.Table;
import org.stillroom.core.reference.Tables;

/**
 * Names of ingredients in the languages of labels: whole names that are known, put from the language in which they were typed into that
 * of the label.
 *
 * <p>Nothing is put into another language in part: a name with one more word than is known stays as it was typed, and so does a name
 * in the language of the label. Names: common usage.
 */
public final class IngredientNames {
    private static final String ENGLISH = "en";
    private static final String GERMAN = "de";

    /** A strength that stands behind a name, "Wodka 40 %", by volume but for acids. */
    private static final Pattern STRENGTH =
            Pattern.compile("(.*\\p{L})\\s+(\\d+(?:[.,]\\d+)?)\\s*(%(?:\\s*vol\\.?)?)?");

    /** By the language in which a name was typed, what it is called in the other. */
    private static final Map<String, Map<String, String>> KNOWN = read(Tables.open("label/ingredient_names.csv"));

    private IngredientNames() {}

    private static Map<String, Map<String, String>> read(Table table) {
        Map<String, String> fromEnglish = new HashMap<>();
        Map<String, String> fromGerman = new HashMap<>();
        for (Table.Row row : table.rows()) {
            List<String> english = List.of(row.text("english").split(";", -1));
            List<String> german = List.of(row.text("german").split(";", -1));
            english.forEach(name -> put(fromEnglish, name, german.get(0), row));
            english.forEach(name -> fromEnglish.putIfAbsent(PlainLetters.of(plural(name)), german.get(0)));
            german.forEach(name -> put(fromGerman, name, english.get(0), row));
        }
        return Map.of(ENGLISH, Map.copyOf(fromEnglish), GERMAN, Map.copyOf(fromGerman));
    }

    private static void put(Map<String, String> known, String name, String other, Table.Row row) {
        String before = known.put(PlainLetters.of(name), other);
        if (before != null && !before.equals(other)) {
            throw row.fault("english", "\"" + name + "\" stands in two rows");
        }
    }

    private static String plural(String name) {
        if (name.endsWith("y")) {
            return name.substring(0, name.length() - 1) + "ies";
        }
        return name + (name.endsWith("ch") ? "es" : "s");
    }

    /**
     * Returns what a label in a language calls an ingredient.
     *
     * @param tag of the language, "en" or "de"; in any other a name stays as it was typed
     * @param typed as its maker wrote it
     */
    public static String in(String tag, String typed) {
        Matcher strength = STRENGTH.matcher(typed.strip());
        boolean strong = strength.matches() && (strength.group(3) != null || Generics.find(typed) != null);
        if (!strong) {
            return whole(tag, typed).orElse(typed);
        }
        String percent = tag.equals(GERMAN)
                ? strength.group(2).replace('.', ',')
                : strength.group(2).replace(',', '.');
        String unit = isAcid(strength.group(1)) ? " %" : " % vol";
        return whole(tag, strength.group(1))
                .map(name -> name + " " + percent + unit)
                .orElse(typed);
    }

    private static boolean isAcid(String name) {
        String plain = PlainLetters.of(name);
        return plain.endsWith("acid") || plain.endsWith(PlainLetters.of("säure"));
    }

    /** Returns the name in the language, where it was typed in the other and is none in this. */
    private static Optional<String> whole(String tag, String name) {
        @Nullable Map<String, String> own = KNOWN.get(tag);
        String plain = PlainLetters.of(name);
        return own == null || own.containsKey(plain)
                ? Optional.empty()
                : Optional.ofNullable(KNOWN.get(tag.equals(GERMAN) ? ENGLISH : GERMAN))
                        .map(other -> other.get(plain));
    }
}
