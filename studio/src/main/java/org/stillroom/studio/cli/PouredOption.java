package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Poured;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.answer.desk.Part;
import org.stillroom.studio.answer.desk.PlanWishes;
import org.stillroom.studio.usecase.GaugeVessel;
import org.stillroom.studio.usecase.PlanRecipe;
import picocli.CommandLine.Option;

/** The recipe that was poured into a vessel, and in which size. */
final class PouredOption {
    @Option(
            names = "--poured",
            paramLabel = "FILE",
            description = "the recipe file that was poured, with its labels and measures")
    private @Nullable Path recipe;

    /** Returns the parts of a question with the size in which its recipe was made. */
    static List<Part> sized(List<Part> parts) {
        List<Part> sized = new ArrayList<>(parts);
        sized.add(PlanWishes.MAKES);
        return sized;
    }

    /**
     * Returns what went in as it was measured, or null where no recipe is named.
     *
     * @param typed texts by the names of the parts
     * @throws Refusal when it is not there, not understood, or asks for what cannot be, or a size is named without it
     */
    @Nullable
    Poured poured(Map<String, List<String>> typed) {
        if (recipe != null) {
            PlanWishes wishes = PlanWishes.of(typed, Dashes.TWO, new Objections());
            return GaugeVessel.poured(wishes.worked(
                            PlanRecipe.making(RecipeArgument.open(recipe).recipe()), Grounds.SHIPPED, Workings.NONE)
                    .measured());
        }
        if (typed.containsKey(PlanWishes.MAKES.name())) {
            throw Refusal.wrongInput(
                    "--makes",
                    "it is the size of a recipe, and none was named.",
                    "Name the recipe with --poured FILE.");
        }
        return null;
    }
}
