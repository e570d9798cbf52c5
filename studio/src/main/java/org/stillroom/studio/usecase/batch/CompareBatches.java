package org.stillroom.studio.usecase.batch;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Event;
import org.stillroom.core.batch.Flow;
import org.stillroom.core.batch.Offset;
import org.stillroom.core.batch.Outlay;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.plan.Correction;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.make.BatchSheet;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.make.MakeState;
import org.stillroom.studio.usecase.make.ShowMake;

/** Sets the batches of one recipe side by side: planned, poured, measured, cost, tasted; and tells what this kitchen does again and again. */
public final class CompareBatches {
    private final Store store;

    public CompareBatches(Store store) {
        this.store = store;
    }

    /**
     * One batch.
     *
     * @param planned what was planned before anything was poured, or null when it cannot be planned any more
     * @param poured what follows from what was poured
     * @param measured what was measured first, by figure, before anything else came to it
     * @param doubt half-widths of what was measured, where they are known
     * @param reckoned what the log made of each figure when it was measured: losses on the way count
     * @param cost of what went in
     * @param scores notes that have one, earliest first
     */
    public record Row(
            Batch batch,
            BatchSheet sheet,
            @Nullable Essentials planned,
            Essentials poured,
            Map<Asked, Double> measured,
            Map<Asked, Double> doubt,
            Map<Asked, Double> reckoned,
            Outlay cost,
            List<Notes.Note> scores) {
        public Row {
            reckoned = Map.copyOf(reckoned);
            scores = List.copyOf(scores);
            measured = Map.copyOf(measured);
            doubt = Map.copyOf(doubt);
        }
    }

    /**
     * What is told.
     *
     * @param rows the batches, earliest first
     * @param offsets of what was measured against what was reckoned, where two batches or more tell one; never used by themselves
     */
    public record Found(List<Row> rows, Map<Asked, Offset> offsets) {
        public Found {
            rows = List.copyOf(rows);
        }
    }

    /** Returns the batches of a recipe side by side. */
    public Found answer(Book book, String recipe) {
        List<Row> rows = new ArrayList<>();
        ShowMake show = new ShowMake(store);
        for (Batch batch : book.batches()) {
            if (batch.recipe().equals(recipe)) {
                rows.add(0, row(book, batch, show));
            }
        }
        Map<Asked, Offset> offsets = new EnumMap<>(Asked.class);
        for (Asked asked : Asked.values()) {
            List<Double> differences = rows.stream()
                    .filter(row -> row.measured().containsKey(asked))
                    .map(row -> row.measured().get(asked) - row.reckoned().getOrDefault(asked, 0.0))
                    .toList();
            Offset.of(differences).ifPresent(offset -> offsets.put(asked, offset));
        }
        return new Found(rows, offsets);
    }

    private static Row row(Book book, Batch batch, ShowMake show) {
        BatchSheet sheet = FinishMake.sheet(batch);
        MakeState state = show.answer(batch.make());
        Essentials planned = state.parts().isEmpty() || !state.problems().isEmpty()
                ? null
                : Essentials.of(state.whole().planned().liquid().toGrams());
        Essentials poured = new Essentials(sheet.millilitres(), sheet.density(), sheet.strength(), sheet.sugar(), 0.0);
        Map<Asked, Double> measured = new EnumMap<>(Asked.class);
        Map<Asked, Double> doubt = new EnumMap<>(Asked.class);
        Map<Asked, Double> reckoned = new EnumMap<>(Asked.class);
        for (Flow flow : book.asMade(batch.id())) {
            if (Book.event(book.entry(flow.entry())) instanceof Event.Measured said) {
                Essentials before = Essentials.of(flow.out().toGrams());
                said.figures().forEach((asked, value) -> {
                    if (measured.putIfAbsent(asked, value) == null) {
                        reckoned.put(asked, Correction.of(asked, before));
                        Double half = said.doubt().get(asked);
                        if (half != null) {
                            doubt.put(asked, half);
                        }
                    }
                });
            }
        }
        Map<String, Double> cost = sheet.cost();
        List<Notes.Note> scores = Notes.of(book, batch.id()).stream()
                .filter(note -> note.score() != null)
                .toList();
        return new Row(
                batch,
                sheet,
                planned,
                poured,
                measured,
                doubt,
                reckoned,
                cost == null ? Outlay.UNKNOWN : new Outlay(cost, sheet.costKnown()),
                scores);
    }
}
