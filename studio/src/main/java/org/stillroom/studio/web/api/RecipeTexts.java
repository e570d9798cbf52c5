package org.stillroom.studio.web.api;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.plan.Slips;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.answer.desk.Part;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.WorkedPlan;
import org.stillroom.studio.usecase.compose.AskedDoses;
import org.stillroom.studio.usecase.compose.HandOut;
import org.stillroom.studio.usecase.compose.StageShelf;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.usecase.shelf.MakersOunce;

/** Reads recipes that other programs send, as the studio understands them. */
final class RecipeTexts {
    /** Key under which a body holds a recipe. */
    static final String RECIPE = "recipe";

    private final Store store;

    RecipeTexts(Store store) {
        this.store = store;
    }

    /**
     * A recipe that can be worked out.
     *
     * @param making with its stages
     * @param notes what was taken for granted in reading it
     */
    record Found(Making making, List<Finding> notes) {}

    /** Returns the recipe of a text; refuses a text that is none. */
    Recipe recipe(String text) {
        return understood(text).recipe();
    }

    private RecipeReading.Understood understood(String text) {
        RecipeReading reading = new RecipeReader(ounce()).read(text);
        if (reading instanceof RecipeReading.Refused refused) {
            throw new Refused(Refused.IMPOSSIBLE, refused.problems());
        }
        return (RecipeReading.Understood) reading;
    }

    /** Returns the recipe of a text with the recipes of the studio that it comes from. */
    Found read(String text) {
        RecipeReading.Understood understood = understood(text);
        StageShelf.Found found = new StageShelf(store.recipes(), ounce()).making(understood.recipe());
        if (found.making() == null) {
            throw new Refused(Refused.IMPOSSIBLE, found.problems());
        }
        return new Found(found.making(), understood.notes());
    }

    /**
     * Returns the recipe that a body holds beside the parts of its question.
     *
     * @throws Refused when it holds none, or anything else
     */
    Found read(Body body, List<Part> parts) {
        List<String> known = new ArrayList<>(DeskOperations.keys(parts));
        known.add(RECIPE);
        String text = body.knows(known).recipe(RECIPE);
        if (!body.has(RECIPE)) {
            body.wrong(
                    "recipe-missing",
                    RECIPE,
                    "There is no recipe.",
                    "Give it as \"recipe\": the text of a recipe file, or an object of the same keys.");
        }
        body.refuseIfAnyWrong();
        return read(String.valueOf(text));
    }

    /** Returns the recipe of a text worked out and judged on what this studio knows; refuses what cannot be. */
    WorkedPlan worked(String text) {
        return worked(read(text));
    }

    /** Returns the recipe that a body holds beside the parts of its question, worked out and judged on what this studio knows. */
    WorkedPlan worked(Body body, List<Part> parts) {
        return worked(read(body, parts));
    }

    private WorkedPlan worked(Found found) {
        PlanRecipe.Outcome outcome = PlanRecipe.answer(found.making(), null, grounds(), Workings.NONE);
        if (outcome instanceof PlanRecipe.Outcome.Refused refused) {
            throw new Refused(Refused.IMPOSSIBLE, refused.problems());
        }
        return ((PlanRecipe.Outcome.Worked) outcome).plan();
    }

    /** Returns the doses of oil that nobody said are meant. */
    List<Slips.Asked> asked(String text) {
        return new AskedDoses(store.recipes(), ounce()).of(text);
    }

    /** Returns a recipe file as it leaves the studio. */
    String handedOut(String text) {
        return new HandOut(store).file(text);
    }

    /** Returns what drinks of this studio are judged on. */
    Grounds grounds() {
        return MakersGrounds.of(store);
    }

    OunceMeaning ounce() {
        return MakersOunce.of(store.settings());
    }
}
