package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.planner.marks.Measured;
import org.stillroom.studio.answer.desk.GaugeQuestion;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.answer.desk.Part;
import org.stillroom.studio.answer.desk.PlanWishes;
import org.stillroom.studio.usecase.GaugeVessel;
import org.stillroom.studio.usecase.PlanRecipe;
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

    private final PartOptions options = new PartOptions(parts());

    private static List<Part> parts() {
        List<Part> parts = new ArrayList<>(WITHOUT_RECIPE.parts());
        parts.add(PlanWishes.MAKES);
        return parts;
    }

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
        if (poured == null && typed.containsKey(PlanWishes.MAKES.name())) {
            throw Refusal.wrongInput(
                    "--makes",
                    "it is the size of a recipe, and none was named.",
                    "Name the recipe with --poured FILE.");
        }
        GaugeQuestion question =
                poured == null ? WITHOUT_RECIPE : new GaugeQuestion(GaugeVessel.poured(worked(poured, typed)));
        return new ToldAnswer(question.answer(own.with(typed), Dashes.TWO, workings));
    }

    /** Returns what was poured of a recipe, in the size that was made. */
    private static Measured worked(Path recipe, Map<String, List<String>> typed) {
        PlanWishes wishes = PlanWishes.of(typed, Dashes.TWO, new Objections());
        return wishes.worked(PlanRecipe.making(RecipeArgument.open(recipe).recipe()), Grounds.SHIPPED, Workings.NONE)
                .measured();
    }
}
