package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.TableSet;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.RuleChanges;
import org.stillroom.core.safety.SignedRules;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.RulesFields;
import org.stillroom.studio.store.DataFolder;
import org.stillroom.studio.store.RuleBook;
import org.stillroom.studio.usecase.rules.TakeRules;
import org.stillroom.studio.usecase.rules.TakenRules;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Shows what a signed-off file of rules would change, takes it into a studio, and takes it back. */
final class RulesCommand extends Subcommand {
    @Parameters(arity = "0..1", paramLabel = "FILE", description = "a signed-off table of rules")
    private @Nullable Path file;

    @Option(names = "--data", paramLabel = "DIR", description = "folder of the studio whose rules these are")
    private @Nullable Path data;

    @Option(names = "--accept", description = "take the file into that studio, after its preview")
    private boolean accept;

    @Option(names = "--take-back", paramLabel = "N", description = "take back the file of this number")
    private @Nullable Long takeBack;

    @Override
    protected Answer answer(Workings workings) {
        if (data == null) {
            if (accept || takeBack != null || file == null) {
                throw Refusal.wrongInput(
                        "--data",
                        "it is not said whose rules these are.",
                        "Name the folder of a studio; a file alone is compared with what ships.");
            }
            return new Looked(RuleChanges.between(read(InFile.text("FILE", file)), TableSet.SHIPPED), false);
        }
        return StudioFolder.ask(DataFolder.chosenOr(data), store -> ofStudio(store.rules()));
    }

    private Answer ofStudio(RuleBook book) {
        if (takeBack != null) {
            takeBack(book, takeBack);
        }
        if (file == null) {
            return new Listed(TakenRules.all(book));
        }
        String text = InFile.text("FILE", file);
        TakeRules.Preview preview = TakeRules.preview(book, text);
        RuleChanges changes = preview.changes();
        if (changes == null) {
            throw new Refusal(Exit.WRONG_INPUT, preview.problems());
        }
        boolean taken = accept
                && TakeRules.accept(
                        book, text, preview.version(), UUID.randomUUID().toString());
        return new Looked(changes, taken);
    }

    private static void takeBack(RuleBook book, long entry) {
        try {
            book.takeBack(entry, UUID.randomUUID().toString());
        } catch (NoSuchElementException | IllegalStateException none) {
            throw Refusal.wrongInput(
                    "--take-back",
                    String.valueOf(none.getMessage()) + ".",
                    "stillroom rules --data DIR lists what is in force, with its numbers.");
        }
    }

    private static SignedRules read(String text) {
        SignedRules.Reading read = SignedRules.read(text);
        SignedRules rules = read.rules();
        if (rules == null) {
            throw new Refusal(Exit.WRONG_INPUT, read.problems());
        }
        return rules;
    }

    /** What a file changes, and whether it was taken. */
    private record Looked(RuleChanges changes, boolean taken) implements Answer {
        @Override
        public Fields fields() {
            return RulesFields.changes(changes).put("taken", taken);
        }

        @Override
        public void print(Page page) {
            TableSet.Edition edition = changes.file().edition();
            page.heading(edition.told());
            page.paragraph("From: " + edition.source() + ".");
            changes.asked(LocalDate.now(ZoneId.systemDefault()))
                    .forEach(day -> page.paragraph("LOOK AT ITS DAY: " + day.said()));
            Table table = new Table().text("").text("").text("").text("was").text("is");
            for (RuleChanges.Change row : changes.rows()) {
                List<Map.Entry<String, RuleChanges.Difference>> cells =
                        List.copyOf(row.differences().entrySet());
                boolean whole = cells.isEmpty();
                table.row(
                        row.fate().label(),
                        row.about(),
                        whole ? "" : cells.get(0).getKey(),
                        whole ? "" : cells.get(0).getValue().before(),
                        whole ? "" : cells.get(0).getValue().after());
                for (int i = 1; !whole && i < cells.size(); i++) {
                    table.row(
                            "",
                            "",
                            cells.get(i).getKey(),
                            cells.get(i).getValue().before(),
                            cells.get(i).getValue().after());
                }
            }
            if (!changes.rows().isEmpty()) {
                page.table(table);
            }
            page.paragraph(
                    changes.same() == 1 ? "One row stays as it is." : changes.same() + " rows stay as they are.");
            loud(page);
            page.blank();
            page.paragraph(
                    taken
                            ? "Taken. stillroom rules --data DIR lists it with its number, by which it is taken back."
                            : "Nothing is changed yet.");
        }

        private void loud(Page page) {
            for (RuleChanges.Change row : changes.loud()) {
                page.paragraph(
                        row.fate() == RuleChanges.Fate.KEPT
                                ? "STAYS IN FORCE: " + row.about() + ". A file cannot take a hard stop away."
                                : "LESS CAUTIOUS: " + row.about() + ", "
                                        + row.fate().label() + ". Be sure of it before you take it.");
            }
        }
    }

    /** What is in force. */
    private record Listed(List<TakenRules> files) implements Answer {
        @Override
        public Fields fields() {
            return new Fields()
                    .put("taken", files.stream().map(RulesFields::taken).toList());
        }

        @Override
        public void print(Page page) {
            page.heading(
                    files.isEmpty()
                            ? "All tables of rules are as shipped"
                            : "In place of shipped tables, the latest of each in force");
            for (TakenRules taken : files) {
                TableSet.Edition edition = taken.edition();
                page.paragraph(
                        taken.entry() + ": " + (edition == null ? "cannot be read by this Stillroom" : edition.told()));
            }
        }
    }
}
