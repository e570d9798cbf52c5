package org.stillroom.studio.web.api;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.LearntFields;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.learn.LearnOffsets;
import org.stillroom.studio.usecase.learn.TakeOffset;

/** What batches tell of labels and droppers, and taking it. */
final class LearnOperations {
    private static final String FIELD = "field";
    private static final List<String> FIELDS = List.of("strength", "sugar", "drop");

    private final Store store;

    LearnOperations(Store store) {
        this.store = store;
    }

    List<Operation> all() {
        return List.of(
                Operation.of(
                                Operation.Method.GET,
                                "/learned",
                                "learned",
                                "What batches tell of labels and droppers; nothing of it is used by itself.",
                                call -> Reply.of(
                                        LearntFields.of(LearnOffsets.of(store).answer())))
                        .answers(Schemas.ref("Learned")),
                Operation.of(
                                Operation.Method.POST,
                                "/lots/{lot}/take",
                                "take_learned",
                                "Puts the sheet of a lot right by what batches clearly tell of it; nothing where nothing is clear.",
                                this::take)
                        .takes(
                                Schemas.group()
                                        .maybe(
                                                FIELD,
                                                Schemas.text(
                                                        "strength, sugar or drop; all that is clear when left out"))
                                        .schema(),
                                "{}")
                        .answers(Schemas.group()
                                .with("taken", Schemas.list(Schemas.text("field that was put right")))
                                .with("learned", Schemas.ref("Learned"))
                                .schema()));
    }

    private Reply take(Call call) throws Exception {
        Body body = call.body().knows(List.of(FIELD));
        String typed = body.text(FIELD);
        body.refuseIfAnyWrong();
        String field = typed == null ? "" : typed;
        if (!field.isEmpty() && !FIELDS.contains(field)) {
            throw new Refused(
                    Refused.UNREADABLE,
                    "wrong-input",
                    FIELD,
                    "\"" + field + "\" is nothing that batches tell of.",
                    "Write one of: " + String.join(", ", FIELDS) + ".");
        }
        String lot = call.part("lot");
        if (store.lots().lot(lot).isEmpty()) {
            throw Refused.notFound("There is no lot " + lot + ".");
        }
        LearnOffsets learn = LearnOffsets.of(store);
        TakeOffset.Outcome outcome = new TakeOffset(store, learn).answer(lot, field, call.request());
        if (outcome instanceof TakeOffset.Outcome.Overtaken) {
            throw new Refused(
                    Refused.OVERTAKEN,
                    "overtaken",
                    "",
                    "Somebody changed this lot meanwhile.",
                    "Look at what is there now, and ask anew.");
        }
        return Reply.of(new Fields()
                .putTexts("taken", outcome instanceof TakeOffset.Outcome.Taken done ? done.fields() : List.of())
                .put("learned", LearntFields.of(learn.answer())));
    }

    /** Returns the schemas of what these answer. */
    static Map<String, Object> components() {
        Map<String, Object> interval = Schemas.group()
                .with("value", Schemas.number("best estimate"))
                .with("low", Schemas.number("5th percentile"))
                .with("high", Schemas.number("95th percentile"))
                .schema();
        Map<String, Object> components = new LinkedHashMap<>();
        components.put(
                "Learned",
                Schemas.group()
                        .with("batches", Schemas.count("how many were measured and tell something"))
                        .with(
                                "labels",
                                Schemas.list(Schemas.group()
                                        .with("ingredient", Schemas.text("as recipes name it"))
                                        .with(
                                                "lot",
                                                Schemas.orNull(Schemas.text("id; null for all bottles of that name")))
                                        .with("figure", Schemas.text("strength or sugar"))
                                        .with("unit", Schemas.text("% (vol), g/L, or % (by mass) of sugar"))
                                        .with("labelled", Schemas.number("in the unit"))
                                        .with("found", interval)
                                        .with("batches", Schemas.count("how many tell of it"))
                                        .with("standing", Schemas.text("clear, as labelled or open"))
                                        .with(
                                                "beyond_tolerance",
                                                Schemas.flag("whether it contradicts the label's tolerance"))
                                        .with(
                                                "cannot_be_told_from",
                                                Schemas.list(Schemas.text("what went into the same batches")))
                                        .with(
                                                "take",
                                                Schemas.orNull(Schemas.text(
                                                        "as it would be typed; null where nothing is clear")))
                                        .schema()))
                        .with(
                                "drops",
                                Schemas.list(Schemas.group()
                                        .with("dropper", Schemas.text("that drops were counted with"))
                                        .with(
                                                "liquid",
                                                Schemas.orNull(Schemas.text("null where it is told of the dropper")))
                                        .with("lot", Schemas.orNull(Schemas.text("id")))
                                        .with("reckoned", Schemas.number("a drop, in the unit"))
                                        .with("found", interval)
                                        .with("unit", Schemas.text("g, or times what is reckoned"))
                                        .with("weighings", Schemas.count("how many tell of it"))
                                        .with(
                                                "take",
                                                Schemas.orNull(Schemas.text(
                                                        "as it would be typed; null where nothing is clear")))
                                        .schema()))
                        .with(
                                "left_out",
                                Schemas.list(Schemas.count("number of a batch that fits nothing the others say")))
                        .schema());
        return components;
    }
}
