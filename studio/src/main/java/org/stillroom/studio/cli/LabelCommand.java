package org.stillroom.studio.cli;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.desk.LabelAsked;
import org.stillroom.studio.answer.desk.Objections;
import org.stillroom.studio.sheet.LabelSheet;
import org.stillroom.studio.usecase.Impossible;
import org.stillroom.studio.usecase.TellLabel;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Tells what a recipe's drink may be called and what its label says, and writes labels to print. */
final class LabelCommand extends Subcommand {
    private static final Pattern SIDES =
            Pattern.compile("(\\d{1,3}(?:\\.\\d+)?)\\s*x\\s*(\\d{1,3}(?:\\.\\d+)?)(?:\\s*mm)?");

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
        LabelSheet.Size wanted = size();
        TellLabel.Found found = asked.answer(grounds.worked(file, workings));
        if (out == null) {
            return new LabelAnswer(found, null);
        }
        Path path = path(out);
        OutFile.write(path, drawn(path, found, wanted), force);
        return new LabelAnswer(found, path);
    }

    private static byte[] drawn(Path path, TellLabel.Found found, LabelSheet.Size size) {
        try {
            return path.toString().endsWith(".pdf")
                    ? LabelSheet.pdf(found, size)
                    : LabelSheet.svg(found, size).getBytes(StandardCharsets.UTF_8);
        } catch (Impossible tooSmall) {
            throw Refusal.wrongInput("--size", tooSmall.reason(), tooSmall.remedy());
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
        Matcher sides = SIDES.matcher(size.strip());
        try {
            if (sides.matches()) {
                return new LabelSheet.Size(Double.parseDouble(sides.group(1)), Double.parseDouble(sides.group(2)));
            }
        } catch (IllegalArgumentException outOfRange) {
            throw Refusal.wrongInput("--size", outOfRange.getMessage() + ".", "Write for instance 90x60.");
        }
        throw Refusal.wrongInput("--size", "\"" + size + "\" is no size of a label.", "Write for instance 90x60.");
    }
}
