package org.stillroom.studio.cli;

import java.util.List;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.answer.desk.DeskQuestions;
import org.stillroom.studio.usecase.MatchOils;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;

/** Tells which oils come nearest: those that are named, and those of a shelf. */
final class MatchCommand extends Subcommand {
    private final PartOptions options =
            new PartOptions(DeskQuestions.matching(List.of(), Grounds.SHIPPED).parts());

    @Mixin
    private ShelfOptions shelf = new ShelfOptions();

    @Override
    protected void declare(CommandSpec command) {
        options.declare(command);
    }

    @Override
    protected Answer answer(Workings workings) {
        ShelfOptions.Shelf open = shelf.isNamed() ? shelf.open() : ShelfOptions.Shelf.NONE;
        DeskQuestion question = DeskQuestions.matching(MatchOils.Bottle.of(open.lots()), open.grounds());
        return new ToldAnswer(question.answer(options.typed(), Dashes.TWO, workings));
    }
}
