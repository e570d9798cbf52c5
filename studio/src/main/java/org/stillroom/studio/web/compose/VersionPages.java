package org.stillroom.studio.web.compose;

import java.util.Map;
import java.util.NoSuchElementException;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.RecipeHead;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.store.Saving;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.compose.CompareRecipes;
import org.stillroom.studio.usecase.compose.ComposeRecipe;
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

    private RecipeHead requireHead(String id) {
        return store.recipes().head(id).orElseThrow(() -> new NoSuchElementException("There is no recipe " + id + "."));
    }

    private void list(Visit visit) {
        String id = visit.part("id");
        visit.page(visit.words().say("compose.versionsTitle"), "compose")
                .style("compose.css")
                .show(
                        "compose/versions.jte",
                        Map.of(
                                "head",
                                requireHead(id),
                                "revisions",
                                store.recipes().revisions(id)));
    }

    private void compare(Visit visit) {
        String id = visit.part("id");
        Revision one = revision(id, visit.field("one"));
        Revision other = revision(id, visit.field("other"));
        ComposeRecipe composer = room.composer();
        visit.page(visit.words().say("compose.compareTitle"), "compose")
                .style("compose.css")
                .show(
                        "compose/compare.jte",
                        Map.of(
                                "head",
                                requireHead(id),
                                "one",
                                one,
                                "other",
                                other,
                                "compared",
                                CompareRecipes.of(composer.answer(room.form(one)), composer.answer(room.form(other)))));
    }

    private Revision revision(String id, String number) {
        int wanted = number.matches("\\d{1,9}") ? Integer.parseInt(number) : 0;
        return store.recipes()
                .revision(id, wanted)
                .orElseThrow(() -> new NoSuchElementException("There is no revision " + number + " of this recipe."));
    }

    /** Makes an earlier revision the latest again, as a new one. */
    private void restore(Visit visit) {
        String id = visit.part("id");
        Revision earlier = revision(id, visit.field("revision"));
        String note = visit.words().say("compose.restoredNote", "" + earlier.number());
        Saving saving = store.recipes()
                .save(id, requireHead(id).revision(), earlier.title(), earlier.text(), note, visit.request());
        if (saving instanceof Saving.Saved) {
            visit.goOn("/compose/" + id + "?saved=yes");
        } else {
            throw new IllegalStateException(visit.words().say("compose.overtakenTitle"));
        }
    }

    private void duplicate(Visit visit) {
        Revision latest = store.recipes()
                .latest(visit.part("id"))
                .orElseThrow(() -> new NoSuchElementException("Save the recipe first; then it can be copied."));
        String title = visit.words().say("compose.copyOf", latest.title());
        String id = store.recipes().create(title, visit.request());
        String text = room.form(latest).with("title", title).text();
        store.recipes().save(id, 0, title, text, null, visit.request() + "/save");
        visit.goOn("/compose/" + id);
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
