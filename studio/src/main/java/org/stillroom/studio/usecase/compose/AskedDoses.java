package org.stillroom.studio.usecase.compose;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.plan.Slips;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Making;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.store.Recipes;

/** Asks of a recipe that comes in or is kept whether its doses of oil are meant. */
public final class AskedDoses {
    private final RecipeReader reader;
    private final StageShelf stages;

    public AskedDoses(Recipes recipes, OunceMeaning ounce) {
        this.reader = new RecipeReader(ounce);
        this.stages = new StageShelf(recipes, ounce);
    }

    /** Returns the doses of a recipe file that nobody said are meant; none where it cannot be planned, which planning tells. */
    public List<Slips.Asked> of(String text) {
        @Nullable
        Making making = reader.read(text) instanceof RecipeReading.Understood understood
                ? stages.making(understood.recipe()).making()
                : null;
        return making != null && Planner.plan(making) instanceof Planning.Planned planned
                ? Slips.asked(planned.plan())
                : List.of();
    }
}
