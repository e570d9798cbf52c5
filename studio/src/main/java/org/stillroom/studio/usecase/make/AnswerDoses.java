package org.stillroom.studio.usecase.make;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.plan.Slips;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.recipefile.RecipeWriter;
import org.stillroom.studio.store.MissingException;
import org.stillroom.studio.store.Recipes;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.store.Saving;

/** Keeps the answer that doses are meant where they stand: in a new revision of the recipe whose lines they are. */
final class AnswerDoses {
    private final Recipes recipes;
    private final RecipeReader reader;

    AnswerDoses(Recipes recipes, OunceMeaning ounce) {
        this.recipes = recipes;
        this.reader = new RecipeReader(ounce);
    }

    /**
     * What came of it.
     *
     * @param revision of the recipe itself, that holds the answers
     * @param problems recipes that somebody has saved since
     */
    record Kept(Revision revision, List<Finding> problems) {}

    /** Returns what nobody has answered yet, as what keeps a make from beginning. */
    static List<Finding> open(List<Slips.Asked> asked) {
        List<Finding> open = new ArrayList<>();
        for (Slips.Asked each : asked) {
            open.add(each.finding());
            open.add(Finding.of(
                    "dose-to-answer",
                    Severity.STOP,
                    each.name(),
                    "to be answered",
                    "Nothing is made before it is said whether this dose of oil is meant.",
                    "Put the dose right in the recipe, or say that it is meant."));
        }
        return open;
    }

    Kept answer(Revision revision, Map<String, MakeStart.Pinned> stages, List<Slips.Asked> meant, String request) {
        Map<MakeStart.Pinned, List<Slips.Asked>> byRecipe = new LinkedHashMap<>();
        MakeStart.Pinned whole = new MakeStart.Pinned(revision.recipe(), revision.number());
        for (Slips.Asked each : meant) {
            MakeStart.Pinned pinned = each.from() == null ? whole : stages.getOrDefault(each.from(), whole);
            byRecipe.computeIfAbsent(pinned, none -> new ArrayList<>()).add(each);
        }
        Revision now = revision;
        List<Finding> problems = new ArrayList<>();
        for (Map.Entry<MakeStart.Pinned, List<Slips.Asked>> entry : byRecipe.entrySet()) {
            MakeStart.Pinned pinned = entry.getKey();
            Revision base = recipes.revision(pinned.recipe(), pinned.revision())
                    .orElseThrow(() -> new MissingException("there is no such revision of this recipe"));
            Saving saving = saved(base, entry.getValue(), request + "/meant/" + pinned.recipe());
            if (saving instanceof Saving.Saved saved) {
                now = pinned.equals(whole) ? saved.revision() : now;
            } else {
                problems.add(overtaken(base));
            }
        }
        return new Kept(now, problems);
    }

    private Saving saved(Revision base, List<Slips.Asked> meant, String request) {
        Recipe recipe = ((RecipeReading.Understood) reader.read(base.text())).recipe();
        List<Line> lines = new ArrayList<>(recipe.lines());
        List<String> answers = new ArrayList<>();
        for (Slips.Asked each : meant) {
            lines.set(each.line(), lines.get(each.line()).meaning(each.answer()));
            answers.add(each.answer().text());
        }
        return recipes.save(
                base.recipe(),
                base.number(),
                base.title(),
                RecipeWriter.write(recipe.withLines(lines)),
                "meant: " + String.join(", ", answers),
                request);
    }

    private static Finding overtaken(Revision base) {
        return Finding.of(
                "dose-answer-overtaken",
                Severity.STOP,
                base.title(),
                "not the latest",
                "The answer belongs to the recipe, and “" + base.title() + "” has been saved since this revision.",
                "Begin with its latest revision, or restore this one first.");
    }
}
