package org.stillroom.studio.cli;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.studio.answer.desk.DeskQuestion;
import org.stillroom.studio.answer.desk.DeskQuestions;

/** The commands in force, in the order in which help shows them. */
public final class Commands {
    private Commands() {}

    public static List<Entry> all() {
        List<Entry> all = new ArrayList<>(ofRecipes());
        DeskQuestions.all().stream().map(Commands::entry).forEach(all::add);
        all.add(GaugeCommand.entry());
        all.add(new Entry(
                "batches",
                "The batches of a studio with what is in them, or one with its log.",
                "stillroom batches --help",
                BatchesCommand::new));
        all.add(new Entry(
                "log",
                "Writes down what was done with a batch: moved, measured, added, lost, bottled and more.",
                "stillroom log --help",
                LogCommand::new));
        all.add(new Entry(
                "rest",
                "What waits in the batches of a studio, by day; notes that it was seen to, or waits on.",
                "stillroom rest --help",
                RestCommand::new));
        all.add(new Entry(
                "learned",
                "What batches tell of your labels and droppers: which spirit comes out otherwise than labelled.",
                "stillroom learned --help",
                LearnedCommand::new));
        all.add(new Entry(
                "clarity",
                "Whether oils stay dissolved: clear, hazy or cloudy, how likely, and what would help.",
                "stillroom clarity --strength 40% --sugar 200g/L --oil lemon=1.2g/L",
                ClarityCommand::new));
        all.add(new Entry(
                "essence",
                "An essence of several oils in whole drops: how large to make it, and what is left over.",
                "stillroom essence examples/essences/bay-pepper-lemon.yml",
                EssenceCommand::new));
        all.add(new Entry(
                "notes",
                "Which notes lead: what the oils of a recipe bring, and how far above the threshold it lies.",
                "stillroom notes examples/quince-and-bay.yaml",
                NotesCommand::new));
        all.add(new Entry(
                "leftovers",
                "What is left on a shelf, what could be made of it, and what uses several bottles up.",
                "stillroom leftovers --shelf examples/shelves/half-empty.csv examples/quince-and-bay.yaml",
                LeftoversCommand::new));
        all.add(new Entry(
                "haze",
                "What a haze most likely is by what is seen of it, and what to try first.",
                "stillroom haze --seen fruit,boiled",
                HazeCommand::new));
        all.add(new Entry(
                "safety",
                "What watched substances a drink holds, per serving, and what law and guidance say.",
                "stillroom safety examples/quince-and-bay.yaml",
                SafetyCommand::new));
        all.add(new Entry(
                "label",
                "What a drink may be called, and what its label says: strength, energy, drinks, statements.",
                "stillroom label examples/quince-and-bay.yaml",
                LabelCommand::new));
        all.add(new Entry(
                "rules",
                "What a signed-off table of rules would change, row by row; takes it, and takes it back.",
                "stillroom rules examples/rules/duty.csv",
                RulesCommand::new));
        all.add(new Entry(
                "guide",
                "Figures to start from: sugar, strength and acid of usual liqueurs.",
                "stillroom guide",
                GuideCommand::new));
        all.add(new Entry(
                "sheet",
                "The day sheet of a recipe, as a page or a PDF to print.",
                "stillroom sheet examples/caraway-brought-down.yaml --paper letter",
                SheetCommand::new));
        return List.copyOf(all);
    }

    private static Entry entry(DeskQuestion question) {
        Entry entry = DeskCommand.entry(question);
        return switch (question.name()) { // which ask a studio or a recipe besides
            case "match" -> new Entry(entry.name(), entry.summary(), entry.example(), MatchCommand::new);
            case "calibrate" -> new Entry(entry.name(), entry.summary(), entry.example(), CalibrateCommand::new);
            case "drops", "materials", "macerate" ->
                new Entry(entry.name(), entry.summary(), entry.example(), () -> new JudgedCommand(question.name()));
            case "correct" -> new Entry(entry.name(), entry.summary(), entry.example(), CorrectCommand::new);
            case "readings" -> new Entry(entry.name(), entry.summary(), entry.example(), ReadingsCommand::new);
            default -> entry;
        };
    }

    private static List<Entry> ofRecipes() {
        return List.of(
                new Entry(
                        "open",
                        "The studio in the browser: shelf, recipes, makes. The same as stillroom alone.",
                        "stillroom open --try",
                        OpenCommand::new),
                new Entry(
                        "backup",
                        "The whole studio in one file, also while it is open.",
                        "stillroom backup --help",
                        BackupCommand::new),
                new Entry("restore", "A studio back from its backup.", "stillroom restore --help", RestoreCommand::new),
                new Entry(
                        "plan",
                        "Amounts that land on a recipe's target, how sure they are, and how to make it.",
                        "stillroom plan examples/quince-and-bay.yaml",
                        PlanCommand::new));
    }
}
