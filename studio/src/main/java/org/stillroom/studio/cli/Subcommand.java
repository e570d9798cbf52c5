package org.stillroom.studio.cli;

import org.stillroom.core.reference.Workings;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.Json;
import org.stillroom.studio.answer.StepFields;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;

/**
 * One command of the command line. A new one extends this, declares its options as picocli fields, and is listed in
 * {@link Commands}.
 *
 * <p>Keep options as the text that was typed and hand them to the parser of quantities;
 * {@link org.stillroom.studio.answer.desk.Objections} gathers what is wrong with them. In texts for picocli a percent sign
 * is written twice.
 */
public abstract class Subcommand {
    @Option(names = "--json", description = "answer as JSON, for scripts")
    private boolean json;

    @Option(names = "--explain", description = "show each step of the computation with its source")
    private boolean explain;

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "show this help")
    private boolean help;

    /** Adds options that are not fields; most commands have none. */
    protected void declare(CommandSpec command) {}

    /**
     * Returns the answer, or throws a {@link Refusal}.
     *
     * @param workings takes the steps of the computation; hand it to the use case
     */
    protected abstract Answer answer(Workings workings);

    final boolean wantsHelp() {
        return help;
    }

    final Exit run(Screen screen) {
        Workings.Written written = new Workings.Written();
        Answer answer = answer(explain ? written : Workings.NONE);
        if (json) {
            Fields fields = answer.fields();
            if (explain) {
                fields.put(fields.has("steps") ? "steps_of_computation" : "steps", StepFields.of(written.steps()));
            }
            screen.out().println(Json.of(fields));
        } else {
            Page page = screen.page();
            answer.print(page);
            if (explain) {
                page.blank();
                page.steps(written.steps());
            }
        }
        screen.out().flush();
        answer.stay();
        return answer.exit();
    }
}
