package org.stillroom.studio.web.make;

import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.stillroom.core.plan.Way;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Make;
import org.stillroom.studio.store.MissingException;
import org.stillroom.studio.store.RecipeHead;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.batch.Book;
import org.stillroom.studio.usecase.batch.TellKeeping;
import org.stillroom.studio.usecase.learn.LearnOffsets;
import org.stillroom.studio.usecase.learn.Learnt;
import org.stillroom.studio.usecase.make.BatchSheet;
import org.stillroom.studio.usecase.make.BeginMake;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.make.LogEntry;
import org.stillroom.studio.usecase.make.MakePart;
import org.stillroom.studio.usecase.make.MakeState;
import org.stillroom.studio.usecase.make.MakeStep;
import org.stillroom.studio.usecase.make.RecordStep;
import org.stillroom.studio.usecase.make.ShowMake;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.LearntLines;
import org.stillroom.studio.web.frame.Room;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.wording.Words;

/** Makes that are open, begin one, log it step by step, finish it as a batch. */
public final class MakeRoom implements Room {
    private final Store store;
    private final ShowMake show;
    private final RecordStep record;
    private final BeginMake begin;
    private final FinishMake finish;

    public MakeRoom(Store store) {
        this.store = store;
        this.show = new ShowMake(store);
        this.record = new RecordStep(store);
        this.begin = new BeginMake(store);
        this.finish = new FinishMake(store);
    }

    @Override
    public String key() {
        return "make";
    }

    @Override
    public String path() {
        return "/make";
    }

    @Override
    public String state(Words words) {
        int open = store.makes().open().size();
        return open == 0 ? "" : words.say(open == 1 ? "make.oneOpen" : "make.someOpen", "" + open);
    }

    @Override
    public void routes(Doors doors) {
        new GaugePages(store, show).routes(doors);
        doors.get("/make", this::list)
                .get("/make/begin", visit -> form(visit, List.of()))
                .post("/make/begin", this::begun)
                .get("/make/batch/{batch}", this::batch)
                .get("/make/{make}", this::make)
                .get("/make/{make}/seen", this::seen)
                .get("/make/{make}/history", this::history)
                .post("/make/{make}/step", this::step)
                .post("/make/{make}/undo", this::undo)
                .post("/make/{make}/way", this::way)
                .post("/make/{make}/timer", this::timer)
                .post("/make/{make}/note", this::note)
                .get("/make/{make}/finish", this::preview)
                .post("/make/{make}/finish", this::finished);
        new SheetPages(store, show).routes(doors);
    }

    /** A make as the list shows it. */
    public record Listed(Make make, String title) {}

    private void list(Visit visit) {
        List<Listed> open = new ArrayList<>();
        for (Make make : store.makes().open()) {
            open.add(new Listed(make, title(make)));
        }
        List<RecipeHead> recipes = store.recipes().heads(false).stream()
                .filter(head -> head.revision() > 0)
                .toList();
        visit.page(visit.words().say("make.title"), key())
                .style("make.css")
                .show(
                        "make/list.jte",
                        Map.of(
                                "open",
                                open,
                                "recipes",
                                recipes,
                                "batches",
                                store.makes().batches()));
    }

    private String title(Make make) {
        return store.recipes()
                .revision(make.recipe(), make.revision())
                .map(Revision::title)
                .orElse("");
    }

    private Revision revision(Visit visit) {
        String number = visit.field("revision");
        return (number.matches("\\d{1,9}")
                        ? store.recipes().revision(visit.field("recipe"), Integer.parseInt(number))
                        : store.recipes().latest(visit.field("recipe")))
                .orElseThrow(() -> new MissingException(visit.words().say("make.noRevision")));
    }

    private void form(Visit visit, List<Finding> problems) {
        Revision revision = revision(visit);
        Map<String, List<LotOnShelf>> lots = begin.lots(revision);
        Map<String, Object> model = new HashMap<>();
        model.put("revision", revision);
        model.put("lots", lots);
        model.put("stronger", begin.stronger(revision, lots));
        model.put("dosed", begin.dosed(revision));
        model.put("instruments", begin.instruments().size());
        model.put("droppers", begin.droppers());
        model.put("inDrops", begin.linesInDrops(revision));
        model.put("size", visit.field("size"));
        model.put("problems", problems);
        model.put("learnt", learnt(visit, revision, lots));
        model.put("minding", begin.minding(revision));
        model.put("asked", begin.asked(revision));
        visit.page(visit.words().say("make.beginTitle", revision.title()), key())
                .style("make.css")
                .show("make/begin.jte", model);
    }

    /**
     * What batches would put right before this make begins.
     *
     * @param inRecipe of the recipe's own ingredients, by the name of the line
     * @param ofBottles of bottles that it can be taken from, by id
     */
    public record Learned(Map<String, LearntLines.Line> inRecipe, Map<String, List<LearntLines.Line>> ofBottles) {}

