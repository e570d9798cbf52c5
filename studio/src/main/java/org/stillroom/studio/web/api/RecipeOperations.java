package org.stillroom.studio.web.api;

import static org.stillroom.studio.web.api.Operation.Method.DELETE;
import static org.stillroom.studio.web.api.Operation.Method.GET;
import static org.stillroom.studio.web.api.Operation.Method.POST;
import static org.stillroom.studio.web.api.Operation.Method.PUT;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.plan.Slips;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.FindingFields;
import org.stillroom.studio.answer.desk.PlanWishes;
import org.stillroom.studio.recipefile.RecipeWriter;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.RecipeHead;
import org.stillroom.studio.store.Recipes;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.store.Saving;

/** Recipes and their revisions; every save is a new revision, and a save that comes too late is shown both. */
final class RecipeOperations {
    private static final String NOTE = "note";
    private static final String BASED_ON = "based_on";
    private static final String EXAMPLE = """
            {"recipe": "stillroom: 1\\ntitle: Quince, brought down\\ntarget: {volume: 700 ml, strength: 30 %}\\nlines:\\n\
              - {use: spirit 96 % vol, amount: free}\\n  - {use: water, amount: free}\\n", "note": "first try"}""";

    private final Recipes recipes;
    private final RecipeTexts texts;

    RecipeOperations(Recipes recipes, RecipeTexts texts) {
        this.recipes = recipes;
        this.texts = texts;
    }

    List<Operation> all() {
        Map<String, Object> one = Schemas.ref("Revision");
        Map<String, Object> done = Schemas.ref("Done");
        return List.of(
                Operation.of(GET, "/recipes", "recipes", "The recipes at work, latest first.", this::list)
                        .query("archived", "yes for those that were put away")
                        .answers(Schemas.group()
                                .with("recipes", Schemas.list(Schemas.ref("RecipeHead")))
                                .schema()),
                Operation.of(POST, "/recipes", "create_recipe", "Keeps a new recipe as its revision 1.", this::create)
                        .takes(written().schema(), EXAMPLE)
                        .answers(one),
                Operation.of(
                                GET,
                                "/recipes/{recipe}",
                                "recipe",
                                "The latest revision; its ETag is its number.",
                                this::latest)
                        .answers(one),
                Operation.of(
                                PUT,
                                "/recipes/{recipe}",
                                "save_recipe",
                                "Saves a new revision on top of the one that the work"
                                        + " began with; 409 shows both when somebody else has saved since.",
                                this::save)
                        .takes(
                                written()
                                        .maybe(
                                                BASED_ON,
                                                Schemas.count("number of that revision, where If-Match is not sent"))
                                        .schema(),
                                EXAMPLE)
                        .basedOn(BASED_ON)
                        .answers(one),
                Operation.of(
                                DELETE,
                                "/recipes/{recipe}",
                                "remove_recipe",
                                "Removes a recipe; its answer names the entry that" + " brings it back.",
                                call -> done(recipes.remove(head(call).id(), call.request())))
                        .answers(done),
                Operation.of(
                                POST,
                                "/recipes/{recipe}/bring-back/{entry}",
                                "bring_back_recipe",
                                "Brings a removed recipe back.",
                                call -> done(
                                        recipes.bringBack(call.part("recipe"), call.number("entry"), call.request())))
                        .answers(done),
                Operation.of(
                                GET,
                                "/recipes/{recipe}/revisions",
                                "revisions",
                                "All revisions, latest first.",
                                this::revisions)
                        .answers(Schemas.group()
                                .with("revisions", Schemas.list(one))
                                .schema()),
                Operation.of(GET, "/recipes/{recipe}/revisions/{revision}", "revision", "One revision.", this::revision)
                        .answers(one),
                Operation.of(
                                GET,
                                "/recipes/{recipe}/file",
                                "recipe_file",
                                "The latest revision as the recipe file that the command line reads, with what is said of its drink in remarks at its end.",
                                this::file)
                        .answersText("application/yaml"),
                Operation.of(
                                POST,
                                "/recipes/{recipe}/plan",
                                "plan_recipe",
                                "The plan of the latest revision.",
                                this::plan)
                        .takes(Schemas.question(PlanOperations.wishes().schema()), "{\"makes\": \"3 L\"}")
                        .answers(Schemas.ref("Plan")),
                Operation.of(
                                POST,
                                "/recipes/{recipe}/archive",
                                "archive_recipe",
                                "Puts a recipe away.",
                                call -> done(recipes.archive(head(call).id(), call.request())))
                        .answers(done),
                Operation.of(
                                POST,
                                "/recipes/{recipe}/take-out",
                                "take_out_recipe",
                                "Takes a recipe out again.",
                                call -> done(recipes.unarchive(head(call).id(), call.request())))
                        .answers(done));
    }

    private static Schemas.Group written() {
        return Schemas.group().with("recipe", Schemas.ref("Recipe")).maybe(NOTE, Schemas.text("about the change"));
    }

    private Reply list(Call call) {
        return Reply.of(new Fields()
                .put(
                        "recipes",
                        recipes.heads(call.query("archived").equals("yes")).stream()
                                .map(RecipeOperations::head)
                                .toList()));
    }

    private static Fields head(RecipeHead head) {
        return new Fields()
                .put("id", head.id())
                .put("title", head.title())
                .putCount("revision", head.revision())
                .put("changed", head.changed().toString())
                .put("archived", head.archived())
                .put("has_draft", head.hasDraft());
    }

