package org.stillroom.studio.web.api;

import static org.stillroom.studio.web.api.Operation.Method.GET;
import static org.stillroom.studio.web.api.Operation.Method.POST;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.store.Make;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.make.BeginMake;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.make.LogEntry;
import org.stillroom.studio.usecase.make.MakeState;
import org.stillroom.studio.usecase.make.MakeStep;
import org.stillroom.studio.usecase.make.RecordStep;
import org.stillroom.studio.usecase.make.ShowMake;

/** Making a saved revision: begin, see where it stands, record what was done, finish. */
final class MakeOperations {
    private final Store store;
    private final ShowMake show;
    private final RecordStep record;

    MakeOperations(Store store) {
        this.store = store;
        this.show = new ShowMake(store);
        this.record = new RecordStep(store);
    }

    /** What can be recorded. */
    enum Did {
        DONE,
        POURED,
        SKIPPED,
        WEIGHED_VESSEL,
        MEASURED,
        CAME,
        NOTED,
        UNDONE;

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    List<Operation> all() {
        Map<String, Object> state = Schemas.ref("MakeState");
        return List.of(
                Operation.of(GET, "/makes", "makes", "The makes that are not finished, latest first.", this::list)
                        .answers(Schemas.group()
                                .with("makes", Schemas.list(Schemas.ref("Make")))
                                .schema()),
                Operation.of(POST, "/makes", "begin_make", "Begins to make a saved revision.", this::begin)
                        .takes(MakeComponents.wish(), "{\"recipe\": \"RECIPE\", \"revision\": 1, \"size\": \"3 L\"}")
                        .answers(state),
                Operation.of(
                                GET,
                                "/makes/{make}",
                                "make",
                                "How a make stands: its steps with their amounts, planned again after each slip.",
                                call -> shown(call.part("make")))
                        .answers(state),
                Operation.of(
                                POST,
                                "/makes/{make}/record",
                                "record_step",
                                "Records what was done in a step, or takes an entry back; the rest is planned again.",
                                this::record)
                        .takes(MakeComponents.recorded(), "{\"step\": \"STEP\", \"did\": \"done\"}")
                        .answers(state),
                Operation.of(
                                POST,
                                "/makes/{make}/finish",
                                "finish_make",
                                "Makes a batch of it; the lots are drawn down.",
                                this::finish)
                        .answers(Schemas.ref("Batch")));
    }

    private Reply list(Call call) {
        return Reply.of(new Fields()
                .put(
                        "makes",
                        store.makes().open().stream()
                                .map(MakeOperations::fields)
                                .toList()));
    }

    private static Fields fields(Make make) {
        return new Fields()
                .put("id", make.id())
                .put("recipe", make.recipe())
                .putCount("revision", make.revision())
                .put("begun", make.begun().toString());
    }

    private Reply shown(String make) {
        return Reply.of(MakeFields.of(show.answer(make)));
    }

    private Reply begin(Call call) throws Exception {
        Body body = call.body()
                .knows(List.of("recipe", "revision", "size", "own_instruments", "lots", "droppers", "meant"));
        String recipe = said(body.text("recipe"));
        @Nullable Long revision = body.number("revision");
        String size = said(body.text("size"));
        boolean own = body.flag("own_instruments");
        Map<String, List<String>> lots = body.namedTexts("lots");
        Map<String, String> droppers = body.named("droppers");
        Set<String> meant = Set.copyOf(body.texts("meant"));
        body.refuseIfAnyWrong();
        int latest = store.recipes()
                .head(recipe)
                .orElseThrow(() -> Refused.notFound("There is no recipe \"" + recipe + "\"."))
                .revision();
        int number = revision == null ? latest : (int) Math.min(revision, Integer.MAX_VALUE);
        BeginMake.Outcome outcome = new BeginMake(store)
                .answer(recipe, number, new BeginMake.Wish(size, own, lots, droppers, meant), call.request());
        if (outcome instanceof BeginMake.Outcome.Refused refused) {
            throw new Refused(Refused.IMPOSSIBLE, refused.problems());
        }
        return shown(((BeginMake.Outcome.Begun) outcome).make().id());
    }

