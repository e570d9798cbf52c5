package org.stillroom.studio.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Workings;
import picocli.CommandLine.Option;

/**
 * One command of the command line. A new one extends this, declares its options as picocli fields, and is listed in
 * {@link Commands}.
 *
 * <p>Keep options as the text that was typed and hand them to the parser of quantities; {@link Objections} gathers what
 * is wrong with them. In texts for picocli a percent sign is written twice.
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
                fields.put("steps", steps(written.steps()));
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
        return answer.exit();
    }

    /** Returns findings for an answer, in the one form that they have everywhere. */
    public static List<Fields> findings(List<Finding> findings) {
        List<Fields> all = new ArrayList<>();
        for (Finding finding : findings) {
            all.add(new Fields()
                    .put("rule", finding.rule())
                    .put("severity", finding.severity().name().toLowerCase(Locale.ROOT))
                    .put("where", finding.where())
                    .put("jurisdiction", finding.jurisdiction())
                    .put("verdict", finding.verdict())
                    .put("message", finding.message())
                    .put("how_sure", finding.howSure())
                    .put("remedy", finding.remedy())
                    .put("limit", finding.limit())
                    .put(
                            "source",
                            finding.source() == null ? null : finding.source().title())
                    .put("status", finding.status()));
        }
        return all;
    }

    private static List<Fields> steps(List<Workings.Step> steps) {
        List<Fields> all = new ArrayList<>();
        for (Workings.Step step : steps) {
            all.add(new Fields()
                    .put("what", step.what())
                    .put("value", step.value())
                    .put("unit", step.unit())
                    .put("source", step.source().title())
                    .put("status", step.source().standing().label()));
        }
        return all;
    }
}
