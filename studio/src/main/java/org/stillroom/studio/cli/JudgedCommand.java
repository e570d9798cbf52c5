package org.stillroom.studio.cli;

import java.util.function.Function;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.answer.desk.DeskQuestion;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;

/** A question at the desk that judges what is named, by the rules of a house too. */
final class JudgedCommand extends Subcommand {
    private final Function<Grounds, DeskQuestion> question;
    private final PartOptions options;

    @Mixin
    private HouseOptions house = new HouseOptions();

    JudgedCommand(Function<Grounds, DeskQuestion> question) {
        this.question = question;
        this.options = new PartOptions(question.apply(Grounds.SHIPPED).parts());
    }

    @Override
    protected void declare(CommandSpec command) {
        options.declare(command);
    }

    @Override
    protected Answer answer(Workings workings) {
        return new ToldAnswer(question.apply(house.grounds()).answer(options.typed(), Dashes.TWO, workings));
    }
}
