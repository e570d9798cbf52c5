package org.stillroom.studio.usecase.learn;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.stillroom.core.ingredient.Generics;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.core.ingredient.Resolution;
import org.stillroom.core.ingredient.Resolved;

/**
 * What the batches of a kitchen tell of its labels and droppers; offered, and never used by itself.
 *
 * @param labels of ingredients and of bottles
 * @param drops of droppers and of bottles
 * @param leftOut numbers of batches whose readings fit nothing that the others say
 * @param batches how many were measured and tell something
 */
public record Learnt(List<LearntLabel> labels, List<LearntDrop> drops, List<Integer> leftOut, int batches) {
    /** Nothing. */
    public static final Learnt NOTHING = new Learnt(List.of(), List.of(), List.of(), 0);

    public Learnt {
        labels = List.copyOf(labels);
        drops = List.copyOf(drops);
        leftOut = List.copyOf(leftOut);
    }

    /** Returns what is told of a bottle. */
    public List<LearntLabel> labelsOf(String lot) {
        return labels.stream().filter(label -> lot.equals(label.lot())).toList();
    }

    /** Returns what is told of drops out of a bottle. */
    public List<LearntDrop> dropsOf(String lot) {
        return drops.stream().filter(drop -> lot.equals(drop.lot())).toList();
    }

    /** Returns what would put the label of a recipe's ingredient right, of whatever bottle. */
    public Optional<LearntLabel> offered(Ingredient ingredient) {
        return Labelled.of(ingredient)
                .flatMap(labelled -> labels.stream()
                        .filter(label -> label.lot() == null
                                && label.figure() == labelled.figure()
                                && label.puts(labelled.value())
                                && Generics.same(label.ingredient(), ingredient.name()))
                        .min(Comparator.comparingDouble(label -> Math.abs(label.labelled() - labelled.value()))));
    }

    /** Returns what would put the drop of a recipe's ingredient right. */
    public Optional<LearntDrop> offeredDrop(Ingredient ingredient) {
        Resolved resolved = Resolution.of(ingredient).resolved();
        return resolved == null
                ? Optional.empty()
                : drops.stream()
                        .filter(drop -> drop.liquid() != null
                                && Generics.same(drop.liquid(), ingredient.name())
                                && drop.differsFrom(resolved.gramsPerDrop()))
                        .max(Comparator.comparingInt(LearntDrop::weighings));
    }

    /** Returns what would put the label of a bottle right. */
    public Optional<LearntLabel> offered(String lot) {
        return labelsOf(lot).stream()
                .filter(label -> label.standing() == LearntLabel.Standing.CLEAR)
                .findFirst();
    }

    /** Returns what would put the drop of a bottle right. */
    public Optional<LearntDrop> offeredDrop(String lot) {
        return dropsOf(lot).stream().filter(LearntDrop::isClear).findFirst();
    }
}
