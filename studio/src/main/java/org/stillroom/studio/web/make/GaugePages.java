package org.stillroom.studio.web.make;

import io.javalin.http.HttpStatus;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Flow;
import org.stillroom.core.batch.Held;
import org.stillroom.core.gauging.Poured;
import org.stillroom.core.liquid.VolumeModel;
import org.stillroom.core.plan.Correction.Added;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.answer.desk.CorrectQuestion;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.answer.desk.GaugeQuestion;
import org.stillroom.studio.answer.desk.Manner;
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
    /** Fields in which several may stand, with semicolons between them. */
    private static final Set<String> SEVERAL = Set.of(
            "with",
            "restore",
            "density",
            "flask-weight",
            "hydrometer",
            "refractometer",
            "residue",
            "dry-residue",
            "strength",
            "sugar",
            "acidity",
            "volume",
            "mass");

    /** The question calls the size of a vessel what the page calls the vessel of a batch. */
    private static final Manner WISHED = new Manner() {
        @Override
        public String name(String part) {
            return part.equals("vessel") ? GaugeView.ROOM : part;
        }

        @Override
        public String write(List<Given> given) {
            return FieldNames.PLAIN.write(given);
        }
    };

    /** What a batch is made of: what else came in thins its flavour. */
    private static final Set<Flow.Kind> CAME = Set.of(Flow.Kind.BEGUN, Flow.Kind.ADDED, Flow.Kind.RECEIVED);

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
        Map<String, Held> vessels = batch.map(this::vessels).orElse(Map.of());
        String vessel = chosen(vessels, texts);
        texts.put(GaugeView.VESSEL, vessel);
        Held held = vessels.getOrDefault(vessel, Held.NOTHING);
        Poured known = held.poured();
        GuideView guide = GuideView.of(visit, batch.map(Batch::id).orElse(""), vessel, known);
        GaugeView asked = new GaugeView(
                texts, visit.words(), batch.orElse(null), sheet, shelf, List.copyOf(vessels.keySet()), guide);
        if (!asked.isAsked()) {
            return asked;
        }
        if (vessel.isEmpty() && !vessels.isEmpty()) {
            return asked.objecting(List.of(Finding.of(
                    "which-vessel",
                    Severity.STOP,
                    GaugeView.VESSEL,
                    "not said",
                    "Something of this batch is in " + vessels.size() + " vessels.",
                    "Choose the one that was read.")));
        }
        try {
            GaugeQuestion.Found found = new GaugeQuestion(known).found(withOwn(texts, shelf), FieldNames.PLAIN);
            return corrected(asked.finding(found), texts, batch.orElse(null), held);
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

    /** Returns the vessels of a batch that something is in, with what the log says that is. */
    private Map<String, Held> vessels(Batch batch) {
        Map<String, Held> vessels = new LinkedHashMap<>();
        Book.open(store).cellar().vessels(batch.id()).forEach((place, held) -> {
            if (!held.isEmpty()) {
                vessels.put(place.vessel(), held);
            }
        });
        return vessels;
    }

    /** Returns the vessel that is gauged: the one that was chosen, or the only one; empty while it is open which. */
    private static String chosen(Map<String, Held> vessels, Map<String, String> texts) {
        String named = texts.getOrDefault(GaugeView.VESSEL, "");
        if (vessels.containsKey(named)) {
            return named;
        }
        return vessels.size() == 1 ? vessels.keySet().iterator().next() : "";
    }

    /** Returns the extracts that went into a batch, as much of each as is in a vessel of it. */
    private List<Added> flavours(Batch batch, Held held) {
        MakeState state = show.answer(batch.make());
        if (!state.problems().isEmpty()) {
            return List.of();
        }
        double came = Book.open(store).cellar().flows(batch.id()).stream()
                .filter(flow -> CAME.contains(flow.kind()))
                .mapToDouble(
                        flow -> VolumeModel.atTwenty().millilitres(flow.in().toGrams()))
                .sum();
        double part = came > 0.0 ? held.essentials().millilitres() / came : 1.0;
        return PouredFlavours.of(state.whole().measured(), part);
    }

    /** Adds what would bring it to the target, where one was named and it is known how much there is. */
    private GaugeView corrected(GaugeView view, Map<String, String> texts, @Nullable Batch batch, Held held) {
        GaugeQuestion.Found found = view.found();
        boolean wanted = GaugeView.TARGETS.stream()
                .anyMatch(field -> !texts.getOrDefault(field, "").isBlank());
        if (found == null || !wanted || found.gauged().volume() == null) {
            return view;
        }
        boolean restores = !texts.getOrDefault("restores", "").isBlank();
        List<Added> flavours = batch == null || !restores ? List.of() : flavours(batch, held);
        Map<String, List<String>> wishes = typed(texts);
        wishes.remove(GaugeView.VESSEL);
        List<String> room = wishes.remove(GaugeView.ROOM);
        if (room != null) {
            wishes.put("vessel", room);
        }
        ShelfAdditions lots = new ShelfAdditions(
                new ShelfLots(MakersOunce.of(store.settings())).of(store.lots().all()));
        try {
            CorrectBatch.Found correction = new CorrectQuestion(lots.plain().isEmpty() ? null : lots)
                    .found(CorrectBatch.batch(found.gauged()), flavours, wishes, WISHED);
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

    /** Returns what was typed as the questions take it; semicolons stand between several. */
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
