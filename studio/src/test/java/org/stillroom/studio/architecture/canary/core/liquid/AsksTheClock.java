package org.stillroom.studio.architecture.canary.core.liquid;

/** Breaks the rule that a computation knows no moment. */
final class AsksTheClock {
    private AsksTheClock() {}

    static long now() {
        return System.nanoTime();
    }
}