    private Reply record(Call call) throws Exception {
        MakeState state = show.answer(call.part("make"));
        Body body = call.body().knows(MakeComponents.RECORDED);
        @Nullable Long seen = body.number("seen");
        Did did = did(body);
        RecordStep.Outcome outcome = recorded(did, state, body, seen == null ? state.seen() : seen, call.request());
        if (outcome instanceof RecordStep.Outcome.NotUnderstood not) {
            throw new Refused(
                    Refused.IMPOSSIBLE,
                    "wrong-quantity",
                    "",
                    not.message(),
                    not.choices().isEmpty() ? "" : "Write one of: " + String.join("; ", not.choices()) + ".");
        }
        return shown(state.make().id());
    }

    private static Did did(Body body) {
        String said = said(body.text("did"));
        for (Did each : Did.values()) {
            if (each.word().equals(said)) {
                return each;
            }
        }
        List<String> words = Arrays.stream(Did.values()).map(Did::word).toList();
        body.wrong(
                "wrong-input",
                "did",
                "\"" + said + "\" is nothing that can be recorded.",
                "Write one of: " + String.join(", ", words) + ".");
        body.refuseIfAnyWrong();
        throw new IllegalStateException("a wrong word is refused");
    }

    private RecordStep.Outcome recorded(Did did, MakeState state, Body body, long seen, String request) {
        String amount = said(body.text("amount"));
        String second = said(body.text("temperature"));
        boolean byScale = body.flag("scale_reading");
        boolean zeroed = body.flag("zeroed");
        body.refuseIfAnyWrong();
        return switch (did) {
            case DONE -> record.done(state, step(state, body), seen, request);
            case POURED ->
                record.poured(
                        state,
                        pour(state, body),
                        amount,
                        byScale ? RecordStep.Reading.SCALE : RecordStep.Reading.AMOUNT,
                        seen,
                        request);
            case SKIPPED -> record.skipped(state, step(state, body), seen, request);
            case WEIGHED_VESSEL -> record.weighedVessel(state, step(state, body), amount, zeroed, seen, request);
            case MEASURED -> record.measured(state, step(state, body), amount, second, seen, request);
            case CAME -> record.came(state, step(state, body), amount, seen, request);
            case NOTED -> record.noted(state, said(body.text("note")), seen, request);
            case UNDONE -> record.undone(state, entry(state, body), seen, request);
        };
    }

    private static MakeStep step(MakeState state, Body body) {
        String id = said(body.text("step"));
        body.refuseIfAnyWrong();
        return state.step(id);
    }

    private static MakeStep pour(MakeState state, Body body) {
        MakeStep step = step(state, body);
        if (!step.isPour()) {
            throw new Refused(
                    Refused.IMPOSSIBLE,
                    "wrong-input",
                    "step",
                    "Nothing is poured in the step " + step.id() + ".",
                    "Record it as done.");
        }
        return step;
    }

    private static LogEntry entry(MakeState state, Body body) {
        @Nullable Long id = body.number("entry");
        body.refuseIfAnyWrong();
        LogEntry found = state.log().stream()
                .filter(entry -> id != null && entry.id() == id)
                .findFirst()
                .orElseThrow(() -> Refused.notFound("This make has no entry " + id + "."));
        if (found.undone()) {
            throw new Refused(
                    Refused.OVERTAKEN,
                    "settled",
                    "entry",
                    "The entry was taken back before.",
                    "Nothing is to be done.");
        }
        return found;
    }

    private Reply finish(Call call) {
        MakeState state = show.answer(call.part("make"));
        return Reply.of(HistoryOperations.batch(new FinishMake(store).answer(state, call.request())));
    }

    private static String said(@Nullable String text) {
        return text == null ? "" : text;
    }
}
