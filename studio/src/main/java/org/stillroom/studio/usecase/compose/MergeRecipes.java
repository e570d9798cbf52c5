package org.stillroom.studio.usecase.compose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.studio.recipefile.RecipeForm;

/**
 * Lays together what two people made of one recipe.
 *
 * <p>What only one of them changed is taken from that one unless told otherwise; what both changed is asked. Fields of one line,
 * ingredient, measure or step stay together; where a list grew or shrank, the whole list does.
 */
public final class MergeRecipes {
    private final RecipeForm base;
    private final RecipeForm mine;
    private final RecipeForm theirs;
    private final Map<String, List<String>> parts = new LinkedHashMap<>();

    /** Whose text is taken. */
    public enum Whose {
        MINE,
        THEIRS
    }

    /**
     * A part that differs.
     *
     * @param part name of a field, of an item such as "lines.2", or of a list
     * @param suggested whose is taken when nobody says otherwise
     * @param both whether both changed it
     */
    public record Choice(String part, String mine, String theirs, Whose suggested, boolean both) {}

    /**
     * Lays them together.
     *
     * @param base what both began with
     */
    public MergeRecipes(RecipeForm base, RecipeForm mine, RecipeForm theirs) {
        this.base = base;
        this.mine = mine;
        this.theirs = theirs;
        Set<String> fields = new LinkedHashSet<>(mine.fields().keySet());
        fields.addAll(theirs.fields().keySet());
        for (String field : fields) {
            if (!field.startsWith("taken-out.")) {
                parts.computeIfAbsent(part(field), part -> new ArrayList<>()).add(field);
            }
        }
    }

    private String part(String field) {
        String list = field.contains(".") ? field.substring(0, field.indexOf('.')) : field;
        if (!RecipeForm.LISTS.contains(list)) {
            return field;
        }
        boolean alike = mine.count(list) == theirs.count(list) && mine.count(list) == base.count(list);
        int end = field.indexOf('.', list.length() + 1);
        return alike ? (end < 0 ? field : field.substring(0, end)) : list;
    }

    /** Returns the parts that differ, in the order of the recipe. */
    public List<Choice> choices() {
        List<Choice> choices = new ArrayList<>();
        parts.forEach((part, fields) -> {
            String one = text(mine, fields);
            String other = text(theirs, fields);
            if (!one.equals(other)) {
                String before = text(base, fields);
                boolean both = !one.equals(before) && !other.equals(before);
                Whose suggested = one.equals(before) ? Whose.THEIRS : Whose.MINE;
                choices.add(new Choice(part, one, other, suggested, both));
            }
        });
        return choices;
    }

    private static String text(RecipeForm form, List<String> fields) {
        List<String> texts = new ArrayList<>();
        for (String field : fields) {
            String typed = form.typed(field).strip();
            if (!typed.isEmpty()) {
                texts.add(typed);
            }
        }
        return String.join(", ", texts);
    }

    /**
     * Returns the form with the parts that were chosen.
     *
     * @param chosen whose, by part; the suggested where nothing is said
     */
    public RecipeForm merged(Map<String, Whose> chosen) {
        Map<String, String> fields = new LinkedHashMap<>();
        Map<String, Choice> choices = new LinkedHashMap<>();
        choices().forEach(choice -> choices.put(choice.part(), choice));
        parts.forEach((part, names) -> {
            Choice choice = choices.get(part);
            Whose whose = choice == null ? Whose.MINE : chosen.getOrDefault(part, choice.suggested());
            RecipeForm from = whose == Whose.MINE ? mine : theirs;
            names.stream()
                    .filter(name -> from.fields().containsKey(name))
                    .forEach(name -> fields.put(name, from.typed(name)));
        });
        return RecipeForm.of(fields);
    }
}
