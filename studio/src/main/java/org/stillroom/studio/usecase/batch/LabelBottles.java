package org.stillroom.studio.usecase.batch;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Bottling;
import org.stillroom.core.label.StatedStrength;
import org.stillroom.core.safety.Keeping;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.IngredientCost;
import org.stillroom.studio.usecase.TellLabel;
import org.stillroom.studio.usecase.shelf.MakersGrounds;

/** Tells what the labels of bottles say that were filled: by what is in them, with batch, number and day. */
public final class LabelBottles {
    /** Name of the setting that says at which address others reach this studio. */
    public static final String ADDRESS = "address";

    private static final double SERVING = 30.0;

    private final Store store;

    public LabelBottles(Store store) {
        this.store = store;
    }

    /**
     * What is told.
     *
     * @param label what all of them say
     * @param markings what each says besides, in the order of their numbers
     */
    public record Found(TellLabel.Found label, List<String> markings) {
        public Found {
            markings = List.copyOf(markings);
        }
    }

    /**
     * Returns the labels of bottles that were filled alike.
     *
     * @throws NoSuchElementException when the recipe cannot be worked out any more, so that its allergens are not known
     */
    public Found answer(Book book, Bottling bottling) {
        Batch batch = book.batch(bottling.batch());
        TellLabel.Found found = TellLabel.answer(
                new DrinkInVessel(store, book).of(batch, bottling.each()),
                MakersGrounds.of(store).with(TellKeeping.condition(bottling)),
                StatedStrength.LeftIn.NOTHING,
                SERVING,
                bottling.fill().millilitres(),
                IngredientCost.of(bottling.each().outlay()));
        TellLabel.Found label = store.settings()
                .value(ADDRESS)
                .map(address -> found.leadingTo(address + "/compose/" + batch.recipe()))
                .orElse(found);
        LocalDate day = bottling.at().atZone(ZoneId.systemDefault()).toLocalDate();
        List<String> markings = IntStream.rangeClosed(bottling.first(), bottling.last())
                .mapToObj(number -> "Batch " + batch.number() + ", bottle " + number + ", filled " + day
                        + until(label.keeping(), day))
                .toList();
        return new Found(label, markings);
    }

    private static String until(@Nullable Keeping keeping, LocalDate filled) {
        return keeping != null && keeping.isCold() ? ", best before " + filled.plusDays(keeping.days()) : "";
    }
}
