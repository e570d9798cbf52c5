package org.stillroom.studio.web.api;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.gauging.Poured;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.StepFields;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.answer.desk.GaugeQuestion;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.answer.desk.PlanWishes;
import org.stillroom.studio.answer.desk.ReadingsQuestion;
import org.stillroom.studio.store.Instruments;
import org.stillroom.studio.usecase.GaugeVessel;
import org.stillroom.studio.usecase.shelf.OwnInstruments;

/** What is in a vessel, from readings and from a recipe that was poured; and which readings would serve before. */
final class GaugeOperations {
    private static final String POURED = "poured";
    private static final String MAKES = PlanWishes.MAKES.name();
    private static final String INSTRUMENTS = "instruments";
    private static final GaugeQuestion GAUGE = new GaugeQuestion(null);
    private static final ReadingsQuestion READINGS = new ReadingsQuestion(null);

    private final RecipeTexts texts;
    private final Instruments instruments;

    GaugeOperations(RecipeTexts texts, Instruments instruments) {
        this.texts = texts;
        this.instruments = instruments;
    }

    List<Operation> all() {
        Schemas.Group gauge = Schemas.parts(GAUGE.parts())
                .maybe(
                        INSTRUMENTS,
                        Schemas.list(
                                Schemas.text("id or name of an instrument of the shelf, whose calibration counts")));
        return List.of(
                operation(GAUGE, gauge, this::gauge),
                operation(READINGS, Schemas.parts(READINGS.parts()), this::readings));
    }

    private static Operation operation(DeskQuestion desk, Schemas.Group takes, Function<Body, Reply> answer) {
        return Operation.of(
                        Operation.Method.POST,
                        "/" + desk.name(),
                        desk.name(),
                        desk.summary(),
                        call -> answer.apply(call.body()))
                .takes(
                        Schemas.question(takes.maybe(POURED, Schemas.ref("Recipe"))
                                .maybe(MAKES, Schemas.typed("what was made of that recipe, such as 3 L"))
                                .maybe(
                                        DeskOperations.EXPLAIN,
                                        Schemas.flag("answer with each step of the computation and its source"))
                                .schema()),
                        DeskOperations.example(desk))
                .answers(DeskOperations.told(desk));
    }

    private Reply gauge(Body body) {
        List<String> named = body.texts(INSTRUMENTS);
        return answer(
                body,
                GAUGE,
                List.of(POURED, MAKES, INSTRUMENTS),
                GaugeQuestion::new,
                read -> new OwnInstruments(texts.ounce())
                        .with(
                                OwnInstruments.named(INSTRUMENTS, named, OwnInstruments.choices(instruments.all())),
                                read));
    }

    private Reply readings(Body body) {
        return answer(body, READINGS, List.of(POURED, MAKES), ReadingsQuestion::new, UnaryOperator.identity());
    }

    private Reply answer(
            Body body,
            DeskQuestion desk,
            List<String> besides,
            Function<@Nullable Poured, DeskQuestion> ofPoured,
            UnaryOperator<Map<String, List<String>>> own) {
        List<String> known = new ArrayList<>(DeskOperations.keys(desk.parts()));
        known.addAll(besides);
        Map<String, List<String>> read = body.knows(known).typed(desk.parts());
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
        Map<String, List<String>> typed = DeskQuestion.ask(Keys.SNAKE_CASE, () -> own.apply(read));
        DeskQuestion question = ofPoured.apply(recipe == null ? null : poured(recipe, makes));
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
