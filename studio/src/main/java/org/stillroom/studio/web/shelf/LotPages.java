package org.stillroom.studio.web.shelf;

import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.recipefile.SheetProblem;
import org.stillroom.studio.recipefile.SheetReading;
import org.stillroom.studio.shelffile.LineProblem;
import org.stillroom.studio.shelffile.LotKeys;
import org.stillroom.studio.shelffile.OilAnalysis;
import org.stillroom.studio.store.Changing;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.LotSheet;
import org.stillroom.studio.store.Lots.NewLot;
import org.stillroom.studio.usecase.learn.LearnOffsets;
import org.stillroom.studio.usecase.learn.TakeOffset;
import org.stillroom.studio.usecase.shelf.LotFacts;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.usecase.shelf.ReadAnalysis;
import org.stillroom.studio.usecase.shelf.ReadInstrument;
import org.stillroom.studio.usecase.shelf.ReadLot;
import org.stillroom.studio.usecase.shelf.RecipesTaking;
import org.stillroom.studio.usecase.shelf.Stock;
import org.stillroom.studio.usecase.shelf.TakenBy;
import org.stillroom.studio.usecase.shelf.WeighLot;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.LearntLines;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.wording.Words;

/** The page of one bottle or jar: its sheet, how much is left, its history, recipes that take it. */
public final class LotPages {
    private static final String READING = "reading";
    /** Pages that offer what batches tell. */
    private static final Pattern BACK = Pattern.compile("/rest/learned|/make/begin\\?recipe=[a-z0-9]+&revision=[0-9]+");

    private final Desk desk;

    LotPages(Desk desk) {
        this.desk = desk;
    }

    void routes(Doors doors) {
        doors.get("/shelf/lots/{id}", visit -> show(visit, Told.NOTHING))
                .post("/shelf/lots/{id}", this::change)
                .post("/shelf/lots/{id}/weigh", this::weigh)
                .post("/shelf/lots/{id}/left", this::count)
                .post("/shelf/lots/{id}/take", this::take)
                .post("/shelf/lots/{id}/remove", this::remove);
    }

    /**
     * What a form on the page has to say after it was sent.
     *
     * @param sheet what was typed into the sheet, or null when it was not sent
     * @param problems of the sheet
     * @param weighing what was typed about weighing
     * @param weighingProblems what is wrong with that
     */
    private record Told(
            @Nullable Map<String, String> sheet,
            List<SheetProblem> problems,
            Map<String, String> weighing,
            List<SheetProblem> weighingProblems) {
        static final Told NOTHING = new Told(null, List.of(), Map.of(), List.of());
    }

    /** A figure of the lot, in words. */
    public record FactLine(String label, String value, String unit, String doubt, String from) {}

    /** A recipe that takes it, and how much. */
    public record Use(String recipe, String title, String amount) {}

    /** A jar to be weighed against. */
    public record Jar(String name, String tare) {}

    /** A supplier's analysis as far as it was read. */
    public record Analysis(OilAnalysis read, String together, List<LineProblem> problems) {}

    private void show(Visit visit, Told told) {
        LotOnShelf lot = desk.lot(visit.part("id")).orElse(null);
        if (lot == null) {
            visit.notFound();
            return;
        }
        Shown shown = new Shown(visit.words());
        Map<String, String> typed = Objects.requireNonNullElseGet(told.sheet(), () -> ReadLot.typed(lot.lot()));
        List<LotOnShelf> lots = desk.lots();
        List<TakenBy> taken = desk.taken();
        Map<String, Object> model = new HashMap<>();
        model.put("lot", lot);
        model.put("row", LotRow.of(lot, lots, taken, MakersGrounds.of(desk.store()), shown));
        model.put("form", LotForm.of(typed, told.sheet() == null ? lot.problems() : told.problems(), visit.words()));
        model.put("sheetSent", told.sheet() != null);
        model.put("facts", facts(lot, shown));
        model.put("assumed", LotFacts.of(lot).map(LotFacts::findings).orElse(List.of()));
        model.put("uses", uses(lot, taken, shown));
        model.put("history", LotHistory.of(lot.lot(), history(lot.lot()), shown));
        model.put("jars", jars());
        model.put("weighing", weighing(lot.lot(), told));
        model.put("weighingProblems", told.weighingProblems());
        model.put("analysis", analysis(lot.lot(), shown));
        model.put("said", said(visit));
        model.put("madeBy", madeBy(lot.lot(), visit.words()));
        model.put(
                "learnt",
                new LearntLines(visit.words())
                        .ofBottle(
                                LearnOffsets.of(desk.store()).answer(),
                                lot.lot().id()));
        visit.page(lot.name(), ShelfRoom.KEY)
                .style("shelf.css")
                .script("shelf.js")
                .show("shelf/lot.jte", model);
    }

