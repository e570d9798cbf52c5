package org.stillroom.studio.usecase.learn;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.stillroom.studio.store.Changing;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.LotSheet;
import org.stillroom.studio.store.Store;

/** Puts the label of a bottle right by what its batches tell, because somebody asked for it; an entry of the history like any change. */
public final class TakeOffset {
    private final Store store;
    private final LearnOffsets learn;

    public TakeOffset(Store store, LearnOffsets learn) {
        this.store = store;
        this.learn = learn;
    }

    /** What comes of it. */
    public sealed interface Outcome {
        /** The label says it now, in these fields. */
        record Taken(Lot lot, List<String> fields) implements Outcome {
            public Taken {
                fields = List.copyOf(fields);
            }
        }

        /** There is nothing to take: it is not clear, or the label says it already. */
        record Nothing() implements Outcome {}

        /** Somebody changed the bottle meanwhile. */
        record Overtaken(Lot current) implements Outcome {}
    }

    /** Returns the fields that would change, and to what; none where nothing is clear. */
    public static Map<String, String> fields(Learnt learnt, String lot) {
        Map<String, String> fields = new LinkedHashMap<>();
        learnt.offered(lot).ifPresent(label -> {
            fields.put(label.figure().field(), label.typed());
            fields.put("tolerance", label.tolerance());
        });
        learnt.offeredDrop(lot).ifPresent(drop -> fields.put("drop", drop.typed()));
        return fields;
    }

    /**
     * Takes what is clear of a bottle, or one field of it.
     *
     * @param field such as "strength" or "drop"; empty for all
     */
    public Outcome answer(String lot, String field, String request) {
        Map<String, String> fields = fields(learn.answer(), lot);
        fields.keySet()
                .removeIf(each -> !field.isEmpty()
                        && !each.equals(field)
                        && !(each.equals("tolerance") && !field.equals("drop")));
        Optional<Lot> before = store.lots().lot(lot);
        if (fields.isEmpty() || before.isEmpty()) {
            return new Outcome.Nothing();
        }
        LotSheet sheet = before.get().sheet();
        Map<String, String> all = new LinkedHashMap<>(sheet.fields());
        all.putAll(fields);
        Changing<Lot> changing = store.lots().change(lot, before.get().version(), sheet.withFields(all), request);
        return changing instanceof Changing.Overtaken<Lot> overtaken
                ? new Outcome.Overtaken(overtaken.current())
                : new Outcome.Taken(((Changing.Changed<Lot>) changing).now(), List.copyOf(fields.keySet()));
    }
}
