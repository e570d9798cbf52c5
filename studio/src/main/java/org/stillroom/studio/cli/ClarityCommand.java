package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.desk.ClarityAsked;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.usecase.WorkedPlan;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Tells whether oils stay dissolved in a liquid, or in what a recipe makes. */
final class ClarityCommand extends Subcommand {
    @Option(names = "--recipe", description = "a recipe file in place of strength, sugar and oils")
    private @Nullable Path recipe;

    @Option(names = "--map", description = "the map of strength and dose as SVG, in place of the words")
    private boolean map;

    @Mixin
    private LotsOptions lots = new LotsOptions();

    private final PartOptions options = new PartOptions(ClarityAsked.PARTS);

    @Override
    protected void declare(CommandSpec command) {
        options.declare(command);
    }

    @Override
    protected Answer answer(Workings workings) {
        ClarityAsked asked = ClarityAsked.of(options.typed(), Dashes.TWO, new Objections());
        if (recipe == null) {
            return new ClarityAnswer(asked.answer(workings), map);
        }
        asked.refuseBesidesRecipe();
        WorkedPlan worked = lots.worked(recipe, UnaryOperator.identity(), Workings.NONE);
        return new ClarityAnswer(asked.answer(worked, workings), map);
    }
}
