package org.stillroom.studio.usecase.left;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.store.RecipeHead;
import org.stillroom.studio.store.Recipes;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.usecase.compose.StageShelf;

/**
 * A recipe that may use something up.
 *
 * @param id under which the studio keeps it, or the name of its file
 * @param title of the recipe
 * @param making with its stages, or null when it cannot be planned
 * @param problems why not
 */
public record Candidate(String id, String title, @Nullable Making making, List<Finding> problems) {
    public Candidate {
        problems = List.copyOf(problems);
    }

    /** Returns a recipe that can be planned. */
    public static Candidate of(String id, Making making) {
        return new Candidate(id, making.recipe().title(), making, List.of());
    }

    /** Returns every recipe at work, by its latest revision. */
    public static List<Candidate> all(Recipes recipes, OunceMeaning ounce) {
        List<Candidate> all = new ArrayList<>();
        for (RecipeHead head : recipes.heads(false)) {
            Revision revision = head.revision() == 0
                    ? null
                    : recipes.revision(head.id(), head.revision()).orElse(null);
            if (revision != null) {
                all.add(of(revision, new StageShelf(recipes, ounce), ounce));
            }
        }
        return all;
    }

    private static Candidate of(Revision revision, StageShelf stages, OunceMeaning ounce) {
        RecipeReading reading = new RecipeReader(ounce).read(revision.text());
        if (reading instanceof RecipeReading.Refused refused) {
            return new Candidate(revision.recipe(), revision.title(), null, refused.problems());
        }
        StageShelf.Found found = stages.making(((RecipeReading.Understood) reading).recipe());
        return new Candidate(revision.recipe(), revision.title(), found.making(), found.problems());
    }

    /** Returns the recipe with its stages. */
    Making made() {
        return Objects.requireNonNull(making, title);
    }
}
