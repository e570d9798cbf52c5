package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.desk.CalibrateQuestion;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.answer.desk.OwnCalibration;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.Instrument;
import org.stillroom.studio.store.Instruments;
import org.stillroom.studio.usecase.shelf.KeepCalibration;
import org.stillroom.studio.usecase.shelf.OwnInstruments;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/** Tells what an instrument shows too much, and keeps it with one of a studio where that is named. */
final class CalibrateCommand extends Subcommand {
    private final CalibrateQuestion question = new CalibrateQuestion();
    private final PartOptions options = new PartOptions(question.parts());

    @Option(names = "--data", paramLabel = "DIR", description = "folder of the studio that keeps your instruments")
    private @Nullable Path data;

    @Option(
            names = "--keep",
            paramLabel = "NAME",
            description = "keep it with this instrument of that studio; its scale and marks need not be typed")
    private @Nullable String keep;

    @Override
    protected void declare(CommandSpec command) {
        options.declare(command);
    }

    @Override
    protected Answer answer(Workings workings) {
        String name = keep;
        Map<String, List<String>> typed = options.typed();
        return new ToldAnswer(
                name == null
                        ? question.answer(typed, Dashes.TWO, workings)
                        : StudioFolder.ask(
                                DataFolder.chosenOr(data), store -> kept(name, typed, store.instruments(), workings)));
    }

    /** Keeps it, and returns what is found from what was typed and from what the sheet of the instrument says besides. */
    private static Told kept(String name, Map<String, List<String>> typed, Instruments instruments, Workings workings) {
        List<Instrument> choices = instruments.all().stream()
                .filter(each -> !OwnCalibration.asked(each.sheet().kind()).isEmpty())
                .toList();
        Instrument instrument = DeskQuestion.ask(Dashes.TWO, () -> OwnInstruments.named("keep", List.of(name), choices))
                .get(0);
        OwnCalibration own = new OwnCalibration(
                instrument.sheet().kind(), instrument.sheet().fields(), KeepCalibration.former(instrument));
        new KeepCalibration(instruments)
                .answer(
                        instrument,
                        own.found(typed, Dashes.TWO).found().calibrated(),
                        own.typedOf(typed),
                        LocalDate.now(ZoneId.systemDefault()),
                        UUID.randomUUID().toString());
        return own.question().answer(own.whole(typed), Dashes.TWO, workings);
    }
}
