package org.stillroom.studio.web.api;

import java.util.List;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.FindingFields;

/** Ends a call without doing what it asks; nothing has been changed. */
final class Refused extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** The request is not what it should be: no JSON, no such key. */
    static final int UNREADABLE = 400;

    static final int NOT_FOUND = 404;
    static final int OVERTAKEN = 409;
    static final int TOO_LARGE = 413;
    static final int OTHER_TYPE = 415;

    /** What is asked for is understood and cannot be. */
    static final int IMPOSSIBLE = 422;

    static final int NO_STARTING_POINT = 428;

    private final int status;
    private final transient Fields fields;

    private Refused(int status, String message, Fields fields) {
        super(message, null, false, false);
        this.status = status;
        this.fields = fields;
    }

    Refused(int status, List<Finding> findings) {
        this(
                status,
                findings.isEmpty() ? "" : findings.get(0).message(),
                new Fields().put("findings", FindingFields.of(findings)));
    }

    Refused(int status, String rule, String where, String message, String remedy) {
        this(status, List.of(Finding.of(rule, Severity.STOP, where, "refused", message, remedy)));
    }

    /** Refuses a change that began from what is not the latest any more, and shows both. */
    static Refused overtaken(String message, Fields yours, Fields current) {
        Refused refused = new Refused(
                OVERTAKEN,
                "overtaken",
                "",
                message,
                "Look at what is there now, join both, and send it based on that.");
        refused.fields.put("yours", yours).put("current", current);
        return refused;
    }

    static Refused notFound(String message) {
        return new Refused(NOT_FOUND, "not-found", "", message, "Ask for the list to see what is there.");
    }

    int status() {
        return status;
    }

    Fields fields() {
        return fields;
    }
}
