package org.stillroom.studio.web.compose;

import java.util.Map;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.compose.CompareRecipes;
import org.stillroom.studio.usecase.compose.Composed;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;

/** The versions of a recipe: list, compare, restore; and copying it, putting it away, removing it. */
final class VersionPages {
    private final Store store;
    private final ComposeRoom room;

    VersionPages(Store store, ComposeRoom room) {
        this.store = store;
        this.room = room;
    }

    void routes(Doors doors) {
        doors.get("/compose/{id}/versions", this::list)
                .get("/compose/{id}/compare", this::compare)
                .post("/compose/{id}/restore", this::restore)
                .post("/compose/{id}/duplicate", this::duplicate)
                .post("/compose/{id}/archive", visit -> {
                    store.recipes().archive(visit.part("id"), visit.request());
                    visit.goOn("/compose");
                })
                .post("/compose/{id}/unarchive", visit -> {
                    store.recipes().unarchive(visit.part("id"), visit.request());
                    visit.goOn("/compose/" + visit.part("id"));
                })
                .post("/compose/{id}/remove", this::remove)
                .post("/compose/{id}/bring-back", this::bringBack);
    }

    private void list(Visit visit) {
        String id = visit.part("id");
        visit.page(visit.words().say("compose.versionsTitle"), ComposeRoom.KEY)
                .style("compose.css")
                .show(
                        "compose/versions.jte",
                        Map.of(
                                "head",
                                room.work().head(id),
                                "revisions",
                                store.recipes().revisions(id)));
    }

    private void compare(Visit visit) {
        String id = visit.part("id");
        Revision one = room.work().revision(id, RecipePages.number(visit.field("one")));
        Revision other = room.work().revision(id, RecipePages.number(visit.field("other")));
        visit.page(visit.words().say("compose.compareTitle"), ComposeRoom.KEY)
                .style("compose.css")
                .show(
                        "compose/compare.jte",
                        Map.of(
                                "head",
                                room.work().head(id),
                                "one",
                                one,
                                "other",
                                other,
                                "compared",
                                CompareRecipes.of(composed(one), composed(other))));
    }

    private Composed composed(Revision revision) {
        return room.composer().answer(room.work().form(revision));
    }

    private void restore(Visit visit) {
        String id = visit.part("id");
        int number = RecipePages.number(visit.field("revision"));
        room.work().restore(id, number, visit.words().say("compose.restoredNote", "" + number), visit.request());
        visit.goOn("/compose/" + id + "?saved=yes");
    }

    private void duplicate(Visit visit) {
        String id = visit.part("id");
        String title = visit.words().say("compose.copyOf", room.work().head(id).title());
        visit.goOn("/compose/" + room.work().copy(id, title, visit.request()));
    }

    private void remove(Visit visit) {
        HistoryEntry removal = store.recipes().remove(visit.part("id"), visit.request());
        visit.goOn("/compose?removed=" + visit.part("id") + "&removal=" + removal.id());
    }

    private void bringBack(Visit visit) {
        String removal = visit.field("removal");
        long entry = removal.matches("\\d{1,18}") ? Long.parseLong(removal) : -1;
        store.recipes().bringBack(visit.part("id"), entry, visit.request());
        visit.goOn("/compose/" + visit.part("id"));
    }
}
