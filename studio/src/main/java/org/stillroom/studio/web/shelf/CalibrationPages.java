package org.stillroom.studio.web.shelf;

import io.javalin.http.HttpStatus;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.answer.desk.CalibrateQuestion;
import org.stillroom.studio.answer.desk.OwnCalibration;
import org.stillroom.studio.answer.desk.WrongInput;
import org.stillroom.studio.store.Changing;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.usecase.shelf.KeepCalibration;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.FieldNames;
import org.stillroom.studio.web.frame.Visit;

/** Calibrating an instrument of the shelf: type what it showed, see what that tells, and keep it. */
final class CalibrationPages {
    private static final String PATH = "/shelf/instruments/{id}/calibrate";

    private final Desk desk;

    CalibrationPages(Desk desk) {
        this.desk = desk;
    }

    void routes(Doors doors) {
        doors.get(PATH, this::look).post(PATH, this::keep).post("/shelf/instruments/{id}/uncalibrate", this::forget);
    }

    private @Nullable Instrument instrument(Visit visit) {
        Instrument instrument =
                desk.store().instruments().instrument(visit.part("id")).orElse(null);
        if (instrument == null
                || OwnCalibration.asked(instrument.sheet().kind()).isEmpty()) {
            visit.notFound();
            return null;
        }
        return instrument;
    }

    private void look(Visit visit) {
        Instrument instrument = instrument(visit);
        if (instrument == null) {
            return;
        }
        Map<String, List<String>> typed = typed(visit, instrument);
        if (typed.isEmpty()) {
            show(visit, instrument, typed, null, List.of());
            return;
        }
        try {
            show(visit, instrument, typed, found(instrument, typed), List.of());
        } catch (WrongInput wrong) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(visit, instrument, typed, null, wrong.findings());
        }
    }

    private void keep(Visit visit) {
        Instrument instrument = instrument(visit);
        if (instrument == null) {
            return;
        }
        Map<String, List<String>> typed = typed(visit, instrument);
        try {
            CalibrateQuestion.Calibration found = found(instrument, typed);
            Changing<Instrument> kept = new KeepCalibration(desk.store().instruments())
                    .answer(
                            instrument,
                            found.found().calibrated(),
                            typed,
                            LocalDate.now(ZoneId.systemDefault()),
                            visit.request());
            refuseIfOvertaken(kept, visit);
            visit.goOn("/shelf/instruments/" + instrument.id());
        } catch (WrongInput wrong) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(visit, instrument, typed, null, wrong.findings());
        }
    }

    private void forget(Visit visit) {
        Instrument instrument = instrument(visit);
        if (instrument != null) {
            refuseIfOvertaken(
                    new KeepCalibration(desk.store().instruments()).forget(instrument, visit.request()), visit);
            visit.goOn("/shelf/instruments/" + instrument.id());
        }
    }

    private static void refuseIfOvertaken(Changing<Instrument> changing, Visit visit) {
        if (changing instanceof Changing.Overtaken<Instrument>) {
            throw new IllegalStateException(visit.words().say("shelf.instrumentOvertaken"));
        }
    }

    private static CalibrateQuestion.Calibration found(Instrument instrument, Map<String, List<String>> typed) {
        return new OwnCalibration(
                        instrument.sheet().kind(), instrument.sheet().fields(), KeepCalibration.former(instrument))
                .found(typed, FieldNames.PLAIN);
    }

    /** Returns what was typed; semicolons stand between several readings. */
    private static Map<String, List<String>> typed(Visit visit, Instrument instrument) {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        for (String part : OwnCalibration.asked(instrument.sheet().kind())) {
            String text = visit.field(part).strip();
            if (!text.isEmpty()) {
                typed.put(
                        part,
                        Arrays.stream(text.split(";", -1))
                                .map(String::strip)
                                .filter(each -> !each.isEmpty())
                                .toList());
            }
        }
        return typed;
    }

    private static void show(
            Visit visit,
            Instrument instrument,
            Map<String, List<String>> typed,
            CalibrateQuestion.@Nullable Calibration found,
            List<Finding> problems) {
        CalibrationView view = new CalibrationView(instrument, typed, found, problems, visit.words());
        visit.page(visit.words().say("shelf.calibrate.title", instrument.sheet().name()), ShelfRoom.KEY)
                .style("shelf.css")
                .show("shelf/calibrate.jte", Map.of("view", view));
    }
}
