package org.stillroom.studio.recipefile;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.recipe.Recipe;

/**
 * A recipe as it is typed into a form: one text per field, however far it has come.
 *
 * <p>Fields are named by their keys in a recipe file and their places in its lists, from 0: {@code title}, {@code target.strength},
 * {@code lines.2.use}, {@code ingredients.0.contains.sucrose}, {@code steps.1}. One field differs from the file: {@code
 * lines.N.amount} takes a dose per litre as well. An empty text is the same as none. What is wrong is found by the same rules as
 * in a file.
 */
public final class RecipeForm {
    /** More fields than any recipe has. */
    private static final int MOST_FIELDS = 4000;

    /** Begins the names of the fields of the item that was taken out last. */
    static final String TAKEN_OUT = "taken-out.";

    /** The keys that hold lists. */
    public static final List<String> LISTS = List.of("measures", "ingredients", "lines", "steps");

    private final Map<String, String> fields;

    private RecipeForm(Map<String, String> fields) {
        this.fields = fields;
    }

    /**
     * Returns the form with these fields; those that no recipe has are left out.
     *
     * @throws IllegalArgumentException when there are more than any recipe has
     */
    public static RecipeForm of(Map<String, String> typed) {
        if (typed.size() > MOST_FIELDS) {
            throw new IllegalArgumentException("a form of " + typed.size() + " fields is no recipe");
        }
        Map<String, String> fields = new LinkedHashMap<>();
        typed.forEach((name, text) -> {
            if (FormNames.isKnown(name)) {
                fields.put(name, text);
            }
        });
        return new RecipeForm(fields);
    }

    /** Returns the form of a recipe. */
    public static RecipeForm of(Recipe recipe) {
        Map<String, String> fields = new LinkedHashMap<>();
        flatten("", RecipeTree.of(recipe), fields);
        return new RecipeForm(fields);
    }

    private static void flatten(String name, Object value, Map<String, String> into) {
        if (value instanceof Map<?, ?> group) {
            group.forEach(
                    (key, each) -> flatten(name.isEmpty() ? "" + key : name + "." + formKey("" + key), each, into));
        } else if (value instanceof List<?> items) {
            for (int i = 0; i < items.size(); i++) {
                flatten(name + "." + i, items.get(i), into);
            }
        } else {
            into.put(name, String.valueOf(value));
        }
    }

    /** In the form a line has one field for how much. */
    private static String formKey(String key) {
        return key.equals("dose") ? "amount" : key;
    }

    /** Returns what is typed in a field; empty when nothing is. */
    public String typed(String name) {
        return fields.getOrDefault(name, "");
    }

    /** Returns all fields, in order. */
    public Map<String, String> fields() {
        return Collections.unmodifiableMap(fields);
    }

    /** Returns how many items a list has, such as "lines". */
    public int count(String list) {
        int most = -1;
        for (String name : fields.keySet()) {
            most = Math.max(most, place(list, name));
        }
        return most + 1;
    }

    /** Returns the form with another text in a field. */
    public RecipeForm with(String name, String text) {
        Map<String, String> changed = new LinkedHashMap<>(fields);
        changed.put(name, text);
        return of(changed);
    }

    /** Returns the form with an item more at the end of a list. */
    public RecipeForm plus(String list, Map<String, String> item) {
        int at = count(list);
        Map<String, String> changed = new LinkedHashMap<>(fields);
        item.forEach((key, text) -> changed.put(list + "." + at + (key.isEmpty() ? "" : "." + key), text));
        return of(changed);
    }

    /** Returns the form without an item of a list; those after it move up. {@link #restored} puts it back. */
    public RecipeForm minus(String list, int index) {
        Map<String, String> changed = new LinkedHashMap<>();
        fields.forEach((name, text) -> {
            int at = place(list, name);
            if (at == index) {
                changed.put(TAKEN_OUT + name, text);
            } else if (!name.startsWith(TAKEN_OUT)) {
                changed.put(at < index ? name : moved(list, name, at - 1), text);
            }
        });
        return new RecipeForm(changed);
    }

