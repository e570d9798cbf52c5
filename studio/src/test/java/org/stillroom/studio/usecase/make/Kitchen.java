package org.stillroom.studio.usecase.make;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Lot;
import org.stillroom.studio.store.LotSheet;
import org.stillroom.studio.store.Lots;
import org.stillroom.studio.store.Store;

/** A real studio with a recipe to make. */
public final class Kitchen implements AutoCloseable {
    public static final String BAY = """
            stillroom: 1
            title: Bay leaf and juniper
            target: {volume: 1 L, strength: 28 %, sugar: 180 g/L}
            measures:
              - {name: scale, kind: scale, marks: 0.1 g, holds: 3 kg}
              - {name: dropper, kind: dropper}
            ingredients:
              - {name: neutral spirit, kind: spirit, strength: 96 %}
              - {name: juniper essence, kind: essence, strength: 90 %, drop: 0.02 g}
            lines:
              - {use: neutral spirit, amount: free}
              - {use: juniper essence, dose: 24 drops/L, with: dropper}
              - {use: white sugar, amount: free}
              - {use: water, amount: free}
            steps:
              - Steep with a peel for 20 minutes, then take it out.
            """;

    final Path folder;
    public Store store;

    public Kitchen(Path folder) {
        this.folder = folder;
        this.store = Store.open(new DataFolder(folder));
    }

    public static String request() {
        return UUID.randomUUID().toString();
    }

    /** Saves a recipe and returns its id. */
    public String saved(String title, String text) {
        String id = store.recipes().create(title, request());
        store.recipes().save(id, 0, title, text, null, request());
        return id;
    }

    public Lot lot(String name, String kind, Map<String, String> fields, double left, String unit) {
        return lot(name, kind, fields, "lot of " + left, 1000, left, unit, null);
    }

    /** Puts pieces on the shelf, as many as were bought for a price. */
    public Lot lot(String name, String kind, Map<String, String> fields, double left, String unit, String paid) {
        return lot(name, kind, fields, null, left, left, unit, paid);
    }

    private Lot lot(
            String name,
            String kind,
            Map<String, String> fields,
            @Nullable String label,
            double full,
            double left,
            String unit,
            @Nullable String paid) {
        LotSheet sheet = new LotSheet(
                name, kind, fields, label, null, full, unit, null, paid, null, null, null, null, false, null);
        return store.lots()
                .add(List.of(new Lots.NewLot(sheet, left)), request())
                .get(0);
    }

    public String begun(String recipe, BeginMake.Wish wish) {
        BeginMake.Outcome outcome = new BeginMake(store).answer(recipe, 1, wish, request());
        if (outcome instanceof BeginMake.Outcome.Begun begun) {
            return begun.make().id();
        }
        throw new AssertionError(outcome.toString());
    }

    public String begun(String recipe) {
        return begun(recipe, new BeginMake.Wish("", false, Map.of(), Map.of()));
    }

    public MakeState state(String make) {
        return new ShowMake(store).answer(make);
    }

    RecordStep.Outcome tick(String make, String step) {
        MakeState state = state(make);
        return new RecordStep(store).done(state, state.step(step), state.seen(), request());
    }

    public RecordStep.Outcome pour(String make, String step, String typed) {
        return pour(make, step, typed, RecordStep.Reading.AMOUNT);
    }

    RecordStep.Outcome pour(String make, String step, String typed, RecordStep.Reading reading) {
        MakeState state = state(make);
        return new RecordStep(store).poured(state, state.step(step), typed, reading, state.seen(), request());
    }

    /** Does everything that is still to come as it is asked. */
    public void finishAsAsked(String make) {
        for (MakeStep here = state(make).here();
                here != null;
                here = state(make).here()) {
            tick(make, here.id());
        }
    }

    /** Closes the studio and opens it again, as after a restart. */
    public void restart() {
        store.close();
        store = Store.open(new DataFolder(folder));
    }

    @Override
    public void close() {
        store.close();
    }
}
