package org.stillroom.studio.web.compose;

import io.javalin.http.HttpStatus;
import io.javalin.http.UploadedFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.quantity.AlcoholByVolume;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.recipe.Making;
import org.stillroom.core.reference.Finding;
import org.stillroom.planner.explore.Exploration;
import org.stillroom.planner.explore.Explorations;
import org.stillroom.planner.shopping.Shopping;
import org.stillroom.studio.recipefile.RecipeForm;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.store.Draft;
import org.stillroom.studio.store.RecipeHead;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.store.Saving;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.WorkedPlan;
import org.stillroom.studio.usecase.compose.CompareRecipes;
import org.stillroom.studio.usecase.compose.ComposeRecipe;
import org.stillroom.studio.usecase.compose.Composed;
import org.stillroom.studio.usecase.compose.EditRecipe;
import org.stillroom.studio.usecase.compose.StageShelf;
import org.stillroom.studio.usecase.compose.StartRecipe;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.ShelfLots;
import org.stillroom.studio.web.frame.Doors;
import org.stillroom.studio.web.frame.Room;
import org.stillroom.studio.web.frame.Visit;
import org.stillroom.studio.web.triangle.TriangleView;
import org.stillroom.studio.wording.Words;
import tools.jackson.databind.json.JsonMapper;

/** Recipes: the list, where to start, one recipe as it is typed, its versions. */
public final class ComposeRoom implements Room {
    private static final JsonMapper JSON = new JsonMapper();

    private final Store store;

    public ComposeRoom(Store store) {
        this.store = store;
    }

    @Override
    public String key() {
        return "compose";
    }

    @Override
    public String path() {
        return "/compose";
    }

    @Override
    public String state(Words words) {
        return words.say("compose.state", "" + store.recipes().heads(false).size());
    }

    @Override
    public void routes(Doors doors) {
        doors.get("/compose", this::list)
                .get("/compose/new", this::beginning)
                .post("/compose/new", this::begin)
                .post("/compose/import", this::imported)
                .get("/compose/{id}", this::show)
                .post("/compose/{id}", this::press)
                .post("/compose/{id}/live", this::live)
                .get("/compose/{id}/file", this::file)
                .get("/compose/{id}/what-if", this::whatIf)
                .get("/compose/{id}/swap", this::swap)
                .post("/compose/{id}/take-theirs", this::takeTheirs);
        new VersionPages(store, this).routes(doors);
    }

    OunceMeaning ounce() {
        return MakersOunce.of(store.settings());
    }

    ComposeRecipe composer() {
        return new ComposeRecipe(new StageShelf(store.recipes(), ounce()), ounce());
    }

    /** Returns the form of a recipe file's text; of one that is none, a form with its title alone. */
    RecipeForm form(Revision revision) {
        return new RecipeReader(ounce()).read(revision.text()) instanceof RecipeReading.Understood understood
                ? RecipeForm.of(understood.recipe())
                : RecipeForm.of(Map.of("title", revision.title()));
    }

    /** Returns the form at work: the draft, else the latest revision. */
    private RecipeForm form(String id) {
        return store.recipes()
                .draft(id)
                .map(draft -> RecipeForm.of(fields(draft.body())))
                .or(() -> store.recipes().latest(id).map(this::form))
                .orElseGet(() -> RecipeForm.of(Map.of("title", requireHead(id).title())));
    }

    @SuppressWarnings("unchecked") // JSON of an object of texts, written below
    private static Map<String, String> fields(String body) {
        return (Map<String, String>) JSON.readValue(body, LinkedHashMap.class);
    }

    private RecipeHead requireHead(String id) {
        return store.recipes().head(id).orElseThrow(() -> new NoSuchElementException("There is no recipe " + id + "."));
    }

    private void list(Visit visit) {
        boolean archived = visit.field("archived").equals("yes");
        visit.page(visit.words().say("compose.title"), key())
                .style("compose.css")
                .show(
                        "compose/list.jte",
                        Map.of(
                                "heads", store.recipes().heads(archived),
                                "archived", archived,
                                "removed", visit.field("removed"),
                                "removal", visit.field("removal")));
    }

