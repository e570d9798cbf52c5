package org.stillroom.studio.recipefile;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Generic;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.recipe.Aim;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Measure;
import org.stillroom.core.recipe.Target;

/** Holds the parts of a recipe against each other: names that are used must be there, and be there once. */
final class Agreement {
    private static final int PROPOSED = 3;

    private final Problems problems;
    private final Fields top;
    private final Map<String, Ingredient> ingredients;
    private final Map<String, Measure> measures;

    Agreement(Problems problems, Fields top, List<Read<Ingredient>> ingredients, List<Read<Measure>> measures) {
        this.problems = problems;
        this.top = top;
        this.ingredients = byName("An ingredient", ingredients, Ingredient::name);
        this.measures = byName("A measure", measures, Measure::name);
    }

    void check(List<Read<Line>> lines, Target target, @Nullable Aim aim) {
        Map<String, Place> open = new HashMap<>();
        Place madeUp = null;
        for (Read<Line> read : lines) {
            Line line = read.value();
            if (!read.fields().has("use")) {
                continue;
            }
            Ingredient ingredient = used(line.use(), read.fields());
            checkMeasure(line, read.fields());
            if (line.amount() instanceof LineAmount.All && ingredient != null) {
                checkAll(ingredient, read.fields());
            } else if (line.amount() instanceof LineAmount.MakeUp) {
                checkMakeUp(madeUp, target, read.fields());
                madeUp = read.fields().placeOf("amount");
            }
            if (!(line.amount() instanceof LineAmount.Fixed || line.amount() instanceof LineAmount.PerLitre)) {
                checkOpenOnce(line, open, read.fields());
            }
        }
        if (aim != null) {
            aim.ingredients().forEach(name -> checkToUseUp(name, lines));
        }
    }

    private void checkToUseUp(String name, List<Read<Line>> lines) {
        if (lines.stream().noneMatch(read -> read.value().use().equals(name))) {
            top.problem(
                    "aim",
                    "aim-not-used",
                    "not used",
                    "No line uses " + Shown.quoted(name) + ", so it cannot be used up.",
                    "Add a line for it, or name an ingredient that a line uses.");
        }
    }

    private <T> Map<String, T> byName(String what, List<Read<T>> all, Function<T, String> name) {
        Map<String, T> byName = new LinkedHashMap<>();
        Map<String, Integer> lines = new HashMap<>();
        for (Read<T> read : all) {
            String called = name.apply(read.value());
            byName.putIfAbsent(called, read.value());
            int line = read.fields().placeOf("name").line();
            Integer before = lines.putIfAbsent(called.toLowerCase(Locale.ROOT), line);
            if (before != null && read.fields().has("name")) {
                read.fields()
                        .problem(
                                "name",
                                "name-twice",
                                "name given twice",
                                what + " of the name " + Shown.quoted(called) + " is on line " + before + " already.",
                                "Give each its own name, such as “" + called + " (second bottle)”.");
            }
        }
        return byName;
    }

    /** Returns the ingredient that a line uses; null, noted, when there is none of that name. */
    private @Nullable Ingredient used(String use, Fields fields) {
        Ingredient listed = ingredients.get(use);
        if (listed != null) {
            return listed;
        }
        Generic generic = Generics.find(use);
        if (generic != null) {
            return generic.ingredient();
        }
        List<String> known = new ArrayList<>(ingredients.keySet());
        for (Generic candidate : Generics.list()) {
            known.add(candidate.ingredient().name());
            known.addAll(candidate.otherNames());
        }
        List<String> near = problems.full() ? List.of() : Nearest.of(use, known, PROPOSED);
        String list = "List it under “ingredients”";
        fields.problem(
                "use",
                "ingredient-unknown",
                "unknown ingredient",
                "There is no ingredient " + Shown.quoted(use) + ", neither listed here nor known by that name.",
                near.isEmpty()
                        ? list + "."
                        : list + ", or write "
                                + Shown.either(
                                        near.stream().map(n -> "“" + n + "”").toList()) + ".");
        return null;
    }

    private void checkMeasure(Line line, Fields fields) {
        String with = line.with();
        if (with == null || measures.containsKey(with)) {
            return;
        }
        String near = problems.full() ? null : Nearest.of(with, measures.keySet());
        fields.problem(
                "with",
                "measure-unknown",
                "unknown measure",
                "There is no measure " + Shown.quoted(with) + ".",
                near == null ? "List it under “measures”, or leave “with” out." : "Write “" + near + "”?");
    }

    private static void checkAll(Ingredient ingredient, Fields fields) {
        if (ingredient.atHand() == null && ingredient.from() == null) {
            fields.problem(
                    "amount",
                    "all-of-unknown",
                    "amount missing",
                    "“all” of " + Shown.quoted(ingredient.name()) + " goes in, but it is not said how much there is.",
                    "Write what was measured beside the ingredient: “at hand: 700 ml”.");
        }
    }

    private static void checkMakeUp(@Nullable Place before, Target target, Fields fields) {
        if (before != null) {
            fields.problem(
                    "amount",
                    "make-up-twice",
                    "said twice",
                    "The batch is made up to the mark on " + before.inWords() + " already.",
                    "Let one line alone “make up”, and say how much of the other.");
        }
        Span volume = target.millilitres();
        if (volume == null || !volume.isExact()) {
            fields.problem(
                    "amount",
                    "make-up-without-volume",
                    "volume missing",
                    "“make up” fills to the mark of a volume, but the target names no exact one.",
                    "Write the volume: “target: {volume: 1 L}”, or “amount: free” here.");
        }
    }

    private static void checkOpenOnce(Line line, Map<String, Place> open, Fields fields) {
        Place place = fields.placeOf("amount");
        Place before = open.putIfAbsent(line.use(), place);
        if (before != null) {
            fields.problem(
                    "amount",
                    "line-open-twice",
                    "said twice",
                    "How much " + Shown.quoted(line.use()) + " goes in is open on " + before.inWords() + " already.",
                    "Fix the amount of one of the two lines, or join them.");
        }
    }
}
