package org.stillroom.studio.architecture.canary.core.liquid;

import java.util.function.LongSupplier;

/** Breaks the rule that a computation knows no moment, by a reference instead of a call. */
final class HandsOnTheClock {
    private HandsOnTheClock() {}

    static LongSupplier clock() {
        return System::currentTimeMillis;
    }
}
