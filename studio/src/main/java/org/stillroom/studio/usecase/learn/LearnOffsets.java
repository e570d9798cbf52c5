package org.stillroom.studio.usecase.learn;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.WeakHashMap;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.ingredient.Ingredient;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.batch.Book;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.make.ShowMake;
import org.stillroom.studio.usecase.shelf.LotOnShelf;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.ShelfLots;

/**
 * Tells what the batches of a studio say of its labels and droppers.
 *
 * <p>What went into a finished batch never changes and is kept, for the latest {@value #MOST_KEPT}; all else follows from the history, so
 * that an answer holds until something is added to that.
 */
public final class LearnOffsets {
    private static final int MOST_KEPT = 500;

    private static final Map<Store, LearnOffsets> OF_STORES = new WeakHashMap<>();

    private final Store store;
    private final Map<String, PouredBatch> poured = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, PouredBatch> eldest) {
            return size() > MOST_KEPT;
        }
    };

    private long latest = -1;
    private Learnt told = Learnt.NOTHING;

    private LearnOffsets(Store store) {
        this.store = store;
    }

    /** Returns what tells it of a studio, the same for all rooms. */
    public static LearnOffsets of(Store store) {
        synchronized (OF_STORES) {
            return OF_STORES.computeIfAbsent(store, LearnOffsets::new);
        }
    }

    /** Returns what they say. */
    public synchronized Learnt answer() {
        List<HistoryEntry> last = store.history().latest(Long.MAX_VALUE, 1);
        long now = last.isEmpty() ? 0 : last.get(0).id();
        if (now != latest) {
            told = learnt(Book.open(store));
            latest = now;
        }
        return told;
    }

    private Learnt learnt(Book book) {
        Map<String, PouredBatch> all = new HashMap<>();
        ShowMake show = new ShowMake(store);
        for (Batch batch : book.batches()) {
            all.put(batch.id(), poured.computeIfAbsent(batch.id(), id -> went(batch, show)));
        }
        Map<String, LotOnShelf> lots = new HashMap<>();
        new ShelfLots(MakersOunce.of(store.settings()))
                .of(store.lots().all())
                .forEach(lot -> lots.put(lot.lot().id(), lot));
        LearnLabels labels = new LearnLabels(id -> bottle(lots, id));
        for (int i = book.batches().size() - 1; i >= 0; i--) {
            Batch batch = book.batches().get(i);
            labels.add(
                    batch.number(),
                    all.getOrDefault(batch.id(), new PouredBatch(List.of())),
                    FirstReadings.of(book, batch.id()));
        }
        List<LearntDrop> drops = new LearnDrops(store, lots).answer(book, all);
        return labels.answer(drops);
    }

    private static PouredBatch went(Batch batch, ShowMake show) {
        return PouredBatch.of(show.answer(batch.make()), FinishMake.sheet(batch));
    }

    private static @Nullable Ingredient bottle(Map<String, LotOnShelf> lots, String id) {
        LotOnShelf lot = lots.get(id);
        return lot == null ? null : lot.ingredient();
    }
}
