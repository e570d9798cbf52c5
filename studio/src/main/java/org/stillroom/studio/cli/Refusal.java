package org.stillroom.studio.cli;

import java.util.List;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;

/** Ends a command without an answer because of what was asked; nothing has been changed. */
public final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final Exit exit;
    private final transient List<Finding> findings;

    public Refusal(Exit exit, List<Finding> findings) {
        super(findings.isEmpty() ? exit.name() : findings.get(0).message());
        this.exit = exit;
        this.findings = List.copyOf(findings);
    }

    /** Returns a refusal of one thing that was typed: where, what is wrong with it, and what to write instead. */
    public static Refusal wrongInput(String where, String message, String remedy) {
        return new Refusal(
                Exit.WRONG_INPUT,
                List.of(Finding.of("wrong-input", Severity.STOP, where, "not understood", message, remedy)));
    }

    /** Returns a refusal because something that was named is not there. */
    public static Refusal notFound(String where, String message, String remedy) {
        return new Refusal(
                Exit.NOT_FOUND, List.of(Finding.of("not-found", Severity.STOP, where, "not found", message, remedy)));
    }

    public Exit exit() {
        return exit;
    }

    public List<Finding> findings() {
        return findings;
    }
}
