package org.stillroom.studio.cli;

import java.nio.file.Path;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.answer.desk.SafetyAsked;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what of watched substances a recipe's drink holds, and which rules that touches. */
final class SafetyCommand extends Subcommand {
    @Parameters(index = "0", paramLabel = "FILE", description = "the recipe file")
    private Path file = Path.of("");

    @Option(names = "--all", description = "tell each thing, also what is within its limit")
    private boolean all;

    @Mixin
    private GroundsOptions grounds = new GroundsOptions();

    private final PartOptions options = new PartOptions(SafetyAsked.PARTS);

    @Override
    protected void declare(CommandSpec command) {
        options.declare(command);
    }

    @Override
    protected Answer answer(Workings workings) {
        SafetyAsked asked = SafetyAsked.of(options.typed(), Dashes.TWO, new Objections());
        return new SafetyAnswer(
                asked.answer(grounds.worked(file, workings)),
                all ? SafetyAnswer.Extent.ALL : SafetyAnswer.Extent.WHAT_MATTERS);
    }
}