    /** What a body wants to keep. */
    private record Written(
            String title, String text, @Nullable String note) {
        Fields fields() {
            return new Fields().put("title", title).put("text", text).put("note", note);
        }
    }

    private Written written(Body body) {
        String typed = body.recipe("recipe");
        String note = body.text(NOTE);
        if (!body.has("recipe")) {
            body.wrong("recipe-missing", "recipe", "There is no recipe.", "Give it as text or as an object.");
        }
        body.refuseIfAnyWrong();
        String text = Objects.requireNonNull(typed, "checked above");
        Recipe recipe = texts.recipe(text);
        return new Written(recipe.title(), body.isObject("recipe") ? RecipeWriter.write(recipe) : text, note);
    }

    private Reply create(Call call) throws Exception {
        Written written = written(call.body().knows(List.of("recipe", NOTE)));
        String request = call.request();
        String id = recipes.create(written.title(), request);
        return saved(recipes.save(id, 0, written.title(), written.text(), written.note(), request + "/saved"), written);
    }

    private Reply save(Call call) throws Exception {
        Body body = call.body().knows(List.of("recipe", NOTE, BASED_ON));
        int basedOn = call.basedOn(body, BASED_ON);
        String id = head(call).id();
        Written written = written(body);
        return saved(
                recipes.save(id, basedOn, written.title(), written.text(), written.note(), call.request()), written);
    }

    private Reply saved(Saving saving, Written written) {
        if (saving instanceof Saving.Overtaken overtaken) {
            throw Refused.overtaken(
                    "Somebody has saved this recipe since; revision "
                            + overtaken.current().number() + " is the latest.",
                    written.fields(),
                    fields(overtaken.current()));
        }
        Revision revision = ((Saving.Saved) saving).revision();
        Fields fields = fields(revision)
                .put(
                        "asked",
                        FindingFields.of(texts.asked(revision.text()).stream()
                                .map(Slips.Asked::finding)
                                .toList()));
        return Reply.of(fields).version(revision.number());
    }

    private static Reply shown(Revision revision) {
        return Reply.of(fields(revision)).version(revision.number());
    }

    private static Fields fields(Revision revision) {
        return new Fields()
                .put("recipe", revision.recipe())
                .putCount("revision", revision.number())
                .put("at", revision.at().toString())
                .put("title", revision.title())
                .put("text", revision.text())
                .put("note", revision.note());
    }

    private RecipeHead head(Call call) {
        String id = call.part("recipe");
        return recipes.head(id).orElseThrow(() -> Refused.notFound("There is no recipe \"" + id + "\"."));
    }

    private Revision latestOf(Call call) {
        String id = head(call).id();
        return recipes.latest(id)
                .orElseThrow(() -> Refused.notFound("The recipe \"" + id + "\" has a draft and no revision yet."));
    }

    private Reply latest(Call call) {
        return shown(latestOf(call));
    }

    private Reply revision(Call call) {
        String id = head(call).id();
        long number = call.number("revision");
        return shown(recipes.revision(id, (int) Math.min(number, Integer.MAX_VALUE))
                .orElseThrow(() -> Refused.notFound("This recipe has no revision " + number + ".")));
    }

    private Reply revisions(Call call) {
        return Reply.of(new Fields()
                .put(
                        "revisions",
                        recipes.revisions(head(call).id()).stream()
                                .map(RecipeOperations::fields)
                                .toList()));
    }

    private Reply file(Call call) {
        Revision revision = latestOf(call);
        return Reply.text("application/yaml; charset=utf-8", texts.handedOut(revision.text()))
                .version(revision.number())
                .header("Content-Disposition", "attachment; filename=\"" + revision.recipe() + ".yaml\"");
    }

    private Reply plan(Call call) throws Exception {
        Body body = call.body().knows(DeskOperations.keys(PlanWishes.PARTS));
        return PlanOperations.planned(texts.read(latestOf(call).text()), texts.grounds(), body);
    }

    /** Answers a change that leaves nothing to show but its entry in the history. */
    static Reply done(HistoryEntry entry) {
        return Reply.of(new Fields().putCount("entry", entry.id()).put("kind", entry.kind()));
    }

    /** Returns the schemas of what these take and answer. */
    static Map<String, Object> components() {
        return Map.of(
                "RecipeHead",
                Schemas.group()
                        .with("id", Schemas.text(""))
                        .with("title", Schemas.text(""))
                        .with("revision", Schemas.count("number of the latest; 0 as long as there is only a draft"))
                        .with("changed", Schemas.text("when, ISO 8601"))
                        .with("archived", Schemas.flag("whether it was put away"))
                        .with("has_draft", Schemas.flag("whether there is work that is not saved"))
                        .schema(),
                "Revision",
                Schemas.group()
                        .with("recipe", Schemas.text("id of the recipe"))
                        .with("revision", Schemas.count("1 for the first"))
                        .with("at", Schemas.text("when, ISO 8601"))
                        .with("title", Schemas.text(""))
                        .with("text", Schemas.text("the recipe file, as it was sent"))
                        .with("note", Schemas.orNull(Schemas.text("about the change")))
                        .maybe("asked", Schemas.list(Schemas.ref("Finding")))
                        .schema(),
                "Done",
                Schemas.group()
                        .with("entry", Schemas.count("id of the entry in the history; an undo names it"))
                        .with("kind", Schemas.text("what happened"))
                        .schema());
    }
}
