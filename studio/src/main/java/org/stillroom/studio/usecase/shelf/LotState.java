package org.stillroom.studio.usecase.shelf;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.studio.store.Lot;

/** What is to be known about a lot at a glance; most have nothing. */
public sealed interface LotState {
    /** Less than this part of what it held is little. Our own choice. */
    double LITTLE = 0.15;

    /** It is kept and not to be used. */
    record SetAside() implements LotState {}

    /** It does not say enough to be put into a recipe. */
    record NotKnown(String what) implements LotState {}

    /**
     * There is nothing left.
     *
     * @param recipes how many recipes take it
     */
    record Empty(int recipes) implements LotState {}

    /**
     * All lots of it together hold less than a recipe takes.
     *
     * @param title of the recipe
     * @param enoughForMillilitres how much of it could be made, mL
     */
    record ShortFor(String title, double enoughForMillilitres) implements LotState {}

    /**
     * Little is left of what it held.
     *
     * @param part of it, 0 to 1
     */
    record Little(double part) implements LotState {}

    /**
     * Returns what is to be known about a lot.
     *
     * @param lots all of the shelf
     * @param taken what the recipes take
     */
    static Optional<LotState> of(LotOnShelf lot, List<LotOnShelf> lots, List<TakenBy> taken) {
        Lot it = lot.lot();
        if (it.sheet().setAside()) {
            return Optional.of(new SetAside());
        }
        if (lot.ingredient() == null && lot.packing() == null) {
            return Optional.of(new NotKnown(
                    lot.problems().isEmpty()
                            ? ""
                            : lot.problems().get(0).finding().message()));
        }
        if (!Stock.isKnown(it)) {
            return Optional.empty();
        }
        List<TakenBy> of = RecipesTaking.of(lot.name(), taken);
        if (it.left() <= 0) {
            return Optional.of(
                    new Empty((int) of.stream().map(TakenBy::recipe).distinct().count()));
        }
        Optional<LotState> shortage = shortage(lot, lots, of);
        double part = it.sheet().full() > 0 ? it.left() / it.sheet().full() : 1.0;
        return shortage.isPresent() || part >= LITTLE ? shortage : Optional.of(new Little(part));
    }

    private static Optional<LotState> shortage(LotOnShelf lot, List<LotOnShelf> lots, List<TakenBy> taken) {
        String unit = lot.lot().sheet().unit();
        double together = lots.stream()
                .filter(LotOnShelf::isAvailable)
                .filter(other -> Generics.same(other.name(), lot.name()))
                .filter(other -> other.lot().sheet().unit().equals(unit))
                .mapToDouble(other -> other.lot().left())
                .sum();
        return taken.stream()
                .filter(by -> by.in(unit).orElse(0.0) > together * (1 + 1e-9))
                .max(Comparator.comparingDouble(by -> by.in(unit).orElse(0.0)))
                .map(by -> new ShortFor(
                        by.title(),
                        together
                                / by.in(unit).orElseThrow()
                                * by.makesMillilitres().orElse(0.0)));
    }
}
