package org.stillroom.studio.answer.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.stillroom.core.quantity.Understanding;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Gathers everything that is wrong with the parts of one question, so that it all comes back together. */
public final class Objections {
    /** Name of what is wrong with what was typed. */
    public static final String RULE = "wrong-input";

    private final List<Finding> findings = new ArrayList<>();

    /**
     * Returns what a text was understood as, or empty after noting why it was not.
     *
     * @param where the part as whoever asks writes it, such as "--ethanol"
     */
    public <Q> Optional<Q> take(String where, Understanding<Q> understanding) {
        if (understanding instanceof Understanding.Understood<Q> understood) {
            return Optional.of(understood.typed().value());
        }
        if (understanding instanceof Understanding.Ambiguous<Q> ambiguous) {
            raise(Finding.of(
                    "ambiguous-quantity",
                    Severity.STOP,
                    where,
                    "more than one meaning",
                    "\"" + ambiguous.text() + "\": " + ambiguous.question(),
                    "Write one of: " + String.join("; ", ambiguous.choices())));
        } else if (understanding instanceof Understanding.Refused<Q> refused) {
            String message = "\"" + refused.text() + "\": " + refused.reason();
            raise(Finding.of("wrong-quantity", Severity.STOP, where, "not understood", message, ""));
        }
        return Optional.empty();
    }

    /** Notes what is wrong, and what to write instead. */
    public void object(String where, String message, String remedy) {
        raise(Finding.of(RULE, Severity.STOP, where, "not understood", message, remedy));
    }

    public void raise(Finding finding) {
        findings.add(finding);
    }

    /**
     * Refuses the whole question when anything was noted.
     *
     * @throws WrongInput with everything that was noted
     */
    public void refuseIfAny() {
        if (!findings.isEmpty()) {
            throw new WrongInput(findings);
        }
    }
}
