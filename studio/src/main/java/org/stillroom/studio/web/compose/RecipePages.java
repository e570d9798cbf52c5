package org.stillroom.studio.web.compose;

import io.javalin.http.HttpStatus;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.planner.shopping.Shopping;
import org.stillroom.studio.recipefile.RecipeForm;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.WorkedPlan;
import org.stillroom.studio.usecase.compose.CompareRecipes;
import org.stillroom.studio.usecase.compose.ComposeRecipe;
import org.stillroom.studio.usecase.compose.Composed;
import org.stillroom.studio.usecase.compose.EditRecipe;
import org.stillroom.studio.usecase.compose.HandOut;
import org.stillroom.studio.usecase.compose.MergeRecipes;
import org.stillroom.studio.usecase.compose.StageShelf;
import org.stillroom.studio.usecase.compose.StartRecipe;
import org.stillroom.studio.usecase.compose.WorkOnRecipe;
import org.stillroom.studio.usecase.learn.LearnOffsets;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.web.triangle.TriangleView;
import org.stillroom.studio.wording.Words;

/** One recipe as it is typed: what comes of it at once, saving it, and what to do when somebody else saved it meanwhile. */
final class RecipePages {
    private final Store store;
    private final ComposeRoom room;

    RecipePages(Store store, ComposeRoom room) {
        this.store = store;
        this.room = room;
    }

    void routes(Doors doors) {
        doors.get("/compose/{id}", this::show)
                .post("/compose/{id}", this::press)
                .post("/compose/{id}/live", this::live)
                .post("/compose/{id}/merge", this::merge)
                .get("/compose/{id}/file", this::file);
    }

    private RecipeForm typed(Visit visit) {
        Map<String, String> fields = new LinkedHashMap<>();
        visit.context().formParamMap().forEach((name, values) -> fields.put(name, values.get(0)));
        return DropperChoice.of(store).listed(RecipeForm.of(fields));
    }

    static int number(String typed) {
        return typed.matches("\\d{1,9}") ? Integer.parseInt(typed) : 0;
    }

    private void show(Visit visit) {
        WorkOnRecipe.Work work = room.work().open(visit.part("id"));
        show(visit, work, visit.field("saved").equals("yes") ? "saved" : "");
    }

    private void show(Visit visit, WorkOnRecipe.Work work, String news) {
        visit.page(work.title(), ComposeRoom.KEY)
                .style("compose.css")
                .script("triangle.js")
                .script("compose.js")
                .show("compose/compose.jte", Map.of("view", view(work, visit.words()), "news", news));
    }

