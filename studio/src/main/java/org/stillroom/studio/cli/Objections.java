package org.stillroom.studio.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Gathers everything that is wrong with the options of one command, so that it all comes back together. */
public final class Objections {
    private final List<Finding> findings = new ArrayList<>();

    /**
     * Returns what an option was understood as, or empty after noting why it was not.
     *
     * @param option the option as typed, such as "--ethanol"
     */
    public <Q> Optional<Q> take(String option, Understanding<Q> understanding) {
        if (understanding instanceof Understanding.Understood<Q> understood) {
            return Optional.of(understood.typed().value());
        }
        if (understanding instanceof Understanding.Ambiguous<Q> ambiguous) {
            raise(Finding.of(
                    "ambiguous-quantity",
                    Severity.STOP,
                    option,
                    "more than one meaning",
                    "\"" + ambiguous.text() + "\": " + ambiguous.question(),
                    "Write one of: " + String.join("; ", ambiguous.choices())));
        } else if (understanding instanceof Understanding.Refused<Q> refused) {
            String message = "\"" + refused.text() + "\": " + refused.reason();
            raise(Finding.of("wrong-quantity", Severity.STOP, option, "not understood", message, ""));
        }
        return Optional.empty();
    }

    public void raise(Finding finding) {
        findings.add(finding);
    }

    /** Refuses the whole command when anything was noted. */
    public void refuseIfAny() {
        if (!findings.isEmpty()) {
            throw new Refusal(Exit.WRONG_INPUT, findings);
        }
    }
}