    private Learned learnt(Visit visit, Revision revision, Map<String, List<LotOnShelf>> lots) {
        Learnt learnt = LearnOffsets.of(store).answer();
        LearntLines lines = new LearntLines(visit.words());
        Map<String, LearntLines.Line> inRecipe = new LinkedHashMap<>();
        begin.ingredients(revision)
                .forEach((name, ingredient) ->
                        learnt.offered(ingredient).ifPresent(label -> inRecipe.put(name, lines.offer(label))));
        Map<String, List<LearntLines.Line>> ofBottles = new LinkedHashMap<>();
        lots.values()
                .forEach(each -> each.forEach(lot -> {
                    String id = lot.lot().id();
                    List<LearntLines.Line> offered = lines.ofBottle(learnt, id).stream()
                            .filter(LearntLines.Line::isOffered)
                            .toList();
                    if (!offered.isEmpty()) {
                        ofBottles.put(id, offered);
                    }
                }));
        return new Learned(inRecipe, ofBottles);
    }

    private void begun(Visit visit) {
        Revision revision = revision(visit);
        Map<String, List<String>> lots = new LinkedHashMap<>();
        begin.lots(revision).keySet().forEach(name -> {
            List<String> chosen = visit.context().formParams("lot:" + name).stream()
                    .filter(id -> !id.isBlank())
                    .toList();
            if (!chosen.isEmpty()) {
                lots.put(name, chosen);
            }
        });
        Map<String, String> droppers = new LinkedHashMap<>();
        begin.linesInDrops(revision).forEach(name -> droppers.put(name, visit.field("dropper:" + name)));
        BeginMake.Wish wish = new BeginMake.Wish(
                visit.field("size"),
                visit.field("instruments").equals("mine"),
                lots,
                droppers,
                Set.copyOf(visit.context().formParams("meant")));
        BeginMake.Outcome outcome = begin.answer(revision.recipe(), revision.number(), wish, visit.request());
        if (outcome instanceof BeginMake.Outcome.Begun done) {
            visit.goOn("/make/" + done.make().id());
            return;
        }
        visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
        form(visit, ((BeginMake.Outcome.Refused) outcome).problems());
    }

    private MakeState state(Visit visit) {
        return show.answer(visit.part("make"));
    }

    private void make(Visit visit) {
        MakeState state = state(visit);
        if (state.make().finished() != null) {
            Batch batch = store.makes().batchOf(state.make().id()).orElseThrow();
            visit.goOn("/make/batch/" + batch.id());
            return;
        }
        showMake(visit, state, visit.field("step"), MakeView.NOTHING_SAID);
    }

    private void seen(Visit visit) {
        long last = store.makes().entries(visit.part("make")).stream()
                .mapToLong(entry -> entry.id())
                .max()
                .orElse(0);
        visit.context().contentType("text/plain").result("" + last);
    }

    /** Shows the make, whole or as the part that changes. */
    private void showMake(Visit visit, MakeState state, String step, MakeView.Said said) {
        long last = store.makes().entries(state.make().id()).stream()
                .mapToLong(entry -> entry.id())
                .max()
                .orElse(0);
        MakeView view = new MakeView(state, visit.words(), step, said, last);
        Map<String, Object> model = new HashMap<>();
        model.put("view", view);
        if (visit.wantsPart()) {
            visit.part("make/bench.jte", model);
        } else {
            visit.page(state.revision().title() + " · " + visit.words().say("make.title"), key())
                    .style("make.css")
                    .script("make.js")
                    .show("make/make.jte", model);
        }
    }

