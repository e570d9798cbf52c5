package org.stillroom.studio.web.frame;

import io.javalin.http.HttpStatus;
import java.util.List;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.studio.answer.Fields;
import org.stillroom.studio.answer.FindingFields;
import org.stillroom.studio.answer.Json;

/** What other programs are told when something went wrong, in the one form of findings. */
final class FaultAnswer {
    private FaultAnswer() {}

    static String of(String message, HttpStatus status) {
        String rule = "http-" + status.getCode();
        Finding finding = Finding.of(rule, Severity.STOP, "", status.getMessage(), message, "");
        return Json.of(new Fields().put("findings", FindingFields.of(List.of(finding))));
    }
}
