package org.stillroom.studio.usecase.compose;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.studio.recipefile.FormReading;
import org.stillroom.studio.recipefile.RecipeForm;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.store.Draft;
import org.stillroom.studio.store.MissingException;
import org.stillroom.studio.store.RecipeHead;
import org.stillroom.studio.store.Recipes;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.store.Saving;

/**
 * Takes up a recipe where it was left, keeps what is typed, and saves it as a revision.
 *
 * <p>A revision is the text of a recipe file that is understood; whatever else is typed is kept as a draft. Where nothing that
 * the text says was changed, it is saved byte for byte.
 */
public final class WorkOnRecipe {
    /** Pages that are remembered after a save: more than are open at once. */
    private static final int MOST_PAGES = 500;

    private final Recipes recipes;
    private final OunceMeaning ounce;
    private final Set<String> saved = Collections.newSetFromMap(new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Boolean> eldest) {
            return size() > MOST_PAGES;
        }
    });

    /**
     * Makes it for a studio.
     *
     * @param ounce what "oz" means where a recipe does not say
     */
    public WorkOnRecipe(Recipes recipes, OunceMeaning ounce) {
        this.recipes = recipes;
        this.ounce = ounce;
    }

    /**
     * A recipe at work.
     *
     * @param form the draft, else the latest revision
     * @param basedOn number of the revision that the work began with, 0 for none
     * @param losesComments whether the file it began with has comments, which a save with changes drops
     */
    public record Work(RecipeHead head, RecipeForm form, int basedOn, boolean losesComments) {
        public String title() {
            String typed = form.typed("title").strip();
            return typed.isEmpty() ? head.title() : typed;
        }
    }

    /** What came of saving. */
    public sealed interface Kept {
        /** It is a revision now. */
        record Saved(Revision revision) implements Kept {}

        /** It is kept as a draft, since not everything is understood. */
        record NotYet(FormReading reading) implements Kept {}

        /** It is kept as a draft, since somebody saved meanwhile. */
        record Overtaken(Revision theirs) implements Kept {}
    }

    /**
     * Takes a recipe up.
     *
     * @throws MissingException when there is none
     */
    public Work open(String id) {
        RecipeHead head = head(id);
        Optional<Draft> draft = recipes.draft(id);
        int basedOn = draft.map(Draft::basedOn).orElse(head.revision());
        Optional<Revision> base = recipes.revision(id, basedOn);
        RecipeForm form = draft.map(kept -> DraftText.read(kept.body()))
                .or(() -> base.map(this::form))
                .orElseGet(() -> RecipeForm.of(Map.of("title", head.title())));
        boolean comments = base.filter(revision -> hasComments(revision.text())).isPresent();
        return new Work(head, form, basedOn, comments && draft.isPresent());
    }

    /** Returns the recipe's head. */
    public RecipeHead head(String id) {
        return recipes.head(id).orElseThrow(() -> new MissingException("There is no recipe " + id + "."));
    }

    /** Returns the form of a revision. */
    public RecipeForm form(Revision revision) {
        return new RecipeReader(ounce).read(revision.text()) instanceof RecipeReading.Understood understood
                ? RecipeForm.of(understood.recipe())
                : RecipeForm.of(Map.of("title", revision.title()));
    }

    private static boolean hasComments(String text) {
        return text.lines().anyMatch(line -> line.startsWith("#") || line.contains(" #"));
    }

    /** Begins a recipe, with what is typed as its draft, and returns its id. */
    public String begin(RecipeForm form, String request) {
        String id = recipes.create(form.typed("title").strip(), request);
        recipes.keepDraft(id, 0, DraftText.write(form));
        return id;
    }

    /**
     * Keeps what is typed as the draft.
     *
     * @param page name of the open page that it was typed in; once that has saved, what it sent before comes too late
     */
    public synchronized void keep(String id, int basedOn, RecipeForm form, String page) {
        if (!saved.contains(page)) {
            recipes.keepDraft(id, basedOn, DraftText.write(form));
        }
    }

    /**
     * Saves what is typed as a revision on top of the one that the work began with; what cannot be is kept as a draft.
     *
     * @param page name of the open page; pressing twice with the same fields saves once
     */
    public synchronized Kept save(String id, int basedOn, RecipeForm form, @Nullable String note, String page) {
        FormReading reading = form.read(ounce);
        if (reading.recipe() == null) {
            keep(id, basedOn, form, page);
            return new Kept.NotYet(reading);
        }
        String request = page + "." + Integer.toHexString(form.fields().hashCode());
        Saving saving = recipes.save(id, basedOn, reading.recipe().title(), text(id, basedOn, form), note, request);
        if (saving instanceof Saving.Saved done) {
            saved.add(page);
            return new Kept.Saved(done.revision());
        }
        keep(id, basedOn, form, page);
        return new Kept.Overtaken(((Saving.Overtaken) saving).current());
    }

    private String text(String id, int basedOn, RecipeForm form) {
        return recipes.revision(id, basedOn)
                .filter(before -> form(before).equals(form))
                .map(Revision::text)
                .orElseGet(form::text);
    }

    /** Returns a revision. */
    public Revision revision(String id, int number) {
        return recipes.revision(id, number)
                .orElseThrow(() -> new MissingException("There is no revision " + number + " of this recipe."));
    }

    /** Returns the latest revision as the text of a file; the draft of a recipe that has none. */
    public String text(String id) {
        return recipes.latest(id)
                .map(Revision::text)
                .orElseGet(() -> open(id).form().text());
    }

    /**
     * Makes an earlier revision the latest again, as a new one.
     *
     * @throws IllegalStateException when there is a draft, which would be lost
     */
    public Revision restore(String id, int number, String note, String request) {
        RecipeHead head = head(id);
        if (head.hasDraft()) {
            throw new IllegalStateException("What is typed is not saved, and would be lost."
                    + " Save it, or go back to revision " + head.revision() + ", and then restore.");
        }
        Revision earlier = revision(id, number);
        Saving saving = recipes.save(id, head.revision(), earlier.title(), earlier.text(), note, request);
        if (saving instanceof Saving.Saved saved) {
            return saved.revision();
        }
        throw new IllegalStateException("Somebody saved this recipe just now. Look at the versions again.");
    }

    /** Copies a recipe as it stands in its latest revision, and returns the copy's id. */
    public String copy(String id, String title, String request) {
        RecipeForm copy = recipes.latest(id)
                .map(this::form)
                .orElseGet(() -> open(id).form())
                .with("title", title);
        String made = recipes.create(title, request);
        if (copy.read(ounce).recipe() == null) {
            recipes.keepDraft(made, 0, DraftText.write(copy));
        } else {
            recipes.save(made, 0, title, copy.text(), null, request + "/revision");
        }
        return made;
    }
}