    /** Returns the item that was taken out last, by the names that its fields had; empty when there is none. */
    public Map<String, String> takenOut() {
        Map<String, String> item = new LinkedHashMap<>();
        fields.forEach((name, text) -> {
            if (name.startsWith(TAKEN_OUT)) {
                item.put(name.substring(TAKEN_OUT.length()), text);
            }
        });
        return item;
    }

    /** Returns the form with the item that was taken out last at its place again. */
    public RecipeForm restored() {
        Map<String, String> item = takenOut();
        if (item.isEmpty()) {
            return this;
        }
        String first = item.keySet().iterator().next();
        String list = first.substring(0, first.indexOf('.'));
        int index = place(list, first);
        Map<String, String> changed = new LinkedHashMap<>();
        fields.forEach((name, text) -> {
            int at = place(list, name);
            if (!name.startsWith(TAKEN_OUT)) {
                changed.put(at < index ? name : moved(list, name, at + 1), text);
            }
        });
        changed.putAll(item);
        return new RecipeForm(changed);
    }

    /** Returns the place of the item of a list that a field belongs to, or -1. */
    private static int place(String list, String name) {
        String start = list + ".";
        if (!name.startsWith(start)) {
            return -1;
        }
        int end = name.indexOf('.', start.length());
        return Integer.parseInt(name.substring(start.length(), end < 0 ? name.length() : end));
    }

    private static String moved(String list, String name, int place) {
        int end = name.indexOf('.', list.length() + 1);
        return list + "." + place + (end < 0 ? "" : name.substring(end));
    }

    /** Returns the form as the text of a recipe file. */
    public String text() {
        return RecipeWriter.write(tree());
    }

    /**
     * Reads the form.
     *
     * @param usualOunce what "oz" means where the recipe does not say
     */
    public FormReading read(OunceMeaning usualOunce) {
        List<String> names = new ArrayList<>();
        Problems problems = new Problems(place -> "");
        Map<String, Object> file = new LinkedHashMap<>();
        file.put("stillroom", RecipeReader.FORMAT);
        file.putAll(tree());
        RecipeReader.Draft draft = new RecipeReader(usualOunce).draft(node(file, "", names), problems);
        return new FormReading(draft.recipe(), at(problems.told(), names), at(problems.assumed(), names));
    }

    private static List<FormReading.At> at(List<Problems.Told> told, List<String> names) {
        return told.stream()
                .map(each -> new FormReading.At(
                        each.line() == 0 ? "" : names.get(each.line() - 1), each.finding(), each.choices()))
                .toList();
    }

    /** Returns the fields as nested groups and lists, in the order of a recipe file, empty ones left out. */
    private Map<String, Object> tree() {
        Map<String, Object> tree = new LinkedHashMap<>();
        for (String key : Keys.RECIPE) {
            if (LISTS.contains(key)) {
                List<Object> items = items(key);
                if (!items.isEmpty()) {
                    tree.put(key, items);
                }
            } else if (key.equals("target")) {
                Map<String, Object> target = group("target", Keys.TARGET);
                if (!target.isEmpty()) {
                    tree.put(key, target);
                }
            } else {
                putTyped(tree, key, key);
            }
        }
        return tree;
    }

    private void putTyped(Map<String, Object> group, String key, String name) {
        String text = tidied(typed(name));
        if (!text.isEmpty()) {
            group.put(key, text);
        }
    }

    /** Returns a text without what a field adds to it: blanks at its ends, the line ends of browsers. */
    private static String tidied(String text) {
        return text.contains("\n") && !text.isBlank() ? text.replace("\r\n", "\n") : text.strip();
    }

    private Map<String, Object> group(String name, List<String> keys) {
        Map<String, Object> group = new LinkedHashMap<>();
        keys.forEach(key -> putTyped(group, key, name + "." + key));
        return group;
    }

