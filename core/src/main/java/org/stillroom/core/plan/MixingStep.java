package org.stillroom.core.plan;

import java.util.List;

/**
 * One thing to do when making.
 *
 * @param what what to do, one or two sentences
 * @param why the reason, one sentence, or empty
 * @param lines indices of the plan's lines that go in now
 */
public record MixingStep(String what, String why, List<Integer> lines) {
    public MixingStep {
        lines = List.copyOf(lines);
    }
}
