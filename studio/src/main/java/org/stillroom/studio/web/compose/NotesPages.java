package org.stillroom.studio.web.compose;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.TellNotes;
import org.stillroom.studio.usecase.WorkedPlan;
import org.stillroom.studio.usecase.compose.WorkOnRecipe;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.ShelfLots;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.wording.Words;

/** Which notes lead in what a recipe makes, as a plot that also prints and in words. */
final class NotesPages {
    private final Store store;
    private final ComposeRoom room;

    NotesPages(Store store, ComposeRoom room) {
        this.store = store;
        this.room = room;
    }

    void routes(Doors doors) {
        doors.get("/compose/{id}/notes", this::show);
    }

    private void show(Visit visit) {
        WorkOnRecipe.Work work = room.work().open(visit.part("id"));
        WorkedPlan worked = room.composer().answer(work.form()).worked();
        Map<String, Object> model = new HashMap<>();
        model.put("work", work);
        model.put("view", worked == null ? null : view(worked, visit.words()));
        visit.page(visit.words().say("notes.title"), ComposeRoom.KEY)
                .style("clarity.css")
                .show("compose/notes.jte", model);
    }

    /** Lines are taken from the lots of their name, the one to use first first: its analysis counts. */
    private NotesView view(WorkedPlan worked, Words words) {
        Map<String, Map<String, Double>> analyses = MakersGrounds.ofFirstLots(
                worked.plan(),
                new ShelfLots(MakersOunce.of(store.settings())).of(store.lots().all()));
        TellNotes.Found found = TellNotes.answer(worked.plan(), analyses, Workings.NONE);
        return new NotesView(found, List.copyOf(analyses.keySet()), words);
    }
}
