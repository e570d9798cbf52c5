package org.stillroom.studio.web.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Poured;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.StepFields;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.answer.desk.GaugeQuestion;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.answer.desk.PlanWishes;
import org.stillroom.studio.store.Instruments;
import org.stillroom.studio.usecase.GaugeVessel;
import org.stillroom.studio.usecase.shelf.OwnInstruments;

/** What is in a vessel, from readings and from a recipe that was poured. */
final class GaugeOperations {
    private static final String POURED = "poured";
    private static final String MAKES = PlanWishes.MAKES.name();
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
                                .maybe(MAKES, Schemas.typed("what was made of that recipe, such as 3 L"))
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
        known.addAll(List.of(POURED, MAKES, INSTRUMENTS));
        Map<String, List<String>> read = body.knows(known).typed(WITHOUT_RECIPE.parts());
        List<String> named = body.texts(INSTRUMENTS);
        @Nullable String recipe = body.has(POURED) ? body.recipe(POURED) : null;
        @Nullable String makes = body.text(MAKES);
        if (makes != null && recipe == null) {
            body.wrong(
                    "wrong-input",
                    MAKES,
                    "It is the size of a recipe, and none was poured.",
                    "Give the recipe as poured.");
        }
        boolean explained = body.flag(DeskOperations.EXPLAIN);
        body.refuseIfAnyWrong();
        Map<String, List<String>> typed = DeskQuestion.ask(
                Keys.SNAKE_CASE,
                () -> new OwnInstruments(texts.ounce())
                        .with(
                                OwnInstruments.named(INSTRUMENTS, named, OwnInstruments.choices(instruments.all())),
                                read));
        GaugeQuestion question = recipe == null ? WITHOUT_RECIPE : new GaugeQuestion(poured(recipe, makes));
        Workings.Written written = new Workings.Written();
        Fields fields = question.answer(typed, Keys.SNAKE_CASE, explained ? written : Workings.NONE)
                .fields();
        return Reply.of(explained ? fields.put("steps", StepFields.of(written.steps())) : fields);
    }

    private Poured poured(String recipe, @Nullable String makes) {
        PlanWishes wishes = PlanWishes.of(
                makes == null ? Map.of() : Map.of(MAKES, List.of(makes)), Keys.SNAKE_CASE, new Objections());
        return GaugeVessel.poured(wishes.worked(texts.read(recipe).making(), texts.grounds(), Workings.NONE)
                .measured());
    }
}
