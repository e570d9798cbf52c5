package org.stillroom.studio.usecase.batch;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Wait;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.make.LogBodies;

/** Tells what waits until when: what the maker wrote down, and the rest that a recipe asks for. It follows from the log alone. */
public final class Waits {
    static final String WAITS = "batch.waits";
    static final String POSTPONED = "batch.postponed";
    static final String WAITED = "batch.waited";

    private Waits() {}

    record WaitsBody(Instant at, Waiting.What what, LocalDate from, LocalDate until, Map<String, String> typed) {}

    record PostponedBody(Instant at, long of, LocalDate until) {}

    record WaitedBody(Instant at, long of) {}

    /** Returns all that waits or has waited, what is ready first at the front. */
    public static List<Waiting> of(Book book, Store store, ZoneId zone) {
        Map<Long, Waiting> waits = new LinkedHashMap<>();
        for (Batch batch : book.batches()) {
            OptionalDouble days = restOfRecipe(batch, store);
            if (days.isPresent()) {
                LocalDate from = batch.made().atZone(zone).toLocalDate();
                LocalDate until = from.plusDays((long) Math.ceil(days.getAsDouble()));
                long id = -batch.number();
                waits.put(id, new Waiting(id, batch.id(), Waiting.What.MARRYING, from, until, "", false));
            }
        }
        for (HistoryEntry entry : book.log()) {
            if (!book.isUndone(entry)) {
                read(entry, waits);
            }
        }
        return waits.values().stream()
                .sorted(Comparator.comparing(Waiting::until).thenComparing(Waiting::id))
                .toList();
    }

    private static void read(HistoryEntry entry, Map<Long, Waiting> waits) {
        switch (entry.kind()) {
            case WAITS -> {
                WaitsBody said = LogBodies.read(entry.body(), WaitsBody.class);
                String batch = entry.subject().substring("batch:".length());
                waits.put(
                        entry.id(),
                        new Waiting(
                                entry.id(), batch, said.what(), said.from(), said.until(), Book.note(entry), false));
            }
            case POSTPONED -> {
                PostponedBody said = LogBodies.read(entry.body(), PostponedBody.class);
                waits.computeIfPresent(said.of(), (id, waiting) -> waiting.postponedTo(said.until()));
            }
            case WAITED -> {
                WaitedBody said = LogBodies.read(entry.body(), WaitedBody.class);
                waits.computeIfPresent(said.of(), (id, waiting) -> waiting.seenTo());
            }
            default -> {
                // about something else
            }
        }
    }

    /** Returns how many days the recipe of a batch asks it to rest. */
    private static OptionalDouble restOfRecipe(Batch batch, Store store) {
        Recipe recipe = recipe(batch, store);
        Typed<Wait> rest = recipe == null ? null : recipe.rest();
        return rest == null || rest.value().days() == 0.0
                ? OptionalDouble.empty()
                : OptionalDouble.of(rest.value().days());
    }

    /** Returns the recipe that a batch was made by, or null when it cannot be read any more. */
    static @Nullable Recipe recipe(Batch batch, Store store) {
        return store.recipes()
                .revision(batch.recipe(), FinishMake.sheet(batch).revision())
                .map(revision -> new RecipeReader(OunceMeaning.US_FLUID).read(revision.text()))
                .filter(RecipeReading.Understood.class::isInstance)
                .map(reading -> ((RecipeReading.Understood) reading).recipe())
                .orElse(null);
    }
}