    /** Returns which items of a list, by their places in the form, are not empty. */
    public List<Integer> filled(String list) {
        List<Integer> filled = new ArrayList<>();
        int count = count(list);
        for (int i = 0; i < count; i++) {
            Object item = item(list, i);
            if (!isEmpty(item)) {
                filled.add(i);
            }
        }
        return filled;
    }

    /** A kind is chosen before anything is typed, so that alone it says nothing. */
    private static boolean isEmpty(Object item) {
        return item.equals("")
                || (item instanceof Map<?, ?> group
                        && (group.isEmpty() || group.keySet().equals(Set.of("kind"))));
    }

    private Object item(String list, int index) {
        String name = list + "." + index;
        return switch (list) {
            case "measures" -> measure(name);
            case "ingredients" -> ingredient(name);
            case "lines" -> line(name);
            default -> tidied(typed(name));
        };
    }

    private List<Object> items(String list) {
        return filled(list).stream().map(index -> item(list, index)).toList();
    }

    private Map<String, Object> measure(String name) {
        Map<String, Object> measure = group(name, Keys.MEASURE);
        List<Object> sizes = new ArrayList<>();
        for (int i = 0; !typed(name + ".sizes." + i).isBlank(); i++) {
            sizes.add(typed(name + ".sizes." + i).strip());
        }
        if (!sizes.isEmpty()) {
            measure.put("sizes", sizes);
        }
        return measure;
    }

    private Map<String, Object> ingredient(String name) {
        Map<String, Object> ingredient = new LinkedHashMap<>();
        for (String key : Keys.INGREDIENT) {
            if (key.equals("contains")) {
                Map<String, Object> contains = group(name + ".contains", Keys.CONTAINS);
                if (!contains.isEmpty()) {
                    ingredient.put(key, contains);
                }
            } else {
                putTyped(ingredient, key, name + "." + key);
            }
        }
        return ingredient;
    }

    private Map<String, Object> line(String name) {
        Map<String, Object> line = new LinkedHashMap<>();
        putTyped(line, "use", name + ".use");
        String amount = typed(name + ".amount").strip();
        putTyped(line, isDose(amount) ? "dose" : "amount", name + ".amount");
        putTyped(line, "with", name + ".with");
        putTyped(line, "meant", name + ".meant");
        putTyped(line, "note", name + ".note");
        return line;
    }

    private static boolean isDose(String text) {
        QuantityText quantities = new QuantityText(OunceMeaning.US_FLUID);
        boolean amount = quantities.amount(text) instanceof Understanding.Understood;
        return !amount && text.contains("/") && quantities.dose(text) instanceof Understanding.Understood;
    }

    /** Returns a tree of texts as nodes whose places are the numbers of their fields. */
    private Node node(Object value, String name, List<String> names) {
        Place place = place(name, names);
        if (value instanceof Map<?, ?> group) {
            List<Node.Entry> entries = new ArrayList<>();
            group.forEach((key, each) -> {
                String inner = name.isEmpty() ? "" + key : name + "." + formKey("" + key);
                entries.add(new Node.Entry(
                        new Node.Scalar("" + key, false, place(inner, names)), node(each, inner, names)));
            });
            return new Node.Mapping(entries, false, place);
        }
        if (value instanceof List<?> items) {
            List<Integer> filled = LISTS.contains(name) ? filled(name) : List.of();
            List<Node> nodes = new ArrayList<>();
            for (int i = 0; i < items.size(); i++) {
                int index = filled.isEmpty() ? i : filled.get(i);
                nodes.add(node(items.get(i), name + "." + index, names));
            }
            return new Node.Sequence(nodes, place);
        }
        return new Node.Scalar(String.valueOf(value), false, place);
    }

    private static Place place(String name, List<String> names) {
        names.add(name);
        return new Place(names.size(), 1);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof RecipeForm that && tree().equals(that.tree());
    }

    @Override
    public int hashCode() {
        return tree().hashCode();
    }
}
