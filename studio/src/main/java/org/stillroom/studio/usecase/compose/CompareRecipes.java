package org.stillroom.studio.usecase.compose;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.usecase.WorkedPlan;

/** Lays two versions side by side: what moved, and what it did to the result. */
public final class CompareRecipes {
    private CompareRecipes() {}

    /**
     * A field that differs.
     *
     * @param field its name
     * @param one what is typed in the first; empty for nothing
     * @param other what is typed in the second
     */
    public record Moved(String field, String one, String other) {}

    /**
     * A line's amount in both.
     *
     * @param name of the ingredient
     * @param one grams in the first, or NaN when it is not in it
     * @param other grams in the second, or NaN
     */
    public record Grams(String name, double one, double other) {}

    /** What moved and what it did. */
    public record Compared(Composed one, Composed other, List<Moved> moved, List<Grams> grams) {
        public Compared {
            moved = List.copyOf(moved);
            grams = List.copyOf(grams);
        }
    }

    /** Returns two versions side by side. */
    public static Compared of(Composed one, Composed other) {
        Set<String> fields = new LinkedHashSet<>(one.form().fields().keySet());
        fields.addAll(other.form().fields().keySet());
        List<Moved> moved = new ArrayList<>();
        for (String field : fields) {
            String first = one.form().typed(field).strip();
            String second = other.form().typed(field).strip();
            if (!first.equals(second)) {
                moved.add(new Moved(field, first, second));
            }
        }
        Map<String, Double> first = grams(one.worked());
        Map<String, Double> second = grams(other.worked());
        Set<String> names = new LinkedHashSet<>(first.keySet());
        names.addAll(second.keySet());
        List<Grams> grams = names.stream()
                .map(name ->
                        new Grams(name, first.getOrDefault(name, Double.NaN), second.getOrDefault(name, Double.NaN)))
                .toList();
        return new Compared(one, other, moved, grams);
    }

    private static Map<String, Double> grams(@Nullable WorkedPlan worked) {
        Map<String, Double> grams = new LinkedHashMap<>();
        if (worked != null) {
            worked.plan().lines().forEach(line -> grams.merge(line.name(), line.grams(), Double::sum));
        }
        return grams;
    }
}
