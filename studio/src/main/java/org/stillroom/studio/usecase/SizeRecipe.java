package org.stillroom.studio.usecase;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.Planner;
import org.stillroom.core.plan.Planning;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.recipe.LineAmount;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.recipe.Scaling;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Asks a recipe for another size, with its stages in proportion. */
public final class SizeRecipe {
    private SizeRecipe() {}

    /** What comes of it. */
    public sealed interface Outcome {
        /** It can be had in that size. */
        record Sized(Making making) implements Outcome {}

        /** Its size is not free, or it cannot be planned at all. */
        record Refused(List<Finding> problems) implements Outcome {
            public Refused {
                problems = List.copyOf(problems);
            }
        }
    }

    /**
     * Returns the recipe in another size.
     *
     * @param makes the volume to make at 20 °C, or null for the recipe's own
     */
    public static Outcome answer(Making making, @Nullable Volume makes) {
        if (makes == null) {
            return new Outcome.Sized(making);
        }
        if (making.recipe().lines().stream().anyMatch(line -> line.amount() instanceof LineAmount.All)) {
            return new Outcome.Refused(List.of(Finding.of(
                    "all-cannot-be-scaled",
                    Severity.STOP,
                    "makes",
                    "cannot be",
                    "The recipe takes all of what there is of an ingredient, so that its size is not free.",
                    "Leave out the size, or give that line an amount of its own.")));
        }
        Span own = making.recipe().target().millilitres();
        if (own == null) {
            return scaledFromItsOwnSize(making, makes);
        }
        double factor = makes.millilitres() / (0.5 * (own.low() + own.high()));
        return new Outcome.Sized(Scaling.asking(Scaling.times(making, factor), makes));
    }

    private static Outcome scaledFromItsOwnSize(Making making, Volume makes) {
        Planning asWritten = Planner.plan(making);
        if (asWritten instanceof Planning.Refused refused) {
            return new Outcome.Refused(refused.problems());
        }
        double own = ((Planning.Planned) asWritten).plan().millilitres();
        Making scaled = Scaling.times(making, makes.millilitres() / own);
        boolean open = making.recipe().lines().stream().noneMatch(line -> line.amount() instanceof LineAmount.Fixed);
        return new Outcome.Sized(open ? Scaling.asking(scaled, makes) : scaled);
    }
}
