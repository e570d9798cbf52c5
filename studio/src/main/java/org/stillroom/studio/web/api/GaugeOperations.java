package org.stillroom.studio.web.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.StepFields;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.answer.desk.GaugeQuestion;
import org.stillroom.studio.store.Instruments;
import org.stillroom.studio.usecase.shelf.OwnInstruments;

/** What is in a vessel, from readings and from a recipe that was poured. */
final class GaugeOperations {
    private static final String POURED = "poured";
    private static final String INSTRUMENTS = "instruments";
    private static final GaugeQuestion WITHOUT_RECIPE = new GaugeQuestion(null);

    private final RecipeTexts texts;
    private final Instruments instruments;

    GaugeOperations(RecipeTexts texts, Instruments instruments) {
        this.texts = texts;
        this.instruments = instruments;
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
                                        INSTRUMENTS,
                                        Schemas.list(Schemas.text(
                                                "id or name of an instrument of the shelf, whose calibration counts")))
                                .maybe(
                                        DeskOperations.EXPLAIN,
                                        Schemas.flag("answer with each step of the computation and its source"))
                                .schema()),
                        DeskOperations.example(WITHOUT_RECIPE))
                .answers(DeskOperations.told(WITHOUT_RECIPE)));
    }

    private Reply answer(Body body) {
        List<String> known = new ArrayList<>(DeskOperations.keys(WITHOUT_RECIPE.parts()));
        known.addAll(List.of(POURED, INSTRUMENTS));
        Map<String, List<String>> read = body.knows(known).typed(WITHOUT_RECIPE.parts());
        List<String> named = body.texts(INSTRUMENTS);
        @Nullable String recipe = body.has(POURED) ? body.recipe(POURED) : null;
        boolean explained = body.flag(DeskOperations.EXPLAIN);
        body.refuseIfAnyWrong();
        Map<String, List<String>> typed = DeskQuestion.ask(
                Keys.SNAKE_CASE,
                () -> new OwnInstruments(texts.ounce())
                        .with(
                                OwnInstruments.named(INSTRUMENTS, named, OwnInstruments.choices(instruments.all())),
                                read));
        GaugeQuestion question = recipe == null ? WITHOUT_RECIPE : new GaugeQuestion(texts.worked(recipe).measured());
        Workings.Written written = new Workings.Written();
        Fields fields = question.answer(typed, Keys.SNAKE_CASE, explained ? written : Workings.NONE)
                .fields();
        return Reply.of(explained ? fields.put("steps", StepFields.of(written.steps())) : fields);
    }
}
