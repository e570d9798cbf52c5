package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.usecase.shelf.MakersOunce;
import org.stillroom.studio.usecase.shelf.OwnInstruments;
import picocli.CommandLine.Option;

/** The maker's own instruments, whose calibrations stand on the shelf of a studio. */
final class OwnOptions {
    @Option(names = "--data", paramLabel = "DIR", description = "folder of the studio that keeps your instruments")
    private @Nullable Path data;

    @Option(
            names = "--instrument",
            paramLabel = "NAME",
            description = "an instrument of that studio, whose calibration counts; may be repeated")
    private List<String> names = new ArrayList<>();

    /** Returns what was typed, with what these instruments add to it. */
    Map<String, List<String>> with(Map<String, List<String>> typed) {
        if (names.isEmpty()) {
            return typed;
        }
        return StudioFolder.ask(
                DataFolder.chosenOr(data),
                store -> DeskQuestion.ask(
                        Dashes.TWO,
                        () -> new OwnInstruments(MakersOunce.of(store.settings()))
                                .with(
                                        OwnInstruments.named(
                                                "instrument",
                                                names,
                                                OwnInstruments.choices(
                                                        store.instruments().all())),
                                        typed)));
    }
}
