package org.stillroom.studio.cli;

import java.util.List;
import java.util.stream.Collectors;
import org.stillroom.studio.answer.desk.Manner;

/** The manner of the command line: "--mass 474g". */
enum Dashes implements Manner {
    TWO;

    @Override
    public String name(String part) {
        return "--" + part;
    }

    @Override
    public String write(List<Given> given) {
        return given.stream()
                .map(each -> name(each.part()) + " " + quoted(each.value()))
                .collect(Collectors.joining(" "));
    }

    /** A value with blanks is one text to a shell only within quotes. */
    private static String quoted(String value) {
        return value.indexOf(' ') < 0 ? value : '"' + value + '"';
    }
}
