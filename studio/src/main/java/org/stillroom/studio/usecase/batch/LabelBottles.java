package org.stillroom.studio.usecase.batch;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Bottling;
import org.stillroom.core.label.StatedStrength;
import org.stillroom.core.liquid.Liquid;
import org.stillroom.core.quantity.Temperature;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Condition;
import org.stillroom.core.safety.Keeping;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Revision;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.PlanRecipe;
import org.stillroom.studio.usecase.TellLabel;
import org.stillroom.studio.usecase.WorkedPlan;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.make.OpenRevision;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import org.stillroom.studio.usecase.shelf.MakersOunce;

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
                worked(batch),
                Liquid.figures(bottling.each().contents(), Temperature.TWENTY_CELSIUS),
                StatedStrength.LeftIn.NOTHING,
                Condition.AS_MIXED,
                SERVING,
                bottling.fill().millilitres());
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

    private WorkedPlan worked(Batch batch) {
        Revision revision = store.recipes()
                .revision(batch.recipe(), FinishMake.sheet(batch).revision())
                .orElseThrow(() -> new NoSuchElementException("the recipe of this batch is not there"));
        OpenRevision.Outcome opened =
                OpenRevision.answer(store.recipes(), revision, Map.of(), MakersOunce.of(store.settings()));
        if (opened instanceof OpenRevision.Outcome.Opened found
                && PlanRecipe.answer(found.making(), null, MakersGrounds.of(store), Workings.NONE)
                        instanceof PlanRecipe.Outcome.Worked worked) {
            return worked.plan();
        }
        throw new NoSuchElementException("the recipe of this batch cannot be worked out any more");
    }
}
