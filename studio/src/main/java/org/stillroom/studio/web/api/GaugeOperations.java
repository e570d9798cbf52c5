package org.stillroom.studio.web.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Workings;
import org.stillroom.planner.marks.Measured;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.StepFields;
import org.stillroom.studio.answer.desk.GaugeQuestion;
import org.stillroom.studio.usecase.PlanRecipe;

/** What is in a vessel, from readings and from a recipe that was poured. */
final class GaugeOperations {
    private static final String POURED = "poured";
    private static final GaugeQuestion WITHOUT_RECIPE = new GaugeQuestion(null);

    private final RecipeTexts texts;

    GaugeOperations(RecipeTexts texts) {
        this.texts = texts;
    }

    List<Operation> all() {
        return List.of(Operation.of(
                        Operation.Method.POST,
                        "/" + WITHOUT_RECIPE.name(),
                        WITHOUT_RECIPE.name(),
                        WITHOUT_RECIPE.summary(),
                        call -> answer(call.body()))
                .takes(
                        Schemas.question(Schemas.parts(WITHOUT_RECIPE.parts())
                                .maybe(POURED, Schemas.ref("Recipe"))
                                .maybe(
                                        DeskOperations.EXPLAIN,
                                        Schemas.flag("answer with each step of the computation and its source"))
                                .schema()),
                        DeskOperations.example(WITHOUT_RECIPE))
                .answers(DeskOperations.told(WITHOUT_RECIPE)));
    }

    private Reply answer(Body body) {
        List<String> known = new ArrayList<>(DeskOperations.keys(WITHOUT_RECIPE.parts()));
        known.add(POURED);
        Map<String, List<String>> typed = body.knows(known).typed(WITHOUT_RECIPE.parts());
        @Nullable String recipe = body.has(POURED) ? body.recipe(POURED) : null;
        boolean explained = body.flag(DeskOperations.EXPLAIN);
        body.refuseIfAnyWrong();
        GaugeQuestion question = recipe == null ? WITHOUT_RECIPE : new GaugeQuestion(poured(recipe));
        Workings.Written written = new Workings.Written();
        Fields fields = question.answer(typed, Keys.SNAKE_CASE, explained ? written : Workings.NONE)
                .fields();
        return Reply.of(explained ? fields.put("steps", StepFields.of(written.steps())) : fields);
    }

    private Measured poured(String recipe) {
        PlanRecipe.Outcome plan = PlanRecipe.answer(texts.read(recipe).making(), null, Workings.NONE);
        if (plan instanceof PlanRecipe.Outcome.Refused refused) {
            throw new Refused(Refused.IMPOSSIBLE, refused.problems());
        }
        return ((PlanRecipe.Outcome.Worked) plan).plan().measured();
    }
}
