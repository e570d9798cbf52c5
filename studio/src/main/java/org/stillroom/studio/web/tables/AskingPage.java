package org.stillroom.studio.web.tables;

import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.answer.desk.Manner;
import org.stillroom.studio.answer.desk.Part;
import org.stillroom.studio.answer.desk.WrongInput;
import org.stillroom.studio.web.frame.Visit;

/** A question of the desk as a form with its answer, wherever it is asked. */
public final class AskingPage {
    /** The group of the phrasebook in which the desk speaks. */
    public static final String DESK = "desk";

    private AskingPage() {}

    /**
     * Where a question is asked.
     *
     * @param room key of the room
     * @param path of the page
     * @param back path of the page that leads here
     * @param backSays what the link to it says
     * @param lead what is to be known before it is asked, or empty
     */
    public record Place(String room, String path, String back, String backSays, String lead) {}

    /** Shows the question, and the answer where something was typed. */
    public static void show(Visit visit, DeskQuestion question, Place place) {
        Map<String, List<String>> typed = typed(visit, question);
        Asked asked = typed.isEmpty()
                ? new Asked(fields(question, Map.of()), null, List.of(), List.of())
                : answered(visit, question, typed);
        visit.page(visit.words().told(DESK, AskedField.label(question.name())).text(), place.room())
                .style("tables.css")
                .show("tables/question.jte", Map.of("question", question, "asked", asked, "place", place));
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

    private static List<AskedField> fields(DeskQuestion question, Map<String, List<String>> typed) {
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
