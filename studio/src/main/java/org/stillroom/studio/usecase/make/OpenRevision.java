package org.stillroom.studio.usecase.make;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.store.Recipes;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.usecase.compose.StageShelf;

/** Opens a saved revision with the recipes of the studio that its ingredients come from, as {@link StageShelf} finds them. */
public final class OpenRevision {
    private OpenRevision() {}

    /** What comes of it. */
    public sealed interface Outcome {
        /**
         * It can be planned.
         *
         * @param stages the revisions that it uses
         */
        record Opened(Making making, Map<String, MakeStart.Pinned> stages) implements Outcome {}

        /** It cannot; everything that is in the way. */
        record Refused(List<Finding> problems) implements Outcome {
            public Refused {
                problems = List.copyOf(problems);
            }
        }
    }

    /**
     * Returns a revision ready to be planned.
     *
     * @param pinned revisions to use for stages, by the text of "from"; others take the latest
     */
    public static Outcome answer(
            Recipes recipes, Revision revision, Map<String, MakeStart.Pinned> pinned, OunceMeaning ounce) {
        RecipeReading reading = new RecipeReader(ounce).read(revision.text());
        if (reading instanceof RecipeReading.Refused refused) {
            return new Outcome.Refused(refused.problems());
        }
        Map<String, Revision> settled = new HashMap<>();
        pinned.forEach((from, pin) ->
                recipes.revision(pin.recipe(), pin.revision()).ifPresent(stage -> settled.put(from, stage)));
        StageShelf.Found found =
                new StageShelf(recipes, ounce, settled).making(((RecipeReading.Understood) reading).recipe());
        Making making = found.making();
        return making == null ? new Outcome.Refused(found.problems()) : new Outcome.Opened(making, pins(found.used()));
    }

    private static Map<String, MakeStart.Pinned> pins(Map<String, Revision> used) {
        Map<String, MakeStart.Pinned> pins = new LinkedHashMap<>();
        used.forEach((from, stage) -> pins.put(from, new MakeStart.Pinned(stage.recipe(), stage.number())));
        return pins;
    }
}
