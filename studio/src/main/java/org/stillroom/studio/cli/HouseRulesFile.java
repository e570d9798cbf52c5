package org.stillroom.studio.cli;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.stillroom.core.safety.Grounds;
import org.stillroom.core.safety.HouseRules;
import picocli.CommandLine.Option;

/** The rules of a maker's own house as an option of the commands that judge a drink. */
final class HouseRulesFile {
    private static final String OPTION = "--house-rules";

    @Option(
            names = OPTION,
            paramLabel = "FILE",
            description = "rules of your own besides, one a line, such as: at most 20 mg/L thujone")
    private @Nullable Path file;

    /**
     * Returns grounds with the rules of the file; the same ones where none was named.
     *
     * @throws Refusal when the file is not there or not understood
     */
    Grounds added(Grounds grounds) {
        if (file == null) {
            return grounds;
        }
        HouseRules.Reading read = HouseRules.read(InFile.text(OPTION, file), grounds.knowledge());
        if (!read.problems().isEmpty()) {
            throw new Refusal(Exit.WRONG_INPUT, read.problems());
        }
        return grounds.with(grounds.house().and(read.rules()));
    }
}
