package org.stillroom.studio.usecase.batch;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Wait;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.studio.recipefile.RecipeReader;
import org.stillroom.studio.recipefile.RecipeReading;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Make;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.make.LogBodies;
import org.stillroom.studio.usecase.make.MakeState;
import org.stillroom.studio.usecase.make.Resting;
import org.stillroom.studio.usecase.make.ShowMake;

/** Tells what waits until when: what the maker wrote down, and the rest that a recipe asks for. It follows from the log alone. */
public final class Waits {
    static final String WAITS = "batch.waits";
    static final String POSTPONED = "batch.postponed";
    static final String WAITED = "batch.waited";

    private Waits() {}

    record WaitsBody(Instant at, Waiting.What what, LocalDate from, LocalDate until, Map<String, String> typed) {}

    record PostponedBody(Instant at, long of, Waiting.@Nullable What what, LocalDate until) {}

    record WaitedBody(Instant at, long of, Waiting.@Nullable What what) {}

    /** Returns all that waits or has waited, what is ready first at the front. */
    public static List<Waiting> of(Book book, Store store, ZoneId zone) {
        Map<Long, Waiting> waits = new LinkedHashMap<>();
        for (Batch batch : book.batches()) {
            boolean isThere =
                    book.cellar().vessels(batch.id()).values().stream().anyMatch(held -> !held.isEmpty());
            if (isThere) {
                restOfRecipe(batch, store, zone).ifPresent(waiting -> waits.put(waiting.id(), waiting));
            }
        }
        for (HistoryEntry entry : book.log()) {
            if (!book.isUndone(entry)) {
                read(entry, waits);
            }
        }
        return Stream.concat(waits.values().stream(), makes(store, zone).stream())
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
                                entry.id(),
                                batch,
                                null,
                                said.what(),
                                said.from(),
                                said.until(),
                                Book.note(entry),
                                false));
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

    /** Returns the makes that stand at a rest. */
    private static List<Waiting> makes(Store store, ZoneId zone) {
        ShowMake show = new ShowMake(store);
        List<Waiting> makes = new ArrayList<>();
        for (Make make : store.makes().open()) {
            MakeState state = show.answer(make.id());
            Resting.of(state, zone)
                    .ifPresent(resting -> makes.add(new Waiting(
                            resting.entry(),
                            "",
                            new Waiting.Made(
                                    make.id(), state.partOf(resting.step()).title()),
                            resting.plants() ? Waiting.What.MACERATING : Waiting.What.MARRYING,
                            resting.from().atZone(zone).toLocalDate(),
                            resting.until(),
                            "",
                            false)));
        }
        return makes;
    }

    /** Returns the rest that the recipe of a batch asks, from when the last of it went in; nothing once it has stood so long. */
    private static Optional<Waiting> restOfRecipe(Batch batch, Store store, ZoneId zone) {
        Recipe recipe = recipe(batch, store);
        Typed<Wait> rest = recipe == null ? null : recipe.rest();
        if (recipe == null || rest == null || rest.value().days() == 0.0) {
            return Optional.empty();
        }
        Resting.Before before = Resting.before(store.makes().entries(batch.make()));
        Instant began = before.from() == null ? batch.made() : before.from();
        LocalDate from = began.atZone(zone).toLocalDate();
        LocalDate until = from.plusDays((long) Math.ceil(rest.value().days()));
        Instant seenTo = before.seenTo();
        boolean stood = seenTo != null && !seenTo.atZone(zone).toLocalDate().isBefore(until);
        return before.skipped() || stood
                ? Optional.empty()
                : Optional.of(new Waiting(
                        -batch.number(),
                        batch.id(),
                        null,
                        holdsPlants(recipe) ? Waiting.What.MACERATING : Waiting.What.MARRYING,
                        from,
                        until,
                        "",
                        false));
    }

    private static boolean holdsPlants(Recipe recipe) {
        return recipe.lines().stream()
                .anyMatch(line -> recipe.ingredients().stream()
                        .filter(ingredient -> ingredient.name().equals(line.use()))
                        .findFirst()
                        .map(Ingredient::kind)
                        .or(() -> Optional.ofNullable(Generics.find(line.use()))
                                .map(generic -> generic.ingredient().kind()))
                        .filter(Resting::isPlant)
                        .isPresent());
    }

    /** What an entry about a wait says: what waits, and until when, where it says that. */
    public record Said(Waiting.What what, @Nullable LocalDate until) {}

    /** Returns what an entry about a wait says, or null where it is about something else. */
    public static @Nullable Said said(HistoryEntry entry, Book book) {
        return switch (entry.kind()) {
            case WAITS -> {
                WaitsBody said = LogBodies.read(entry.body(), WaitsBody.class);
                yield new Said(said.what(), said.until());
            }
            case POSTPONED -> {
                PostponedBody said = LogBodies.read(entry.body(), PostponedBody.class);
                yield new Said(what(said.of(), said.what(), book), said.until());
            }
            case WAITED -> {
                WaitedBody said = LogBodies.read(entry.body(), WaitedBody.class);
                yield new Said(what(said.of(), said.what(), book), null);
            }
            default -> null;
        };
    }

    /** Entries of before say only of which wait they are. */
    private static Waiting.What what(long of, Waiting.@Nullable What said, Book book) {
        if (said != null) {
            return said;
        }
        return book.log().stream()
                .filter(entry -> entry.id() == of && entry.kind().equals(WAITS))
                .findFirst()
                .map(entry -> LogBodies.read(entry.body(), WaitsBody.class).what())
                .orElse(Waiting.What.MARRYING);
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
