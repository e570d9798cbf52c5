package org.stillroom.studio.store;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.mapper.RowMapper;
import org.jspecify.annotations.Nullable;

/** Recipes with all their revisions, and the drafts of them. */
public final class Recipes {
    private static final RowMapper<Revision> REVISION = (row, context) -> new Revision(
            row.getString("recipe"),
            row.getInt("number"),
            Instant.parse(row.getString("at")),
            row.getString("title"),
            row.getString("content"),
            row.getString("note"));

    private static final String HEADS =
            "SELECT recipe.*, draft.recipe AS drafted FROM recipe" + " LEFT JOIN draft ON draft.recipe = recipe.id ";

    private static final RowMapper<RecipeHead> HEAD = (row, context) -> new RecipeHead(
            row.getString("id"),
            row.getString("title"),
            row.getInt("revision"),
            Instant.parse(row.getString("changed")),
            row.getInt("archived") == 1,
            row.getString("drafted") != null);

    private final Jdbi jdbi;

    Recipes(Jdbi jdbi) {
        this.jdbi = jdbi;
    }

    private record Titled(String title) {}

    private record Numbered(int revision, String title) {}

    /** Begins a recipe that has no revision yet, and returns its id. */
    public String create(String title, String request) {
        HistoryEntry entry = Ledger.once(jdbi, request, handle -> {
            String id = Ids.next();
            handle.createUpdate("INSERT INTO recipe (id, title, revision, changed) VALUES (:id, :title, 0, :now)")
                    .bind("id", id)
                    .bind("title", title)
                    .bind("now", Instant.now().toString())
                    .execute();
            return Ledger.write(handle, subject(id), "recipe.begun", new Titled(title), null, request);
        });
        return entry.subject().substring("recipe:".length());
    }

    /**
     * Saves a new revision on top of the one that the work began with.
     *
     * @param basedOn number of that revision, 0 for none
     * @param text the recipe file
     * @throws MissingException when there is no such recipe, or it was removed
     */
    public Saving save(String id, int basedOn, String title, String text, @Nullable String note, String request) {
        HistoryEntry entry;
        try {
            entry = Ledger.once(jdbi, request, handle -> saved(handle, id, basedOn, title, text, note, request));
        } catch (OvertakenException overtaken) {
            return new Saving.Overtaken(
                    latest(id).orElseThrow(() -> new MissingException("there is no revision of the recipe " + id)));
        }
        int number = Bodies.read(entry.body(), Numbered.class).revision();
        return new Saving.Saved(revision(id, number).orElseThrow());
    }

    private static HistoryEntry saved(
            Handle handle, String id, int basedOn, String title, String text, @Nullable String note, String request) {
        requireThere(handle, id);
        String now = Instant.now().toString();
        int moved = handle.createUpdate("UPDATE recipe SET revision = revision + 1, title = :title, changed = :now"
                        + " WHERE id = :id AND revision = :basedOn")
                .bind("title", title)
                .bind("now", now)
                .bind("id", id)
                .bind("basedOn", basedOn)
                .execute();
        if (moved == 0) {
            throw new OvertakenException();
        }
        handle.createUpdate("INSERT INTO revision (recipe, number, at, title, content, note)"
                        + " VALUES (:id, :number, :now, :title, :text, :note)")
                .bind("id", id)
                .bind("number", basedOn + 1)
                .bind("now", now)
                .bind("title", title)
                .bind("text", text)
                .bind("note", note)
                .execute();
        handle.createUpdate("DELETE FROM draft WHERE recipe = :id")
                .bind("id", id)
                .execute();
        return Ledger.write(handle, subject(id), "recipe.saved", new Numbered(basedOn + 1, title), null, request);
    }

    private static void requireThere(Handle handle, String id) {
        boolean missing = handle.createQuery("SELECT id FROM recipe WHERE id = :id AND removed = 0")
                .bind("id", id)
                .mapTo(String.class)
                .findOne()
                .isEmpty();
        if (missing) {
            throw new MissingException("there is no recipe " + id);
        }
    }

