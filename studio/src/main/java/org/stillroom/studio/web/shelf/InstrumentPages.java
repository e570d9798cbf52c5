package org.stillroom.studio.web.shelf;

import io.javalin.http.HttpStatus;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.recipe.MeasureKind;
import org.stillroom.studio.recipefile.SheetProblem;
import org.stillroom.studio.recipefile.SheetReading;
import org.stillroom.studio.store.Changing;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.InstrumentSheet;
import org.stillroom.studio.usecase.shelf.GaugeKind;
import org.stillroom.studio.usecase.shelf.ReadInstrument;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.wording.Words;

/** What the maker measures with, and empty jars that are weighed once. */
public final class InstrumentPages {
    private static final String PATH = "/shelf/instruments";

    private final Desk desk;

    InstrumentPages(Desk desk) {
        this.desk = desk;
    }

    void routes(Doors doors) {
        doors.get(PATH, this::list)
                .get(PATH + "/put/{kind}", this::begin)
                .post(PATH, this::put)
                .get(PATH + "/{id}", this::form)
                .post(PATH + "/{id}", this::change)
                .post(PATH + "/{id}/remove", this::remove);
        new CalibrationPages(desk).routes(doors);
    }

    /** An instrument as it stands in the list. */
    public record Row(String id, String name, String what) {}

    /** A kind and what it is called. */
    public record KindName(String key, String name) {}

    /**
     * The form of an instrument.
     *
     * @param id of the instrument, or empty for a new one
     * @param calibrates whether such a thing can be calibrated
     * @param calibration what is kept of that, or empty
     */
    public record Form(
            String id,
            int version,
            String name,
            String kind,
            String kindName,
            String note,
            List<FormField> fields,
            boolean calibrates,
            String calibration,
            List<SheetProblem> problems) {
        public List<SheetProblem> at(String key) {
            return FormField.at(key, problems);
        }
    }

    static List<String> kinds() {
        List<String> kinds = new ArrayList<>(List.of(ReadInstrument.JAR));
        Arrays.stream(MeasureKind.values()).map(MeasureKind::label).forEach(kinds::add);
        Arrays.stream(GaugeKind.values()).map(GaugeKind::label).forEach(kinds::add);
        return kinds;
    }

    private void list(Visit visit) {
        List<Row> rows = desk.store().instruments().all().stream()
                .map(instrument -> row(instrument, visit.words()))
                .toList();
        List<KindName> kinds = kinds().stream()
                .map(kind -> new KindName(kind, visit.words().say("shelf.measure." + kind)))
                .toList();
        visit.page(visit.words().say("shelf.instruments"), ShelfRoom.KEY)
                .style("shelf.css")
                .show("shelf/instruments.jte", Map.of("rows", rows, "kinds", kinds, "undo", visit.field("removed")));
    }

    private static Row row(Instrument instrument, Words words) {
        InstrumentSheet sheet = instrument.sheet();
        List<String> parts = new ArrayList<>(List.of(words.say("shelf.measure." + sheet.kind())));
        sheet.fields().forEach((key, text) -> parts.add(label(key, words) + " " + text));
        if (sheet.calibration() != null) {
            parts.add(words.say("shelf.calibrate.isKept"));
        }
        return new Row(instrument.id(), sheet.name(), String.join(", ", parts));
    }

    private void begin(Visit visit) {
        if (!kinds().contains(visit.part("kind"))) {
            visit.notFound();
            return;
        }
        show(visit, "", 0, new InstrumentSheet("", visit.part("kind"), Map.of(), null), List.of());
    }

    private void form(Visit visit) {
        Instrument instrument =
                desk.store().instruments().instrument(visit.part("id")).orElse(null);
        if (instrument == null) {
            visit.notFound();
            return;
        }
        show(visit, instrument.id(), instrument.version(), instrument.sheet(), List.of());
    }

