package org.stillroom.studio.cli;

import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.desk.CorrectQuestion;
import org.stillroom.studio.usecase.left.ShelfAdditions;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;

/** Tells what to add to a batch, also with only what is on a shelf where one is named. */
final class CorrectCommand extends Subcommand {
    private final PartOptions options = new PartOptions(new CorrectQuestion(null).parts());

    @Mixin
    private ShelfOptions shelf = new ShelfOptions();

    @Override
    protected void declare(CommandSpec command) {
        options.declare(command);
    }

    @Override
    protected Answer answer(Workings workings) {
        CorrectQuestion question = new CorrectQuestion(
                shelf.isNamed() ? new ShelfAdditions(shelf.open().lots()) : null);
        return new ToldAnswer(question.answer(options.typed(), Dashes.TWO, workings));
    }
}
