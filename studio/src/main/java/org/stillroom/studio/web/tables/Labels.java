package org.stillroom.studio.web.tables;

import java.util.List;
import java.util.stream.Collectors;
import org.stillroom.studio.answer.desk.Manner;

/** The manner of a form: "make up to: 40 %". */
public enum Labels implements Manner {
    PLAIN;

    @Override
    public String name(String part) {
        return part.replace('-', ' ');
    }

    @Override
    public String write(List<Given> given) {
        return given.stream()
                .map(each -> name(each.part()) + ": " + each.value())
                .collect(Collectors.joining("; "));
    }
}
