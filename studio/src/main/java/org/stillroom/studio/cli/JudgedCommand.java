package org.stillroom.studio.cli;

import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.answer.desk.DeskQuestions;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;

/** A question at the desk that judges what is named, by the rules of a house too. */
final class JudgedCommand extends Subcommand {
    private final String question;
    private final PartOptions options;

    @Mixin
    private HouseOptions house = new HouseOptions();

    /** @param question its name */
    JudgedCommand(String question) {
        this.question = question;
        this.options = new PartOptions(on(Grounds.SHIPPED).parts());
    }

    private DeskQuestion on(Grounds grounds) {
        return DeskQuestions.named(question, grounds).orElseThrow();
    }

    @Override
    protected void declare(CommandSpec command) {
        options.declare(command);
    }

    @Override
    protected Answer answer(Workings workings) {
        return new ToldAnswer(on(house.grounds()).answer(options.typed(), Dashes.TWO, workings));
    }
}
