package org.stillroom.e2e;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Map;
import java.util.UUID;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.batch.RecordBatch;
import org.stillroom.studio.usecase.batch.RecordRest;
import org.stillroom.studio.usecase.make.BeginMake;
import org.stillroom.studio.usecase.make.FinishMake;
import org.stillroom.studio.usecase.make.MakeState;
import org.stillroom.studio.usecase.make.MakeStep;
import org.stillroom.studio.usecase.make.RecordStep;
import org.stillroom.studio.usecase.make.ShowMake;

/** Makes that are done before a studio opens. */
final class Finished {
    private Finished() {}

    /** Does every step of a make of a recipe as asked, and returns the make: all that is left is to finish it. */
    static String make(Path data, String recipe) {
        try (Store store = Store.open(new DataFolder(data))) {
            return made(store, recipe);
        }
    }

    /** Makes a batch that was racked, has bottles and waits for something, and returns it. */
    static String batch(Path data, String recipe) {
        try (Store store = Store.open(new DataFolder(data))) {
            MakeState state = new ShowMake(store).answer(made(store, recipe));
            Batch batch = new FinishMake(store).answer(state, request());
            Clock clock = Clock.system(ZoneId.systemDefault());
            RecordBatch record = new RecordBatch(store, clock);
            record.moved(batch, Map.of("vessel", "1", "to", "demijohn", "sediment", "30 ml"), request());
            record.bottled(batch, Map.of("vessel", "demijohn", "fills", "2 x 100 ml"), request());
            new RecordRest(store, clock).waits(batch, Map.of("what", "AGEING", "days", "30"), request());
            return batch.id();
        }
    }

    private static String made(Store store, String recipe) {
        int revision = store.recipes().latest(recipe).orElseThrow().number();
        BeginMake.Outcome outcome = new BeginMake(store)
                .answer(recipe, revision, new BeginMake.Wish("", false, Map.of(), Map.of()), request());
        String make = ((BeginMake.Outcome.Begun) outcome).make().id();
        ShowMake show = new ShowMake(store);
        for (MakeStep here = show.answer(make).here();
                here != null;
                here = show.answer(make).here()) {
            MakeState state = show.answer(make);
            new RecordStep(store).done(state, here, state.seen(), request());
        }
        return make;
    }

    private static String request() {
        return UUID.randomUUID().toString();
    }
}