    private static String said(Visit visit) {
        for (String what : List.of("put", "kept", "measured", "photo", "back")) {
            if (visit.field(what).equals("yes")) {
                return visit.words().say("shelf.said." + what);
            }
        }
        return "";
    }

    private static List<FactLine> facts(LotOnShelf lot, Shown shown) {
        return LotFacts.of(lot).map(LotFacts::facts).orElse(List.of()).stream()
                .map(fact -> {
                    String key = Shown.key(fact.what());
                    String from = shown.words()
                            .say("shelf.from." + fact.takenFrom().name().toLowerCase(Locale.ROOT));
                    return new FactLine(
                            shown.words().say(key),
                            shown.figure(fact.what(), fact.estimate().value()),
                            shown.words().say(key + ".unit"),
                            shown.doubt(fact),
                            from);
                })
                .toList();
    }

    private static List<Use> uses(LotOnShelf lot, List<TakenBy> taken, Shown shown) {
        boolean byMass = lot.lot().sheet().unit().equals(Stock.GRAMS);
        return RecipesTaking.of(lot.name(), taken).stream()
                .map(by -> {
                    boolean inGrams = byMass || by.millilitres().isEmpty();
                    double amount =
                            inGrams ? by.grams().orElse(-1) : by.millilitres().orElse(-1);
                    Stock stock = new Stock(amount, inGrams ? Stock.GRAMS : Stock.MILLILITRES);
                    return new Use(
                            by.recipe(),
                            by.title(),
                            amount < 0 ? "" : shown.stock(stock).text());
                })
                .toList();
    }

    /** Returns when a lot was made and how old it is; empty where it was bought. */
    private static String madeBy(Lot lot, Words words) {
        LotSheet.Origin origin = lot.sheet().origin();
        if (origin == null) {
            return "";
        }
        long days = Math.max(0, ChronoUnit.DAYS.between(origin.made(), LocalDate.now(ZoneId.systemDefault())));
        return words.say(
                days == 1 ? "shelf.madeYesterday" : "shelf.madeBy",
                words.day(origin.made()),
                String.valueOf(days),
                String.valueOf(origin.revision()));
    }

    private List<HistoryEntry> history(Lot lot) {
        return desk.store().history().of("lot:" + lot.id());
    }

    private List<Jar> jars() {
        List<Jar> jars = new ArrayList<>();
        for (Instrument instrument : desk.store().instruments().all()) {
            String tare = instrument.sheet().fields().get("tare");
            if (instrument.sheet().kind().equals(ReadInstrument.JAR) && tare != null) {
                jars.add(new Jar(instrument.sheet().name(), tare));
            }
        }
        return jars;
    }

    private static Map<String, String> weighing(Lot lot, Told told) {
        Map<String, String> weighing = new LinkedHashMap<>();
        weighing.put(LotKeys.TARE, Shown.blank(lot.sheet().tare()));
        weighing.putAll(told.weighing());
        return weighing;
    }

    private static @Nullable Analysis analysis(Lot lot, Shown shown) {
        String text = lot.sheet().analysis();
        if (text == null) {
            return null;
        }
        OilAnalysis read = OilAnalysis.read(text);
        return new Analysis(
                read,
                shown.words().number(read.percent(), 1),
                ReadAnalysis.look(lot.sheet().name(), read));
    }

