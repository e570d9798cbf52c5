package org.stillroom.studio.web.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.ClarityFields;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.HazeFields;
import org.stillroom.studio.answer.StepFields;
import org.stillroom.studio.answer.desk.ClarityAsked;
import org.stillroom.studio.answer.desk.HazeAsked;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.usecase.TellClarity;

/** Whether it will be clear, and what another haze may be, as the command line answers it. */
final class ClarityOperations {
    private final RecipeTexts texts;

    ClarityOperations(RecipeTexts texts) {
        this.texts = texts;
    }

    List<Operation> all() {
        return List.of(
                Operation.of(
                                Operation.Method.POST,
                                "/clarity",
                                "clarity",
                                "Whether oils stay dissolved: clear, hazy or cloudy, how likely, and what would help; of a recipe by the"
                                        + " analyses of the studio's lots.",
                                call -> clarity(call.body()))
                        .takes(
                                Schemas.question(Schemas.parts(ClarityAsked.PARTS)
                                        .maybe(
                                                RecipeTexts.RECIPE,
                                                Schemas.either(Schemas.text("of a file"), Schemas.ref("RecipeObject")))
                                        .maybe(
                                                DeskOperations.EXPLAIN,
                                                Schemas.flag("answer with each step of the computation and its source"))
                                        .schema()),
                                "{\"strength\": \"40 %\", \"sugar\": \"200 g/L\", \"oil\": {\"lemon\": \"1.2 g/L\"}}")
                        .answers(ClarityComponents.forecast()),
                Operation.of(
                                Operation.Method.POST,
                                "/haze",
                                "haze",
                                "What a haze most likely is by what is seen of it, whether cream keeps, and what clarifying takes.",
                                call -> haze(call.body()))
                        .takes(
                                Schemas.question(Schemas.parts(HazeAsked.PARTS)
                                        .maybe(
                                                RecipeTexts.RECIPE,
                                                Schemas.either(Schemas.text("of a file"), Schemas.ref("RecipeObject")))
                                        .schema()),
                                "{\"seen\": [\"fruit\", \"boiled\"]}")
                        .answers(ClarityComponents.diagnosis()));
    }

    private Reply clarity(Body body) {
        List<String> known = new ArrayList<>(DeskOperations.keys(ClarityAsked.PARTS));
        known.add(RecipeTexts.RECIPE);
        body.knows(known);
        Map<String, List<String>> typed = body.typed(ClarityAsked.PARTS);
        boolean explained = body.flag(DeskOperations.EXPLAIN);
        String recipe = body.has(RecipeTexts.RECIPE) ? body.recipe(RecipeTexts.RECIPE) : null;
        body.refuseIfAnyWrong();
        ClarityAsked asked = ClarityAsked.of(typed, Keys.SNAKE_CASE, new Objections());
        Workings.Written written = new Workings.Written();
        Workings workings = explained ? written : Workings.NONE;
        TellClarity.Found found =
                recipe == null ? asked.answer(workings) : asked.answer(texts.worked(recipe), workings);
        Fields fields = ClarityFields.of(found);
        return Reply.of(explained ? fields.put("steps_of_computation", StepFields.of(written.steps())) : fields);
    }

    private Reply haze(Body body) {
        List<String> known = new ArrayList<>(DeskOperations.keys(HazeAsked.PARTS));
        known.add(RecipeTexts.RECIPE);
        body.knows(known);
        Map<String, List<String>> typed = body.typed(HazeAsked.PARTS);
        String recipe = body.has(RecipeTexts.RECIPE) ? body.recipe(RecipeTexts.RECIPE) : null;
        body.refuseIfAnyWrong();
        HazeAsked asked = HazeAsked.of(typed, Keys.SNAKE_CASE, new Objections());
        return Reply.of(HazeFields.of(asked.answer(recipe == null ? null : texts.worked(recipe))));
    }
}
