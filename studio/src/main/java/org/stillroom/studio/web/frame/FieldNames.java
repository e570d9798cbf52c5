package org.stillroom.studio.web.frame;

import java.util.List;
import java.util.stream.Collectors;
import org.stillroom.studio.answer.desk.Manner;

/** The manner of a form whose fields are named as the parts of a question: a complaint finds its field by that name. */
public enum FieldNames implements Manner {
    PLAIN;

    @Override
    public String name(String part) {
        return part;
    }

    @Override
    public String write(List<Given> given) {
        return given.stream().map(Given::value).collect(Collectors.joining("; "));
    }
}
