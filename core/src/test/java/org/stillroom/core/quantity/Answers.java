package org.stillroom.core.quantity;

import java.util.List;

/** What tests ask of an {@link Understanding}; each fails where the answer is of another kind. */
final class Answers {
    private Answers() {}

    static <Q> Q value(Understanding<Q> answer) {
        return understood(answer).typed().value();
    }

    static List<String> assumed(Understanding<?> answer) {
        return understood(answer).assumed();
    }

    static List<String> choices(Understanding<?> answer) {
        if (answer instanceof Understanding.Ambiguous<?> asked) {
            return asked.choices();
        }
        throw new AssertionError("not asked: " + answer);
    }

    static String reason(Understanding<?> answer) {
        if (answer instanceof Understanding.Refused<?> refused) {
            return refused.reason();
        }
        throw new AssertionError("not refused: " + answer);
    }

    private static <Q> Understanding.Understood<Q> understood(Understanding<Q> answer) {
        if (answer instanceof Understanding.Understood<Q> understood) {
            return understood;
        }
        throw new AssertionError("not understood: " + answer);
    }
}
