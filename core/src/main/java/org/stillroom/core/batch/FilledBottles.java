package org.stillroom.core.batch;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/** The bottles that were filled so far; what happens to some of them sets them apart from those filled with them. */
final class FilledBottles {
    private final List<Bottling> bottlings;

    /** @param bottlings in the order in which they were filled; is changed */
    FilledBottles(List<Bottling> bottlings) {
        this.bottlings = bottlings;
    }

    /** @param numbers of the bottles that it happens to, or null for all of the batch that are filled */
    void change(String batch, @Nullable BottleNumbers numbers, UnaryOperator<Bottling> how) {
        int wanted = numbers == null ? 1 : numbers.count();
        int found = 0;
        List<Bottling> after = new ArrayList<>();
        for (Bottling each : bottlings) {
            int from = numbers == null ? each.first() : Math.max(each.first(), numbers.first());
            int to = numbers == null ? each.last() : Math.min(each.last(), numbers.last());
            if (!each.batch().equals(batch) || from > to) {
                after.add(each);
                continue;
            }
            found += to - from + 1;
            if (from > each.first()) {
                after.add(each.part(each.first(), from - 1));
            }
            after.add(how.apply(each.part(from, to)));
            if (to < each.last()) {
                after.add(each.part(to + 1, each.last()));
            }
        }
        if (found < wanted) {
            throw new CannotHaveHappened(
                    "bottles-not-filled",
                    "of",
                    numbers == null
                            ? "No bottle of this batch was filled at that moment."
                            : "Bottles " + numbers.first() + " to " + numbers.last()
                                    + " of this batch were not all filled at that moment.",
                    "Choose bottles that are filled, and a moment after that.");
        }
        bottlings.clear();
        bottlings.addAll(after);
    }
}