    private List<LotOnShelf> lots() {
        return new ShelfLots(ounce()).of(store.lots().all());
    }

    private static List<String> genericNames() {
        return Generics.list().stream()
                .map(generic -> generic.ingredient().name())
                .toList();
    }

    private Map<String, String> shelf(Words words) {
        Map<String, String> shelf = new LinkedHashMap<>();
        for (LotOnShelf lot : lots()) {
            if (lot.isAvailable() && lot.ingredient() != null) {
                String label = lot.lot().sheet().label();
                String strength = lot.lot().sheet().fields().getOrDefault("strength", "");
                shelf.put(
                        lot.lot().id(),
                        lot.name() + (strength.isEmpty() ? "" : ", " + strength) + (label == null ? "" : ", " + label)
                                + ", "
                                + words.say(
                                        "compose.left",
                                        words.plain(lot.lot().left()),
                                        lot.lot().sheet().unit()));
            }
        }
        return shelf;
    }

    private void beginning(Visit visit) {
        visit.page(visit.words().say("compose.newTitle"), key())
                .style("compose.css")
                .show(
                        "compose/new.jte",
                        Map.of(
                                "shelf", shelf(visit.words()),
                                "generics", genericNames(),
                                "findings", List.of(),
                                "chosen", visit.field("bottle")));
    }

    private void begin(Visit visit) {
        String lot = visit.field("lot");
        RecipeForm form = lots().stream()
                .filter(each -> each.lot().id().equals(lot))
                .findFirst()
                .map(LotOnShelf::ingredient)
                .map(ingredient -> StartRecipe.from(ingredient.name(), StartRecipe.fieldsOf(ingredient)))
                .orElseGet(() -> StartRecipe.from(
                        visit.field("generic").isBlank() ? "spirit 40 %" : visit.field("generic"), Map.of()));
        String typed = visit.field("title").strip();
        RecipeForm titled = typed.isEmpty() ? form : form.with("title", typed);
        String id = store.recipes().create(titled.typed("title"), visit.request());
        store.recipes().keepDraft(id, 0, JSON.writeValueAsString(titled.fields()));
        visit.goOn("/compose/" + id);
    }

    /** Takes files in: each that is a recipe becomes one, byte for byte; those that are none come back with what is wrong. */
    private void imported(Visit visit) throws IOException {
        List<Finding> problems = new ArrayList<>();
        String last = "";
        int number = 0;
        for (UploadedFile upload : visit.context().uploadedFiles("file")) {
            number++;
            byte[] bytes = upload.content().readAllBytes();
            RecipeReading reading = new RecipeReader(ounce()).read(bytes);
            if (reading instanceof RecipeReading.Understood understood) {
                String title = understood.recipe().title();
                String id = store.recipes().create(title, visit.request() + "/" + number);
                store.recipes()
                        .save(
                                id,
                                0,
                                title,
                                new String(bytes, StandardCharsets.UTF_8),
                                null,
                                visit.request() + "/s" + number);
                last = id;
            } else {
                problems.addAll(((RecipeReading.Refused) reading).problems());
            }
        }
        if (problems.isEmpty()) {
            visit.goOn(last.isEmpty() ? "/compose" : "/compose/" + last);
            return;
        }
        visit.context().status(422);
        visit.page(visit.words().say("compose.newTitle"), key())
                .style("compose.css")
                .show(
                        "compose/new.jte",
                        Map.of(
                                "shelf", shelf(visit.words()),
                                "generics", genericNames(),
                                "findings", problems));
    }

    private void show(Visit visit) {
        String id = visit.part("id");
        RecipeHead head = requireHead(id);
        RecipeForm form = form(id);
        int basedOn = store.recipes().draft(id).map(Draft::basedOn).orElse(head.revision());
        ComposeView view = view(id, basedOn, head.hasDraft(), form, visit.words());
        visit.page(form.typed("title").isBlank() ? head.title() : form.typed("title"), key())
                .style("compose.css")
                .script("triangle.js")
                .script("compose.js")
                .show(
                        "compose/compose.jte",
                        Map.of("view", view, "saved", visit.field("saved").equals("yes")));
    }

