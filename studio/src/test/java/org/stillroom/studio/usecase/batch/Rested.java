package org.stillroom.studio.usecase.batch;

import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.Map;
import org.stillroom.core.batch.Held;
import org.stillroom.core.batch.Place;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.make.Kitchen;

/** A real studio in which makes were finished. */
final class Rested implements AutoCloseable {
    final Kitchen kitchen;

    Rested(Path folder) {
        this.kitchen = new Kitchen(folder);
    }

    /** Makes a litre as asked and returns the batch. */
    Batch batch() {
        return batch(Kitchen.BAY);
    }

    /** Makes a recipe as asked and returns the batch. */
    Batch batch(String text) {
        String recipe = kitchen.saved("Bay leaf and juniper", text);
        String make = kitchen.begun(recipe);
        kitchen.finishAsAsked(make);
        return new FinishMake(kitchen.store).answer(kitchen.state(make), Kitchen.request());
    }

    /** Returns what records as if so many days had gone by. */
    RecordBatch after(double days) {
        Duration later = Duration.ofMinutes(Math.round(days * 24 * 60));
        return new RecordBatch(kitchen.store, Clock.offset(Clock.system(ZoneId.systemDefault()), later));
    }

    Held held(Batch batch, String vessel) {
        return Book.open(kitchen.store).cellar().held(new Place(batch.id(), vessel));
    }

    static Map<String, String> typed(String vessel, String... fields) {
        Map<String, String> all = new LinkedHashMap<>(Map.of("vessel", vessel));
        for (int i = 0; i < fields.length; i += 2) {
            all.put(fields[i], fields[i + 1]);
        }
        return all;
    }

    @Override
    public void close() {
        kitchen.close();
    }
}
