package org.stillroom.studio.answer.desk;

import static org.stillroom.studio.answer.desk.AskedTexts.TEXT;

import java.util.List;
import java.util.Optional;
import org.stillroom.core.extraction.Cask;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.quantity.Volume;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.studio.answer.Told;
import org.stillroom.studio.answer.Told.Name;

/** Tells how a small cask works beside a large one. */
final class CaskTold {
    /** Half-width of what casks differ in surface per litre, part of it. Own estimate. */
    private static final double SHAPE = 0.1;

    private CaskTold() {}

    /** @param others the parts of a question about plants, none of which goes with a cask */
    static Told of(AskedTexts asked, List<String> others) {
        Optional<Cask> cask = asked.read("cask", TEXT::volume).flatMap(volume -> cask(asked, volume));
        for (String other : others) {
            if (!other.equals("cask") && asked.isTyped(other)) {
                asked.object(
                        other,
                        "a cask is asked alone: its days do not depend on this.",
                        "Leave it out, or macerate first and ask about the cask then.");
            }
        }
        asked.refuseIfAnyWrong();
        Cask found = cask.orElseThrow();
        return new Told("A cask of " + asked.text("cask"))
                .put(
                        new Name("surface_cm2_per_l", "wood that a litre meets", "cm²/L", 0),
                        about(found.surfacePerLitre()))
                .put(
                        new Name("times_of_225_l", "times as much as in a cask of 225 L", "", 1),
                        about(found.timesOfLarge()))
                .put(new Name("taste_every_days", "taste every", "days", 0), about(found.tasteEveryDays()))
                .put(new Name("as_a_year_days", "as a year in a cask of 225 L", "days", 0), about(found.daysForAYear()))
                .finding(new Finding(
                        "cask-practice",
                        Severity.CAUTION,
                        "cask",
                        "",
                        "common practice",
                        "The surface is reckoned from the usual shape; that wood gives in proportion to it is a rule of cellars, without source.",
                        "New wood gives most in its first weeks; air and evaporation do not hasten with it.",
                        "Fill it with water for a day until it is tight, fill it full, taste on these days, rack before it is too much.",
                        null,
                        Source.TRADE));
    }

    private static Estimate about(double value) {
        return new Estimate(value, SHAPE * value);
    }

    private static Optional<Cask> cask(AskedTexts asked, Volume volume) {
        try {
            return Optional.of(new Cask(volume.litres()));
        } catch (IllegalArgumentException impossible) {
            asked.object("cask", impossible.getMessage() + ".", "Give what it holds, such as 5L.");
            return Optional.empty();
        }
    }
}