    ComposeView view(String id, int basedOn, boolean hasDraft, RecipeForm form, Words words) {
        Composed composed = composer().answer(form);
        WorkedPlan worked = composed.worked();
        List<String> names = new ArrayList<>();
        for (int i = 0; i < form.count("ingredients"); i++) {
            names.add(form.typed("ingredients." + i + ".name"));
        }
        names.addAll(genericNames());
        return new ComposeView(
                id,
                basedOn,
                hasDraft,
                composed,
                worked == null ? null : TriangleView.of(worked.plan(), words),
                worked == null ? null : Shopping.of(worked.plan()),
                names,
                shelf(words),
                words);
    }

    private static RecipeForm typed(Visit visit) {
        Map<String, String> fields = new LinkedHashMap<>();
        visit.context().formParamMap().forEach((name, values) -> fields.put(name, values.get(0)));
        return RecipeForm.of(fields);
    }

    private static int basedOn(Visit visit) {
        String typed = visit.field("based-on");
        return typed.matches("\\d{1,9}") ? Integer.parseInt(typed) : 0;
    }

    /** Keeps what is typed and shows what comes of it. */
    private void live(Visit visit) {
        String id = visit.part("id");
        requireHead(id);
        RecipeForm form = typed(visit);
        store.recipes().keepDraft(id, basedOn(visit), JSON.writeValueAsString(form.fields()));
        ComposeView view = view(id, basedOn(visit), true, form, visit.words());
        visit.part(
                "compose/form.jte",
                Map.of("view", view, "token", visit.field("token"), "request", visit.field("request")));
    }

    private void press(Visit visit) {
        String id = visit.part("id");
        requireHead(id);
        RecipeForm form = typed(visit);
        String asked = visit.field("do");
        if (asked.equals("save")) {
            save(visit, id, form);
            return;
        }
        if (asked.equals("discard")) {
            store.recipes().dropDraft(id);
            visit.goOn("/compose/" + id);
            return;
        }
        RecipeForm after = asked.equals("add-lot")
                ? plusLot(form, visit.field("lot"))
                : EditRecipe.after(form, asked, composer().answer(form).worked());
        store.recipes().keepDraft(id, basedOn(visit), JSON.writeValueAsString(after.fields()));
        visit.goOn("/compose/" + id);
    }

    /** Puts a lot of the shelf in: what it is, under its name, and a line that uses it. */
    private RecipeForm plusLot(RecipeForm form, String id) {
        return lots().stream()
                .filter(lot -> lot.lot().id().equals(id))
                .findFirst()
                .map(LotOnShelf::ingredient)
                .map(ingredient -> withIngredient(form, ingredient)
                        .plus("lines", Map.of("use", ingredient.name(), "amount", "free")))
                .orElse(form);
    }

    static RecipeForm withIngredient(RecipeForm form, Ingredient ingredient) {
        for (int i = 0; i < form.count("ingredients"); i++) {
            if (Generics.same(form.typed("ingredients." + i + ".name"), ingredient.name())) {
                return form.minus("ingredients", i).plus("ingredients", StartRecipe.fieldsOf(ingredient));
            }
        }
        return form.plus("ingredients", StartRecipe.fieldsOf(ingredient));
    }

    private void save(Visit visit, String id, RecipeForm form) {
        String title = form.typed("title").isBlank()
                ? requireHead(id).title()
                : form.typed("title").strip();
        String note = visit.field("revision-note").isBlank()
                ? null
                : visit.field("revision-note").strip();
        Saving saving =
                store.recipes().save(id, basedOn(visit), title, text(id, basedOn(visit), form), note, visit.request());
        if (saving instanceof Saving.Saved) {
            visit.goOn("/compose/" + id + "?saved=yes");
            return;
        }
        Revision theirs = ((Saving.Overtaken) saving).current();
        store.recipes().keepDraft(id, basedOn(visit), JSON.writeValueAsString(form.fields()));
        visit.context().status(HttpStatus.CONFLICT);
        ComposeRecipe composer = composer();
        visit.page(visit.words().say("compose.overtakenTitle"), key())
                .style("compose.css")
                .show(
                        "compose/overtaken.jte",
                        Map.of(
                                "id", id,
                                "mine", form,
                                "theirs", theirs,
                                "compared", CompareRecipes.of(composer.answer(form(theirs)), composer.answer(form))));
    }

