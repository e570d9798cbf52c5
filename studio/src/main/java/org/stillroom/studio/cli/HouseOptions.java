package org.stillroom.studio.cli;

import org.stillroom.core.safety.Grounds;
import picocli.CommandLine.Mixin;

/** What oils are judged on where there is no recipe, as options: what a studio keeps, and rules of the house from a file. */
final class HouseOptions {
    @Mixin
    private StudioGrounds studio = new StudioGrounds();

    @Mixin
    private HouseRulesFile house = new HouseRulesFile();

    /**
     * Returns what oils are judged on by these options.
     *
     * @throws Refusal when anything is not there or not understood
     */
    Grounds grounds() {
        return house.added(studio.grounds());
    }
}
