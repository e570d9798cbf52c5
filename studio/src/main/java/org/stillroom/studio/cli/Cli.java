package org.stillroom.studio.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.reference.Finding;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.FindingFields;
import org.stillroom.studio.answer.Json;
import org.stillroom.studio.answer.desk.WrongInput;
import org.stillroom.studio.faults.FaultLog;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.UsageMessageSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/**
 * Finds the command that was typed, runs it, and turns whatever happens into words and an {@link Exit}.
 *
 * <p>Answers go to standard output, complaints to standard error. With {@code --json} a refusal is also an answer: its
 * findings stand on standard output, so that a script always reads JSON there.
 */
public final class Cli {
    private static final String NAME = "stillroom";

    private final List<Entry> entries;
    private final Screen screen;
    private final FaultLog log;

    public Cli(List<Entry> entries, Screen screen, FaultLog log) {
        this.entries = List.copyOf(entries);
        this.screen = screen;
        this.log = log;
    }

    /** Runs what was typed after {@code stillroom}. Never throws. */
    public Exit run(String... typed) {
        List<String> arguments = List.of(typed);
        try {
            Exit exit = answer(arguments);
            if (screen.out().checkError()) {
                screen.err().println("The answer could not be written in full: standard output was closed or is full.");
                return Exit.FAULT;
            }
            return exit;
        } catch (Refusal refusal) {
            return refuse(refusal, arguments);
        } catch (WrongInput wrong) {
            return refuse(new Refusal(Exit.WRONG_INPUT, wrong.findings()), arguments);
        } catch (Throwable fault) {
            return fail(fault, arguments);
        } finally {
            screen.out().flush();
        }
    }

    private Exit answer(List<String> typed) {
        if (typed.isEmpty()) {
            return command(entry("open"), List.of());
        }
        String first = typed.get(0);
        return switch (first) {
            case "-h", "--help" -> help();
            case "-V", "--version" -> printVersion();
            default -> command(entry(first), typed.subList(1, typed.size()));
        };
    }

    private Exit printVersion() {
        screen.out().println(NAME + " " + version());
        return Exit.DONE;
    }

    private Entry entry(String name) {
        Optional<Entry> found =
                entries.stream().filter(entry -> entry.name().equals(name)).findFirst();
        return found.orElseThrow(() -> Refusal.wrongInput(
                NAME,
                "there is no command \"" + name + "\".",
                "The command comes first and is one of: "
                        + entries.stream().map(Entry::name).collect(Collectors.joining(", ")) + ". " + NAME
                        + " --help shows what they do."));
    }

    private Exit command(Entry entry, List<String> options) {
        Subcommand command = entry.command().get();
        CommandLine line = new CommandLine(command);
        command.declare(line.getCommandSpec());
        String name = NAME + " " + entry.name();
        describe(line, name, entry);
        try {
            line.parseArgs(options.toArray(String[]::new));
        } catch (ParameterException wrong) {
            throw Refusal.wrongInput(name, sentence(wrong), remedy(wrong, name));
        }
        if (command.wantsHelp()) {
            screen.out().print(Spaced.of(line, screen.colour() == Page.Colour.SEEN ? Ansi.ON : Ansi.OFF));
            return Exit.DONE;
        }
        return command.run(screen);
    }

    private static void describe(CommandLine line, String name, Entry entry) {
        line.setCommandName(name);
        line.setExpandAtFiles(false);
        line.setUsageHelpWidth(Page.WIDTH);
        UsageMessageSpec usage = line.getCommandSpec().usageMessage();
        usage.header(literal(entry.summary()));
        usage.footer("", "Example:", "  " + literal(entry.example()));
    }

    /** Doubles percent signs, since picocli reads its texts as format strings. */
    private static String literal(String text) {
        return text.replace("%", "%%");
    }

    private static String sentence(ParameterException wrong) {
        String message = wrong.getMessage();
        return message == null ? "the options cannot be understood." : message + ".";
    }

    private static String remedy(ParameterException wrong, String name) {
        String help = name + " --help shows what it takes.";
        if (wrong instanceof UnmatchedArgumentException unmatched
                && !unmatched.getSuggestions().isEmpty()) {
            return "Did you mean " + String.join(" or ", unmatched.getSuggestions()) + "? " + help;
        }
        return help;
    }

    private Exit help() {
        Page page = screen.page();
        page.heading("stillroom: design, plan and make liqueurs");
        page.paragraph("Usage: stillroom COMMAND [OPTIONS]");
        for (Entry entry : entries) {
            page.blank();
            page.heading(entry.name());
            page.paragraph("  " + entry.summary());
            page.verbatim("  " + entry.example());
        }
        page.blank();
        page.paragraph("Every command takes --help, --json for scripts, and --explain for steps and sources.");
        page.paragraph("stillroom --version says which Stillroom this is.");
        page.paragraph("Exit codes: 0 done; 1 cannot be reached or a rule forbids; 2 wrong input; 3 not found; 70 a"
                + " fault of the program.");
        return Exit.DONE;
    }

    private Exit refuse(Refusal refusal, List<String> typed) {
        if (typed.contains("--json")) {
            screen.out().println(Json.of(new Fields().put("findings", FindingFields.of(refusal.findings()))));
        }
        for (Finding finding : refusal.findings()) {
            screen.complaints().finding(finding);
        }
        return refusal.exit();
    }

    private Exit fail(Throwable fault, List<String> typed) {
        String id = String.format("%08x", ThreadLocalRandom.current().nextInt());
        String message = "Stillroom has failed; the fault is its own, not yours (id " + id + "). ";
        try {
            log.write(id, version(), typed, fault);
            message += "The details are under that id in " + log.file() + ".";
        } catch (IOException | RuntimeException unwritten) {
            message +=
                    "The log " + log.file() + " cannot be written, so the details follow.\n" + FaultLog.details(fault);
        }
        if (typed.contains("--json")) {
            screen.out().println(Json.of(new Fields().put("fault_id", id).put("message", message)));
        }
        screen.err().println(message);
        return Exit.FAULT;
    }

    private static String version() {
        @Nullable String version = Cli.class.getPackage().getImplementationVersion();
        return version == null ? "from source" : version;
    }
}