    /** Returns the text to keep: byte for byte the one before where nothing was changed. */
    private String text(String id, int basedOn, RecipeForm form) {
        return store.recipes()
                .revision(id, basedOn)
                .filter(before -> form(before).equals(form))
                .map(Revision::text)
                .orElseGet(form::text);
    }

    private void takeTheirs(Visit visit) {
        store.recipes().dropDraft(visit.part("id"));
        visit.goOn("/compose/" + visit.part("id"));
    }

    private void file(Visit visit) {
        String id = visit.part("id");
        RecipeHead head = requireHead(id);
        String number = visit.field("revision");
        String text = (number.matches("\\d{1,9}")
                        ? store.recipes().revision(id, Integer.parseInt(number))
                        : store.recipes().latest(id))
                .map(Revision::text)
                .orElseGet(() -> form(id).text());
        visit.context()
                .contentType("application/yaml; charset=utf-8")
                .header("Content-Disposition", "attachment; filename=\"" + StageShelf.fileName(head.title()) + "\"")
                .result(text.getBytes(StandardCharsets.UTF_8));
    }

    /** Shows the recipe with spirits of other strengths. */
    private void whatIf(Visit visit) {
        String id = visit.part("id");
        Composed composed = composer().answer(form(id));
        List<AlcoholByVolume> strengths = new ArrayList<>();
        String typed = visit.field("strengths").isBlank() ? "40 50 63 75 96" : visit.field("strengths");
        for (String each : typed.replace("%", " ").strip().split("[\\s;]+", -1)) {
            if (each.matches("\\d{1,2}([.,]\\d{1,2})?|100")) {
                strengths.add(AlcoholByVolume.at20(Double.parseDouble(each.replace(',', '.'))));
            }
        }
        WorkedPlan worked = composed.worked();
        List<Exploration.Row> rows = worked == null
                ? List.of()
                : Explorations.spirits(Making.alone(worked.plan().recipe()), strengths)
                        .rows();
        visit.page(visit.words().say("compose.whatIf"), key())
                .style("compose.css")
                .show("compose/whatif.jte", Map.of("id", id, "typed", typed, "rows", rows));
    }

    /** Shows a recipe with one line's ingredient exchanged, beside the recipe as it is. */
    private void swap(Visit visit) {
        String id = visit.part("id");
        RecipeForm form = form(id);
        String line = visit.field("line");
        String with = visit.field("with");
        int at = line.matches("\\d{1,3}") ? Integer.parseInt(line) : 0;
        RecipeForm swapped = swapped(form, at, with);
        ComposeRecipe composer = composer();
        visit.page(visit.words().say("compose.swapTitle"), key())
                .style("compose.css")
                .show(
                        "compose/swap.jte",
                        Map.of(
                                "id", id,
                                "form", form,
                                "line", at,
                                "with", with,
                                "shelf", shelf(visit.words()),
                                "generics", genericNames(),
                                "swapped", swapped,
                                "basedOn",
                                        store.recipes()
                                                .draft(id)
                                                .map(Draft::basedOn)
                                                .orElse(requireHead(id).revision()),
                                "compared", CompareRecipes.of(composer.answer(form), composer.answer(swapped))));
    }

    private RecipeForm swapped(RecipeForm form, int at, String with) {
        if (with.isBlank()) {
            return form;
        }
        String field = "lines." + at + ".use";
        return lots().stream()
                .filter(lot -> lot.lot().id().equals(with))
                .findFirst()
                .map(LotOnShelf::ingredient)
                .map(ingredient -> withIngredient(form, ingredient).with(field, ingredient.name()))
                .orElseGet(() -> form.with(field, with));
    }
}
