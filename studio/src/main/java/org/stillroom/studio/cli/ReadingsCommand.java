package org.stillroom.studio.cli;

import java.util.List;
import java.util.Map;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.desk.ReadingsQuestion;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;

/** Tells which readings serve best, also for what was poured by a recipe. */
final class ReadingsCommand extends Subcommand {
    private final PartOptions options = new PartOptions(PouredOption.sized(new ReadingsQuestion(null).parts()));

    @Mixin
    private PouredOption poured = new PouredOption();

    @Override
    protected void declare(CommandSpec command) {
        options.declare(command);
    }

    @Override
    protected Answer answer(Workings workings) {
        Map<String, List<String>> typed = options.typed();
        return new ToldAnswer(new ReadingsQuestion(poured.poured(typed)).answer(typed, Dashes.TWO, workings));
    }
}
