package org.stillroom.studio.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.tasting.Note;
import org.stillroom.core.tasting.OdourThreshold;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.NotesFields;
import org.stillroom.studio.usecase.TellNotes;
import org.stillroom.studio.usecase.WorkedPlan;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;

/** Tells which notes lead in what a recipe makes. */
final class NotesCommand extends Subcommand {
    @Parameters(index = "0", paramLabel = "RECIPE", description = "the recipe file")
    private Path file = Path.of("");

    @Mixin
    private LotsOptions lots = new LotsOptions();

    @Override
    protected Answer answer(Workings workings) {
        WorkedPlan worked = lots.worked(file, UnaryOperator.identity(), Workings.NONE);
        return new Told(TellNotes.answer(worked, workings));
    }

    private record Told(TellNotes.Found found) implements Answer {
        private static final int LEADING = 3;
        private static final double ONE_BAR = 0.25;

        /** An activity below this is shown as none. */
        private static final double NOTHING = 0.001;

        @Override
        public Fields fields() {
            return NotesFields.of(found);
        }

        @Override
        public void print(Page page) {
            page.heading("Notes at " + Figure.decimals(found.strength(), 1) + " % vol, the leading one first");
            if (!found.notes().isEmpty()) {
                page.paragraph(words());
                page.blank();
                page.table(table());
                page.paragraph(
                        "Odour activity is the content over the threshold; a bar grows by one for a factor of 1.8, and is hollow where the activity is a hint and no more.");
            }
            if (!found.analysed().isEmpty()) {
                page.paragraph("By the analysis of the lot: " + String.join(", ", found.analysed()) + ".");
            }
            for (Finding finding : found.findings()) {
                page.blank();
                page.finding(finding);
            }
        }

        private String words() {
            List<String> leading = found.notes().stream()
                    .filter(note -> note.activity() >= 1.0)
                    .limit(LEADING)
                    .map(Told::words)
                    .toList();
            return leading.isEmpty() ? "No note is sure to be smelt." : "In front: " + String.join("; ", leading) + ".";
        }

        private static String words(Note note) {
            String smell = OdourThreshold.smell(note.cas());
            return note.name()
                    + (smell.isEmpty() ? "" : " (" + smell + ")")
                    + ", about " + activity(note.told().activity()) + " times its threshold, somewhere from "
                    + activity(note.told().least()) + " to "
                    + activity(note.told().most())
                    + note.weaknesses().stream()
                            .map(each -> ", " + each.words())
                            .collect(Collectors.joining());
        }

        private Table table() {
            Table table = new Table()
                    .text("constituent")
                    .figure("mg/L")
                    .figure("from")
                    .figure("to")
                    .figure("odour activity")
                    .figure("from")
                    .figure("to")
                    .text("threshold in")
                    .text("");
            for (Note note : found.notes()) {
                OdourThreshold threshold = note.threshold();
                boolean known = threshold != null;
                table.row(
                        note.name(),
                        figure(note.content().typical()),
                        figure(note.content().min()),
                        figure(note.content().max()),
                        known ? activity(note.told().activity()) : "",
                        known ? activity(note.told().least()) : "",
                        known ? activity(note.told().most()) : "",
                        threshold == null
                                ? "not found"
                                : threshold.medium().label() + ", "
                                        + threshold.standing().label(),
                        known ? bar(note) : "");
            }
            return table;
        }

        /** Shows an activity in the figures that are known of it. */
        private static String activity(double told) {
            return told < NOTHING ? "0" : QuantityWords.plain(told);
        }

        private static String figure(double value) {
            return Figure.decimals(value, value >= 100.0 ? 0 : value >= 1.0 ? 1 : 3);
        }

        private static String bar(Note note) {
            double activity = note.activity();
            int length = activity <= 1.0 ? 0 : (int) Math.round(Math.log10(activity) / ONE_BAR);
            return (note.weaknesses().isEmpty() ? "▪" : "▫").repeat(length);
        }
    }
}
