package org.stillroom.studio.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.store.Backup;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.StoreTrouble;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Brings a studio back from a backup. */
final class RestoreCommand extends Subcommand {
    @Parameters(index = "0", paramLabel = "FILE", description = "the backup")
    private Path file = Path.of("");

    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "folder of the studio (default: your own, in $XDG_DATA_HOME or ~/.local/share)")
    private @Nullable Path data;

    @Option(names = "--replace", description = "put a studio that is there aside, under another name")
    private boolean replace;

    @Override
    protected Answer answer(Workings workings) {
        InFile.requireFile("FILE", file);
        DataFolder folder = DataFolder.chosenOr(data);
        try {
            @Nullable Path aside = Backup.restore(file, folder, replace ? Backup.Replacing.YES : Backup.Replacing.NO);
            return new Restored(folder, aside);
        } catch (StoreTrouble trouble) {
            throw Refusal.wrongInput("restore", trouble.message(), trouble.remedy());
        } catch (IOException e) {
            throw Refusal.wrongInput(
                    "restore",
                    "the backup cannot be restored (" + e.getClass().getSimpleName() + ").",
                    "Check that you may write in " + folder.path() + " and that there is room. Nothing was lost.");
        }
    }

    private record Restored(DataFolder folder, @Nullable Path aside) implements Answer {
        @Override
        public Fields fields() {
            return new Fields()
                    .put("data", folder.path().toString())
                    .put("put_aside", aside == null ? null : aside.toString())
                    .put("findings", List.of());
        }

        @Override
        public void print(Page page) {
            page.paragraph("The studio is back in " + folder.path() + ".");
            if (aside != null) {
                page.paragraph("What was there before is kept as " + aside + ".");
            }
        }
    }
}
