package org.stillroom.studio.web.rest;

import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.batch.Bottling;
import org.stillroom.core.batch.Place;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Photos;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.batch.Book;
import org.stillroom.studio.usecase.batch.CompareBatches;
import org.stillroom.studio.usecase.batch.Forecasts;
import org.stillroom.studio.usecase.batch.LogBatch;
import org.stillroom.studio.usecase.batch.Notes;
import org.stillroom.studio.usecase.batch.RecordBatch;
import org.stillroom.studio.usecase.batch.TellKeeping;
import org.stillroom.studio.usecase.batch.Waiting;
import org.stillroom.studio.usecase.batch.Waits;
import org.stillroom.studio.usecase.learn.LearnOffsets;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.ShelfLots;
import org.stillroom.studio.usecase.shelf.Stock;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.PhotoAnswer;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.web.rest.BatchForm.Choice;
import org.stillroom.studio.web.rest.BatchForm.Field;
import org.stillroom.studio.web.rest.BatchForm.Kind;
import org.stillroom.studio.wording.Words;

/** The page of a batch, and what is written there. */
final class BatchPages {
    private final Store store;
    private final RecordBatch record;
    private final LogBatch log;
    private final Notes notes;
    private final Clock clock;

    BatchPages(Store store, Clock clock) {
        this.store = store;
        this.record = new RecordBatch(store, clock);
        this.log = new LogBatch(store, clock);
        this.notes = new Notes(store, clock);
        this.clock = clock;
    }

    void routes(Doors doors) {
        doors.get("/rest/batch/{batch}", visit -> show(visit, "", List.of()))
                .post("/rest/batch/{batch}/undo", this::undo)
                .post("/rest/batch/{batch}/noted", this::note)
                .post("/rest/batch/{batch}/{act}", this::write)
                .get("/rest/recipe/{recipe}", this::compare)
                .get("/rest/learned", this::learned)
                .get("/rest/photo/{photo}", this::photo);
    }

    private void show(Visit visit, String act, List<Finding> problems) {
        Book book = Book.open(store);
        Batch batch = book.batch(visit.part("batch"));
        Words words = visit.words();
        Map<String, String> typed = act.isEmpty() ? Map.of() : typed(visit);
        List<BatchForm> forms = forms(book, batch, words).stream()
                .map(form -> form.act().equals(act) ? new BatchForm(act, form.fields(), typed, problems) : form)
                .toList();
        if (!problems.isEmpty()) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        List<Waiting> waits = Waits.of(book, store, clock.getZone()).stream()
                .filter(waiting -> waiting.batch().equals(batch.id()) && !waiting.done())
                .toList();
        BatchView view = new BatchView(
                book,
                batch,
                words,
                forms,
                waits,
                Forecasts.of(book, batch, store),
                new TellKeeping(store, book),
                clock.instant());
        List<Finding> unplaced = forms.stream().anyMatch(form -> form.act().equals(act)) ? List.of() : problems;
        visit.page(
                        words.say(
                                "make.batchTitle",
                                "" + batch.number(),
                                view.sheet().title()),
                        RestRoom.KEY)
                .style("make.css")
                .style("rest.css")
                .show("rest/batch.jte", Map.of("view", view, "problems", unplaced));
    }

    private static Map<String, String> typed(Visit visit) {
        Map<String, String> typed = new LinkedHashMap<>();
        visit.context().formParamMap().forEach((name, values) -> {
            if (!name.equals("token") && !name.equals("request") && !values.isEmpty()) {
                typed.put(name, values.get(0));
            }
        });
        return typed;
    }

    private void write(Visit visit) {
        Batch batch = batch(visit);
        String act = visit.part("act");
        Map<String, String> typed = typed(visit);
        joinLots(typed);
        LogBatch.Act.of(act)
                .map(what -> log.answer(batch, what, typed, visit.request()))
                .ifPresentOrElse(outcome -> answer(visit, batch, act, outcome), visit::notFound);
    }

    /** Puts the lots of the shelf, each with its number in a field of its own, into the one field that the log has for them. */
    private static void joinLots(Map<String, String> typed) {
        List<String> lots = new ArrayList<>();
        typed.forEach((field, text) -> {
            if (field.startsWith(BottleView.TAKEN) && !text.isBlank()) {
                lots.add(field.substring(BottleView.TAKEN.length()) + ":" + text.strip());
            }
        });
        if (!lots.isEmpty()) {
            typed.put("lots", String.join("; ", lots));
        }
    }

