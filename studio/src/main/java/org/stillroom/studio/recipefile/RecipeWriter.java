package org.stillroom.studio.recipefile;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.recipe.Recipe;

/**
 * Writes a recipe as a file: one line for each ingredient and each thing that goes in, every quantity as it was typed.
 *
 * <p>Reading what was written gives the same recipe. Comments of a file that was read are not part of the recipe and are
 * not written.
 */
public final class RecipeWriter {
    private static final int WIDEST = 120;

    private final StringBuilder out = new StringBuilder();

    /** Whether a list was written last, after which a blank line reads better. */
    private boolean between;

    private RecipeWriter() {}

    /** Returns the recipe as the text of a file. */
    public static String write(Recipe recipe) {
        return write(RecipeTree.of(recipe));
    }

    /** Returns a tree of texts as the text of a file; groups and lists in the order that they have in the tree. */
    static String write(Map<String, Object> tree) {
        RecipeWriter writer = new RecipeWriter();
        writer.tree(tree);
        return writer.out.toString();
    }

    private void tree(Map<String, Object> tree) {
        out.append("stillroom: ").append(RecipeReader.FORMAT).append('\n');
        tree.forEach((key, value) -> {
            if (key.equals("target")) {
                out.append("target: ").append(inBraces(value)).append('\n');
            } else if (value instanceof List<?> items && key.equals("steps")) {
                steps(items);
            } else if (value instanceof List<?> groups) {
                list(key, groups);
            } else {
                text(key, String.valueOf(value));
            }
        });
    }

    private void steps(List<?> steps) {
        if (between) {
            blankLine();
        }
        out.append("steps:\n");
        steps.forEach(step ->
                out.append("  - ").append(value(String.valueOf(step), "    ")).append('\n'));
    }

    private void text(String key, String text) {
        if (between) {
            blankLine();
        }
        out.append(key).append(": ").append(value(text, "  ")).append('\n');
    }

    private void list(String key, List<?> groups) {
        if (groups.isEmpty()) {
            return;
        }
        blankLine();
        out.append(key).append(":\n");
        for (Object each : groups) {
            Map<?, ?> group = (Map<?, ?>) each;
            String braces = braces(group);
            boolean block = group.values().stream().anyMatch(v -> v instanceof String s && YamlText.isBlock(s));
            if (braces.length() > WIDEST || block) {
                underEachOther(group);
            } else {
                out.append("  - ").append(braces).append('\n');
            }
        }
        between = true;
    }

    private void blankLine() {
        out.append('\n');
        between = false;
    }

    private void underEachOther(Map<?, ?> group) {
        String start = "  - ";
        for (Map.Entry<?, ?> field : group.entrySet()) {
            String value = field.getValue() instanceof String text ? value(text, "      ") : inBraces(field.getValue());
            out.append(start).append(field.getKey()).append(": ").append(value).append('\n');
            start = "    ";
        }
    }

    private static String value(String text, String indent) {
        return YamlText.isBlock(text) ? YamlText.block(text, indent) : YamlText.onItsOwn(text);
    }

    private static String braces(Map<?, ?> fields) {
        List<String> parts = fields.entrySet().stream()
                .map(field -> field.getKey() + ": " + inBraces(field.getValue()))
                .toList();
        return "{" + String.join(", ", parts) + "}";
    }

    private static String inBraces(@Nullable Object value) {
        if (value instanceof Map<?, ?> map) {
            return braces(map);
        }
        if (value instanceof List<?> list) {
            return "["
                    + String.join(
                            ", ", list.stream().map(RecipeWriter::inBraces).toList()) + "]";
        }
        return YamlText.inBraces(String.valueOf(value));
    }
}
