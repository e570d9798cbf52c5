package org.stillroom.studio.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.safety.Grounds;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.usecase.shelf.MakersGrounds;
import picocli.CommandLine.Option;

/** What a studio keeps, as an option of the commands that judge by it. */
final class StudioGrounds {
    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "go by what a studio in this folder keeps too: analyses of its lots, rules of its house")
    private @Nullable Path data;

    /**
     * Returns what that studio judges by; what ships with the program where none was named.
     *
     * @throws Refusal when it is not there
     */
    Grounds grounds() {
        return data == null ? Grounds.SHIPPED : StudioFolder.ask(DataFolder.chosenOr(data), MakersGrounds::of);
    }
}