    private void answer(Visit visit, MakeState before, String step, RecordStep.Outcome outcome) {
        String id = before.make().id();
        if (outcome instanceof RecordStep.Outcome.NotUnderstood not) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            MakeView.Said said = new MakeView.Said(step, visit.field("typed"), not.message(), not.choices());
            showMake(visit, before, step, said);
        } else if (visit.wantsPart()) {
            showMake(visit, show.answer(id), "", MakeView.NOTHING_SAID);
        } else {
            visit.goOn("/make/" + id);
        }
    }

    private static long seenBy(Visit visit) {
        String seen = visit.field("seen");
        return seen.matches("\\d{1,18}") ? Long.parseLong(seen) : 0;
    }

    private void step(Visit visit) {
        MakeState state = state(visit);
        MakeStep step = state.step(visit.field("step"));
        String typed = visit.field("typed");
        long seen = seenBy(visit);
        String request = visit.request();
        RecordStep.Outcome outcome = switch (visit.field("act")) {
            case "skip" -> record.skipped(state, step, seen, request);
            case "poured" -> poured(visit, state, step);
            case "typed" -> typed(visit, state, step);
            default -> record.done(state, step, seen, request);
        };
        answer(visit, state, typed.isBlank() ? "" : step.id(), outcome);
    }

    private RecordStep.Outcome poured(Visit visit, MakeState state, MakeStep step) {
        RecordStep.Reading reading =
                visit.field("reading").equals("scale") ? RecordStep.Reading.SCALE : RecordStep.Reading.AMOUNT;
        String typed = visit.field("typed");
        return typed.isBlank()
                ? record.done(state, step, seenBy(visit), visit.request())
                : record.poured(state, step, typed, reading, seenBy(visit), visit.request());
    }

    /** Logs what was typed in a step that pours nothing; nothing typed is a tick. */
    private RecordStep.Outcome typed(Visit visit, MakeState state, MakeStep step) {
        String typed = visit.field("typed");
        long seen = seenBy(visit);
        String request = visit.request();
        if (typed.isBlank()) {
            return record.done(state, step, seen, request);
        }
        return switch (step.kind()) {
            case VESSEL ->
                record.weighedVessel(state, step, typed, !visit.field("kept").equals("yes"), seen, request);
            case MEASURE -> record.measured(state, step, typed, visit.field("temperature"), seen, request);
            case CAME -> record.came(state, step, typed, seen, request);
            case POUR, MAKE_UP -> poured(visit, state, step);
            case STIR, COOL, POUR_IN, REST, OWN, LABEL -> record.done(state, step, seen, request);
        };
    }

    private void undo(Visit visit) {
        MakeState state = state(visit);
        long id = Long.parseLong(visit.field("entry"));
        LogEntry entry = state.log().stream()
                .filter(each -> each.id() == id)
                .findFirst()
                .orElseThrow(() -> new MissingException("this make has no entry " + id));
        if (entry.undone()) {
            answer(
                    visit,
                    state,
                    "",
                    new RecordStep.Outcome.NotUnderstood(visit.words().say("make.undoneBefore"), List.of()));
            return;
        }
        answer(visit, state, "", record.undone(state, entry, seenBy(visit), visit.request()));
    }

    private void way(Visit visit) {
        MakeState state = state(visit);
        int number = Integer.parseInt(visit.field("part"));
        MakePart part = state.parts().get(number - 1);
        for (Way way : part.choices()) {
            if (way.kind().name().equals(visit.field("way"))) {
                answer(visit, state, "", record.chosen(state, part, way, seenBy(visit), visit.request()));
                return;
            }
        }
        throw new IllegalStateException(visit.words().say("make.wayClosed"));
    }

    private void timer(Visit visit) {
        MakeState state = state(visit);
        MakeStep step = state.step(visit.field("step"));
        if (visit.field("act").equals("off")) {
            answer(visit, state, "", record.timerOff(state, step, seenBy(visit), visit.request()));
            return;
        }
        String minutes = visit.field("minutes").replace(',', '.').strip();
        boolean possible = minutes.matches("\\d{1,3}(\\.\\d{1,2})?") && Double.parseDouble(minutes) > 0;
        RecordStep.Outcome outcome = possible
                ? record.timerBegun(
                        state, step, Math.round(60 * Double.parseDouble(minutes)), seenBy(visit), visit.request())
                : new RecordStep.Outcome.NotUnderstood(visit.words().say("make.minutesHow"), List.of());
        answer(visit, state, possible ? "" : step.id(), outcome);
    }

    private void note(Visit visit) {
        MakeState state = state(visit);
        if (visit.field("typed").isBlank()) {
            showMake(visit, state, "", MakeView.NOTHING_SAID);
            return;
        }
        answer(visit, state, "", record.noted(state, visit.field("typed"), seenBy(visit), visit.request()));
    }

    private void preview(Visit visit) {
        MakeState state = state(visit);
        BatchSheet sheet = finish.preview(state);
        visit.page(visit.words().say("make.finishTitle"), key())
                .style("make.css")
                .show(
                        "make/finish.jte",
                        Map.of(
                                "make",
                                state.make(),
                                "sheet",
                                sheet,
                                "ready",
                                state.isPoured(),
                                "minding",
                                state.minding()));
    }

    private void finished(Visit visit) {
        Batch batch = finish.answer(state(visit), visit.request());
        visit.goOn("/make/batch/" + batch.id());
    }

    private void batch(Visit visit) {
        Batch batch = store.makes()
                .batch(visit.part("batch"))
                .orElseThrow(() -> new MissingException(visit.words().say("make.noBatch")));
        BatchSheet sheet = FinishMake.sheet(batch);
        Book book = Book.open(store);
        List<Finding> warnings = new TellKeeping(store, book).warnings(book, batch);
        visit.page(visit.words().say("make.batchTitle", "" + batch.number(), sheet.title()), key())
                .style("make.css")
                .show("make/batch.jte", Map.of("batch", batch, "sheet", sheet, "warnings", warnings));
    }

    private void history(Visit visit) {
        MakeState state = state(visit);
        visit.page(visit.words().say("make.historyTitle"), key())
                .style("make.css")
                .show(
                        "make/history.jte",
                        Map.of("view", new MakeView(state, visit.words(), "", MakeView.NOTHING_SAID, 0)));
    }
}
