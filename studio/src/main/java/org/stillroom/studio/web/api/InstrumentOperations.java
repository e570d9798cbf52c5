package org.stillroom.studio.web.api;

import static org.stillroom.studio.web.api.Operation.Method.DELETE;
import static org.stillroom.studio.web.api.Operation.Method.GET;
import static org.stillroom.studio.web.api.Operation.Method.POST;
import static org.stillroom.studio.web.api.Operation.Method.PUT;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.FindingFields;
import org.stillroom.studio.answer.desk.CalibrateQuestion;
import org.stillroom.studio.answer.desk.OwnCalibration;
import org.stillroom.studio.answer.desk.Part;
import org.stillroom.studio.store.Calibration;
import org.stillroom.studio.store.Changing;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.InstrumentSheet;
import org.stillroom.studio.store.Instruments;
import org.stillroom.studio.usecase.shelf.KeepCalibration;
import org.stillroom.studio.usecase.shelf.ReadInstrument;

/** What the maker measures with, and empty jars. */
final class InstrumentOperations {
    private static final String VERSION = "version";
    private static final List<String> KEYS = List.of("name", "kind", "fields", "note");
    private static final List<String> KEYS_OF_CHANGE = List.of("name", "kind", "fields", "note", VERSION);
    private static final String SCALE = "{\"name\": \"kitchen scale\", \"kind\": \"scale\","
            + " \"fields\": {\"marks\": \"1 g\", \"tolerance\": \"1 g\", \"holds\": \"3 kg\"}}";

    private final Instruments instruments;
    private final RecipeTexts texts;

    InstrumentOperations(Instruments instruments, RecipeTexts texts) {
        this.instruments = instruments;
        this.texts = texts;
    }

    List<Operation> all() {
        Map<String, Object> one = Schemas.ref("Instrument");
        return List.of(
                Operation.of(GET, "/instruments", "instruments", "Every instrument and empty jar, by name.", this::list)
                        .answers(Schemas.group()
                                .with("instruments", Schemas.list(one))
                                .schema()),
                Operation.of(POST, "/instruments", "add_instrument", "Adds an instrument or an empty jar.", this::add)
                        .takes(sheet().schema(), SCALE)
                        .answers(one),
                Operation.of(
                                GET,
                                "/instruments/{instrument}",
                                "instrument",
                                "One instrument.",
                                call -> shown(one(call)))
                        .answers(one),
                Operation.of(
                                PUT,
                                "/instruments/{instrument}",
                                "change_instrument",
                                "Writes the sheet of an instrument anew.",
                                this::change)
                        .takes(
                                sheet().maybe(
                                                VERSION,
                                                Schemas.count(
                                                        "that the change is based on, where If-Match is not sent"))
                                        .schema(),
                                SCALE)
                        .basedOn(VERSION)
                        .answers(one),
                Operation.of(
                                POST,
                                "/instruments/{instrument}/calibration",
                                "calibrate_instrument",
                                "Keeps with an instrument what it was found to show too much.",
                                this::calibrate)
                        .takes(
                                Schemas.parts(new CalibrateQuestion().parts()).schema(),
                                "{\"empty\": \"31.2 g\", \"full\": [\"81.0 g\", \"80.9 g\"], \"temperature\": \"21 C\"}")
                        .answers(one),
                Operation.of(
                                DELETE,
                                "/instruments/{instrument}/calibration",
                                "forget_calibration",
                                "Forgets the calibration of an instrument.",
                                call -> shown(
                                        calibrated(new KeepCalibration(instruments).forget(one(call), call.request()))))
                        .answers(one),
                Operation.of(
                                DELETE,
                                "/instruments/{instrument}",
                                "remove_instrument",
                                "Takes an instrument away; its answer names the entry that brings it back.",
                                call -> RecipeOperations.done(
                                        instruments.remove(one(call).id(), call.request())))
                        .answers(Schemas.ref("Done")),
                Operation.of(
                                POST,
                                "/instruments/{instrument}/bring-back/{entry}",
                                "bring_back_instrument",
                                "Brings an instrument back that was taken away.",
                                call -> RecipeOperations.done(instruments.bringBack(
                                        call.part("instrument"), call.number("entry"), call.request())))
                        .answers(Schemas.ref("Done")));
    }

    private Instrument one(Call call) {
        String id = call.part("instrument");
        return instruments.instrument(id).orElseThrow(() -> Refused.notFound("There is no instrument \"" + id + "\"."));
    }

    private static Reply shown(Instrument instrument) {
        return Reply.of(fields(instrument)).version(instrument.version());
    }

    private Reply list(Call call) {
        return Reply.of(new Fields()
                .put(
                        "instruments",
                        instruments.all().stream()
                                .map(InstrumentOperations::fields)
                                .toList()));
    }

    private Reply add(Call call) throws Exception {
        return shown(instruments.add(read(call.body().knows(KEYS)), call.request()));
    }

