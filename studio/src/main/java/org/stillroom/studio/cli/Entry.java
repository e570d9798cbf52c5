package org.stillroom.studio.cli;

import java.util.List;
import java.util.function.Supplier;

/**
 * A command in the list that {@code stillroom --help} shows; only the one that is asked for is made.
 *
 * @param name what is typed after {@code stillroom}
 * @param summary what it answers, one line
 * @param example one run that works as it stands at the root of the source tree, no word of it in quotes
 * @param command makes the command
 */
public record Entry(String name, String summary, String example, Supplier<Subcommand> command) {
    /** Returns the example as the words typed after {@code stillroom}. */
    public List<String> typed() {
        List<String> words = List.of(example.split(" "));
        return words.subList(1, words.size());
    }
}
