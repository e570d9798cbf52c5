package org.stillroom.studio.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Workings;
import org.stillroom.core.safety.Safety;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.FindingFields;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.answer.desk.PlanWishes;
import org.stillroom.studio.sheet.DaySheet;
import org.stillroom.studio.sheet.SheetOptions;
import org.stillroom.studio.usecase.WorkedPlan;
import org.stillroom.studio.wording.Language;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Writes the day sheet of a recipe as a page or as a PDF. */
final class SheetCommand extends Subcommand {
    @Parameters(paramLabel = "FILE", arity = "1", description = "the recipe")
    private String file = "";

    @Option(
            names = "--out",
            paramLabel = "PATH",
            description = "where to write it, ending in .html or .pdf; without it the page goes to standard output")
    private @Nullable String out;

    @Option(names = "--units", paramLabel = "UNITS", description = "metric (the usual) or us")
    private String units = "metric";

    @Option(names = "--paper", paramLabel = "PAPER", description = "a4 (the usual) or letter")
    private String paper = "a4";

    @Option(names = "--language", paramLabel = "LANG", description = "language of the sheet: en (the usual) or de")
    private String language = Language.ENGLISH.tag();

    @Option(names = "--force", description = "write over a file that is there")
    private boolean force;

    @Mixin
    private GroundsOptions grounds = new GroundsOptions();

    private final PartOptions wishes = new PartOptions(List.of(PlanWishes.MAKES));

    @Override
    protected void declare(CommandSpec command) {
        wishes.declare(command);
    }

    @Override
    protected Answer answer(Workings workings) {
        SheetOptions options = options();
        PlanWishes wished = PlanWishes.of(wishes.typed(), Dashes.TWO, new Objections());
        WorkedPlan worked = grounds.planned(RecipeArgument.open(Path.of(file)), wished, workings)
                .worked();
        if (out == null) {
            return new Shown(DaySheet.html(worked, options), worked);
        }
        Path path = path(out);
        OutFile.write(
                path, path.toString().endsWith(".pdf") ? DaySheet.pdf(worked, options) : page(worked, options), force);
        return new Written(path, worked);
    }

    private static byte[] page(WorkedPlan worked, SheetOptions options) {
        return DaySheet.html(worked, options).getBytes(StandardCharsets.UTF_8);
    }

    private SheetOptions options() {
        SheetOptions.Units in = chosen("--units", units, SheetOptions.Units.values());
        return new SheetOptions(
                chosen("--paper", paper, SheetOptions.Paper.values()), in, Sayings.of("--language", language));
    }

    private static <E extends Enum<E>> E chosen(String option, String text, E[] choices) {
        StringBuilder names = new StringBuilder();
        for (E choice : choices) {
            if (choice.name().equalsIgnoreCase(text)) {
                return choice;
            }
            names.append(names.length() == 0 ? "" : " or ").append(choice.name().toLowerCase(Locale.ROOT));
        }
        throw Refusal.wrongInput(option, "\"" + text + "\" is not known here.", "Write " + names + ".");
    }

    private static Path path(String name) {
        if (!name.endsWith(".pdf") && !name.endsWith(".html")) {
            throw Refusal.wrongInput(
                    "--out", "\"" + name + "\" does not say what to write.", "Let the name end in .html or .pdf.");
        }
        return Path.of(name);
    }

    /** A sheet for standard output; it says itself whether its amounts reach the target. */
    private record Shown(String html, WorkedPlan worked) implements Answer {
        @Override
        public Fields fields() {
            return new Fields()
                    .put("html", html)
                    .put("reached", worked.plan().reached())
                    .put("findings", FindingFields.of(worked.findings()))
                    .put("standing", Safety.STANDING);
        }

        @Override
        public void print(Page page) {
            page.verbatim(html.stripTrailing());
        }

        @Override
        public Exit exit() {
            return ended(worked);
        }
    }

    private static Exit ended(WorkedPlan worked) {
        return worked.isStopped() ? Exit.OUT_OF_REACH : Exit.DONE;
    }

    /** A sheet that was written, and whether its amounts reach the target. */
    private record Written(Path path, WorkedPlan worked) implements Answer {
        @Override
        public Fields fields() {
            return new Fields()
                    .put("file", path.toString())
                    .put("reached", worked.plan().reached())
                    .put("findings", FindingFields.of(worked.findings()))
                    .put("standing", Safety.STANDING);
        }

        @Override
        public void print(Page page) {
            page.verbatim("Written: " + path);
            if (!worked.plan().reached()) {
                page.paragraph("What is asked for cannot be reached; the sheet holds the nearest amounts and says so.");
            }
            worked.findings().forEach(page::finding);
        }

        @Override
        public Exit exit() {
            return ended(worked);
        }
    }
}
