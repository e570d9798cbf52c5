package org.stillroom.studio.answer.desk;

import java.util.List;
import org.stillroom.core.reference.Finding;

/** Ends a question because of how it was asked; everything that is wrong with it. */
public final class WrongInput extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient List<Finding> findings;

    public WrongInput(List<Finding> findings) {
        super(findings.isEmpty() ? "wrong input" : findings.get(0).message());
        this.findings = List.copyOf(findings);
    }

    public List<Finding> findings() {
        return findings;
    }
}
