package org.stillroom.studio.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.desk.LabelAsked;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.sheet.LabelSheet;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.TellLabel;
import org.stillroom.studio.wording.Language;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what a recipe's drink may be called and what its label says, and writes labels to print. */
final class LabelCommand extends Subcommand {
    @Parameters(index = "0", paramLabel = "FILE", description = "the recipe file")
    private Path file = Path.of("");

    @Option(
            names = "--out",
            paramLabel = "PATH",
            description = "write labels to print: one ending in .svg, or a sheet of A4 ending in .pdf")
    private @Nullable String out;

    @Option(
            names = "--size",
            paramLabel = "MM",
            defaultValue = "90x60",
            description = "width and height of a label in mm (default: ${DEFAULT-VALUE})")
    private String size = "";

    @Option(names = "--language", paramLabel = "LANG", description = "language of the labels: en (the usual) or de")
    private String language = Language.ENGLISH.tag();

    @Option(names = "--print-cost", description = "print on the labels what a bottle costs; else they never say it")
    private boolean printCost;

    @Option(names = "--force", description = "write over a file that is there")
    private boolean force;

    @Mixin
    private GroundsOptions grounds = new GroundsOptions();

    private final PartOptions options = new PartOptions(LabelAsked.PARTS);

    @Override
    protected void declare(CommandSpec command) {
        options.declare(command);
    }

    @Override
    protected Answer answer(Workings workings) {
        LabelAsked asked = LabelAsked.of(options.typed(), Dashes.TWO, new Objections());
        LabelSheet.Look wanted = new LabelSheet.Look(
                size(),
                Sayings.of("--language", language),
                printCost ? LabelSheet.Cost.PRINTED : LabelSheet.Cost.LEFT_OUT);
        TellLabel.Found found = asked.answer(grounds.worked(file, workings));
        if (out == null) {
            return new LabelAnswer(found, null);
        }
        Path path = path(out);
        refusePoison(found);
        OutFile.write(path, drawn(path, found, wanted), force);
        return new LabelAnswer(found, path);
    }

    private static void refusePoison(TellLabel.Found found) {
        if (!found.notForDrinking().isEmpty()) {
            List<Finding> said = new ArrayList<>(found.notForDrinking());
            said.add(
                    0,
                    Finding.of(
                            "no-label",
                            Severity.STOP,
                            "--out",
                            "not for drinking",
                            "Nobody is to drink it, so no label is drawn and nothing is written.",
                            ""));
            throw new Refusal(Exit.OUT_OF_REACH, said);
        }
    }

    private static byte[] drawn(Path path, TellLabel.Found found, LabelSheet.Look look) {
        try {
            return path.toString().endsWith(".pdf")
                    ? LabelSheet.pdf(found, look)
                    : LabelSheet.svg(found, look).getBytes(StandardCharsets.UTF_8);
        } catch (Impossible impossible) {
            throw Refusal.wrongInput("--" + impossible.part(), impossible.reason(), impossible.remedy());
        }
    }

    private static Path path(String name) {
        if (!name.endsWith(".pdf") && !name.endsWith(".svg")) {
            throw Refusal.wrongInput(
                    "--out", "\"" + name + "\" does not say what to write.", "Let the name end in .svg or .pdf.");
        }
        return Path.of(name);
    }

    private LabelSheet.Size size() {
        try {
            return LabelSheet.Size.of(size);
        } catch (Impossible none) {
            throw Refusal.wrongInput("--size", none.reason(), none.remedy());
        }
    }
}