    private void show(Visit visit, String id, int version, InstrumentSheet sheet, List<SheetProblem> problems) {
        Words words = visit.words();
        List<FormField> fields = ReadInstrument.asked(sheet.kind()).entrySet().stream()
                .map(asked -> new FormField(
                        asked.getKey(),
                        label(asked.getKey(), words),
                        words.say("shelf.help." + asked.getKey() + help(sheet.kind(), asked.getKey())),
                        words.say("shelf.suchAs", asked.getValue()),
                        Shown.typed(sheet.fields(), asked.getKey()),
                        asked.getKey().equals("tare")
                                || GaugeKind.of(sheet.kind())
                                        .flatMap(GaugeKind::needed)
                                        .filter(asked.getKey()::equals)
                                        .isPresent(),
                        FormField.at(asked.getKey(), problems)))
                .toList();
        String kindName = words.say("shelf.measure." + sheet.kind());
        Form form = new Form(
                id,
                version,
                sheet.name(),
                sheet.kind(),
                kindName,
                Shown.blank(sheet.note()),
                fields,
                CalibrationView.isFor(sheet),
                CalibrationView.kept(sheet, words),
                problems);
        visit.page(id.isEmpty() ? words.say("shelf.putInstrument", kindName) : sheet.name(), ShelfRoom.KEY)
                .style("shelf.css")
                .show("shelf/instrument.jte", Map.of("form", form));
    }

    private static String label(String key, Words words) {
        boolean elseOfIngredient = key.equals(GaugeKind.TOLERANCE) || key.equals("drop");
        return words.say("shelf.field." + key + (elseOfIngredient ? "_measure" : ""));
    }

    /** What is asked of a hydrometer and its like has a unit of its own. */
    private static String help(String kind, String key) {
        boolean ofMeasure = GaugeKind.of(kind).isEmpty()
                || (kind.equals(GaugeKind.FLASK.label()) && key.equals(GaugeKind.TOLERANCE));
        return ofMeasure ? "_measure" : "_gauge";
    }

    private static InstrumentSheet sent(Visit visit) {
        String kind = visit.field("kind");
        Map<String, String> typed = new LinkedHashMap<>();
        ReadInstrument.asked(kind).keySet().forEach(key -> typed.put(key, visit.field(key)));
        return new InstrumentSheet(visit.field("name"), kind, typed, visit.field("note"));
    }

    private SheetReading<InstrumentSheet> read(InstrumentSheet sent) {
        return ReadInstrument.answer(sent.name(), sent.kind(), sent.fields(), Shown.blank(sent.note()), desk.ounce());
    }

    private void put(Visit visit) {
        InstrumentSheet sent = sent(visit);
        SheetReading<InstrumentSheet> reading = read(sent);
        if (!kinds().contains(sent.kind())) {
            visit.notFound();
        } else if (reading instanceof SheetReading.Refused<InstrumentSheet> refused) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(visit, "", 0, sent, refused.problems());
        } else {
            desk.store()
                    .instruments()
                    .add(((SheetReading.Understood<InstrumentSheet>) reading).value(), visit.request());
            visit.goOn(PATH);
        }
    }

    private void change(Visit visit) {
        InstrumentSheet sent = sent(visit);
        String typed = visit.field("version");
        int version = typed.matches("\\d{1,9}") ? Integer.parseInt(typed) : 0;
        SheetReading<InstrumentSheet> reading = read(sent);
        if (reading instanceof SheetReading.Refused<InstrumentSheet> refused) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(visit, visit.part("id"), version, sent, refused.problems());
            return;
        }
        InstrumentSheet sheet = ((SheetReading.Understood<InstrumentSheet>) reading).value();
        Changing<Instrument> changing =
                desk.store().instruments().change(visit.part("id"), version, sheet, visit.request());
        if (changing instanceof Changing.Overtaken<Instrument>) {
            throw new IllegalStateException(visit.words().say("shelf.instrumentOvertaken"));
        }
        visit.goOn(PATH);
    }

    private void remove(Visit visit) {
        HistoryEntry removal = desk.store().instruments().remove(visit.part("id"), visit.request());
        visit.goOn(PATH + "?removed=" + removal.id());
    }
}
