package org.stillroom.studio.cli;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Set;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.desk.Part;
import org.stillroom.studio.store.Batch;
import org.stillroom.studio.usecase.batch.LogBatch;
import org.stillroom.studio.usecase.batch.LogBatch.Act;
import org.stillroom.studio.usecase.batch.RecordBatch;
import org.stillroom.studio.usecase.batch.ShowBatch;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;

/** Writes down what was done with a batch of a studio. */
final class LogCommand extends Subcommand {
    private static final String TAKE_BACK = "take-back";

    @Parameters(index = "0", paramLabel = "BATCH", description = "number or id of the batch")
    private String batch = "";

    @Parameters(
            index = "1",
            paramLabel = "ACT",
            description =
                    "moved, measured, added, lost, evaporated, bottled, ph, analysed, pasteurised, waits or noted; or take-back")
    private String act = "";

    @Parameters(
            index = "2",
            arity = "0..1",
            paramLabel = "ENTRY",
            description = "number of the entry that is taken back, as the log shows it")
    private @Nullable Long entry;

    @Mixin
    private BatchOptions studio = new BatchOptions();

    private final PartOptions options = new PartOptions(parts());

    private Answer takenBack() {
        Long number = entry;
        if (number == null || !options.typed().isEmpty()) {
            throw Refusal.wrongInput(
                    "ENTRY",
                    TAKE_BACK + " wants the number of an entry, and nothing else.",
                    "Write it as the log shows it, such as: stillroom log 3 " + TAKE_BACK + " 17.");
        }
        return studio.ask(store -> {
            ShowBatch show = new ShowBatch(store, studio.clock());
            Batch kept = show.kept(batch);
            if (show.one(kept.id()).log().stream().noneMatch(line -> line.id() == number)) {
                throw new NoSuchElementException("there is no entry " + number + " in the log of this batch");
            }
            BatchOptions.refuse(new RecordBatch(store, studio.clock())
                    .undone(kept, number, UUID.randomUUID().toString()));
            return new BatchAnswer.One(show.one(kept.id()), false);
        });
    }

    private static List<Part> parts() {
        Set<String> fields = new LinkedHashSet<>();
        Arrays.stream(Act.values()).forEach(each -> fields.addAll(each.fields()));
        return fields.stream()
                .map(field -> new Part(field, "of: " + acts(field), null, Part.Form.TEXT))
                .toList();
    }

    private static String acts(String field) {
        return String.join(
                ", ",
                Arrays.stream(Act.values())
                        .filter(each -> each.fields().contains(field))
                        .map(Act::word)
                        .toList());
    }

    @Override
    protected void declare(CommandSpec command) {
        options.declare(command);
    }

    @Override
    protected Answer answer(Workings workings) {
        if (act.equals(TAKE_BACK)) {
            return takenBack();
        }
        if (entry != null) {
            throw Refusal.wrongInput("ENTRY", "only " + TAKE_BACK + " names an entry.", "Leave it out.");
        }
        Act what = Act.of(act)
                .orElseThrow(() -> Refusal.wrongInput(
                        "ACT",
                        "\"" + act + "\" is nothing that can be written of a batch.",
                        "Write one of: "
                                + String.join(
                                        ", ",
                                        Arrays.stream(Act.values())
                                                .map(Act::word)
                                                .toList())
                                + "; or " + TAKE_BACK + " with the number of an entry."));
        Map<String, String> typed = new LinkedHashMap<>();
        options.typed().forEach((field, texts) -> typed.put(field, texts.get(0)));
        return studio.ask(store -> {
            ShowBatch show = new ShowBatch(store, studio.clock());
            Batch kept = show.kept(batch);
            BatchOptions.refuse(new LogBatch(store, studio.clock())
                    .written(kept, what, typed, UUID.randomUUID().toString()));
            return new BatchAnswer.One(show.one(kept.id()), false);
        });
    }
}
