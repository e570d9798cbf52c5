package org.stillroom.studio.web.compose;

import java.util.HashMap;
import java.util.Map;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.usecase.TellNotes;
import org.stillroom.studio.usecase.WorkedPlan;
import org.stillroom.studio.usecase.compose.WorkOnRecipe;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;

/** Which notes lead in what a recipe makes, as a plot that also prints and in words. */
final class NotesPages {
    private final ComposeRoom room;

    NotesPages(ComposeRoom room) {
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
        model.put(
                "view", worked == null ? null : new NotesView(TellNotes.answer(worked, Workings.NONE), visit.words()));
        visit.page(visit.words().say("notes.title"), ComposeRoom.KEY)
                .style("clarity.css")
                .show("compose/notes.jte", model);
    }
}
