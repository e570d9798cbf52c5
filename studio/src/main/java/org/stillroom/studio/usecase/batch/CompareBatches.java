package org.stillroom.studio.usecase.batch;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.batch.Cellar;
import org.stillroom.core.batch.Event;
import org.stillroom.core.batch.Flow;
import org.stillroom.core.batch.Offset;
import org.stillroom.core.batch.Outlay;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.plan.Asked;
import org.stillroom.core.plan.Correction;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.HistoryEntry;
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
     * @param measured what was measured first, by figure
     * @param doubt half-widths of what was measured, where they are known
     * @param cost of what went in
     * @param score the last one
     */
    public record Row(
            Batch batch,
            BatchSheet sheet,
            @Nullable Essentials planned,
            Essentials poured,
            Map<Asked, Double> measured,
            Map<Asked, Double> doubt,
            Outlay cost,
            OptionalDouble score) {
        public Row {
            measured = Map.copyOf(measured);
            doubt = Map.copyOf(doubt);
        }
    }

    /**
     * What is told.
     *
     * @param rows the batches, earliest first
     * @param offsets of what was measured against what was poured, where two batches or more tell one; never used by themselves
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
                    .map(row -> row.measured().get(asked) - Correction.of(asked, row.poured()))
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
        for (HistoryEntry entry : book.entries(batch.id())) {
            if (Book.event(entry) instanceof Event.Measured said && isFirst(book.cellar(), entry, said)) {
                said.figures().forEach(measured::putIfAbsent);
                said.doubt().forEach(doubt::putIfAbsent);
            }
        }
        Map<String, Double> cost = sheet.cost();
        OptionalDouble score = Notes.of(book, batch.id()).stream()
                .flatMap(note -> Stream.ofNullable(note.score()))
                .mapToDouble(each -> each)
                .reduce((earlier, later) -> later);
        return new Row(
                batch,
                sheet,
                planned,
                poured,
                measured,
                doubt,
                cost == null ? Outlay.UNKNOWN : new Outlay(cost, sheet.costKnown()),
                score);
    }

    /** Only what is measured in the vessel that the make left it in can be held against what was poured there. */
    private static boolean isFirst(Cellar cellar, HistoryEntry entry, Event.Measured said) {
        boolean untouched = cellar.flows(said.place().batch()).stream()
                .filter(flow -> flow.entry() > 0 && flow.entry() < entry.id())
                .allMatch(flow -> flow.kind() == Flow.Kind.MEASURED || flow.kind() == Flow.Kind.LOST);
        return cellar.counts(entry.id()) && untouched && said.place().vessel().equals(Book.FIRST_VESSEL);
    }
}
