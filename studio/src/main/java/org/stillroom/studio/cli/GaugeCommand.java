package org.stillroom.studio.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.desk.GaugeQuestion;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Finds what is in a vessel from readings, and from the recipe that was poured where one is named. */
final class GaugeCommand extends Subcommand {
    private static final GaugeQuestion WITHOUT_RECIPE = new GaugeQuestion(null);

    @Option(names = "--poured", description = "the recipe file that was poured, with its labels and measures")
    private @Nullable Path poured;

    @Mixin
    private OwnOptions own = new OwnOptions();

    private final PartOptions options = new PartOptions(WITHOUT_RECIPE.parts());

    /** Returns the entry of the command. */
    static Entry entry() {
        String example = "stillroom gauge " + Dashes.TWO.write(WITHOUT_RECIPE.example());
        return new Entry(WITHOUT_RECIPE.name(), WITHOUT_RECIPE.summary(), example, GaugeCommand::new);
    }

    @Override
    protected void declare(CommandSpec command) {
        options.declare(command);
    }

    @Override
    protected Answer answer(Workings workings) {
        GaugeQuestion question = poured == null
                ? WITHOUT_RECIPE
                : new GaugeQuestion(RecipeArgument.worked(poured, Workings.NONE).measured());
        return new ToldAnswer(question.answer(own.with(options.typed()), Dashes.TWO, workings));
    }
}
