package org.stillroom.studio.cli;

import java.util.List;
import java.util.Map;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.desk.GaugeQuestion;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;

/** Finds what is in a vessel from readings, and from the recipe that was poured where one is named. */
final class GaugeCommand extends Subcommand {
    private static final GaugeQuestion WITHOUT_RECIPE = new GaugeQuestion(null);

    @Mixin
    private PouredOption poured = new PouredOption();

    @Mixin
    private OwnOptions own = new OwnOptions();

    private final PartOptions options = new PartOptions(PouredOption.sized(WITHOUT_RECIPE.parts()));

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
        Map<String, List<String>> typed = options.typed();
        GaugeQuestion question = new GaugeQuestion(poured.poured(typed));
        return new ToldAnswer(question.answer(own.with(typed), Dashes.TWO, workings));
    }
}
