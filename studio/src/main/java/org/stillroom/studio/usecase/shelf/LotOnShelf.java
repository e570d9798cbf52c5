package org.stillroom.studio.usecase.shelf;

import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.recipefile.SheetProblem;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.LotSheet;

/**
 * A lot together with the ingredient that it is.
 *
 * @param lot as it stands on the shelf
 * @param ingredient ready to be put in a recipe, with what is left as the amount at hand; null as long as problems stand
 * @param problems what must be known or put right before it can be counted
 * @param notes what was taken for granted in reading it
 */
public record LotOnShelf(Lot lot, @Nullable Ingredient ingredient, List<SheetProblem> problems, List<Finding> notes) {
    public LotOnShelf {
        problems = List.copyOf(problems);
        notes = List.copyOf(notes);
    }

    public String name() {
        return lot.sheet().name();
    }

    public Kind kind() {
        return ShelfLots.kind(lot.sheet().kind());
    }

    /** Returns what it is for what is finished, or null where it is an ingredient. */
    public @Nullable Packing packing() {
        return Packing.of(lot.sheet().kind());
    }

    /**
     * Returns the ingredient that it is under the name of a line that takes it, with all that its sheet says: its own name where that is
     * another, its label and its note. Nothing is said of how much there is.
     */
    public Ingredient usedAs(String line) {
        return worded(line, read());
    }

    /** Returns the same with what the sheet leaves out as the recipe asks for it; what the recipe notes stands beside. */
    public Ingredient usedAs(String line, Ingredient asked) {
        Ingredient read = read();
        Ingredient both = read.completedBy(asked);
        return worded(line, both.described(both.plant(), joined(". ", asked.note(), read.note())));
    }

    /** As long as problems stand, what its maker says of it still counts. */
    private Ingredient read() {
        LotSheet sheet = lot.sheet();
        return ingredient == null
                ? Ingredient.named(sheet.name(), kind())
                        .described(sheet.fields().get("plant"), null)
                : ingredient.withAtHand(null);
    }

    private Ingredient worded(String line, Ingredient is) {
        LotSheet sheet = lot.sheet();
        String other = sheet.name().strip().equalsIgnoreCase(line.strip()) ? null : sheet.name();
        return is.called(line)
                .described(joined(", ", other, is.plant()), joined(". ", is.note(), sheet.note(), sheet.label()));
    }

    private static @Nullable String joined(String between, @Nullable String... words) {
        String joined = Stream.of(words).filter(Objects::nonNull).distinct().collect(Collectors.joining(between));
        return joined.isEmpty() ? null : joined;
    }

    /** Returns whether anything can be taken from it: it is not set aside and not known to be empty. */
    public boolean isAvailable() {
        return !lot.sheet().setAside() && (!Stock.isKnown(lot) || lot.left() > 0);
    }
}
