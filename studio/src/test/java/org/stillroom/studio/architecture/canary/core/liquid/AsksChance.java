package org.stillroom.studio.architecture.canary.core.liquid;

import java.util.Random;

/** Breaks the rule that chance arrives as a seeded argument. */
final class AsksChance {
    private AsksChance() {}

    static double draw() {
        return new Random().nextDouble();
    }
}
