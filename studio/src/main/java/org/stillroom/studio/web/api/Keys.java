package org.stillroom.studio.web.api;

import java.util.List;
import java.util.stream.Collectors;
import org.stillroom.studio.answer.desk.Manner;

/** The manner of programs: parts of a question are keys of JSON, {@code "make_up_to": "1L"}. */
enum Keys implements Manner {
    SNAKE_CASE;

    @Override
    public String name(String part) {
        return part.replace('-', '_').replace(' ', '_');
    }

    @Override
    public String write(List<Given> given) {
        return given.stream()
                .map(each -> "\"" + name(each.part()) + "\": \"" + each.value() + "\"")
                .collect(Collectors.joining(", "));
    }
}
