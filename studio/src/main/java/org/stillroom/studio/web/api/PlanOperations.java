package org.stillroom.studio.web.api;

import java.util.List;
import java.util.Map;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.StepFields;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.answer.desk.PlanWishes;

/** The plan of a recipe, as the command line answers it. */
final class PlanOperations {
    private static final String EXAMPLE = """
            {"recipe": {
               "stillroom": 1,
               "title": "Grapefruit and rosemary",
               "target": {"volume": "1 L", "strength": "28 %", "sugar": "180 g/L"},
               "ingredients": [{"name": "neutral spirit", "kind": "spirit", "strength": "96 %", "tolerance": "0.3 %"}],
               "lines": [
                 {"use": "neutral spirit", "amount": "free"},
                 {"use": "white sugar", "amount": "free"},
                 {"use": "water", "amount": "make up"}]},
             "makes": "3 L",
             "what_if_spirit": ["40 %", "96 %"],
             "shopping": true}
            """;

    private final RecipeTexts texts;

    PlanOperations(RecipeTexts texts) {
        this.texts = texts;
    }

    List<Operation> all() {
        return List.of(Operation.of(
                        Operation.Method.POST,
                        "/plan",
                        "plan",
                        "Amounts that land on a recipe's target, how sure they are, and how to make it. The body may also be"
                                + " the recipe itself.",
                        call -> answer(call.body()))
                .takes(
                        Schemas.question(Schemas.either(
                                wishes().with(RecipeTexts.RECIPE, Schemas.ref("Recipe"))
                                        .schema(),
                                Schemas.ref("RecipeObject"))),
                        EXAMPLE)
                .answers(Schemas.ref("Plan")));
    }

    static Schemas.Group wishes() {
        return Schemas.parts(PlanWishes.PARTS)
                .maybe(DeskOperations.EXPLAIN, Schemas.flag("answer with each step of the computation and its source"));
    }

    private Reply answer(Body body) {
        if (body.has("stillroom")) {
            return planned(texts.read(body.asRecipe()), texts.grounds(), Body.of(""));
        }
        return planned(texts.read(body, PlanWishes.PARTS), texts.grounds(), body);
    }

    /** Returns the plan of a recipe with what the body wishes for. */
    static Reply planned(RecipeTexts.Found found, Grounds grounds, Body body) {
        Map<String, List<String>> typed = body.typed(PlanWishes.PARTS);
        boolean explained = body.flag(DeskOperations.EXPLAIN);
        body.refuseIfAnyWrong();
        PlanWishes wishes = PlanWishes.of(typed, Keys.SNAKE_CASE, new Objections());
        Making making = found.making();
        List<Finding> notes = found.notes();
        Workings.Written written = new Workings.Written();
        Fields fields = wishes.answer(making, notes, grounds, explained ? written : Workings.NONE)
                .fields();
        return Reply.of(explained ? fields.put("steps", StepFields.of(written.steps())) : fields);
    }
}
