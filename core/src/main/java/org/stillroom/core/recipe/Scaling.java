package org.stillroom.core.recipe;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.Drops;
import org.stillroom.core.quantity.Mass;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Span;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Volume;

/**
 * Makes the same recipe in another size: fixed amounts, fixed losses, the volume and all stages in proportion; doses, strengths and
 * what is at hand stay.
 */
public final class Scaling {
    private Scaling() {}

    /**
     * Returns the making so many times as large.
     *
     * @param factor above 0
     */
    public static Making times(Making making, double factor) {
        Map<String, Making> stages = new HashMap<>();
        making.stages().forEach((from, stage) -> stages.put(from, times(stage, factor)));
        return new Making(times(making.recipe(), factor), stages);
    }

    /** Returns the making asking for just this volume at 20 °C, in place of what its recipe asks for. */
    public static Making asking(Making making, Volume volume) {
        Recipe recipe = making.recipe();
        Typed<Span> wanted = new Typed<>(QuantityWords.metric(volume), Span.exactly(volume.millilitres()));
        return new Making(with(recipe, targetOf(recipe, wanted), recipe.lines(), recipe.loss()), making.stages());
    }

    /**
     * Returns the recipe asking for another volume, with other lines.
     *
     * @param volume mL at 20 °C
     */
    public static Recipe withLines(Recipe recipe, Typed<Span> volume, List<Line> lines) {
        return with(recipe, targetOf(recipe, volume), lines, recipe.loss());
    }

    private static Recipe times(Recipe recipe, double factor) {
        Span volume = recipe.target().millilitres();
        Typed<Span> wanted = volume == null ? null : typed(new Span(factor * volume.low(), factor * volume.high()));
        List<Line> lines =
                recipe.lines().stream().map(line -> times(line, factor)).toList();
        return with(recipe, targetOf(recipe, wanted), lines, times(recipe.loss(), factor));
    }

    private static Typed<Span> typed(Span millilitres) {
        String low = QuantityWords.plain(millilitres.low());
        String text = millilitres.isExact() ? low : low + ".." + QuantityWords.plain(millilitres.high());
        return new Typed<>(text + " ml", millilitres);
    }

    private static Target targetOf(Recipe recipe, @Nullable Typed<Span> volume) {
        Target target = recipe.target();
        return new Target(volume, null, target.strength(), target.sugar(), target.sugarBasis(), target.acidity());
    }

    private static Line times(Line line, double factor) {
        if (line.amount() instanceof LineAmount.Fixed fixed) {
            Amount amount = times(fixed.amount().value(), factor);
            return line.of(new LineAmount.Fixed(new Typed<>(QuantityWords.metric(amount), amount)));
        }
        return line;
    }

    private static Amount times(Amount amount, double factor) {
        if (amount instanceof Mass mass) {
            return new Mass(factor * mass.grams());
        }
        if (amount instanceof Volume volume) {
            return new Volume(factor * volume.millilitres());
        }
        return new Drops(factor * ((Drops) amount).count());
    }

    private static @Nullable Typed<Loss> times(@Nullable Typed<Loss> loss, double factor) {
        if (loss != null && loss.value() instanceof Loss.Fixed fixed) {
            Amount amount = times(fixed.amount(), factor);
            return new Typed<>(QuantityWords.metric(amount), new Loss.Fixed(amount));
        }
        return loss;
    }

    private static Recipe with(Recipe recipe, Target target, List<Line> lines, @Nullable Typed<Loss> loss) {
        return new Recipe(
                recipe.title(),
                recipe.makes(),
                target,
                recipe.ingredients(),
                lines,
                recipe.measures(),
                recipe.ounce(),
                recipe.room(),
                recipe.vessel(),
                recipe.aim(),
                recipe.rest(),
                loss,
                recipe.ph(),
                recipe.treatment(),
                recipe.steps(),
                recipe.notes());
    }
}