    private ComposeView view(WorkOnRecipe.Work work, Words words) {
        Composed composed = room.composer().answer(work.form());
        WorkedPlan worked = composed.worked();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < work.form().count("ingredients"); i++) {
            names.add(work.form().typed("ingredients." + i + ".name"));
        }
        names.addAll(ShelfChoice.builtIn());
        return new ComposeView(
                work,
                composed,
                worked == null ? null : TriangleView.of(worked.plan(), words),
                worked == null ? null : Shopping.of(worked.plan()),
                names,
                ShelfChoice.of(store).lots(words),
                DropperChoice.of(store),
                LearnOffsets.of(store).answer(),
                words);
    }

    /** Keeps what is typed, does what was pressed, and shows what comes of it. */
    private void live(Visit visit) {
        String id = visit.part("id");
        room.work().head(id);
        RecipeForm form = after(visit, typed(visit));
        room.work().keep(id, number(visit.field("based-on")), form, visit.request());
        Map<String, Object> model = new HashMap<>();
        model.put("view", view(room.work().open(id), visit.words()));
        model.put("token", visit.field("token"));
        model.put("request", visit.field("request"));
        visit.part("compose/form.jte", model);
    }

    private RecipeForm after(Visit visit, RecipeForm form) {
        String asked = visit.field("do");
        if (asked.isEmpty() || asked.equals("work")) {
            return form;
        }
        if (asked.equals("add-lot")) {
            return ShelfChoice.of(store)
                    .chosen(visit.field("lot"))
                    .map(lot -> StartRecipe.pouring(form, lot))
                    .orElse(form);
        }
        String said = asked.equals("scale") ? "scale:" + visit.field("scale-to") : asked;
        return EditRecipe.after(room.composer().answer(form), said);
    }

    private void press(Visit visit) {
        String id = visit.part("id");
        room.work().head(id);
        if (visit.field("do").equals("save")) {
            save(visit, id, number(visit.field("based-on")), typed(visit));
            return;
        }
        if (visit.field("do").equals("discard")) {
            store.recipes().dropDraft(id);
        } else {
            room.work().keep(id, number(visit.field("based-on")), after(visit, typed(visit)), visit.request());
        }
        visit.goOn("/compose/" + id);
    }

    private void save(Visit visit, String id, int basedOn, RecipeForm form) {
        String typed = visit.field("revision-note").strip();
        WorkOnRecipe.Kept kept = room.work().save(id, basedOn, form, typed.isEmpty() ? null : typed, visit.request());
        if (kept instanceof WorkOnRecipe.Kept.Saved) {
            boolean goesOnMaking = visit.field("then").equals("make");
            visit.goOn(goesOnMaking ? "/make/begin?recipe=" + id : "/compose/" + id + "?saved=yes");
        } else if (kept instanceof WorkOnRecipe.Kept.Overtaken overtaken) {
            overtaken(visit, id, basedOn, form, overtaken.theirs());
        } else {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            show(visit, room.work().open(id), "notYet");
        }
    }

    private void overtaken(Visit visit, String id, int basedOn, RecipeForm mine, Revision theirs) {
        visit.context().status(HttpStatus.CONFLICT);
        RecipeForm saved = room.work().form(theirs);
        ComposeRecipe composer = room.composer();
        visit.page(visit.words().say("compose.overtakenTitle"), ComposeRoom.KEY)
                .style("compose.css")
                .show(
                        "compose/overtaken.jte",
                        Map.of(
                                "id", id,
                                "basedOn", basedOn,
                                "mine", mine,
                                "theirs", theirs,
                                "choices", new MergeRecipes(base(id, basedOn), mine, saved).choices(),
                                "compared", CompareRecipes.of(composer.answer(saved), composer.answer(mine))));
    }

    private RecipeForm base(String id, int number) {
        return store.recipes().revision(id, number).map(room.work()::form).orElseGet(() -> RecipeForm.of(Map.of()));
    }

    /** Saves of each part whose text was chosen; or takes all of one side. */
    private void merge(Visit visit) {
        String id = visit.part("id");
        int basedOn = number(visit.field("based-on"));
        int theirs = number(visit.field("theirs"));
        if (visit.field("do").equals("theirs")) {
            store.recipes().dropDraft(id);
            visit.goOn("/compose/" + id);
            return;
        }
        RecipeForm mine = typed(visit);
        RecipeForm merged = visit.field("do").equals("mine")
                ? mine
                : new MergeRecipes(
                                base(id, basedOn),
                                mine,
                                room.work().form(room.work().revision(id, theirs)))
                        .merged(chosen(visit));
        save(visit, id, theirs, merged);
    }

    private static Map<String, MergeRecipes.Whose> chosen(Visit visit) {
        Map<String, MergeRecipes.Whose> chosen = new HashMap<>();
        String start = "whose.";
        visit.context().formParamMap().forEach((name, values) -> {
            if (name.startsWith(start)) {
                boolean theirs = values.get(0).equals("theirs");
                chosen.put(
                        name.substring(start.length()), theirs ? MergeRecipes.Whose.THEIRS : MergeRecipes.Whose.MINE);
            }
        });
        return chosen;
    }

    private void file(Visit visit) {
        String id = visit.part("id");
        String title = room.work().head(id).title();
        int number = number(visit.field("revision"));
        String text = number == 0
                ? room.work().text(id)
                : room.work().revision(id, number).text();
        visit.context()
                .contentType("application/yaml; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"" + StageShelf.fileName(title) + "\"")
                .result(new HandOut(store).file(text).getBytes(StandardCharsets.UTF_8));
    }
}