    public Optional<RecipeHead> head(String id) {
        return jdbi.withHandle(handle -> handle.createQuery(HEADS + "WHERE recipe.id = :id AND recipe.removed = 0")
                .bind("id", id)
                .map(HEAD)
                .findOne());
    }

    /** Returns the recipes that are at work, or those that were put away, latest first. */
    public List<RecipeHead> heads(boolean archived) {
        return jdbi.withHandle(handle -> handle.createQuery(
                        HEADS + "WHERE removed = 0 AND archived = :archived ORDER BY changed DESC, recipe.id")
                .bind("archived", archived ? 1 : 0)
                .map(HEAD)
                .list());
    }

    public Optional<Revision> latest(String id) {
        return jdbi.withHandle(
                handle -> handle.createQuery("SELECT * FROM revision WHERE recipe = :id ORDER BY number DESC LIMIT 1")
                        .bind("id", id)
                        .map(REVISION)
                        .findOne());
    }

    public Optional<Revision> revision(String id, int number) {
        return jdbi.withHandle(
                handle -> handle.createQuery("SELECT * FROM revision WHERE recipe = :id AND number = :number")
                        .bind("id", id)
                        .bind("number", number)
                        .map(REVISION)
                        .findOne());
    }

    /** Returns all revisions, latest first. */
    public List<Revision> revisions(String id) {
        return jdbi.withHandle(
                handle -> handle.createQuery("SELECT * FROM revision WHERE recipe = :id ORDER BY number DESC")
                        .bind("id", id)
                        .map(REVISION)
                        .list());
    }

    /** Puts a recipe away; it stays readable and can be taken out again. */
    public HistoryEntry archive(String id, String request) {
        return mark(id, "archived", 1, "recipe.archived", null, request);
    }

    public HistoryEntry unarchive(String id, String request) {
        return mark(id, "archived", 0, "recipe.taken-out", null, request);
    }

    /** Removes a recipe from all lists; {@link #bringBack} undoes it. */
    public HistoryEntry remove(String id, String request) {
        return mark(id, "removed", 1, "recipe.removed", null, request);
    }

    /**
     * Undoes a removal.
     *
     * @param removal id of the entry of the removal
     */
    public HistoryEntry bringBack(String id, long removal, String request) {
        return mark(id, "removed", 0, "recipe.brought-back", removal, request);
    }

    private HistoryEntry mark(String id, String column, int value, String kind, @Nullable Long undoes, String request) {
        return Ledger.once(jdbi, request, handle -> {
            int marked = handle.createUpdate("UPDATE recipe SET " + column + " = :value WHERE id = :id")
                    .bind("value", value)
                    .bind("id", id)
                    .execute();
            if (marked == 0) {
                throw new MissingException("there is no recipe " + id);
            }
            return Ledger.write(handle, subject(id), kind, Map.of(), undoes, request);
        });
    }

    /**
     * Keeps work that is not saved yet; it replaces what was kept before and is no entry of the history.
     *
     * @throws MissingException when there is no such recipe, or it was removed
     */
    public void keepDraft(String id, int basedOn, String body) {
        jdbi.useTransaction(handle -> {
            requireThere(handle, id);
            handle.createUpdate("INSERT INTO draft (recipe, based_on, at, body)"
                            + " VALUES (:id, :basedOn, :now, :body) ON CONFLICT (recipe) DO UPDATE"
                            + " SET based_on = excluded.based_on, at = excluded.at, body = excluded.body")
                    .bind("id", id)
                    .bind("basedOn", basedOn)
                    .bind("now", Instant.now().toString())
                    .bind("body", body)
                    .execute();
        });
    }

    public Optional<Draft> draft(String id) {
        return jdbi.withHandle(handle -> handle.createQuery("SELECT * FROM draft WHERE recipe = :id")
                .bind("id", id)
                .map((row, context) -> new Draft(
                        row.getString("recipe"),
                        row.getInt("based_on"),
                        Instant.parse(row.getString("at")),
                        row.getString("body")))
                .findOne());
    }

    public void dropDraft(String id) {
        jdbi.useHandle(handle -> handle.createUpdate("DELETE FROM draft WHERE recipe = :id")
                .bind("id", id)
                .execute());
    }

    private static String subject(String id) {
        return "recipe:" + id;
    }
}
