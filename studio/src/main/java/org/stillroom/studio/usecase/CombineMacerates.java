package org.stillroom.studio.usecase;

import java.util.ArrayList;
import java.util.List;
import org.stillroom.core.extraction.Combining;
import org.stillroom.core.liquid.Contents;
import org.stillroom.core.liquid.Essentials;
import org.stillroom.core.liquid.Estimate;
import org.stillroom.core.liquid.MadeUp;
import org.stillroom.core.liquid.ModelDoubt;
import org.stillroom.core.quantity.QuantityWords;
import org.stillroom.core.quantity.Strength;
import org.stillroom.core.reference.Finding;
import org.stillroom.core.reference.Severity;
import org.stillroom.core.reference.Source;
import org.stillroom.core.reference.Workings;

/** Brings several macerates to one strength of extract and of alcohol. */
public final class CombineMacerates {
    private CombineMacerates() {}

    /**
     * A macerate.
     *
     * @param millilitres of it, at 20 °C
     * @param content of extract per mL, in a unit that is the same for all
     */
    public record Macerate(String name, double millilitres, Strength strength, double content) {}

    /**
     * The question.
     *
     * @param content that is wanted, in the same unit
     * @param strength that is wanted, % vol
     * @param spirit to fortify with
     */
    public record Asked(List<Macerate> macerates, double content, double strength, Strength spirit) {
        public Asked {
            macerates = List.copyOf(macerates);
        }
    }

    /** So much of a macerate, mL. */
    public record Taken(String name, double millilitres, double left) {}

    /**
     * What comes.
     *
     * @param taken of each macerate
     * @param spirit mL to add
     * @param water g to add
     * @param volume mL that it makes
     * @param strength % vol
     */
    public record Found(
            List<Taken> taken,
            Estimate spirit,
            Estimate water,
            Estimate volume,
            Estimate strength,
            List<Finding> findings) {
        public Found {
            taken = List.copyOf(taken);
            findings = List.copyOf(findings);
        }
    }

    /**
     * Returns what comes.
     *
     * @throws Impossible when it cannot be
     */
    public static Found answer(Asked asked, Workings workings) {
        List<Combining.Macerate> macerates = asked.macerates().stream()
                .map(each -> new Combining.Macerate(contents(each), each.content() * each.millilitres()))
                .toList();
        Combining combining = Impossible.unless(
                "ratio",
                "Ask for less extract or more alcohol, or leave a macerate out.",
                () -> Combining.of(macerates, asked.content(), asked.strength(), MadeUp.spirit(asked.spirit())));
        List<Taken> taken = new ArrayList<>();
        double extract = 0.0;
        for (int i = 0; i < macerates.size(); i++) {
            Macerate of = asked.macerates().get(i);
            double part = combining.taken().get(i);
            taken.add(new Taken(of.name(), part * of.millilitres(), (1.0 - part) * of.millilitres()));
            extract += part * macerates.get(i).extract();
        }
        workings.step("extract of what goes in", extract, "units of the content times mL", Source.BALANCE);
        workings.step("volume that it is enough for", combining.volume(), "mL at 20 °C", Source.BALANCE);
        workings.step("strong spirit", combining.finishing().spirit(), "mL at 20 °C", Source.VOLUME_MODEL);
        double model = ModelDoubt.of(combining.finishing().made().toGrams(), combining.volume())
                .strengthHalfWidth();
        double ofLabels = ethanolDoubt(asked, combining);
        double perSpirit = ofLabels
                / (Essentials.of(MadeUp.spirit(asked.spirit()).toGrams()).strength() / 100.0);
        return new Found(
                taken,
                new Estimate(combining.finishing().spirit(), perSpirit),
                new Estimate(combining.finishing().water(), perSpirit),
                Estimate.inDoubtNotTold(combining.volume()),
                new Estimate(
                        combining.finishing().strength(), Math.hypot(model, 100.0 * ofLabels / combining.volume())),
                findings(taken));
    }

    private static List<Finding> findings(List<Taken> taken) {
        List<Finding> findings = new ArrayList<>();
        findings.add(new Finding(
                "strengths-as-typed",
                Severity.NOTE,
                "",
                "",
                "to be measured",
                "Each macerate is taken to lie within " + QuantityWords.plain(LabelTolerance.OF_OWN)
                        + " % vol of the strength that was typed, the strong spirit within "
                        + QuantityWords.plain(LabelTolerance.OF_LABEL)
                        + " % vol; by so much spirit and water more or less may be needed.",
                "How much two macerates of one ratio differ is not told by it, so that the volume has no doubt of its own.",
                "Measure what it makes before the last of the spirit and water goes in.",
                null,
                Source.RULE_OF_THUMB));
        if (taken.stream().anyMatch(each -> each.left() > 0.05)) {
            findings.add(Finding.of(
                    "not-all-combined",
                    Severity.NOTE,
                    "",
                    "some is left",
                    "Of the weaker macerates a part stays: all of them together would be weaker than is wanted, or leave no room.",
                    "Keep it for the next solvent, or ask for less extract."));
        }
        return findings;
    }

    /** Returns how much more or less pure alcohol there may be by the strengths as they were typed, mL; each errs by itself. */
    private static double ethanolDoubt(Asked asked, Combining combining) {
        double squares = 0.0;
        for (int i = 0; i < asked.macerates().size(); i++) {
            double taken = combining.taken().get(i) * asked.macerates().get(i).millilitres();
            squares += Math.pow(taken * LabelTolerance.OF_OWN / 100.0, 2);
        }
        squares += Math.pow(combining.finishing().spirit() * LabelTolerance.OF_LABEL / 100.0, 2);
        return Math.sqrt(squares);
    }

    private static Contents contents(Macerate macerate) {
        return MadeUp.spirit(macerate.strength()).times(macerate.millilitres() / 1000.0);
    }
}