    private Reply change(Call call) throws Exception {
        Instrument before = one(call);
        Body body = call.body().knows(KEYS_OF_CHANGE);
        int basedOn = call.basedOn(body, VERSION);
        InstrumentSheet wanted = read(body);
        Changing<Instrument> changing = instruments.change(before.id(), basedOn, wanted, call.request());
        if (changing instanceof Changing.Overtaken<Instrument> overtaken) {
            throw Refused.overtaken(
                    "Somebody has changed this instrument since; version "
                            + overtaken.current().version() + " is the latest.",
                    fields(new Instrument(before.id(), basedOn, wanted)),
                    fields(overtaken.current()));
        }
        return shown(((Changing.Changed<Instrument>) changing).now());
    }

    private Reply calibrate(Call call) throws Exception {
        Instrument instrument = one(call);
        String kind = instrument.sheet().kind();
        if (OwnCalibration.asked(kind).isEmpty()) {
            throw new Refused(
                    Refused.IMPOSSIBLE,
                    "not-calibrated",
                    "",
                    "Of a " + kind + " no calibration is kept.",
                    "Hydrometers, refractometers, flasks, thermometers and droppers are calibrated.");
        }
        List<Part> parts = new CalibrateQuestion()
                .parts().stream()
                        .filter(part -> OwnCalibration.asked(kind).contains(part.name()))
                        .toList();
        Body body = call.body()
                .knows(parts.stream()
                        .map(part -> Keys.SNAKE_CASE.name(part.name()))
                        .toList());
        Map<String, List<String>> typed = body.typed(parts);
        body.refuseIfAnyWrong();
        CalibrateQuestion.Calibration found = new OwnCalibration(
                        kind, instrument.sheet().fields(), KeepCalibration.former(instrument))
                .found(typed, Keys.SNAKE_CASE);
        Instrument kept = calibrated(new KeepCalibration(instruments)
                .answer(
                        instrument,
                        found.found().calibrated(),
                        typed,
                        LocalDate.now(ZoneId.systemDefault()),
                        call.request()));
        return Reply.of(fields(kept)
                        .put("findings", FindingFields.of(found.found().findings())))
                .version(kept.version());
    }

    private static Instrument calibrated(Changing<Instrument> changing) {
        if (changing instanceof Changing.Overtaken<Instrument>) {
            throw new IllegalStateException("this instrument was changed in between");
        }
        return ((Changing.Changed<Instrument>) changing).now();
    }

    private InstrumentSheet read(Body body) {
        String name = said(body.text("name"));
        String kind = said(body.text("kind"));
        Map<String, String> fields = body.named("fields");
        String note = said(body.text("note"));
        body.refuseIfAnyWrong();
        return LotOperations.understood(ReadInstrument.answer(name, kind, fields, note, texts.ounce()));
    }

    private static String said(@Nullable String text) {
        return text == null ? "" : text;
    }

    private static Fields fields(Instrument instrument) {
        Fields known = new Fields();
        instrument.sheet().fields().forEach((key, text) -> known.put(Keys.SNAKE_CASE.name(key), text));
        Fields all = new Fields()
                .put("id", instrument.id())
                .putCount(VERSION, instrument.version())
                .put("name", instrument.sheet().name())
                .put("kind", instrument.sheet().kind())
                .put("fields", known)
                .put("note", instrument.sheet().note());
        Calibration calibration = instrument.sheet().calibration();
        return calibration == null ? all.putNone("calibration") : all.put("calibration", fields(calibration));
    }

    private static Fields fields(Calibration calibration) {
        Fields typed = new Fields();
        calibration.typed().forEach((part, texts) -> typed.putTexts(Keys.SNAKE_CASE.name(part), texts));
        return new Fields()
                .put("day", calibration.day())
                .put("value", calibration.value())
                .put("half_width", calibration.halfWidth())
                .put("typed", typed);
    }

    private static Schemas.Group sheet() {
        return Schemas.group()
                .with("name", Schemas.text(""))
                .with(
                        "kind",
                        Schemas.text(
                                "as under measures in a recipe file, jar, hydrometer, refractometer, flask or thermometer"))
                .maybe(
                        "fields",
                        Schemas.named(
                                Schemas.typed(""),
                                "marks, tolerance, holds, sizes; of a jar tare and holds; of a hydrometer scale and reference, of a refractometer compensated"))
                .maybe("note", Schemas.text(""));
    }

    /** Returns the schemas of what these answer. */
    static Map<String, Object> components() {
        return Map.of(
                "Instrument",
                Schemas.group()
                        .with("id", Schemas.text(""))
                        .with(VERSION, Schemas.count("grows with each change"))
                        .with("name", Schemas.text(""))
                        .with(
                                "kind",
                                Schemas.text(
                                        "as under measures in a recipe file, jar, hydrometer, refractometer, flask or thermometer"))
                        .with("fields", Schemas.named(Schemas.text(""), "as typed"))
                        .with("note", Schemas.orNull(Schemas.text("")))
                        .maybe("findings", Schemas.list(Schemas.ref("Finding")))
                        .with(
                                "calibration",
                                Schemas.orNull(Schemas.group()
                                        .with("day", Schemas.text("on which"))
                                        .with(
                                                "value",
                                                Schemas.number(
                                                        "of a flask mL at 20 °C, of a dropper mg of a drop of water, else what it shows too much"))
                                        .with("half_width", Schemas.number("within which that is right"))
                                        .with(
                                                "typed",
                                                Schemas.named(
                                                        Schemas.list(Schemas.text("")), "what was read, as typed"))
                                        .schema()))
                        .schema());
    }
}
