package org.stillroom.studio.usecase.shelf;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Kind;
import org.stillroom.core.quantity.Amount;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.core.quantity.Price;
import org.stillroom.core.quantity.QuantityText;
import org.stillroom.core.quantity.Typed;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.recipe.Line;
import org.stillroom.core.recipe.Recipe;
import org.stillroom.studio.recipefile.SheetReader;
import org.stillroom.studio.recipefile.SheetReading;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.LotSheet;

/** Tells what stands on the shelf, each lot as the ingredient that it is, and which lots a recipe could take. */
public final class ShelfLots {
    /** Opened bottles first, the one opened longest ago before others; then those with the least in them. */
    private static final Comparator<LotOnShelf> TO_USE_FIRST = Comparator.<LotOnShelf, LocalDate>comparing(
                    lot -> Objects.requireNonNullElse(lot.lot().sheet().opened(), LocalDate.MAX))
            .thenComparing(lot -> lot.lot().left())
            .thenComparing(lot -> lot.lot().id());

    private final SheetReader reader;
    private final QuantityText quantities;

    /**
     * Makes a teller.
     *
     * @param ounce what "oz" means to the maker
     */
    public ShelfLots(OunceMeaning ounce) {
        this.reader = new SheetReader(ounce);
        this.quantities = new QuantityText(ounce);
    }

    /** Returns every lot that is an ingredient as what it is, in the order given. */
    public List<LotOnShelf> of(List<Lot> lots) {
        return lots.stream()
                .filter(lot -> Packing.of(lot.sheet().kind()) == null)
                .map(this::of)
                .toList();
    }

    /** Returns a lot as the ingredient that it is; empty bottles and their like are none. */
    public LotOnShelf of(Lot lot) {
        LotSheet sheet = lot.sheet();
        if (Packing.of(sheet.kind()) != null) {
            return new LotOnShelf(lot, null, List.of(), List.of());
        }
        SheetReading<Ingredient> reading = reader.ingredient(sheet.name(), sheet.kind(), sheet.fields());
        if (reading instanceof SheetReading.Understood<Ingredient> understood) {
            return new LotOnShelf(lot, stocked(understood.value(), lot), List.of(), understood.notes());
        }
        return new LotOnShelf(lot, null, ((SheetReading.Refused<Ingredient>) reading).problems(), List.of());
    }

    private Ingredient stocked(Ingredient read, Lot lot) {
        Typed<Price> price = read.price() == null ? price(lot.sheet()) : read.price();
        Typed<Amount> full = lot.sheet().full() > 0 ? Stock.full(lot).atHand() : null;
        return new Ingredient(
                read.name(),
                read.kind(),
                read.strength(),
                read.tolerance(),
                read.sugar(),
                read.acidity(),
                read.density(),
                read.drop(),
                price,
                Stock.isKnown(lot) ? Stock.left(lot).atHand() : null,
                read.pack() == null && price != null ? full : read.pack(),
                read.contains(),
                read.aroma(),
                read.plant(),
                read.ratio(),
                null,
                read.note());
    }

    /** Returns what was paid for a lot, where it is known for how much of it. */
    @Nullable
    Typed<Price> price(LotSheet sheet) {
        String paid = sheet.paid();
        if (paid == null || !(quantities.price(paid) instanceof Understanding.Understood<Price> understood)) {
            return null;
        }
        boolean ofUnknownSize = understood.typed().value().per() == null && sheet.full() == 0;
        return ofUnknownSize ? null : understood.typed();
    }

    /** Returns the lots that an ingredient of that name can be taken from, the one to use first at the front. */
    public static List<LotOnShelf> named(String name, List<LotOnShelf> lots) {
        return available(lots, lot -> Generics.same(name, lot.name()));
    }

    /** Returns the lots that an ingredient can be taken from, the one to use first at the front. */
    public static List<LotOnShelf> of(Ingredient ingredient, List<LotOnShelf> lots) {
        return available(lots, lot -> {
            Ingredient its = lot.ingredient();
            return its == null ? Generics.same(ingredient.name(), lot.name()) : Generics.same(ingredient, its);
        });
    }

    private static List<LotOnShelf> available(List<LotOnShelf> lots, Predicate<LotOnShelf> which) {
        return lots.stream()
                .filter(LotOnShelf::isAvailable)
                .filter(which)
                .sorted(TO_USE_FIRST)
                .toList();
    }

    /** Returns the lots that a line of a recipe can be taken from, by what the recipe lists under its name. */
    public static List<LotOnShelf> ofLine(Line line, Recipe recipe, List<LotOnShelf> lots) {
        return recipe.ingredients().stream()
                .filter(listed -> listed.name().equals(line.use()))
                .findFirst()
                .map(listed -> of(listed, lots))
                .orElseGet(() -> named(line.use(), lots));
    }

    /** Returns, for each line of a recipe by the name that it uses, the lots that it can be taken from; maybe none. */
    public static Map<String, List<LotOnShelf>> forRecipe(Recipe recipe, List<LotOnShelf> lots) {
        Map<String, List<LotOnShelf>> choices = new LinkedHashMap<>();
        for (Line line : recipe.lines()) {
            choices.put(line.use(), new ArrayList<>(ofLine(line, recipe, lots)));
        }
        return choices;
    }

    /** Returns the names of all kinds that a lot can be of. */
    public static List<String> kinds() {
        List<String> kinds = new ArrayList<>();
        for (Kind kind : Kind.values()) {
            kinds.add(kind.label());
        }
        for (Packing packing : Packing.values()) {
            kinds.add(packing.label());
        }
        return kinds;
    }

    /** Returns the kind of that name; one that no kind has is "other". */
    public static Kind kind(String label) {
        return Objects.requireNonNullElse(kindNamed(label), Kind.OTHER);
    }

    private static @Nullable Kind kindNamed(String label) {
        for (Kind kind : Kind.values()) {
            if (kind.label().equalsIgnoreCase(label.strip())) {
                return kind;
            }
        }
        return null;
    }
}
