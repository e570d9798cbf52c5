package org.stillroom.studio.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.store.Backup;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.StoreTrouble;
import picocli.CommandLine.Option;

/** Writes the whole studio into one file, also while it is open. */
final class BackupCommand extends Subcommand {
    @Option(
            names = "--data",
            paramLabel = "DIR",
            description = "folder of the studio (default: your own, in $XDG_DATA_HOME or ~/.local/share)")
    private @Nullable Path data;

    @Option(
            names = "--out",
            paramLabel = "FILE",
            description = "where to write it (default: here, named after the day)")
    private @Nullable Path out;

    @Option(names = "--force", description = "write over a file that is there")
    private boolean force;

    @Override
    protected Answer answer(Workings workings) {
        DataFolder folder = DataFolder.chosenOr(data);
        if (!folder.holdsAStudio()) {
            throw Refusal.notFound(
                    "--data",
                    "there is no studio in " + folder.path() + ".",
                    "Name its folder with --data, or open one first: stillroom open.");
        }
        Path file = out == null ? Path.of(Backup.fileName(LocalDate.now(ZoneId.systemDefault()))) : out;
        OutFile.requireFree(file, force);
        try {
            Backup.Manifest manifest = Backup.ofOpenOrClosed(folder, file);
            return new Written(file, manifest);
        } catch (StoreTrouble trouble) {
            throw Refusal.wrongInput("--data", trouble.message(), trouble.remedy());
        } catch (IOException e) {
            throw Refusal.wrongInput(
                    "--out",
                    "the backup cannot be written to " + file + " ("
                            + e.getClass().getSimpleName() + ").",
                    "Choose a place where you may write and where there is room.");
        }
    }

    private record Written(Path file, Backup.Manifest manifest) implements Answer {
        @Override
        public Fields fields() {
            return new Fields()
                    .put("file", file.toString())
                    .put("at", manifest.at())
                    .put("sha256", manifest.sha256())
                    .put("findings", List.of());
        }

        @Override
        public void print(Page page) {
            page.paragraph("The whole studio is in " + file + ". stillroom restore brings it back.");
        }
    }
}
