package org.stillroom.studio.usecase.batch;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Bottling;
import org.stillroom.core.label.Market;
import org.stillroom.core.label.StatedStrength;
import org.stillroom.core.safety.Keeping;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.IngredientCost;
import org.stillroom.studio.usecase.TellLabel;

/** Tells what the labels of bottles say that were filled: by what is in them, with batch, number and day. */
public final class LabelBottles {
    /** Name of the setting that says at which address others reach this studio. */
    public static final String ADDRESS = "address";

    /** Field of the entry by which bottles are filled. */
    static final String CODE = "code";

    /** More does not stand on a label. */
    static final int LONGEST_CODE = 30;

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
    public record Found(TellLabel.Found label, List<Marking> markings) {
        public Found {
            markings = List.copyOf(markings);
        }
    }

    /**
     * What tells a bottle from others.
     *
     * @param batch its number
     * @param bottle its number in the batch
     * @param lot what the maker calls all that was filled together, or batch and day
     * @param bestBefore the last day, where it has to stand in the cold, else null
     */
    public record Marking(
            int batch,
            int bottle,
            String lot,
            LocalDate filled,
            @Nullable LocalDate bestBefore) {}

    /**
     * Returns the labels of bottles that were filled alike.
     *
     * @param market where they are read
     * @throws NoSuchElementException when the recipe cannot be worked out any more, so that its allergens are not known
     */
    public Found answer(Book book, Bottling bottling, Market market) {
        Batch batch = book.batch(bottling.batch());
        DrinkInVessel.Drunk drunk = new DrinkInVessel(store, book).of(batch, bottling.each());
        TellLabel.Found found = TellLabel.answer(
                drunk.plan(),
                drunk.grounds().with(TellKeeping.condition(bottling)),
                new TellLabel.Asking(
                        market,
                        StatedStrength.LeftIn.NOTHING,
                        SERVING,
                        bottling.fill().millilitres()),
                IngredientCost.of(bottling.each().outlay()));
        TellLabel.Found label = store.settings()
                .value(ADDRESS)
                .map(address -> found.leadingTo(address + "/compose/" + batch.recipe()))
                .orElse(found);
        LocalDate day = bottling.at().atZone(ZoneId.systemDefault()).toLocalDate();
        String lot = lot(book, bottling);
        LocalDate until = until(label.keeping(), day);
        List<Marking> markings = IntStream.rangeClosed(bottling.first(), bottling.last())
                .mapToObj(number -> new Marking(batch.number(), number, lot, day, until))
                .toList();
        return new Found(label, markings);
    }

    private static @Nullable LocalDate until(@Nullable Keeping keeping, LocalDate filled) {
        return keeping != null && keeping.isCold() ? filled.plusDays(keeping.days()) : null;
    }

    /**
     * Returns the code of the lot that bottles belong to: as the maker named it when they were filled, else L, the number of the batch and
     * the day of filling, such as L3-20270503.
     */
    public static String lot(Book book, Bottling bottling) {
        String named = EventBodies.typed(book.entry(bottling.entry())).getOrDefault(CODE, "");
        LocalDate day = bottling.at().atZone(ZoneId.systemDefault()).toLocalDate();
        return named.isEmpty()
                ? "L" + book.batch(bottling.batch()).number() + "-" + day.format(DateTimeFormatter.BASIC_ISO_DATE)
                : named;
    }
}
