package org.stillroom.studio.cli;

import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.usecase.batch.RecordRest;
import org.stillroom.studio.usecase.batch.ShowBatch;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Tells what waits in the batches of a studio, by day; notes that it was seen to, or waits on. */
final class RestCommand extends Subcommand {
    @Mixin
    private BatchOptions studio = new BatchOptions();

    @Option(names = "--done", paramLabel = "WAIT", description = "number of something that was seen to")
    private @Nullable Long done;

    @Option(names = "--postpone", paramLabel = "WAIT", description = "number of something that is to wait on")
    private @Nullable Long postpone;

    @Option(names = "--days", paramLabel = "TIME", description = "for how much longer, such as \"7 days\"")
    private String days = "";

    @Override
    protected Answer answer(Workings workings) {
        return studio.ask(store -> {
            RecordRest rest = new RecordRest(store, studio.clock());
            if (done != null) {
                BatchOptions.refuse(rest.waited(done, request()));
            }
            if (postpone != null) {
                BatchOptions.refuse(rest.postponed(postpone, Map.of("days", days), request()));
            }
            return new BatchAnswer.Resting(new ShowBatch(store, studio.clock()).rests());
        });
    }

    private static String request() {
        return UUID.randomUUID().toString();
    }
}
