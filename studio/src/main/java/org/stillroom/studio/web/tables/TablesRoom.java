package org.stillroom.studio.web.tables;

import io.javalin.http.HttpStatus;
import io.javalin.http.NotFoundResponse;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.answer.desk.DeskQuestions;
import org.stillroom.studio.answer.desk.Manner;
import org.stillroom.studio.answer.desk.Part;
import org.stillroom.studio.answer.desk.WrongInput;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Room;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.wording.Words;

/** The questions at the desk. Each is a form that is asked by its address, so that an answer can be kept and handed on as a link. */
public final class TablesRoom implements Room {
    @Override
    public String key() {
        return "tables";
    }

    @Override
    public String path() {
        return "/tables";
    }

    @Override
    public String state(Words words) {
        return "";
    }

    @Override
    public void routes(Doors doors) {
        doors.get("/tables", this::list).get("/tables/{question}", this::ask);
    }

    private void list(Visit visit) {
        visit.page(visit.words().say("tables.title"), key())
                .style("tables.css")
                .show("tables/list.jte", Map.of("questions", DeskQuestions.all()));
    }

    private void ask(Visit visit) {
        DeskQuestion question = DeskQuestions.all().stream()
                .filter(each -> each.name().equals(visit.part("question")))
                .findFirst()
                .orElseThrow(NotFoundResponse::new);
        Map<String, List<String>> typed = typed(visit, question);
        Asked asked = typed.isEmpty() ? Asked.nothing(question) : answered(visit, question, typed);
        visit.page(AskedField.label(question.name()), key())
                .style("tables.css")
                .show("tables/question.jte", Map.of("question", question, "asked", asked));
    }

    private static Asked answered(Visit visit, DeskQuestion question, Map<String, List<String>> typed) {
        Workings.Written written = new Workings.Written();
        try {
            Told told = question.answer(typed, Labels.PLAIN, written);
            return new Asked(fields(question, typed), told, written.steps(), List.of());
        } catch (WrongInput wrong) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            return new Asked(fields(question, typed), null, List.of(), wrong.findings());
        }
    }

    private static Map<String, List<String>> typed(Visit visit, DeskQuestion question) {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        if (visit.field("example").equals("yes")) {
            for (Manner.Given given : question.example()) {
                typed.computeIfAbsent(given.part(), part -> new ArrayList<>()).add(given.value());
            }
            return typed;
        }
        for (Part part : question.parts()) {
            List<String> texts = Arrays.stream(visit.field(part.name()).split("\\R", -1))
                    .map(String::strip)
                    .filter(text -> !text.isEmpty())
                    .toList();
            if (!texts.isEmpty()) {
                typed.put(part.name(), texts);
            }
        }
        return typed;
    }

    static List<AskedField> fields(DeskQuestion question, Map<String, List<String>> typed) {
        Map<String, String> examples = question.example().stream()
                .collect(Collectors.toMap(Manner.Given::part, Manner.Given::value, (one, other) -> one + "\n" + other));
        return question.parts().stream()
                .map(part -> new AskedField(
                        part,
                        String.join("\n", typed.getOrDefault(part.name(), List.of())),
                        examples.getOrDefault(part.name(), "")))
                .toList();
    }
}
