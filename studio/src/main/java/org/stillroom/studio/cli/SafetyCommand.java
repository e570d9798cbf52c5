package org.stillroom.studio.cli;

import java.nio.file.Path;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Safety;
import org.stillroom.core.safety.Serving;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.answer.desk.SafetyAsked;
import org.stillroom.studio.usecase.WorkedPlan;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;

/** Tells what of watched substances a recipe's drink holds, and which rules that touches. */
final class SafetyCommand extends Subcommand {
    @Parameters(index = "0", paramLabel = "FILE", description = "the recipe file")
    private Path file = Path.of("");

    @Mixin
    private GroundsOptions grounds = new GroundsOptions();

    private final PartOptions options = new PartOptions(SafetyAsked.PARTS);

    @Override
    protected void declare(CommandSpec command) {
        options.declare(command);
    }

    @Override
    protected Answer answer(Workings workings) {
        Serving serving = SafetyAsked.of(options.typed(), Dashes.TWO, new Objections());
        WorkedPlan worked = grounds.worked(file, workings);
        return new SafetyAnswer(Safety.of(worked.plan(), serving, worked.grounds()));
    }
}