    private void change(Visit visit) {
        Lot before = desk.store().lots().lot(visit.part("id")).orElse(null);
        if (before == null) {
            visit.notFound();
            return;
        }
        Map<String, String> typed = LotForm.sent(visit);
        typed.put(LotKeys.LEFT, Stock.isKnown(before) ? Stock.left(before).text() : "");
        SheetReading<NewLot> reading = ReadLot.answer(typed, desk.ounce());
        if (reading instanceof SheetReading.Refused<NewLot> refused) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(visit, new Told(typed, refused.problems(), Map.of(), List.of()));
            return;
        }
        NewLot after = ((SheetReading.Understood<NewLot>) reading).value();
        String version = visit.field("version");
        Changing<Lot> changing = desk.store()
                .lots()
                .change(
                        before.id(),
                        version.matches("\\d{1,9}") ? Integer.parseInt(version) : 0,
                        after.sheet().keeping(before.sheet()),
                        visit.request());
        if (changing instanceof Changing.Overtaken<Lot> overtaken) {
            overtaken(visit, typed, overtaken.current());
        } else {
            visit.goOn("/shelf/lots/" + before.id() + "?kept=yes");
        }
    }

    /** A field that two windows wrote differently. */
    public record Both(String label, String theirs, String yours) {}

    private void overtaken(Visit visit, Map<String, String> yours, Lot current) {
        Map<String, String> theirs = ReadLot.typed(current);
        List<Both> differ = new ArrayList<>();
        for (String key : LotKeys.ALL) {
            String here = Shown.typed(yours, key).strip();
            String there = Shown.typed(theirs, key).strip();
            if (!here.equals(there)) {
                differ.add(new Both(visit.words().say("shelf.field." + key.replace(' ', '_')), there, here));
            }
        }
        visit.context().status(HttpStatus.CONFLICT);
        visit.page(current.sheet().name(), ShelfRoom.KEY)
                .style("shelf.css")
                .show("shelf/overtaken.jte", Map.of("current", current, "differ", differ, "yours", yours));
    }

    private void weigh(Visit visit) {
        LotOnShelf lot = desk.lot(visit.part("id")).orElse(null);
        if (lot == null) {
            visit.notFound();
            return;
        }
        String tare = visit.field("jar").isBlank() ? visit.field(LotKeys.TARE) : visit.field("jar");
        SheetReading<WeighLot.Weighed> weighed = WeighLot.answer(lot, tare, visit.field(READING), desk.ounce());
        if (weighed instanceof SheetReading.Refused<WeighLot.Weighed> refused) {
            Map<String, String> typed = Map.of(LotKeys.TARE, tare, READING, visit.field(READING));
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(visit, new Told(null, List.of(), typed, refused.problems()));
            return;
        }
        Stock left =
                ((SheetReading.Understood<WeighLot.Weighed>) weighed).value().left();
        measured(visit, lot.lot(), left, "weighed");
    }

    private void count(Visit visit) {
        LotOnShelf lot = desk.lot(visit.part("id")).orElse(null);
        if (lot == null) {
            visit.notFound();
            return;
        }
        Map<String, String> typed = new LinkedHashMap<>(ReadLot.typed(lot.lot()));
        typed.put(LotKeys.LEFT, visit.field(LotKeys.LEFT));
        SheetReading<NewLot> reading = ReadLot.answer(typed, desk.ounce());
        List<SheetProblem> problems = reading instanceof SheetReading.Refused<NewLot> refused
                ? refused.problems().stream()
                        .filter(problem -> problem.key().equals(LotKeys.LEFT)
                                || problem.key().equals(LotKeys.FULL))
                        .toList()
                : List.of();
        if (!problems.isEmpty()) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(visit, new Told(null, List.of(), Map.of(LotKeys.LEFT, visit.field(LotKeys.LEFT)), problems));
            return;
        }
        if (reading instanceof SheetReading.Understood<NewLot> understood) {
            Stock left = new Stock(
                    understood.value().left(), understood.value().sheet().unit());
            measured(visit, lot.lot(), left, "counted");
        } else {
            visit.goOn("/shelf/lots/" + lot.lot().id());
        }
    }

    /** Puts the sheet right by what batches tell, and goes back to where that was offered. */
    private void take(Visit visit) {
        String id = visit.part("id");
        new TakeOffset(desk.store(), LearnOffsets.of(desk.store())).answer(id, visit.field("field"), visit.request());
        String back = visit.field("back");
        visit.goOn(BACK.matcher(back).matches() ? back : "/shelf/lots/" + id + "?kept=yes");
    }

    private void measured(Visit visit, Lot lot, Stock left, String why) {
        desk.store().lots().measured(lot.id(), left.amount(), why, visit.request());
        visit.goOn("/shelf/lots/" + lot.id() + "?measured=yes");
    }

    private void remove(Visit visit) {
        HistoryEntry removal = desk.store().lots().remove(visit.part("id"), visit.request());
        visit.goOn("/shelf?removed=" + removal.id());
    }
}
