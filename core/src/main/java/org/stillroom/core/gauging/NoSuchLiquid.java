package org.stillroom.core.gauging;

import java.io.Serial;

/** No mixture of alcohol, water, sugar and acid shows what was read: the message says which reading, and what comes nearest. */
public final class NoSuchLiquid extends ArithmeticException {
    @Serial
    private static final long serialVersionUID = 1L;

    NoSuchLiquid(String message) {
        super(message);
    }
}
