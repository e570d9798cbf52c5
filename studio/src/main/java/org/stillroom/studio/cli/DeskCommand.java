package org.stillroom.studio.cli;

import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.desk.DeskQuestion;
import picocli.CommandLine.Model.CommandSpec;

/** A question at the desk as a command: its parts are options. */
final class DeskCommand extends Subcommand {
    private final DeskQuestion question;
    private final PartOptions options;

    private DeskCommand(DeskQuestion question) {
        this.question = question;
        this.options = new PartOptions(question.parts());
    }

    /** Returns the entry of a question. */
    static Entry entry(DeskQuestion question) {
        String example = "stillroom " + question.name() + " " + Dashes.TWO.write(question.example());
        return new Entry(question.name(), question.summary(), example, () -> new DeskCommand(question));
    }

    @Override
    protected void declare(CommandSpec command) {
        options.declare(command);
    }

    @Override
    protected Answer answer(Workings workings) {
        return new ToldAnswer(question.answer(options.typed(), Dashes.TWO, workings));
    }
}
