package org.stillroom.studio.web.compose;

import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.studio.store.MissingException;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.compose.Examples;
import org.stillroom.studio.usecase.compose.ImportRecipes;
import org.stillroom.studio.usecase.compose.StartRecipe;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Visit;

/** The list of recipes, and where one begins: from a bottle, from an example, from a file. */
final class BeginningPages {
    private final Store store;
    private final ComposeRoom room;

    BeginningPages(Store store, ComposeRoom room) {
        this.store = store;
        this.room = room;
    }

    void routes(Doors doors) {
        doors.get("/compose", this::list)
                .get("/compose/new", visit -> beginning(visit, ImportRecipes.Imported.NOTHING))
                .post("/compose/new", this::begin)
                .post("/compose/example", this::example)
                .post("/compose/import", this::bringIn);
    }

    private void list(Visit visit) {
        boolean archived = visit.field("archived").equals("yes");
        visit.page(visit.words().say("compose.title"), ComposeRoom.KEY)
                .style("compose.css")
                .show(
                        "compose/list.jte",
                        Map.of(
                                "heads", store.recipes().heads(archived),
                                "archived", archived,
                                "removed", visit.field("removed"),
                                "removal", visit.field("removal")));
    }

    private void beginning(Visit visit, ImportRecipes.Imported imported) {
        visit.page(visit.words().say("compose.newTitle"), ComposeRoom.KEY)
                .style("compose.css")
                .show(
                        "compose/new.jte",
                        Map.of(
                                "shelf", ShelfChoice.of(store).lots(visit.words()),
                                "bottle", visit.field("bottle"),
                                "builtIn", ShelfChoice.builtIn(),
                                "examples", Examples.all(),
                                "imported", imported));
    }

    private void begin(Visit visit) {
        String chosen = visit.field("lot").isBlank() ? visit.field("generic") : visit.field("lot");
        Ingredient bottle = ShelfChoice.of(store)
                .chosen(chosen)
                .orElseThrow(() -> new MissingException(visit.words().say("compose.noBottle", chosen)));
        String typed = visit.field("title").strip();
        String title = typed.isEmpty() ? visit.words().say("compose.from", bottle.name()) : typed;
        visit.goOn("/compose/" + room.work().begin(StartRecipe.from(title, bottle), visit.request()));
    }

    private void example(Visit visit) {
        ImportRecipes.Imported imported =
                imports().answer(Examples.withStages(visit.field("example")), visit.request());
        List<String> ids = imported.ids();
        visit.goOn(ids.isEmpty() ? "/compose/new" : "/compose/" + ids.get(ids.size() - 1));
    }

    private ImportRecipes imports() {
        return new ImportRecipes(store.recipes(), MakersOunce.of(store.settings()));
    }

    /** What is refused comes back with its text, to be put right in place. */
    private void bringIn(Visit visit) throws IOException {
        ImportRecipes.Imported imported = imports().answer(given(visit), visit.request());
        if (imported.refused().isEmpty() && !imported.asked().isEmpty()) {
            beginning(visit, imported);
        } else if (imported.refused().isEmpty()) {
            List<String> ids = imported.ids();
            visit.goOn(ids.isEmpty() ? "/compose/new" : "/compose/" + ids.get(ids.size() - 1));
        } else {
            visit.context().status(HttpStatus.UNPROCESSABLE_CONTENT);
            beginning(visit, imported);
        }
    }

    private static List<ImportRecipes.Given> given(Visit visit) throws IOException {
        List<ImportRecipes.Given> files = new ArrayList<>();
        for (UploadedFile upload : visit.context().uploadedFiles("file")) {
            try (InputStream content = upload.content()) {
                byte[] bytes = content.readAllBytes();
                if (bytes.length > 0) {
                    files.add(new ImportRecipes.Given(upload.filename(), bytes));
                }
            }
        }
        List<String> texts = visit.context().formParams("text");
        List<String> names = visit.context().formParams("name");
        for (int i = 0; i < texts.size(); i++) {
            if (!texts.get(i).isBlank()) {
                byte[] typed = texts.get(i).replace("\r\n", "\n").getBytes(StandardCharsets.UTF_8);
                files.add(new ImportRecipes.Given(i < names.size() ? names.get(i) : "", typed));
            }
        }
        return files;
    }
}
