package org.stillroom.studio.web.api;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import org.stillroom.core.liquid.Figure;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.GuideFields;
import org.stillroom.studio.answer.StepFields;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.answer.desk.DeskQuestions;
import org.stillroom.studio.answer.desk.Manner;
import org.stillroom.studio.answer.desk.Part;
import org.stillroom.studio.answer.desk.ReadingsQuestion;

/** The questions at the desk: the same parts as on the command line, the same keys in the answer. */
final class DeskOperations {
    static final String EXPLAIN = "explain";

    private DeskOperations() {}

    /**
     * Returns the questions as operations.
     *
     * @param grounds what the studio judges on when it is asked
     */
    static List<Operation> all(Supplier<Grounds> grounds) {
        List<Operation> all = new ArrayList<>();
        DeskQuestions.all().stream()
                .filter(question -> !(question instanceof ReadingsQuestion)) // GaugeOperations asks it, of a recipe too
                .map(question -> operation(question, grounds))
                .forEach(all::add);
        all.add(Operation.of(
                        Operation.Method.GET,
                        "/guide",
                        "guide",
                        "Figures to start from: sugar, strength and acid of usual liqueurs.",
                        call -> Reply.of(GuideFields.all()))
                .answers(Schemas.group()
                        .with(
                                "starting_points",
                                Schemas.list(Schemas.group()
                                        .with("of", Schemas.text("what the row is about"))
                                        .with("kind", Schemas.text("kind of liqueur"))
                                        .with("range", Schemas.text("what is usual, at 20 °C"))
                                        .with("status", Schemas.text("how the figure is known"))
                                        .schema()))
                        .with("findings", Schemas.list(Schemas.ref("Finding")))
                        .schema()));
        return all;
    }

    private static Operation operation(DeskQuestion question, Supplier<Grounds> grounds) {
        return Operation.of(
                        Operation.Method.POST,
                        "/" + question.name(),
                        question.name(),
                        question.summary(),
                        call -> answer(
                                DeskQuestions.named(question.name(), grounds.get())
                                        .orElse(question),
                                call.body()))
                .takes(
                        Schemas.question(Schemas.parts(question.parts())
                                .maybe(EXPLAIN, Schemas.flag("answer with each step of the computation and its source"))
                                .schema()),
                        example(question))
                .answers(told(question));
    }

    static Reply answer(DeskQuestion question, Body body) {
        Map<String, List<String>> typed = body.knows(keys(question.parts())).typed(question.parts());
        boolean explained = body.flag(EXPLAIN);
        body.refuseIfAnyWrong();
        Workings.Written written = new Workings.Written();
        Fields fields = question.answer(typed, Keys.SNAKE_CASE, explained ? written : Workings.NONE)
                .fields();
        return Reply.of(explained ? fields.put("steps", StepFields.of(written.steps())) : fields);
    }

    /** Returns the keys of parts, and the one that asks for an explanation. */
    static List<String> keys(List<Part> parts) {
        List<String> keys = new ArrayList<>();
        parts.forEach(part -> keys.add(Keys.SNAKE_CASE.name(part.name())));
        keys.add(EXPLAIN);
        return keys;
    }

    static String example(DeskQuestion question) {
        Map<String, List<String>> values = new LinkedHashMap<>();
        for (Manner.Given given : question.example()) {
            values.computeIfAbsent(given.part(), part -> new ArrayList<>()).add(given.value());
        }
        List<String> entries = new ArrayList<>();
        values.forEach((part, texts) -> entries.add(
                texts.size() == 1
                        ? Keys.SNAKE_CASE.write(List.of(new Manner.Given(part, texts.get(0))))
                        : "\"" + Keys.SNAKE_CASE.name(part) + "\": [\"" + String.join("\", \"", texts) + "\"]"));
        return "{" + String.join(", ", entries) + "}";
    }

    static Map<String, Object> told(DeskQuestion question) {
        Schemas.Group answer = Schemas.group();
        Schemas.Group doubts = Schemas.group();
        Schemas.Group spreads = Schemas.group();
        for (String key : question.figures()) {
            Map<String, Object> number = Schemas.number(unit(key));
            answer.maybe(key, Schemas.orNull(question.spans().contains(key) ? span(number) : number));
            doubts.maybe(key, Schemas.orNull(Schemas.number("")));
            spreads.maybe(key, ends(number));
        }
        question.tables().forEach(key -> answer.maybe(key, Schemas.list(Schemas.named(Map.of(), "one row"))));
        question.further().forEach(key -> answer.with(key.name(), Schemas.of(key.shape())));
        if (!question.figures().isEmpty()) {
            answer.with("doubt", doubts.schema()).maybe("spread", spreads.schema());
        }
        return answer.with("findings", Schemas.list(Schemas.ref("Finding")))
                .maybe("steps", Schemas.list(Schemas.ref("Step")))
                .schema();
    }

    /** The ends of the central 90 % where no half-width says them; the upper is null where nothing bounds it. */
    private static Map<String, Object> ends(Map<String, Object> number) {
        return Schemas.group()
                .with("low", number)
                .with("high", Schemas.orNull(number))
                .schema();
    }

    private static Map<String, Object> span(Map<String, Object> number) {
        return Schemas.group()
                .with("value", number)
                .with("low", number)
                .with("high", number)
                .schema();
    }

    private static String unit(String key) {
        for (Figure figure : Figure.values()) {
            if (figure.key().equals(key)) {
                return figure.label() + ", " + figure.unit();
            }
        }
        return "";
    }
}
