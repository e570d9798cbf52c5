package org.stillroom.studio.web.api;

import java.util.List;
import java.util.Map;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.EssenceFields;
import org.stillroom.studio.answer.NotesFields;
import org.stillroom.studio.answer.desk.WrongInput;
import org.stillroom.studio.recipefile.EssenceReader;
import org.stillroom.studio.recipefile.EssenceReading;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.TellNotes;
import org.stillroom.studio.usecase.essence.PlanEssence;

/** An essence in whole drops, and the notes of a recipe, as the command line answers them. */
final class FlavourOperations {
    private static final String ESSENCE = "essence";

    private static final String ESSENCE_EXAMPLE = """
            {"essence": {
               "stillroom essence": 1,
               "title": "Lemon, pepper and laurel",
               "oils": [
                 {"oil": "lemon", "parts": 10, "drop": "20.5 mg"},
                 {"oil": "black pepper", "parts": 3, "drop": "23.0 mg"},
                 {"oil": "laurel", "parts": 2, "drop": "21.5 mg"}],
               "together": "0.40 g/L", "carrier": "96 %", "dose": "5 ml/L", "marks": "0.1 ml", "batch": "1 L"}}
            """;

    private static final String NOTES_EXAMPLE = """
            {"recipe": {
               "stillroom": 1,
               "title": "Caraway water of life",
               "target": {"volume": "1 L", "strength": "40 %"},
               "ingredients": [{"name": "caraway oil", "kind": "essential oil"}],
               "lines": [
                 {"use": "caraway oil", "dose": "0.1 g/L"},
                 {"use": "spirit 96 %", "amount": "free"},
                 {"use": "water", "amount": "make up"}]}}
            """;

    private final RecipeTexts texts;

    FlavourOperations(RecipeTexts texts) {
        this.texts = texts;
    }

    List<Operation> all() {
        Map<String, Object> row = Schemas.named(Map.of(), "one row");
        return List.of(
                Operation.of(
                                Operation.Method.POST,
                                "/essence",
                                "essence",
                                "An essence of several oils in whole drops: how large to make it, and what is left over.",
                                call -> essence(call.body()))
                        .takes(
                                Schemas.question(Schemas.group()
                                        .with(
                                                ESSENCE,
                                                Schemas.either(
                                                        Schemas.text("the text of an essence file"),
                                                        Schemas.named(Map.of(), "the keys of an essence file")))
                                        .schema()),
                                ESSENCE_EXAMPLE)
                        .answers(Schemas.named(Map.of(), "the plan, as the command essence answers it")),
                Operation.of(
                                Operation.Method.POST,
                                "/notes",
                                "notes",
                                "Which notes lead: what the oils of a recipe bring, by the analyses of the studio's lots where there are"
                                        + " some, and how far above the threshold it lies.",
                                call -> notes(call.body()))
                        .takes(
                                Schemas.question(Schemas.group()
                                        .with(RecipeTexts.RECIPE, Schemas.ref("Recipe"))
                                        .schema()),
                                NOTES_EXAMPLE)
                        .answers(Schemas.group()
                                .with("strength_vol_percent", Schemas.number("% vol at 20 °C"))
                                .with("constituents", Schemas.list(row))
                                .with(
                                        "analysed",
                                        Schemas.list(Schemas.text("ingredient that goes by the analyses of its lots")))
                                .with("findings", Schemas.list(Schemas.ref("Finding")))
                                .schema()));
    }

    private Reply essence(Body body) {
        EssenceReading reading = EssenceReader.read(given(body));
        if (reading instanceof EssenceReading.Refused refused) {
            throw new WrongInput(refused.problems());
        }
        try {
            return Reply.of(EssenceFields.of(
                    PlanEssence.answer(((EssenceReading.Understood) reading).sheet(), texts.grounds(), Workings.NONE)));
        } catch (Impossible impossible) {
            throw new WrongInput(List.of(Finding.of(
                    "essence-impossible",
                    Severity.STOP,
                    impossible.part(),
                    "cannot be",
                    impossible.reason(),
                    impossible.remedy())));
        }
    }

    private Reply notes(Body body) {
        return Reply.of(NotesFields.of(TellNotes.answer(texts.worked(body, List.of()), Workings.NONE)));
    }

    private static String given(Body body) {
        String text = body.knows(List.of(ESSENCE)).recipe(ESSENCE);
        if (!body.has(ESSENCE)) {
            body.wrong(
                    "essence-missing",
                    ESSENCE,
                    "There is no essence.",
                    "Give it as \"essence\": the text of an essence file, or an object of the same keys.");
        }
        body.refuseIfAnyWrong();
        return String.valueOf(text);
    }
}