    private void note(Visit visit) throws IOException {
        Batch batch = batch(visit);
        UploadedFile file = visit.context().uploadedFile("photo");
        String photo = null;
        if (file != null && file.size() > 0) {
            try (InputStream in = file.content()) {
                photo = store.photos().keep(in.readNBytes(Photos.MOST_BYTES + 1), visit.request() + "/photo");
            } catch (Photos.NoPhoto none) {
                String message = none.getMessage() == null ? "" : none.getMessage();
                show(
                        visit,
                        "noted",
                        List.of(Finding.of(
                                "no-photo", Severity.STOP, "photo", "not kept", message, "Choose another.")));
                return;
            }
        }
        answer(visit, batch, "noted", notes.noted(batch, typed(visit), photo, visit.request()));
    }

    private void compare(Visit visit) {
        Book book = Book.open(store);
        String recipe = visit.part("recipe");
        CompareBatches.Found found = new CompareBatches(store).answer(book, recipe);
        if (found.rows().isEmpty()) {
            visit.notFound();
            return;
        }
        String title = found.rows().get(0).sheet().title();
        visit.page(visit.words().say("rest.compareTitle", title), RestRoom.KEY)
                .style("make.css")
                .style("rest.css")
                .show("rest/compare.jte", Map.of("view", new CompareView(title, found, visit.words())));
    }

    private void learned(Visit visit) {
        Map<String, String> names = new LinkedHashMap<>();
        for (Lot lot : store.lots().all()) {
            String label = lot.sheet().label();
            names.put(lot.id(), lot.sheet().name() + (label == null ? "" : ", " + label));
        }
        LearntView view = new LearntView(LearnOffsets.of(store).answer(), names, visit.words());
        visit.page(visit.words().say("rest.learnt.title"), RestRoom.KEY)
                .style("make.css")
                .style("rest.css")
                .show("rest/learned.jte", Map.of("view", view));
    }

    private void photo(Visit visit) {
        PhotoAnswer.of(visit, store.photos().photo(visit.part("photo")).orElse(null));
    }

    private Batch batch(Visit visit) {
        return Book.batch(store, visit.part("batch"));
    }

    private void answer(Visit visit, Batch batch, String act, RecordBatch.Outcome outcome) {
        if (outcome instanceof RecordBatch.Outcome.NotKept not) {
            show(visit, act, not.problems());
        } else {
            visit.goOn("/rest/batch/" + batch.id());
        }
    }

    private void undo(Visit visit) {
        Batch batch = batch(visit);
        String entry = visit.field("entry");
        if (!entry.matches("\\d{1,18}")) {
            visit.notFound();
            return;
        }
        answer(visit, batch, "undo", record.undone(batch, Long.parseLong(entry), visit.request()));
    }

    private List<BatchForm> forms(Book book, Batch batch, Words words) {
        List<Choice> vessels = new ArrayList<>();
        book.cellar().vessels(batch.id()).forEach((place, held) -> {
            if (!held.isEmpty()) {
                vessels.add(new Choice(place.vessel(), BatchView.vessel(words, place.vessel())));
            }
        });
        BatchForm noted = new BatchForm(
                "noted",
                List.of(
                        Field.of("note", Kind.LONG),
                        Field.text("score", "7.5"),
                        Field.of("photo", Kind.PHOTO),
                        Field.of("day", Kind.DAY)),
                Map.of(),
                List.of());
        List<Choice> bottles = bottles(book, batch, words);
        List<BatchForm> forms = new ArrayList<>();
        if (!vessels.isEmpty()) {
            forms.addAll(ofVessels(book, batch, words, vessels));
        }
        List<Choice> measurable = new ArrayList<>(vessels);
        measurable.addAll(bottles);
        if (!measurable.isEmpty()) {
            forms.add(form("ph", Field.choice("of", measurable), List.of(Field.text("ph", "3.4"))));
            forms.add(
                    form("analysed", Field.choice("of", measurable), List.of(Field.text("found", "thujone 8 mg/kg"))));
        }
        if (!bottles.isEmpty()) {
            forms.add(form("pasteurised", Field.choice("of", bottles), List.of()));
        }
        if (!vessels.isEmpty()) {
            forms.add(new BatchForm("waits", waits(words), Map.of(), List.of()));
        }
        forms.add(noted);
        return forms;
    }

    /** Returns the bottles that were filled together, and where they are several, all of them. */
    private static List<Choice> bottles(Book book, Batch batch, Words words) {
        List<Choice> bottles = new ArrayList<>();
        for (Bottling each : book.cellar().bottlings(batch.id())) {
            bottles.add(new Choice(
                    "bottles " + each.first() + "-" + each.last(),
                    BatchView.bottles(words, each.first(), each.last())));
        }
        if (bottles.size() > 1) {
            bottles.add(0, new Choice("bottles", words.say("rest.allBottles")));
        }
        return bottles;
    }

