package org.stillroom.studio.web.api;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.WentIn;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.make.FinishMake;

/** What happened, and the batches that were made. */
final class HistoryOperations {
    private static final int MOST = 100;

    private final Store store;

    HistoryOperations(Store store) {
        this.store = store;
    }

    List<Operation> all() {
        return List.of(Operation.of(
                        Operation.Method.GET,
                        "/history",
                        "history",
                        "Everything that happened, latest first, a hundred entries at a time.",
                        this::history)
                .query("before", "entries below this id only; the next page begins at the last id of this one")
                .query("subject", "what it happened to, such as lot:k3m9x2w8ab; all of it, oldest first")
                .answers(Schemas.group()
                        .with("entries", Schemas.list(Schemas.ref("HistoryEntry")))
                        .schema()));
    }

    private Reply history(Call call) {
        String subject = call.query("subject");
        String before = call.query("before");
        long from = before.matches("\\d{1,18}") ? Long.parseLong(before) : Long.MAX_VALUE;
        List<HistoryEntry> entries = subject.isEmpty()
                ? store.history().latest(from, MOST)
                : store.history().of(subject);
        return Reply.of(new Fields()
                .put("entries", entries.stream().map(HistoryOperations::entry).toList()));
    }

    static Fields entry(HistoryEntry entry) {
        @Nullable Long undoes = entry.undoes();
        Fields fields = new Fields()
                .putCount("id", entry.id())
                .put("at", entry.at().toString())
                .put("subject", entry.subject())
                .put("kind", entry.kind())
                .putJson("body", entry.body());
        return undoes == null ? fields.putNone("undoes") : fields.putCount("undoes", undoes);
    }

    static Fields batch(Batch batch) {
        return new Fields()
                .put("id", batch.id())
                .put("make", batch.make())
                .put("recipe", batch.recipe())
                .putCount("number", batch.number())
                .put("made", batch.made().toString())
                .put("went_in", WentIn.fields(FinishMake.sheet(batch)));
    }

    /** Returns the schemas of what these answer. */
    static Map<String, Object> components() {
        return Map.of(
                "HistoryEntry",
                Schemas.group()
                        .with("id", Schemas.count("later ones have higher ones"))
                        .with("at", Schemas.text("when, ISO 8601"))
                        .with("subject", Schemas.text("what it happened to"))
                        .with("kind", Schemas.text("what happened"))
                        .with(
                                "body",
                                Schemas.of("object", "what it was, what it is now; its keys are those of the kind"))
                        .with("undoes", Schemas.orNull(Schemas.count("the entry that it takes back")))
                        .schema(),
                "Batch",
                Schemas.group()
                        .with("id", Schemas.text(""))
                        .with("make", Schemas.text("id of the make"))
                        .with("recipe", Schemas.text("id of the recipe"))
                        .with("number", Schemas.count("1 for the first batch of the studio"))
                        .with("made", Schemas.text("when, ISO 8601"))
                        .with("went_in", Schemas.ref("WentIn"))
                        .schema());
    }
}
