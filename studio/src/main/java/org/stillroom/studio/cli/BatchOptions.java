package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneId;
import java.util.NoSuchElementException;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Store;
import org.stillroom.studio.usecase.batch.RecordBatch.Outcome;
import picocli.CommandLine.Option;

/** The studio whose batches are asked about. */
final class BatchOptions {
    private final Clock clock = Clock.system(ZoneId.systemDefault());

    @Option(names = "--data", paramLabel = "DIR", description = "folder of the studio (default: your own)")
    private @Nullable Path data;

    Clock clock() {
        return clock;
    }

    /**
     * Returns what is asked of the studio.
     *
     * @throws Refusal when there is none, or not what was named
     */
    <A> A ask(Function<Store, A> question) {
        try {
            return StudioFolder.ask(DataFolder.chosenOr(data), question);
        } catch (NoSuchElementException missing) {
            String message = missing.getMessage();
            throw Refusal.notFound(
                    "",
                    (message == null ? "it is not there" : message) + ".",
                    "stillroom batches lists what is there.");
        }
    }

    /** Refuses what could not be kept. */
    static void refuse(Outcome outcome) {
        if (outcome instanceof Outcome.NotKept not) {
            throw new Refusal(Exit.WRONG_INPUT, not.problems());
        }
    }
}
