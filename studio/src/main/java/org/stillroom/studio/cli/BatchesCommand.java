package org.stillroom.studio.cli;

import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.usecase.batch.ShowBatch;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Lists the batches of a studio, or shows one with its log. */
final class BatchesCommand extends Subcommand {
    @Parameters(arity = "0..1", paramLabel = "BATCH", description = "number or id of a batch; all when left out")
    private @Nullable String batch;

    @Mixin
    private BatchOptions studio = new BatchOptions();

    @Override
    protected Answer answer(Workings workings) {
        String name = batch;
        return studio.ask(store -> {
            ShowBatch show = new ShowBatch(store, studio.clock());
            return name == null ? new BatchAnswer.All(show.all()) : new BatchAnswer.One(show.one(name), true);
        });
    }
}
