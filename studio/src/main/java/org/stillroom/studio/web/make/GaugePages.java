package org.stillroom.studio.web.make;

import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.Correction.Added;
import org.stillroom.planner.marks.Measured;
import org.stillroom.studio.answer.desk.CorrectQuestion;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.answer.desk.GaugeQuestion;
import org.stillroom.studio.answer.desk.WrongInput;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.CorrectBatch;
import org.stillroom.studio.usecase.PouredFlavours;
import org.stillroom.studio.usecase.batch.Book;
import org.stillroom.studio.usecase.left.ShelfAdditions;
import org.stillroom.studio.usecase.make.BatchSheet;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.make.MakeState;
import org.stillroom.studio.usecase.make.ShowMake;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.OwnInstruments;
import org.stillroom.studio.usecase.shelf.ShelfLots;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.FieldNames;
import org.stillroom.studio.web.frame.Visit;

/** Gauging a vessel: type what was read, see what is in it and how sure, and what would bring it to its target. */
final class GaugePages {
    private static final Set<String> SEVERAL = Set.of("with", "restore");

    private final Store store;
    private final ShowMake show;

    GaugePages(Store store, ShowMake show) {
        this.store = store;
        this.show = show;
    }

    void routes(Doors doors) {
        doors.get("/make/gauge", this::gauge);
    }

    private void gauge(Visit visit) {
        Optional<Batch> batch = store.makes().batch(visit.field("batch"));
        if (batch.isEmpty() && !visit.field("batch").isBlank()) {
            visit.notFound();
            return;
        }
        GaugeView view = view(visit, batch);
        if (!view.problems().isEmpty() || !view.guide().problems().isEmpty()) {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
        }
        visit.page(visit.words().say("make.gauge.title"), "make")
                .style("make.css")
                .show("make/gauge.jte", Map.of("view", view));
    }

    private GaugeView view(Visit visit, Optional<Batch> batch) {
        Map<String, String> texts = texts(visit);
        BatchSheet sheet = batch.map(FinishMake::sheet).orElse(null);
        List<Instrument> shelf = OwnInstruments.choices(store.instruments().all());
        Measured poured = batch.map(this::poured).orElse(null);
        GuideView guide = GuideView.of(visit, batch.map(Batch::id).orElse(""), poured);
        List<String> vessels = batch.map(this::vessels).orElse(List.of());
        GaugeView asked = new GaugeView(texts, visit.words(), batch.orElse(null), sheet, shelf, vessels, guide);
        if (!asked.isAsked()) {
            return asked;
        }
        try {
            GaugeQuestion.Found found = new GaugeQuestion(poured).found(withOwn(texts, shelf), FieldNames.PLAIN);
            return corrected(asked.finding(found), texts, poured);
        } catch (WrongInput wrong) {
            return asked.objecting(wrong.findings());
        }
    }

    /** Returns what was typed, with what the chosen instruments of the shelf say of it. */
    private Map<String, List<String>> withOwn(Map<String, String> texts, List<Instrument> shelf) {
        List<String> chosen = GaugeView.OWN.stream()
                .map(field -> texts.getOrDefault(field, ""))
                .filter(id -> !id.isBlank())
                .toList();
        OwnInstruments own = new OwnInstruments(MakersOunce.of(store.settings()));
        return DeskQuestion.ask(
                FieldNames.PLAIN, () -> own.with(OwnInstruments.named("instrument", chosen, shelf), typed(texts)));
    }

    private List<String> vessels(Batch batch) {
        return Book.open(store).cellar().vessels(batch.id()).entrySet().stream()
                .filter(each -> !each.getValue().isEmpty())
                .map(each -> each.getKey().vessel())
                .toList();
    }

    /** Returns what went into a batch, where that can still be worked out. */
    private @Nullable Measured poured(Batch batch) {
        MakeState state = show.answer(batch.make());
        return state.problems().isEmpty() ? state.whole().measured() : null;
    }

    /** Adds what would bring it to the target, where one was named and it is known how much there is. */
    private GaugeView corrected(GaugeView view, Map<String, String> texts, @Nullable Measured poured) {
        GaugeQuestion.Found found = view.found();
        boolean wanted = !texts.getOrDefault("to-strength", "").isBlank()
                || !texts.getOrDefault("to-sugar", "").isBlank();
        if (found == null || !wanted || found.gauged().volume() == null) {
            return view;
        }
        boolean restores = !texts.getOrDefault("restores", "").isBlank();
        List<Added> flavours = poured == null || !restores ? List.of() : PouredFlavours.of(poured);
        ShelfAdditions lots = new ShelfAdditions(
                new ShelfLots(MakersOunce.of(store.settings())).of(store.lots().all()));
        try {
            CorrectBatch.Found correction = new CorrectQuestion(lots.plain().isEmpty() ? null : lots)
                    .found(CorrectBatch.batch(found.gauged()), flavours, typed(texts), FieldNames.PLAIN);
            return view.correcting(correction);
        } catch (WrongInput wrong) {
            return view.objecting(wrong.findings());
        }
    }

    private static Map<String, String> texts(Visit visit) {
        Map<String, String> texts = new LinkedHashMap<>();
        GaugeView.FIELDS.forEach(field -> texts.put(field, visit.field(field)));
        return texts;
    }

    /** Returns what was typed as the questions take it; semicolons stand between what may be added or restored. */
    private static Map<String, List<String>> typed(Map<String, String> texts) {
        Map<String, List<String>> typed = new LinkedHashMap<>();
        texts.forEach((part, text) -> {
            if (!text.isBlank()) {
                typed.put(part, SEVERAL.contains(part) ? List.of(text.strip().split("\\s*;\\s*")) : List.of(text));
            }
        });
        return typed;
    }
}
