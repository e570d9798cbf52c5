package org.stillroom.studio.usecase.shelf;

import static org.assertj.core.api.Assertions.fail;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.stillroom.core.quantity.OunceMeaning;
import org.stillroom.studio.recipefile.SheetProblem;
import org.stillroom.studio.recipefile.SheetReading;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.Lots.NewLot;

/** Bottles and jars for the tests, typed in as a maker would. */
public final class Bottles {
    private Bottles() {}

    /** Returns texts by key from pairs. */
    public static Map<String, String> typed(String... pairs) {
        Map<String, String> typed = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            typed.put(pairs[i], pairs[i + 1]);
        }
        return typed;
    }

    /** Returns what was understood of the pairs. */
    public static NewLot read(String... pairs) {
        SheetReading<NewLot> reading = ReadLot.answer(typed(pairs), OunceMeaning.US_FLUID);
        return reading instanceof SheetReading.Understood<NewLot> understood
                ? understood.value()
                : fail(problems(pairs).toString());
    }

    /** Returns what is wrong with the pairs. */
    static List<SheetProblem> problems(String... pairs) {
        return ReadLot.answer(typed(pairs), OunceMeaning.US_FLUID) instanceof SheetReading.Refused<NewLot> refused
                ? refused.problems()
                : List.of();
    }

    /** Returns a lot of that id. */
    static Lot lot(String id, String... pairs) {
        NewLot read = read(pairs);
        return new Lot(id, 1, read.sheet(), read.left());
    }

    public static LotOnShelf onShelf(String id, String... pairs) {
        return new ShelfLots(OunceMeaning.US_FLUID).of(lot(id, pairs));
    }
}