    private List<BatchForm> ofVessels(Book book, Batch batch, Words words, List<Choice> vessels) {
        Field vessel = Field.choice("vessel", vessels);
        return List.of(
                form("moved", vessel, moved(book, batch, words)),
                form("measured", vessel, measured()),
                form("added", vessel, added(words)),
                form(
                        "lost",
                        vessel,
                        List.of(
                                Field.text("amount", "30 ml"),
                                Field.choice(
                                        "cause",
                                        List.of(
                                                cause(words, "SAMPLE"),
                                                cause(words, "FILTER"),
                                                cause(words, "SEDIMENT"),
                                                cause(words, "OTHER"))))),
                form("evaporated", vessel, List.of(Field.text("amount", "240 g"), Field.text("strength", "41.2 %"))));
    }

    private static List<Field> waits(Words words) {
        List<Choice> choices = new ArrayList<>();
        for (Waiting.What what : Waiting.What.values()) {
            choices.add(new Choice(what.name(), words.say("rest.what." + what.name())));
        }
        return List.of(
                Field.choice("what", choices),
                Field.text("days", "14 days"),
                Field.of("until", Kind.DAY),
                Field.of("note", Kind.TEXT));
    }

    private static Choice cause(Words words, String cause) {
        return new Choice(cause, words.say("rest.cause." + cause));
    }

    /** Puts the vessel in front, the day and a remark behind. */
    private static BatchForm form(String act, Field vessel, List<Field> own) {
        List<Field> fields = new ArrayList<>();
        fields.add(vessel);
        fields.addAll(own);
        fields.add(Field.of("day", Kind.DAY));
        fields.add(Field.of("note", Kind.TEXT));
        return new BatchForm(act, fields, Map.of(), List.of());
    }

    private static List<Field> moved(Book book, Batch batch, Words words) {
        List<Choice> batches = new ArrayList<>();
        batches.add(new Choice(batch.id(), words.say("rest.thisBatch")));
        for (Batch other : book.batches()) {
            if (!other.id().equals(batch.id())) {
                batches.add(new Choice(
                        other.id(),
                        words.say(
                                        "make.batchTitle",
                                        "" + other.number(),
                                        FinishMake.sheet(other).title())
                                + vessels(book, other)));
            }
        }
        return List.of(
                Field.text("to", "demijohn"),
                Field.choice("batch", batches),
                Field.text("amount", ""),
                Field.text("sediment", "40 ml"),
                Field.text("filter", "20 ml"),
                Field.text("sample", ""));
    }

    private static String vessels(Book book, Batch batch) {
        List<String> names = book.cellar().vessels(batch.id()).entrySet().stream()
                .filter(each -> !each.getValue().isEmpty())
                .map(Map.Entry::getKey)
                .map(Place::vessel)
                .toList();
        return names.isEmpty() ? "" : " (" + String.join(", ", names) + ")";
    }

    private static List<Field> measured() {
        return List.of(
                Field.text("strength", "27.4 %"),
                Field.text("sugar", "182 g/L"),
                Field.text("volume", "1.9 L"),
                Field.text("acidity", "5 g/L"));
    }

    private static String left(Words words, Stock left) {
        return words.marked(new Stock(Math.rint(left.amount()), left.unit()).number()) + "\u00a0"
                + switch (left.unit()) {
                    case Stock.MILLILITRES -> "mL";
                    case Stock.GRAMS -> "g";
                    default -> words.say("shelf.pieces");
                };
    }

    private List<Field> added(Words words) {
        List<Choice> choices = new ArrayList<>();
        List<LotOnShelf> shelf =
                new ShelfLots(MakersOunce.of(store.settings())).of(store.lots().all());
        for (String kitchen : RecordBatch.KITCHEN) {
            if (ShelfLots.named(kitchen, shelf).isEmpty()) { // else that of the shelf is meant, which is drawn down
                choices.add(new Choice(kitchen, BatchView.kitchen(words, kitchen)));
            }
        }
        for (LotOnShelf each : shelf) {
            String label = each.lot().sheet().label();
            String left = Stock.isKnown(each.lot()) ? words.say("rest.left", left(words, Stock.left(each.lot()))) : "";
            choices.add(new Choice(each.lot().id(), each.name() + (label == null ? "" : ", " + label) + left));
        }
        return List.of(Field.choice("what", choices), Field.text("amount", "50 ml"));
    }
}
